package documents

import (
	"bytes"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// longest is the most bytes of a line of Go that is read without scrolling.
const longest = 160

// No line is longer, but what is raw text of another language, what an example prints, and what a field of the
// request says of itself, which the form shows.
func TestLinesAreShort(t *testing.T) {
	const root = "../.."
	err := filepath.WalkDir(root, func(path string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(path) != ".go" {
			return err
		}
		source, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		for _, line := range longLines(t, path, source) {
			t.Errorf("%s:%d: more than %d bytes", path, line, longest)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	long := "package p\n\n// " + strings.Repeat("x", longest) + "\nvar x = `" + strings.Repeat("y", longest) + "`\n\n// Output: " +
		strings.Repeat("z", longest) + "\n"
	if got := longLines(t, "", []byte(long)); len(got) != 1 || got[0] != 3 {
		t.Errorf("long lines found: %v, want the third alone", got)
	}
}

func longLines(t *testing.T, path string, source []byte) (long []int) {
	t.Helper()
	lines := bytes.Split(source, []byte("\n"))
	for i, line := range lines {
		if len(line) > longest {
			long = append(long, i+1)
		}
	}
	if long == nil {
		return nil
	}
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, path, source, parser.ParseComments)
	if err != nil {
		t.Fatal(err)
	}
	free := map[int]bool{}
	mark := func(n ast.Node) {
		for i := set.Position(n.Pos()).Line; i <= set.Position(n.End()).Line; i++ {
			free[i] = true
		}
	}
	for _, c := range file.Comments {
		if strings.Contains(strings.ToLower(c.Text()), "output:") {
			mark(c)
		}
	}
	ast.Inspect(file, func(n ast.Node) bool {
		if s, ok := n.(*ast.BasicLit); ok && s.Kind == token.STRING && (s.Value[0] == '`' || strings.HasPrefix(s.Value, "\"`")) {
			mark(s)
		}
		if f, ok := n.(*ast.Field); ok && f.Tag != nil && f.Comment != nil {
			mark(f.Comment)
		}
		return true
	})
	out := long[:0]
	for _, i := range long {
		if !free[i] {
			out = append(out, i)
		}
	}
	return out
}
