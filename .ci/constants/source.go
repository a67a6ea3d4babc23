package main

import (
	"bytes"
	"encoding/json"
	"go/ast"
	"go/importer"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"strconv"
)

// importsOf is the packages a file imports, with the name it gives them if any.
func importsOf(f *ast.File) map[string]string {
	imported := map[string]string{}
	for _, im := range f.Imports {
		p, _ := strconv.Unquote(im.Path.Value)
		imported[p] = ""
		if im.Name != nil {
			imported[p] = im.Name.Name
		}
	}
	return imported
}

// walk visits each node of a file with the nodes it stands in, itself last.
func walk(f *ast.File, visit func(x ast.Node, stack []ast.Node)) {
	var stack []ast.Node
	ast.Inspect(f, func(x ast.Node) bool {
		if x == nil {
			stack = stack[:len(stack)-1]
			return true
		}
		stack = append(stack, x)
		visit(x, stack)
		return true
	})
}

// typeOf is the type that the operand at the end of the stack takes: inside a
// constant expression go/types gives it to the whole only.
func typeOf(info *types.Info, stack []ast.Node) types.Type {
	for i := len(stack) - 1; i >= 0; i-- {
		e, ok := stack[i].(ast.Expr)
		if !ok {
			break
		}
		if i < len(stack)-1 {
			switch x := e.(type) {
			case *ast.ParenExpr, *ast.UnaryExpr:
			case *ast.BinaryExpr:
				if x.Op == token.SHL || x.Op == token.SHR || x.Op.Precedence() < token.ADD.Precedence() {
					return types.Typ[types.UntypedInt]
				}
			default:
				return types.Typ[types.UntypedInt]
			}
		}
		if t := info.Types[e].Type; t != nil {
			if b, ok := t.(*types.Basic); !ok || b.Info()&types.IsUntyped == 0 {
				return t
			}
		}
	}
	return types.Typ[types.UntypedInt]
}

// nameable is how the file may write the type, or nothing.
func nameable(t types.Type, pkg *types.Package, imported map[string]string) string {
	if b, ok := t.(*types.Basic); ok && b.Info()&types.IsUntyped != 0 {
		return ""
	}
	ok := true
	s := types.TypeString(t, func(p *types.Package) string {
		if p == pkg {
			return ""
		}
		name, here := imported[p.Path()]
		if !here {
			ok = false
		}
		if name == "" {
			name = p.Name()
		}
		return name
	})
	if !ok {
		return ""
	}
	return s
}

func constant(stack []ast.Node) bool {
	for _, x := range stack {
		if g, ok := x.(*ast.GenDecl); ok && g.Tok == token.CONST {
			return true
		}
		if _, ok := x.(*ast.ArrayType); ok {
			return true
		}
	}
	return false
}

func listed(dir string) (importer.Lookup, string, []string, error) {
	out, err := exec.Command("go", "list", "-export", "-deps", "-json=ImportPath,Export,GoFiles,DepOnly", dir).Output()
	if err != nil {
		return nil, "", nil, err
	}
	exports := map[string]string{}
	var path string
	var names []string
	dec := json.NewDecoder(bytes.NewReader(out))
	for dec.More() {
		var p struct {
			ImportPath, Export string
			GoFiles            []string
			DepOnly            bool
		}
		if err := dec.Decode(&p); err != nil {
			return nil, "", nil, err
		}
		exports[p.ImportPath] = p.Export
		if !p.DepOnly {
			path, names = p.ImportPath, p.GoFiles
		}
	}
	return func(p string) (io.ReadCloser, error) { return os.Open(exports[p]) }, path, names, nil
}
