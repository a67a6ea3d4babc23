package plan

import (
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A doubt is how sure a plan is of one of its figures: the squares by which the unknowns move it down and up, each off by its
// standard uncertainty, k = 1, and the one that moves it most.
type doubt struct {
	of, none       float64 // the figure, and what it is if no chalk drops
	down, up, most float64
	from           string
}

// add counts what an unknown moves the figure by to one side and to the other.
func (d *doubt) add(name string, one, other float64) {
	down, up := min(0, one, other), max(0, one, other)
	down, up = down*down, up*up
	d.down, d.up = d.down+down, d.up+up
	if down+up > d.most {
		d.most, d.from = down+up, name
	}
}

// u is the standard uncertainty where both sides count alike, part the same as a part of the figure.
func (d doubt) u() float64    { return math.Sqrt((d.down + d.up) / 2) }
func (d doubt) part() float64 { return d.u() / d.of }

// around are the ends at k = 2 about a figure as it is printed.
func (d doubt) around(x float64) (low, high float64) {
	return x - 2*math.Sqrt(d.down), x + 2*math.Sqrt(d.up)
}

// What a plan says of its base and is in doubt of.
const (
	ofStrength = iota                   // % vol of the base
	ofFloor                             // its gravity when it is fermented, with what the formulas leave
	ofOriginal                          // the gravity of the wash
	ofVolume                            // of the wash, L
	ofBuffer                            // mol of charge that the fermented base lacks at the floor of its pH
	ofPH                                // of the wash with each third of its sugar used
	ofAfter    = ofPH + courseSteps + 1 // of the drink, each time that it is told once it is fermented
	doubtful   = ofAfter + mostAfter

	ofEnd = ofPH + courseSteps
)

// inDoubt are those figures of one world.
type inDoubt [doubtful]float64

// A leg of the ferment goes on from the one before it; then a pH is read.
type leg struct {
	used  float64
	steps []forward.Step
}

// legs are the ferment in so many equal steps of the sugar used, with the nutrient as it goes in.
func (m *maker) legs(n int) []leg {
	all, at := make([]leg, n+1), 0.0
	stages := m.plan.Nutrient.Stages
	for i := range all {
		l := leg{used: float64(i) / float64(n)}
		for ; len(stages) > 0 && stages[0].Used.In(units.Fraction) < l.used+1e-9; stages = stages[1:] {
			to := stages[0].Used.In(units.Fraction)
			l.steps = append(append(l.steps, m.fermenting(at, to)...), m.addition(stages[0])...)
			at = to
		}
		l.steps = append(l.steps, m.fermenting(at, l.used)...)
		all[i], at = l, l.used
	}
	return all
}

// fermenting is the ferment from one part of what the yeast uses to another.
func (m *maker) fermenting(from, to float64) []forward.Step {
	if to-from < 1e-9 {
		return nil
	}
	all := m.attenuation().In(units.Fraction)
	return []forward.Step{{Kind: forward.Ferment, Share: units.Fraction.Of(checked.Number(min(1, all*(to-from)/(1-all*from)))),
		Pressure: m.air.Pressure()}}
}

// A reader carries worlds through the legs, one after the other, and reads their pH: like waters follow one another.
type reader struct {
	*maker
	legs   []leg
	meters []forward.Meter
	floor  forward.Meter
	like   water.Series
}

func (m *maker) reader(steps int) *reader {
	return &reader{maker: m, legs: m.legs(steps), meters: make([]forward.Meter, steps+1)}
}

// course carries a world from its wash before the nutrient of the stages to its end, and puts its pH in each but those that are
// known: at first at rest with air, then under its own gas.
func (r *reader) course(c *carried, ph []float64) error {
	c.like = &r.like
	gas := water.AirCO2(r.air)
	for i, l := range r.legs {
		for _, st := range l.steps {
			st.Gas = st.Kind == forward.Ferment // what is read does not depend on what it holds
			if _, err := c.do(st); err != nil {
				return err
			}
		}
		if ph[i] == 0 {
			var err error
			if ph[i], err = r.meters[i].PHUnder(&c.state, gas); err != nil {
				return err
			}
		}
		gas = r.air.Pressure()
	}
	return nil
}

// base reads what needs no pH of the way, of a world by its wash; that of another world is nil.
func (r *reader) base(wash *forward.State, u *forward.Unknowns) (f inDoubt, err error) {
	c := carried{state: r.brewed.wash, unknowns: *u, like: &r.like}
	if wash != nil {
		c.state = *wash
		original, err := wash.Gravity()
		if err != nil {
			return f, err
		}
		v, err := wash.Volume(at20)
		if err != nil {
			return f, err
		}
		f[ofOriginal], f[ofVolume] = original.SG(), v.In(units.Litre)
	}
	st := r.fermenting(0, 1)[0]
	st.Gas = true
	if _, err := c.do(st); err != nil {
		return f, err
	}
	strength, err := c.state.Strength()
	if err != nil {
		return f, err
	}
	floor, err := c.state.Gravity()
	if err != nil {
		return f, err
	}
	f[ofStrength], f[ofFloor] = strength.In(units.PercentVolume), floor.SG()
	if r.unforeseen() == "" {
		f[ofEnd], err = r.meters[courseSteps].PHUnder(&c.state, r.air.Pressure())
	}
	return f, err
}

// way reads the pH on the way of a world by its wash without the nutrient of the stages, and what hangs on it.
func (r *reader) way(f *inDoubt, unstaged forward.State, u *forward.Unknowns) error {
	if r.unforeseen() != "" {
		return nil
	}
	c := carried{state: unstaged, unknowns: *u}
	if err := r.course(&c, f[ofPH:]); err != nil {
		return err
	}
	if a := r.plan.Acidity; a.Buffer != nil {
		var err error
		if f[ofBuffer], err = r.floor.Lacks(&c.state, a.Floor, r.air.Pressure()); err != nil {
			return err
		}
	}
	return r.readAfter(&c, f[ofAfter:])
}

// readAfter reads the pH of the drink each time that it is told once it is fermented.
func (r *reader) readAfter(c *carried, ph []float64) error {
	if r.plan.After == nil {
		return nil
	}
	for _, d := range r.brewed.racked {
		if _, err := c.do(d.step); err != nil {
			return err
		}
	}
	done := 0
	for i, p := range r.plan.After.Points {
		for ; done < p.deeds; done++ {
			if _, err := c.do(r.plan.After.deeds[done].step); err != nil {
				return err
			}
		}
		d, _, _, err := gasFree(c.state)
		if err != nil {
			return err
		}
		ph[i] = d.PH()
	}
	return nil
}

// saltSpread is how far a gram of one salt raises the gravity otherwise than that of another, as a part of it:
// 0.0001 of 0.00075 ([gravity.Solution.GravityWith]).
const saltSpread = 0.0001 / 0.00075

// By how much a pH at the end has to move for it to be read on the way too, and for the other side to be looked at.
const (
	moves = 0.005
	bends = 0.05
)

// doubt finds them. The batch is carried to its dry base with the usual unknowns, and once more with each of them off by
// its deviation; what that moves adds in squares. It is the list that [Draw] draws, to first order; where the pH moves far
// it is carried to either side.
//
//   - Source: JCGM 100:2008 (GUM), eq. 10, with differences for the derivatives (5.1.3, note 2).
func (m *maker) doubt(*notes) (d [doubtful]doubt, err error) {
	base, err := m.baseWalk()
	if err != nil {
		return d, err
	}
	ferment := slices.IndexFunc(base.steps, func(st forward.Step) bool { return st.Kind == forward.Ferment })
	base.steps = base.steps[:ferment]
	unstaged := ferment - 1 - m.plan.Nutrient.staged // the last state without them
	usual := m.brewed.unknowns
	bare := usual
	bare.Chalk = 0                   // nine tenths of the work of a walk
	var room, more [24]forward.State // most have fewer steps
	if base.states, _, err = forward.Walk(room[:0], base.steps, forward.State{}, &bare, &base.like); err != nil {
		return d, err
	}
	r := m.reader(courseSteps)
	read := func(wash *forward.State, unstaged forward.State, u *forward.Unknowns, from *inDoubt) (is inDoubt, err error) {
		if is, err = r.base(wash, u); err != nil {
			return is, err
		}
		if wash == nil { // that of the plan
			is[ofOriginal], is[ofVolume], is[ofPH] = from[ofOriginal], from[ofVolume], from[ofPH]
		}
		if from != nil && math.Abs(is[ofEnd]-from[ofEnd]) < moves {
			copy(is[ofBuffer:], from[ofBuffer:])
			return is, nil
		}
		return is, r.way(&is, unstaged, u)
	}
	wash := m.brewed.wash
	was, err := read(&wash, m.brewed.unstaged, &usual, nil)
	if err != nil {
		return d, err
	}
	none := was // without chalk
	if m.brewed.scale > 0 {
		if none, err = read(&base.states[ferment-1], base.states[unstaged], &bare, nil); err != nil {
			return d, err
		}
	}
	for i := range d {
		d[i].of, d[i].none = was[i], none[i]
	}
	// moved is a world with one unknown off by so much, and what it is to be held against.
	moved := func(k *forward.Unknown, by float64) (is inDoubt, from *inDoubt, err error) {
		u := bare
		of := k.In(&u)
		*of = min(max(*of+by, min(k.Low, *of)), max(k.High, *of))
		first := slices.IndexFunc(base.steps, func(st forward.Step) bool { return k.Moves(st.Kind) })
		if first < 0 { // of the ferment
			is, err = read(nil, m.brewed.unstaged, &u, &was)
			return is, &was, err
		}
		var start forward.State // before the first step that it moves
		if first = min(first, unstaged); first > 0 {
			start = base.states[first-1]
		}
		states, _, err := forward.Walk(more[:0], base.steps[first:], start, &u, &base.like)
		if err != nil {
			return is, &none, err
		}
		is, err = read(&states[len(states)-1], states[unstaged-first], &u, &none)
		return is, &none, err
	}
	for _, k := range m.known() {
		of := k.In(&bare)
		switch {
		case of == &bare.Chalk && m.brewed.scale > 0:
			less, more := m.chalkDropped(k)
			for i := range d {
				d[i].add(k.Name, less*(was[i]-none[i]), more*(was[i]-none[i]))
			}
			continue
		case of == &bare.Chalk, of == &bare.Growth, of == &bare.Solubility: // the others of a closed pack, of the gas alone
			continue
		case of == &bare.Wash && m.brings.salts == 0: // nothing moves with it
			continue
		case k.Deviation() == 0, !k.Moves(forward.Ferment) && !slices.ContainsFunc(base.steps, func(st forward.Step) bool { return k.Moves(st.Kind) }):
			continue
		}
		is, from, err := moved(&k, k.Deviation())
		if err != nil {
			return d, err
		}
		other := *from
		if math.Abs(is[ofEnd]-from[ofEnd]) > bends {
			if other, _, err = moved(&k, -k.Deviation()); err != nil {
				return d, err
			}
		} else {
			for i := range other {
				other[i] -= is[i] - from[i]
			}
		}
		for i := range d {
			d[i].add(k.Name, is[i]-from[i], other[i]-from[i])
		}
	}
	dry, err := m.brewed.fermented.Solution()
	if err != nil {
		return d, err
	}
	rho, _ := dry.DensityUncertainty()
	for _, left := range []struct {
		name string
		by   float64
	}{{"density formulas", rho.In(units.KilogramPerCubicMetre) / 1000 / waterPerLitre}, {"salts", saltSpread * m.plan.Gravity.Minerals}} {
		d[ofFloor].add(left.name, left.by, -left.by)
	}
	return d, nil
}

// chalkDropped is by how much less, and more, of the chalk drops than usual, as a part of it: the root of the mean square over
// the rates below the usual one, and above. What has dropped goes with the time as 1 − exp(−rate·time).
func (m *maker) chalkDropped(k forward.Unknown) (less, more float64) {
	share := func(rate float64) float64 { return -math.Expm1(-rate * m.req.Kettle.Boil.minutes()) }
	const worlds = 32
	var squares, n [2]float64
	for i := range worlds {
		off := share(k.Quantile((float64(i)+0.5)/worlds))/share(k.Usual) - 1
		side := 0
		if off > 0 {
			side = 1
		}
		squares[side], n[side] = squares[side]+off*off, n[side]+1
	}
	return -math.Sqrt(squares[0] / max(1, n[0])), math.Sqrt(squares[1] / max(1, n[1]))
}

// sureGravities are the gravities with how sure they are, k = 2, and what most of that comes from.
func (m *maker) sureGravities(*notes) (GravityPlan, error) {
	g, floor, original := m.plan.Gravity, m.doubts[ofFloor], m.doubts[ofOriginal]
	g.FloorUncertainty, g.FloorFrom = 2*floor.u(), floor.from
	g.OriginalUncertainty, g.OriginalFrom = 2*original.u(), original.from
	return g, nil
}

// off is the standard uncertainty that an unknown has by itself, in its unit.
func (m *maker) off(name string) float64 { return unknown(m.known(), name).Deviation() }

// pHSpread is how sure the plan is of its pH when a share of the sugar is used, k = 1.
func (m *maker) pHSpread(used float64) float64 {
	return onCourse(m.plan.Acidity.Points, units.Fraction.Of(checked.Number(used)), func(p AcidityPoint) float64 { return (p.High - p.Low) / 4 })
}
