package plan

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// measuredWash is the wash, of its first portion of the sugar, as its first reading has it, and what
// would bring it back to the plan.
func (m *maker) measuredWash(r Reading, s *StatePlan) (gravity.Solution, error) {
	g, err := m.hydrometer().Correct(r.Gravity, units.StrengthByVolume{}, r.Temperature)
	if err != nil {
		return gravity.Solution{}, err
	}
	planned := m.batch.filled.Gravity().SG() + m.salted[0]
	read := weighed(planned, m.doubts[ofOriginal].u(), g.SG(), half(m.plan.Uncertainty.Division))
	want := read - m.salted[0]
	share, err := numeric.Root(func(x float64) float64 {
		w, err := m.washOf(x, 1)
		if err != nil {
			return math.NaN()
		}
		return w.Gravity().SG() - want
	}, 1e-6, m.richest(), 1e-12)
	if err != nil {
		allowed := "above water and below three times the planned extract"
		if m.brings.juice {
			allowed = "above water and not above the juice itself: where that is sweeter, give its own Brix"
		}
		return gravity.Solution{}, &RequestError{Field: "readings[0].gravity", Value: trim(r.Gravity), Allowed: allowed, Err: err}
	}
	volume, err := m.batch.filled.Volume(m.req.Fermenter.Temperature)
	if err != nil {
		return gravity.Solution{}, err
	}
	if r.Volume != nil {
		v := volume.In(units.Litre)
		volume = litres(weighed(v, m.doubts[ofVolume].part()*v, r.Volume.In(units.Litre), m.off("level")/100*v))
	}
	one, err := m.washOf(share, 1)
	if err != nil {
		return gravity.Solution{}, err
	}
	v, err := one.Volume(m.req.Fermenter.Temperature)
	if err != nil {
		return gravity.Solution{}, err
	}
	total := volume.In(units.Litre) / v.In(units.Litre)
	s.Original, s.Wash = g.SG(), volume
	// More fermentable to the same water, or more water to the same fermentable.
	whole := kg(m.batch.wash.Mass())
	plan := (m.batch.share*whole - m.batch.late) / (whole - m.batch.late)
	if share < plan && m.brings.juice {
		return one.Times(total) // no juice brings another up to itself
	}
	if share < plan {
		s.AddSugar = kilograms(total * (plan - share) / (1 - plan))
	} else {
		s.AddWater = kilograms(total * (share/plan - 1))
	}
	return one.Times(total)
}
