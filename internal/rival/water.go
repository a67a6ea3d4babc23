package rival

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WaterDensityTanaka returns the density of air-free water at 101.325 kPa after
// the recommendation for metrology.
//
//   - Source: Tanaka, Girard, Davis, Peuto & Bignell, Metrologia 38 (2001) 301, eq. 1.
//   - Range: 0 to 40 °C; beyond it the error is a [*units.RangeError].
//   - Units: temperature on ITS-90.
//   - Uncertainty: below 0.001 kg/m³ (recalled from memory).
func WaterDensityTanaka(t units.Temperature) (units.Density, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("rival.WaterDensityTanaka", "temperature", c, "°C", 0, 40, "Tanaka et al. 2001"); err != nil {
		return units.Density{}, err
	}
	d := c - 3.983035
	return kgPerM3(999.97495 * (1 - d*d*(c+301.797)/(522528.9*(c+69.34881)))), nil // eq. 1
}

// WaterDensityKell returns the density of air-free water at 101.325 kPa on the
// older temperature scale.
//
//   - Source: Kell, J. Chem. Eng. Data 20 (1975) 97, eq. 16.
//   - Range: 0 to 150 °C; beyond it the error is a [*units.RangeError]. Above
//     100 °C the liquid is superheated.
//   - Units: temperature on IPTS-68, within 0.01 K of ITS-90 below 40 °C.
//   - Uncertainty: 0.02 kg/m³ to 100 °C (recalled from memory).
//   - Misprint: Jones & Harris, J. Res. NIST 97 (1992) 335 print the denominator
//     as 16.897850e-3; with that, water at 20 °C comes out as 997.94 kg/m³.
func WaterDensityKell(t units.Temperature) (units.Density, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("rival.WaterDensityKell", "temperature", c, "°C", 0, 150, "Kell 1975"); err != nil {
		return units.Density{}, err
	}
	return kgPerM3((999.83952 + c*(16.945176+c*(-7.9870401e-3+c*(-46.170461e-6+c*(105.56302e-9-c*280.54253e-12))))) /
		(1 + 16.879850e-3*c)), nil // eq. 16
}
