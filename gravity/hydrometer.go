package gravity

import (
	"cmp"
	"math"

	"example.org/zymase/units"
)

// Hydrometer is a glass hydrometer with a scale of specific gravity. The zero
// value is one for 20/20 °C.
type Hydrometer struct {
	// Reference is what the scale stands for.
	Reference Reference
}

// glassExpansion is the cubic expansion of the soda-lime glass of hydrometers and
// pycnometers, per kelvin: ISO 1768:1975, Glass hydrometers, conventional value for
// the thermal cubic expansion coefficient, 0.000 025 (read). Borosilicate has 10e-6; at 20 K off
// the reference the two differ by 0.0003 in gravity.
const glassExpansion = 25e-6

// Reading returns what the hydrometer shows in a liquid at a temperature.
//
//   - Source: a floating body displaces its own mass; its volume grows with
//     1 + 25e-6·(t − reference) (ISO 1768:1975, read); density of the
//     liquid as [Solution.Density].
//   - Range: that of [Solution.Density]; otherwise the error is a
//     [*units.RangeError]. An unknown reference is a [*units.NameError].
//   - Uncertainty: half a division of the scale, 0.001 for a common instrument, and
//     its error, often as much.
func (h Hydrometer) Reading(s Solution, t units.Temperature) (float64, error) {
	const fn = "gravity.Hydrometer.Reading"
	rho, err := s.densityAt(fn, t)
	if err = cmp.Or(references.Check(fn, h.Reference), err); err != nil {
		return 0, err
	}
	return rho * h.per(t), nil
}

// per is the reading for a density of 1 kg/m³ at t.
func (h Hydrometer) per(t units.Temperature) float64 {
	at := referenceTemperatures[h.Reference]
	return (1 + glassExpansion*(t.In(units.Celsius)-at.liquid)) / waterAt(at.water)
}

// Correct returns the gravity at 20/20 °C of a liquid in which the hydrometer shows
// a reading at a temperature. A fermented liquid expands more than wort of the same
// gravity, so its strength is asked for; a guess within 1 % vol will do.
//
//   - Source: as [Hydrometer.Reading], solved for the extract (counted as sucrose)
//     that gives the reading with this strength.
//   - Range: 0 to 100 °C without ethanol, 0 to 40 °C and up to 23 % vol with it;
//     readings from a liquid of −10 °P to one of 60 °P (30 °P with ethanol), where
//     below zero the formula is continued as in [Gravity.Extract]. Beyond it the
//     error is a [*units.RangeError].
//   - Uncertainty: that of the reading; a strength wrong by 1 % vol adds 0.0002 at
//     30 °C.
func (h Hydrometer) Correct(reading float64, strength units.StrengthByVolume, t units.Temperature) (Gravity, error) {
	const fn = "gravity.Hydrometer.Correct"
	if err := references.Check(fn, h.Reference); err != nil {
		return Gravity{}, err
	}
	return gravityAt(fn, "reading", "", reading, h.per(t), t, strength)
}

// A warm liquid has v kg of ethanol in a m³ at 20 °C, and any extract.
type warm struct {
	m mixture
	y syrup
	v float64
}

// at20 returns the mass fraction of ethanol and the density at 20 °C for a mass
// fraction of extract. The density hardly depends on the fraction, so that the
// steps close in at once.
func (w *warm) at20(x float64) (e, rho float64) {
	rho = syrup20.density(x)
	for range mostSteps {
		e = w.v / rho
		next := blend(&mixture20, &syrup20, e, x)
		if math.Abs(next-rho) < nearly { // the error of the next is far smaller
			return e, next
		}
		rho = next
	}
	return e, rho
}

func (w *warm) density(x float64) float64 {
	e, _ := w.at20(x)
	return blend(&w.m, &w.y, e, x)
}
