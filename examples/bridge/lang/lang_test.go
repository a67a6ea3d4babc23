package lang

import (
	"encoding/json"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"example.org/zymase/examples/bridge/number"
)

// The tests that build the library for another language and run it there take a minute, so they
// run where they are asked for.
func elsewhere(t *testing.T) {
	t.Helper()
	if testing.Short() {
		t.Skip("it builds the library for another language and runs it there")
	}
	if os.Getenv("ZYMASE_LANGUAGES") == "" {
		t.Skip("it builds the library for another language and runs it there: .ci/languages does, or set ZYMASE_LANGUAGES=yes")
	}
}

// lacking skips a test for want of a program, or fails it where nothing may be skipped.
func lacking(t *testing.T, what string) {
	t.Helper()
	if os.Getenv("ZYMASE_LANGUAGES") == "all" {
		t.Fatalf("%s is lacking, and nothing may be skipped here", what)
	}
	t.Skipf("NOT CHECKED: %s is lacking", what)
}

// program finds a program: what a variable names, or one of the names on the path.
func program(t *testing.T, variable string, names ...string) string {
	t.Helper()
	if named := os.Getenv(variable); named != "" {
		if path, err := exec.LookPath(named); err == nil {
			return path
		}
	}
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	lacking(t, strings.Join(names, " or "))
	return ""
}

// run runs a program and returns what it said.
func run(t *testing.T, dir string, env []string, name string, args ...string) string {
	t.Helper()
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Env = dir, append(os.Environ(), env...)
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("%s %s: %v\n%s", filepath.Base(name), strings.Join(args, " "), err, out)
	}
	return string(out)
}

var (
	scratch string
	wrote   sync.Map
)

func TestMain(m *testing.M) {
	var err error
	if scratch, err = os.MkdirTemp("", "lang"); err != nil {
		panic(err)
	}
	code := m.Run()
	os.RemoveAll(scratch)
	os.Exit(code)
}

// written is a directory with the library for a language, written once for all tests.
func written(t *testing.T, name string, write func(string) error) string {
	t.Helper()
	dir := filepath.Join(scratch, name)
	once, _ := wrote.LoadOrStore(name, sync.OnceValue(func() error { return write(dir) }))
	if err := once.(func() error)(); err != nil {
		if errors.Is(err, errNoC) || errors.Is(err, errNoGo) {
			lacking(t, err.Error())
		}
		t.Fatal(err)
	}
	return dir
}

// A row is an example of a function: its inputs under both names, and what Go makes of it, each
// number with the digits of the bridge.
type row struct {
	Name    string         `json:"name"`
	Texts   map[string]any `json:"texts"`
	Numbers map[string]any `json:"numbers"`
	Want    map[string]any `json:"want"`
}

// examples are those of the whole catalogue.
func examples(t *testing.T) []row {
	t.Helper()
	m, err := newModel()
	if err != nil {
		t.Fatal(err)
	}
	var rows []row
	for _, f := range m.Functions {
		r := row{f.Name, map[string]any{}, map[string]any{}, map[string]any{}}
		in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
		for i, p := range f.Inputs {
			in[i] = p.Example
			r.Texts[p.Name], r.Numbers[p.Number] = p.Shown, p.Example
			if p.Options != nil {
				r.Numbers[p.Number] = p.Shown
			}
		}
		if err := f.Call(in, out); err != nil {
			t.Fatal(err)
		}
		for i, o := range f.Outputs {
			r.Want[o.Name] = json.Number(number.Append(nil, out[i]))
			if o.IsText() {
				r.Want[o.Name] = o.Text(out[i])
			}
		}
		rows = append(rows, r)
	}
	return rows
}

// examplesFile is that as a file.
func examplesFile(t *testing.T) string {
	t.Helper()
	text, err := json.MarshalIndent(examples(t), "", " ")
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "examples.json")
	if err := os.WriteFile(name, text, 0o666); err != nil {
		t.Fatal(err)
	}
	return name
}
