package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WaterDensity returns the density of air-free water at 101.325 kPa. It is the
// water term of the sucrose formula, so it is the water of this package.
//
//   - Source: Bettin & Spieweck, PTB-Mitteilungen 100 (1990) 195: Kell's equation
//     on ITS-90; also the water term of ICUMSA SPS-4 (1994).
//   - Range: 0 to 100 °C; beyond it the error is a [*units.RangeError].
//   - Units: temperature on ITS-90.
//   - Uncertainty: 0.006 kg/m³ by its authors; it is 0.004 below Tanaka at 20 °C.
func WaterDensity(t units.Temperature) (units.Density, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("gravity.WaterDensity", "temperature", c, "°C", 0, 100, "Bettin & Spieweck 1990"); err != nil {
		return units.Density{}, err
	}
	return kgPerM3(waterAt(c)), nil
}

func waterAt(t float64) float64 {
	return (999.83952 + t*(16.952577+t*(-7.9905127e-3+t*(-46.241757e-6+t*(105.84601e-9-t*281.03006e-12))))) /
		(1 + 16.887236e-3*t)
}
