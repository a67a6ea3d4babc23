package main

import (
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"path/filepath"
	"sort"
	"strconv"
	"strings"

	"example.org/zymase/internal/published/ledger"
)

type literal struct {
	file       string
	decl       string // the function or declaration it stands in
	line       int
	start, end int
	old, new   string
	typ        string // empty: it must stay a constant
	verdict    string
	reason     *reason
	built      bool // into the one binary
	counts     bool // a constant that is used as a whole number
}

// literals finds the numeric literals that compute, and their types.
func literals(dir string) ([]*literal, map[string][]edit, error) {
	fset := token.NewFileSet()
	lookup, path, names, err := listed(dir)
	if err != nil {
		return nil, nil, err
	}
	var files []*ast.File
	for _, name := range names {
		f, err := parser.ParseFile(fset, filepath.Join(dir, name), nil, 0)
		if err != nil {
			return nil, nil, err
		}
		files = append(files, f)
	}
	info := &types.Info{Types: map[ast.Expr]types.TypeAndValue{}, Defs: map[*ast.Ident]types.Object{}, Uses: map[*ast.Ident]types.Object{}}
	conf := types.Config{Importer: importer.ForCompiler(fset, "gc", lookup)}
	pkg, err := conf.Check(path, fset, files, info)
	if err != nil {
		return nil, nil, err
	}
	var all []*literal
	cs := consts{fset: fset, pkg: pkg, info: info, of: map[*literal]types.Object{}, decl: map[types.Object]*declared{}, src: map[string][]byte{}}
	edits := map[string][]edit{}
	for _, f := range files {
		imported := importsOf(f)
		walk(f, func(x ast.Node, stack []ast.Node) {
			lit, ok := x.(*ast.BasicLit)
			if !ok || lit.Kind != token.FLOAT && lit.Kind != token.INT && (wanted == nil || lit.Kind != token.STRING) {
				return
			}
			p := fset.Position(lit.Pos())
			if wanted != nil && !wanted[p.Filename+":"+strconv.Itoa(p.Offset)] {
				return
			}
			if wanted == nil && (lit.Kind == token.INT && structural(stack) || besideAnError(info, stack)) {
				return
			}
			changed := change(lit)
			if changed == "" {
				return
			}
			l := &literal{file: p.Filename, decl: declOf(stack), line: p.Line, start: p.Offset, end: p.Offset + len(lit.Value), old: lit.Value, new: changed}
			if !constant(stack) {
				of := typeOf(info, stack)
				if lit.Kind == token.STRING {
					of = types.Typ[types.String]
				}
				l.typ = nameable(of, pkg, imported)
				if b, ok := of.Underlying().(*types.Basic); wanted != nil && ok && b.Info()&types.IsInteger != 0 {
					return // a count
				}
				l.built = l.typ != ""
			} else if c := cs.owner(stack); c != nil {
				cs.of[l] = c
			}
			all = append(all, l)
		})
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].file < all[j].file })
	for i, l := range all {
		if l.built {
			edits[l.file] = append(edits[l.file], edit{l.start, l.end, fmt.Sprintf("picked.V[%s](%d, %s, %s)", l.typ, firstID+i, l.old, l.new)})
		}
	}
	if err := cs.use(files, all, edits); err != nil {
		return nil, nil, err
	}
	return all, edits, nil
}

// declOf is the name of the function (of a method: Type.Method) or the declaration around the end of the stack.
func declOf(stack []ast.Node) string {
	switch d := stack[1].(type) {
	case *ast.FuncDecl:
		return ledger.NameOf(d)
	case *ast.GenDecl:
		switch spec := stack[2].(type) {
		case *ast.ValueSpec:
			for k, v := range spec.Values {
				if v == stack[3] && k < len(spec.Names) {
					return spec.Names[k].Name
				}
			}
			return spec.Names[0].Name
		case *ast.TypeSpec:
			return spec.Name.Name
		}
	}
	return ""
}

// structural tells a whole number that indexes, sizes or parses rather than computes.
func structural(stack []ast.Node) bool {
	lit := stack[len(stack)-1]
	for i := len(stack) - 2; i >= 0; i-- {
		switch x := stack[i].(type) {
		case *ast.IndexExpr:
			return x.Index.Pos() <= lit.Pos() && lit.End() <= x.Index.End()
		case *ast.SliceExpr, *ast.ArrayType, *ast.KeyValueExpr:
			return true
		case *ast.CallExpr:
			switch f := x.Fun.(type) {
			case *ast.Ident:
				return f.Name == "make" || f.Name == "len"
			case *ast.SelectorExpr:
				id, ok := f.X.(*ast.Ident)
				return ok && (id.Name == "strconv" || id.Name == "fmt" || id.Name == "strings")
			}
			return false
		case *ast.BlockStmt, *ast.FuncDecl:
			return false
		}
	}
	return false
}

// besideAnError tells a zero that is returned with an error: it stands for nothing, and nobody reads it.
func besideAnError(info *types.Info, stack []ast.Node) bool {
	lit := stack[len(stack)-1].(*ast.BasicLit)
	back, is := stack[len(stack)-2].(*ast.ReturnStmt)
	if !is || len(back.Results) < 2 || strings.Trim(lit.Value, "0.") != "" {
		return false
	}
	last := back.Results[len(back.Results)-1]
	if id, is := last.(*ast.Ident); is {
		return strings.HasSuffix(id.Name, "err")
	}
	fails := types.Universe.Lookup("error").Type().Underlying().(*types.Interface)
	return types.Implements(info.TypeOf(last), fails)
}

// firstID is the number of the first literal of a package, where several stand in one binary.
var firstID int

// wanted are the places of the numbers to raise by 1 %, where it is asked what they move.
var wanted map[string]bool

func change(lit *ast.BasicLit) string {
	if wanted != nil {
		v, err := strconv.ParseFloat(strings.Trim(strings.ReplaceAll(lit.Value, "_", ""), `"`), 64)
		if err != nil {
			return ""
		}
		s := strconv.FormatFloat(v*1.01, 'g', -1, 64)
		if lit.Kind == token.STRING {
			s = strconv.Quote(s)
		}
		return s
	}
	if lit.Kind == token.INT {
		v, err := strconv.ParseInt(lit.Value, 0, 64)
		if err != nil {
			return ""
		}
		return strconv.FormatInt(v+1, 10)
	}
	v, err := strconv.ParseFloat(strings.ReplaceAll(lit.Value, "_", ""), 64)
	if err != nil {
		return ""
	}
	if v == 0 {
		return "1.0"
	}
	s := strconv.FormatFloat(v*1.05, 'g', -1, 64)
	if !strings.ContainsAny(s, ".e") {
		s += ".0"
	}
	return s
}
