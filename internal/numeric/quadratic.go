package numeric

import (
	"math"
	"slices"
)

// Quadratic finds the minimum of ½xᵀHx + cᵀx with x >= 0 and Cx <= d, where H is
// positive semidefinite. It is made once for a size and used again; Solve allocates
// nothing. One goroutine may use it at a time.
//
//   - Source: C. E. Lemke, Bimatrix equilibrium points and mathematical programming,
//     Management Science 11 (1965) 681: complementary pivots on the conditions of
//     Karush, Kuhn and Tucker, exact for every convex quadratic.
type Quadratic struct {
	N, M int       // variables, constraints
	H    []float64 // N·N, by rows
	C    []float64 // M·N, by rows
	c, d []float64

	X      []float64 // the minimum, after Solve
	Slope  []float64 // the gradient there less what the constraints hold, >= 0
	Y      []float64 // what each constraint costs, >= 0
	Pivots int

	size  int
	table []float64 // size rows of size+1 columns, then q
	basic []int
	free  []int
}

// NewQuadratic makes room for n variables and m constraints.
func NewQuadratic(n, m int) *Quadratic {
	k := n + m
	return &Quadratic{
		N: n, M: m, H: make([]float64, n*n), C: make([]float64, m*n),
		c: make([]float64, n), d: make([]float64, m),
		X: make([]float64, n), Slope: make([]float64, n), Y: make([]float64, m),
		size: k, table: make([]float64, k*(k+2)), basic: make([]int, k), free: make([]int, k+1),
	}
}

// Linear and Bounds are the vectors to fill before Solve.
func (p *Quadratic) Linear() []float64 { return p.c }

// Bounds is d of Cx <= d.
func (p *Quadratic) Bounds() []float64 { return p.d }

const (
	smallPivot = 1e-9  // below it a number of the table counts as zero
	tieRatio   = 1e-12 // ratios so near, as a part of one and themselves, are equal; an artificial variable so small is none
	mostRounds = 50    // pivots for each column, after which it gives up
)

// Solve finds the minimum into X, Slope and Y. The error is [ErrInfeasible] where
// no point meets the constraints, or [ErrNoConvergence].
//
// The diagonal of H should be near 1, which the caller brings about by scaling.
func (p *Quadratic) Solve() error {
	p.start()
	k, w := p.size, p.size+2
	p.Pivots = 0
	// The artificial variable makes every row non-negative at first.
	row := k
	for i := range k {
		if v := p.table[i*w+k+1]; v < 0 && (row == k || v < p.table[row*w+k+1]) {
			row = i
		}
	}
	if row < k {
		col := k
		for {
			leave := p.basic[row]
			p.pivot(row, col)
			if leave == 2*k {
				break
			}
			p.Pivots++
			if p.Pivots > mostRounds*len(p.free) {
				return ErrNoConvergence
			}
			col = slices.Index(p.free, p.partner(leave))
			if row = p.ratio(col); row == k {
				if at := slices.Index(p.basic, 2*k); p.table[at*w+k+1] <= tieRatio {
					break // degenerate: the artificial variable is zero already
				}
				return ErrInfeasible
			}
		}
	}
	p.read()
	return nil
}

// start fills the dictionary: w = Mz + q with z = (x, y), w the slopes and slacks.
// Variables 0..k-1 are w, k..2k-1 are z, 2k is the artificial one.
func (p *Quadratic) start() {
	n, k, w := p.N, p.size, p.size+2
	for i := range k {
		row := p.table[i*w : i*w+w]
		if i < n {
			copy(row, p.H[i*n:i*n+n])
			for j := range p.M {
				row[n+j] = p.C[j*n+i]
			}
			row[k+1] = p.c[i]
		} else {
			for j := range n {
				row[j] = -p.C[(i-n)*n+j]
			}
			clear(row[n:k])
			row[k+1] = p.d[i-n]
		}
		row[k] = 1
		p.basic[i] = i
		p.free[i] = k + i
	}
	p.free[k] = 2 * k
}

func (p *Quadratic) partner(v int) int {
	if v < p.size {
		return v + p.size
	}
	return v - p.size
}

// ratio returns the row that first reaches zero as the column's variable grows, or the
// number of rows where none does. Of equal ones it is that of the artificial variable,
// then that with the largest pivot, then the first.
func (p *Quadratic) ratio(col int) int {
	k, w := p.size, p.size+2
	best, at := math.MaxFloat64, k
	var size float64
	for i := range k {
		t := p.table[i*w+col]
		if t >= -smallPivot {
			continue
		}
		r := max(0, p.table[i*w+k+1]) / -t
		switch {
		case at == k, r < best-tieRatio*(1+best),
			r <= best+tieRatio*(1+best) && (p.basic[i] == 2*k || -t > size && p.basic[at] != 2*k):
			best, at, size = min(r, best), i, -t
		}
	}
	return at
}

// pivot exchanges the basic variable of a row with the free one of a column.
func (p *Quadratic) pivot(r, col int) {
	w := p.size + 2
	row := p.table[r*w:][:w]
	inv := 1 / row[col]
	for j := range row {
		row[j] *= -inv
	}
	row[col] = inv
	for i := range p.size {
		other := p.table[i*w:][:w]
		f := other[col]
		if f == 0 || i == r {
			continue
		}
		other[col] = 0
		j := 0
		for ; j+4 <= w; j += 4 {
			a, b := other[j:j+4:j+4], row[j:j+4:j+4]
			a[0] += f * b[0]
			a[1] += f * b[1]
			a[2] += f * b[2]
			a[3] += f * b[3]
		}
		for ; j < w; j++ {
			other[j] += f * row[j]
		}
	}
	p.basic[r], p.free[col] = p.free[col], p.basic[r]
}

// Direction fills dx with how X moves for each unit that variable j, which is zero,
// rises to, where that leaves the minimum as it is: no slope and no cost of a
// constraint moves. Otherwise it returns false.
func (p *Quadratic) Direction(j int, dx []float64) bool {
	n, k, w := p.N, p.size, p.size+2
	col := slices.Index(p.free, k+j)
	if col < 0 {
		return false
	}
	clear(dx)
	dx[j] = 1
	for i, v := range p.basic {
		t := p.table[i*w+col]
		switch {
		case v >= k && v < k+n:
			dx[v-k] = t
		case (v < n || v >= k+n) && math.Abs(t) > smallPivot:
			return false
		}
	}
	return true
}

func (p *Quadratic) read() {
	n, k, w := p.N, p.size, p.size+2
	clear(p.X)
	clear(p.Slope)
	clear(p.Y)
	for i, v := range p.basic {
		x := max(0, p.table[i*w+k+1])
		switch {
		case v < n:
			p.Slope[v] = x
		case v < k: // slack of a constraint
		case v < k+n:
			p.X[v-k] = x
		case v < 2*k:
			p.Y[v-k-n] = x
		}
	}
}
