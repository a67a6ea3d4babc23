package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"go/parser"
	"go/token"
	"os"
	"os/exec"
	"path/filepath"
	"sort"
	"strings"
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

// An edit of the one binary's sources.
type edit struct {
	start, end int
	text       string
}

// build compiles the tests of the package with every change in one binary.
func build(dir, work string, edits map[string][]edit) (string, error) {
	over, err := laid(work, edits)
	if err != nil {
		return "", err
	}
	bin := filepath.Join(work, "tests")
	if out, err := exec.Command("go", "test", "-c", "-vet=off", "-overlay", over, "-o", bin, dir).CombinedOutput(); err != nil {
		return "", fmt.Errorf("%s: %w\n%s", dir, err, out)
	}
	return bin, nil
}

// laid writes the changed sources and returns the overlay that puts them in place.
func laid(work string, edits map[string][]edit) (string, error) {
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
		to := filepath.Join(work, strings.ReplaceAll(filepath.ToSlash(file), "/", "_"))
		if err := os.WriteFile(to, src, 0o600); err != nil {
			return "", err
		}
		abs, _ := filepath.Abs(file)
		replace[abs] = to
	}
	return overlay(work, replace)
}

func overlay(work string, replace map[string]string) (string, error) {
	text, err := json.Marshal(map[string]map[string]string{"Replace": replace})
	if err != nil {
		return "", err
	}
	over := filepath.Join(work, "overlay.json")
	return over, os.WriteFile(over, text, 0o600)
}
