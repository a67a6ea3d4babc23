package numeric

import (
	"errors"
	"math"
)

// ErrInfeasible reports that no point satisfies all constraints.
var ErrInfeasible = errors.New("no point satisfies all constraints")

// ErrUnbounded reports that the least value is minus infinity.
var ErrUnbounded = errors.New("the least value has no bound")

// Linear returns x ≥ 0 with the least c·x for which a·x ≤ b in each row. Rows should
// be scaled so that their numbers are near 1: what is below 1e-9 counts as zero.
//
//   - Source: G. B. Dantzig, Linear Programming and Extensions (1963), simplex method
//     in two phases; the pivots of R. G. Bland, Math. Oper. Res. 2 (1977) 103, so that
//     it ends.
func Linear(c []float64, a [][]float64, b []float64) ([]float64, error) {
	n, m := len(c), len(b)
	// Columns: x, a slack for each row, an artificial for each row with b < 0, right side.
	columns := n + m
	for i := range m {
		if b[i] < 0 {
			columns++
		}
	}
	t := make([][]float64, m)
	base := make([]int, m)
	next := n + m
	for i := range m {
		t[i] = make([]float64, columns+1)
		sign := 1.0
		if b[i] < 0 {
			sign = -1
		}
		for j := range n {
			t[i][j] = sign * a[i][j]
		}
		t[i][n+i] = sign
		t[i][columns] = sign * b[i]
		base[i] = n + i
		if sign < 0 {
			t[i][next], base[i] = 1, next
			next++
		}
	}
	cost := make([]float64, columns)
	for j := n + m; j < columns; j++ {
		cost[j] = 1
	}
	worth, err := simplex(t, base, cost, columns)
	if err != nil {
		return nil, err
	}
	if worth > 1e-9 {
		return nil, ErrInfeasible
	}
	for i, k := range base { // an artificial left at zero must not grow again
		for j := 0; k >= n+m && j < n+m; j++ {
			if math.Abs(t[i][j]) > 1e-9 {
				pivot(t, base, i, j)
				break
			}
		}
	}
	clear(cost)
	copy(cost, c)
	if _, err := simplex(t, base, cost, n+m); err != nil {
		return nil, err
	}
	x := make([]float64, n)
	for i, j := range base {
		if j < n {
			x[j] = math.Max(0, t[i][columns])
		}
	}
	return x, nil
}

// simplex pivots the tableau to the least cost among the first columns, and returns it.
func simplex(t [][]float64, base []int, cost []float64, columns int) (float64, error) {
	const eps = 1e-9
	right := len(cost)
	for range 10000 {
		enter := -1
		for j := 0; j < columns; j++ {
			reduced := cost[j]
			for i, k := range base {
				reduced -= cost[k] * t[i][j]
			}
			if reduced < -eps {
				enter = j
				break
			}
		}
		if enter < 0 {
			sum := 0.0
			for i, k := range base {
				sum += cost[k] * t[i][right]
			}
			return sum, nil
		}
		leave := -1
		for i := range t {
			if t[i][enter] <= eps {
				continue
			}
			if leave < 0 {
				leave = i
				continue
			}
			d := t[i][right]/t[i][enter] - t[leave][right]/t[leave][enter]
			if d < 0 || d == 0 && base[i] < base[leave] {
				leave = i
			}
		}
		if leave < 0 {
			return 0, ErrUnbounded
		}
		pivot(t, base, leave, enter)
	}
	return 0, ErrNoConvergence
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
