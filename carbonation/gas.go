package carbonation

import (
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
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
func GasDensity(p units.AbsolutePressure, t units.Temperature) (units.Density, error) {
	d, err := dioxide.GasDensity(t, p)
	return d, limit.Named("carbonation.GasDensity", err)
}
