package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// OriginalExtract returns the original extract of a liquid from its strength and
// real extract, for this yield.
//
//   - Source: the balance of [Yield]: the wort weighed as much as 100 g of the liquid
//     with the CO2 and yeast that went, and held the extract that is left, less the
//     residue, and that which was used. With [BallingYield] it is
//     Balling's p = 100·(2.0665·A + n)/(100 + 1.0665·A) to 0.002 °P. It is what a hydrometer showed, as
//     [Fermentation.OriginalExtract]: glucose shows 0.2 °P less than its mass at 10 %, 0.5
//     less at 30 %, fructose 0.1 more.
//   - Range: strength 0 to 20 % mass, real extract 0 to 60 °P; beyond it, or when the
//     residue of that much ethanol is more than the real extract, the error is a
//     [*units.RangeError].
func (y Yield) OriginalExtract(a units.StrengthByMass, real units.Extract) (units.Extract, error) {
	const fn = "gravity.Yield.OriginalExtract"
	x, n := a.In(units.PercentMass), real.In(units.DegreePlato)
	if err := y.check(fn); err != nil {
		return units.Extract{}, err
	}
	if err := limit.Check(fn, "strength", x, "% mass", 0, 20, "a fermented liquid"); err != nil {
		return units.Extract{}, err
	}
	used := x / y.ethanol
	if err := limit.Check(fn, "real extract", n, "°P", used*y.residue*(1-rounding), 60, "the residue of the fermentation at least"); err != nil {
		return units.Extract{}, err
	}
	p := 100 * (n + used*(1-y.residue)) / (100 + used*(y.co2+y.biomass))
	k := y.sugar()
	if k == AsSucrose {
		return plato(p), nil
	}
	if err := limit.Check(fn, "original extract", p, "% mass", 0, lighters[k].most, sourceCRC); err != nil {
		return units.Extract{}, err
	}
	s := syrup20
	s.change(k, 1)
	return plato(100 * syrup20.fraction(s.density(p/100))), nil
}
