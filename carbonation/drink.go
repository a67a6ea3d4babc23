package carbonation

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// DrinkOf returns a kilogram of a drink that is known by its label: its strength by
// volume and its real extract, counted as sucrose. Where a recipe is at hand, its own
// [gravity.Solution] is better.
//
//   - Source: [gravity.Solution.ByVolume], solved for the ethanol.
//   - Range: 0 to 20 % vol, 0 to 30 % mass of extract; beyond it the error is a
//     [*units.RangeError].
//   - Units: % vol at 20 °C; °P of real extract.
//   - Uncertainty: that of the density of the mixture.
func DrinkOf(strength units.StrengthByVolume, extract units.Extract) (gravity.Solution, error) {
	const fn, source = "carbonation.DrinkOf", "drinks that hold CO2"
	v, x := strength.In(units.PercentVolume), extract.In(units.DegreePlato)
	if err := limit.Check(fn, "strength", v, "% vol", 0, mostStrength, source); err != nil {
		return gravity.Solution{}, err
	}
	if err := limit.Check(fn, "extract", x, "% mass", 0, mostExtract, source); err != nil {
		return gravity.Solution{}, err
	}
	if v < least {
		v = 0
	}
	of := func(ethanol float64) (gravity.Solution, error) { // kg in a kilogram
		return gravity.NewSolution(units.Kilogram.Of(checked.Number(1-ethanol-x/100)), units.Kilogram.Of(checked.Number(x/100)),
			units.Kilogram.Of(checked.Number(ethanol)))
	}
	e, err := upTo(gravity.ByMass(units.PercentVolume.Of(checked.Number(v))).In(units.PercentMass)/100*(1+rounding), func(e float64) float64 {
		s, _ := of(e) // no error: half of it and more is water
		return s.ByVolume().In(units.PercentVolume) - v
	})
	if err != nil { // not reached: the ends of the search were checked
		return gravity.Solution{}, err
	}
	return of(e)
}

// Strongest and sweetest drink, % vol and % mass.
const mostStrength, mostExtract = 20, 30

// least is a strength, % vol, that is none: a molecule in a litre is 1e-23.
const least = 1e-20
