package finish

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// Sweetened is a drink with sugar added after the ferment.
type Sweetened struct {
	Fermentable units.Mass // to add
	Liquid      gravity.Solution
	Strength    units.StrengthByVolume
	// IfItFerments is the most CO2 that the added sugar would make in the closed pack, g for
	// each litre, no yeast grown on it: every 2 g/L are about one volume.
	IfItFerments units.CarbonDioxideContent
	Cautions     caution.List
}

// SweetenWith returns the mass of a fermentable that brings so much sugar to each litre
// of the sweetened drink.
//
//   - Source: masses and volume of a [gravity.Solution]; CO2 by
//     Gay-Lussac's equation.
//   - Range: sugar 0.1 to 200 g/L, something that holds sugar; beyond it the error is a
//     [*units.RangeError].
//   - Units: sugar as weighed, without its inversion.
func SweetenWith(m material.Material, extract units.MassConcentration, drink gravity.Solution) (Sweetened, error) {
	const fn = "finish.SweetenWith"
	f := sugar.Of(m)
	want := extract.In(units.GramPerLitre)
	if err := limit.Check(fn, "sugar", want, "g/L", 0.1, 200, "sweet drinks"); err != nil {
		return Sweetened{}, err
	}
	if err := limit.Check(fn, "sugar that sweetens", f.Sugar().In(units.Percent), "%", 1, 100, "a fermentable"); err != nil {
		return Sweetened{}, err
	}
	start := drink.VolumeAt20().In(units.Litre)
	if err := limit.Check(fn, "volume", start, "L", amount.LeastVolume, amount.MostVolume, "a drink"); err != nil {
		return Sweetened{}, err
	}
	out := Sweetened{Cautions: caution.List{sugarFerments}}
	// The volume grows by what is added.
	litres, err := numeric.Settle(start, 0, start, func(litres float64) (missing float64, err error) {
		out.Fermentable = amount.Kilograms(want / 1000 * litres / f.Sugar().In(units.Fraction))
		out.Liquid, err = f.AddTo(drink, out.Fermentable)
		return out.Liquid.VolumeAt20().In(units.Litre) - litres, err
	})
	if err != nil {
		return Sweetened{}, limit.Named(fn, err)
	}
	out.Strength = out.Liquid.ByVolume()
	out.IfItFerments = units.GramCO2PerLitre.Of(checked.Number(out.Fermentable.In(units.Gram) * f.MostCO2().In(units.Fraction) / litres))
	return out, nil
}

const sugarFerments caution.Caution = "sugar_ferments: Yeast ferments it: stabilise the drink before, or keep it cold, or the pack can burst. " + checkTheLaw
