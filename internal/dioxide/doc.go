// Package dioxide holds what is published of CO2 and of its solution in water, wine and beer,
// as far as it is not the way that package carbonation computes with in the open: Henry's
// constants, virial coefficients, fugacity, the printed beer chart, the forms of European
// practice and of EU law. carbonation.Method makes them ways by name.
package dioxide

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// DissolvedRange is where the range of a dissolved content is from.
const DissolvedRange = "Plummer & Busenberg 1982; Span & Wagner 1996 to 2000 kPa"

// rounding is by how much, a part of it, a value may pass an edge that it was computed at.
const rounding = 1e-9

func grams(g float64) units.CarbonDioxideContent { return units.GramCO2PerLitre.Of(checked.Number(g)) }
