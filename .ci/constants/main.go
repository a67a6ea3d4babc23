// Command constants changes the numeric literals of a package one at a time and
// lists those whose change no test of the package notices: a real literal is
// scaled by 1.05, a nought becomes 1.0, a whole one is raised by 1.
//
//	go run ./.ci/constants ./gravity
//	go run ./.ci/constants -one-in 4 ./gravity    a quarter of them, another one each day
//	go run ./.ci/constants -ledger                the ledger of constants in line with the source
//	go run ./.ci/constants -moves                 what each number of the ledger of constants moves, for 1 %
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
	most := flag.Float64("most", 100, "the most that may go unnoticed of all packages together, in per cent; more is a failure")
	only := flag.String("only", "", "only files whose name holds this")
	quick := flag.Bool("quick", false, "leave out the literals that need a build of their own")
	list := flag.Bool("left", false, "list what is left out")
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
	alive, tried := 0, 0
	for _, dir := range flag.Args() {
		a, n, err := pack(dir, *limit, *only, *quick, *list, max(*oneIn, 1))
		if err != nil {
			fmt.Fprintln(os.Stderr, "constants:", err)
			os.Exit(2)
		}
		alive, tried = alive+a, tried+n
	}
	share := 100 * float64(alive) / float64(max(tried, 1))
	if flag.NArg() > 1 {
		fmt.Printf("together: %d of %d not noticed (%.1f %%)\n", alive, tried, share)
	}
	if share > *most {
		os.Exit(1)
	}
}

func pack(dir string, limit time.Duration, only string, quick, list bool, oneIn int) (alive, tried int, err error) {
	all, edits, err := literals(dir)
	if err != nil {
		return 0, 0, err
	}
	work, err := os.MkdirTemp("", "constants")
	if err != nil {
		return 0, 0, err
	}
	defer os.RemoveAll(work)
	bin, err := build(dir, work, edits)
	if err != nil {
		return 0, 0, err
	}
	if out, ok := runBinary(bin, dir, -1, 5*limit); !ok {
		return 0, 0, fmt.Errorf("%s: the tests fail unchanged:\n%s", dir, out)
	}
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
	counts := map[string]int{}
	for _, l := range all {
		counts[l.verdict]++
		if list && l.verdict == "" {
			fmt.Printf("%s:%d: %s left out\n", l.file, l.line, l.old)
		}
		if l.verdict == "alive" {
			fmt.Printf("%s:%d: %s -> %s\n", l.file, l.line, l.old, l.new)
		}
	}
	tried = counts["killed"] + counts["alive"]
	share := 100 * float64(counts["alive"]) / float64(max(tried, 1))
	fmt.Printf("%s: %d literals, %d noticed, %d not (%.1f %%), %d did not compile, %d left out\n",
		dir, len(all), counts["killed"], counts["alive"], share, counts["broken"], counts[""])
	return counts["alive"], tried, nil
}
