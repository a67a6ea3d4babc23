package gravity

import (
	"cmp"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// indexModel is the standard uncertainty of the refractive index of a liquid with
// ethanol and sugar: see [Solution.RefractiveIndex].
const indexModel = 0.0002

// Refractometer returns the gravity and strength of a fermenting liquid from the
// original extract, a Brix reading in it and the factor of its wort, each with an honest
// uncertainty: [WortFactor] for malt, 1 without any for a sugar wash.
//
//   - Source: [FromOriginalAndBrix]; uncertainty after JCGM 100:2008 of the two
//     readings, of the factor, of the yield (3 % of the ethanol) and of the index of three
//     substances (0.0002, which is 0.14 °Bx).
//   - Range: that of [FromOriginalAndBrix]; otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: with 0.1 °Bx in both readings about 0.0015 in gravity and 0.25 % vol
//     (k = 1): good for following a fermentation, not for a label. In malt wort of 12 °P the
//     spread of the factor adds 0.07 % vol if a hydrometer read the original, and 0.13 if
//     the same refractometer did. Haze and dark malt are worse.
func Refractometer(original, read units.MeasuredExtract, factor units.MeasuredNumber, y Yield) (units.MeasuredNumber, units.MeasuredStrength, error) {
	read, wide := read.Widened(plato(indexModel / 0.00145)) // 0.00145 per °Bx near 10
	// the ethanol of a gram of extract, 3 % either way
	part, off := units.Measure(units.One.Of(1), units.One.Of(0.03))
	state := func(x units.Trial) (Fermentation, error) {
		f, err := FromOriginalAndBrix(units.At(x, &original), units.At(x, &read), units.At(x, &factor).In(units.One), y.times(units.At(x, &part).In(units.One)))
		return f, limit.Named("gravity.Refractometer", err)
	}
	sg, err := units.Propagate(func(x units.Trial) (units.PureNumber, error) {
		f, err := state(x)
		return number(f.Gravity().SG()), err
	}, &original, &read, &factor, &part)
	if err = cmp.Or(wide, off, err); err != nil {
		return units.MeasuredNumber{}, units.MeasuredStrength{}, limit.Named("gravity.Refractometer", err)
	}
	abv, err := units.Propagate(func(x units.Trial) (units.StrengthByVolume, error) {
		f, err := state(x)
		return f.ByVolume(), err
	}, &original, &read, &factor, &part)
	return sg, abv, limit.Named("gravity.Refractometer", err)
}

// times returns a yield with k times the ethanol and CO2; the rest is yeast.
func (y Yield) times(k float64) Yield {
	gas := y.ethanol + y.co2
	k = min(k, (gas+y.biomass)/gas)
	y.ethanol *= k
	y.co2 *= k
	y.biomass += gas - y.ethanol - y.co2
	return y
}

// MeasuredGravity returns the gravity 20/20 °C from a reading, the temperature of the
// sample and a guess of its strength, with its standard uncertainty.
//
//   - Source: [Hydrometer.Correct], propagated after JCGM 100:2008.
//   - Range: that of [Hydrometer.Correct]; otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: half a division read is [units.ReadTo] of the division; add the error
//     of the instrument with Widened. A common one has divisions of 0.002 and errors of
//     0.002.
func (h Hydrometer) MeasuredGravity(reading units.MeasuredNumber, strength units.MeasuredStrength, t units.MeasuredTemperature) (units.MeasuredNumber, error) {
	m, err := units.Propagate(func(x units.Trial) (units.PureNumber, error) {
		g, err := h.Correct(units.At(x, &reading).In(units.One), units.At(x, &strength), units.At(x, &t))
		return number(g.SG()), limit.Named("gravity.Hydrometer.MeasuredGravity", err)
	}, &reading, &t, &strength)
	return m, limit.Named("gravity.Hydrometer.MeasuredGravity", err)
}
