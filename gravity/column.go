package gravity

import (
	"fmt"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// EthanolDensities computes a column at one temperature: dst[i] is the density
// of the mixture of strength w[i], the same to the last bit as [EthanolDensity]
// gives, in less than half the time, as the terms of the temperature are summed
// once.
//
//   - Source, range, uncertainty: as [EthanolDensity].
//   - Errors: a *[units.RangeError] under the number of its row, counted from 1;
//     columns of different lengths. Then dst holds nothing of use.
func EthanolDensities(dst []units.Density, w []units.StrengthByMass, t units.Temperature) error {
	const fn = "gravity.EthanolDensities"
	c := t.In(units.Celsius)
	if err := sameLength(fn, len(dst), len(w)); err != nil {
		return err
	}
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return err
	}
	var m mixture
	m.at(c)
	for i := range w {
		p := w[i].In(units.PercentMass)
		if err := limit.Check(fn, "strength", p, "% mass", 0, 100, sourceR22); err != nil {
			return inRow(i, err)
		}
		dst[i] = kgPerM3(m.density(p / 100))
	}
	return nil
}

// EthanolStrengths computes a column at one temperature: dst[i] is the strength
// of the mixture of density d[i], the same to the last bit as [EthanolStrength]
// gives, in less than half the time.
//
//   - Source, range, uncertainty: as [EthanolStrength].
//   - Errors: as [EthanolDensities].
func EthanolStrengths(dst []units.StrengthByMass, d []units.Density, t units.Temperature) error {
	const fn = "gravity.EthanolStrengths"
	c := t.In(units.Celsius)
	if err := sameLength(fn, len(dst), len(d)); err != nil {
		return err
	}
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return err
	}
	var m mixture
	m.at(c)
	pure := m.density(1)
	for i := range d {
		rho := d[i].In(units.KilogramPerCubicMetre)
		if err := limit.Check(fn, "density", rho, "kg/m³", pure, m[0], sourceR22); err != nil {
			return inRow(i, err)
		}
		dst[i] = percentMass(100 * m.fraction(rho, pure))
	}
	return nil
}

// SucroseDensities computes a column at one temperature: dst[i] is the density
// of the solution with the extract e[i], the same to the last bit as
// [SucroseDensity] gives.
//
//   - Source, range, uncertainty: as [SucroseDensity].
//   - Errors: as [EthanolDensities].
func SucroseDensities(dst []units.Density, e []units.Extract, t units.Temperature) error {
	const fn = "gravity.SucroseDensities"
	c := t.In(units.Celsius)
	if err := sameLength(fn, len(dst), len(e)); err != nil {
		return err
	}
	if err := limit.Check(fn, "temperature", c, "°C", 0, 100, sourceSPS4); err != nil {
		return err
	}
	var s syrup
	s.at(c)
	for i := range e {
		b := e[i].In(units.DegreePlato)
		if err := limit.Check(fn, "extract", b, "% mass", 0, mostSucrose, sourceSPS4); err != nil {
			return inRow(i, err)
		}
		dst[i] = kgPerM3(s.density(b / 100))
	}
	return nil
}

func sameLength(fn string, dst, from int) error {
	if dst == from {
		return nil
	}
	return fmt.Errorf("%s: a column of %d for the results of %d", fn, dst, from)
}

func inRow(i int, err error) error { return fmt.Errorf("row %d: %w", i+1, err) }
