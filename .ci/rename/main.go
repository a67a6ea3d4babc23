// Command rename gives the module the path of a host: imports, go.mod, README, notes and test data.
// Run it in a checkout, look at the change, commit and tag:
//
//	go run ./.ci/rename github.com/you/zymase
//	go test ./...
//	git commit -am "The module is github.com/you/zymase" && git tag v0.1.0
//
// .ci/release does all of this in a copy and fetches the result from another module.
package main

import (
	"bytes"
	"fmt"
	"go/format"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "usage: go run ./.ci/rename HOST/PATH")
		os.Exit(2)
	}
	n, err := rename(".", os.Args[1])
	if err != nil {
		fmt.Fprintln(os.Stderr, "rename:", err)
		os.Exit(1)
	}
	fmt.Printf("%d files now say %s\n", n, os.Args[1])
}

// A path that go get takes: a host with a dot in it, then names of lower-case letters, digits and
// -, _, ., ~, none of which starts or ends with a dot. Capital letters would do too, but not on
// every disk.
var pathForm = regexp.MustCompile(`^[a-z0-9-]+(\.[a-z0-9-]+)+(:[0-9]+)?(/[a-z0-9_~-]+(\.[a-z0-9_~-]+)*)+$`)

func rename(root, to string) (int, error) {
	if !pathForm.MatchString(to) {
		return 0, fmt.Errorf("%q is no module path; write HOST/PATH, lower case, such as github.com/you/zymase", to)
	}
	mod, err := os.ReadFile(filepath.Join(root, "go.mod"))
	if err != nil {
		return 0, err
	}
	first, _, _ := bytes.Cut(mod, []byte("\n"))
	from, ok := strings.CutPrefix(string(first), "module ")
	if !ok || from == to {
		return 0, fmt.Errorf("go.mod starts with %q", first)
	}
	whole := regexp.MustCompile(regexp.QuoteMeta(from) + `([^A-Za-z0-9_~-]|$)`) // and not a longer name
	count := 0
	err = filepath.WalkDir(root, func(p string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && d.Name() == ".git" {
			return fs.SkipDir
		}
		if !d.Type().IsRegular() || d.Name() == ".git" {
			return nil
		}
		text, err := os.ReadFile(p)
		if err != nil || bytes.IndexByte(text, 0) >= 0 {
			return err
		}
		changed := whole.ReplaceAll(text, []byte(to+"$1"))
		if p == filepath.Join(root, "README.md") {
			changed = published(changed, to)
		}
		if bytes.Equal(changed, text) {
			return nil
		}
		if strings.HasSuffix(p, ".go") {
			if sorted, err := format.Source(changed); err == nil { // imports sort otherwise by the new name
				changed = sorted
			}
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		count++
		return os.WriteFile(p, changed, info.Mode().Perm())
	})
	return count, err
}

// published puts how to fetch the module in place of what the README says of a path on no host.
func published(readme []byte, to string) []byte {
	start := bytes.Index(readme, []byte("\nThe module path `"))
	if start < 0 {
		return readme
	}
	end := bytes.Index(readme[start:], []byte("\n## "))
	if end < 0 {
		return readme
	}
	text := "\n```\ngo get " + to + "\n```\n"
	return append(append(append([]byte{}, readme[:start]...), text...), readme[start+end:]...)
}
