//go:build ignore

// Command figures computes every function of the catalogue around its example
// and prints inputs and results to the last bit. With -against it compares with
// the print of another processor and tells the greatest relative difference.
//
//	figures > here.txt; other-processor figures > there.txt
//	figures -against here.txt -most 1e-9 there.txt
package main

import (
	"bufio"
	"flag"
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
)

func main() {
	against := flag.String("against", "", "compare the file named last with this one")
	most := flag.Float64("most", 1e-9, "the greatest relative difference allowed")
	flag.Parse()
	if *against == "" {
		write()
		return
	}
	if err := compare(*against, flag.Arg(0), *most); err != nil {
		fmt.Fprintln(os.Stderr, "figures:", err)
		os.Exit(1)
	}
}

// write prints each function at its example and with one input at a time moved
// a part of the way to its limits.
func write() {
	w := bufio.NewWriter(os.Stdout)
	defer w.Flush()
	for _, f := range catalogue.All() {
		base := make([]float64, len(f.Inputs))
		for i, in := range f.Inputs {
			base[i] = in.Example
		}
		one(w, &f, base)
		for i, in := range f.Inputs {
			for _, part := range []float64{-0.5, -0.1, 0.1, 0.5} {
				x := append([]float64{}, base...)
				to := in.Max
				if part < 0 {
					to = in.Min
				}
				x[i] += math.Abs(part) * (to - x[i])
				if in.Whole || in.Options != nil {
					x[i] = math.Round(x[i])
				}
				if x[i] != base[i] {
					one(w, &f, x)
				}
			}
		}
	}
}

func one(w *bufio.Writer, f *catalogue.Function, x []float64) {
	fmt.Fprint(w, f.Name)
	for _, v := range x {
		fmt.Fprint(w, " ", strconv.FormatFloat(v, 'g', -1, 64))
	}
	fmt.Fprint(w, " =")
	out := make([]float64, len(f.Outputs))
	if err := f.Call(x, out); err != nil {
		fmt.Fprintln(w, " refused")
		return
	}
	for _, v := range out {
		fmt.Fprint(w, " ", strconv.FormatFloat(v, 'g', -1, 64))
	}
	fmt.Fprintln(w)
}

func compare(here, there string, most float64) error {
	a, err := lines(here)
	if err != nil {
		return err
	}
	b, err := lines(there)
	if err != nil {
		return err
	}
	if len(a) != len(b) || len(a) < 1000 {
		return fmt.Errorf("%d lines against %d", len(a), len(b))
	}
	results, differ, greatest, where := 0, 0, 0.0, ""
	for i := range a {
		call, left, _ := strings.Cut(a[i], " = ")
		_, right, _ := strings.Cut(b[i], " = ")
		l, r := strings.Fields(left), strings.Fields(right)
		if len(l) != len(r) || (left == "refused") != (right == "refused") {
			return fmt.Errorf("%s: %s against %s", call, left, right)
		}
		for k := range l {
			if l[k] == "refused" {
				continue
			}
			results++
			x, _ := strconv.ParseFloat(l[k], 64)
			y, _ := strconv.ParseFloat(r[k], 64)
			d := math.Abs(x-y) / math.Max(1, math.Max(math.Abs(x), math.Abs(y)))
			if x != y {
				differ++
			}
			if d > greatest {
				greatest, where = d, fmt.Sprintf("%s: %v against %v", call, x, y)
			}
		}
	}
	fmt.Printf("%d results, %d differ in a bit, by %.1e at most (%s)\n", results, differ, greatest, where)
	if greatest > most {
		return fmt.Errorf("more than %.0e", most)
	}
	return nil
}

func lines(name string) ([]string, error) {
	text, err := os.ReadFile(name)
	return strings.Split(strings.TrimSpace(string(text)), "\n"), err
}
