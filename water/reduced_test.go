package water

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// small is a request whose recipes can all be tried: a stock of a few steps of each salt.
type small struct {
	q     Request
	step  float64 // g
	litre float64
	most  []int
	held  []held
	gain  map[Ion][]float64 // of each salt, mg/L a step
}

// held is a limit in mg/L.
type held struct {
	ion   Ion
	at    float64
	least bool
}

// smallOf draws a request. Salts that share an ion can stand for one another; stocks that are no whole steps, ranges,
// weights and limits come in some.
func smallOf(r *rand.Rand) small {
	ions := []Ion{Calcium, Magnesium, Sodium, Chloride, Sulfate}
	salts := []material.Material{material.Gypsum(), material.CalciumChlorideDihydrate(), material.EpsomSalt(), shelf.Material("magnesium chloride hexahydrate"),
		material.TableSalt(), material.CalciumChloride(), shelf.Material("sodium sulfate anhydrous")}
	scale := []float64{1, 0.04}[r.IntN(2)] // steps of 0.5 g and of 20 mg
	s := small{step: 0.5 * scale, litre: 20, q: Request{Water: Profile{t: 20}, Volume: litres(20)}}
	n := 1 + r.IntN(4)
	for _, k := range r.Perm(len(salts))[:n] {
		most := 1 + r.IntN([]int{40, 14, 8, 6}[n-1])
		s.most = append(s.most, most)
		s.q.Salts = append(s.q.Salts, Stock{salts[k], grams(s.step * (float64(most) + []float64{0, 0.4}[r.IntN(2)]))})
	}
	s.gain = map[Ion][]float64{}
	for _, i := range ions {
		for _, stock := range s.q.Salts {
			s.gain[i] = append(s.gain[i], s.step/s.litre*yieldOf(stock.Salt).of(i))
		}
	}
	for _, k := range r.Perm(len(ions))[:1+r.IntN(5)] {
		aim := scale * float64(r.IntN(90))
		t := ions[k].Aim(mgL(aim))
		if r.IntN(4) == 0 {
			t = ions[k].Between(mgL(aim), mgL(aim+scale*float64(1+r.IntN(20))))
		}
		t.Weight = []float64{0, 0, 4, 0.25}[r.IntN(4)]
		s.q.Targets = append(s.q.Targets, t)
	}
	for range r.IntN(3) {
		h := held{ions[r.IntN(len(ions))], scale * float64(5+r.IntN(70)), r.IntN(3) == 0}
		s.held = append(s.held, h)
		if h.least {
			s.q.Limits = append(s.q.Limits, h.ion.AtLeast(mgL(h.at)))
		} else {
			s.q.Limits = append(s.q.Limits, h.ion.AtMost(mgL(h.at)))
		}
	}
	return s
}

// has is the mg/L of an ion that a recipe makes.
func (s small) has(i Ion, x []int) (v float64) {
	for j, g := range s.gain[i] {
		v += float64(x[j]) * g
	}
	return v
}

// squares is the weighed sum of squares of a recipe, and whether the limits hold.
func (s small) squares(x []int) (sum float64, holds bool) {
	for _, t := range s.q.Targets {
		v := s.has(t.Ion, x)
		d := max(0, v-t.High.In(units.MilligramPerLitre)) + min(0, v-t.Low.In(units.MilligramPerLitre))
		w := t.Weight
		if w == 0 {
			w = 1
		}
		sum += w * d * d
	}
	for _, h := range s.held {
		if v := s.has(h.ion, x); h.least && v < h.at-1e-6 || !h.least && v > h.at+1e-6 {
			return sum, false
		}
	}
	return sum, true
}

// each tries every recipe that the stocks allow.
func (s small) each(try func(x []int)) {
	x := make([]int, len(s.most))
	for {
		try(x)
		j := 0
		for ; j < len(x); j++ {
			if x[j]++; x[j] <= s.most[j] {
				break
			}
			x[j] = 0
		}
		if j == len(x) {
			return
		}
	}
}

// nearest is the best of all recipes: the least squares, of those the fewest salts, then the fewest steps.
func (s small) nearest() (best float64, salts, steps int, found bool) {
	best = math.Inf(1)
	s.each(func(x []int) {
		v, holds := s.squares(x)
		if !holds || v > best+alike(best) {
			return
		}
		n, sum := 0, 0
		for _, k := range x {
			if k > 0 {
				n++
			}
			sum += k
		}
		if !found || v < best-alike(best) || n < salts || n == salts && sum < steps {
			best, salts, steps, found = min(v, best), n, sum, true
		}
	})
	return best, salts, steps, found
}

// smalls runs a test over small requests that have an optimum without steps.
func smalls(t *testing.T, n int, run func(what string, s small, l *lattice)) {
	t.Helper()
	r := rand.New(rand.NewPCG(7, 11))
	tried := 0
	for k := range n {
		s := smallOf(r)
		solver, err := s.q.solved("f")
		if err != nil {
			continue
		}
		tried++
		run(fmt.Sprintf("case %d: %v to %v, %v", k, s.q.Salts, s.q.Targets, s.q.Limits), s, newLattice(solver, s.step))
	}
	if tried < n/3 {
		t.Errorf("%d cases of %d", tried, n)
	}
}

// Both searches against every recipe there is: the walk of the lattice finds the nearest, of those that tie the fewest
// salts, then the least mass; that of the ellipsoid alone is no further off than it says, and proves it.
func TestSearchesAgainstEveryRecipe(t *testing.T) {
	smalls(t, 1200, func(what string, s small, l *lattice) {
		best, salts, steps, found := s.nearest()
		err := l.search("test")
		if found != (err == nil) || found && (math.Abs(l.value-best) > 1e-8*(1+best) || l.count != salts || math.Abs(l.mass-float64(steps)) > 1e-9 || !l.proven) {
			t.Errorf("%s: %v, %d salts, %v steps, want %v, %d, %d; %v", what, l.value, l.count, l.mass, best, salts, steps, err)
		}
		for _, start := range []string{"the rounded optimum", "no salt"} {
			e := newLattice(l.s, s.step)
			e.value = inf
			if start == "no salt" {
				e.leaf()
			} else {
				e.round()
			}
			e.narrow()
			e.slack = alike(e.floor)
			proven := e.close()
			switch {
			case found != e.found:
				t.Errorf("%s: from %s found %v, want %v", what, start, e.found, found)
			case found && (!proven || math.Sqrt(e.value) > math.Sqrt(best)+nearer+1e-9):
				t.Errorf("%s: from %s proven %v, %v off, the nearest is %v", what, start, proven, math.Sqrt(e.value), math.Sqrt(best))
			}
		}
	})
}

// What the proof rests on: every recipe that is near enough has each salt between its ends and lies in the ellipsoid, whose
// box is as tight as the ends; the reduced basis spans the same whole numbers, is short and nearly square (Lenstra, Lenstra &
// Lovász 1982, with 0.99 for their 3/4), and measures the same distance.
func TestEllipsoidHoldsWhatIsNear(t *testing.T) {
	checked, reduced3 := 0, 0
	smalls(t, 500, func(what string, s small, l *lattice) {
		l.value = inf
		l.leaf() // no salt at all is what is to be beaten
		l.narrow()
		left := l.value - l.floor
		if !l.found || left <= alike(l.floor) {
			return
		}
		r := &reduced{l: l}
		if !r.ends(left) {
			t.Errorf("%s: no room", what)
			return
		}
		spare := make([]bool, l.n) // no target counts it
		for i := range spare {
			spare[i] = true
			for row := range l.have {
				spare[i] = spare[i] && l.gain[row*l.n+i] == 0
			}
		}
		r.build(left)
		m := math.Sqrt(float64(r.rows - r.points))
		from := func(x []float64) (points, spans float64, at []float64) {
			at = make([]float64, r.rows)
			for p := range at {
				at[p] = -r.aim[p]
				for k, i := range r.col {
					at[p] += r.b[k][p] * x[i]
				}
				if p < r.points {
					points += at[p] * at[p]
				} else {
					spans += at[p] * at[p]
				}
			}
			return points, spans, at
		}
		s.each(func(x []int) {
			if v, holds := s.squares(x); !holds || v > l.floor+left-1e-6 {
				return
			}
			level := make([]float64, l.n)
			for i, j := range l.order {
				level[i] = float64(x[j])
				if spare[i] && level[i] > r.high[i] {
					return // more than the limits ask for
				}
				if level[i] < r.low[i] || level[i] > r.high[i] {
					t.Errorf("%s: %v outside %v to %v", what, x, r.low, r.high)
				}
			}
			checked++
			if points, spans, _ := from(level); points > 1+1e-6 || spans > 1+1e-6 {
				t.Errorf("%s: %v at %v and %v", what, x, points, spans)
			}
		})
		for k, i := range r.col {
			for _, end := range []float64{r.low[i], r.high[i]} {
				level := append([]float64(nil), r.low...)
				level[i] = end
				_, _, at := from(level)
				near(t, what+": an end of a salt", math.Abs(at[r.rows-r.n+k]), 1/m, 1e-9)
			}
		}
		if r.n < 2 {
			return
		}
		reduced3++
		was := make([][]float64, r.n)
		for k := range was {
			was[k] = append([]float64(nil), r.b[k]...)
		}
		aim, n := append([]float64(nil), r.aim...), r.n
		r.light = 1 // the same weight in both distances
		r.reduce()
		for k := range n {
			for p := range r.rows {
				sum := 0.0
				for i := range n {
					sum += was[i][p] * r.u[k][i]
				}
				near(t, what+": basis", r.b[k][p], sum, 1e-9*(1+math.Abs(sum)))
			}
		}
		near(t, what+": determinant", math.Abs(determinant(r.u)), 1, 1e-6)
		for k := 1; k < n; k++ {
			for j := range k {
				if math.Abs(r.near.mu[j*n+k]) > 0.5*r.near.mu[j*n+j]*(1+1e-6) {
					t.Errorf("%s: column %d is not short along %d", what, k, j)
				}
			}
			a, b, c := r.near.mu[(k-1)*n+k-1], r.near.mu[(k-1)*n+k], r.near.mu[k*n+k]
			if b*b+c*c < 0.99*a*a*(1-1e-6) {
				t.Errorf("%s: columns %d and %d are not in order", what, k-1, k)
			}
		}
		for _, of := range []metric{r.near, r.far} {
			sum := of.apart
			for _, v := range of.to {
				sum += v * v
			}
			near(t, what+": the aim", sum, dot(aim, aim), 1e-9*(1+sum))
		}
	})
	if checked < 1000 || reduced3 < 50 {
		t.Errorf("%d recipes, %d bases", checked, reduced3)
	}
}

// determinant of the columns, by elimination.
func determinant(columns [][]float64) float64 {
	n := len(columns)
	a := make([][]float64, n)
	for i := range a {
		a[i] = append([]float64(nil), columns[i]...)
	}
	det := 1.0
	for k := range n {
		p := k
		for i := k; i < n; i++ {
			if math.Abs(a[i][k]) > math.Abs(a[p][k]) {
				p = i
			}
		}
		if a[p][k] == 0 {
			return 0
		}
		if p != k {
			a[p], a[k], det = a[k], a[p], -det
		}
		det *= a[k][k]
		for i := k + 1; i < n; i++ {
			f := a[i][k] / a[k][k]
			for j := range n {
				a[i][j] -= f * a[k][j]
			}
		}
	}
	return det
}
