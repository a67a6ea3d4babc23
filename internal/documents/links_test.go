package documents

import (
	"go/ast"
	"go/doc"
	"go/doc/comment"
	"go/parser"
	"go/token"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// What a comment of the public face refers to by [Name] is there.
func TestCommentsNameWhatIsThere(t *testing.T) {
	type names map[string]bool
	known := map[string]names{} // by the package's own name
	docs := map[string][]string{}
	for _, path := range face(t) {
		fset := token.NewFileSet()
		var files []*ast.File
		sources, err := filepath.Glob(filepath.Join("../..", path, "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		for _, source := range sources {
			if strings.HasSuffix(source, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(fset, source, nil, parser.ParseComments)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, f)
		}
		pkg, err := doc.NewFromFiles(fset, files, "example.org/zymase/"+path)
		if err != nil {
			t.Fatal(err)
		}
		has := names{}
		add := func(text string, of ...string) {
			for _, name := range of {
				has[name] = true
			}
			docs[pkg.Name] = append(docs[pkg.Name], text)
		}
		add(pkg.Doc)
		for _, v := range append(pkg.Consts, pkg.Vars...) {
			add(v.Doc, v.Names...)
		}
		for _, f := range pkg.Funcs {
			add(f.Doc, f.Name)
		}
		for _, ty := range pkg.Types {
			add(ty.Doc, ty.Name)
			for _, v := range append(ty.Consts, ty.Vars...) {
				add(v.Doc, v.Names...)
			}
			for _, f := range ty.Funcs {
				add(f.Doc, f.Name)
			}
			for _, m := range ty.Methods {
				add(m.Doc, ty.Name+"."+m.Name)
			}
			for _, spec := range ty.Decl.Specs {
				if s, is := spec.(*ast.TypeSpec).Type.(*ast.StructType); is {
					for _, field := range s.Fields.List {
						for _, name := range field.Names {
							add(field.Doc.Text()+field.Comment.Text(), ty.Name+"."+name.Name)
						}
					}
				}
			}
		}
		known[pkg.Name] = has
	}
	links := 0
	for pkg, texts := range docs {
		p := comment.Parser{
			LookupPackage: func(name string) (string, bool) { return name, true },
			LookupSym:     func(recv, name string) bool { return true },
		}
		walk := func(in []comment.Text) {
			for _, one := range in {
				link, is := one.(*comment.DocLink)
				if !is {
					continue
				}
				links++
				of, name := link.ImportPath, link.Name
				if of == "" {
					of = pkg
				}
				of = of[strings.LastIndex(of, "/")+1:]
				if link.Recv != "" {
					name = link.Recv + "." + name
				}
				if has, ours := known[of]; ours && name != "" && !has[name] {
					t.Errorf("package %s: a comment names %s.%s, which is not there", pkg, of, name)
				}
			}
		}
		for _, text := range texts {
			for _, block := range p.Parse(text).Content {
				switch b := block.(type) {
				case *comment.Paragraph:
					walk(b.Text)
				case *comment.List:
					for _, item := range b.Items {
						for _, in := range item.Content {
							if para, is := in.(*comment.Paragraph); is {
								walk(para.Text)
							}
						}
					}
				}
			}
		}
	}
	if links < 500 {
		t.Errorf("%d links only", links)
	}
}

// screen is the lines of a terminal that fills a laptop.
const screen = 55

// The story of a package and the names in it fit on two screens; the plan's names are
// the fields of what it reads and writes.
func TestGoDocFitsOnTwoScreens(t *testing.T) {
	if testing.Short() {
		t.Skip("asks the go command for each package")
	}
	for _, path := range face(t) {
		if path == "examples/seltzer/plan" {
			continue
		}
		out, err := exec.Command("go", "doc", "example.org/zymase/"+path).Output()
		if err != nil {
			t.Fatal(err)
		}
		if lines := strings.Count(string(out), "\n"); lines > 2*screen {
			t.Errorf("%s: %d lines", path, lines)
		}
	}
}
