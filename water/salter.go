package water

import (
	"cmp"
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

const (
	mostSalts   = 16
	mostTargets = 16
	mostLimits  = 16
	mostWeight  = 1e6
)

// salter finds the doses of the salts at hand that bring a water nearest to its
// targets.
type salter struct {
	salts   []Stock
	targets []Target
	limits  []Bound
	brings  []*yield // by salt

	qp      *numeric.Quadratic
	gain    []float64 // target rows by salts: √weight·mg/L for each g/L
	root    []float64 // √weight of each target
	scale   []float64 // g/L for each scaled unit of a salt
	base    []float64 // what the water has, √weight·mg/L
	aim     []float64
	ranged  []int // targets with a range; their variables follow the salts
	held    []row // limits as rows of the program
	capped  []int // salts with a stock limit; their rows come first
	ties    ties
	x       []float64
	litres  float64
	program [][]float64 // limit rows by salts, unscaled
}

// row is one side of a limit.
type row struct {
	limit int
	sign  float64 // +1 for at most, -1 for at least
	norm  float64
}

// floor marks a row that keeps something at or above a value.
func (h row) floor() bool { return math.Signbit(h.sign) }

// solved returns the optimum for a request.
func (r *Request) solved(fn string) (*salter, error) {
	s, err := newSalter(fn, r.Salts, r.Targets, r.Limits...)
	if err == nil {
		err = s.solve(fn, r.Water, r.Volume)
	}
	return s, err
}

func newSalter(fn string, salts []Stock, targets []Target, limits ...Bound) (*salter, error) {
	s := &salter{salts: salts, targets: targets, limits: limits}
	if err := s.check(fn); err != nil {
		return nil, err
	}
	n, k := len(salts), len(targets)
	s.gain, s.root = make([]float64, k*n), make([]float64, k)
	s.base, s.aim = make([]float64, k), make([]float64, k)
	s.scale, s.x = make([]float64, n), make([]float64, n)
	for r, t := range targets {
		s.root[r] = math.Sqrt(orOne(t.Weight))
		for j := range salts {
			s.gain[r*n+j] = s.root[r] * s.brings[j].of(t.Ion)
		}
		if t.High.Compare(t.Low) > 0 {
			s.ranged = append(s.ranged, r)
		}
	}
	for j := range salts {
		var sum float64
		for r := range targets {
			sum += s.gain[r*n+j] * s.gain[r*n+j]
		}
		s.scale[j] = 1 / math.Sqrt(orOne(sum))
		if salts[j].Most.Compare(units.Mass{}) > 0 {
			s.capped = append(s.capped, j)
		}
	}
	s.prepare()
	return s, nil
}

// orOne is v, and one where there is none.
func orOne(v float64) float64 { return cmp.Or(v, 1) }

func (s *salter) check(fn string) error {
	if err := cmp.Or(
		limit.Check(fn, "number of salts", float64(len(s.salts)), "", 1, mostSalts, "room in the solver"),
		limit.Check(fn, "number of targets", float64(len(s.targets)), "", 1, mostTargets, "room in the solver"),
		limit.Check(fn, "number of limits", float64(len(s.limits)), "", 0, mostLimits, "room in the solver"),
	); err != nil {
		return err
	}
	for j, st := range s.salts {
		y, err := brings(fn, st.Salt)
		if err != nil {
			return err
		}
		for _, before := range s.salts[:j] {
			if before.Salt.Equal(st.Salt) {
				return twice(fn, st.Salt.Name())
			}
		}
		s.brings = append(s.brings, y)
		if err := limit.Check(fn, "stock of "+st.Salt.Name(), st.Most.In(units.Gram), "g", 0, math.MaxFloat64, "a stock"); err != nil {
			return err
		}
	}
	var ion [ionCount]bool
	for _, t := range s.targets {
		if err := t.check(fn); err != nil {
			return err
		}
		if ion[t.Ion] {
			return twice(fn, "target "+t.Ion.Name())
		}
		ion[t.Ion] = true
	}
	for i := range s.limits {
		if err := s.limits[i].check(fn); err != nil {
			return err
		}
	}
	return nil
}

func twice(fn, what string) error {
	return limit.Check(fn, "mentions of "+what, 2, "", 0, 1, "each once")
}

func (t *Target) check(fn string) error {
	if err := t.Ion.known(fn); err != nil {
		return err
	}
	low, high := t.Low.In(units.MilligramPerLitre), t.High.In(units.MilligramPerLitre)
	return cmp.Or(
		limit.Check(fn, "target "+t.Ion.Name(), low, "mg/L", 0, mostIon, waterSource),
		limit.Check(fn, "upper target "+t.Ion.Name(), high, "mg/L", low, mostIon, waterSource),
		limit.Check(fn, "weight of "+t.Ion.Name(), t.Weight, "", 0, mostWeight, "a weight"),
	)
}

// prepare fills what does not depend on the water: the matrix and the rows.
func (s *salter) prepare() {
	n, k := len(s.salts), len(s.targets)
	for i := range s.limits {
		l := &s.limits[i]
		coeff := make([]float64, n)
		var norm float64
		for j := range coeff {
			coeff[j] = l.of(func(ion Ion) float64 { return s.brings[j].of(ion) })
			norm = max(norm, math.Abs(coeff[j]*s.scale[j]))
		}
		norm = orOne(norm)
		s.program = append(s.program, coeff)
		if l.high < inf {
			s.held = append(s.held, row{i, 1, norm})
		}
		if l.low > -inf {
			s.held = append(s.held, row{i, -1, norm})
		}
	}
	vars := n + len(s.ranged)
	s.qp = numeric.NewQuadratic(vars, len(s.capped)+len(s.ranged)+len(s.held))
	q := s.qp
	for i := range n {
		for j := range n {
			var sum float64
			for r := range k {
				sum += s.gain[r*n+i] * s.gain[r*n+j]
			}
			q.H[i*vars+j] = sum * s.scale[i] * s.scale[j]
		}
	}
	for v, r := range s.ranged {
		q.H[(n+v)*vars+n+v] = 1
		for j := range n {
			h := -s.gain[r*n+j] * s.scale[j]
			q.H[(n+v)*vars+j], q.H[j*vars+n+v] = h, h
		}
	}
	at := 0
	for _, j := range s.capped {
		q.C[at*vars+j] = 1
		at++
	}
	for v := range s.ranged {
		q.C[at*vars+n+v] = 1
		at++
	}
	for _, h := range s.held {
		for j := range n {
			q.C[at*vars+j] = h.sign * s.program[h.limit][j] * s.scale[j] / h.norm
		}
		at++
	}
	s.ties.room(vars, q.M, k)
}

// solve finds the exact optimum of the doses for a volume of water, by complementary
// pivots; ties by the vertices of the optimal face.
func (s *salter) solve(fn string, water Profile, volume units.Volume) error {
	s.litres = volume.In(units.Litre)
	if err := checkVolume(fn, s.litres); err != nil {
		return err
	}
	n := len(s.salts)
	q := s.qp
	linear, bounds := q.Linear(), q.Bounds()
	for r := range s.targets {
		t := &s.targets[r]
		s.base[r] = s.root[r] * water.ion(t.Ion)
		s.aim[r] = s.root[r] * t.Low.In(units.MilligramPerLitre)
	}
	var size float64
	for j := range n {
		var sum float64
		for r := range s.targets {
			sum += s.gain[r*n+j] * (s.base[r] - s.aim[r])
		}
		linear[j] = sum * s.scale[j]
		size = max(size, math.Abs(linear[j]))
	}
	for v, r := range s.ranged {
		linear[n+v] = s.aim[r] - s.base[r]
	}
	at := 0
	for _, j := range s.capped {
		bounds[at] = s.salts[j].Most.In(units.Gram) / s.litres / s.scale[j]
		at++
	}
	for _, r := range s.ranged {
		t := &s.targets[r]
		bounds[at] = s.root[r] * (t.High.In(units.MilligramPerLitre) - t.Low.In(units.MilligramPerLitre))
		at++
	}
	for _, h := range s.held {
		l := &s.limits[h.limit]
		var have float64
		for i, c := range l.coeff {
			if c != 0 {
				have += c * water.ion(Ion(i))
			}
		}
		bound := l.high
		if h.floor() {
			bound = l.low
		}
		bounds[at] = h.sign * (bound - have) / h.norm
		at++
	}
	if err := q.Solve(); err != nil {
		return s.unreachable(fn, water, err)
	}
	s.choose(size)
	return nil
}

// doses returns those that solve found above zero, in the order of the salts.
func (s *salter) doses() []material.Dose {
	var doses []material.Dose
	for j, x := range s.x {
		if x > 0 {
			doses = append(doses, s.salts[j].Salt.Dose(units.Gram.Of(checked.Number(x*s.litres))))
		}
	}
	return doses
}

// UnreachableError reports limits that no doses of the salts at hand can meet.
type UnreachableError struct {
	Func   string // the function as a caller writes it, "water.Request.Solve"
	Limit  string // the limit that stays broken, "hardness"
	Reason string
	Err    error
}

// Error reads: `water.Request.Solve: hardness cannot be met: …`.
func (e *UnreachableError) Error() string {
	return fmt.Sprintf("%s: %s cannot be met: %s", e.Func, e.Limit, e.Reason)
}

// Unwrap returns the error of the solver.
func (e *UnreachableError) Unwrap() error { return e.Err }
