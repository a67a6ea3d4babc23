package water

import "math"

// reduced searches the same multiples as a [lattice] in a basis of short steps: sets of
// salts exchanged for one another that change the targets little. Where several salts
// can stand for one another the nearest recipes lie far apart in the salts, but close
// together in such a basis.
//
// All that is nearer than the best known by more than the tolerance lies in an
// ellipsoid: with R² the square of what it must beat less the floor, |P d|² <= R², and
// each salt, range and limit stays between two ends that R leaves it. The sum of the
// m squares of where each is between its ends, from -1 to 1, is at most m. So
// |P d|²/R² + (that sum)/m <= 2, and the search of that ellipsoid is a proof.
//
//   - Source: A. K. Lenstra, H. W. Lenstra, L. Lovász, Mathematische Annalen 261 (1982)
//     515: the reduction; C. P. Schnorr and M. Euchner, Mathematical Programming 66
//     (1994) 181: the walk.
type reduced struct {
	l                 *lattice
	n, rows           int
	col               []int       // level of the lattice of each column
	low, high         []float64   // ends of each level of the lattice
	b                 [][]float64 // columns
	u                 [][]float64 // columns of the unimodular matrix, whole numbers
	aim               []float64
	q                 [][]float64
	mu                []float64 // upper triangle, by rows
	points            int
	near, far         metric
	light             float64
	y                 []float64
	move              []float64
	tilt, turn, value []float64
	most              int // nodes
	left, beat        float64
	again             bool
}

const (
	nearer     = 0.001 // mg/L: less counts as the same
	closeNodes = 200_000
	lovasz     = 0.99
	mostReach  = 1e12 // (mg/L)²
)

// close proves that nothing is nearer than the best known by more than [nearer], or
// improves it until that is so, and reports whether it could.
func (l *lattice) close() bool {
	r := &reduced{l: l, most: l.nodes + closeNodes}
	// What lies close to the floor is looked for first, then four times as far.
	for reach := 1e-4; l.nodes < r.most; {
		left := l.improve()
		if left <= l.slack {
			return true
		}
		all := left <= reach
		r.left = min(left, reach)
		found := r.search()
		switch {
		case found:
		case all || reach > mostReach:
			return l.nodes < r.most && l.found
		default:
			reach *= 4
		}
	}
	return false
}

// improve is how far above the floor a recipe can be and still count as nearer.
func (l *lattice) improve() float64 {
	if !l.found {
		return inf
	}
	best := math.Sqrt(l.value) - nearer
	return max(0, best)*max(0, best) - l.floor
}

// search looks for what is at most r.left above the floor and reports whether it found
// something that changes the search.
func (r *reduced) search() bool {
	l := r.l
	if !r.ends(r.left) {
		return false
	}
	r.build(r.left)
	r.beat, r.again = 1, false
	if r.n == 0 {
		copy(l.x, r.low)
		before := l.value
		l.leaf()
		return l.value < before
	}
	r.light = math.Sqrt(min(0.1, math.Sqrt(l.floor+r.left)*nearer/r.left))
	r.reduce()
	r.walk(r.n-1, r.near.apart, r.far.apart)
	return r.again
}
