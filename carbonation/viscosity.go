package carbonation

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Viscosity returns the viscosity of a drink.
//
//   - Source: water: J. Kestin, M. Sokolov & W. A. Wakeham, J. Phys. Chem. Ref. Data
//     7 (1978) 941, eq. 15, with 1.002 mPa·s at 20 °C. Ethanol: our fit to the table
//     of E. C. Bingham & R. F. Jackson, Bull. Bur. Stand. 14 (1918) 59, at 0, 20, 40,
//     60 and 80 °C, 10 and 20 % mass. Extract: our fit to the sucrose of the CRC
//     Handbook at 20 % mass and 0, 20, 40 and 80 °C, and at 5 and 30 % mass and 20 °C.
//     The rows between are kept for the check. With both in a drink the logarithms add
//     up, which has no source.
//   - Range: drinks of [NewLiquid]; water −2 to 90 °C, with ethanol or extract −2 to
//     80 °C, of which 0 to 80 °C is measured; extract over 24 % mass was measured at
//     20 °C only. Beyond it the error is a [*units.RangeError].
//   - Units: mPa·s.
//   - Uncertainty: 1 % for water; 2 % of the tables for ethanol up to 16 % mass, and
//     for sucrose; 15 % for a drink: dextrin makes a lager 14 % thicker (G. Liger-Belair
//     & C. Cilindre, ACS Omega 6 (2021) 9672, table 1), bubbles are not counted. A quarter
//     of it goes into the friction of a turbulent line.
func Viscosity(s gravity.Solution, t units.Temperature) (units.DynamicViscosity, error) {
	if _, err := NewLiquid(s); err != nil {
		return units.DynamicViscosity{}, limit.Named("carbonation.Viscosity", err)
	}
	c, hottest, source := t.In(units.Celsius), float64(warmest), "Kestin et al. 1978"
	ethanol, extract := s.ByMass().In(units.PercentMass), s.RealExtract().In(units.DegreePlato)
	if ethanol > 0 || extract > 0 {
		hottest, source = warmestThick, "Bingham & Jackson 1918, ethanol; CRC Handbook, sucrose"
	}
	if err := limit.Check("carbonation.Viscosity", "temperature", c, "°C", coldest, hottest, source); err != nil {
		return units.DynamicViscosity{}, err
	}
	return units.MillipascalSecond.Of(checked.Number(waterViscosity(c) * math.Exp(ethanolThickens(c, ethanol)+extractThickens(c, extract)))), nil
}

// warmestThick is where the tables of ethanol and sucrose end, °C.
const warmestThick = 80

// waterViscosity is in mPa·s, c in °C.
func waterViscosity(c float64) float64 {
	d := 20 - c
	return 1.002 * math.Pow(10, d/(c+96)*(1.2378-1.303e-3*d+3.06e-6*d*d+2.55e-8*d*d*d)) // eq. 15
}

// ethanolThickens is the logarithm of the viscosity over that of water, c in °C, w in %
// mass: a fit to Bingham & Jackson.
func ethanolThickens(c, w float64) float64 {
	return 0.06784 * w * (1 - 0.00997*w) * math.Exp(-0.01748*c+4.442e-5*c*c)
}

// extractThickens is the same for sucrose: a fit to the CRC Handbook.
func extractThickens(c, w float64) float64 {
	return 0.02685 * w / (1 - 0.0102*w) * math.Exp(-0.004963*(c-20))
}
