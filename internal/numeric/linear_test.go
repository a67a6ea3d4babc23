package numeric

import (
	"errors"
	"math"
	"math/big"
	"math/bits"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/check"
)

// The textbook example of the simplex method: most of 3x + 5y with x ≤ 4, 2y ≤ 12,
// 3x + 2y ≤ 18 is 36 at (2, 6) (Hillier & Lieberman, Introduction to Operations Research,
// recalled from memory; checked by hand).
func TestLinearTextbook(t *testing.T) {
	x, err := Linear([]float64{-3, -5}, [][]float64{{1, 0}, {0, 2}, {3, 2}}, []float64{4, 12, 18})
	if err != nil || math.Abs(x[0]-2) > 1e-12 || math.Abs(x[1]-6) > 1e-12 {
		t.Errorf("%v, %v", x, err)
	}
}

// Least x + 2y with x + y ≥ 3, x ≤ 2, y ≤ 5: (2, 1) by hand.
func TestLinearWithALowerBound(t *testing.T) {
	x, err := Linear([]float64{1, 2}, [][]float64{{-1, -1}, {1, 0}, {0, 1}}, []float64{-3, 2, 5})
	if err != nil || math.Abs(x[0]-2) > 1e-12 || math.Abs(x[1]-1) > 1e-12 {
		t.Errorf("%v, %v", x, err)
	}
}

func TestLinearErrors(t *testing.T) {
	if _, err := Linear([]float64{1}, [][]float64{{-1}, {1}}, []float64{-3, 2}); !errors.Is(err, ErrInfeasible) {
		t.Error(err)
	}
	if _, err := Linear([]float64{-1}, [][]float64{{-1}}, []float64{1}); !errors.Is(err, ErrUnbounded) {
		t.Error(err)
	}
}

// No corner of the allowed region in two dimensions is better.
func TestLinearAgainstCorners(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := func(what string, min, max float64) float64 {
			return math.Round(100*rapid.Float64Range(min, max).Draw(t, what)) / 100
		}
		c := []float64{num("c0", -1, 1), num("c1", -1, 1)}
		a := [][]float64{{1, 0}, {0, 1}}
		b := []float64{num("most x", 0.1, 5), num("most y", 0.1, 5)}
		for range rapid.IntRange(0, 3).Draw(t, "rows") {
			a = append(a, []float64{num("a0", -1, 1), num("a1", -1, 1)})
			b = append(b, num("b", -1, 2))
		}
		lines := append([][]float64{{-1, 0}, {0, -1}}, a...)
		ends := append([]float64{0, 0}, b...)
		best := math.Inf(1)
		for i := range lines {
			for k := range i {
				d := lines[i][0]*lines[k][1] - lines[i][1]*lines[k][0]
				if math.Abs(d) < 1e-9 {
					continue
				}
				x := (ends[i]*lines[k][1] - lines[i][1]*ends[k]) / d
				y := (lines[i][0]*ends[k] - ends[i]*lines[k][0]) / d
				inside := true
				for r := range lines {
					inside = inside && lines[r][0]*x+lines[r][1]*y <= ends[r]+1e-9
				}
				if inside {
					best = math.Min(best, c[0]*x+c[1]*y)
				}
			}
		}
		x, err := Linear(c, a, b)
		if math.IsInf(best, 1) {
			if !errors.Is(err, ErrInfeasible) {
				t.Fatalf("%v, %v", x, err)
			}
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if got := c[0]*x[0] + c[1]*x[1]; math.Abs(got-best) > 1e-6 {
			t.Fatalf("%g at %v, a corner has %g", got, x, best)
		}
	})
}

// atACorner is the least c·x over the corners of a·x ≤ b, x ≥ 0, in exact fractions: every choice of as many of the
// limits as there are unknowns is solved, and kept where it keeps the others.
func atACorner(c []float64, a [][]float64, b []float64) *big.Rat {
	n, m := len(c), len(b)
	rat := func(v float64) *big.Rat { return new(big.Rat).SetFloat64(v) }
	limits := make([][]*big.Rat, n+m)
	for i := range limits {
		limits[i] = make([]*big.Rat, n+1)
		for j := range n {
			switch {
			case i >= n:
				limits[i][j] = rat(a[i-n][j])
			case i == j:
				limits[i][j] = rat(-1)
			default:
				limits[i][j] = rat(0)
			}
		}
		if limits[i][n] = rat(0); i >= n {
			limits[i][n] = rat(b[i-n])
		}
	}
	dot := func(u, v []*big.Rat) *big.Rat {
		sum := new(big.Rat)
		for j := range n {
			sum.Add(sum, new(big.Rat).Mul(u[j], v[j]))
		}
		return sum
	}
	cost := make([]*big.Rat, n)
	for j := range n {
		cost[j] = rat(c[j])
	}
	var best *big.Rat
	for set := range 1 << (n + m) {
		if bits.OnesCount(uint(set)) != n {
			continue
		}
		var rows [][]*big.Rat
		for i := range limits {
			if set>>i&1 == 1 {
				row := make([]*big.Rat, n+1)
				for j := range row {
					row[j] = new(big.Rat).Set(limits[i][j])
				}
				rows = append(rows, row)
			}
		}
		x, ok := solved(rows)
		for i := 0; ok && i < n+m; i++ {
			ok = dot(limits[i], x).Cmp(limits[i][n]) <= 0
		}
		if ok {
			if v := dot(cost, x); best == nil || v.Cmp(best) < 0 {
				best = v
			}
		}
	}
	return best
}

// solved is the solution of a square system with its right side in the last column, by Gauss and Jordan.
func solved(rows [][]*big.Rat) ([]*big.Rat, bool) {
	n := len(rows)
	for j := range n {
		at := slices.IndexFunc(rows[j:], func(r []*big.Rat) bool { return r[j].Sign() != 0 })
		if at < 0 {
			return nil, false
		}
		rows[j], rows[j+at] = rows[j+at], rows[j]
		inv := new(big.Rat).Inv(rows[j][j])
		for k := range rows[j] {
			rows[j][k].Mul(rows[j][k], inv)
		}
		for i := range rows {
			if f := new(big.Rat).Set(rows[i][j]); i != j && f.Sign() != 0 {
				for k := range rows[i] {
					rows[i][k].Sub(rows[i][k], new(big.Rat).Mul(f, rows[j][k]))
				}
			}
		}
	}
	x := make([]*big.Rat, n)
	for i := range x {
		x[i] = rows[i][n]
	}
	return x, true
}

// Programs with many ways to one corner, on which the plain method turns in a circle or goes round all corners. Their least
// values are printed, and come out of the corners in exact fractions. All are recalled from memory.
func TestLinearPublished(t *testing.T) {
	for _, p := range []struct {
		source string
		c      []float64
		a      [][]float64
		b      []float64
		least  float64
	}{
		{"E. M. L. Beale, Cycling in the dual simplex algorithm, Naval Res. Logist. Q. 2 (1955) 269",
			[]float64{-0.75, 150, -0.02, 6}, [][]float64{{0.25, -60, -0.04, 9}, {0.5, -90, -0.02, 3}, {0, 0, 1, 0}}, []float64{0, 0, 1}, -0.05},
		{"K. T. Marshall, J. W. Suurballe, A note on cycling in the simplex method, Naval Res. Logist. Q. 16 (1969) 121",
			[]float64{-0.4, -0.4, 1.8}, [][]float64{{0.6, -6.4, 4.8}, {0.2, -1.8, 0.6}, {0.4, -1.6, 0.2}, {0, 1, 0}}, []float64{0, 0, 0, 1}, -2},
		{"H. W. Kuhn, in M. L. Balinski, A. W. Tucker, Duality theory of linear programs, SIAM Review 11 (1969) 347",
			[]float64{-2, -3, 1, 12}, [][]float64{{-2, -9, 1, 9}, {1. / 3, 1, -1. / 3, -2}, {2, 3, -1, -12}}, []float64{0, 0, 2}, -2},
		{"V. Klee, G. J. Minty, How good is the simplex algorithm? (1972), with a quarter for its ε",
			[]float64{0, 0, 0, -1}, [][]float64{{1, 0, 0, 0}, {0.25, -1, 0, 0}, {0.25, 1, 0, 0}, {0, 0.25, -1, 0}, {0, 0.25, 1, 0}, {0, 0, 0.25, -1}, {0, 0, 0.25, 1}},
			[]float64{1, 0, 1, 0, 1, 0, 1}, -1},
	} {
		exact, _ := atACorner(p.c, p.a, p.b).Float64()
		check.Within(t, p.source+", corners", exact, p.least, 1e-15)
		x, err := Linear(p.c, p.a, p.b)
		if err != nil {
			t.Errorf("%s: %v", p.source, err)
			continue
		}
		var got float64
		for j, v := range x {
			got += p.c[j] * v
		}
		check.Within(t, p.source, got, p.least, 1e-12)
	}
}

// What is below 1e-9 counts as zero, as the comment of Linear has it: a cost, a gain by a limit, a coefficient, what is
// left open. Each is tried a fiftieth below and a fiftieth above, by hand.
func TestLinearCountsAsZero(t *testing.T) {
	const less, more = 0.98e-9, 1.02e-9
	least := func(x, y float64, c []float64, a [][]float64, b []float64) {
		t.Helper()
		got, err := Linear(c, a, b)
		if err != nil || math.Abs(got[0]-x) > 1e-9*max(1, x) || len(got) > 1 && math.Abs(got[1]-y) > 1e-9 {
			t.Errorf("%v, %v; want %g, %g", got, err, x, y)
		}
	}
	least(0, 0, []float64{-less}, [][]float64{{1}}, []float64{1})
	least(1, 0, []float64{-more}, [][]float64{{1}}, []float64{1})
	// x ≤ ½ and x + y ≤ 1: to give up x for y brings what y is worth above x.
	least(0.5, 0.5, []float64{-1, -1 - less}, [][]float64{{1, 0}, {1, 1}}, []float64{0.5, 1})
	least(0, 1, []float64{-1, -1 - more}, [][]float64{{1, 0}, {1, 1}}, []float64{0.5, 1})
	if _, err := Linear([]float64{-1}, [][]float64{{less}}, []float64{1}); !errors.Is(err, ErrUnbounded) {
		t.Error(err)
	}
	least(1/more, 0, []float64{-1}, [][]float64{{more}}, []float64{1})
	// x ≤ 1 and x ≥ 1 and a little.
	least(1, 0, []float64{1}, [][]float64{{1}, {-1}}, []float64{1, -1 - less})
	if _, err := Linear([]float64{1}, [][]float64{{1}, {-1}}, []float64{1, -1 - more}); !errors.Is(err, ErrInfeasible) {
		t.Error(err)
	}
}

// Of two limits that are met at once the one of the lower number leaves, as Bland has it; either way the corner is the same,
// and an artificial variable left at zero by it (x ≥ 1 said twice) does not come back: least 2x − y with y ≤ x is at (1, 1).
func TestLinearSaidTwice(t *testing.T) {
	x, err := Linear([]float64{2, -1}, [][]float64{{-1, 0}, {-2, 0}, {-1, 1}}, []float64{-1, -2, 0})
	if err != nil || math.Abs(x[0]-1) > 1e-12 || math.Abs(x[1]-1) > 1e-12 {
		t.Error(x, err)
	}
}

// A row whose right side lies between 0 and 1 is taken as it stands, however much of the others it asks for: the corners in
// exact fractions have the last word.
func TestLinearSmallRightSides(t *testing.T) {
	for _, p := range []struct {
		c []float64
		a [][]float64
		b []float64
	}{
		{[]float64{2, -1}, [][]float64{{-1, 1}, {0, 1}}, []float64{0.5, 2}},
		{[]float64{1, -3}, [][]float64{{-2, 1}, {-1, 1}, {1, 0}}, []float64{0.25, 0.75, 3}},
		{[]float64{1, 1}, [][]float64{{-1, -1}, {-1, 1}, {1, 1}}, []float64{-2, 0.5, 4}},
		{[]float64{-1, 2}, [][]float64{{1, -1}, {-1, -1}, {0, 1}}, []float64{0.5, -1, 2}},
		{[]float64{1, 2}, [][]float64{{-1, 1}, {1, 1}}, []float64{0.5, 0.75}},
	} {
		want, _ := atACorner(p.c, p.a, p.b).Float64()
		x, err := Linear(p.c, p.a, p.b)
		if err != nil {
			t.Errorf("%v: %v", p, err)
			continue
		}
		check.Within(t, "least", p.c[0]*x[0]+p.c[1]*x[1], want, 1e-12)
	}
}
