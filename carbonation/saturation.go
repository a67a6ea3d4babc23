package carbonation

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Triple point of CO2, °C (Span & Wagner 1996, table 3).
const tripleCelsius = 216.592 - chemistry.ZeroCelsius

const criticalCelsius = dioxide.CriticalKelvin - chemistry.ZeroCelsius

// SaturationPressure returns the pressure over liquid CO2: what a cylinder
// shows while any liquid is left in it, however full it is. So the gauge shows
// the temperature, not the contents; a cylinder is weighed.
//
//   - Source: R. Span & W. Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509, eq.
//     3.13.
//   - Range: −56.558 °C (triple point) to 30.9782 °C (critical point). Above it
//     there is no liquid and the pressure depends on how full the cylinder is;
//     the error is a [*units.RangeError].
//   - Units: absolute pressure.
//   - Uncertainty: 0.012 % (source, table 5); the ancillary fit kept with the
//     equation of state agrees to 0.01 %.
func SaturationPressure(t units.Temperature) (units.AbsolutePressure, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("carbonation.SaturationPressure", "temperature", c, "°C", tripleCelsius, criticalCelsius, dioxide.SpanWagner); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.Kilopascal.Of(checked.Number(saturation(c + chemistry.ZeroCelsius))), nil
}

// saturation is in kPa, T in K.
func saturation(T float64) float64 {
	th := math.Max(1-T/dioxide.CriticalKelvin, 0) // the critical point itself may be rounded up
	return dioxide.CriticalKPa * math.Exp(dioxide.CriticalKelvin/T*(-7.0602087*th+1.9391218*th*math.Sqrt(th)-
		1.6463597*th*th-3.2995634*th*th*th*th)) // eq. 3.13
}

// SaturationTemperature returns the temperature at which liquid and gas CO2
// stand at the absolute pressure p, the inverse of [SaturationPressure].
//
//   - Source: as [SaturationPressure].
//   - Range: 518 kPa (triple point) to 7377.3 kPa; beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure.
//   - Uncertainty: as [SaturationPressure].
func SaturationTemperature(p units.AbsolutePressure) (units.Temperature, error) {
	kpa := p.In(units.Kilopascal)
	low := saturation(tripleCelsius + chemistry.ZeroCelsius)
	if err := limit.Check("carbonation.SaturationTemperature", "pressure", kpa, "kPa absolute", low, dioxide.CriticalKPa, dioxide.SpanWagner); err != nil {
		return units.Temperature{}, err
	}
	T, err := numeric.Root(func(T float64) float64 { return saturation(T) - kpa },
		tripleCelsius+chemistry.ZeroCelsius, dioxide.CriticalKelvin, 0)
	if err != nil { // not reached: the ends of the search were checked
		return units.Temperature{}, err
	}
	return units.Celsius.Of(checked.Number(T - chemistry.ZeroCelsius)), nil
}
