package carbonation

import (
	"cmp"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Liquid is the drink as CO2 sees it: how much water there is in a litre of it,
// how its vapours stand against those of pure water and ethanol, and where it freezes. The zero
// value is pure water.
//
// CO2 is taken to dissolve in the water of the drink as in pure water: Henry's
// law on the molal scale, without a term for the ethanol and the sugar.
//
//   - Source: Henry's law per kilogram of solvent; the published ways to put
//     ethanol and extract in disagree by 15 % for a beer and this lies in their
//     midst: 3.5 % above the EU/OIV wine relation; 3 % above the 2.4 g/(L·bar)
//     measured on a lager at 6 °C and 3 % below the 2.1 g/(L·bar) on champagne at
//     10 °C (Liger-Belair & Cilindre, ACS Omega 6 (2021) 9672, table 1); 2 to 6 %
//     below the printed beer chart for the beer that Speers & MacIntosh, J. Am. Soc.
//     Brew. Chem. 71 (2013) 242, found to stand behind it.
//   - Range: 0 to 20 % vol, 0 to 30 % mass of extract.
//   - Uncertainty: 1 % of the content for each % vol and for each 12 g/L of
//     extract, at most about 6 %; see [Compare].
type Liquid struct {
	dry     float64 // kg/L at 20 °C that the water falls short of pure water
	wet     float64 // share of the vapour pressure of pure water that is missing
	ethanol float64 // share of the vapour pressure of pure ethanol
	freezes float64 // °C
}

// Density of water at 20 °C and 101.325 kPa, kg/L (Tanaka et al., Metrologia 38
// (2001) 301).
const waterAt20 = 0.998207

// NewLiquid returns the drink that a solution is. Sweetened drinks, wine and beer
// are in its range, spirits and syrups are not.
//
//   - Source: see [Liquid].
//   - Range: above zero mass; 0 to 20 % vol, 0 to 30 % mass of extract; beyond it the
//     error is a [*units.RangeError].
//   - Uncertainty: see [Liquid].
func NewLiquid(s gravity.Solution) (Liquid, error) {
	const fn, source = "carbonation.NewLiquid", "EU/OIV wine relation and printed beer chart"
	if err := cmp.Or(
		limit.Check(fn, "mass", s.Mass().In(units.Kilogram), "kg", 1e-9, 1e12, "a drink has a mass"),
		limit.Check(fn, "strength", s.ByVolume().In(units.PercentVolume), "% vol", 0, mostStrength*(1+1e-9), source),
		limit.Check(fn, "extract", s.RealExtract().In(units.DegreePlato), "% mass", 0, mostExtract*(1+1e-9), source),
	); err != nil {
		return Liquid{}, err
	}
	simple := s.ExtractOf(gravity.AsGlucose).In(units.Kilogram) + s.ExtractOf(gravity.AsFructose).In(units.Kilogram)
	sugar := simple/chemistry.Hexose + (s.Extract().In(units.Kilogram)-simple)/chemistry.Sucrose
	water := s.Water().In(units.Kilogram)
	ethanol := s.Ethanol().In(units.Kilogram) / chemistry.Ethanol
	aw, ae := activities(water/chemistry.Water, ethanol, sugar)
	return Liquid{
		dry: waterAt20 - water/s.VolumeAt20().In(units.Litre), wet: 1 - aw, ethanol: ae,
		freezes: freezesAt(water/chemistry.Water, ethanol, sugar),
	}, nil
}

// vapours is the pressure of water and ethanol vapour in kPa, T in K, u = 1/T.
func (l Liquid) vapours(T, u float64) float64 {
	p := (1 - l.wet) * waterVapour(T, u)
	if l.ethanol != 0 {
		p += l.ethanol * ethanolVapour(T)
	}
	return p
}
