package numeric_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/zymase/internal/numeric"
)

// zero is the procedure of that name as Brent printed it (Algorithms for Minimization without Derivatives, 1973, section
// 4.6, recalled from memory), written down a second time: with what it tries, in order.
func zero(f func(float64) float64, a, b, tol float64) (tried []float64) {
	try := func(x float64) float64 { tried = append(tried, x); return f(x) }
	const macheps = 0x1p-52
	var c, d, e, fc float64
	fa, fb := try(a), try(b)
	inside := func() { c, fc = a, fa; d = b - a; e = d }
	inside()
	for {
		if math.Abs(fc) < math.Abs(fb) {
			a, fa = b, fb
			b, fb = c, fc
			c, fc = a, fa
		}
		t := 2*macheps*math.Abs(b) + 0.5*tol // ours is the width, his half of it
		m := 0.5 * (c - b)
		if !(math.Abs(m) > t && fb != 0) {
			return tried
		}
		if math.Abs(e) < t || math.Abs(fa) <= math.Abs(fb) {
			d, e = m, m
		} else {
			s := fb / fa
			var p, q float64
			if a == c {
				p, q = 2*m*s, 1-s
			} else {
				q = fa / fc
				r := fb / fc
				p = s * (2*m*q*(q-r) - (b-a)*(r-1))
				q = (q - 1) * (r - 1) * (s - 1)
			}
			if p > 0 {
				q = -q
			} else {
				p = -p
			}
			s, e = e, d
			if 2*p < 3*m*q-math.Abs(t*q) && p < math.Abs(0.5*s*q) {
				d = p / q
			} else {
				d, e = m, m
			}
		}
		a, fa = b, fb
		switch {
		case math.Abs(d) > t:
			b += d
		case m > 0:
			b += t
		default:
			b -= t
		}
		if fb = try(b); fb > 0 == (fc > 0) {
			inside()
		}
	}
}

// Root tries what Brent's procedure tries.
func TestRootIsBrents(t *testing.T) {
	for name, f := range map[string]func(float64) float64{
		"cubic":     func(x float64) float64 { return x*x*x + x - 0.7 },
		"small":     func(x float64) float64 { return 1e-3 * (x*x - 2) },
		"flat":      func(x float64) float64 { return math.Pow(x-0.3, 9) },
		"steep":     func(x float64) float64 { return math.Expm1(20 * (x - 1.2)) },
		"steeper":   func(x float64) float64 { return math.Expm1(25.4 * (x - 0.08)) },
		"pole":      func(x float64) float64 { return 1/(x+1.001) - 3 },
		"wavy":      func(x float64) float64 { return math.Sin(9*x) + 3*(x-0.4) },
		"logarithm": func(x float64) float64 { return math.Log(x+1.0001) - 0.2 },
		"a step":    func(x float64) float64 { return math.Copysign(1, x-0.7) },
		"square":    func(x float64) float64 { return x*math.Abs(x) - 1e-8 },
		"fourth":    func(x float64) float64 { return x*x*x*math.Abs(x) - 1e-12 },
	} {
		for _, tol := range []float64{0, 1e-12, 1e-6, 1e-2} {
			for _, ends := range [][2]float64{{-1, 2}, {2, -1}, {-1, 3.7}, {-1, 5.4}} {
				want := zero(f, ends[0], ends[1], tol)
				var got []float64
				if _, err := numeric.Root(func(x float64) float64 { got = append(got, x); return f(x) }, ends[0], ends[1], tol); err != nil {
					t.Fatal(name, err)
				}
				same := len(got) == len(want)
				for i := range min(len(got), len(want)) {
					same = same && math.Abs(got[i]-want[i]) <= 1e-13*max(1, math.Abs(want[i])) // a processor may fuse a product and a sum
				}
				if !same && tol > 0 || tol == 0 && !slices.Equal(got[:min(4, len(got))], want[:min(4, len(want))]) {
					t.Errorf("%s to %g in %v: tried %v, Brent tries %v", name, tol, ends, got, want)
				}
			}
		}
	}
}

// Where a function has two values only, Brent's procedure halves; every number is then exact, and so is what is tried to
// the last place of float64: near 1.95 it ends where half the bracket is 2⁻⁵¹ of the place, one halving after 2⁻⁵⁰.
func TestRootHalvesToTheLastPlace(t *testing.T) {
	f := func(x float64) float64 { return math.Copysign(1, x-1.95) }
	var got []float64
	x, err := numeric.Root(func(x float64) float64 { got = append(got, x); return f(x) }, 0, 4, 0)
	if want := zero(f, 0, 4, 0); err != nil || math.Abs(x-1.95) > 0x1p-50 || !slices.Equal(got, want) {
		t.Errorf("%v, %v: tried %v, Brent tries %v", x, err, got, want)
	}
}

// After j halvings of [0, 1] half the bracket is 2^−(j+1): a width of 2⁻¹⁹⁹ is met after 199 of them, which the 200th
// step finds, and 2⁻²⁰⁰ is not, in 200 steps, by hand.
func TestRootGivesUp(t *testing.T) {
	f := func(x float64) float64 { return math.Copysign(1, x-1e-300) }
	if x, err := numeric.Root(f, 0, 1, 0x1p-199); err != nil || x > 0x1p-199 {
		t.Error(x, err)
	}
	if x, err := numeric.Root(f, 0, 1, 0x1p-200); !errors.Is(err, numeric.ErrNoConvergence) || x != 0 {
		t.Error(x, err)
	}
}

// Small values of one sign are no bracket; a rising function that is a little above zero is not gone past.
func TestSmallValues(t *testing.T) {
	for _, sign := range []float64{1, -1} {
		f := func(x float64) float64 { return sign * (0.5 + 0.1*x) }
		if x, err := numeric.Root(f, 0, 1, 1e-9); !errors.Is(err, numeric.ErrBracket) {
			t.Error(x, err)
		}
	}
	at := func(x, want float64, f func(float64) float64) {
		got, err := numeric.Rising(func(x float64) (float64, error) { return f(x), nil }, x, 2, 10, 1e-12)
		if err != nil || math.Abs(got-want) > 1e-11 {
			t.Errorf("%g, %v; want %g", got, err, want)
		}
	}
	at(1, 0, func(x float64) float64 { return x + 0.5 })
	at(2, 1, func(x float64) float64 { return (x - 1) / 2 })
}
