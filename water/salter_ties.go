package water

import "math"

// ties walks the vertices of the optimal face: the points that are as near to the
// targets as the first one found.
type ties struct {
	vars, rows int
	eq         []float64 // equations that keep the optimum, by free variables
	free       []int     // variables that may move
	pivot      []int     // equation of each free variable, -1 where it is a parameter
	along      []float64 // by parameter, how the variables move
	quick      bool      // along comes from the program's own table
	level      [][]float64
	x          []float64
	best       []float64
	size       int // parameters
	found      bool
	count      int
	mass       float64
}

func (t *ties) room(vars, rows, targets int) {
	t.vars, t.rows = vars, rows
	t.eq = make([]float64, (targets+rows)*vars)
	t.free = make([]int, 0, vars)
	t.pivot = make([]int, vars)
	t.along = make([]float64, vars*vars)
	t.x, t.best = make([]float64, vars), make([]float64, vars)
	t.level = make([][]float64, vars+1)
	for i := range t.level {
		t.level[i] = make([]float64, (vars+rows)*(vars+1))
	}
}

const none = -1 // no row, no column

// choose takes the point of fewest salts, then least mass, on the optimal face.
// size is that of the gradient at no dose at all.
func (s *salter) choose(size float64) {
	q, t := s.qp, &s.ties
	n := len(s.salts)
	copy(t.best, q.X)
	s.face(size * negligible)
	if t.size > 0 {
		if !t.quick {
			s.directions()
		}
		t.found = false
		s.inequalities()
		s.walk(0, 0, t.size)
	}
	var biggest float64
	for j := range n {
		biggest = max(biggest, t.best[j])
	}
	for j := range n {
		s.x[j] = 0
		if t.best[j] > negligible*biggest {
			s.x[j] = t.best[j] * s.scale[j]
		}
	}
}

// face finds which variables may move without leaving the optimum and writes the
// directions as parameters.
func (s *salter) face(tol float64) {
	q, t := s.qp, &s.ties
	n, k := len(s.salts), len(s.targets)
	t.free = t.free[:0]
	moves := 0
	t.quick = true
	for j := range t.vars {
		if q.X[j] > 0 || q.Slope[j] <= tol {
			t.free = append(t.free, j)
			if q.X[j] == 0 {
				t.quick = t.quick && q.Direction(j, t.along[moves*t.vars:(moves+1)*t.vars])
				moves++
			}
		}
	}
	t.size = moves
	if t.quick && q.M == 0 {
		return
	}
	t.quick = false
	f := len(t.free)
	eqs := 0
	for r := range k {
		for c, j := range t.free {
			if j < n {
				t.eq[eqs*f+c] = s.gain[r*n+j] * s.scale[j]
			} else if s.ranged[j-n] == r {
				t.eq[eqs*f+c] = -1
			} else {
				t.eq[eqs*f+c] = 0
			}
		}
		eqs++
	}
	for i := range q.M {
		if q.Y[i] > tol {
			for c, j := range t.free {
				t.eq[eqs*f+c] = q.C[i*t.vars+j]
			}
			eqs++
		}
	}
	t.size = f - t.reduce(eqs, f)
}

// reduce brings the equations to reduced form with full pivoting and returns their
// rank. pivot says which equation each free variable solves.
func (t *ties) reduce(eqs, f int) int {
	for c := range f {
		t.pivot[c] = none
	}
	rank := 0
	for rank < eqs {
		row, col, big := none, none, negligible
		for i := rank; i < eqs; i++ {
			for c := range f {
				if v := math.Abs(t.eq[i*f+c]); v > big && t.pivot[c] < 0 {
					row, col, big = i, c, v
				}
			}
		}
		if row < 0 {
			break
		}
		a, b := t.eq[rank*f:rank*f+f], t.eq[row*f:row*f+f]
		if row != rank {
			for c := range f {
				a[c], b[c] = b[c], a[c]
			}
		}
		inv := 1 / a[col]
		for c := range f {
			a[c] *= inv
		}
		for i := range eqs {
			if m := t.eq[i*f+col]; i != rank {
				o := t.eq[i*f : i*f+f]
				for c := range f {
					o[c] -= m * a[c]
				}
			}
		}
		t.pivot[col] = rank
		rank++
	}
	return rank
}

// directions writes the parameters of the reduced equations as moves of the variables.
func (s *salter) directions() {
	t := &s.ties
	f, param := len(t.free), 0
	clear(t.along[:t.size*t.vars])
	for p := range f {
		if t.pivot[p] >= 0 {
			continue
		}
		to := t.along[param*t.vars : (param+1)*t.vars]
		for c, j := range t.free {
			if e := t.pivot[c]; e >= 0 {
				to[j] = -t.eq[e*f+p]
			}
		}
		to[t.free[p]] = 1
		param++
	}
}

// inequalities writes, as rows of slopes by parameter and a constant, what must
// stay non-negative: the free variables and the slack of the constraints.
func (s *salter) inequalities() {
	q, t := s.qp, &s.ties
	f, k := len(t.free), t.size
	w := k + 1
	out := t.level[0]
	for c, j := range t.free {
		row := out[c*w : c*w+w]
		for p := range k {
			row[p] = t.along[p*t.vars+j]
		}
		row[k] = q.X[j]
	}
	for i := range q.M {
		row := out[(f+i)*w : (f+i)*w+w]
		clear(row)
		row[k] = q.Bounds()[i]
		for j := range t.vars {
			row[k] -= q.C[i*t.vars+j] * q.X[j]
		}
		for c := range f {
			g := q.C[i*t.vars+t.free[c]]
			if g == 0 {
				continue
			}
			for p := range k {
				row[p] -= g * out[c*w+p]
			}
		}
	}
}

// walk makes one more inequality tight, from row first on, until no parameter is
// left, and weighs each vertex.
func (s *salter) walk(depth, first, k int) {
	t := &s.ties
	w := t.size + 1
	rows := len(t.free) + s.qp.M
	in := t.level[depth]
	if k == 0 {
		s.weigh(in, w)
		return
	}
	for r := first; r <= rows-k; r++ {
		a := in[r*w : r*w+w]
		at, big := none, negligible
		for p := range t.size {
			if v := math.Abs(a[p]); v > big {
				at, big = p, v
			}
		}
		if at < 0 {
			continue
		}
		out := t.level[depth+1]
		for i := range rows {
			b, o := in[i*w:i*w+w], out[i*w:i*w+w]
			m := b[at] / a[at]
			for p := range o {
				o[p] = b[p] - m*a[p]
			}
		}
		s.walk(depth+1, r+1, k-1)
	}
}

func (s *salter) weigh(in []float64, w int) {
	t := &s.ties
	rows := len(t.free) + s.qp.M
	var biggest float64
	for c := range t.free {
		biggest = max(biggest, in[c*w+w-1])
	}
	tol := negligible * biggest
	for i := range rows {
		if in[i*w+w-1] < -tol {
			return
		}
	}
	var count int
	var mass float64
	for c, j := range t.free {
		if j < len(s.salts) && in[c*w+w-1] > tol {
			count++
			mass += in[c*w+w-1] * s.scale[j]
		}
	}
	if t.found && (count > t.count || count == t.count && mass >= t.mass*(1-negligible)) {
		return
	}
	t.found, t.count, t.mass = true, count, mass
	clear(t.best)
	for c, j := range t.free {
		if v := in[c*w+w-1]; v > tol {
			t.best[j] = v
		}
	}
}
