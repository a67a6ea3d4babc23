package units_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"
)

// Units are variables, since Go has no constants of such a type. Nothing in the module
// assigns to one or takes its address; within the package they are set where they are
// declared and nowhere else.
func TestNothingAssignsToAUnit(t *testing.T) {
	fset := token.NewFileSet()
	read := 0
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			if name := d.Name(); name != ".." && (strings.HasPrefix(name, ".") || name == "testdata") {
				return fs.SkipDir
			}
			return nil
		}
		if !strings.HasSuffix(path, ".go") {
			return nil
		}
		file, err := parser.ParseFile(fset, path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		read++
		for _, at := range assigned(file) {
			t.Errorf("%s: a unit is assigned to, or its address taken", fset.Position(at))
		}
		return nil
	})
	if err != nil || read < 100 {
		t.Error(read, err)
	}
}

// assigned finds where a file assigns to a name of package units, or takes its address.
func assigned(file *ast.File) (places []token.Pos) {
	ours := file.Name.Name == "units"
	target := func(e ast.Expr) {
		switch e := ast.Unparen(e).(type) {
		case *ast.SelectorExpr:
			if pkg, ok := e.X.(*ast.Ident); ok && pkg.Name == "units" && e.Sel.IsExported() {
				places = append(places, e.Pos())
			}
		case *ast.Ident:
			if ours && e.IsExported() {
				places = append(places, e.Pos())
			}
		}
	}
	ast.Inspect(file, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			for _, e := range n.Lhs {
				target(e)
			}
		case *ast.RangeStmt:
			target(n.Key)
			target(n.Value)
		case *ast.UnaryExpr:
			if n.Op == token.AND {
				target(n.X)
			}
		}
		return true
	})
	return places
}

func TestAssignedIsFound(t *testing.T) {
	for body, want := range map[string]int{
		"units.Kilogram = units.Gram": 1, "a, (units.Gram) = b, c": 1, "for units.Gram = range x {}": 1, "p := &units.Gram": 1, "for _, units.Gram = range x {}": 1,
		"u := units.Gram": 0, "e := &units.RangeError{}": 0, "units := 3": 0,
	} {
		file, err := parser.ParseFile(token.NewFileSet(), "x.go", "package x\nfunc _() {\n"+body+"\n}", parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(body, err)
		}
		if got := len(assigned(file)); got != want {
			t.Errorf("%s: %d found, want %d", body, got, want)
		}
	}
}
