package plan

import (
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A doubt is how sure a plan is of one of its figures: the squares by which the unknowns move it, each off by its standard
// uncertainty, k = 1, and the one that moves it most.
type doubt struct {
	of, squares, most float64
	from              string
}

// add counts what an unknown moves the figure by.
func (d *doubt) add(name string, by float64) {
	square := by * by
	if d.squares += square; square > d.most {
		d.most, d.from = square, name
	}
}

// u is the standard uncertainty, part the same as a part of the figure.
func (d doubt) u() float64    { return math.Sqrt(d.squares) }
func (d doubt) part() float64 { return d.u() / d.of }

// What a plan says of its base and is in doubt of.
const (
	ofStrength = iota // % vol of the base
	ofFloor           // its gravity when it is fermented, with what the formulas leave
	ofOriginal        // the gravity of the wash
	ofVolume          // of the wash, L
	doubtful
)

// read are the figures that are in doubt; without a wash those of the wash are zero.
func (m *maker) read(wash, fermented *forward.State) (f [doubtful]float64, err error) {
	c, err := fermented.Strength()
	if err != nil {
		return f, err
	}
	floor, err := fermented.Gravity()
	f[ofStrength], f[ofFloor] = c.In(units.PercentVolume), floor.SG()
	if err != nil || wash == nil {
		return f, err
	}
	original, err := wash.Gravity()
	if err != nil {
		return f, err
	}
	v, err := wash.Volume(at20)
	f[ofOriginal], f[ofVolume] = original.SG(), v.In(units.Litre)
	return f, err
}

// saltSpread is how far a gram of one salt raises the gravity otherwise than that of another, as a part of it:
// 0.0001 of 0.00075 ([gravity.Solution.GravityWith]).
const saltSpread = 0.0001 / 0.00075

// doubt finds them. The batch is carried to its dry base with the usual unknowns, and once more with each of them off by
// its deviation; what that moves adds in squares. It is the list that [Draw] draws, to first order.
//
//   - Source: JCGM 100:2008 (GUM), eq. 10, with differences for the derivatives (5.1.3, note 2).
func (m *maker) doubt(*notes) (d [doubtful]doubt, err error) {
	base, err := m.baseWalk()
	if err != nil {
		return d, err
	}
	ferment := slices.IndexFunc(base.steps, func(st forward.Step) bool { return st.Kind == forward.Ferment })
	base.steps = base.steps[:ferment+1]
	base.steps[ferment].Gas = true // what is read does not depend on it
	usual := forward.Usual()
	usual.Chalk = 0                  // nine tenths of the work of a walk
	var room, more [24]forward.State // most have fewer steps
	if base.states, _, err = forward.Walk(room[:0], base.steps, forward.State{}, &usual, &base.like); err != nil {
		return d, err
	}
	was, err := m.read(&base.states[ferment-1], &base.states[ferment])
	if err != nil {
		return d, err
	}
	for i := range d {
		d[i].of = was[i]
	}
	add := func(name string, is [doubtful]float64, part float64) {
		for i := range is {
			d[i].add(name, part*(is[i]-was[i]))
		}
	}
	states := more[:0]
	var tank water.Series
	for _, k := range m.known() {
		u := usual
		of := k.In(&u)
		if of == &u.Chalk { // from the plan's own walk, along the line to where none drops
			b := *m.brewed
			is, err := m.read(&b.wash, &b.fermented)
			if err != nil {
				return d, err
			}
			is[ofStrength] = was[ofStrength] // no ethanol comes from it
			add(k.Name, is, k.Deviation()/k.Usual)
			continue
		}
		if of == &u.Growth || of == &u.Solubility { // of a closed pack; of the gas alone
			continue
		}
		first := slices.IndexFunc(base.steps, func(st forward.Step) bool { return k.Moves(st.Kind) })
		if first < 0 || k.Deviation() == 0 {
			continue
		}
		var from forward.State // before the first step that it moves
		if first > 0 {
			from = base.states[first-1]
		}
		*of += k.Deviation()
		states = states[:0]
		if first < ferment { // the searches of the kettle begin at one another, and those of the fermenter
			if states, _, err = forward.Walk(states, base.steps[first:ferment], from, &u, &base.like); err != nil {
				return d, err
			}
			from = states[len(states)-1]
		}
		if states, _, err = forward.Walk(states, base.steps[ferment:], from, &u, &tank); err != nil {
			return d, err
		}
		var wash *forward.State
		if n := len(states); n > 1 {
			wash = &states[n-2]
		}
		is, err := m.read(wash, &states[len(states)-1])
		if err != nil {
			return d, err
		}
		if wash == nil {
			is[ofOriginal], is[ofVolume] = was[ofOriginal], was[ofVolume]
		}
		add(k.Name, is, 1)
	}
	dry, err := base.states[ferment].Solution()
	if err != nil {
		return d, err
	}
	rho, _ := dry.DensityUncertainty()
	d[ofFloor].add("density formulas", rho.In(units.KilogramPerCubicMetre)/1000/waterPerLitre)
	d[ofFloor].add("salts", saltSpread*m.plan.Gravity.Minerals)
	return d, nil
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

// pHSpread is how sure the plan is of its pH when a share of the sugar is used, k = 1: by the acids and by the chalk that
// it may be off by, between the ends that are printed with it.
func (m *maker) pHSpread(used float64) float64 {
	end := func(of func(AcidityPoint) float64) float64 {
		return onCourse(m.plan.Acidity.Points, units.Fraction.Of(checked.Number(used)), of)
	}
	acids := m.off("acids made") * end(func(p AcidityPoint) float64 { return (p.High - p.Low) / 2 })
	chalk := 0.0
	if m.plan.Acidity.EndClear != 0 {
		k := unknown(m.known(), "rate of chalk")
		chalk = k.Deviation() / (k.High - k.Low) * end(func(p AcidityPoint) float64 { return p.Clear - p.PH })
	}
	return math.Hypot(acids, chalk)
}
