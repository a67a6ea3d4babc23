package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Add returns the water after the doses are dissolved in a volume of it. The salts
// do not change the volume (6 g in 60 L moves it by less than 0.01 %). Whether they
// dissolve at all is [Equilibrium.SolubilityWarnings].
//
// Where the pH was known it is that of the closed water after the doses.
//
// Errors are a [*units.RangeError]: a volume that is not positive, a negative mass, an ion
// above 50,000 mg/L; a [*units.StateError] for a material that is no salt, see [Salts].
//
//   - Source: conservation of mass; molar masses from the atomic weights 2021.
func (p Profile) Add(volume units.Volume, doses ...material.Dose) (Profile, error) {
	const fn = "water.Profile.Add"
	litres := volume.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", math.SmallestNonzeroFloat64, math.MaxFloat64, "a volume to dissolve in"); err != nil {
		return Profile{}, err
	}
	out, carbon := p, 0.0
	for _, d := range doses {
		y, err := brings(fn, d.Material)
		if err != nil {
			return Profile{}, err
		}
		g := d.Mass.In(units.Gram)
		if err := limit.Check(fn, "mass of a salt", g, "g", 0, mostIon/1000*litres, waterSource); err != nil {
			return Profile{}, err
		}
		for _, part := range y.parts {
			out.mg[part.ion] += g / litres * part.milligrams
		}
		out.alk += g / litres * y.alkalinity
		carbon += g / litres * y.carbon
	}
	return out.settled(fn, carbon)
}

// settled checks the contents and finds the pH again after inorganic carbon, in
// mmol/L, was added.
func (p Profile) settled(fn string, carbon float64) (Profile, error) {
	for i, v := range p.mg {
		if err := limit.Check(fn, Ion(i).Name(), v, "mg/L", 0, mostIon, waterSource); err != nil {
			return Profile{}, err
		}
	}
	if err := limit.Check(fn, "alkalinity", p.alk, "mEq/L", -mostAlkalinity, mostAlkalinity, waterSource); err != nil {
		return Profile{}, err
	}
	p.carbon += carbon
	return p.closedPH(fn)
}
