package plan

import (
	"errors"
	"fmt"
	"math"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

const (
	farBrix = 1.0  // beyond what the wash can show: no ferment of it reads so
	farLost = 0.09 // three times what vapour makes of it
)

// A byOne is the share of the sugar used by one instrument, k = 1.
type byOne struct {
	by      string
	used, u float64
}

// A reach is what a reading can be of: the wash with the portions of sugar that are in by then.
type reach struct {
	wash  gravity.Solution
	total float64 // kg of sugar that the yeast will use in the end
	most  float64 // the share of it that is in
	at    func(used float64) (gravity.Solution, error)
}

// reach is that of a reading.
func (m *maker) reach(state *StatePlan, r Reading) (of reach, err error) {
	if of.wash, err = m.joined(state.first, m.portionsAt(r)); err != nil {
		return of, err
	}
	whole, err := m.joined(state.first, m.portions())
	if err != nil {
		return of, err
	}
	of.total, of.most = m.attenuation().In(units.Fraction)*kg(whole.Fermentable()), 1
	if m.portionsAt(r) < m.portions() {
		of.most = min(1, kg(of.wash.Fermentable())/of.total)
	}
	of.at = m.along(of.wash, of.total)
	return of, nil
}

// stateAt finds how much of the sugar is used from a reading: by each instrument, weighed by
// how sure each is.
func (m *maker) stateAt(state *StatePlan, r Reading) (StatePoint, error) {
	of, err := m.reach(state, r)
	if err != nil {
		return StatePoint{}, err
	}
	final := state.Final.In(units.PercentVolume)
	all, beyond, err := m.usedByEach(of, r, final)
	if err != nil {
		return StatePoint{}, err
	}
	used, u, best, apart := together(all)
	s, err := of.at(used)
	if err != nil {
		return StatePoint{}, err
	}
	v := s.VolumeAt20()
	p := StatePoint{
		After: r.After, Gravity: s.Gravity().SG() + m.salted.at(used), Used: units.Percent.Of(checked.Number(100 * used)), Strength: s.ByVolume(), PH: r.PH,
		Left:  units.GramPerLitre.Of(checked.Number(1000 * kg(s.Fermentable()) / v.In(units.Litre))),
		apart: apart, beyond: beyond, by: best,
		portions: m.portionsAt(r), waits: m.portionsAt(r) < m.portions(),
		Uncertainty: m.plan.Uncertainty.ByHydrometer, From: best,
	}
	for _, end := range []struct {
		used float64
		into *float64
	}{{0, &p.starts}, {of.most, &p.ends}} {
		s, err := of.at(end.used)
		if err != nil {
			return StatePoint{}, err
		}
		*end.into = s.Gravity().SG() + m.salted.at(end.used)
	}
	for i := range all {
		if all[i].by == "hydrometer" { // its own doubt is of the yield too, which tells the strength and not the sugar
			all[i].u = half(m.division()) / (p.starts - p.ends)
		}
	}
	_, p.blur, _, _ = together(all)
	if (used == 0 || used == of.most) && r.Gravity != 0 {
		p.Gravity = m.corrected(r, s)
	}
	if best == "hydrometer" {
		p.From = m.plan.Uncertainty.HydrometerFrom
	}
	if len(all) > 1 || r.Gravity == 0 {
		p.Uncertainty, err = expanded(u * final)
	}
	return p, err
}

// usedByEach is the share of the sugar used by each instrument of a reading, and what no ferment of the wash can show.
func (m *maker) usedByEach(of reach, r Reading, final float64) (all []byOne, beyond string, err error) {
	if r.Gravity != 0 {
		used, err := m.usedByHydrometer(of, r)
		if err != nil {
			return nil, "", err
		}
		all = append(all, byOne{"hydrometer", used, m.plan.Uncertainty.ByHydrometer.In(units.PercentVolume) / 2 / final})
	}
	if r.Brix != nil {
		by, odd, err := m.usedByRefractometer(of, *r.Brix)
		if err != nil {
			return nil, "", err
		}
		all, beyond = append(all, by), odd
	}
	if r.Lost != nil {
		used, err := m.usedByWeight(of.wash, *r.Lost, of.total)
		if err != nil {
			return nil, "", err
		}
		if used > of.most*(1+farLost) {
			beyond = fmt.Sprintf("%.2f kg lost is more than all its sugar gives", kg(*r.Lost))
		}
		used = min(used, of.most)
		all = append(all, byOne{"weight", used, math.Max(0.01, m.off("vapour in the gas")/100*used)})
	}
	return all, beyond, nil
}

// usedByHydrometer is the share at which it shows the reading, at the temperature of the sample.
func (m *maker) usedByHydrometer(of reach, r Reading) (float64, error) {
	hydrometer := m.hydrometer()
	return m.usedBy(of.most, func(used float64) float64 {
		s, err := of.at(used)
		if err != nil {
			return math.NaN()
		}
		x, err := hydrometer.Reading(s, r.Temperature)
		if err != nil {
			return math.NaN()
		}
		return x + m.salted.at(used) - r.Gravity
	})
}

// usedByRefractometer is the share at which it shows the reading, and what is odd in that.
func (m *maker) usedByRefractometer(of reach, brix float64) (by byOne, odd string, err error) {
	shown := func(used float64) float64 {
		s, err := of.at(used)
		if err != nil {
			return math.NaN()
		}
		b, err := m.refractometer(s)
		if err != nil {
			return math.NaN()
		}
		return b
	}
	used, err := m.usedBy(of.most, func(used float64) float64 { return shown(used) - brix })
	if err != nil {
		return by, "", err
	}
	first, last := shown(0), shown(of.most)
	switch {
	case brix > first+farBrix:
		odd = fmt.Sprintf("%s °Bx is more than the wash began with, %.1f", trim(brix), first)
	case brix < last-farBrix:
		odd = fmt.Sprintf("%s °Bx is less than a refractometer shows of it at the end, %.1f", trim(brix), last)
	}
	return byOne{"refractometer", used, math.Max(0.01, m.off("refractometer")/(first-last))}, odd, nil
}

// along is a wash when a share of total, what the yeast uses in the end, is used.
func (m *maker) along(wash gravity.Solution, total float64) func(used float64) (gravity.Solution, error) {
	return func(used float64) (gravity.Solution, error) {
		s, _, err := wash.Ferment(kilograms(min(used*total, kg(wash.Fermentable()))), m.yield)
		return s, err
	}
}

// usedBy finds the share used, up to the most, at which what an instrument shows is what was read; over is the
// difference, which falls as sugar is used.
func (m *maker) usedBy(most float64, over func(used float64) float64) (float64, error) {
	switch start, end := over(0), over(most); {
	case math.IsNaN(start) || math.IsNaN(end):
		return 0, errors.New("a temperature at which the density is known")
	case start <= 0: // at or above the start: nothing used
		return 0, nil
	case end >= 0: // at or below the floor
		return most, nil
	}
	return numeric.Root(over, 0, most, 1e-12)
}

// usedByWeight is the share used by the weight lost, by the gas that the batch makes. Above 1 more was lost than
// there is gas for.
//
//   - Source: [gravity.Solution.FermentByWeight].
func (m *maker) usedByWeight(wash gravity.Solution, lost units.Mass, total float64) (float64, error) {
	if lost.IsZero() {
		return 0, nil
	}
	liquid, err := carbonation.NewLiquid(wash)
	if err != nil {
		return 0, err
	}
	held, err := liquid.Content(m.air.Pressure(), m.req.Fermenter.Temperature)
	if err != nil {
		return 0, err
	}
	yield, err := m.byAtoms()
	if err != nil {
		return 0, err
	}
	is, _, err := wash.FermentByWeight(lost, held, yield)
	if e, ok := errors.AsType[*units.RangeError](err); ok && e.Quantity == "CO2 made" {
		return e.Value / e.Max * kg(wash.Fermentable()) / total, nil
	}
	return (kg(wash.Fermentable()) - kg(is.Fermentable())) / total, err
}

// byAtoms is the yield with the gas of the batch's balance of atoms.
func (m *maker) byAtoms() (gravity.Yield, error) {
	co2 := m.poured.gas / (m.attenuation().In(units.Fraction) * kg(m.batch.wash.Fermentable()))
	rest := 1 + m.yield.Water().In(units.Fraction) - m.yield.Ethanol().In(units.Fraction) - co2 - m.yield.Residue().In(units.Fraction)
	return gravity.NewYield(units.Kilogram.Of(1), gravity.Fermented{Ethanol: kilograms(m.yield.Ethanol().In(units.Fraction)), CO2: kilograms(co2),
		Residue: kilograms(m.yield.Residue().In(units.Fraction) + min(0, rest)), Water: kilograms(m.yield.Water().In(units.Fraction)),
		Biomass: kilograms(max(0, rest))})
}

// together is what several instruments say, by whose doubt most, as the one with the most weight also brings the most doubt;
// apart says where two of them contradict each other.
func together(all []byOne) (used, u float64, most, apart string) {
	sum, of, best := 0.0, 0.0, 0.0
	for i, t := range all {
		w := 1 / (t.u * t.u)
		sum, of = sum+w*t.used, of+w
		if w > best {
			best, most = w, t.by
		}
		for _, o := range all[:i] {
			if math.Abs(t.used-o.used) > 3*math.Hypot(t.u, o.u) {
				apart = o.by + " and " + t.by
			}
		}
	}
	return sum / of, 1 / math.Sqrt(of), most, apart
}

// corrected is the gravity of a reading above the start or below the floor, at 20 °C.
func (m *maker) corrected(r Reading, s gravity.Solution) float64 {
	g, err := m.hydrometer().Correct(r.Gravity, s.ByVolume(), r.Temperature)
	if err != nil {
		return s.Gravity().SG()
	}
	return g.SG()
}
