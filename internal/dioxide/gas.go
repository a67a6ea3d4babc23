package dioxide

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// GasDensity returns the density of CO2 gas.
//
//   - Source: virial series with the second and third coefficients of Span & Wagner
//     (1996), reverted to powers of pressure.
//   - Range: −10 to 100 °C, 0 to 2000 kPa absolute, which is below saturation
//     everywhere; beyond it the error is a [*units.RangeError].
//   - Units: absolute pressure; kg/m³, which is g/L.
//   - Uncertainty: within 0.01 % of the whole equation of state to 600 kPa from
//     0 °C on, within 0.2 % to 2000 kPa (0.5 % at −10 °C).
func GasDensity(t units.Temperature, p units.AbsolutePressure) (units.Density, error) {
	s, T, err := CheckGas("dioxide.GasDensity", t, p)
	if err != nil {
		return units.Density{}, err
	}
	kpa := p.In(units.Kilopascal)
	rho := chemistry.CO2 * kpa / (chemistry.Gas * T * s.Compressibility(kpa)) // kPa·g/(L·kPa) = g/L
	return units.KilogramPerCubicMetre.Of(checked.Number(rho)), nil
}

// FugacityCoefficient returns the fugacity of CO2 gas over its pressure, a pure
// number below 1: what dissolves goes with the fugacity.
//
//   - Source: ln φ = ∫(Z−1)/p dp of the virial series, see [GasAt].
//   - Range: −10 to 100 °C, 0 to 2000 kPa absolute; beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure of the CO2.
//   - Uncertainty: within 0.001 % of the whole equation of state to 600 kPa from
//     0 °C on, within 0.1 % to 2000 kPa.
func FugacityCoefficient(t units.Temperature, p units.AbsolutePressure) (phi float64, err error) {
	s, _, err := CheckGas("dioxide.FugacityCoefficient", t, p)
	if err != nil {
		return phi, err
	}
	return numeric.Exp(s.LogFugacity(p.In(units.Kilopascal))), nil
}

// CheckGas returns the series of the gas and T in K, or refuses a temperature or a pressure
// for the function fn.
func CheckGas(fn string, t units.Temperature, p units.AbsolutePressure) (s Series, T float64, err error) {
	c, kpa := t.In(units.Celsius), p.In(units.Kilopascal)
	if err := limit.Check(fn, "temperature", c, "°C", gasColdest, gasWarmest, gasRange); err != nil {
		return s, T, err
	}
	if err := limit.Check(fn, "pressure", kpa, "kPa absolute", 0, Highest, gasRange); err != nil {
		return s, T, err
	}
	return GasAt(1 / (c + chemistry.ZeroCelsius)), c + chemistry.ZeroCelsius, nil
}
