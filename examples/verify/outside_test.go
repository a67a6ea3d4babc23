package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// Three programs that a stranger wrote from the documentation alone stand in a module of
// their own: a monitor of readings, a service that stores a batch and reads it back, and
// what a page in a browser calls. They are built without a network and run.
func TestProgramsFromOutside(t *testing.T) {
	if testing.Short() {
		t.Skip("builds three programs, one of them for a browser")
	}
	dir := outsideModule(t)
	t.Run("monitor", func(t *testing.T) {
		cmd := exec.Command(outsideProgram(t, dir, "monitor"))
		cmd.Stdin = strings.NewReader("2h 1.0300\n30h 1.0152\n31h 1.2\n60h 1.0005\n120h 0.9937\n")
		contains(t, cmd, "30h: ", "of the sugar used", "% vol", "nearly dry between", "between the floor of this recipe and its wort",
			"120h: 100 %", "can still make")
	})
	t.Run("service", func(t *testing.T) {
		contains(t, exec.Command(outsideProgram(t, dir, "service")), "200 OK", `400 Bad Request "4.5 stone" is not a mass`, "same: true")
	})
	t.Run("page", func(t *testing.T) {
		program := outsideProgram(t, dir, "page", "GOOS=js", "GOARCH=wasm")
		node, err := exec.LookPath("node")
		if err != nil {
			t.Skip("built; not run, as there is no node")
		}
		root, err := exec.Command("go", "env", "GOROOT").Output()
		if err != nil {
			t.Fatal(err)
		}
		cmd := exec.Command(filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "go_js_wasm_exec"), program)
		cmd.Env = []string{"PATH=" + filepath.Dir(node) + ":/usr/bin:/bin"}
		contains(t, cmd, "psi gauge", `"38" is not a temperature`)
	})
}

// outsideModule copies the programs into a module elsewhere that takes the library from here.
func outsideModule(t *testing.T) string {
	t.Helper()
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS("testdata/outside")); err != nil {
		t.Fatal(err)
	}
	required, err := exec.Command("go", "list", "-m", "-f", "{{if not .Main}}{{.Path}} {{.Version}}{{end}}", "all").Output()
	if err != nil {
		t.Fatal(err)
	}
	mod := fmt.Sprintf("module outside.example/brewery\n\ngo 1.26\n\nrequire (\n\t%s v0.0.0\n%s)\n\nreplace %s => %s\n", module, required, module, root)
	sum, err := os.ReadFile(filepath.Join(root, "go.sum"))
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string][]byte{"go.mod": []byte(mod), "go.sum": sum} {
		if err := os.WriteFile(filepath.Join(dir, name), text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// outsideProgram builds one without a network.
func outsideProgram(t *testing.T, dir, name string, env ...string) string {
	t.Helper()
	program := filepath.Join(dir, name+".out")
	cmd := exec.Command("go", "build", "-o", program, "./"+name)
	cmd.Dir = dir
	cmd.Env = append(append(os.Environ(), "GOPROXY=off", "GOFLAGS=-mod=mod", "GOWORK=off"), env...)
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return program
}

// contains reports what a program does not print.
func contains(t *testing.T, cmd *exec.Cmd, want ...string) {
	t.Helper()
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Errorf("%v", err)
	}
	for _, w := range want {
		if !strings.Contains(string(out), w) {
			t.Errorf("not printed: %s\n%s", w, out)
		}
	}
}
