package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Aerated returns the nitrogen and the oxygen that the liquid holds at equilibrium in moist air of the
// total pressure p: after a splash, or days in an open vessel. Argon, 0.93 % of the air,
// counts as nitrogen here.
//
//   - Source: IAPWS G7-04, Guideline on the Henry's Constant (2004), in the water of the
//     drink; vapours of water and ethanol taken off the pressure.
//   - Range: −2 to 90 °C; from the pressure of the vapours to 400 kPa absolute; beyond it the
//     error is a [*units.RangeError].
//   - Units: absolute pressure; mass in a litre of the gas-free liquid at 20 °C.
//   - Uncertainty: 2.5 % to 40 °C, 4 % above; ethanol dissolves air better than water does,
//     which is not counted, and extract counts by the water that it leaves alone: of the oxygen
//     given here a wort of 15 °P holds four fifths (The Oxford Companion to Beer, 2012).
func (l Liquid) Aerated(p units.AbsolutePressure, t units.Temperature) (nitrogen, oxygen units.MassConcentration, err error) {
	const fn, source, most = "carbonation.Liquid.Aerated", "IAPWS G7-04", 400
	c, kpa := t.In(units.Celsius), p.In(units.Kilopascal)
	if err := limit.Check(fn, "temperature", c, "°C", coldest, warmest, source); err != nil {
		return nitrogen, oxygen, err
	}
	T := c + chemistry.ZeroCelsius
	v := l.vapours(T, 1/T)
	if err := limit.Check(fn, "pressure", kpa, "kPa absolute", v, most, source); err != nil {
		return nitrogen, oxygen, err
	}
	n, o := airHeld(T, 1/T)
	dry := l.water() * (kpa - v)
	grams := func(x float64) units.MassConcentration { return units.GramPerLitre.Of(checked.Number(x)) }
	return grams(molarMassNitrogen * n * (1 - oxygenShare) * dry), grams(molarMassOxygen * o * oxygenShare * dry), nil
}

// Molar mass of nitrogen, g/mol (IUPAC abridged atomic weights 2021).
const molarMassNitrogen = 2 * 14.007
