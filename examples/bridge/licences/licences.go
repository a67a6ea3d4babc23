// Package licences finds the licences of what is compiled into a program of this module.
package licences

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// errNoGo reports that there is no Go to ask where they are.
var errNoGo = errors.New("the licences are found by your own Go toolchain, and there is no go command on the path: install Go (go.dev/dl)")

// Text is the licences of what is compiled into a program, a module or a page, which go with it wherever it
// goes: of the library, of its one dependency and of Go. The error is that there is no go command.
func Text() ([]byte, error) {
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
		{"the library", said("list", "-m", "-f", "{{.Dir}}", "example.org/zymase"), "LICENSE", "MIT"},
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
