package water

import (
	"errors"
	"math"
	"sort"

	"example.org/zymase/units"
)

// wholeSteps is the most whole steps in v, which rounding may have taken just under one.
func wholeSteps(v float64) float64 { return math.Floor(v + stepSlack) }

var errNoMultiple = errors.New("no multiple of the step")

const (
	mostNodes = 50_000
	stepSlack = negligible // of a step
	leafSlack = negligible // of a limit, in its scaled unit
)

// alike is how near two sums of squares near v are taken for one.
func alike(v float64) float64 { return 1e-12 * (1 + v) }

// lattice searches the whole multiples of a step around the continuous optimum.
//
// With d the distance from it, the sum of squares is exactly
// floor + slope·d + |P d|², P the rows of targets that are values, plus what rows
// with a range and the slack of limits add, which is never negative. P = QR makes
// |P d|² a sum over the salts, from the last to the first, and slope·d is a sum of
// non-negative parts: so each partial choice has a bound, and the search is a proof.
type lattice struct {
	s     *salter
	order []int     // column of each level
	r     []float64 // upper triangle, by rows
	n     int
	at    []float64 // continuous optimum, in steps
	slope []float64
	stock []float64 // what a step less of a salt whose stock is used up costs
	most  []float64
	floor float64
	grams float64 // of a step

	point, ranged []int
	gain          []float64 // by target and level, per step
	have          []float64 // of each target less its aim, weighted, without doses
	width         []float64
	rest          []float64 // by ranged target and level: what levels below can add
	limits        []float64 // by limit and level, per step
	bound         []float64
	price         []float64 // what a unit of each limit's row costs at the optimum
	restLimit     []float64 // least that levels below can add to each limit
	richest       []float64 // most that a step of a level below brings to each target

	x     []float64 // steps chosen, by level
	best  []int     // by salt
	value float64
	count int
	mass  float64
	found bool
	slack float64
	nodes int

	tied, proven bool
}

func newLattice(s *salter, grams float64) *lattice {
	n := len(s.salts)
	l := &lattice{s: s, n: n, grams: grams, at: make([]float64, n), slope: make([]float64, n), most: make([]float64, n), x: make([]float64, n),
		best: make([]int, n)}
	h := grams / s.litres // g/L a step
	for j := range n {
		l.order = append(l.order, j)
	}
	slope := func(j int) float64 { return 2 * max(0, s.qp.Slope[j]) * h / s.scale[j] }
	idle := func(j int) bool { return s.x[j] == 0 }
	// Salts in use come first, then those that a bound holds least.
	sort.SliceStable(l.order, func(a, b int) bool {
		x, y := l.order[a], l.order[b]
		if idle(x) != idle(y) {
			return idle(y)
		}
		return idle(x) && slope(x) < slope(y)
	})
	for i, j := range l.order {
		l.at[i], l.slope[i] = s.x[j]/h, slope(j)
		l.most[i] = math.Floor(mostIon / 1000 / h)
		if m := s.salts[j].Most.In(units.Gram); m > 0 {
			l.most[i] = wholeSteps(m / grams)
		}
	}
	l.stock = make([]float64, n)
	for i, j := range l.order {
		for row, k := range s.capped {
			if j == k {
				l.stock[i] = 2 * max(0, s.qp.Y[row]) * h / s.scale[j]
			}
		}
	}
	l.rows(h)
	l.triangle()
	return l
}

// rows writes targets and limits by level.
func (l *lattice) rows(h float64) {
	s, n := l.s, l.n
	for r := range s.targets {
		t := &s.targets[r]
		l.have = append(l.have, s.base[r]-s.aim[r])
		l.width = append(l.width, s.root[r]*(t.High.In(units.MilligramPerLitre)-t.Low.In(units.MilligramPerLitre)))
		if l.width[r] > 0 {
			l.ranged = append(l.ranged, r)
		} else {
			l.point = append(l.point, r)
		}
		for _, j := range l.order {
			l.gain = append(l.gain, s.gain[r*n+j]*h)
		}
	}
	first := len(s.capped) + len(s.ranged)
	for i, held := range s.held {
		for _, j := range l.order {
			l.limits = append(l.limits, held.sign*s.program[held.limit][j]*h/held.norm)
		}
		l.bound = append(l.bound, s.qp.Bounds()[first+i])
		l.price = append(l.price, 2*max(0, s.qp.Y[first+i]))
	}
	for r := range s.targets {
		v := l.have[r]
		for i := range n {
			v += l.gain[r*n+i] * l.at[i]
		}
		l.floor += l.off(r, v)
	}
}

// off returns the square of how far a weighted value is outside its target.
func (l *lattice) off(r int, v float64) float64 {
	d := max(0, v-l.width[r]) + min(0, v)
	return d * d
}

// triangle makes R of the point rows, by modified Gram–Schmidt.
func (l *lattice) triangle() {
	n, k := l.n, len(l.point)
	q := make([][]float64, n)
	l.r = make([]float64, n*n)
	for i := range n {
		q[i] = make([]float64, k)
		var size float64
		for p, r := range l.point {
			q[i][p] = l.gain[r*n+i]
			size += q[i][p] * q[i][p]
		}
		for range 2 { // twice is enough
			for j := range i {
				var dot float64
				for p := range k {
					dot += q[j][p] * q[i][p]
				}
				l.r[j*n+i] += dot
				for p := range k {
					q[i][p] -= dot * q[j][p]
				}
			}
		}
		var left float64
		for p := range k {
			left += q[i][p] * q[i][p]
		}
		if left <= 1e-18*size {
			clear(q[i])
			continue
		}
		d := math.Sqrt(left)
		l.r[i*n+i] = d
		for p := range k {
			q[i][p] /= d
		}
	}
}

// search walks the lattice, and where that does not end the ellipsoid of [reduced]. The error is an [*UnreachableError] where no multiple
// meets the limits.
func (l *lattice) search(fn string) error {
	l.value = inf
	l.round()
	l.narrow()
	l.slack = alike(l.floor)
	l.descend(l.n-1, l.floor)
	l.tied = l.nodes >= mostNodes
	l.proven = !l.tied || l.close()
	if !l.found {
		reason := "no multiples of the step meet it"
		if l.tied {
			reason = "no multiples of the step that meet it were found"
		}
		return &UnreachableError{Func: fn, Limit: "the set of limits", Reason: reason, Err: errNoMultiple}
	}
	return nil
}

// round tries the nearest multiples first, so that there is something to beat.
func (l *lattice) round() {
	for i := range l.n {
		l.x[i] = min(l.most[i], math.Round(l.at[i]))
	}
	l.leaf()
}

// narrow lowers what each salt can be at most: above it, it alone would take a
// target further off than the best that is known, as salts only add. And it sums
// what the levels below can do to ranges and limits.
func (l *lattice) narrow() {
	n := l.n
	radius := math.Sqrt(l.value)
	for i := range n {
		for r := range l.have {
			if g := l.gain[r*n+i]; g > 0 && l.found {
				l.most[i] = min(l.most[i], wholeSteps((radius+l.width[r]-l.have[r])/g))
			}
		}
		if l.idle(i) {
			l.most[i] = 0 // it changes nothing that is asked
		}
	}
	l.rest = make([]float64, len(l.have)*(n+1))
	l.richest = make([]float64, len(l.have)*(n+1))
	for r := range l.have {
		for i := range n {
			l.richest[r*(n+1)+i+1] = max(l.richest[r*(n+1)+i], l.gain[r*n+i])
			l.rest[r*(n+1)+i+1] = l.rest[r*(n+1)+i] + l.gain[r*n+i]*l.most[i]
		}
	}
	l.restLimit = make([]float64, len(l.bound)*(n+1))
	for c := range l.bound {
		for i := range n {
			l.restLimit[c*(n+1)+i+1] = l.restLimit[c*(n+1)+i] + min(0, l.limits[c*n+i]*l.most[i])
		}
	}
}

func (l *lattice) idle(i int) bool {
	for r := range l.have {
		if l.gain[r*l.n+i] != 0 {
			return false
		}
	}
	for c := range l.bound {
		if l.limits[c*l.n+i] != 0 {
			return false
		}
	}
	return true
}

// middle is where the cost (d (x-at) + e)² + slope (x-at) of x steps is least; a slope
// is that of a salt not in use, whose at is zero.
func (l *lattice) middle(i int, e float64) float64 {
	middle, d := l.at[i], l.r[i*l.n+i]
	if d > 0 {
		middle -= e/d + l.slope[i]/(2*d*d)
	}
	return min(l.most[i], max(0, middle))
}

// descend chooses level i, the levels above being chosen at a cost of at least cost.
func (l *lattice) descend(i int, cost float64) {
	if i < 0 {
		l.leaf()
		return
	}
	n := l.n
	e, d := 0.0, l.r[i*n+i]
	for j := i + 1; j < n; j++ {
		e += l.r[i*n+j] * (l.x[j] - l.at[j])
	}
	middle := l.middle(i, e)
	up := math.Round(middle)
	down := up - 1
	for down >= 0 || up <= l.most[i] {
		if l.nodes++; l.nodes >= mostNodes {
			return
		}
		x := up
		rising := down < 0 || up <= l.most[i] && up-middle <= middle-down
		if rising {
			up++
		} else {
			x = down
			down--
		}
		step := x - l.at[i]
		v := d*step + e
		c := cost + v*v + l.slope[i]*max(0, step)
		if c > l.value+l.slack {
			// Further out on this side costs more.
			if rising {
				up = inf
			} else {
				down = -1
			}
			continue
		}
		l.x[i] = x
		if l.open(i) && l.simpler(i, c) {
			l.descend(i-1, c)
		}
	}
}
