package dioxide

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const carroll = "Carroll, Slupsky & Mather 1991"

// HenryCarroll returns Henry's constant of CO2 in water as a pressure: the
// fugacity over the mole fraction. The CRC Handbook's table of CO2 in water
// follows it. It is 2.8 % below [HenryPlummerBusenberg] at 0 °C and 2.7 % above
// it at 40 °C.
//
//   - Source: J. J. Carroll, J. D. Slupsky & A. E. Mather, J. Phys. Chem. Ref.
//     Data 20 (1991) 1201: ln(H/MPa) = −6.8346 + 1.2817e4/T − 3.7668e6/T² +
//     2.997e8/T³.
//   - Range: 0 to 160 °C, made for pressures below 1 MPa; beyond it the error is a
//     [*units.RangeError].
//   - Units: H as an absolute pressure.
//   - Uncertainty: 2 % for the table made from it (CRC Handbook p. 8-90).
func HenryCarroll(t units.Temperature) (units.AbsolutePressure, error) {
	c := t.In(units.Celsius)
	if err := limit.Check("dioxide.HenryCarroll", "temperature", c, "°C", 0, 160, carroll); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.Kilopascal.Of(checked.Number(carrollHenry(1 / (c + chemistry.ZeroCelsius)))), nil
}

// carrollHenry is in kPa, u = 1/T in 1/K.
func carrollHenry(u float64) float64 {
	const kpa = 1e3
	return kpa * math.Exp(-6.8346+u*(1.2817e4+u*(-3.7668e6+u*2.997e8)))
}
