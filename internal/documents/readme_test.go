// Package documents holds README.md and the public face of the module to what they
// promise. It has no code of its own.
package documents

import (
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"regexp"
	"strings"
	"sync"
	"testing"
)

// shared reads the sources of the packages and what they import, once for all tests.
var shared = sync.OnceValues(func() (*token.FileSet, types.Importer) {
	fset := token.NewFileSet()
	return fset, importer.ForCompiler(fset, "source", nil)
})

// The samples of the README compile: each is the body of a function with the packages of
// the module and fmt at hand.
func TestSamplesCompile(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	samples := regexp.MustCompile("(?s)```go\n(.*?)```").FindAllStringSubmatch(string(text), -1)
	if len(samples) < 5 {
		t.Errorf("%d samples", len(samples))
	}
	fset, from := shared()
	for i, s := range samples {
		src := "package sample\n"
		for _, p := range []string{"fmt", "example.org/zymase/units", "example.org/zymase/units/material", "example.org/zymase/gravity",
			"example.org/zymase/gravity/label", "example.org/zymase/water", "example.org/zymase/water/mash", "example.org/zymase/water/must",
			"example.org/zymase/carbonation", "example.org/zymase/nutrient", "example.org/zymase/nutrient/sugar", "example.org/zymase/nutrient/yeast",
			"example.org/zymase/nutrient/ferment", "example.org/zymase/nutrient/finish", "example.org/zymase/nutrient/law"} {
			if strings.Contains(s[1], p[strings.LastIndexByte(p, '/')+1:]+".") {
				src += fmt.Sprintf("import %q\n", p)
			}
		}
		src += "func _() {\n" + s[1] + "}\n"
		file, err := parser.ParseFile(fset, fmt.Sprintf("sample %d", i+1), src, 0)
		if err != nil {
			t.Error(err)
			continue
		}
		conf := types.Config{Importer: from, Error: func(err error) {
			if !strings.Contains(err.Error(), "declared and not used") {
				t.Errorf("%v in\n%s", err, s[1])
			}
		}}
		conf.Check("sample", fset, []*ast.File{file}, nil) // its errors went to Error
	}
}

// What the README names exists: files, and `package.Name` of the module.
func TestREADMENamesExist(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range regexp.MustCompile(`\]\(([\w./-]+)\)`).FindAllStringSubmatch(string(text), -1) {
		if _, err := os.Stat("../../" + m[1]); err != nil {
			t.Error(err)
		}
	}
	_, from := shared()
	seen := map[string]bool{}
	for _, m := range regexp.MustCompile("`(units|gravity|water|carbonation|nutrient|sugar|yeast|ferment|finish|law|kinetics|mash|must|material|evidence|caution|plan|batch)\\.([A-Z]\\w*)(?:\\.([A-Z]\\w*))?`").FindAllStringSubmatch(string(text), -1) {
		if seen[m[0]] {
			continue
		}
		seen[m[0]] = true
		path := m[1]
		for _, house := range []string{"nutrient/", "water/", "units/", "examples/seltzer/"} { // a room of it
			if _, err := os.Stat("../../" + house + m[1]); err == nil {
				path = house + m[1]
			}
		}
		pkg, err := from.Import("example.org/zymase/" + path)
		if err != nil {
			t.Fatal(err)
		}
		o := pkg.Scope().Lookup(m[2])
		if o == nil {
			t.Errorf("%s is not there", m[0])
			continue
		}
		if m[3] != "" {
			if found, _, _ := types.LookupFieldOrMethod(o.Type(), true, pkg, m[3]); found == nil {
				t.Errorf("%s is not there", m[0])
			}
		}
	}
	if len(seen) < 10 {
		t.Errorf("only %d names checked", len(seen))
	}
}
