package gravity

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// SucroseExtract returns the extract of a solution of sucrose in water from its
// density: the inverse of [SucroseDensity].
//
//   - Source: ICUMSA SPS-4 (1994), solved for the mass fraction.
//   - Range: the densities of 0 to 80 % mass at 0 to 100 °C; beyond it the error
//     is a [*units.RangeError]. For a liquid lighter than water see
//     [Gravity.Extract].
//   - Uncertainty: 0.1 kg/m³ in density is 0.025 % mass.
func SucroseExtract(d units.Density, t units.Temperature) (units.Extract, error) {
	const fn = "gravity.SucroseExtract"
	rho, c := d.In(units.KilogramPerCubicMetre), t.In(units.Celsius)
	if err := limit.Check(fn, "temperature", c, "°C", 0, 100, sourceSPS4); err != nil {
		return units.Extract{}, err
	}
	var s syrup
	s.at(c)
	if err := limit.Check(fn, "density", rho, "kg/m³", s[0], s.density(mostSucrose/100), sourceSPS4); err != nil {
		return units.Extract{}, err
	}
	return plato(100 * clamp(s.fraction(rho), 0, mostSucrose/100)), nil
}

// fraction finds the mass fraction whose density is rho; it may be below zero.
// The density rises with the fraction from −0.7 to 0.8 at every temperature.
// Three or four Newton steps from the first terms of the inverse series.
func (s *syrup) fraction(rho float64) float64 {
	x := (rho - s[0]) / s[1]
	b := x * (1 - x*s[2]/s.slope(x))
	for range mostSteps {
		step := (s.density(b) - rho) / s.slope(b)
		b -= step
		if math.Abs(step) < nearly { // the error after this step is its square
			break
		}
	}
	return b
}
