package documents

import (
	"flag"
	"fmt"
	"go/types"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the listing of the public face again")

// The public face is what testdata/api.txt lists: exported names with their signatures. A
// change is made on purpose: run with -update, and read the difference.
func TestAPI(t *testing.T) {
	_, from := shared()
	var lines []string
	for _, name := range face(t) {
		pkg, err := from.Import("example.org/zymase/" + name)
		if err != nil {
			t.Fatal(err)
		}
		lines = append(lines, list(name, pkg)...)
	}
	got := strings.Join(lines, "\n") + "\n"
	const file = "testdata/api.txt"
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	listed := strings.Split(strings.TrimSuffix(string(want), "\n"), "\n")
	for _, l := range lines {
		if !slices.Contains(listed, l) {
			t.Errorf("new: %s", l)
		}
	}
	for _, l := range listed {
		if !slices.Contains(lines, l) {
			t.Errorf("gone: %s", l)
		}
	}
}

// face names the packages of the public face: the five, each with those below it, and the
// plan and the batch, which others import too.
func face(t *testing.T) (names []string) {
	const root = "../.."
	for _, top := range []string{"units", "gravity", "water", "carbonation", "nutrient", "examples/seltzer/plan", "examples/seltzer/batch"} {
		err := filepath.WalkDir(filepath.Join(root, top), func(path string, d fs.DirEntry, err error) error {
			if err != nil || !d.IsDir() {
				return err
			}
			if d.Name() == "testdata" || d.Name() == "internal" {
				return fs.SkipDir
			}
			if sources, _ := filepath.Glob(filepath.Join(path, "*.go")); len(sources) > 0 {
				rel, _ := filepath.Rel(root, path)
				names = append(names, filepath.ToSlash(rel))
			}
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return names
}

// list says what a package exports, in order.
func list(path string, pkg *types.Package) []string {
	short := func(p *types.Package) string {
		if p == pkg {
			return ""
		}
		return p.Name()
	}
	var out []string
	add := func(format string, a ...any) { out = append(out, path+": "+fmt.Sprintf(format, a...)) }
	for _, name := range pkg.Scope().Names() {
		o := pkg.Scope().Lookup(name)
		if !o.Exported() {
			continue
		}
		tn, isType := o.(*types.TypeName)
		named, isNamed := o.Type().(*types.Named)
		s, isStruct := o.Type().Underlying().(*types.Struct)
		if !isType || !isNamed || !isStruct || tn.IsAlias() {
			add("%s", types.ObjectString(o, short))
		} else {
			add("type %s struct", name) // fields that are not exported are nobody's business
		}
		if !isType || !isNamed || tn.IsAlias() {
			continue
		}
		if isStruct {
			for f := range s.Fields() {
				if f.Exported() {
					add("%s.%s %s", name, f.Name(), types.TypeString(f.Type(), short))
				}
			}
		}
		for m := range named.Methods() {
			if m.Exported() {
				add("%s", types.ObjectString(m, short))
			}
		}
	}
	return out
}
