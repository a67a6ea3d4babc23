package lang

import (
	"os"
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
