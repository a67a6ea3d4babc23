package plan

import (
	"math"
	"strings"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// measuredWash is the wash, of its first portion of the sugar, as its first reading has it, and what
// would bring it back to the plan.
func (m *maker) measuredWash(r Reading, s *StatePlan) (gravity.Solution, error) {
	g, off, err := m.gravityOfWash(r, s)
	if err != nil {
		return gravity.Solution{}, err
	}
	share := m.sharePlanned()
	if g > 0 {
		planned := m.batch.filled.Gravity().SG() + m.salted[0]
		want := weighed(planned, m.doubts[ofOriginal].u(), g, off) - m.salted[0]
		if share, err = m.shareWith(r, func(w gravity.Solution) float64 { return w.Gravity().SG() - want }); err != nil {
			return gravity.Solution{}, err
		}
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
	s.Original, s.Wash = g, volume
	// More fermentable to the same water, or more water to the same fermentable.
	plan := m.sharePlanned()
	if g == 0 || share < plan && m.brings.juice {
		return one.Times(total) // no juice brings another up to itself
	}
	if share < plan {
		s.AddSugar = kilograms(total * (plan - share) / (1 - plan))
	} else {
		s.AddWater = kilograms(total * (share/plan - 1))
	}
	return one.Times(total)
}

// sharePlanned is that of the fermentable in the wash of the first portion.
func (m *maker) sharePlanned() float64 {
	whole := kg(m.batch.wash.Mass())
	return (m.batch.share*whole - m.batch.late) / (whole - m.batch.late)
}

// gravityOfWash is the gravity of the wash, of its salts too, by what it was read with, and its standard uncertainty; 0 where
// nothing tells it.
func (m *maker) gravityOfWash(r Reading, s *StatePlan) (sg, off float64, err error) {
	if r.Gravity != 0 {
		g, err := m.hydrometer().Correct(r.Gravity, units.StrengthByVolume{}, r.Temperature)
		if err != nil {
			return 0, 0, err
		}
		sg, off = g.SG(), half(m.plan.Uncertainty.Division)
	}
	if r.Brix == nil {
		return sg, off, nil
	}
	of := func(brix float64) (float64, error) {
		share, err := m.shareWith(r, func(w gravity.Solution) float64 {
			shown, err := m.refractometer(w)
			if err != nil {
				return math.NaN()
			}
			return shown - brix
		})
		if err != nil {
			return 0, err
		}
		w, err := m.washOf(share, 1)
		return w.Gravity().SG() + m.salted[0], err
	}
	shown, err := of(*r.Brix)
	if err != nil {
		return 0, 0, err
	}
	const byBrix = 0.004 // of gravity for 1 °Bx
	doubt := byBrix * m.off("refractometer")
	if sg == 0 {
		return shown, doubt, nil
	}
	if math.Abs(sg-shown) > 3*math.Hypot(off, doubt) {
		s.apart = "hydrometer and refractometer"
	}
	a, b := 1/(off*off), 1/(doubt*doubt)
	return (a*sg + b*shown) / (a + b), 1 / math.Sqrt(a+b), nil
}

// shareWith is the part of fermentable in a wash of which something is as it was read.
func (m *maker) shareWith(r Reading, over func(gravity.Solution) float64) (float64, error) {
	share, err := numeric.Root(func(x float64) float64 {
		w, err := m.washOf(x, 1)
		if err != nil {
			return math.NaN()
		}
		return over(w)
	}, 1e-6, m.richest(), 1e-12)
	if err == nil {
		return share, nil
	}
	allowed := "above water and below three times the planned extract"
	if m.brings.juice {
		allowed = "above water and not above the juice itself: where that is sweeter, give its own Brix"
	}
	if r.Gravity == 0 {
		return 0, &RequestError{Field: "readings[0].brix", Value: trim(*r.Brix), Allowed: allowed, Err: err}
	}
	return 0, &RequestError{Field: "readings[0].gravity", Value: trim(r.Gravity), Allowed: allowed, Err: err}
}

// refractometer is what one shows of a liquid, °Bx.
func (m *maker) refractometer(s gravity.Solution) (float64, error) {
	b, err := s.RefractometerBrix()
	if err != nil {
		return 0, err
	}
	factor := 1.0
	if strings.Contains(m.fermentable.Name(), "malt") {
		factor = gravity.WortFactor().Value().In(units.One)
	}
	return b.In(units.DegreePlato) + (factor-1)*s.RealExtract().In(units.DegreePlato), nil
}
