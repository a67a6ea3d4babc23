package dioxide

import (
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// MoleFraction returns the mole fraction of CO2 in pure water at rest under a
// partial pressure of CO2.
//
//   - Source: [HenryPlummerBusenberg] and [FugacityCoefficient].
//   - Range: −2 to 90 °C, 0 to 2000 kPa; beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure of the CO2 alone, about 1 atm in all; a pure number.
//   - Uncertainty: as [HenryPlummerBusenberg].
func MoleFraction(t units.Temperature, co2 units.AbsolutePressure) (x float64, err error) {
	const fn = "dioxide.MoleFraction"
	c, p := t.In(units.Celsius), co2.In(units.Kilopascal)
	if err := limit.Check(fn, "temperature", c, "°C", Coldest, Warmest, plummer); err != nil {
		return x, err
	}
	if err := limit.Check(fn, "pressure", p, "kPa absolute", 0, Highest, DissolvedRange); err != nil {
		return x, err
	}
	T := c + chemistry.ZeroCelsius
	m := p / chemistry.StandardKPa * numeric.Exp(LogHenry(T, 1/T)+GasAt(1/T).LogFugacity(p)) // mol/kg of water
	return m / (m + 1000/chemistry.Water), nil
}

// MoleFractionCarroll returns the same by [HenryCarroll], as the CRC Handbook
// tabulates it.
//
//   - Source: Carroll, Slupsky & Mather (1991): x = f/H; f by [FugacityCoefficient].
//   - Range: 0 to 100 °C, 0 to 1000 kPa; beyond it the error is a
//     [*units.RangeError].
//   - Units: absolute pressure of the CO2 alone; a pure number.
//   - Uncertainty: 2 % (CRC Handbook).
func MoleFractionCarroll(t units.Temperature, co2 units.AbsolutePressure) (x float64, err error) {
	const fn = "dioxide.MoleFractionCarroll"
	c, p := t.In(units.Celsius), co2.In(units.Kilopascal)
	if err := limit.Check(fn, "temperature", c, "°C", 0, gasWarmest, carroll); err != nil {
		return x, err
	}
	if err := limit.Check(fn, "pressure", p, "kPa absolute", 0, 1000, carroll); err != nil {
		return x, err
	}
	u := 1 / (c + chemistry.ZeroCelsius)
	return p * numeric.Exp(GasAt(u).LogFugacity(p)) / carrollHenry(u), nil
}
