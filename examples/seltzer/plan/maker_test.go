package plan_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// A stage returns its part: nothing but make.go, which puts them in place, assigns a field of the maker or of its plan,
// or takes the address of one.
func TestStagesReturnTheirPart(t *testing.T) {
	names, err := filepath.Glob("*.go")
	if err != nil || len(names) == 0 {
		t.Fatal(names, err)
	}
	for _, name := range names {
		if name == "make.go" || strings.HasSuffix(name, "_test.go") {
			continue
		}
		for _, line := range changed(t, name, nil) {
			t.Errorf("%s:%d: a stage changes what it should return", name, line)
		}
	}
}

func TestAStageThatChangesIsFound(t *testing.T) {
	found := changed(t, "x.go", `package plan
func (m *maker) reads() float64 { x := m.gas; x.y = m.plan.z[1]; return x }
func (m *maker) a() { m.gas = 1 }
func (m *maker) b() { m.plan.Weigh = append(m.plan.Weigh, w) }
func (m *maker) c() { m.warned++ }
func (m *maker) d() { p := &m.plan.Gravity; p.Floor = 1 }
func (m *maker) e() { func() { x, (m.plan.Packs[0]).Kind = 1, keg }() }
func (o *onward) f() { o.m.fed[0] = dose }
func (o *onward) g() { m := o.m; m.fed = nil }
func h(of *maker) { *of.plan = Plan{} }
func i(of *maker) { *of = maker{} }
func (m *material) j() { m.gas = 1 }
`)
	if want := []int{3, 4, 5, 6, 7, 8, 9, 10, 11}; !slices.Equal(found, want) {
		t.Errorf("found in lines %v, want %v", found, want)
	}
}

// changed lists the lines of a file that change what a maker holds.
func changed(t *testing.T, name string, source any) (lines []int) {
	files := token.NewFileSet()
	f, err := parser.ParseFile(files, name, source, 0)
	if err != nil {
		t.Fatal(err)
	}
	makers := map[string]bool{}
	isMaker := func(e ast.Expr) bool {
		switch x := e.(type) {
		case *ast.Ident:
			return makers[x.Name]
		case *ast.SelectorExpr:
			return x.Sel.Name == "m" // as onward holds it
		}
		return false
	}
	see := func(e ast.Expr) {
		for at := e; ; {
			switch x := at.(type) {
			case *ast.SelectorExpr:
				at = x.X
			case *ast.StarExpr:
				at = x.X
			case *ast.IndexExpr:
				at = x.X
				continue
			case *ast.ParenExpr:
				at = x.X
				continue
			default:
				return
			}
			if isMaker(at) {
				lines = append(lines, files.Position(e.Pos()).Line)
				return
			}
		}
	}
	ast.Inspect(f, func(n ast.Node) bool {
		switch x := n.(type) {
		case *ast.FuncDecl:
			makers = map[string]bool{}
		case *ast.Field: // a receiver or an argument
			for _, name := range x.Names {
				makers[name.Name] = types.ExprString(x.Type) == "*maker"
			}
		case *ast.AssignStmt:
			for i, to := range x.Lhs {
				see(to)
				if name, ok := to.(*ast.Ident); ok && i < len(x.Rhs) && isMaker(x.Rhs[i]) {
					makers[name.Name] = true
				}
			}
		case *ast.IncDecStmt:
			see(x.X)
		case *ast.UnaryExpr:
			if x.Op == token.AND {
				see(x.X)
			}
		}
		return true
	})
	return lines
}
