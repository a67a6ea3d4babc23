package carbonation

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// ResidualContent returns the CO2 that a finished drink still holds: what it took up
// at equilibrium under its own gas at the warmest temperature since gas last came off.
// Cooling it later under an airlock adds nothing worth counting, so that the
// temperature at which it is bottled is the wrong one to use.
//
//   - Source: [Liquid.Content] at that temperature; the rule is common practice, no
//     source.
//   - Range: as [Liquid.Content]; headspace is the absolute pressure in the
//     fermenter, that of the atmosphere under an airlock.
//   - Units: absolute pressure; g in a litre of liquid at 20 °C.
//   - Uncertainty: a young drink can hold up to a fifth more (it has not come to
//     rest), one that was stirred or racked less.
func (l Liquid) ResidualContent(headspace units.AbsolutePressure, warmest units.Temperature) (units.CarbonDioxideContent, error) {
	c, err := l.Content(headspace, warmest)
	return c, limit.Named("carbonation.Liquid.ResidualContent", err)
}
