// Command ratios runs the benchmarks that have a budget and prints a row each:
// time, ratio to its reference in the same run, allocations, budget, verdict.
// The reference is math.Exp over varying inputs (BenchmarkMathExp of the same
// package), or a named peer. Exit 1 when one is over its budget times the margin; where the
// runs show that the machine was quiet the margin is the tight one, so that twice as slow fails.
package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// A budget is the most that a benchmark may take, in times of its reference.
type budget struct {
	pkg, bench string
	most       float64
	allocs     float64 // the most allowed; -1 for any
	peer       string  // benchmark to compare with, MathExp if empty
}

// The budgets stand a fifth to a half over what was reached on a quiet machine. Those of water are a fifth over 285, 273,
// 218 and 283 math.Exp: a step of Newton in all unknowns costs more than the sweeps that it took the place of, and half as
// many are needed; only AlkalinityAt, at a given pH, is slower for it (187 before). A plan follows both ends of
// what a boil leaves, three times the work that it was.
var budgets = []budget{
	{"gravity", "EthanolDensity", 3, 0, ""},
	{"gravity", "EthanolStrength", 17, 0, ""},
	{"gravity", "SucroseDensity", 2, 0, ""},
	{"gravity", "SucroseExtract", 12, 0, ""},
	{"gravity", "EthanolDensities", 48, 0, ""},  // 64 rows: 0.75 each
	{"gravity", "EthanolStrengths", 430, 0, ""}, // 64 rows: 5 each
	{"gravity", "SucroseDensities", 34, 0, ""},  // 64 rows: 0.44 each
	{"water", "SpeciationClosed", 345, 0, ""},
	{"water", "AcidToPH", 330, 0, ""},
	{"water", "AlkalinityAt", 262, 0, ""},
	{"water", "Series", 340, 0, ""},
	{"water", "SolveContinuous", 130, 0, ""},
	{"water", "SolveSteps", 4_500, -1, ""},
	{"carbonation", "Content", 10, 0, ""},
	{"carbonation", "Pressure", 41, 0, ""},
	{"nutrient/ferment", "FermentBalance", 520, -1, "Exp"},
	{"examples/seltzer/batch", "Walk", 10_000, 0, ""},            // nine tenths of it the chalk of the boil
	{"examples/seltzer/plan", "Make", 175_000, -1, ""},           // 140,000 reached, four tenths of it the days
	{"examples/seltzer/plan", "MakeWithoutDays", 10, -1, "Walk"}, // 9.3 reached
	{"examples/seltzer/plan", "Draw", 1_000, -1, "Walk"},         // 965 reached: a thousand worlds with their figures read, the usual one, and their plan
}

// A result is the fastest of the runs of a benchmark, and their median.
type result struct {
	ns, median, allocs float64
}

// quiet reports that the machine did nothing else: half of the runs came near the fastest.
func (r result) quiet() bool { return r.median < 1.1*r.ns }

var line = regexp.MustCompile(`^Benchmark(\S+?)(?:-\d+)?\s+\d+\s+([\d.]+) ns/op(?:.*?\s([\d.]+) allocs/op)?`)

func main() {
	margin := flag.Float64("margin", 1.5, "noise allowed over a budget, as a factor")
	tight := flag.Float64("tight", 1.2, "noise allowed where the machine was quiet: the medians of benchmark and reference within a tenth of the fastest")
	count := flag.Int("count", 10, "runs of each benchmark; the fastest counts")
	only := flag.String("only", "", "only the budget of `package.Benchmark`")
	flag.Parse()
	if *only != "" {
		budgets = slices.DeleteFunc(budgets, func(b budget) bool { return b.pkg+"."+b.bench != *only })
	}

	var packages []string
	for _, b := range budgets {
		if !slices.Contains(packages, b.pkg) {
			packages = append(packages, b.pkg)
		}
	}
	over := 0
	fmt.Printf("%-46s %12s %10s %8s %8s  %s\n", "benchmark", "ns", "ratio", "allocs", "budget", "verdict")
	for _, p := range packages {
		names := []string{"MathExp"}
		for _, b := range budgets {
			if b.pkg == p {
				names = append(names, b.bench)
				if b.peer != "" {
					names = append(names, b.peer)
				}
			}
		}
		got, err := run(p, names, *count)
		if err != nil {
			fmt.Fprintln(os.Stderr, "ratios:", err)
			os.Exit(1)
		}
		for _, b := range budgets {
			if b.pkg != p {
				continue
			}
			peer := b.peer
			if peer == "" {
				peer = "MathExp"
			}
			r, ok := got[b.bench]
			ref, refOK := got[peer]
			if !ok || !refOK {
				fmt.Fprintf(os.Stderr, "ratios: %s: no benchmark %s or %s\n", p, b.bench, peer)
				os.Exit(1)
			}
			ratio, verdict, allowed := r.ns/ref.ns, "within", max(*margin, *tight)
			if r.quiet() && ref.quiet() {
				verdict, allowed = "within, quiet", *tight
			}
			if ratio > b.most {
				verdict += " the margin"
			}
			if ratio > b.most*allowed || b.allocs >= 0 && r.allocs > b.allocs {
				verdict = "OVER"
				over++
			}
			fmt.Printf("%-46s %12.1f %10.2f %8.0f %8g  %s\n", p+"."+b.bench, r.ns, ratio, r.allocs, b.most, verdict)
		}
	}
	if over > 0 {
		fmt.Fprintf(os.Stderr, "ratios: %d over budget\n", over)
		os.Exit(1)
	}
}

// run returns the fastest result of each benchmark of a package.
func run(pkg string, names []string, count int) (map[string]result, error) {
	slices.Sort(names)
	names = slices.Compact(names)
	cmd := exec.Command("go", "test", "-run", "^$", "-bench", "^Benchmark("+strings.Join(names, "|")+")$",
		"-benchmem", "-benchtime", "60ms", "-count", strconv.Itoa(count), "./"+pkg)
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, os.Stderr
	if err := cmd.Run(); err != nil {
		return nil, fmt.Errorf("%s: %w\n%s", pkg, err, out.String())
	}
	times, allocs := map[string][]float64{}, map[string]float64{}
	for l := range strings.Lines(out.String()) {
		m := line.FindStringSubmatch(l)
		if m == nil {
			continue
		}
		ns, _ := strconv.ParseFloat(m[2], 64)
		times[m[1]] = append(times[m[1]], ns)
		allocs[m[1]], _ = strconv.ParseFloat(m[3], 64)
	}
	got := map[string]result{}
	for name, ns := range times {
		slices.Sort(ns)
		got[name] = result{ns[0], ns[len(ns)/2], allocs[name]}
	}
	return got, nil
}
