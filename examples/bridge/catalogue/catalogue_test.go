package catalogue

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"math"
	"os"
	"regexp"
	"strings"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

var update = flag.Bool("update", false, "write testdata/catalogue.golden anew")

// TestContract holds names, units, order, limits and defaults: sheets rely on
// them.
func TestContract(t *testing.T) {
	var b bytes.Buffer
	for _, f := range All() {
		fmt.Fprintf(&b, "%s\n", f.Name)
		for _, p := range f.Inputs {
			fmt.Fprintf(&b, "  in  %s  %v to %v", Head(p.Name, p.Unit), p.Min, p.Max)
			if p.Options != nil {
				fmt.Fprintf(&b, "  %s", strings.Join(p.Options, " | "))
			}
			if p.HasDefault {
				fmt.Fprintf(&b, "  default %s", p.Text(p.Default))
			}
			fmt.Fprintln(&b)
		}
		for _, p := range f.Outputs {
			text := ""
			if p.IsText() {
				text = "  text"
			}
			fmt.Fprintf(&b, "  out %s%s\n", Head(p.Name, p.Unit), text)
		}
	}
	const file = "testdata/catalogue.golden"
	if *update {
		if err := os.WriteFile(file, b.Bytes(), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if got := b.String(); got != string(want) {
		t.Errorf("the catalogue has changed; if that is wanted, run go test with -update and read the difference\n%s", firstDifference(got, string(want)))
	}
}

func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(g), len(w)) {
		if g[i] != w[i] {
			return fmt.Sprintf("line %d: now %q, was %q", i+1, g[i], w[i])
		}
	}
	return fmt.Sprintf("%d lines, were %d", len(g), len(w))
}

var plainName = regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)

// TestEntries checks each entry for what a table of functions must hold.
func TestEntries(t *testing.T) {
	seen := map[string]bool{}
	for _, f := range All() {
		t.Run(f.Name, func(t *testing.T) {
			if !plainName.MatchString(f.Name) || seen[f.Name] {
				t.Errorf("name %q is not lower case with underscores, or stands twice", f.Name)
			}
			seen[f.Name] = true
			for what, text := range map[string]string{"meaning": f.Meaning, "source": f.Source} {
				checkLine(t, what, text)
			}
			if f.call == nil || len(f.Outputs) == 0 {
				t.Fatal("nothing to compute")
			}
			names := map[string]bool{}
			for _, p := range f.Inputs {
				checkInput(t, p)
				if names[p.Name] {
					t.Errorf("input %q stands twice", p.Name)
				}
				names[p.Name] = true
			}
			for _, p := range f.Outputs {
				checkLine(t, p.Name, p.Meaning)
				if !plainName.MatchString(p.Name) || names[p.Name] {
					t.Errorf("output name %q is not plain, or stands twice", p.Name)
				}
				names[p.Name] = true
			}
		})
	}
}

func checkLine(t *testing.T, what, text string) {
	t.Helper()
	if strings.TrimSpace(text) == "" || strings.ContainsAny(text, "\n\t") || strings.HasSuffix(text, ".") {
		t.Errorf("%s %q: want one line without a full stop", what, text)
	}
}

func checkInput(t *testing.T, p Input) {
	t.Helper()
	checkLine(t, p.Name, p.Meaning)
	if !plainName.MatchString(p.Name) {
		t.Errorf("input name %q is not plain", p.Name)
	}
	if !(p.Min < p.Max) || math.IsInf(p.Min, 0) || math.IsInf(p.Max, 0) {
		t.Errorf("%s: limits %v to %v", p.Name, p.Min, p.Max)
	}
	if p.Example < p.Min || p.Example > p.Max || p.HasDefault && (p.Default < p.Min || p.Default > p.Max) {
		t.Errorf("%s: example %v or default %v outside %v to %v", p.Name, p.Example, p.Default, p.Min, p.Max)
	}
	if d, ok := p.measure.(duration); ok && d.size == 0 {
		t.Errorf("%s: %q is not a unit of time", p.Name, p.Unit)
	}
	// A quantity must be able to have each value inside the limits.
	for _, v := range []float64{p.Min, p.Max, p.Example} {
		text := p.Text(v)
		if p.Options == nil && p.Unit != "" {
			text += " " + p.Unit
		}
		if got, err := p.Parse(text); err != nil || math.Abs(got-v) > 1e-9*math.Max(1, math.Abs(v)) {
			t.Errorf("%s: Parse(%q) = %v, %v", p.Name, text, got, err)
		}
	}
}

// One question has one answer: what yeast_to_pitch counts on is what the library does
// where no maker's figure is given.
func TestDryYeast(t *testing.T) {
	f, err := Find("yeast_to_pitch")
	if err != nil {
		t.Fatal(err)
	}
	in, out := examples(f), make([]float64, len(f.Outputs))
	place, _ := f.Input("per_gram")
	in[place] = f.Inputs[place].Default
	if err := f.Call(in, out); err != nil {
		t.Fatal(err)
	}
	pack, err := yeast.DryPack(units.Cells{}, units.Celsius.Of(4))
	if err != nil {
		t.Fatal(err)
	}
	cells, err := units.BillionCells.Try(out[0])
	if err != nil {
		t.Fatal(err)
	}
	p, err := pack.Need(cells, 0)
	if want := p.Mass.Value.In(units.Gram); err != nil || math.Abs(out[1]-want) > 1e-9*want {
		t.Errorf("%v g, %v; the library weighs %v g", out[1], err, want)
	}
}

// examples returns the example of each input.
func examples(f *Function) []float64 {
	in := make([]float64, len(f.Inputs))
	for i, p := range f.Inputs {
		in[i] = p.Example
	}
	return in
}

// TestExamples computes each function at its examples, without allocation.
func TestExamples(t *testing.T) {
	for _, f := range All() {
		in, out := examples(&f), make([]float64, len(f.Outputs))
		if err := f.Call(in, out); err != nil {
			t.Errorf("%s(%v): %v", f.Name, in, err)
			continue
		}
		if f.heavy {
			continue
		}
		if n := testing.AllocsPerRun(10, func() { _ = f.Call(in, out) }); n != 0 {
			t.Errorf("%s: %v allocations", f.Name, n)
		}
	}
}

// TestEdges moves one input at a time to its limits and beyond: a finite result
// or an error, never a panic, and a RangeError beyond.
func TestEdges(t *testing.T) {
	for _, f := range All() {
		for i, p := range f.Inputs {
			step := math.Max(1e-9*math.Abs(p.Max), 1e-9)
			if p.Whole {
				step = 1
			}
			for _, v := range []float64{p.Min, p.Max, p.Min + step, p.Max - step} {
				in, out := examples(&f), make([]float64, len(f.Outputs))
				in[i] = v
				if err := f.Call(in, out); err == nil {
					for j, got := range out {
						if math.IsNaN(got) || math.IsInf(got, 0) {
							t.Errorf("%s, %s = %v: %s = %v", f.Name, p.Name, v, f.Outputs[j].Name, got)
						}
					}
				} else if strings.Contains(err.Error(), "no finite value") {
					t.Errorf("%s, %s = %v: %v", f.Name, p.Name, v, err)
				}
			}
			for _, v := range []float64{p.Min - step, p.Max + step, math.NaN(), math.Inf(1), math.Inf(-1), -1e300, 1e300} {
				in, out := examples(&f), make([]float64, len(f.Outputs))
				in[i] = v
				err := f.Call(in, out)
				if _, ok := errors.AsType[*units.RangeError](err); !ok && p.Options == nil || err == nil {
					t.Errorf("%s, %s = %v: error %v is not a RangeError", f.Name, p.Name, v, err)
				}
			}
		}
	}
}

// The options of a choice of primer are the primers, in their order.
func TestPrimersByName(t *testing.T) {
	for _, f := range All() {
		for _, p := range f.Inputs {
			if p.Name != "primer" {
				continue
			}
			if len(p.Options) != len(primers) {
				t.Fatalf("%s: %d options for %d primers", f.Name, len(p.Options), len(primers))
			}
			for i, name := range p.Options {
				primer := shelf.Material(name)
				if primers[i] != name || primer.Name() != name {
					t.Errorf("%s: %q is %q, %s", f.Name, name, primers[i], primer)
				}
				if gas := carbonation.CO2From(primer.Dose(units.Gram.Of(1))).In(units.Gram); !(gas > 0.25 && gas < 0.53) {
					t.Errorf("%s makes %g g/g", name, gas)
				}
			}
		}
	}
}
