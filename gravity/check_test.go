package gravity_test

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
)

var (
	celsius, massPct, volPct, plato = check.Celsius, check.PercentMass, check.PercentVolume, check.Plato
	kg, kgm3, litre, percent        = check.Kilogram, check.KilogramPerCubicMetre, check.Litre, check.Percent
	mgL, gCO2, pure                 = check.MilligramPerLitre, check.GramCO2, check.One
	near, unknown                   = check.Within, check.Unknown
)

type tester = check.T

func refused(t tester, what string, err error, quantity string) {
	t.Helper()
	check.OutOfRange(t, what, err, quantity)
}

func ok[V any](t tester) func(V, error) V { return check.OK[V](t) }

// newYield is gravity.NewYield of a kilogram of extract.
func newYield(ethanol, co2, biomass, residue, water float64) (gravity.Yield, error) {
	return gravity.NewYield(kg(1), gravity.Fermented{Ethanol: kg(ethanol), CO2: kg(co2), Biomass: kg(biomass), Residue: kg(residue), Water: kg(water)})
}

// solution is a liquid of so many kilograms of each.
func solution(t tester, water, extract, ethanol float64) gravity.Solution {
	t.Helper()
	return ok[gravity.Solution](t)(gravity.NewSolution(kg(water), kg(extract), kg(ethanol)))
}
