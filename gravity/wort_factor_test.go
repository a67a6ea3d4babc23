package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Index of starch syrup at 20 °C, ISO 1743 (GOST R 50546-93, read; its dextrose equivalent was
// cut off): what a Brix scale shows for each per cent of solids. The factor of malt wort and
// its spread are common practice, no source; they have to reach that far.
func TestWortFactorOfStarchSyrup(t *testing.T) {
	f := gravity.WortFactor()
	value, u := f.Value().In(units.One), f.Uncertainty().In(units.One)
	near(t, "common practice", value, 1.04, 0)
	near(t, "1.00 to 1.06 is k = 2", 2*u, 0.04, 0.01)
	for solids, n := range map[float64]float64{2: 1.33597, 6: 1.34215, 10: 1.34852, 14: 1.35509, 20: 1.36534, 30: 1.38352} {
		shown := ok[units.Extract](t)(gravity.BrixFromIndex(n)).In(units.DegreePlato) / solids
		near(t, "starch syrup", shown, value, u)
	}
}

// In wort the refractometer shows the factor times the extract; a beer's ethanol bends light
// without it. The state is found again, by each pair, with the factor that made the reading.
func TestWortFactorRoundTrip(t *testing.T) {
	y := gravity.BallingYield()
	for _, factor := range []float64{1, 1.02, 1.04, 1.06} {
		f := ok[gravity.Fermentation](t)(gravity.FromOriginalAndApparent(plato(12), plato(2.5), y))
		// by hand: the index's parts added, the extract's times the factor
		index := ok[float64](t)(f.Liquid().RefractiveIndex())
		without := ok[float64](t)(solution(t, 100-f.ByMass().In(units.PercentMass), 0, f.ByMass().In(units.PercentMass)).RefractiveIndex())
		read := ok[units.Extract](t)(gravity.BrixFromIndex(without + factor*(index-without)))
		got := ok[gravity.Fermentation](t)(gravity.FromOriginalAndBrix(plato(12), read, factor, y))
		near(t, "strength", got.ByVolume().In(units.PercentVolume), f.ByVolume().In(units.PercentVolume), 0.01)
		got = ok[gravity.Fermentation](t)(gravity.FromApparentAndBrix(plato(2.5), read, factor, y))
		near(t, "strength", got.ByVolume().In(units.PercentVolume), f.ByVolume().In(units.PercentVolume), 0.02)
	}
	for _, factor := range []float64{0.949, 1.101} {
		_, err := gravity.FromOriginalAndBrix(plato(12), plato(6), factor, y)
		refused(t, "factor", err, "wort factor")
	}
	for _, factor := range []float64{0.951, 1.099} {
		ok[gravity.Fermentation](t)(gravity.FromOriginalAndBrix(plato(12), plato(6), factor, y))
	}
	_, err := gravity.FromApparentAndBrix(plato(3), plato(6), 0.9, y)
	refused(t, "factor", err, "wort factor")
}

// Malt wort of 12 °P that reads 6.4 °Bx: what the factor does to the strength, and that the
// stated uncertainty counts its spread.
func TestRefractometerInMaltWort(t *testing.T) {
	y := gravity.BallingYield()
	strength := func(factor float64) float64 {
		return ok[gravity.Fermentation](t)(gravity.FromOriginalAndBrix(plato(12), plato(6.4), factor, y)).ByVolume().In(units.PercentVolume)
	}
	moved := strength(1.04) - strength(1)
	if moved < 0.1 || moved > 0.4 {
		t.Errorf("the factor moves the strength by %.3f %% vol", moved)
	}
	_, known, err := gravity.Refractometer(measuredExtract(t, 12, 0.1), measuredExtract(t, 6.4, 0.1), measured(t, 1.04, 0), y)
	if err != nil {
		t.Fatal(err)
	}
	_, spread, err := gravity.Refractometer(measuredExtract(t, 12, 0.1), measuredExtract(t, 6.4, 0.1), gravity.WortFactor(), y)
	if err != nil {
		t.Fatal(err)
	}
	u, k := spread.Uncertainty().In(units.PercentagePoint), known.Uncertainty().In(units.PercentagePoint)
	near(t, "in squares", u, math.Hypot(k, (strength(1.06)-strength(1.02))/2), 0.001)
	near(t, "as the comment says", (strength(1.06)-strength(1.02))/2, 0.07, 0.005)
	both := func(factor float64) float64 { // the original read with the same refractometer
		return ok[gravity.Fermentation](t)(gravity.FromOriginalAndBrix(plato(12.48/factor), plato(6.4), factor, y)).ByVolume().In(units.PercentVolume)
	}
	near(t, "both read with it", (both(1.02)-both(1.06))/2, 0.13, 0.01)
	near(t, "not known at all", both(1)-both(1.04), 0.26, 0.02)
}
