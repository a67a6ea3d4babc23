//go:build ignore

// Command weight measures what a program takes on by importing a package of the
// library: the growth of its binary (stripped) over one that prints a line, and
// the time until the package is ready (its initialisation, and the first call), as so
// many calls of math.Exp in the same run.
//
//	go run .ci/weight.go
package main

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
)

const (
	mostGrowth = 0.6 // MB over a program that prints a line; 0.5 until values travelled as JSON
	mostReady  = 120 // thousand calls of math.Exp: all packages of the module and its dependencies, and the first call
)

// One call of each package that reaches its tables.
var calls = []struct{ name, imports, call string }{
	{"nothing", "", `fmt.Println(len(os.Args))`},
	{"units", "units", `m, err := units.Parse[units.Mass]("3 lb 4 oz"); fmt.Println(m, err)`},
	{"gravity", "gravity",
		`g, err := gravity.ParseGravity("1.045"); d, err2 := gravity.EthanolDensity(gravity.ByMass(units.PercentVolume.Of(40)), units.Celsius.Of(20)); fmt.Println(g, d, err, err2)`},
	{"water", "water",
		`e, err := water.Totals{}.Equilibrium(units.Celsius.Of(20)); p, err2 := water.Profile{}.Add(units.Litre.Of(60), water.Salts()[0].Dose(units.Gram.Of(6))); fmt.Println(e.PH(), p.Hardness(), err, err2)`},
	{"carbonation", "carbonation",
		`d, err := carbonation.GasDensity(units.Kilopascal.Of(300), units.Celsius.Of(20)); c, err2 := carbonation.Liquid{}.ResidualContent(units.Bar.Of(2), units.Celsius.Of(4)); fmt.Println(d, c, err, err2)`},
	{"nutrient", "nutrient", `o := nutrient.Offers(nutrient.Sources()...); fmt.Println(len(o), o[0].Material)`},
	{"sugar", "nutrient/sugar",
		`b, err := sugar.ForStrength(sugar.Fermentables()[0], units.PercentVolume.Of(4.6), units.Litre.Of(60)); fmt.Println(b.Water, err)`},
	{"ferment", "nutrient/ferment", `b, err := ferment.UsualMetabolism().Ferment(ferment.Substrate{}); fmt.Println(b, err)`},
	{"yeast", "nutrient/yeast", `r, err := yeast.Rehydrate(units.Gram.Of(40), yeast.WineYeast, units.Celsius.Of(18)); fmt.Println(r, err)`},
	{"finish", "nutrient/finish", `s, err := finish.MolecularShareOIV(3.4, units.PercentVolume.Of(5), units.Celsius.Of(20)); fmt.Println(s, err)`},
}

// peer is what the time is held against: the fastest of some runs of a thousand calls, in ms.
const peer = `least, x := math.Inf(1), float64(len(os.Args))
for range 50 {
	start := time.Now()
	for range 1000 {
		x = math.Exp(-x)
	}
	least = min(least, time.Since(start).Seconds()*1000)
}
fmt.Fprintln(os.Stderr, "peer", least, x)
`

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "weight:", err)
		os.Exit(1)
	}
}

func run() error {
	work, err := os.MkdirTemp("", "weight")
	if err != nil {
		return err
	}
	defer os.RemoveAll(work)
	base := 0.0
	over := false
	for _, c := range calls {
		imports := ""
		for _, p := range []string{"units", c.imports} {
			if p != "" && strings.Contains(c.call, p[strings.LastIndex(p, "/")+1:]+".") {
				imports += fmt.Sprintf("import %q\n", "example.org/zymase/"+p)
			}
			if p == c.imports {
				break
			}
		}
		src := "package main\nimport (\"fmt\"; \"math\"; \"os\"; \"time\")\n" + imports +
			"func main() {\nstart := time.Now()\n" + c.call + "\nfmt.Fprintln(os.Stderr, \"first\", time.Since(start).Seconds()*1000)\n" + peer + "}\n"
		name := filepath.Join(work, c.name+".go")
		if err := os.WriteFile(name, []byte(src), 0o600); err != nil {
			return err
		}
		bin := filepath.Join(work, c.name)
		if out, err := exec.Command("go", "build", "-ldflags=-s -w", "-o", bin, name).CombinedOutput(); err != nil {
			return fmt.Errorf("%s: %w\n%s", c.name, err, out)
		}
		about, err := os.Stat(bin)
		if err != nil {
			return err
		}
		size := float64(about.Size()) / 1e6
		if c.name == "nothing" {
			base = size
		}
		ready, exp, err := readiness(bin)
		if err != nil {
			return err
		}
		mark := ""
		if size-base > mostGrowth || ready > mostReady*exp {
			mark, over = "  OVER", true
		}
		fmt.Printf("%-12s binary %+5.2f MB (%.1f at most), ready after %.2f ms, as %3.0f thousand math.Exp (%d at most)%s\n", c.name,
			size-base, mostGrowth, ready, ready/exp, mostReady, mark)
	}
	if over {
		return fmt.Errorf("a package weighs more than it may")
	}
	return nil
}

var clock = regexp.MustCompile(`^init ((?:example\.org|github\.com)\S*) @\S+ ms, (\S+) ms clock`)

// readiness is the least of twenty runs: initialisation of this module and what it
// depends on outside the standard library, and the first call with its print; and a
// thousand calls of math.Exp, both in ms.
func readiness(bin string) (ready, exp float64, err error) {
	ready, exp = math.Inf(1), math.Inf(1)
	for range 20 {
		cmd := exec.Command(bin)
		cmd.Env = append(os.Environ(), "GODEBUG=inittrace=1")
		var told bytes.Buffer
		cmd.Stderr = &told
		if err := cmd.Run(); err != nil {
			return 0, 0, fmt.Errorf("%s: %w\n%s", bin, err, told.String())
		}
		sum := 0.0
		for s := bufio.NewScanner(&told); s.Scan(); {
			number := func(of string) float64 {
				v, bad := strconv.ParseFloat(of, 64)
				err = errors.Join(err, bad)
				return v
			}
			if m := clock.FindStringSubmatch(s.Text()); m != nil {
				sum += number(m[2])
			}
			switch words := strings.Fields(s.Text()); words[0] {
			case "first":
				sum += number(words[1])
			case "peer":
				exp = min(exp, number(words[1]))
			}
		}
		ready = min(ready, sum)
	}
	return ready, exp, err
}
