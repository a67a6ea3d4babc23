package finish

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/sugar"
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
//   - Source: masses and volume of a [gravity.Solution]: the ethanol stays, and so the
//     strength says what the volume becomes.
//   - Range: a strength from 0.1 % vol up to that of the base with its flavouring; beyond it
//     the error is a [*units.RangeError].
//   - Uncertainty: that of the strength of the base.
func Dilute(base, flavouring gravity.Solution, strength units.StrengthByVolume) (Diluted, error) {
	const fn = "finish.Dilute"
	s, err := base.Plus(flavouring)
	if err != nil {
		return Diluted{}, limit.Named(fn, err)
	}
	have, want := s.ByVolume().In(units.PercentVolume), strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", want, "% vol", 0.1, have, "the base with its flavouring"); err != nil {
		return Diluted{}, limit.Named(fn, err)
	}
	out := Diluted{
		Cautions: []string{"Use water without air or chlorine: boiled and cooled, or filtered and purged. Oxygen stales the drink."},
	}
	litres := s.Ethanol().In(units.Kilogram) / amount.PureEthanol / (want / 100) // it ends at
	undiluted := s.Mass().In(units.Kilogram)
	_, err = numeric.Settle(litres, undiluted, litres, func(kg float64) (missing float64, err error) {
		out.Water = amount.Kilograms(kg - undiluted)
		if out.Liquid, err = s.AddWater(out.Water); err != nil {
			return missing, err
		}
		return litres - out.Liquid.VolumeAt20().In(units.Litre), nil
	})
	if err != nil {
		return Diluted{}, limit.Named(fn, err)
	}
	return out, nil
}

// StrongBrew returns the brew of a strong base that is later let down with water to a
// finished volume and strength, and the water.
//
//   - Source: [sugar.Wash.For] for the base, [Dilute] for the water.
//   - Range: strength below that of the base, base up to 20 % vol; beyond it the error is a
//     [*units.RangeError]. Wash.Basis is not used.
//   - Uncertainty: as [sugar.Wash.For].
func StrongBrew(w sugar.Wash, base, strength units.StrengthByVolume, finished units.Volume) (sugar.Brew, Diluted, error) {
	const fn = "finish.StrongBrew"
	strong, weak := base.In(units.PercentVolume), strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", weak, "% vol", 0.1, strong, "the strong base"); err != nil {
		return sugar.Brew{}, Diluted{}, err
	}
	litres := finished.In(units.Litre) * weak / strong // the ethanol is the same
	w.Basis = sugar.Finished(units.Litre.Of(checked.Number(litres)))
	b, err := w.For(base)
	if err != nil {
		return sugar.Brew{}, Diluted{}, limit.Named(fn, err)
	}
	d, err := Dilute(b.Finish, gravity.Solution{}, strength)
	return b, d, limit.Named(fn, err)
}
