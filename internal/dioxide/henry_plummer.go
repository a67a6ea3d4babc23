package dioxide

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

const plummer = "Plummer & Busenberg 1982"

// HenryPlummerBusenberg returns the CO2 that a kilogram of water takes up at a
// fugacity of 1 atm. It is the constant behind the Content of carbonation.Liquid, because it is
// one smooth formula from the cold store to the pasteuriser and agrees with
// [HenryWeiss], the best measured one, within 0.5 % to 30 °C and 0.8 % at 40 °C.
//
//   - Source: L. N. Plummer & E. Busenberg, Geochim. Cosmochim. Acta 46 (1982)
//     1011, as carried by the USGS WATEQ4F data base:
//     log K = 108.3865 + 0.01985076·T − 6919.53/T − 40.45154·log T + 669365/T².
//   - Range: 0 to 90 °C (source), here from −2 °C, as drinks are stored just
//     below zero: at −1 °C it is within 0.5 % of [HenryWeiss], which was fitted
//     from there. Beyond it the error is a [*units.RangeError].
//   - Units: mol/(kg water·atm).
//   - Uncertainty: published correlations spread by 3 % at 0 °C, 1 to 2 % from
//     15 to 40 °C. Above that this one holds less than [HenryCarroll] and IAPWS G7-04
//     (2004), which agree: 3 % less at 60 °C, 4.6 % at 90 °C.
func HenryPlummerBusenberg(t units.Temperature) (k float64, err error) {
	c := t.In(units.Celsius)
	if err := limit.Check("dioxide.HenryPlummerBusenberg", "temperature", c, "°C", Coldest, Warmest, plummer); err != nil {
		return k, err
	}
	return numeric.Exp(LogHenry(c+chemistry.ZeroCelsius, 1/(c+chemistry.ZeroCelsius))), nil
}

// Coldest and Warmest liquid, °C.
const (
	Coldest = -2
	Warmest = 90
)

// LogHenry is ln of the constant in mol/(kg·atm), T in K, u = 1/T.
func LogHenry(T, u float64) float64 {
	const a, b, c, d, e = 108.3865, 0.01985076, -6919.53, -40.45154, 669365
	return math.Ln10*(a+b*T+u*(c+e*u)) + d*logKelvin(T) // log K = a + bT + c/T + d·log T + e/T²
}

// logKelvin is ln T to 1e-13 between −2 °C and 90 °C, in a third of the time of
// math.Log: ln T = ln T0 + 2·artanh((T−T0)/(T+T0)).
func logKelvin(T float64) float64 {
	const t0, lnT0 = 315, 5.752572638825633
	z := (T - t0) / (T + t0)
	y := z * z
	return lnT0 + 2*z*((1+y*(1./3))+y*y*((1./5+y*(1./7))+y*y*(1./9)))
}
