// Package internal_test holds what is true of the module as a whole.
package internal_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const module = "example.org/zymase/"

// The floors of the module: a package imports from its own floor or below only as
// the lists tell. internal packages that hold no brewing serve every floor.
var floors = map[string]int{
	"units":              0,
	"units/evidence":     0,
	"units/caution":      0,
	"units/material":     0,
	"internal/chemistry": 0, // on units alone
	"internal/dioxide":   0, // on units alone
	"internal/pipe":      0, // on units alone
	"internal/choice":    0, // on units alone
	"internal/rival":     0, // on units alone
	"internal/shelf":     0, // on units/material
	"internal/checked":   0,
	"internal/limit":     0, // on units alone
	"internal/numeric":   0,
	"internal/published": 0,

	"internal/published/ledger": 0, // the constants with their sources
	"internal/documents":        0, // tests of the documents alone
	"internal/ferments":         0, // measured ferments
	"gravity":                   1,
	"gravity/label":             1,
	"water":                     1,
	"water/mash":                1,
	"water/must":                1,
	"carbonation":               2,
	"nutrient":                  2,

	"nutrient/kinetics":         2,
	"nutrient/law":              2,
	"nutrient/sugar":            2,
	"nutrient/ferment":          2,
	"nutrient/yeast":            2,
	"nutrient/finish":           2,
	"nutrient/internal/amount":  2,
	"nutrient/internal/formula": 2,
	"nutrient/internal/acidity": 2,
	"internal/check":            0, // what tests share, on units alone
}

// floor returns the floor of a package; all of examples is floor 3.
func floor(pkg string) (int, bool) {
	if pkg == "examples" || strings.HasPrefix(pkg, "examples/") {
		return 3, true
	}
	f, ok := floors[pkg]
	return f, ok
}

// inside names the imports within a floor that are allowed: whoever is at the left
// may import what is at the right.
var inside = map[string][]string{
	"units":              {"internal/checked"},
	"units/evidence":     {"units", "internal/choice"},
	"units/caution":      {"units"},
	"units/material":     {"units", "units/evidence", "units/caution", "internal/checked", "internal/limit", "internal/chemistry"},
	"internal/chemistry": {"units"},
	"internal/shelf":     {"units", "units/material"},
	"internal/dioxide":   {"units", "internal/checked", "internal/limit", "internal/chemistry", "internal/numeric"},
	"internal/pipe":      {"internal/limit"},
	"internal/choice":    {"units"},
	"internal/rival":     {"units", "internal/checked", "internal/limit"},
	"internal/limit":     {"units"},
	"water/mash":         {"water"},
	"water/must":         {"water"},
	"gravity/label":      {"gravity"},
	"internal/published": {"units", "internal/numeric", "internal/checked", "internal/limit"},
	"internal/check":     {"units", "internal/checked", "internal/published"},

	"nutrient":                  {"nutrient/law", "nutrient/internal/amount", "nutrient/internal/formula"},
	"nutrient/sugar":            {"nutrient/internal/amount", "nutrient/internal/formula"},
	"nutrient/ferment":          {"nutrient", "nutrient/sugar", "nutrient/internal/amount", "nutrient/internal/formula", "nutrient/internal/acidity"},
	"nutrient/yeast":            {"nutrient/ferment", "nutrient/internal/amount", "nutrient/internal/formula"},
	"nutrient/finish":           {"nutrient/sugar", "nutrient/law", "nutrient/internal/amount", "nutrient/internal/formula", "nutrient/internal/acidity"},
	"nutrient/internal/acidity": {"nutrient", "nutrient/internal/amount", "nutrient/internal/formula"},
}

// allowed is the whole list of modules from outside; the second half in tests only.
var allowed = []string{"github.com/shopspring/decimal"}
var allowedInTests = append([]string{"github.com/google/go-cmp", "pgregory.net/rapid"}, allowed...)

func TestImportsGoDown(t *testing.T) {
	root := ".."
	seen := map[string]bool{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, _ := filepath.Rel(root, path)
		if d.IsDir() && rel != "." && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata") {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(path, ".go") || d.IsDir() {
			return nil
		}
		pkg, test := filepath.ToSlash(filepath.Dir(rel)), strings.HasSuffix(path, "_test.go")
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		seen[pkg] = true
		for _, spec := range f.Imports {
			imported, _ := strconv.Unquote(spec.Path.Value)
			if why := refused(pkg, imported, test); why != "" {
				t.Errorf("%s imports %s: %s", filepath.ToSlash(rel), imported, why)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for pkg := range seen {
		if _, ok := floor(pkg); !ok && pkg != "internal" {
			t.Errorf("package %s is on no floor", pkg)
		}
	}
	for _, pkg := range []string{"units", "gravity", "water", "carbonation", "nutrient", "examples/seltzer"} {
		if !seen[pkg] {
			t.Errorf("package %s was not read", pkg)
		}
	}
}

// refused tells why a package may not import a path; empty if it may.
func refused(pkg, imported string, test bool) string {
	if !strings.HasPrefix(imported, module) {
		if first, _, _ := strings.Cut(imported, "/"); !strings.Contains(first, ".") {
			return "" // the standard library
		}
		list := allowed
		if test {
			list = allowedInTests
		}
		if !slices.ContainsFunc(list, func(m string) bool { return imported == m || strings.HasPrefix(imported, m+"/") }) {
			return "not one of the three dependencies, or a test's alone"
		}
		return ""
	}
	to := strings.TrimPrefix(imported, module)
	from, ok := floor(pkg)
	below, known := floor(to)
	switch {
	case pkg == to, !ok: // its own tests; a package on no floor is reported by itself
		return ""
	case !known:
		return "a package on no floor"
	case test && strings.HasPrefix(to, "internal/"), test && to == "units":
		return ""
	case test && pkg == "internal/documents" && !strings.HasPrefix(to, "examples"):
		return "" // it holds every package to what the documents promise
	case test && strings.HasPrefix(pkg, "nutrient") && strings.HasPrefix(to, "nutrient"), test && pkg == "gravity" && to == "gravity/label":
		return "" // an example may show the room next door
	case strings.HasPrefix(to, "examples") && from < 3:
		return "nothing imports examples, save examples"
	case from < below:
		return "upward"
	case from == below && from < 3 && !slices.Contains(inside[pkg], to):
		return "sideways"
	}
	return ""
}

// The rule itself refuses what it should.
func TestLayeringRule(t *testing.T) {
	for _, c := range []struct {
		pkg, imported string
		test, ok      bool
	}{
		{"gravity", module + "units", false, true}, {"gravity", module + "internal/numeric", false, true}, {"gravity", module + "water", false, false},
		{"water", module + "gravity", false, false},
		{"gravity", module + "carbonation", false, false}, {"units", module + "gravity", false, false}, {"units", module + "internal/checked", false, true},
		{"units", module + "internal/numeric", false, false},
		{"carbonation", module + "gravity", false, true}, {"carbonation", module + "nutrient", false, false},
		{"nutrient/yeast", module + "nutrient/ferment", false, true}, {"nutrient/law", module + "nutrient", false, false},
		{"nutrient/sugar", module + "nutrient/law", false, false}, {"nutrient", module + "examples/verify", false, false},
		{"nutrient", module + "examples/verify", true, false},
		{"examples/verify", module + "examples/bridge/catalogue", false, true}, {"examples/seltzer", module + "nutrient", false, true},
		{"gravity", module + "internal/published", true, true}, {"gravity", module + "elsewhere", false, false},
		{"units", "github.com/shopspring/decimal", false, true}, {"units", "pgregory.net/rapid", false, false}, {"units", "pgregory.net/rapid", true, true},
		{"units", "github.com/google/go-cmp/cmp", true, true}, {"units", "golang.org/x/tools/go", true, false}, {"units", "math/rand/v2", false, true},
	} {
		if why := refused(c.pkg, c.imported, c.test); (why == "") != c.ok {
			t.Errorf("%s imports %s (test %v): %q", c.pkg, c.imported, c.test, why)
		}
	}
}

// Nothing but the packages, the module's files and dot-files stands at the top.
func TestTopLevel(t *testing.T) {
	entries, err := os.ReadDir("..")
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"gravity", "water", "carbonation", "nutrient", "units", "examples", "internal", "go.mod", "go.sum", "README.md", "DEVELOPERS.md", "LICENSE"}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !slices.Contains(want, e.Name()) {
			t.Errorf("%s stands at the top", e.Name())
		}
	}
}
