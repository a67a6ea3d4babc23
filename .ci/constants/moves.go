package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"sync"

	"example.org/zymase/internal/published/ledger"
)

const ledgerFile = "internal/published/ledger/constants.tsv"

// moves raises each number of the ledger by 1 %, one at a time, computes what is typical (command
// typical) and writes by how much that moves into the ledger.
func moves(only string) error {
	text, err := os.ReadFile(ledgerFile)
	if err != nil {
		return err
	}
	entries, err := ledger.Parse(string(text))
	if err != nil {
		return err
	}
	found, err := ledger.Walk(os.DirFS("."))
	if err != nil {
		return err
	}
	work, err := os.MkdirTemp("", "moves")
	if err != nil {
		return err
	}
	defer os.RemoveAll(work)
	bin := filepath.Join(work, "typical")
	if out, err := exec.Command("go", "build", "-o", bin, typicalDir).CombinedOutput(); err != nil {
		return fmt.Errorf("%w\n%s", err, out)
	}
	base, err := typical(bin, -1)
	if err != nil {
		return err
	}
	dirs := map[string][]ledger.Found{}
	for _, f := range found {
		if d := filepath.Dir(f.File); strings.Contains(f.File, only) {
			dirs[d] = append(dirs[d], f)
		}
	}
	for _, dir := range slices.Sorted(maps.Keys(dirs)) {
		moved, err := movesOf(dir, dirs[dir], base)
		if err != nil {
			return err
		}
		for i := range entries {
			if m, ok := moved[entries[i].Key()]; ok {
				entries[i].Moves, entries[i].Moved = m.share, m.what
			}
		}
		if err := os.WriteFile(ledgerFile, []byte(ledger.Format(entries)), 0o644); err != nil {
			return err
		}
	}
	return nil
}

const typicalDir = "./.ci/constants/typical"

// typical runs the program with literal i changed.
func typical(bin string, i int) ([]string, error) {
	cmd := exec.Command(bin)
	cmd.Env = append(os.Environ(), "ZYMASE_LITERAL="+strconv.Itoa(i))
	out, err := cmd.Output()
	return strings.Split(strings.TrimSpace(string(out)), "\n"), err
}

type movement struct{ share, what string }

func movesOf(dir string, found []ledger.Found, base []string) (map[string]movement, error) {
	byPlace := map[string]string{} // the key of the literal at a place
	wanted = map[string]bool{}
	for _, f := range found {
		for _, at := range f.Offsets {
			place := f.File + ":" + strconv.Itoa(at)
			byPlace[place], wanted[place] = f.Key(), true
		}
	}
	all, edits, err := literals("./" + dir)
	if err != nil {
		return nil, err
	}
	work, err := os.MkdirTemp("", "moves")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(work)
	over, err := laid(work, edits)
	if err != nil {
		return nil, err
	}
	bin := filepath.Join(work, "typical")
	if out, err := exec.Command("go", "build", "-overlay", over, "-o", bin, typicalDir).CombinedOutput(); err != nil {
		return nil, fmt.Errorf("%s: %w\n%s", dir, err, out)
	}
	result := map[string]movement{}
	var lock sync.Mutex
	var wg sync.WaitGroup
	jobs := make(chan int)
	for range runtime.NumCPU() {
		wg.Go(func() {
			for i := range jobs {
				l := all[i]
				var lines []string
				var err error
				if l.built {
					lines, err = typical(bin, i)
				} else {
					lines, err = typicalAlone(l)
				}
				share, what := 0.0, "stops"
				if err == nil {
					share, what = farthest(base, lines)
				}
				lock.Lock()
				key := byPlace[l.file+":"+strconv.Itoa(l.start)]
				was, there := result[key]
				before, _ := strconv.ParseFloat(was.share, 64)
				if !there || share > before {
					result[key] = movement{strconv.FormatFloat(share, 'g', 2, 64), what}
				}
				lock.Unlock()
			}
		})
	}
	alone := 0
	for i, l := range all {
		if l.counts {
			continue
		}
		if !l.built {
			alone++
		}
		jobs <- i
	}
	close(jobs)
	wg.Wait()
	fmt.Printf("%s: %d numbers, %d of them in a build of their own\n", dir, len(all), alone)
	return result, nil
}

// typicalAlone computes with one literal changed in a build of its own.
func typicalAlone(l *literal) ([]string, error) {
	work, err := os.MkdirTemp("", "moves")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(work)
	src, err := os.ReadFile(l.file)
	if err != nil {
		return nil, err
	}
	to := filepath.Join(work, "changed.go")
	if err := os.WriteFile(to, bytes.Join([][]byte{src[:l.start], []byte(l.new), src[l.end:]}, nil), fs.FileMode(0o600)); err != nil {
		return nil, err
	}
	abs, _ := filepath.Abs(l.file)
	over, err := overlay(work, map[string]string{abs: to})
	if err != nil {
		return nil, err
	}
	bin := filepath.Join(work, "typical")
	if err := exec.Command("go", "build", "-ldflags=-s -w", "-overlay", over, "-o", bin, typicalDir).Run(); err != nil {
		return nil, err
	}
	return typical(bin, -1)
}

// farthest is the largest move of a result, in per cent of itself or of what that result commonly
// is (the middle of its magnitudes), whichever is more, and its name.
func farthest(base, lines []string) (share float64, what string) {
	if len(base) != len(lines) {
		return 0, "other lines"
	}
	common := map[string]float64{}
	sizes := map[string][]float64{}
	for _, line := range base {
		name, v, ok := result(line)
		if ok {
			sizes[name] = append(sizes[name], math.Abs(v))
		}
	}
	for name, of := range sizes {
		slices.Sort(of)
		common[name] = of[len(of)/2]
	}
	what = "-"
	for i := range base {
		name, v, ok := result(base[i])
		_, w, still := result(lines[i])
		scale := math.Max(math.Abs(v), common[name])
		if ok && still && scale > 0 && v != w {
			if s := 100 * math.Abs(v-w) / scale; s > share {
				share, what = s, name
			}
		}
	}
	return share, what
}

// result reads "function output value".
func result(line string) (name string, v float64, ok bool) {
	at := strings.LastIndexByte(line, ' ')
	v, err := strconv.ParseFloat(line[at+1:], 64)
	return line[:at], v, err == nil && !math.IsNaN(v) && !math.IsInf(v, 0)
}
