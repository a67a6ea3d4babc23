package lang

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// The first answers of the README are right: each sample runs as it stands, and prints what it says.
func TestREADME(t *testing.T) {
	text, err := os.ReadFile("../../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	sample := func(language string) string {
		m := regexp.MustCompile("(?s)```" + language + "\n(.*?)```").FindSubmatch(text)
		if m == nil {
			t.Fatalf("no sample of %s", language)
		}
		return string(m[1])
	}
	for _, c := range []struct {
		language, file, dir string
		write               func(string) error
		run                 func(t *testing.T, dir string) string
	}{
		{"js", "first.mjs", "js", JavaScript, func(t *testing.T, dir string) string {
			return run(t, dir, nil, program(t, "ZYMASE_NODE", "node"), "first.mjs")
		}},
		{"python", "first.py", "zymase", Python, func(t *testing.T, dir string) string {
			return run(t, dir, nil, program(t, "ZYMASE_PYTHON", "/usr/bin/python3", "python3"), "first.py")
		}},
		{"c", "first.c", "c", C, func(t *testing.T, dir string) string {
			run(t, dir, nil, program(t, "CC", "gcc", "clang", "cc"), "first.c", "-I", "zymase", "-L", "zymase", "-lzymase", "-Wl,-rpath,zymase")
			return run(t, dir, nil, "./a.out")
		}},
	} {
		t.Run(c.language, func(t *testing.T) {
			elsewhere(t)
			code, dir := sample(c.language), t.TempDir()
			if err := os.WriteFile(filepath.Join(dir, c.file), []byte(code), 0o666); err != nil {
				t.Fatal(err)
			}
			if err := os.Symlink(written(t, c.dir, c.write), filepath.Join(dir, "zymase")); err != nil {
				t.Fatal(err)
			}
			said := c.run(t, dir)
			promised := regexp.MustCompile(`(?m)prints (.*?)(?: \*/)?$`).FindAllStringSubmatch(code, -1)
			if len(promised) < 2 {
				t.Error("the sample promises nothing")
			}
			for _, p := range promised {
				if !strings.Contains(said, p[1]) {
					t.Errorf("no %q in\n%s", p[1], said)
				}
			}
		})
	}
}
