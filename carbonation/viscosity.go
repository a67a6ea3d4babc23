package carbonation

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Viscosity returns the viscosity of a drink in mPa·s.
//
//   - Source: water: J. Kestin, M. Sokolov & W. A. Wakeham, J. Phys. Chem. Ref. Data
//     7 (1978) 941, eq. 15, with 1.002 mPa·s at 20 °C; recalled from memory. Ethanol
//     and extract: 4.1 % for each % mass of ethanol and 2.8 % for each of
//     extract, from the CRC Handbook's tables at 20 °C; recalled from memory.
//   - Range: −2 to 90 °C, drinks of [NewLiquid]; beyond it the error is a
//     [*units.RangeError].
//   - Units: mPa·s.
//   - Uncertainty: 1 % for water, 10 % for a drink, of which a quarter goes into the
//     friction of a turbulent line.
func Viscosity(s gravity.Solution, t units.Temperature) (mu float64, err error) {
	if _, err := NewLiquid(s); err != nil {
		return mu, err
	}
	c := t.In(units.Celsius)
	if err := limit.Check("carbonation.Viscosity", "temperature", c, "°C", coldest, warmest, "Kestin et al. 1978"); err != nil {
		return mu, err
	}
	ethanol, extract := s.ByMass().In(units.PercentMass), s.RealExtract().In(units.DegreePlato)
	return waterViscosity(c) * math.Exp(0.041*ethanol+0.028*extract), nil
}

// waterViscosity is in mPa·s, c in °C.
func waterViscosity(c float64) float64 {
	d := 20 - c
	return 1.002 * math.Pow(10, d/(c+96)*(1.2378-1.303e-3*d+3.06e-6*d*d+2.55e-8*d*d*d)) // eq. 15
}
