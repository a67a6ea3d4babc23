package lang

import (
	"go/token"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// What is written has one meaning: no two arguments of a function have one name, and no function
// the name of something else that a library has.
func TestNames(t *testing.T) {
	m, err := newModel()
	if err != nil {
		t.Fatal(err)
	}
	taken := map[string]bool{}
	for _, name := range []string{"module", "columns", "plan", "walk", "forecast", "close", "open", "about", "say", "constructor"} {
		taken[name] = true
	}
	for _, f := range m.Functions {
		if taken[f.Name] {
			t.Errorf("%s is taken", f.Name)
		}
		taken[f.Name] = true
		in, out := map[string]bool{}, map[string]bool{"failed": true, "failures": true, "first": true}
		for _, p := range f.Inputs {
			if in[p.Name] || in[p.Number] || !token.IsIdentifier(p.Number) && !token.IsKeyword(p.Number) {
				t.Errorf("%s: %s, %s", f.Name, p.Name, p.Number)
			}
			in[p.Name], in[p.Number] = true, true
			if p.Two != (p.Name != p.Number) || p.Two && p.Shown == p.Text(p.Example) {
				t.Errorf("%s: %s has the unit %q and is shown as %q", f.Name, p.Number, p.Unit, p.Shown)
			}
		}
		for _, o := range f.Outputs {
			if out[o.Name] {
				t.Errorf("%s gives %s twice, or as what a column has", f.Name, o.Name)
			}
			out[o.Name] = true
		}
	}
	for unit, name := range unitNames {
		for other, same := range unitNames {
			if name == same && unit != other {
				t.Errorf("%s and %s are both %s", unit, other, name)
			}
		}
	}
}

// Every function stands in what is written, and every place is filled in.
func TestScriptIsWhole(t *testing.T) {
	m, err := newModel()
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"zymase.mjs.tmpl", "zymase.d.mts.tmpl"} {
		text, err := m.render(name, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range m.Functions {
			if !strings.Contains(string(text), f.Name) {
				t.Errorf("%s lacks %s", name, f.Name)
			}
		}
		if strings.Contains(string(text), "<no value>") || strings.Contains(string(text), "{{"+".") {
			t.Errorf("%s is not filled in", name)
		}
	}
}

func TestDirectoryOfSomethingElse(t *testing.T) {
	dir := t.TempDir()
	f := files{"zymase.mjs": []byte("new")}
	if err := f.write(filepath.Join(dir, "fresh", "one")); err != nil {
		t.Error(err)
	}
	own := filepath.Join(dir, "own")
	if err := f.write(own); err != nil {
		t.Fatal(err)
	}
	if err := f.write(own); err != nil {
		t.Errorf("its own directory again: %v", err)
	}
	letter := filepath.Join(own, "letter.txt")
	if err := os.WriteFile(letter, []byte("mine"), 0o666); err != nil {
		t.Fatal(err)
	}
	err := f.write(own)
	if err == nil || !strings.Contains(err.Error(), "letter.txt") {
		t.Error(err)
	}
	if err := JavaScript(own); err == nil || !strings.Contains(err.Error(), "letter.txt") {
		t.Error(err)
	}
}

func TestNoToolchain(t *testing.T) {
	tool, err := exec.LookPath("go")
	if err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", t.TempDir())
	t.Setenv("CC", "")
	if _, err := buildModule(); err != errNoGo {
		t.Error(err)
	}
	if _, err := buildShared(); err != errNoGo {
		t.Error(err)
	}
	if hasCompiler() {
		t.Error("a compiler where there is none")
	}
	// Go alone is enough for JavaScript, and C and Python say what they lack.
	if err := os.Symlink(tool, filepath.Join(os.Getenv("PATH"), filepath.Base(tool))); err != nil {
		t.Skip(err)
	}
	if _, err := buildShared(); err != errNoC {
		t.Error(err)
	}
}
