package gravity

import (
	"cmp"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// FromApparentAndBrix returns the state from a hydrometer and a refractometer in the
// same fermented liquid, with nothing known of the wort but its factor; see
// [FromOriginalAndBrix].
//
//   - Source: density as [Solution.Gravity], index as [Solution.RefractiveIndex], both
//     solved for ethanol and sugar; the balance of the [Yield].
//   - Range: up to 15 % mass of ethanol; factor 0.95 to 1.1; readings of a liquid that the yield can make.
//     Otherwise the error is a [*units.RangeError].
//   - Uncertainty: poor: 0.0005 in gravity and 0.1 °Bx together are 0.3 % vol, and
//     whatever else is dissolved counts; 0.02 of the factor are 0.1 to 0.2 % vol in a beer.
func FromApparentAndBrix(apparent, read units.Extract, factor float64, y Yield) (Fermentation, error) {
	const fn = "gravity.FromApparentAndBrix"
	g, err := FromExtract(apparent)
	if err = cmp.Or(err, checkFactor(fn, factor)); err != nil {
		return Fermentation{}, limit.Named(fn, err)
	}
	want := read.In(units.DegreePlato)
	brix := func(e float64) (reading float64, err error) {
		f, err := fromGravityAndEthanol(fn, g, e, y)
		if err != nil {
			return reading, err
		}
		return f.liquid.shows(factor)
	}
	// The least ethanol that goes with the gravity: none, or what makes it that light.
	most, least := 0.15, 0.0
	if dry := func(e float64) float64 {
		s, _ := liquidOf(fn, e, 0, y)
		return s.Gravity().SG() - g.SG()
	}; dry(0) > 0 {
		if least, err = numeric.Root(dry, 0, most, sharp); err != nil { // lighter than 15 % mass, dry
			return Fermentation{}, limit.Check(fn, "apparent extract", apparent.In(units.DegreePlato), "°P", 0, 30, "15 % mass of ethanol, dry")
		}
		least = min(least+10*sharp, most)
	}
	lo, err := brix(least)
	if err != nil {
		return Fermentation{}, limit.Named(fn, err)
	}
	hi, err := brix(most)
	for range mostSteps { // so much ethanol may ask for more sugar than the formulas hold
		if err == nil {
			break
		}
		most = (least + most) / 2
		hi, err = brix(most)
	}
	if err = cmp.Or(err, limit.Check(fn, "refractometer reading with this gravity", want, "°Bx", lo-rounding, hi, sourceState)); err != nil {
		return Fermentation{}, limit.Named(fn, err)
	}
	if want <= lo {
		return fromGravityAndEthanol(fn, g, least, y)
	}
	e, err := numeric.Root(func(e float64) float64 {
		b, _ := brix(e)
		return b - want
	}, least, most, sharp)
	f, outside := fromGravityAndEthanol(fn, g, e, y)
	return checked.Unless(cmp.Or(err, outside), f)
}
