package plan

import (
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// doubts are standard uncertainties, k = 1, of what a plan says of its base. The batch is carried to its dry
// base with the usual unknowns, and once more with each of them off by its deviation; what that
// moves adds in squares. It is the list that [Draw] draws, to first order.
type doubts struct {
	strength float64 // of the base, as a part of it
	floor    float64 // its gravity when it is fermented, with what the formulas leave
	original float64 // the gravity of the wash
	volume   float64 // of the wash, as a part of it
}

// read are the figures of doubts; without a wash those of the wash are zero.
func (m *maker) read(wash, fermented *forward.State) (f [4]float64, err error) {
	c, err := fermented.Strength()
	if err != nil {
		return f, err
	}
	floor, err := fermented.Gravity()
	if err != nil || wash == nil {
		return [4]float64{c.In(units.PercentVolume), floor.SG()}, err
	}
	original, err := wash.Gravity()
	if err != nil {
		return f, err
	}
	v, err := wash.Volume(at20)
	return [4]float64{c.In(units.PercentVolume), floor.SG(), original.SG(), v.In(units.Litre)}, err
}

// saltSpread is how far a gram of one salt raises the gravity otherwise than that of another, as a part of it:
// 0.0001 of 0.00075 ([gravity.Solution.GravityWith]).
const saltSpread = 0.0001 / 0.00075

// doubt finds them, and how sure the floor is at k = 2.
//
//   - Source: JCGM 100:2008 (GUM), eq. 10, with differences for the derivatives (5.1.3, note 2).
func (m *maker) doubt(*notes) (d doubts, floor float64, err error) {
	base, err := m.baseWalk()
	if err != nil {
		return d, 0, err
	}
	ferment := slices.IndexFunc(base.steps, func(st forward.Step) bool { return st.Kind == forward.Ferment })
	base.steps = base.steps[:ferment+1]
	base.steps[ferment].Gas = true // what is read does not depend on it
	usual := forward.Usual()
	usual.Chalk = 0                  // nine tenths of the work of a walk
	var room, more [24]forward.State // most have fewer steps
	if base.states, _, err = forward.Walk(room[:0], base.steps, forward.State{}, &usual, &base.like); err != nil {
		return d, 0, err
	}
	was, err := m.read(&base.states[ferment-1], &base.states[ferment])
	if err != nil {
		return d, 0, err
	}
	var squares [len(was)]float64
	add := func(is [len(was)]float64, part float64) {
		for i := range is {
			squares[i] += part * (is[i] - was[i]) * (is[i] - was[i])
		}
	}
	states := more[:0]
	var tank water.Series
	for _, k := range m.known() {
		u := usual
		of := k.In(&u)
		if of == &u.Chalk { // from the plan's own walk, along the line to where none drops
			is, err := m.read(&m.brewed.wash, &m.brewed.fermented)
			if err != nil {
				return d, 0, err
			}
			is[0] = was[0] // no ethanol comes from it
			part := k.Deviation() / k.Usual
			add(is, part*part)
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
				return d, 0, err
			}
			from = states[len(states)-1]
		}
		if states, _, err = forward.Walk(states, base.steps[ferment:], from, &u, &tank); err != nil {
			return d, 0, err
		}
		var wash *forward.State
		if n := len(states); n > 1 {
			wash = &states[n-2]
		}
		is, err := m.read(wash, &states[len(states)-1])
		if err != nil {
			return d, 0, err
		}
		if wash == nil {
			is[2], is[3] = was[2], was[3]
		}
		add(is, 1)
	}
	dry, err := base.states[ferment].Solution()
	if err != nil {
		return d, 0, err
	}
	rho, _ := dry.DensityUncertainty()
	formulas := math.Hypot(rho.In(units.KilogramPerCubicMetre)/1000/waterPerLitre, saltSpread*m.plan.Gravity.Minerals)
	d = doubts{
		strength: math.Sqrt(squares[0]) / was[0], floor: math.Hypot(math.Sqrt(squares[1]), formulas),
		original: math.Sqrt(squares[2]), volume: math.Sqrt(squares[3]) / was[3],
	}
	return d, 2 * d.floor, nil
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
