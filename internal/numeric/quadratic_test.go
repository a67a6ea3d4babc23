package numeric

import (
	"errors"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/check"
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

// Convex quadratics of W. Hock, K. Schittkowski, Test Examples for Nonlinear Programming Codes (1981), recalled from memory,
// with their minima as printed or as the fractions that meet the conditions of Karush, Kuhn and Tucker by hand.
func TestQuadraticPublished(t *testing.T) {
	for _, p := range []struct {
		name          string
		h, c, rows, d []float64
		x             []float64
	}{
		// 0.01x² + y², 10x − y ≥ 10, 2 ≤ x ≤ 50, y ≤ 50 (here y ≥ 0, which the minimum keeps)
		{"problem 21", []float64{0.02, 0, 0, 2}, []float64{0, 0}, []float64{-10, 1, -1, 0, 1, 0, 0, 1}, []float64{-10, -2, 50, 50}, []float64{2, 0}},
		// 9 − 8x − 6y − 4z + 2x² + 2y² + z² + 2xy + 2xz, x + y + 2z ≤ 3 (E. M. L. Beale)
		{"problem 35", []float64{4, 2, 2, 2, 4, 0, 2, 0, 2}, []float64{-8, -6, -4}, []float64{1, 1, 2}, []float64{3}, []float64{4. / 3, 7. / 9, 4. / 9}},
		// x² + y²/2 + z² + w²/2 − xz + zw − x − 3y + z − w
		{"problem 76", []float64{2, 0, -1, 0, 0, 1, 0, 0, -1, 0, 2, 1, 0, 0, 1, 1}, []float64{-1, -3, 1, -1},
			[]float64{1, 2, 1, 1, 3, 1, 2, -1, 0, -1, -4, 0}, []float64{5, 4, -1.5}, []float64{3. / 11, 23. / 11, 0, 6. / 11}},
		// the place nearest to (3, 1) where x + y = 2, said as two limits: (2, 0)
		{"an equation", []float64{1, 0, 0, 1}, []float64{-3, -1}, []float64{1, 1, -1, -1}, []float64{2, -2}, []float64{2, 0}},
		{"one point", []float64{1}, []float64{-2}, []float64{1, -1}, []float64{1, -1}, []float64{1}},
	} {
		q := minimised(t, p.name, p.h, p.c, p.rows, p.d)
		for j, want := range p.x {
			check.Within(t, p.name, q.X[j], want, 1e-12)
		}
	}
}

// Where no number of q is below zero, z = 0 solves w = Mz + q (Lemke 1965), and nothing is exchanged.
func TestQuadraticAtTheOrigin(t *testing.T) {
	for _, n := range []int{1, 3} {
		q := NewQuadratic(n, 1)
		for j := range n {
			q.H[j*n+j], q.C[j], q.Linear()[j] = 1, 1, 0.25*float64(j)
		}
		q.Bounds()[0] = 0.5
		if err := q.Solve(); err != nil || q.Pivots != 0 || slices.Max(q.X) != 0 || q.Slope[n-1] != 0.25*float64(n-1) {
			t.Error(err, q.Pivots, q.X, q.Slope)
		}
	}
}

// What counts as zero, as the constants have it: a coefficient of 1e-9, and 1e-12 of an artificial variable. It stands in
// every row, so that of x ≤ 0 and x ≥ d it keeps half of d. A fiftieth to each side, by hand.
func TestQuadraticCountsAsZero(t *testing.T) {
	solve := func(slope float64, rows, d []float64) (float64, error) {
		q := NewQuadratic(1, len(d))
		q.Linear()[0] = slope
		copy(q.C, rows)
		copy(q.Bounds(), d)
		err := q.Solve()
		return q.X[0], err
	}
	if x, err := solve(-1, []float64{0.98e-9}, []float64{1}); !errors.Is(err, ErrInfeasible) {
		t.Error(x, err)
	}
	if x, err := solve(-1, []float64{1.02e-9}, []float64{1}); err != nil || math.Abs(x*1.02e-9-1) > 1e-9 {
		t.Error(x, err)
	}
	if x, err := solve(0, []float64{1, -1}, []float64{0, -2 * 0.98e-12}); err != nil || x > 2e-12 {
		t.Error(x, err)
	}
	// 0.1x ≤ 0 and 0.1x ≥ 1e-12: halfway, at 5e-12, the artificial variable is 0.5e-12, and none.
	if x, err := solve(0, []float64{0.1, -0.1}, []float64{0, -1e-12}); err != nil || math.Abs(x-5e-12) > 1e-15 {
		t.Error(x, err)
	}
	if x, err := solve(0, []float64{1, -1}, []float64{0, -2 * 1.02e-12}); !errors.Is(err, ErrInfeasible) {
		t.Error(x, err)
	}
}

// The order among rows that reach zero, as the comments of ratio and tieRatio have it.
func TestQuadraticOrderOfRows(t *testing.T) {
	type row struct {
		pivot, right float64
		artificial   bool
	}
	for name, c := range map[string]struct {
		rows []row
		want int
	}{
		"the nearest":                   {[]row{{-1, 3, false}, {-1, 2, false}, {-2, 6, false}}, 1},
		"none":                          {[]row{{1, 3, false}, {0, 2, false}}, 2},
		"larger pivot":                  {[]row{{-1, 1, false}, {-2, 2, false}, {-1.5, 1.5, false}}, 1},
		"first of equal pivots":         {[]row{{-1, 1, false}, {-1, 1, false}}, 0},
		"artificial later":              {[]row{{-2, 2, false}, {-1, 1, true}}, 1},
		"artificial first":              {[]row{{-1, 1, true}, {-2, 2, false}}, 0},
		"artificial farther":            {[]row{{-1, 1, false}, {-1, 2, true}}, 0},
		"equal, at nought":              {[]row{{-1, 0, false}, {-2, 2 * 0.98e-12, false}}, 1},
		"not equal, at nought":          {[]row{{-1, 0, false}, {-2, 2 * 1.02e-12, false}}, 0},
		"nearer but equal, at nought":   {[]row{{-2, 2 * 0.98e-12, false}, {-1, 0, false}}, 0},
		"nearer, not equal, at nought":  {[]row{{-2, 2 * 1.02e-12, false}, {-1, 0, false}}, 1},
		"equal, at a hundred":           {[]row{{-1, 100, false}, {-2, 200 + 2*100e-12, false}}, 1},
		"not equal, at a hundred":       {[]row{{-1, 100, false}, {-2, 200 + 2*102e-12, false}}, 0},
		"below nought counts as nought": {[]row{{-1, -1e-3, false}, {-2, 0, false}}, 1},
	} {
		q := NewQuadratic(len(c.rows), 0)
		k := q.size
		for i, r := range c.rows {
			q.table[i*(k+2)], q.table[i*(k+2)+k+1], q.basic[i] = r.pivot, r.right, i
			if r.artificial {
				q.basic[i] = 2 * k
			}
		}
		if got := q.ratio(0); got != c.want {
			t.Errorf("%s: row %d, want %d", name, got, c.want)
		}
	}
}

// Where a minimum is a line, Direction goes along it; by hand.
func TestQuadraticDirection(t *testing.T) {
	for _, p := range []struct {
		name    string
		h, c    []float64
		rows, d []float64
		j       int
		dx      []float64
	}{
		{"½(x + 2y − 1)²", []float64{1, 2, 2, 4}, []float64{-1, -2}, nil, nil, 0, []float64{1, -0.5}},
		{"½(2x + y − 1)²", []float64{4, 2, 2, 1}, []float64{-2, -1}, nil, nil, 1, []float64{-0.5, 1}},
		{"½(x + y + 2z − 1)²", []float64{1, 1, 2, 1, 1, 2, 2, 2, 4}, []float64{-1, -1, -2}, nil, nil, 0, []float64{1, 0, -0.5}},
		{"nothing matters", []float64{0, 0, 0, 0}, []float64{0, 0}, []float64{1, 1}, []float64{1}, 0, []float64{1, 0}},
		{"its slope would rise", []float64{1, 0, 0, 1}, []float64{0, 0}, nil, nil, 0, nil},
		{"what is not zero is no such variable", []float64{1, 0, 0, 1}, []float64{-1, 0}, nil, nil, 0, nil},
		{"the cost of x + y ≤ 1 would rise: ½x² − 2x − y", []float64{1, 0, 0, 0}, []float64{-2, -1}, []float64{1, 1}, []float64{1}, 1, nil},
	} {
		n := len(p.c)
		q := minimised(t, p.name, p.h, p.c, p.rows, p.d)
		dx := make([]float64, n)
		if got := q.Direction(p.j, dx); got != (p.dx != nil) {
			t.Errorf("%s: %v %v at %v", p.name, got, dx, q.X)
			continue
		}
		for i := range p.dx {
			check.Within(t, p.name, dx[i], p.dx[i], 1e-12)
		}
	}
}

// minimised is the program ½xᵀHx + cᵀx with rows·x ≤ d, x ≥ 0, at its solution.
func minimised(t *testing.T, name string, h, c, rows, d []float64) *Quadratic {
	t.Helper()
	q := NewQuadratic(len(c), len(d))
	copy(q.H, h)
	copy(q.C, rows)
	copy(q.Linear(), c)
	copy(q.Bounds(), d)
	if err := q.Solve(); err != nil {
		t.Errorf("%s: %v", name, err)
	}
	return q
}
