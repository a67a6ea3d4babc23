package sugar

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// CostPerGramEthanol returns what a gram of ethanol from a fermentable costs: the price
// of a pack over the ethanol that its mass gives with the usual yield, in the currency of
// the price, to 6 places.
//
//   - Source: [Fermentable.Yield] and the composition of m.
//   - Range: price 0 to 1e9, a pack above 0 of something that ferments; beyond it the
//     error is a [*units.RangeError].
//   - Uncertainty: that of the yield, 3 %.
func CostPerGramEthanol(m material.Material, price decimal.Decimal, pack units.ExactMass) (decimal.Decimal, error) {
	const fn, places = "sugar.CostPerGramEthanol", 6
	if err := limit.Check(fn, "price", price.InexactFloat64(), "", 0, 1e9, "a price"); err != nil {
		return decimal.Decimal{}, err
	}
	if e := price.Exponent(); e < -30 {
		return decimal.Decimal{}, limit.Check(fn, "exponent of the price", float64(e), "", -30, 30, "a price")
	}
	g := pack.Quantity().In(units.Gram)
	if err := limit.Check(fn, "pack", g, "g", 1e-3, amount.MostMass, "a pack"); err != nil {
		return decimal.Decimal{}, err
	}
	f := Of(m)
	yield := f.shares().sugar() * f.Yield().Ethanol().In(units.Fraction)
	if err := limit.Check(fn, "ethanol yield", yield, "g/g", 0.001, 1, "a fermentable"); err != nil {
		return decimal.Decimal{}, err
	}
	return price.DivRound(decimal.NewFromFloat(g*yield), places), nil
}

// VolumeTaken returns how much a volume of water grows when a mass of f is dissolved in
// it, at 20 °C: about 0.62 L for each kilogram of sugar.
//
//   - Source: densities of [gravity.Solution].
//   - Range: a liquid that a formula covers; beyond it the error is a
//     [*units.RangeError].
func (f Fermentable) VolumeTaken(m, water units.Mass) (units.Volume, error) {
	const fn = "sugar.Fermentable.VolumeTaken"
	if err := limit.Check(fn, "water", water.In(units.Kilogram), "kg", 1e-6, amount.MostVolume, "water to dissolve it in"); err != nil {
		return units.Volume{}, err
	}
	before, err := gravity.Solution{}.AddWater(water)
	after := before
	if err == nil {
		after, err = f.AddTo(before, m)
	}
	if err != nil {
		return units.Volume{}, limit.Named(fn, err)
	}
	return after.VolumeAt20().Minus(before.VolumeAt20()), nil
}
