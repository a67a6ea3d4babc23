package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Plus returns the mixture of two liquids: the masses add, the volumes do not.
// The error is a [*units.RangeError] if no formula covers the mixture.
func (s Solution) Plus(o Solution) (Solution, error) {
	return s.with(o).checked("gravity.Solution.Plus")
}

// with is Plus without the check, for a search between two liquids that exist.
func (s Solution) with(o Solution) Solution {
	s.water += o.water
	s.ethanol += o.ethanol
	for k, x := range o.extract {
		s.extract[k] += x
	}
	return s
}

// AddWater returns the liquid with more water. The error is a [*units.RangeError]
// for a negative mass.
func (s Solution) AddWater(m units.Mass) (Solution, error) {
	const fn = "gravity.Solution.AddWater"
	if err := added(fn, "water", m); err != nil {
		return Solution{}, err
	}
	s.water += m.In(units.Kilogram)
	return s.checked(fn)
}

// AddSugar returns the liquid with more sucrose; for another sugar, or crystals
// that hold water, see [Solution.AddExtract] and [Solution.AddWater]. Errors: a
// [*units.RangeError] for a negative mass, or if no formula covers the liquid.
func (s Solution) AddSugar(m units.Mass) (Solution, error) {
	const fn = "gravity.Solution.AddSugar"
	if err := added(fn, "sugar", m); err != nil {
		return Solution{}, err
	}
	s.extract[AsSucrose] += m.In(units.Kilogram)
	return s.checked(fn)
}

// AddExtract returns the liquid with more of one kind of extract, as the dry
// substance. Errors are those of [Solution.AddSugar], and a [*units.NameError] for a
// kind that this package does not name.
func (s Solution) AddExtract(k Sugar, m units.Mass) (Solution, error) {
	const fn = "gravity.Solution.AddExtract"
	if err := sugars.Check(fn, k); err != nil {
		return Solution{}, err
	}
	if err := added(fn, k.String(), m); err != nil {
		return Solution{}, err
	}
	s.extract[k] += m.In(units.Kilogram)
	return s.checked(fn)
}

// AddEthanol returns the liquid with more ethanol. Errors are those of
// [Solution.AddSugar].
func (s Solution) AddEthanol(m units.Mass) (Solution, error) {
	const fn = "gravity.Solution.AddEthanol"
	if err := added(fn, "ethanol", m); err != nil {
		return Solution{}, err
	}
	s.ethanol += m.In(units.Kilogram)
	return s.checked(fn)
}

func added(fn, what string, m units.Mass) error {
	return limit.Check(fn, what, m.In(units.Kilogram), "kg", 0, mostMass, "a mass to add")
}

// BoilOff returns the liquid less that mass of water. The error is a
// [*units.RangeError] if there is not that much water, or the rest is no liquid
// that a formula covers. A liquid with ethanol loses that too when it boils; this
// takes water alone.
func (s Solution) BoilOff(water units.Mass) (Solution, error) {
	const fn = "gravity.Solution.BoilOff"
	m := water.In(units.Kilogram)
	if err := limit.Check(fn, "water", m, "kg", 0, s.water, "the water there is"); err != nil {
		return Solution{}, err
	}
	s.water -= m
	return s.checked(fn)
}

// Take returns that share of the liquid: a loss, a sample, one of several kegs.
// The error is a [*units.RangeError] for a share that is not from 0 to 100 %.
func (s Solution) Take(part units.Share) (Solution, error) {
	const fn = "gravity.Solution.Take"
	k := part.In(units.Percent) / 100
	if err := limit.Check(fn, "share", 100*k, "%", 0, 100, "a part of the whole"); err != nil {
		return Solution{}, err
	}
	return s.scaled(k), nil
}

// Remaining returns the liquid after that share of it is lost. The error is that
// of [Solution.Take].
func (s Solution) Remaining(lost units.Share) (Solution, error) {
	const fn = "gravity.Solution.Remaining"
	k := lost.In(units.Percent) / 100
	if err := limit.Check(fn, "share lost", 100*k, "%", 0, 100, "a part of the whole"); err != nil {
		return Solution{}, err
	}
	return s.scaled(1 - k), nil
}

func (s Solution) scaled(k float64) Solution {
	s.water *= k
	s.ethanol *= k
	for i := range s.extract {
		s.extract[i] *= k
	}
	return s
}
