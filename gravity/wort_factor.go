package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WortFactor returns how many degrees Brix a refractometer shows for each degree Plato of
// malt wort, 1.04, with the standard uncertainty that its published spread leaves, 0.02.
// Maltose, larger sugars and salts bend light more than the sucrose that the scale is made
// for. A sugar wash has 1, known. Find that of your own wort and instrument by reading a
// hydrometer and the refractometer in the same wort.
//
//   - Source: 1.04 (common practice, no source), 1.00 to 1.06 from wort to wort and
//     instrument to instrument (same). Starch syrup shows 1.03 to 1.05 of its solids from 2
//     to 30 % (ISO 1743 as GOST R 50546-93; read).
func WortFactor() units.MeasuredNumber {
	f, _ := units.Measure(units.One.Of(1.04), units.One.Of(0.02)) // no error: both are finite
	return f
}

// checkFactor refuses a factor that no wort has.
func checkFactor(fn string, factor float64) error {
	return limit.Check(fn, "wort factor", factor, "°Bx/°P", 0.95, 1.1, "1 for a sugar wash, 1.00 to 1.06 for malt wort (common practice)")
}
