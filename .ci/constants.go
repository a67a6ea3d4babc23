//go:build ignore

// Command constants changes the numeric literals of a package one at a time and
// lists those whose change no test of the package notices: a real literal is
// scaled by 1.05, a nought becomes 1.0, a whole one is raised by 1.
//
//	go run .ci/constants.go ./gravity
//
// One test binary carries every change and an environment variable picks one, so
// a package takes minutes, not hours. What must stay a constant to the compiler
// (a const declaration) is laid over the tree and compiled by itself.
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
}

func main() {
	limit := flag.Duration("timeout", time.Minute, "time limit of one run of the tests")
	most := flag.Float64("most", 100, "the most that may go unnoticed, in per cent; more is a failure")
	only := flag.String("only", "", "only files whose name holds this")
	quick := flag.Bool("quick", false, "leave out the literals of const declarations")
	flag.Parse()
	failed := false
	for _, dir := range flag.Args() {
		share, err := pack(dir, *limit, *only, *quick)
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

func pack(dir string, limit time.Duration, only string, quick bool) (float64, error) {
	all, err := literals(dir)
	if err != nil {
		return 0, err
	}
	work, err := os.MkdirTemp("", "constants")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(work)
	bin, err := build(dir, work, all)
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
				if l.typ != "" {
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
		if strings.Contains(l.file, only) && !(quick && l.typ == "") {
			jobs <- i
		}
	}
	close(jobs)
	wg.Wait()
	counts := map[string]int{}
	for _, l := range all {
		counts[l.verdict]++
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
func literals(dir string) ([]*literal, error) {
	fset := token.NewFileSet()
	lookup, path, names, err := listed(dir)
	if err != nil {
		return nil, err
	}
	var files []*ast.File
	for _, name := range names {
		f, err := parser.ParseFile(fset, filepath.Join(dir, name), nil, 0)
		if err != nil {
			return nil, err
		}
		files = append(files, f)
	}
	info := &types.Info{Types: map[ast.Expr]types.TypeAndValue{}}
	conf := types.Config{Importer: importer.ForCompiler(fset, "gc", lookup)}
	pkg, err := conf.Check(path, fset, files, info)
	if err != nil {
		return nil, err
	}
	var all []*literal
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
				l.typ = nameable(info.Types[lit].Type, pkg, imported)
			}
			all = append(all, l)
			return true
		})
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].file < all[j].file })
	return all, nil
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
func build(dir, work string, all []*literal) (string, error) {
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
	byFile := map[string][]int{}
	for i, l := range all {
		if l.typ != "" {
			byFile[l.file] = append(byFile[l.file], i)
		}
	}
	for file, at := range byFile {
		src, err := os.ReadFile(file)
		if err != nil {
			return "", err
		}
		sort.Slice(at, func(i, j int) bool { return all[at[i]].start > all[at[j]].start })
		for _, i := range at {
			l := all[i]
			call := fmt.Sprintf("picked.V[%s](%d, %s, %s)", l.typ, i, l.old, l.new)
			src = bytes.Join([][]byte{src[:l.start], []byte(call), src[l.end:]}, nil)
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
