package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// The uncertainty put together by hand after JCGM 100:2008 eq. 10, with slopes from
// differences: 0.1 °Bx of the original; 0.1 °Bx and the index's 0.0002/0.00145 of the
// reading; 3 % of the ethanol.
func TestRefractometerUncertainty(t *testing.T) {
	y := gravity.SugarWashYield(gravity.AsSucrose)
	scaled := func(k float64) gravity.Yield {
		e, c := k*y.Ethanol().In(units.Fraction), k*y.CO2().In(units.Fraction)
		return ok[gravity.Yield](t)(newYield(e, c, 1+y.Water().In(units.Fraction)-e-c-y.Residue().In(units.Fraction), y.Residue().In(units.Fraction),
			y.Water().In(units.Fraction)))
	}
	at := func(original, read float64, y gravity.Yield) [2]float64 {
		f := ok[gravity.Fermentation](t)(gravity.FromOriginalAndBrix(plato(original), plato(read), 1, y))
		return [2]float64{f.Gravity().SG(), f.ByVolume().In(units.PercentVolume)}
	}
	// the index: 0.00145 for a °Bx near 10
	n := func(b units.Extract) float64 { return ok[float64](t)(gravity.RefractiveIndex(b)) }
	near(t, "index of a °Bx", (n(plato(10.5)) - n(plato(9.5))), 0.00152, 0.0001)

	const original, read = 12.0, 7.0
	const d = 1e-4
	var u [2]float64
	for i := range u {
		ofOriginal := (at(original+d, read, y)[i] - at(original-d, read, y)[i]) / (2 * d) * 0.1
		ofRead := (at(original, read+d, y)[i] - at(original, read-d, y)[i]) / (2 * d) * math.Hypot(0.1, 0.0002/0.00145)
		ofYield := (at(original, read, scaled(1+d))[i] - at(original, read, scaled(1-d))[i]) / (2 * d) * 0.03
		u[i] = math.Sqrt(ofOriginal*ofOriginal + ofRead*ofRead + ofYield*ofYield)
	}
	g, abv, err := gravity.Refractometer(measuredExtract(t, original, 0.1), measuredExtract(t, read, 0.1), measured(t, 1, 0), y)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "u of the gravity", g.Uncertainty().In(units.One)/u[0], 1, 0.003)
	near(t, "u of the strength", abv.Uncertainty().In(units.PercentagePoint)/u[1], 1, 0.003)
	// the yield alone: a scale read without error and a model without error would leave it
	g, _, err = gravity.Refractometer(measuredExtract(t, original, 0), measuredExtract(t, read, 0), measured(t, 1, 0), y)
	if err != nil {
		t.Fatal(err)
	}
	slope := (at(original, read, scaled(1+d))[0] - at(original, read, scaled(1-d))[0]) / (2 * d)
	model := (at(original, read+d, y)[0] - at(original, read-d, y)[0]) / (2 * d) * 0.0002 / 0.00145
	near(t, "spread of the yield", math.Sqrt(math.Pow(g.Uncertainty().In(units.One), 2)-model*model)/math.Abs(slope), 0.03, 0.0006)
}
