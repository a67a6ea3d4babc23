package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// BoilingPoint returns the temperature at which water boils under an absolute
// pressure: in the kettle, that of the atmosphere. Sugar raises it by 0.1 K at
// 10 % mass, which is not counted.
//
//   - Source: as [WaterVapourPressure], solved for the temperature.
//   - Range: 50 to 110 kPa (81 to 102 °C), above any town and below any shore;
//     beyond it the error is a [*units.RangeError].
//   - Units: absolute pressure.
//   - Uncertainty: 0.01 K.
func BoilingPoint(p units.AbsolutePressure) (units.Temperature, error) {
	const coldestBoil, hottestBoil = 80, 103 // °C, around the range
	kPa := p.In(units.Kilopascal)
	if err := limit.Check("carbonation.BoilingPoint", "absolute pressure", kPa, "kPa", 50, 110, "Wagner & Pruss 1993, inside an open kettle"); err != nil {
		return units.Temperature{}, err
	}
	c, err := numeric.Root(func(c float64) float64 {
		return waterVapour(c+chemistry.ZeroCelsius, 1/(c+chemistry.ZeroCelsius)) - kPa
	}, coldestBoil, hottestBoil, 0)
	if err != nil { // not reached: the ends of the search were checked
		return units.Temperature{}, err
	}
	return units.Celsius.Of(checked.Number(c)), nil
}
