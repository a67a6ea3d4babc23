package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// DiluteTo returns the liquid brought down to a strength with water, and the water
// that takes.
//
//   - Source: masses add, contraction by the densities of [Solution.ByVolume].
//   - Range: from 0.01 % vol to the strength at hand; otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: that of the strength at hand.
func (s Solution) DiluteTo(strength units.StrengthByVolume) (Solution, units.Mass, error) {
	return s.mixTo("gravity.Solution.DiluteTo", Solution{water: 1}, strength, 0.01, s.ByVolume().In(units.PercentVolume))
}

// FortifyTo returns the liquid brought up to a strength with another that is
// stronger, and the mass of that: the other way.
//
//   - Source: as [Solution.DiluteTo].
//   - Range: from the strength at hand to that of the other less 0.01 % vol, and a
//     mixture that a formula covers (see [Solution.DensityUncertainty]); otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: that of the two strengths.
func (s Solution) FortifyTo(strength units.StrengthByVolume, with Solution) (Solution, units.Mass, error) {
	const fn = "gravity.Solution.FortifyTo"
	if err := limit.Check(fn, "mass of the other", with.total(), "kg", leastMass, mostMass, "there must be some"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	return s.mixTo(fn, with.scaled(1/with.total()), strength, s.ByVolume().In(units.PercentVolume), with.ByVolume().In(units.PercentVolume)-0.01)
}

// mixTo adds as much of the other (1 kg) as gives the strength, which lies from
// least to most.
func (s Solution) mixTo(fn string, other Solution, strength units.StrengthByVolume, least, most float64) (Solution, units.Mass, error) {
	want := strength.In(units.PercentVolume)
	if err := limit.Check(fn, "mass of the liquid", s.total(), "kg", leastMass, mostMass, "there must be some"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	if err := limit.Check(fn, "strength", want, "% vol", least, most, "between the two liquids"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	// part of the other in the whole, by mass; what no formula covers counts by its edge
	part, err := partOf(s.scaled(1/s.total()), other, want)
	if err != nil { // not reached: the strength wanted lies between the two
		return Solution{}, units.Mass{}, err
	}
	m := s.total() * part / (1 - part)
	mixed, err := s.with(other.scaled(m)).checked(fn)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	return mixed, kilograms(m), nil
}

// partOf finds the part of b in a mixture with a, each 1 kg, that has the strength; the
// nearer of the two stands for one that is outside by rounding.
func partOf(a, b Solution, want float64) (float64, error) {
	sa, sb := a.strength(), b.strength()
	want = clamp(want, min(sa, sb), max(sa, sb))
	f := func(part float64) float64 {
		return a.scaled(1-part).with(b.scaled(part)).strength() - want
	}
	return numeric.Root(f, 0, 1, sharp)
}

func (s Solution) strength() float64 { return s.ByVolume().In(units.PercentVolume) }

// TakeVolume splits off a volume of the liquid at a temperature: a loss to trub, a keg
// filled. It returns what was taken and what is left.
//
//   - Source: [Solution.Volume].
//   - Range: a volume from 0 to that of the liquid; otherwise the error is a
//     [*units.RangeError].
func (s Solution) TakeVolume(v units.Volume, t units.Temperature) (taken, left Solution, err error) {
	const fn = "gravity.Solution.TakeVolume"
	rho, err := s.densityAt(fn, t)
	if err != nil {
		return Solution{}, Solution{}, err
	}
	whole, want := 1000*s.total()/rho, v.In(units.Litre)
	if err := limit.Check(fn, "volume", want, "L", 0, whole*(1+hair), "the liquid there is"); err != nil {
		return Solution{}, Solution{}, err
	}
	if whole == 0 { // nothing of nothing
		return s, s, nil
	}
	k := min(want/whole, 1)
	return s.scaled(k), s.scaled(1 - k), nil
}
