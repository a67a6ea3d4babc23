package material

import (
	"strings"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// salt makes the facts of a salt with so many molecules of crystal water; also lists other
// names with a stroke between.
func salt(name, formula, also string, crystalWater int, parts ...count) *facts {
	mass := chemistry.MustMass(formula)
	f := &facts{
		name: name, formula: formula, also: names(also), mass: mass,
		brings: compose(mass, crystalWater, parts), evidence: stoichiometry,
	}
	f.cautions = cautionsOf(&f.brings)
	return f
}

// caustic is a salt that burns skin and eyes.
func caustic(name, formula, also string, crystalWater int, parts ...count) *facts {
	f := salt(name, formula, also, crystalWater, parts...)
	f.cautions = f.cautions.With(Burns)
	return f
}

func names(list string) []string {
	if list == "" {
		return nil
	}
	return strings.Split(list, "|")
}

var stoichiometry = evidence.Evidence{Source: "stoichiometry, CIAAW atomic weights 2021", Grade: evidence.Computed}

// cautionsOf are those that go with what a material brings, whatever its name.
func cautionsOf(c *Composition) caution.List {
	return caution.List(nil).
		WithIf(!c.UreaNitrogen.IsZero(), ethylCarbamate).
		WithIf(!c.AmmoniumNitrogen.IsZero() && c.UreaNitrogen.IsZero(), ammoniumAcid).
		WithIf(!c.AmmoniumNitrogen.IsZero() && !c.Chloride.IsZero(), notForWine).
		WithIf(c.Zinc.In(units.Percent) > 1, zincLittle).
		WithIf(!c.Acidity.IsZero() && c.Lactate.In(units.Percent) > 50, lactoyllactic)
}
