package rival

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Balling's numbers in the modern form, in grams for 1 g of ethanol.
const (
	ballingExtract = 2.0665 // extract used
	ballingLoss    = 1.0665 // CO2 0.9565 and yeast 0.11
	sourceBalling  = "Balling 1865"
)

// OriginalExtractBalling returns the original extract of a beer from its strength
// and real extract.
//
//   - Source: C. J. N. Balling, Die Gährungschemie (1865);
//     p = 100·(2.0665·A + n)/(100 + 1.0665·A), A % mass of ethanol, n real extract.
//   - Range: strength 0 to 20 % mass, real extract 0 to 40 °P; beyond it the error is
//     a [*units.RangeError]. It holds for malt wort; for a sugar wash see
//     gravity.Yield.OriginalExtract.
//   - Uncertainty: measured beers scatter by up to 0.6 °P (USDA Bulletin 493 (1917)).
func OriginalExtractBalling(a units.StrengthByMass, real units.Extract) (units.Extract, error) {
	const fn = "rival.OriginalExtractBalling"
	x, n := a.In(units.PercentMass), real.In(units.DegreePlato)
	if err := limit.Check(fn, "strength", x, "% mass", 0, 20, sourceBalling); err != nil {
		return units.Extract{}, err
	}
	if err := limit.Check(fn, "real extract", n, "°P", 0, 40, sourceBalling); err != nil {
		return units.Extract{}, err
	}
	return plato(100 * (ballingExtract*x + n) / (100 + ballingLoss*x)), nil
}

// StrengthBalling returns the strength of a beer from its original and real
// extract: the inverse of [OriginalExtractBalling].
//
//   - Source: Balling 1865: A = (p − n)/(2.0665 − 0.010665·p).
//   - Range: original extract 0 to 40 °P, real extract 0 to the original; beyond it
//     the error is a [*units.RangeError].
//   - Uncertainty: as [OriginalExtractBalling].
func StrengthBalling(original, real units.Extract) (units.StrengthByMass, error) {
	const fn = "rival.StrengthBalling"
	p, n := original.In(units.DegreePlato), real.In(units.DegreePlato)
	if err := limit.Check(fn, "original extract", p, "°P", 0, 40, sourceBalling); err != nil {
		return units.StrengthByMass{}, err
	}
	if err := limit.Check(fn, "real extract", n, "°P", 0, p, "real extract is not above the original"); err != nil {
		return units.StrengthByMass{}, err
	}
	return percentMass((p - n) / (ballingExtract - ballingLoss/100*p)), nil
}

// RealExtractBalling returns the real extract of a beer from its original extract
// and strength.
//
//   - Source: Balling 1865, solved for n.
//   - Range: original extract 0 to 40 °P, strength from 0 to that of complete
//     fermentation; beyond it the error is a [*units.RangeError].
//   - Uncertainty: as [OriginalExtractBalling].
func RealExtractBalling(original units.Extract, a units.StrengthByMass) (units.Extract, error) {
	const fn = "rival.RealExtractBalling"
	p, x := original.In(units.DegreePlato), a.In(units.PercentMass)
	if err := limit.Check(fn, "original extract", p, "°P", 0, 40, sourceBalling); err != nil {
		return units.Extract{}, err
	}
	if err := limit.Check(fn, "strength", x, "% mass", 0, p/(ballingExtract-ballingLoss/100*p), "all extract fermented, Balling 1865"); err != nil {
		return units.Extract{}, err
	}
	return plato(max(0, p*(1+ballingLoss/100*x)-ballingExtract*x)), nil
}
