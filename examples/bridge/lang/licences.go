package lang

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// licences are the licences of what is compiled into a module or a shared library, which go with
// it wherever it goes.
func licences() ([]byte, error) {
	tool, err := exec.LookPath("go")
	if err != nil {
		return nil, errNoGo
	}
	said := func(args ...string) string {
		out, _ := exec.Command(tool, args...).Output()
		return strings.TrimSpace(string(out))
	}
	var b bytes.Buffer
	for _, part := range []struct{ name, dir, file, otherwise string }{
		{"the library", said("list", "-m", "-f", "{{.Dir}}", strings.TrimSuffix(root, "/")), "LICENSE", "MIT"},
		{"exact decimals, github.com/shopspring/decimal", said("list", "-m", "-f", "{{.Dir}}", "github.com/shopspring/decimal"), "LICENSE", "MIT"},
		{"the run time and the standard library of Go", said("env", "GOROOT"), "LICENSE", "BSD-3-Clause, go.dev/LICENSE"},
	} {
		b.WriteString("== " + part.name + "\n\n")
		text, err := os.ReadFile(filepath.Join(part.dir, part.file))
		if err != nil {
			text = []byte(part.otherwise + "\n")
		}
		b.Write(text)
		b.WriteString("\n")
	}
	return b.Bytes(), nil
}
