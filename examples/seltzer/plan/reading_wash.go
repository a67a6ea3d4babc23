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
	planned := m.batch.filled.Gravity().SG() + m.salted.wash
	sure := m.washSpread()
	read := weighed(planned, sure.gravity*(planned-1), g.SG(), half(m.plan.Uncertainty.Division))
	want := read - m.salted.wash
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
		volume = litres(weighed(v, sure.volume*v, r.Volume.In(units.Litre), sure.level*v))
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

// spreads are how sure the plan is of its wash, k = 1, as parts of the whole.
type spreads struct {
	gravity float64 // above water: what was weighed, and the level it was made up to
	volume  float64 // levels, and a tenth of what boils away
	level   float64 // a level alone
}

func (m *maker) washSpread() spreads {
	all := m.known()
	part := func(name string) float64 { return unknown(all, name).Deviation() / 100 }
	level, scale, purity := part("level"), part("scale"), part("sugar of the fermentable")
	away := 0.1 * m.batch.boiledOff / m.batch.water
	return spreads{
		gravity: math.Sqrt(scale*scale + purity*purity + level*level + away*away),
		volume:  math.Hypot(level, away), level: level,
	}
}
