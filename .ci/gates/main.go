// Command gates shows that the gates can fail: it puts one fault of each kind into a copy of the
// tree, runs the narrowest command that should stop it, and demands that it does, for the reason
// that the fault is one.
//
//	go run ./.ci/gates                 all of them, three minutes at most
//	go run ./.ci/gates -only race      those whose kind holds a word
//
// A fault that no longer fits the tree (its text has moved on) is a failure too: mend it here.
package main

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

func main() {
	only := flag.String("only", "", "only the faults whose kind holds this `word`")
	most := flag.Duration("most", 0, "fail if all of it takes longer than this")
	flag.Parse()
	start := time.Now()
	let, err := run(*only)
	took := time.Since(start).Round(time.Second)
	switch {
	case err != nil:
		fmt.Fprintln(os.Stderr, "gates:", err)
		os.Exit(2)
	case let > 0:
		fmt.Printf("%d faults got through, in %v\n", let, took)
		os.Exit(1)
	case *most > 0 && took > *most:
		fmt.Printf("every fault was stopped, but in %v: %v at most\n", took, *most)
		os.Exit(1)
	}
	fmt.Printf("every fault was stopped, in %v\n", took)
}

// run returns how many faults got through.
func run(only string) (int, error) {
	tree, err := os.MkdirTemp("", "gates")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(tree)
	if err := clone(".", tree); err != nil {
		return 0, err
	}
	let := 0
	for _, f := range faults {
		if !strings.Contains(f.kind, only) {
			continue
		}
		start := time.Now()
		verdict, err := f.try(tree)
		if err != nil {
			return let, fmt.Errorf("%s: %w", f.kind, err)
		}
		if verdict != "" {
			let++
		} else {
			verdict = "stopped by " + strings.Join(f.gate, " ")
		}
		fmt.Printf("%-28s %5.1f s  %s\n", f.kind, time.Since(start).Seconds(), verdict)
	}
	return let, nil
}

// try puts the fault in, runs its gate and takes it out again. The verdict is empty where the gate
// stopped it.
func (f fault) try(tree string) (verdict string, err error) {
	path := filepath.Join(tree, f.file)
	whole, err := os.ReadFile(path)
	if err != nil {
		return "", err
	}
	text := string(whole)
	for _, change := range [][2]string{{f.old, f.new}, f.also} {
		if change[0] == "" {
			continue
		}
		if n := strings.Count(text, change[0]); n != 1 {
			return fmt.Sprintf("%s holds %q %d times: mend this fault", f.file, change[0], n), nil
		}
		text = strings.Replace(text, change[0], change[1], 1)
	}
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		return "", err
	}
	defer func() {
		if e := os.WriteFile(path, whole, 0o600); err == nil {
			err = e
		}
	}()
	cmd := exec.Command(f.gate[0], f.gate[1:]...)
	cmd.Dir = tree
	cmd.Env = append(os.Environ(), "GOFLAGS=-vet=off -ldflags=-w") // sooner
	out, failed := cmd.CombinedOutput()
	switch {
	case failed == nil:
		return "GOT THROUGH " + strings.Join(f.gate, " "), nil
	case !strings.Contains(string(out), f.says):
		return fmt.Sprintf("STOPPED FOR ANOTHER REASON by %s: no %q in\n%s", strings.Join(f.gate, " "), f.says, out), nil
	}
	return "", nil
}

// clone copies the tree without its history.
func clone(from, to string) error {
	return filepath.WalkDir(from, func(p string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		target := filepath.Join(to, p)
		switch {
		case d.Name() == ".git":
			if d.IsDir() {
				return fs.SkipDir
			}
			return nil
		case d.IsDir():
			return os.MkdirAll(target, 0o700)
		case !d.Type().IsRegular():
			return nil
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		text, err := os.ReadFile(p)
		if err != nil {
			return err
		}
		return os.WriteFile(target, text, info.Mode().Perm()|0o600)
	})
}
