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
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return err
	}
	m := mixtureAt(c)
	return column(fn, dst, w, func(w units.StrengthByMass) (units.Density, error) {
		p := w.In(units.PercentMass)
		return kgPerM3(m.density(p / 100)), limit.Check(fn, "strength", p, "% mass", 0, 100, sourceR22)
	})
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
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return err
	}
	m := mixtureAt(c)
	pure := m.density(1)
	return column(fn, dst, d, func(d units.Density) (w units.StrengthByMass, err error) {
		rho := d.In(units.KilogramPerCubicMetre)
		if err = limit.Check(fn, "density", rho, "kg/m³", pure, m[0], sourceR22); err == nil {
			w = percentMass(100 * m.fraction(rho, pure))
		}
		return w, err
	})
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
	if err := limit.Check(fn, "temperature", c, "°C", 0, 100, sourceSPS4); err != nil {
		return err
	}
	s := syrupAt(c)
	return column(fn, dst, e, func(e units.Extract) (units.Density, error) {
		b := e.In(units.DegreePlato)
		return kgPerM3(s.density(b / 100)), limit.Check(fn, "extract", b, "% mass", 0, mostSucrose, sourceSPS4)
	})
}

// column fills dst with one of each value of from.
func column[A, B any](fn string, dst []B, from []A, one func(A) (B, error)) (err error) {
	if len(dst) != len(from) {
		return fmt.Errorf("%s: a column of %d for the results of %d", fn, len(dst), len(from))
	}
	for i := range from {
		if dst[i], err = one(from[i]); err != nil {
			return fmt.Errorf("row %d: %w", i+1, err)
		}
	}
	return nil
}
