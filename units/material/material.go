package material

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// Material is a stuff with what a gram of it brings. It is as small as a pointer and is
// passed by value. Known materials compare with ==; two made from one label are equal by
// [Material.Equal].
//
// The zero Material has no name and brings nothing; no function doses it.
type Material struct{ f *facts }

// facts is what is known of a material. It never changes once it is made.
type facts struct {
	name     string
	also     []string // other names
	formula  string   // as weighed, with its crystal water; empty for what is no compound
	mass     float64  // g/mol of the formula
	brings   Composition
	spread   float64 // relative standard uncertainty of what it brings
	density  float64 // kg/m³ of a liquid; 0 for what is weighed only
	evidence evidence.Evidence
	cautions caution.List
}

var nothing facts

func (m Material) facts() *facts {
	if m.f == nil {
		return &nothing
	}
	return m.f
}

// IsZero reports whether m is the zero Material.
func (m Material) IsZero() bool { return m.f == nil }

// Name returns the name in the trade: "gypsum", "dextrose monohydrate".
func (m Material) Name() string { return m.facts().name }

// String is [Material.Name].
func (m Material) String() string { return m.Name() }

// OtherNames returns the names besides [Material.Name] by which [Find] knows it.
func (m Material) OtherNames() []string { return append([]string(nil), m.facts().also...) }

// Formula returns the formula with crystal water, "CaSO4.2H2O"; empty for what is no single
// compound.
func (m Material) Formula() string { return m.facts().formula }

// MolarMass returns the mass of a mole, crystal water included; zero for what has no
// formula.
//
//   - Source: abridged atomic weights 2021, Pure Appl. Chem. 94 (2022) 573.
//   - Uncertainty: below 0.02 g/mol for the salts of the trade, mostly from sulfur and zinc.
func (m Material) MolarMass() units.MolarMass {
	return units.GramPerMole.Of(checked.Number(m.facts().mass))
}

// Composition returns what a gram of it brings.
func (m Material) Composition() Composition { return m.facts().brings }

// Spread returns the relative standard uncertainty of what it brings, of its sugar where it
// has any; zero for a pure compound.
func (m Material) Spread() units.Share { return share(m.facts().spread) }

// Density returns the density of a liquid; zero for what is weighed only.
func (m Material) Density() units.Density {
	return units.KilogramPerCubicMetre.Of(checked.Number(m.facts().density))
}

// WithDensity returns m as a liquid of a density, so that [Dose.Volume] measures it. The error
// is a [*units.RangeError]: 500 to 3000 kg/m³.
func (m Material) WithDensity(d units.Density) (Material, error) {
	kgm3 := d.In(units.KilogramPerCubicMetre)
	if err := limit.Check("material.Material.WithDensity", "density", kgm3, "kg/m³", 500, 3000, "a liquid"); err != nil {
		return Material{}, err
	}
	f := *m.facts()
	f.density = kgm3
	return Material{&f}, nil
}

// Evidence says where the composition comes from.
func (m Material) Evidence() evidence.Evidence { return m.facts().evidence }

// Cautions returns what to know before it is used.
func (m Material) Cautions() caution.List { return append(caution.List(nil), m.facts().cautions...) }

// Caustic reports whether it burns skin and eyes (lime, soda ash, potash, lye).
func (m Material) Caustic() bool { return m.facts().cautions.Has(Burns) }

// Anhydrous returns the mass of the compound without crystal water in a mass as weighed.
func (m Material) Anhydrous(as units.Mass) units.AnhydrousMass {
	dry := 1 - m.facts().brings.CrystalWater.In(units.Fraction)
	return units.GramAnhydrous.Of(checked.Number(as.In(units.Gram) * dry))
}

// Equal reports whether both bring the same under the same name.
func (m Material) Equal(o Material) bool {
	a, b := m.facts(), o.facts()
	return a == b || a.name == b.name && a.brings == b.brings && a.spread == b.spread && a.density == b.density && a.evidence == b.evidence
}

// Dose is so much of a material.
type Dose struct {
	Material Material
	Mass     units.Mass // as weighed
}

// Dose returns the dose of a mass of m, as weighed.
func (m Material) Dose(mass units.Mass) Dose { return Dose{m, mass} }

// Volume returns the volume of a dose of a liquid, by [Material.Density]; zero for what is weighed only.
func (d Dose) Volume() units.Volume {
	if d.Material.facts().density == 0 {
		return units.Volume{}
	}
	return units.CubicMetre.Of(checked.Number(d.Mass.In(units.Kilogram) / d.Material.facts().density))
}

// share makes a share of a fraction.
func share(fraction float64) units.Share { return units.Fraction.Of(checked.Number(fraction)) }
