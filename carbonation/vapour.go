package carbonation

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// WaterVapourPressure returns the pressure of water vapour over water.
//
//   - Source: W. Wagner & A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, eq. 1
//     (IAPWS SR1-86(1992)).
//   - Range: 0.01 to 374 °C (source), here −2 to 90 °C: over supercooled water
//     the formula runs on smoothly. Beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure.
//   - Uncertainty: 0.025 % (source); below 0 °C not stated.
func WaterVapourPressure(t units.Temperature) (units.AbsolutePressure, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("carbonation.WaterVapourPressure", "temperature", c, "°C", coldest, warmest, "Wagner & Pruss 1993"); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.Kilopascal.Of(checked.Number(waterVapour(c+chemistry.ZeroCelsius, 1/(c+chemistry.ZeroCelsius)))), nil
}

// waterVapour is in kPa, T in K, u = 1/T.
func waterVapour(T, u float64) float64 { return criticalWater * numeric.Exp(logWater(T, u)) }

const criticalWater = 22064 // kPa

// logWater is ln(p/pc), u = 1/T.
func logWater(T, u float64) float64 {
	const criticalT = 647.096 // K
	v := 1 - T*(1/criticalT)
	h := math.Sqrt(v)
	v2 := v * v
	v3 := v2 * v
	return criticalT * u * v * ((-7.85951783 + 1.84408259*h) + v2*((-11.7866497+22.6807411*h)-
		15.9618719*v+1.80122502*v3*v*h)) // eq. 1
}

// EthanolVapourPressure returns the pressure of ethanol vapour over pure
// ethanol.
//
//   - Source: Antoine equation log(p/bar) = 5.37229 − 1670.409/(T − 40.191),
//     fitted by the NIST Chemistry WebBook to C. B. Kretschmer & R. Wiebe, J. Am.
//     Chem. Soc. 71 (1949) 1793; the constants were read
//     in five codes that name the WebBook, and checked against the boiling point.
//   - Range: 0 to 78.6 °C (source), here −2 to 90 °C; beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure.
//   - Uncertainty: about 1 %; over a drink it is at most a twentieth of that in
//     the total.
func EthanolVapourPressure(t units.Temperature) (units.AbsolutePressure, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("carbonation.EthanolVapourPressure", "temperature", c, "°C", coldest, warmest, "Kretschmer & Wiebe 1949"); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.Kilopascal.Of(checked.Number(ethanolVapour(c + chemistry.ZeroCelsius))), nil
}

// ethanolVapour is in kPa, T in K.
func ethanolVapour(T float64) float64 { return kPaPerBar * numeric.Exp(logEthanol(T)) }

const kPaPerBar = 100

// logEthanol is ln(p/bar).
func logEthanol(T float64) float64 {
	const a, b, c = 5.37229 * math.Ln10, 1670.409 * math.Ln10, -40.191
	return a - b/(T+c)
}

// activities returns how much of the pure vapour pressures water and ethanol
// keep in their mixture, from amounts in mol.
//
//   - Source: van Laar's equation, ln γ1 = A12/(1 + A12·x1/(A21·x2))², with A12 =
//     1.6798 (ethanol) and A21 = 0.9227 (water) of J. Gmehling & U. Onken,
//     Vapor–Liquid Equilibrium Data Collection, DECHEMA (1977); recalled from
//     memory, checked against measured boiling points.
//   - Range: fitted at 1 atm, 78 to 100 °C; in the cold ethanol is up to 40 % less
//     volatile, 0.2 kPa in a drink of 5 % vol at 25 °C.
//   - Units: pure numbers. Sugar only thins the two.
func activities(water, ethanol, sugar float64) (aw, ae float64) {
	const a12, a21 = 1.6798, 0.9227
	if ethanol == 0 {
		return water / (water + sugar), 0
	}
	x1, x2 := ethanol/(water+ethanol), water/(water+ethanol)
	e := a12 / (1 + a12*x1/(a21*x2))
	w := a21 / (1 + a21*x2/(a12*x1))
	e, w = e*e/a12, w*w/a21
	all := water + ethanol + sugar
	return math.Exp(w) * water / all, math.Exp(e) * ethanol / all
}
