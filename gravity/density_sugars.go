package gravity

import (
	"cmp"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const sourceCRC = "CRC Handbook, 102nd ed."

// Density returns the density of a solution of one kind of extract in water.
// A dextrose wash reads 0.0006 lower in gravity than table sugar at 10 % mass.
//
//   - Source: for glucose and fructose CRC Handbook of Chemistry and Physics, 102nd
//     ed., "Concentrative properties of aqueous solutions", at 20 °C, as a
//     difference from sucrose (ICUMSA SPS-4). For glycerol the same table, recalled
//     from memory.
//   - Range: sucrose and dextrin 0 to 80 % mass, glucose to 60, fructose to 48,
//     glycerol to 20; 0 to 100 °C. Beyond it the error is a [*units.RangeError]. An
//     unknown kind is a [*units.NameError].
//   - Units: % mass of the anhydrous sugar.
//   - Uncertainty: the table is printed to 0.1 kg/m³. The difference from sucrose is
//     taken as the same at all temperatures, for want of a table.
func (k Sugar) Density(e units.Extract, t units.Temperature) (units.Density, error) {
	const fn = "gravity.Sugar.Density"
	b, c := e.In(units.DegreePlato), t.In(units.Celsius)
	if err := sugars.Check(fn, k); err != nil {
		return units.Density{}, err
	}
	if err := cmp.Or(
		limit.Check(fn, "extract", b, "% mass", 0, lighters[k].most, sourceCRC), limit.Check(fn, "temperature", c, "°C", 0, 100, sourceSPS4),
	); err != nil {
		return units.Density{}, err
	}
	var s syrup
	s.at(c)
	s.change(k, 1)
	return kgPerM3(s.density(b / 100)), nil
}

// change turns a part of the sucrose in the formula into another kind. Solutions
// of two sugars with the same mass fraction mix without change of volume, near
// enough, so that the part of each counts at the fraction of all.
func (s *syrup) change(k Sugar, part float64) {
	d := &lighters[k].d
	s[1] += part * d[0]
	s[2] += part * d[1]
	s[3] += part * d[2]
	s[4] += part * d[3]
	s[5] += part * d[4]
}
