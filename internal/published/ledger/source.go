package ledger

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"math"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Rooms are the directories whose Go files hold physics; the packages of them that hold none are
// named in plain.
var Rooms = []string{"units", "gravity", "water", "carbonation", "nutrient", "internal"}

// plain are packages without brewing in them, and why: what their numbers do is set how something
// is computed, read or written.
var plain = map[string]string{
	"internal/numeric":          "roots, constrained least squares, the exponential: arithmetic",
	"internal/published":        "how a table is read",
	"internal/published/ledger": "this walk",
	"internal/documents":        "tests",
	"internal/check":            "tests",
	"internal/limit":            "how a refusal reads",
	"internal/choice":           "texts of an enumeration",
	"internal/checked":          "the type of constants",
}

// A Found is a declaration of the source with the numbers that it holds.
type Found struct {
	File, Name string
	Numbers    []string // as they stand in the source, in order
	Offsets    []int    // of each in its file
	Doc        string   // the comment above and behind it
}

// Key tells declarations apart.
func (f *Found) Key() string { return f.File + " " + f.Name }

// Value is how the ledger writes the numbers: all of them up to eight, else how many there are, the
// first and the last, and their sum, which shows a change of any one.
func (f *Found) Value() string {
	if len(f.Numbers) <= 8 {
		return strings.Join(f.Numbers, " ")
	}
	sum := 0.0
	for _, n := range f.Numbers {
		v, _ := strconv.ParseFloat(strings.ReplaceAll(n, "_", ""), 64)
		sum += math.Abs(v)
	}
	return fmt.Sprintf("%d numbers: %s … %s, sum %s", len(f.Numbers), f.Numbers[0], f.Numbers[len(f.Numbers)-1], strconv.FormatFloat(sum, 'g', 12, 64))
}

// Walk finds every declaration under the rooms of the tree that holds a number of meaning: not one
// that indexes, sizes, counts to four, shifts a decimal point, or bounds what a function takes
// (limit.Check names the source of its bounds itself).
func Walk(tree fs.FS) ([]Found, error) {
	var all []Found
	for _, room := range Rooms {
		err := fs.WalkDir(tree, room, func(p string, d fs.DirEntry, err error) error {
			if err != nil {
				return err
			}
			if d.IsDir() {
				if plain[p] != "" && p != "internal/published" || d.Name() == "testdata" || d.Name() == "tables" {
					return fs.SkipDir
				}
				return nil
			}
			if !strings.HasSuffix(p, ".go") || strings.HasSuffix(p, "_test.go") || plain[path.Dir(p)] != "" {
				return nil
			}
			src, err := fs.ReadFile(tree, p)
			if err != nil {
				return err
			}
			found, err := In(p, src)
			all = append(all, found...)
			return err
		})
		if err != nil {
			return nil, err
		}
	}
	return all, nil
}

// In finds the declarations of one file.
func In(file string, src []byte) ([]Found, error) {
	fset := token.NewFileSet()
	f, err := parser.ParseFile(fset, file, src, parser.ParseComments)
	if err != nil {
		return nil, err
	}
	var all []Found
	add := func(name, doc string, node ast.Node) {
		numbers, offsets := numbersOf(fset, node)
		if len(numbers) > 0 {
			all = append(all, Found{file, name, numbers, offsets, strings.TrimSpace(doc)})
		}
	}
	for _, d := range f.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Body != nil {
				add(NameOf(d), d.Doc.Text(), d.Body)
			}
		case *ast.GenDecl:
			if d.Tok != token.CONST && d.Tok != token.VAR {
				continue
			}
			for _, s := range d.Specs {
				v := s.(*ast.ValueSpec)
				doc := v.Doc.Text() + v.Comment.Text()
				if len(d.Specs) == 1 || doc == "" {
					doc = d.Doc.Text() + doc
				}
				if len(v.Values) != len(v.Names) {
					continue
				}
				for i, x := range v.Values {
					if parts := rowsOf(x); parts != nil {
						for _, r := range parts {
							add(v.Names[i].Name+"["+r.name+"]", doc, r.node)
						}
						continue
					}
					add(v.Names[i].Name, doc, x)
				}
			}
		}
	}
	return all, nil
}

// A row of a table that is written as one: each has a source of its own.
type row struct {
	name string
	node ast.Node
}

// rowsOf returns the rows of a table of four rows or more, by their key or by the names in them, or
// nothing for any other expression and for a list of plain numbers.
func rowsOf(x ast.Expr) []row {
	table, ok := x.(*ast.CompositeLit)
	if !ok || len(table.Elts) < 4 {
		return nil
	}
	var rows []row
	seen := map[string]int{}
	for _, e := range table.Elts {
		name, value := "", e
		if kv, ok := e.(*ast.KeyValueExpr); ok {
			value = kv.Value
			if id, ok := kv.Key.(*ast.Ident); ok {
				name = id.Name
			}
		}
		if _, plain := value.(*ast.BasicLit); plain {
			return nil
		}
		if name == "" {
			name = namesIn(value)
		}
		if name == "" {
			return nil
		}
		if seen[name]++; seen[name] > 1 {
			name += " " + strconv.Itoa(seen[name])
		}
		rows = append(rows, row{name, value})
	}
	return rows
}

// namesIn is the first text in a row that is no number, or the first names of what it calls.
func namesIn(x ast.Expr) string {
	if call, ok := x.(*ast.CallExpr); ok && len(call.Args) > 0 {
		if lit, ok := call.Args[0].(*ast.BasicLit); ok && lit.Kind == token.STRING && !decimalText.MatchString(lit.Value) {
			text, _ := strconv.Unquote(lit.Value)
			return text
		}
	}
	var text string
	var idents []string
	ast.Inspect(x, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.KeyValueExpr:
			if _, ok := n.Key.(*ast.Ident); ok {
				ast.Inspect(n.Value, func(n ast.Node) bool {
					if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING && text == "" {
						text, _ = strconv.Unquote(lit.Value)
					}
					return true
				})
				return false
			}
		case *ast.BasicLit:
			if n.Kind == token.STRING && text == "" && !decimalText.MatchString(n.Value) {
				text, _ = strconv.Unquote(n.Value)
			}
		case *ast.Ident:
			idents = append(idents, n.Name)
		}
		return true
	})
	if call, ok := x.(*ast.CallExpr); ok && call != nil || text == "" {
		return strings.ToLower(strings.Join(idents, " ")) // a name that is exported one day stays the same row
	}
	return text
}

// decimalText is a number that stands as a text, as limits of law do.
var decimalText = regexp.MustCompile(`^"[0-9]+(\.[0-9]+)?"$`)

// NameOf is how go doc writes a function or method: Type.Method.
func NameOf(d *ast.FuncDecl) string {
	if d.Recv == nil {
		return d.Name.Name
	}
	of := d.Recv.List[0].Type
	for {
		switch t := of.(type) {
		case *ast.StarExpr:
			of = t.X
		case *ast.IndexExpr:
			of = t.X
		case *ast.IndexListExpr:
			of = t.X
		case *ast.Ident:
			return t.Name + "." + d.Name.Name
		default:
			return d.Name.Name
		}
	}
}

func numbersOf(fset *token.FileSet, node ast.Node) (numbers []string, offsets []int) {
	var stack []ast.Node
	ast.Inspect(node, func(x ast.Node) bool {
		if x == nil {
			stack = stack[:len(stack)-1]
			return true
		}
		stack = append(stack, x)
		lit, ok := x.(*ast.BasicLit)
		if ok && ((lit.Kind == token.INT || lit.Kind == token.FLOAT) && meant(lit, stack) || lit.Kind == token.STRING && decimalText.MatchString(lit.Value)) {
			numbers, offsets = append(numbers, strings.Trim(lit.Value, `"`)), append(offsets, fset.Position(lit.Pos()).Offset)
		}
		return true
	})
	return numbers, offsets
}

// meant tells a number of meaning from one that counts, indexes, sizes or shifts a decimal point.
func meant(lit *ast.BasicLit, stack []ast.Node) bool {
	v, err := strconv.ParseFloat(strings.ReplaceAll(lit.Value, "_", ""), 64)
	if err != nil {
		return false
	}
	if lit.Kind == token.INT && v <= 4 || v == 0 || v == 1 || v == 2 || shift(v, lit) {
		return false
	}
	for i := len(stack) - 2; i >= 0; i-- {
		switch x := stack[i].(type) {
		case *ast.IndexExpr:
			if x.Index.Pos() <= lit.Pos() && lit.End() <= x.Index.End() {
				return false
			}
		case *ast.SliceExpr, *ast.ArrayType:
			return false
		case *ast.KeyValueExpr:
			if x.Key.Pos() <= lit.Pos() && lit.End() <= x.Key.End() && lit.Kind == token.INT && v < 64 {
				return false // the place in a table
			}
		case *ast.CallExpr:
			if !means(x) {
				return false
			}
		}
	}
	return true
}

// shift reports a power of ten: one that turns a unit into another of its kind, or a percentage
// into a share, or says near enough. A tenth and a hundredth written as such may be a figure.
func shift(v float64, lit *ast.BasicLit) bool {
	if lit.Kind == token.FLOAT && !strings.ContainsAny(lit.Value, "eE") {
		return false
	}
	p := math.Log10(v)
	return math.Abs(p-math.Round(p)) < 1e-12
}

// means reports whether the arguments of a call may be figures.
func means(call *ast.CallExpr) bool {
	switch f := call.Fun.(type) {
	case *ast.Ident:
		return !slices.Contains([]string{"make", "len", "panic"}, f.Name)
	case *ast.SelectorExpr:
		id, ok := f.X.(*ast.Ident)
		return !ok || !slices.Contains([]string{"strconv", "fmt", "strings", "limit", "utf8", "bits"}, id.Name)
	}
	return true
}
