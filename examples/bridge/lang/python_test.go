package lang

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// pythonParent is the directory from which the package can be imported.
func pythonParent(t *testing.T) string {
	t.Helper()
	return filepath.Dir(written(t, "zymase", Python))
}

func TestPython(t *testing.T) {
	elsewhere(t)
	python := program(t, "ZYMASE_PYTHON", "/usr/bin/python3", "python3")
	said := run(t, "testdata", nil, python, "examples.py", pythonParent(t), examplesFile(t), absolute(t, builtInRequest))
	t.Log(strings.TrimSpace(said))
	if os.Getenv("ZYMASE_LANGUAGES") == "all" && strings.Contains(said, "is not there") {
		t.Error("numpy and pandas are lacking, and nothing may be skipped here")
	}
}

// The stubs are sound, and hold callers to the units.
func TestMypy(t *testing.T) {
	elsewhere(t)
	python := program(t, "ZYMASE_PYTHON", "/usr/bin/python3", "python3")
	if err := exec.Command(python, "-m", "mypy", "--version").Run(); err != nil {
		lacking(t, "mypy")
	}
	parent, cache := pythonParent(t), t.TempDir()
	run(t, "testdata", []string{"MYPYPATH=" + parent}, python, "-m", "mypy", "--strict", "--cache-dir", cache, "use.py")
}
