package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/published"
	"example.org/zymase/units"
)

var (
	celsius, kpa, bar, barGauge             = check.Celsius, check.Kilopascal, check.Bar, check.BarGauge
	gramsCO2, gramsPerLitre, litre, percent = check.GramCO2, check.GramPerLitre, check.Litre, check.Percent
	volPct, plato, metre, kg, ppm           = check.PercentVolume, check.Plato, check.Metre, check.Kilogram, check.PPM
	near, close, refused                    = check.Within, check.WithinShare, limits.OutOfRange
	table, within                           = check.Table, check.Printed
)

type tester = check.T

func ok[V any](t tester) func(V, error) V { return check.OK[V](t) }

func cell[D, E units.Dimension](t *testing.T, r published.Row, column string, like units.Unit[D, E]) units.Quantity[D, E] {
	t.Helper()
	return check.Cell(t, r, column, like)
}

// The drink of the examples: 4.6 % vol, dry.
func seltzer(t tester) gravity.Solution {
	t.Helper()
	return ok[gravity.Solution](t)(carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0.5)))
}

func liquid(t tester, strength, extract float64) carbonation.Liquid {
	t.Helper()
	s := ok[gravity.Solution](t)(carbonation.DrinkOf(volPct(strength), plato(extract)))
	return ok[carbonation.Liquid](t)(carbonation.NewLiquid(s))
}
