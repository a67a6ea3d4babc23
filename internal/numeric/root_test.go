package numeric_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/numeric"
)

// The roots are exact by hand, or printed in the source named.
func TestRoot(t *testing.T) {
	for _, c := range []struct {
		name string
		f    func(float64) float64
		a, b float64
		want float64
	}{
		{"x² = 2", func(x float64) float64 { return x*x - 2 }, 0, 2, math.Sqrt2},
		{"x = cos x, Abramowitz & Stegun 1964 section 4.3 (Dottie number, OEIS A003957)", func(x float64) float64 { return math.Cos(x) - x },
			0, 1, 0.739085133215160641655},
		{"x³ − 2x − 5, Wallis 1685 (OEIS A007493)", func(x float64) float64 { return x*x*x - 2*x - 5 }, 2, 3, 2.0945514815423265914},
		{"a root at the left end", func(x float64) float64 { return x }, 0, 1, 0},
		{"a root at the right end", func(x float64) float64 { return x - 1 }, 0, 1, 1},
		{"a flat root", func(x float64) float64 { return math.Pow(x-0.3, 9) }, 0, 1, 0.3},
		{"a step", func(x float64) float64 { return math.Copysign(1, x-0.7) }, 0, 1, 0.7},
		{"ends the other way round", func(x float64) float64 { return math.Exp(x) - 3 }, 5, -5, math.Log(3)},
	} {
		got, err := numeric.Root(c.f, c.a, c.b, 1e-13)
		if err != nil || math.Abs(got-c.want) > 1e-12 && c.name != "a flat root" || math.Abs(got-c.want) > 1e-3 {
			t.Errorf("%s: got %.17g, %v; want %.17g", c.name, got, err, c.want)
		}
	}
}

func TestRootFails(t *testing.T) {
	nan := func(x float64) float64 { return math.NaN() }
	for name, f := range map[string]func(float64) float64{
		"no sign change": func(x float64) float64 { return x*x + 1 },
		"NaN at an end":  nan,
	} {
		if x, err := numeric.Root(f, -1, 1, 0); !errors.Is(err, numeric.ErrBracket) || x != 0 {
			t.Errorf("%s: got %v, %v; want ErrBracket", name, x, err)
		}
	}
	hole := func(x float64) float64 {
		if math.Abs(x) < 0.5 {
			return math.NaN()
		}
		return x
	}
	if x, err := numeric.Root(hole, -1, 1, 0); !errors.Is(err, numeric.ErrNoConvergence) || x != 0 {
		t.Errorf("NaN inside: got %v, %v; want ErrNoConvergence", x, err)
	}
}

// A root of a monotone cubic is found to the last digits wherever it lies, in
// few steps.
func TestRootOfAnyCubic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := rapid.Float64Range(-10, 10).Draw(t, "root")
		k := rapid.Float64Range(0.01, 100).Draw(t, "slope")
		steps := 0
		f := func(x float64) float64 { steps++; d := x - want; return k*d + d*d*d }
		got, err := numeric.Root(f, -11, 12, 0)
		if err != nil || math.Abs(got-want) > 1e-14*math.Max(1, math.Abs(want))*4 {
			t.Fatalf("got %.17g, %v; want %.17g", got, err, want)
		}
		if steps > 60 {
			t.Fatalf("%d steps", steps)
		}
	})
}

func ExampleRoot() {
	x, err := numeric.Root(func(x float64) float64 { return x*x - 2 }, 0, 2, 1e-12)
	fmt.Printf("%.6f %v\n", x, err)
	// Output: 1.414214 <nil>
}
