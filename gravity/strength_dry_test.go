package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A seltzer that is dry reads at its floor, or a digit under it: 1.0282 and 0.9940 are
// four-digit readings of a wash whose floor is 0.99402. By hand: 70 g/kg of sucrose in a
// litre at 16 g/L for 1 % vol make about 4.55.
func TestMeasuredStrengthOfADryWash(t *testing.T) {
	read := func(sg float64) units.MeasuredNumber {
		v, err := units.One.Try(sg)
		if err != nil {
			t.Fatal(err)
		}
		m, err := units.Measure(v, units.One.Of(0.0006))
		if err != nil {
			t.Fatal(err)
		}
		return m
	}
	for _, fg := range []float64{0.9942, 0.9940, 0.9939, 0.9935} {
		m, err := gravity.StrengthByHydrometer(read(1.0282), read(fg), gravity.SugarWashYield(gravity.AsSucrose), percent(3), 0)
		if err != nil {
			t.Errorf("%v: %v", fg, err)
			continue
		}
		if v := m.Value().In(units.PercentVolume); math.Abs(v-4.55) > 0.1 || !(m.Uncertainty().In(units.PercentagePoint) > 0.02) {
			t.Errorf("%v: %v", fg, m)
		}
	}
	if m, err := gravity.StrengthByHydrometer(read(1.0282), read(0.985), gravity.SugarWashYield(gravity.AsSucrose), percent(3), 0); err == nil {
		t.Errorf("far under the floor: %v", m)
	}
}

// How far under the floor counts as dry: 0.001 and 4 standard uncertainties. With an
// exact original gravity only the final one has any.
func TestMeasuredStrengthUnderTheFloor(t *testing.T) {
	y, og := gravity.SugarWashYield(gravity.AsSucrose), measured(t, 1.0282, 0)
	b := sg(t, 1.0282).Extract().In(units.DegreePlato)
	wort := solution(t, 100-b, b, 0)
	dry, _, err := wort.Dry(y)
	if err != nil {
		t.Fatal(err)
	}
	for _, u := range []float64{0, 0.0005} {
		leeway := 0.001 + 4*u
		m, err := gravity.StrengthByHydrometer(og, measured(t, dry.Gravity().SG()-0.97*leeway, u), y, percent(0), 0)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength", m.Value().In(units.PercentVolume), dry.ByVolume().In(units.PercentVolume), 1e-6)
		_, err = gravity.StrengthByHydrometer(og, measured(t, dry.Gravity().SG()-1.03*leeway, u), y, percent(0), 0)
		refused(t, "under the floor", err, "apparent extract")
	}
}
