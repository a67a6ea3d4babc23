// Command branches counts the error branches of packages, the bodies of
// "if … err != nil", and lists those that no test of their package enters. One that
// cannot be entered says why behind its brace, "// not reached: the root is bracketed",
// and does not count; if a test enters it all the same, that is listed.
//
// usage: go run .ci/branches.go [-least 97] ./package ... ./folder/... ...
//
// A folder with ... counts as one package: its rooms test one another.
//
// Exit 1 when the share of a package is below the least.
package main

import (
	"bufio"
	"flag"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

type place struct {
	file         string
	line, column int
}

func main() {
	least := flag.Float64("least", 0, "share of branches entered in each package, %")
	flag.Parse()
	low := false
	for _, dir := range flag.Args() {
		entered, err := profile(dir)
		if err == nil {
			var total, hit int
			if total, hit, err = branches(dir, entered); err == nil {
				share := 100 * float64(hit) / float64(max(total, 1))
				fmt.Printf("%-16s %4d of %4d error branches entered by tests, %.1f %%\n", dir, hit, total, share)
				low = low || share < *least
			}
		}
		if err != nil {
			fmt.Fprintln(os.Stderr, "branches:", dir+":", err)
			os.Exit(1)
		}
	}
	if low {
		fmt.Printf("less than %.1f %%\n", *least)
		os.Exit(1)
	}
}

// profile runs the tests of a package, and tells of each block whether it ran.
func profile(dir string) (map[place]bool, error) {
	temporary, err := os.MkdirTemp("", "branches")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(temporary)
	out := filepath.Join(temporary, "cover")
	if said, err := exec.Command("go", "test", "-coverprofile", out, "-coverpkg", dir, dir).CombinedOutput(); err != nil {
		return nil, fmt.Errorf("%w\n%s", err, said)
	}
	f, err := os.Open(out)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	ran := map[place]bool{}
	lines := bufio.NewScanner(f)
	for lines.Scan() {
		name, rest, found := strings.Cut(lines.Text(), ".go:")
		if !found {
			continue // the mode
		}
		p := place{file: strings.TrimPrefix(name, "example.org/zymase/") + ".go"}
		var endLine, endColumn, statements, count int
		if _, err := fmt.Sscanf(rest, "%d.%d,%d.%d %d %d", &p.line, &p.column, &endLine, &endColumn, &statements, &count); err != nil {
			return nil, err
		}
		ran[p] = ran[p] || count > 0
	}
	return ran, lines.Err()
}

// branches counts the error branches of a package and those entered, and lists the rest.
func branches(dir string, ran map[place]bool) (total, hit int, err error) {
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if root, all := strings.CutSuffix(dir, "/..."); all {
		files = nil
		err = filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if filepath.Ext(path) == ".go" {
				files = append(files, filepath.Clean(path))
			}
			return err
		})
	}
	if err != nil {
		return 0, 0, err
	}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, name, nil, parser.ParseComments)
		if err != nil {
			return 0, 0, err
		}
		unreached := map[int]bool{} // by line
		for _, group := range file.Comments {
			for _, c := range group.List {
				if strings.HasPrefix(c.Text, "// not reached: ") {
					unreached[set.Position(c.Pos()).Line] = true
				}
			}
		}
		ast.Inspect(file, func(n ast.Node) bool {
			branch, is := n.(*ast.IfStmt)
			if !is || !onError(branch.Cond) || len(branch.Body.List) == 0 {
				return true
			}
			// A block begins at its brace or behind it, by the version of Go.
			at := set.Position(branch.Body.Lbrace)
			first := set.Position(branch.Body.List[0].Pos())
			entered := ran[place{name, at.Line, at.Column}] || ran[place{name, at.Line, at.Column + 1}] || ran[place{name, first.Line, first.Column}]
			if unreached[at.Line] {
				if entered {
					fmt.Printf("%s:%d is reached\n", name, at.Line)
				}
				return true
			}
			total++
			if entered {
				hit++
			} else {
				fmt.Printf("%s:%d\n", name, at.Line)
			}
			return true
		})
	}
	return total, hit, nil
}

// onError reports whether a condition asks for an error: x != nil.
func onError(condition ast.Expr) bool {
	c, is := condition.(*ast.BinaryExpr)
	if !is {
		return false
	}
	if c.Op == token.LAND || c.Op == token.LOR {
		return onError(c.X) || onError(c.Y)
	}
	null, is := c.Y.(*ast.Ident)
	return is && c.Op == token.NEQ && null.Name == "nil"
}
