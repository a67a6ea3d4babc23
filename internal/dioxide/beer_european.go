package dioxide

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const european = "exponential form of European practice"

// EuropeanBeerContent returns the content of beer after the exponential form used in
// European brewing, whatever the beer's strength.
//
//   - Source: c = 10·(p + 1.013 bar)·exp(−10.73797 + 2617.25/T), p over the
//     atmosphere; recalled from memory. A printed chart in g/L without an author
//     agrees to its 0.1 g/L.
//   - Range: −1 to 25 °C, 0.5 to 5 bar absolute; beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure, g/L.
//   - Uncertainty: not stated; 0.04 volumes above the printed beer chart.
func EuropeanBeerContent(t units.Temperature, p units.AbsolutePressure) (units.CarbonDioxideContent, error) {
	const fn = "dioxide.EuropeanBeerContent"
	c, bar := t.In(units.Celsius), p.In(units.Bar)
	if err := limit.Check(fn, "temperature", c, "°C", europeanColdest, europeanWarmest, european); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	if err := limit.Check(fn, "pressure", bar, "bar absolute", europeanLeast, europeanMost, european); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return grams(bar * europeanHenry(c)), nil
}

const (
	europeanColdest, europeanWarmest = -1, 25 // °C, the printed chart
	europeanLeast, europeanMost      = 0.5, 5 // bar absolute
)

// europeanHenry is in g/(L·bar), c in °C.
func europeanHenry(c float64) float64 {
	return 10 * math.Exp(-10.73797+2617.25/(c+chemistry.ZeroCelsius))
}

// EuropeanBeerPressure returns the absolute pressure of a content, the inverse of
// [EuropeanBeerContent].
//
//   - Source, range, units, uncertainty: as [EuropeanBeerContent].
func EuropeanBeerPressure(t units.Temperature, content units.CarbonDioxideContent) (units.AbsolutePressure, error) {
	const fn = "dioxide.EuropeanBeerPressure"
	c, g := t.In(units.Celsius), content.In(units.GramCO2PerLitre)
	if err := limit.Check(fn, "temperature", c, "°C", europeanColdest, europeanWarmest, european); err != nil {
		return units.AbsolutePressure{}, err
	}
	h := europeanHenry(c)
	if err := limit.Check(fn, "content", g, "g/L", europeanLeast*h*(1-rounding), europeanMost*h*(1+rounding), european); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.Bar.Of(checked.Number(g / h)), nil
}
