package label_test

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
)

var (
	celsius, volPct, plato     = check.Celsius, check.PercentVolume, check.Plato
	kg, litre, percent, kcalOf = check.Kilogram, check.Litre, check.Percent, check.Kilocalorie
	near, unknown              = check.Within, check.Unknown
)

func refused(t check.T, what string, err error, quantity string) {
	t.Helper()
	check.OutOfRange(t, what, err, quantity)
}

func ok[V any](t check.T) func(V, error) V { return check.OK[V](t) }

// solution is a liquid of so many kilograms of each.
func solution(t check.T, water, sucrose, ethanol float64) gravity.Solution {
	t.Helper()
	return ok[gravity.Solution](t)(gravity.NewSolution(kg(water), kg(sucrose), kg(ethanol)))
}
