package main

import (
	"bytes"
	"cmp"
	"fmt"
	"io/fs"
	"maps"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"sync"

	"example.org/zymase/internal/published/ledger"
)

const ledgerFile = "internal/published/ledger/constants.tsv"

// keep brings the ledger in line with the source: numbers that changed, rows that went, and a row
// without source for each constant that is new, which the tests refuse until it has one.
func keep() error {
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
	byKey := map[string]ledger.Entry{}
	for _, e := range entries {
		byKey[e.Key()] = e
	}
	var kept []ledger.Entry
	for _, f := range found {
		e, ok := byKey[f.Key()]
		if !ok {
			doc, _, _ := strings.Cut(strings.Join(strings.Fields(f.Doc), " "), ". ")
			e = ledger.Entry{File: f.File, Name: f.Name, Unit: "-", What: doc, Status: ledger.Chosen, Moves: "-", Moved: "-"}
			fmt.Println("new, fill in its row:", f.Key())
		}
		e.Value = f.Value()
		kept = append(kept, e)
	}
	return os.WriteFile(ledgerFile, []byte(ledger.Format(kept)), 0o644)
}

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
	dirs := map[string]bool{}
	byPlace := map[string]int{} // the entry of the number at a place
	byKey := map[string]int{}
	for i := range entries {
		byKey[entries[i].Key()] = i
	}
	wanted = map[string]bool{}
	for _, f := range found {
		at, ok := byKey[f.Key()]
		if !ok || !strings.Contains(f.File, only) {
			continue
		}
		dirs[filepath.Dir(f.File)] = true
		for _, offset := range f.Offsets {
			place := f.File + ":" + strconv.Itoa(offset)
			byPlace[place], wanted[place] = at, true
		}
	}
	var all []*literal
	edits := map[string][]edit{}
	for _, dir := range slices.Sorted(maps.Keys(dirs)) {
		firstID = len(all)
		of, changes, err := literals("./" + dir)
		if err != nil {
			return err
		}
		all = append(all, of...)
		maps.Copy(edits, changes)
	}
	over, err := laid(work, edits)
	if err != nil {
		return err
	}
	changed := filepath.Join(work, "changed")
	if out, err := exec.Command("go", "build", "-overlay", over, "-o", changed, typicalDir).CombinedOutput(); err != nil {
		return fmt.Errorf("%w\n%s", err, out)
	}
	most := make([]float64, len(entries))
	what := make([]string, len(entries))
	tried := make([]bool, len(entries))
	alone := 0
	var lock sync.Mutex
	var wg sync.WaitGroup
	jobs := make(chan int)
	for range runtime.NumCPU() {
		wg.Go(func() {
			for i := range jobs {
				l := all[i]
				at := byPlace[l.file+":"+strconv.Itoa(l.start)]
				run := func() ([]string, error) { return typical(changed, i) }
				if !l.built {
					run = func() ([]string, error) { return typicalAlone(l) }
				}
				lines, err := run()
				if err != nil { // no build or no end: nothing is known
					fmt.Fprintf(os.Stderr, "not measured: %s:%d: %v\n", l.file, l.line, err)
					continue
				}
				share, name := farthest(base, lines)
				if share < lastBit {
					share, name = 0, "-"
				}
				lock.Lock()
				tried[at] = true
				if share > most[at] {
					most[at], what[at] = share, name
				}
				lock.Unlock()
			}
		})
	}
	for i, l := range all {
		certain := []ledger.Status{ledger.Definition, ledger.Bound, ledger.Method} // not worth a build of their own
		if l.counts || !l.built && slices.Contains(certain, entries[byPlace[l.file+":"+strconv.Itoa(l.start)]].Status) {
			continue
		}
		if !l.built {
			alone++
		}
		jobs <- i
	}
	close(jobs)
	wg.Wait()
	for i := range entries {
		if tried[i] {
			entries[i].Moves, entries[i].Moved = strconv.FormatFloat(most[i], 'g', 2, 64), cmp.Or(what[i], "-")
		}
	}
	fmt.Printf("%d numbers, %d of them in a build of their own\n", len(all), alone)
	return os.WriteFile(ledgerFile, []byte(ledger.Format(entries)), 0o644)
}

// lastBit is a share, in per cent, that the order of a sum makes and no constant.
const lastBit = 1e-9

const typicalDir = "./.ci/constants/typical"

// typical runs the program with literal i changed.
func typical(bin string, i int) ([]string, error) {
	cmd := exec.Command(bin)
	cmd.Env = append(os.Environ(), "ZYMASE_LITERAL="+strconv.Itoa(i))
	out, err := cmd.Output()
	return strings.Split(strings.TrimSpace(string(out)), "\n"), err
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

// farthest is the largest move of a result, in per cent of itself, of what that result commonly is
// (the middle of its magnitudes) or of a tenth of the most that it is, whichever is more, and its
// name. A difference of near equals is no measure, nor is a time of which -1 says never, and recipes
// of salts can stand for one another: these are left out.
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
		common[name] = max(of[len(of)/2], of[len(of)-1]/10)
	}
	what = "-"
	for i := range base {
		name, v, ok := result(base[i])
		_, w, still := result(lines[i])
		scale := math.Max(math.Abs(v), common[name])
		if ok && still && scale > 0 && v != w && !noMeasure.MatchString(name) {
			if s := 100 * math.Abs(v-w) / scale; s > share {
				share, what = s, name
			}
		}
	}
	return share, what
}

var noMeasure = regexp.MustCompile(`^salts_for_target|gauge_pressure$| (deviation|lost|left|add|difference|reaches|nitrogen_left|over_.*|.*_left|worst.*)$`)

// result reads "function output value".
func result(line string) (name string, v float64, ok bool) {
	at := strings.LastIndexByte(line, ' ')
	v, err := strconv.ParseFloat(line[at+1:], 64)
	return line[:at], v, err == nil && !math.IsNaN(v) && !math.IsInf(v, 0)
}
