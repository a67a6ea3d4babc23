package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"go/types"
	"os"
	"slices"
	"strings"
)

// consts changes constants where they are used.
type consts struct {
	fset *token.FileSet
	pkg  *types.Package
	info *types.Info
	of   map[*literal]types.Object // the constant that a literal stands in
	decl map[types.Object]*declared
	src  map[string][]byte
}

// declared is the expression of a constant and the constants in it.
type declared struct {
	file       string
	start, end int
	typ        string
	uses       []*ast.Ident
	qualified  bool // it names another package
	fixed      bool // it is used where only a constant may stand
}

// owner returns the constant whose declaration holds the literal.
func (cs *consts) owner(stack []ast.Node) types.Object {
	for i := len(stack) - 1; i >= 0; i-- {
		spec, ok := stack[i].(*ast.ValueSpec)
		if !ok || len(spec.Names) != len(spec.Values) {
			continue
		}
		for k, v := range spec.Values {
			if v != stack[i+1] {
				continue
			}
			c := cs.info.Defs[spec.Names[k]]
			if c == nil {
				return nil
			}
			cs.declare(c, spec, v)
			return c
		}
	}
	return nil
}

func (cs *consts) declare(c types.Object, spec *ast.ValueSpec, v ast.Expr) {
	if cs.decl[c] != nil {
		return
	}
	p, q := cs.fset.Position(v.Pos()), cs.fset.Position(v.End())
	d := &declared{file: p.Filename, start: p.Offset, end: q.Offset}
	if spec.Type != nil {
		d.typ = types.TypeString(cs.info.Types[spec.Type].Type, types.RelativeTo(cs.pkg))
		d.qualified = strings.Contains(d.typ, ".")
	}
	ast.Inspect(v, func(x ast.Node) bool {
		switch x := x.(type) {
		case *ast.SelectorExpr:
			d.qualified = true
		case *ast.Ident:
			if x.Name == "iota" {
				d.fixed = true
			}
			d.uses = append(d.uses, x)
		}
		return true
	})
	cs.decl[c] = d
}

// changed is the expression of c with literal l changed, or nothing if c does not
// rest on it.
func (cs *consts) changed(c types.Object, l *literal) string {
	d := cs.decl[c]
	if d == nil {
		return ""
	}
	src := cs.src[d.file]
	if cs.of[l] == c {
		return d.wrap(string(src[d.start:l.start]) + l.new + string(src[l.end:d.end]))
	}
	text, at, touched := "", d.start, false
	for _, u := range d.uses {
		inner := cs.changed(cs.info.Uses[u], l)
		if inner == "" {
			continue
		}
		from := cs.fset.Position(u.Pos()).Offset
		text += string(src[at:from]) + inner
		at, touched = from+len(u.Name), true
	}
	if !touched {
		return ""
	}
	return d.wrap(text + string(src[at:d.end]))
}

func (d *declared) wrap(text string) string { return d.typ + "(" + text + ")" }

// use lays the changes of constants over the places that use them.
func (cs *consts) use(files []*ast.File, all []*literal, edits map[string][]edit) error {
	type place struct {
		file string
		at   *ast.Ident
		typ  string
	}
	places := map[types.Object][]place{}
	for _, f := range files {
		name := cs.fset.Position(f.Pos()).Filename
		src, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		cs.src[name] = src
		imported := importsOf(f)
		walk(f, func(x ast.Node, stack []ast.Node) {
			id, ok := x.(*ast.Ident)
			if !ok {
				return
			}
			c, ok := cs.info.Uses[id].(*types.Const)
			if !ok || c.Pkg() != cs.pkg {
				return
			}
			if spec, v := specOf(stack); spec != nil { // a constant of constants
				for k, e := range spec.Values {
					if e == v && len(spec.Names) == len(spec.Values) {
						cs.declare(cs.info.Defs[spec.Names[k]], spec, e)
					}
				}
				return
			}
			t := nameable(typeOf(cs.info, stack), cs.pkg, imported)
			if kv, ok := stack[len(stack)-2].(*ast.KeyValueExpr); t == "" || constant(stack) || ok && kv.Key == id {
				t = ""
			}
			places[c] = append(places[c], place{name, id, t})
		})
	}
	// Which literal reaches which places; one that reaches a fixed place is tried alone.
	texts := map[*ast.Ident]string{}
	for i, l := range all {
		if cs.of[l] == nil {
			continue
		}
		type hit struct {
			p    place
			text string
		}
		var hits []hit
		free := true
		for c, ps := range places {
			text := cs.changed(c, l)
			if text == "" {
				continue
			}
			d := cs.decl[c]
			for _, p := range ps {
				if wanted != nil && slices.Contains([]string{"int", "int32", "int64", "uint8", "uint64", "time.Duration"}, p.typ) {
					l.counts = true
				}
				if p.typ == "" || d.fixed || d.qualified && p.file != d.file {
					free = false
				}
				hits = append(hits, hit{p, text})
			}
		}
		if !free || len(hits) == 0 || l.counts {
			continue
		}
		l.built = true
		for _, h := range hits {
			text := texts[h.p.at]
			if text == "" {
				text = h.p.at.Name
			}
			texts[h.p.at] = fmt.Sprintf("picked.V[%s](%d, %s, %s)", h.p.typ, firstID+i, text, h.text)
		}
	}
	for at, text := range texts {
		p := cs.fset.Position(at.Pos())
		edits[p.Filename] = append(edits[p.Filename], edit{p.Offset, p.Offset + len(at.Name), text})
	}
	return nil
}

// specOf returns the const declaration around, and the expression in it.
func specOf(stack []ast.Node) (*ast.ValueSpec, ast.Expr) {
	for i := len(stack) - 2; i >= 1; i-- {
		spec, ok := stack[i].(*ast.ValueSpec)
		if !ok {
			continue
		}
		if g, ok := stack[i-1].(*ast.GenDecl); ok && g.Tok == token.CONST {
			v, _ := stack[i+1].(ast.Expr)
			return spec, v
		}
	}
	return nil, nil
}
