package numeric

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
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

// Beale's example, which makes the plain method turn in a circle: least value −1/20
// (Beale, Naval Res. Logist. Q. 2 (1955) 269, recalled from memory).
func TestLinearDoesNotCircle(t *testing.T) {
	c := []float64{-0.75, 150, -0.02, 6}
	x, err := Linear(c, [][]float64{{0.25, -60, -0.04, 9}, {0.5, -90, -0.02, 3}, {0, 0, 1, 0}}, []float64{0, 0, 1})
	if err != nil {
		t.Fatal(err)
	}
	sum := 0.0
	for i := range c {
		sum += c[i] * x[i]
	}
	if math.Abs(sum+0.05) > 1e-12 {
		t.Errorf("%g at %v", sum, x)
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
