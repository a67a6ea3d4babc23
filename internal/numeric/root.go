// Package numeric holds the mathematics that the physics needs: roots,
// polynomials, constrained least squares. There is no brewing in it.
package numeric

import (
	"errors"
	"fmt"
	"math"
)

// ErrBracket reports that a function has the same sign at both ends of an
// interval, or is not a number there, so that no root is shown to lie between.
var ErrBracket = errors.New("no sign change in the interval")

// ErrNoConvergence reports that the tolerance was not met in the steps allowed.
var ErrNoConvergence = errors.New("no convergence")

const mostSteps = 200

// Root returns x in [a, b] where f changes sign, to within tol of x, or as near
// as float64 comes. f(a) and f(b) must have different signs, otherwise the error
// is [ErrBracket]; it is [ErrNoConvergence] where 200 steps do not do.
//
//   - Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973)
//     chapter 4 (inverse quadratic interpolation, secant and bisection; always
//     inside the bracket).
func Root(f func(float64) float64, a, b, tol float64) (float64, error) {
	fa, fb := f(a), f(b)
	switch {
	case fa == 0:
		return a, nil
	case fb == 0:
		return b, nil
	case !(fa < 0 && fb > 0 || fa > 0 && fb < 0):
		return 0, fmt.Errorf("numeric.Root: [%g, %g]: %w", a, b, ErrBracket)
	}
	c, fc := a, fa
	d := b - a
	e := d
	for range mostSteps {
		if math.Abs(fc) < math.Abs(fb) {
			a, b, c = b, c, b
			fa, fb, fc = fb, fc, fb
		}
		t := 2*0x1p-52*math.Abs(b) + tol/2
		m := (c - b) / 2
		if math.Abs(m) <= t || fb == 0 {
			return b, nil
		}
		if math.Abs(e) < t || math.Abs(fa) <= math.Abs(fb) {
			d, e = m, m
		} else {
			var p, q float64
			if s := fb / fa; a == c { // secant
				p, q = 2*m*s, 1-s
			} else { // inverse quadratic
				u, r := fa/fc, fb/fc
				p = s * (2*m*u*(u-r) - (b-a)*(r-1))
				q = (u - 1) * (r - 1) * (s - 1)
			}
			d, e = step(p, q, m, t, d, e)
		}
		a, fa = b, fb
		if math.Abs(d) > t {
			b += d
		} else {
			b += math.Copysign(t, m)
		}
		fb = f(b)
		if math.IsNaN(fb) {
			return 0, fmt.Errorf("numeric.Root: f(%g) is not a number: %w", b, ErrNoConvergence)
		}
		if (fb > 0) == (fc > 0) {
			c, fc = a, fa
			d = b - a
			e = d
		}
	}
	return 0, fmt.Errorf("numeric.Root: [%g, %g]: %w", a, b, ErrNoConvergence)
}

// step takes the interpolated step p/q when it is well inside the bracket, and
// half the bracket otherwise.
func step(p, q, m, t, d, e float64) (float64, float64) {
	if p > 0 {
		q = -q
	} else {
		p = -p
	}
	if 2*p < math.Min(3*m*q-math.Abs(t*q), math.Abs(e*q)) {
		return p / q, d
	}
	return m, m
}
