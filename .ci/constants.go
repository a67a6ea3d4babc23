//go:build ignore

// Command constants changes the numeric literals of a package one at a time and
// lists those whose change no test of the package notices: a real literal is
// scaled by 1.05, a nought becomes 1.0, a whole one is raised by 1.
//
//	go run .ci/constants.go ./gravity
//
// One test binary carries every change and an environment variable picks one, so
// a package takes minutes, not hours. A literal of a const declaration is changed
// where the constant is used; only what must stay a constant to the compiler (the
// length of an array) is laid over the tree and compiled by itself.
package main

import (
	"bytes"
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"sort"
	"strconv"
	"strings"
	"sync"
	"time"
)

const picker = `package picked

import (
	"os"
	"strconv"
)

var at = func() int {
	n, err := strconv.Atoi(os.Getenv("ZYMASE_LITERAL"))
	if err != nil {
		return -1
	}
	return n
}()

// V is the literal a, or b when this literal is the one picked.
func V[T any](i int, a, b T) T {
	if i == at {
		return b
	}
	return a
}
`

type literal struct {
	file       string
	line       int
	start, end int
	old, new   string
	typ        string // empty: it must stay a constant
	verdict    string
	built      bool // into the one binary
}

// An edit of the one binary's sources.
type edit struct {
	start, end int
	text       string
}

func main() {
	limit := flag.Duration("timeout", time.Minute, "time limit of one run of the tests")
	most := flag.Float64("most", 100, "the most that may go unnoticed, in per cent; more is a failure")
	only := flag.String("only", "", "only files whose name holds this")
	quick := flag.Bool("quick", false, "leave out the literals that need a build of their own")
	list := flag.Bool("left", false, "list what is left out")
	flag.Parse()
	failed := false
	for _, dir := range flag.Args() {
		share, err := pack(dir, *limit, *only, *quick, *list)
		if err != nil {
			fmt.Fprintln(os.Stderr, "constants:", err)
			os.Exit(2)
		}
		failed = failed || share > *most
	}
	if failed {
		os.Exit(1)
	}
}

func pack(dir string, limit time.Duration, only string, quick, list bool) (float64, error) {
	all, edits, err := literals(dir)
	if err != nil {
		return 0, err
	}
	work, err := os.MkdirTemp("", "constants")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(work)
	bin, err := build(dir, work, edits)
	if err != nil {
		return 0, err
	}
	if out, ok := runBinary(bin, dir, -1, 5*limit); !ok {
		return 0, fmt.Errorf("%s: the tests fail unchanged:\n%s", dir, out)
	}
	jobs := make(chan int)
	var wg sync.WaitGroup
	for range runtime.NumCPU() {
		wg.Go(func() {
			for i := range jobs {
				l := all[i]
				if l.built {
					l.verdict = "alive"
					if _, ok := runBinary(bin, dir, i, limit); !ok {
						l.verdict = "killed"
					}
				} else {
					l.verdict = alone(dir, l, limit)
				}
			}
		})
	}
	for i, l := range all {
		if strings.Contains(l.file, only) && !(quick && !l.built) {
			jobs <- i
		}
	}
	close(jobs)
	wg.Wait()
	counts := map[string]int{}
	for _, l := range all {
		counts[l.verdict]++
		if list && l.verdict == "" {
			fmt.Printf("%s:%d: %s left out\n", l.file, l.line, l.old)
		}
		if l.verdict == "alive" {
			fmt.Printf("%s:%d: %s -> %s\n", l.file, l.line, l.old, l.new)
		}
	}
	tried := counts["killed"] + counts["alive"]
	share := 100 * float64(counts["alive"]) / float64(max(tried, 1))
	fmt.Printf("%s: %d literals, %d noticed, %d not (%.1f %%), %d did not compile, %d left out\n",
		dir, len(all), counts["killed"], counts["alive"], share, counts["broken"], counts[""])
	return share, nil
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
		imported := map[string]string{}
		for _, im := range f.Imports {
			p, _ := strconv.Unquote(im.Path.Value)
			imported[p] = ""
			if im.Name != nil {
				imported[p] = im.Name.Name
			}
		}
		var stack []ast.Node
		ast.Inspect(f, func(x ast.Node) bool {
			if x == nil {
				stack = stack[:len(stack)-1]
				return true
			}
			stack = append(stack, x)
			lit, ok := x.(*ast.BasicLit)
			if !ok || (lit.Kind != token.FLOAT && lit.Kind != token.INT) {
				return true
			}
			if lit.Kind == token.INT && structural(stack) {
				return true
			}
			changed := change(lit)
			if changed == "" {
				return true
			}
			p := fset.Position(lit.Pos())
			l := &literal{file: p.Filename, line: p.Line, start: p.Offset, end: p.Offset + len(lit.Value), old: lit.Value, new: changed}
			if !constant(stack) {
				l.typ = nameable(typeOf(info, stack), pkg, imported)
				l.built = l.typ != ""
			} else if c := cs.owner(stack); c != nil {
				cs.of[l] = c
			}
			all = append(all, l)
			return true
		})
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].file < all[j].file })
	for i, l := range all {
		if l.built {
			edits[l.file] = append(edits[l.file], edit{l.start, l.end, fmt.Sprintf("picked.V[%s](%d, %s, %s)", l.typ, i, l.old, l.new)})
		}
	}
	if err := cs.use(files, all, edits); err != nil {
		return nil, nil, err
	}
	return all, edits, nil
}

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
		imported := map[string]string{}
		for _, im := range f.Imports {
			p, _ := strconv.Unquote(im.Path.Value)
			imported[p] = ""
			if im.Name != nil {
				imported[p] = im.Name.Name
			}
		}
		var stack []ast.Node
		ast.Inspect(f, func(x ast.Node) bool {
			if x == nil {
				stack = stack[:len(stack)-1]
				return true
			}
			stack = append(stack, x)
			id, ok := x.(*ast.Ident)
			if !ok {
				return true
			}
			c, ok := cs.info.Uses[id].(*types.Const)
			if !ok || c.Pkg() != cs.pkg {
				return true
			}
			if spec, v := specOf(stack); spec != nil { // a constant of constants
				for k, e := range spec.Values {
					if e == v && len(spec.Names) == len(spec.Values) {
						cs.declare(cs.info.Defs[spec.Names[k]], spec, e)
					}
				}
				return true
			}
			t := nameable(typeOf(cs.info, stack), cs.pkg, imported)
			if kv, ok := stack[len(stack)-2].(*ast.KeyValueExpr); t == "" || constant(stack) || ok && kv.Key == id {
				t = ""
			}
			places[c] = append(places[c], place{name, id, t})
			return true
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
				if p.typ == "" || d.fixed || d.qualified && p.file != d.file {
					free = false
				}
				hits = append(hits, hit{p, text})
			}
		}
		if !free || len(hits) == 0 {
			continue
		}
		l.built = true
		for _, h := range hits {
			text := texts[h.p.at]
			if text == "" {
				text = h.p.at.Name
			}
			texts[h.p.at] = fmt.Sprintf("picked.V[%s](%d, %s, %s)", h.p.typ, i, text, h.text)
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

// build compiles the tests of the package with every change in one binary.
func build(dir, work string, edits map[string][]edit) (string, error) {
	replace := map[string]string{}
	module, err := exec.Command("go", "list", "-m", "-f", "{{.Path}} {{.Dir}}").Output()
	if err != nil {
		return "", err
	}
	name, root, _ := strings.Cut(strings.TrimSpace(string(module)), " ")
	laid := filepath.Join(work, "picked.go")
	if err := os.WriteFile(laid, []byte(picker), 0o600); err != nil {
		return "", err
	}
	replace[filepath.Join(root, "internal", "picked", "picked.go")] = laid
	for file, changes := range edits {
		src, err := os.ReadFile(file)
		if err != nil {
			return "", err
		}
		sort.Slice(changes, func(i, j int) bool { return changes[i].start > changes[j].start })
		for _, c := range changes {
			src = bytes.Join([][]byte{src[:c.start], []byte(c.text), src[c.end:]}, nil)
		}
		f, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.PackageClauseOnly)
		if err != nil {
			return "", err
		}
		end := int(f.Name.End()) - int(f.FileStart)
		src = bytes.Join([][]byte{src[:end], []byte("; import \"" + name + "/internal/picked\""), src[end:]}, nil)
		to := filepath.Join(work, filepath.Base(file))
		if err := os.WriteFile(to, src, 0o600); err != nil {
			return "", err
		}
		abs, _ := filepath.Abs(file)
		replace[abs] = to
	}
	over, err := overlay(work, replace)
	if err != nil {
		return "", err
	}
	bin := filepath.Join(work, "tests")
	if out, err := exec.Command("go", "test", "-c", "-vet=off", "-overlay", over, "-o", bin, dir).CombinedOutput(); err != nil {
		return "", fmt.Errorf("%s: %w\n%s", dir, err, out)
	}
	return bin, nil
}

func overlay(work string, replace map[string]string) (string, error) {
	text, err := json.Marshal(map[string]map[string]string{"Replace": replace})
	if err != nil {
		return "", err
	}
	over := filepath.Join(work, "overlay.json")
	return over, os.WriteFile(over, text, 0o600)
}

func runBinary(bin, dir string, i int, limit time.Duration) (string, bool) {
	ctx, cancel := context.WithTimeout(context.Background(), limit+5*time.Second)
	defer cancel()
	cmd := exec.CommandContext(ctx, bin, "-test.failfast", "-rapid.nofailfile", "-test.timeout", limit.String())
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "ZYMASE_LITERAL="+strconv.Itoa(i))
	out, err := cmd.CombinedOutput()
	return string(out), err == nil
}

// alone tries one literal in a build of its own.
func alone(dir string, l *literal, limit time.Duration) string {
	work, err := os.MkdirTemp("", "constants")
	if err != nil {
		return "broken"
	}
	defer os.RemoveAll(work)
	src, err := os.ReadFile(l.file)
	if err != nil {
		return "broken"
	}
	to := filepath.Join(work, "changed.go")
	if err := os.WriteFile(to, bytes.Join([][]byte{src[:l.start], []byte(l.new), src[l.end:]}, nil), 0o600); err != nil {
		return "broken"
	}
	abs, _ := filepath.Abs(l.file)
	over, err := overlay(work, map[string]string{abs: to})
	if err != nil {
		return "broken"
	}
	bin := filepath.Join(work, "tests")
	if err := exec.Command("go", "test", "-c", "-vet=off", "-ldflags=-s -w", "-overlay", over, "-o", bin, dir).Run(); err != nil {
		return "broken"
	}
	if _, ok := runBinary(bin, dir, -1, limit); ok {
		return "alive"
	}
	return "killed"
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

func change(lit *ast.BasicLit) string {
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
