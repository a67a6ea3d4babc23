package dioxide

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WineEU is where the relation for wine is from.
const WineEU = "EU methods for wine"

// WineContent returns the content of a sparkling wine from its pressure at 20 °C,
// after the method of analysis that EU law had until 2009.
//
//   - Source: Regulation (EEC) 2676/90 (1990, in force until 2009; since then EU law refers
//     to the methods of the OIV), Community methods for the analysis of wines, carbon dioxide: 1.951e-5·P·(0.86 − 0.01·A)·(1 − 0.00144·S), P in
//     Pa at 20 °C, A in % vol, S sugar in g/L.
//   - Range: 0 to 20 % vol, 0 to 200 g/L of sugar, 0.5 to 10 bar absolute; beyond it
//     the error is a [*units.RangeError]. The text gives no range.
//   - Units: absolute pressure at 20 °C, from which neither vapours nor air are
//     taken; g/L.
//   - Uncertainty: not stated. In water it is 2 % below the Content of carbonation.Liquid; each % vol
//     takes 1.16 %, each g/L of sugar 0.144 % of it.
func WineContent(at20 units.AbsolutePressure, strength units.StrengthByVolume, sugar units.MassConcentration) (units.CarbonDioxideContent, error) {
	const fn = "dioxide.WineContent"
	k, err := wine(fn, strength, sugar)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	bar := at20.In(units.Bar)
	if err := limit.Check(fn, "pressure", bar, "bar absolute", wineLeast, wineMost, WineEU); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return grams(k * bar), nil
}

const wineLeast, wineMost = 0.5, 10 // bar absolute

// wine is in g/(L·bar).
func wine(fn string, strength units.StrengthByVolume, sugar units.MassConcentration) (k float64, err error) {
	a, s := strength.In(units.PercentVolume), sugar.In(units.GramPerLitre)
	if err := limit.Check(fn, "strength", a, "% vol", 0, 20, WineEU); err != nil {
		return k, err
	}
	if err := limit.Check(fn, "sugar", s, "g/L", 0, 200, WineEU); err != nil {
		return k, err
	}
	return 1.951 * (0.86 - 0.01*a) * (1 - 0.00144*s), nil
}

// WinePressure returns the absolute pressure at 20 °C of a content, the inverse of
// [WineContent].
//
//   - Source, range, units, uncertainty: as [WineContent].
func WinePressure(content units.CarbonDioxideContent, strength units.StrengthByVolume, sugar units.MassConcentration) (units.AbsolutePressure, error) {
	const fn = "dioxide.WinePressure"
	k, err := wine(fn, strength, sugar)
	if err != nil {
		return units.AbsolutePressure{}, err
	}
	g := content.In(units.GramCO2PerLitre)
	if err := limit.Check(fn, "content", g, "g/L", wineLeast*k*(1-rounding), wineMost*k*(1+rounding), WineEU); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.Bar.Of(checked.Number(g / k)), nil
}
