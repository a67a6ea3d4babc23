package numeric

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The conditions of Karush, Kuhn and Tucker are what a minimum of a convex
// quadratic is; they are checked on random problems, singular ones among them.
func TestQuadraticMeetsConditions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "variables")
		m := rapid.IntRange(0, 4).Draw(t, "constraints")
		rank := rapid.IntRange(1, 8).Draw(t, "rows")
		num := rapid.Custom(func(t *rapid.T) float64 { return float64(rapid.IntRange(-16, 16).Draw(t, "sixteenths")) / 16 })
		p := NewQuadratic(n, m)
		a := make([]float64, rank*n)
		b := make([]float64, rank)
		for i := range a {
			a[i] = num.Draw(t, "a")
		}
		for i := range b {
			b[i] = num.Draw(t, "b")
		}
		for i := range n {
			for j := range n {
				for r := range rank {
					p.H[i*n+j] += a[r*n+i] * a[r*n+j]
				}
			}
			for r := range rank {
				p.Linear()[i] -= a[r*n+i] * b[r]
			}
		}
		for i := range p.C {
			p.C[i] = num.Draw(t, "c")
		}
		for i := range p.Bounds() {
			p.Bounds()[i] = rapid.Float64Range(0, 1).Draw(t, "d") // x = 0 is feasible
		}
		if err := p.Solve(); err != nil {
			t.Fatalf("%v after %d pivots", err, p.Pivots)
		}
		for i := range n {
			slope := p.Linear()[i]
			for j := range n {
				slope += p.H[i*n+j] * p.X[j]
			}
			for j := range m {
				slope += p.C[j*n+i] * p.Y[j]
			}
			scale := 1 + p.X[i]
			for _, y := range p.Y {
				scale += y
			}
			for _, x := range p.X {
				scale += x
			}
			if slope < -1e-7*scale || math.Abs(slope*p.X[i]) > 1e-7*scale*scale {
				t.Errorf("slope %d is %g at %g", i, slope, p.X[i])
			}
		}
		for j := range m {
			left := p.Bounds()[j]
			scale := 1.0
			for i := range n {
				left -= p.C[j*n+i] * p.X[i]
				scale += p.X[i]
			}
			if left < -1e-7*scale || math.Abs(left*p.Y[j]) > 1e-6*scale*(1+p.Y[j]) {
				t.Errorf("constraint %d: %g left at cost %g", j, left, p.Y[j])
			}
		}
	})
}

func TestQuadraticInfeasible(t *testing.T) {
	p := NewQuadratic(1, 2)
	p.H[0] = 1
	p.C[0], p.C[1] = 1, -1
	p.Bounds()[0], p.Bounds()[1] = 1, -2 // x <= 1 and x >= 2
	if err := p.Solve(); !errors.Is(err, ErrInfeasible) {
		t.Errorf("got %v", err)
	}
}
