package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

const (
	perHexose  = 2 * chemistry.CO2 / chemistry.Hexose  // C6H12O6 → 2 C2H5OH + 2 CO2: 0.48856
	perSucrose = 4 * chemistry.CO2 / chemistry.Sucrose // with the water of its hydrolysis: 0.51428
)

// CO2From returns the mass of CO2 that a dose of a sugar, a syrup or a malt extract makes
// when all of its sugar ferments: 0.51428 g from a gram of sucrose, 0.44415 from dextrose
// monohydrate, nothing from lactose.
//
// Every gram is counted as fermented to ethanol and CO2: glycerol and acids take about 3 % of
// it, and yeast that grows 5 to 10 %, so that a primer makes a little less gas than counted. The drink itself can still end
// above the content asked for, where it held up to a fifth more than [Liquid.ResidualContent] says.
//
//   - Source: 2 CO2 for a hexose, 0.48856 g/g (Gay-Lussac's equation); hexoses by
//     [material.Composition.Hexose].
//   - Uncertainty: that of the composition, [material.Material.Spread].
func CO2From(d material.Dose) units.Mass {
	return units.Kilogram.Of(checked.Number(perHexose * d.Material.Composition().Hexose(d.Mass).In(units.Kilogram)))
}

// gasOf returns the CO2 that a gram of a primer makes, g; what hardly ferments is refused.
func gasOf(fn string, primer material.Material) (float64, error) {
	co2 := CO2From(primer.Dose(units.Kilogram.Of(1))).In(units.Kilogram)
	return co2, limit.Check(fn, "CO2 from a gram of primer", co2, "g", 5e-4, 1, "a primer ferments")
}
