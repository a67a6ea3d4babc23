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

// A stage returns its part: nothing but make.go, which puts them in place, assigns a field of the maker or of its plan, be it
// through a pointer or a list that stands there, or takes the address of one.
func TestStagesReturnTheirPart(t *testing.T) {
	names, err := filepath.Glob("*.go")
	if err != nil || len(names) == 0 {
		t.Fatal(names, err)
	}
	source := map[string]any{}
	for _, name := range names {
		if !strings.HasSuffix(name, "_test.go") {
			source[name] = nil // it is read
		}
	}
	for _, at := range changed(t, source) {
		if at.Filename != "make.go" {
			t.Errorf("%v: a stage changes what it should return", at)
		}
	}
}

func TestAStageThatChangesIsFound(t *testing.T) {
	var found []int
	for _, at := range changed(t, map[string]any{"x.go": `package plan
type APlan struct{ state *State; stages []Stage }
func (m *maker) reads() float64 { x := m.gas; x.y = m.plan.z[1]; return x }
func (m *maker) copies() { s, g := *m.plan.state, m.plan.Gravity; s.Points, g.Floor = nil, 1 }
func (m *material) other() { m.gas = 1 }
func (m *maker) a() { m.gas = 1 }
func (m *maker) b() { m.plan.Weigh = append(m.plan.Weigh, w) }
func (m *maker) c() { m.warned++ }
func (m *maker) d() { p := &m.plan.Gravity; p.Floor = 1 }
func (m *maker) e() { func() { x, (m.plan.Packs[0]).Kind = 1, keg }() }
func (o *onward) f() { o.m.fed[0] = dose }
func (o *onward) g() { m := o.m; m.fed = nil }
func h(of *maker) { *of.plan = Plan{} }
func i(of *maker) { *of = maker{} }
func (m *maker) j() { s := m.plan.state; s.Points = nil }
func (m *maker) k() { s := m.plan.stages; s[0].Gravity = 1 }
`}) {
		found = append(found, at.Line)
	}
	if want := []int{6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16}; !slices.Equal(found, want) {
		t.Errorf("found in lines %v, want %v", found, want)
	}
}

// changed lists where files change what a maker holds.
func changed(t *testing.T, source map[string]any) (found []token.Position) {
	files := token.NewFileSet()
	var parsed []*ast.File
	shared := map[string]bool{"m": true} // fields of a plan that a copy shares, pointers and lists; m is the maker of an onward
	for name, text := range source {
		f, err := parser.ParseFile(files, name, text, 0)
		if err != nil {
			t.Fatal(err)
		}
		parsed = append(parsed, f)
		ast.Inspect(f, func(n ast.Node) bool {
			def, ok := n.(*ast.TypeSpec)
			if !ok || def.Name.Name != "maker" && !strings.HasSuffix(def.Name.Name, "Plan") {
				return true
			}
			if s, ok := def.Type.(*ast.StructType); ok {
				for _, field := range s.Fields.List {
					for _, name := range field.Names {
						if of := types.ExprString(field.Type); of[0] == '*' || strings.HasPrefix(of, "[]") {
							shared[name.Name] = true
						}
					}
				}
			}
			return true
		})
	}
	var makers map[string]bool // the names of a function that share something with a maker
	var held func(e ast.Expr) bool
	held = func(e ast.Expr) bool {
		switch x := e.(type) {
		case *ast.Ident:
			return makers[x.Name]
		case *ast.SelectorExpr:
			return x.Sel.Name == "m" || held(x.X)
		case *ast.StarExpr:
			return held(x.X)
		case *ast.IndexExpr:
			return held(x.X)
		case *ast.ParenExpr:
			return held(x.X)
		}
		return false
	}
	see := func(e ast.Expr) {
		if _, name := e.(*ast.Ident); !name && held(e) {
			found = append(found, files.Position(e.Pos()))
		}
	}
	for _, f := range parsed {
		ast.Inspect(f, func(n ast.Node) bool {
			switch x := n.(type) {
			case *ast.FuncDecl:
				makers = map[string]bool{}
			case *ast.Field: // a receiver or an argument
				for _, name := range x.Names {
					if makers != nil {
						makers[name.Name] = types.ExprString(x.Type) == "*maker"
					}
				}
			case *ast.AssignStmt:
				for i, to := range x.Lhs {
					see(to)
					if name, ok := to.(*ast.Ident); ok && i < len(x.Rhs) {
						field, selected := x.Rhs[i].(*ast.SelectorExpr)
						_, named := x.Rhs[i].(*ast.Ident)
						makers[name.Name] = held(x.Rhs[i]) && (named || selected && shared[field.Sel.Name])
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
	}
	return found
}
