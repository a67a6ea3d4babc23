package nutrient

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Diluted is a strong base that is let down with water.
type Diluted struct {
	Water    units.Mass
	Liquid   gravity.Solution // base, flavouring and water together
	Cautions []string
}

// Dilute returns the water that brings a strong base, with a flavouring in it, to a
// strength. The alcohol of the flavouring counts; an empty flavouring counts nothing.
//
//   - Source: masses of a [gravity.Solution], solved for the strength with
//     [numeric.Root].
//   - Range: a strength from 0.1 % vol up to that of the base with its flavouring; beyond it
//     the error is a [*units.RangeError].
//   - Uncertainty: that of the strength of the base.
func Dilute(base, flavouring gravity.Solution, strength units.StrengthByVolume) (Diluted, error) {
	const fn = "nutrient.Dilute"
	s, err := base.Plus(flavouring)
	if err != nil {
		return Diluted{}, err
	}
	have, want := s.ByVolume().In(units.PercentVolume), strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", want, "% vol", 0.1, have, "the base with its flavouring"); err != nil {
		return Diluted{}, err
	}
	kg := s.Mass().In(units.Kilogram)
	// The volume of ethanol stays: 1.2 times what volumes would say is more than enough.
	most := kg * (1.5*have/want + 0.1)
	at := func(water float64) float64 {
		d, err := s.AddWater(kilograms(water))
		if err != nil {
			return math.NaN()
		}
		return d.ByVolume().In(units.PercentVolume) - want
	}
	water, err := numeric.Root(at, 0, most, closeEnough*most)
	if err != nil {
		return Diluted{}, err
	}
	s, err = s.AddWater(kilograms(water))
	return Diluted{
		Water: kilograms(water), Liquid: s,
		Cautions: []string{"Use water without air or chlorine: boiled and cooled, or filtered and purged. Oxygen stales the drink."},
	}, err
}

// StrongBrew returns the brew of a strong base that is later let down with water to a
// finished volume and strength, and the water.
//
//   - Source: [Wash.For] for the base, [Dilute] for the water.
//   - Range: strength below that of the base, base up to 20 % vol; beyond it the error is a
//     [*units.RangeError]. Wash.Basis is not used.
//   - Uncertainty: as [Wash.For].
func (w Wash) StrongBrew(base, strength units.StrengthByVolume, finished units.Volume) (Brew, Diluted, error) {
	const fn = "nutrient.Wash.StrongBrew"
	strong, weak := base.In(units.PercentVolume), strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", weak, "% vol", 0.1, strong, "the strong base"); err != nil {
		return Brew{}, Diluted{}, err
	}
	litres := finished.In(units.Litre) * weak / strong // the ethanol is the same
	w.Basis = Finished(units.Litre.Of(checked.Number(litres)))
	b, err := w.For(base)
	if err != nil {
		return Brew{}, Diluted{}, err
	}
	d, err := Dilute(b.Finish, emptyLiquid, strength)
	return b, d, err
}
