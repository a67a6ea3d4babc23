package numeric

import (
	"errors"
	"math"
)

// ErrInfeasible reports that no point satisfies all constraints.
var ErrInfeasible = errors.New("no point satisfies all constraints")

// ErrUnbounded reports that the least value is minus infinity.
var ErrUnbounded = errors.New("the least value has no bound")

// nought is the size below which a number of a linear program counts as zero.
const nought = 1e-9

// mostPivots is where [Linear] gives up; Bland's pivots end by themselves but for rounding.
const mostPivots = 10000

// Linear returns x ≥ 0 with the least c·x for which a·x ≤ b in each row. Rows should
// be scaled so that their numbers are near 1: what is below 1e-9 counts as zero.
//
//   - Source: G. B. Dantzig, Linear Programming and Extensions (1963), simplex method
//     in two phases; the pivots of R. G. Bland, Math. Oper. Res. 2 (1977) 103, so that
//     it ends.
func Linear(c []float64, a [][]float64, b []float64) ([]float64, error) {
	n, m := len(c), len(b)
	// Columns: x, a slack for each row, right side. A row with b < 0 is turned round and has an
	// artificial variable in its base, which has no column, since it never comes back.
	right := n + m
	t := make([][]float64, m)
	base := make([]int, m)
	for i := range m {
		t[i] = make([]float64, right+1)
		copy(t[i], a[i])
		t[i][n+i], t[i][right], base[i] = 1, b[i], n+i
		if b[i] < 0 {
			turn(t[i])
			base[i] = right + i
		}
	}
	cost := make([]float64, right+m)
	for j := range m {
		cost[right+j] = 1
	}
	if err := simplex(t, base, cost, right); err != nil {
		return nil, err
	}
	var worth float64
	for i, k := range base {
		worth += cost[k] * t[i][right]
	}
	if worth > nought {
		return nil, ErrInfeasible
	}
	for i, k := range base {
		if k >= right { // an artificial at zero must not grow again: its slack, of the other sign, takes its place
			turn(t[i])
			base[i] = k - m
		}
	}
	clear(cost)
	copy(cost, c)
	if err := simplex(t, base, cost, right); err != nil {
		return nil, err
	}
	x := make([]float64, n)
	for i, j := range base {
		if j < n {
			x[j] = math.Max(0, t[i][right])
		}
	}
	return x, nil
}

func turn(row []float64) {
	for j := range row {
		row[j] = -row[j]
	}
}

// simplex pivots the tableau to the least cost.
func simplex(t [][]float64, base []int, cost []float64, right int) error {
	for range mostPivots {
		enter := right
		for j := range right {
			reduced := cost[j]
			for i, k := range base {
				reduced -= cost[k] * t[i][j]
			}
			if reduced < -nought {
				enter = j
				break
			}
		}
		if enter == right {
			return nil
		}
		leave := len(t)
		var least float64
		for i, row := range t {
			if row[enter] <= nought {
				continue
			}
			if r := row[right] / row[enter]; leave == len(t) || r < least || r == least && base[i] < base[leave] {
				leave, least = i, r
			}
		}
		if leave == len(t) {
			return ErrUnbounded
		}
		pivot(t, base, leave, enter)
	}
	return ErrNoConvergence
}

// pivot brings a column into the base of a row.
func pivot(t [][]float64, base []int, row, column int) {
	p := t[row][column]
	for j := range t[row] {
		t[row][j] /= p
	}
	for i := range t {
		if k := t[i][column]; i != row && k != 0 {
			for j := range t[i] {
				t[i][j] -= k * t[row][j]
			}
		}
	}
	base[row] = column
}
