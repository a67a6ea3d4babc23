package mash

import (
	"errors"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Adjustment is what brings a mash to a pH.
type Adjustment struct {
	Mass, Low, High units.Mass // of the pure acid, or of the base as weighed; the band is that of the mash
	Water           water.Profile
	Cautions        caution.List
}

// What whoever doses must know.
const (
	MeasurePH caution.Caution = "measure: A mash is not known this well: add half, stir, measure a cooled sample, then the rest."
	slow      caution.Caution = "slow: Chalk hardly dissolves in a mash without CO2: much of it stays powder."
)

// WithAcid returns the acid that brings the mash to a pH below its own.
//
// Errors are a [*units.RangeError]: a pH outside 4 to 7 or above what the mash has; more than
// 200 mmol of acid in a litre; and those of [Mash.PH].
//
//   - Source: as [Mash.PH]; the acid gives the protons that it has given up at that pH.
//   - Uncertainty: the band, which is often as wide as the dose.
func (m Mash) WithAcid(a water.Acid, ph float64) (Adjustment, error) {
	const fn = "mash.Mash.WithAcid"
	return m.dose(fn, ph, false, a.MolarMass().In(units.GramPerMole), func(p water.Profile, x float64) (water.Profile, error) {
		return p.AddAcid(a, units.Millimole.Of(checked.Number(x)), units.Litre.Of(1))
	}, caution.List{water.AcidBurns, MeasurePH})
}

// WithBase returns the bicarbonate, lime or other base that brings the mash to a pH above its
// own. Lime brings its calcium with it.
//
// Errors are a [*units.RangeError]: a material that brings no alkalinity, a pH outside 4 to 7 or below what
// the mash has, more than 200 mEq in a litre; and those of [Mash.PH].
//
//   - Source: as [Mash.PH].
//   - Uncertainty: the band.
func (m Mash) WithBase(b material.Material, ph float64) (Adjustment, error) {
	const fn = "mash.Mash.WithBase"
	hydroxide := b.Composition().Alkalinity
	if err := limit.Check(fn, "alkalinity of the base", hydroxide.In(units.Percent), "% as OH-", 1e-3, 100, "a salt that brings alkalinity"); err != nil {
		return Adjustment{}, err
	}
	weighs := (chemistry.O + chemistry.H) / hydroxide.In(units.Fraction) // mg for a mEq
	return m.dose(fn, ph, true, weighs, func(p water.Profile, x float64) (water.Profile, error) {
		return p.Add(units.Litre.Of(1), b.Dose(units.Milligram.Of(checked.Number(x*weighs))))
	}, b.Cautions().With(MeasurePH).WithIf(b == material.Chalk(), slow))
}

const mostDose = 200 // mmol or mEq in a litre

// dose finds how much in each litre brings the mash to a pH, of a base or an acid; weighs is
// mg for a mmol or mEq of it.
func (m Mash) dose(fn string, ph float64, base bool, weighs float64, add func(water.Profile, float64) (water.Profile, error),
	said caution.List) (Adjustment, error) {
	if err := limit.Check(fn, "pH wanted", ph, "", leastPH, mostPH, "a mash"); err != nil {
		return Adjustment{}, err
	}
	s, err := m.prepare(fn)
	if err != nil {
		return Adjustment{}, err
	}
	var after, dosed water.Profile // dosed: with the value, which is found first
	found := false
	over := func(x float64) (float64, error) {
		var err error
		if after, err = add(s.water, x); err != nil {
			return 0, limit.Named(fn, err)
		}
		off, err := s.lacking(after, ph)
		if base {
			off = -off
		}
		return off, err
	}
	find := func() (float64, error) {
		x, err := numeric.Rising(over, 1, 2, mostDose, closely)
		if !found {
			dosed, found = after, true
		}
		if errors.Is(err, numeric.ErrBracket) {
			err = limit.Check(fn, "dose", math.Nextafter(mostDose, math.MaxFloat64), "mmol/L", 0, mostDose, "a mash")
		}
		return x * weighs / 1000 * s.litres, err
	}
	here, err := s.ph()
	if err != nil {
		return Adjustment{}, err
	}
	low, high := leastPH, here
	if base {
		low, high = here, mostPH
	}
	if err := limit.Check(fn, "pH wanted", ph, "", low, high, "what the mash comes to without it"); err != nil {
		return Adjustment{}, err
	}
	e, err := s.estimate(find)
	if err != nil {
		return Adjustment{}, err
	}
	mass := func(g float64) units.Mass { return units.Gram.Of(checked.Number(max(0, g))) }
	return Adjustment{Mass: mass(e.Value), Low: mass(e.Low), High: mass(e.High), Water: dosed, Cautions: said}, nil
}
