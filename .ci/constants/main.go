// Command constants changes the numeric literals of a package one at a time and
// lists those whose change no test of the package notices: a real literal is
// scaled by 1.05, a nought becomes 1.0, a whole one is raised by 1.
//
//	go run ./.ci/constants ./gravity
//	go run ./.ci/constants -one-in 4 ./gravity    a quarter of them, another one each day
//	go run ./.ci/constants -check                 the tables of reasons alone, without a test
//	go run ./.ci/constants -ledger                the ledger of constants in line with the source
//	go run ./.ci/constants -moves                 what each number of the ledger of constants moves, for 1 %
//
// Where no test can notice a literal, the table of its package in .ci/constants/left says why:
// file, declaration, literal, reason; one row is for all equal literals of that declaration.
//
// One test binary carries every change and an environment variable picks one, so
// a package takes minutes, not hours. A literal of a const declaration is changed
// where the constant is used; only what must stay a constant to the compiler (the
// length of an array) is laid over the tree and compiled by itself.
package main

import (
	"flag"
	"fmt"
	"os"
	"runtime"
	"strings"
	"sync"
	"time"
)

func main() {
	limit := flag.Duration("timeout", time.Minute, "time limit of one run of the tests")
	most := flag.Float64("most", 100, "the most that may go unnoticed without a reason in a package, in per cent; more is a failure "+
		"(of a part, two literals are none)")
	only := flag.String("only", "", "only files whose name holds this")
	quick := flag.Bool("quick", false, "leave out the literals that need a build of their own")
	list := flag.Bool("left", false, "list what is left out, and what goes unnoticed for a reason")
	check := flag.Bool("check", false, "only see that each row of the tables of reasons fits a literal, of all packages where none is named")
	oneIn := flag.Int("one-in", 1, "try one literal in this many, others on each day of the year")
	move := flag.Bool("moves", false, "write into the ledger of constants what each number of it moves")
	inLine := flag.Bool("ledger", false, "bring the ledger of constants in line with the source")
	flag.Parse()
	if *move || *inLine {
		err := error(nil)
		if *inLine {
			err = keep()
		}
		if err == nil && *move {
			err = moves(*only)
		}
		if err != nil {
			fmt.Fprintln(os.Stderr, "constants:", err)
			os.Exit(2)
		}
		return
	}
	failed := false
	var sum tally
	dirs := flag.Args()
	if *check && len(dirs) == 0 {
		dirs = withTable()
	}
	for _, dir := range dirs {
		t, err := pack(dir, *limit, *only, *quick, *list, *check, max(*oneIn, 1))
		if err != nil {
			fmt.Fprintln(os.Stderr, "constants:", err)
			os.Exit(2)
		}
		if t.share() > *most && (*oneIn <= 1 || t.without > 2) {
			fmt.Printf("%s: more than %v %% without a reason\n", dir, *most)
			failed = true
		}
		sum = tally{sum.noticed + t.noticed, sum.settings + t.settings, sum.figures + t.figures, sum.without + t.without}
	}
	if flag.NArg() > 1 && !*check {
		fmt.Println("together:", sum)
		failed = failed || sum.share() > *most
	}
	if failed {
		os.Exit(1)
	}
}

// A tally counts the literals that were tried: noticed by a test; not, as settings of a search and marks, which change
// no figure; not, for another reason; and neither.
type tally struct{ noticed, settings, figures, without int }

func (t tally) tried() int { return t.noticed + t.settings + t.figures + t.without }

// share of those that go unnoticed without a reason, in per cent.
func (t tally) share() float64 { return 100 * float64(t.without) / float64(max(t.tried(), 1)) }

func (t tally) String() string {
	percent := func(of int) float64 { return 100 * float64(t.noticed) / float64(max(of, 1)) }
	return fmt.Sprintf("%d literals tried, %d noticed (%.1f %%; %.1f %% but for %d settings and marks), %d not for another reason, %d without one (%.1f %%)",
		t.tried(), t.noticed, percent(t.tried()), percent(t.tried()-t.settings), t.settings, t.figures, t.without, t.share())
}

func pack(dir string, limit time.Duration, only string, quick, list, check bool, oneIn int) (t tally, err error) {
	all, edits, err := literals(dir)
	if err != nil {
		return t, err
	}
	table, rows, err := reasonsOf(dir)
	if err != nil {
		return t, err
	}
	if err := give(table, rows, all); err != nil || check {
		return t, err
	}
	work, err := os.MkdirTemp("", "constants")
	if err != nil {
		return t, err
	}
	defer os.RemoveAll(work)
	bin, err := build(dir, work, edits)
	if err != nil {
		return t, err
	}
	start := time.Now()
	if out, ok := runBinary(bin, dir, -1, 5*limit); !ok {
		return t, fmt.Errorf("%s: the tests fail unchanged:\n%s", dir, out)
	}
	limit = min(limit, 5*time.Second+5*time.Since(start)) // a change that runs on for ever is seen sooner
	jobs := make(chan int)
	var wg sync.WaitGroup
	for range runtime.NumCPU() {
		wg.Go(func() {
			for i := range jobs {
				l := all[i]
				if l.built {
					l.verdict = "alive"
					if _, ok := runBinary(bin, dir, i, limit); !ok {
						l.verdict = "killed"
					}
				} else {
					l.verdict = alone(dir, l, limit)
				}
			}
		})
	}
	for i, l := range all {
		if (i+time.Now().YearDay())%oneIn == 0 && strings.Contains(l.file, only) && !(quick && !l.built) {
			jobs <- i
		}
	}
	close(jobs)
	wg.Wait()
	broken, leftOut := 0, 0
	for _, l := range all {
		switch {
		case l.verdict == "killed":
			t.noticed++
		case l.verdict == "broken":
			broken++
		case l.verdict == "":
			leftOut++
			if list {
				fmt.Printf("%s:%d: %s left out\n", l.file, l.line, l.old)
			}
		case l.reason == nil:
			t.without++
			fmt.Printf("%s:%d: %s: %s -> %s\n", l.file, l.line, l.decl, l.old, l.new)
		default:
			if l.reason.setsNoFigure() {
				t.settings++
			} else {
				t.figures++
			}
			if list {
				fmt.Printf("%s:%d: %s: %s, %s\n", l.file, l.line, l.decl, l.old, l.reason.why)
			}
		}
	}
	if oneIn == 1 && only == "" {
		for _, r := range stale(rows, all) {
			fmt.Printf("%s:%d: stale, as %s in %s is noticed\n", table, r.line, r.literal, r.decl)
		}
	}
	fmt.Printf("%s: %v; %d did not compile, %d left out\n", dir, t, broken, leftOut)
	return t, nil
}
