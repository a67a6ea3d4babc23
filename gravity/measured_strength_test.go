package gravity_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Near the floor: JCGM 101:2008, 7.2 to 7.6, washes whose truth is known. Each is drawn dry or
// nearly so, with a yield of its own; its two gravities are read with normal errors. The true
// strength has to lie within twice the stated standard uncertainty in at least 95 of 100, and
// the stated one must not shrink as the reading comes to the floor and under it.
func TestMeasuredStrengthNearTheFloor(t *testing.T) {
	const p, u, part = 7.0, 0.0008, 0.03
	base := gravity.SugarWashYield(gravity.AsSucrose)
	yieldOf := func(k float64) gravity.Yield {
		e, c := k*base.Ethanol().In(units.Fraction), k*base.CO2().In(units.Fraction)
		return ok[gravity.Yield](t)(newYield(e, c, 1+base.Water().In(units.Fraction)-e-c-base.Residue().In(units.Fraction),
			base.Residue().In(units.Fraction), base.Water().In(units.Fraction)))
	}
	wort := solution(t, 100-p, p, 0)
	far := ok[units.MeasuredStrength](t)(gravity.StrengthByHydrometer(measured(t, wort.Gravity().SG(), u), measured(t, 1.004, u), base,
		percent(100*part), 0)).Uncertainty().In(units.PercentagePoint)
	draw := rand.New(rand.NewPCG(7, 0))
	for _, left := range []float64{0, 0.02, 0.05} { // of the sugar
		const n = 1500
		inside, least, most := 0, math.Inf(1), 0.0
		var mean, squares float64
		for i := range n {
			y := yieldOf(min(1+part*draw.NormFloat64(),
				0.9999*(1+base.Water().In(units.Fraction)-base.Residue().In(units.Fraction))/(base.Ethanol().In(units.Fraction)+
					base.CO2().In(units.Fraction)))) // no less yeast than none
			s, _, err := wort.Ferment(kg(p*(1-left)), y)
			if err != nil {
				t.Fatal(err)
			}
			og, fg := wort.Gravity().SG()+u*draw.NormFloat64(), s.Gravity().SG()+u*draw.NormFloat64()
			m, err := gravity.StrengthByHydrometer(measured(t, og, u), measured(t, fg, u), base, percent(100*part), 0)
			if err != nil {
				t.Fatal(err)
			}
			off, stated := m.Value().In(units.PercentVolume)-s.ByVolume().In(units.PercentVolume), m.Uncertainty().In(units.PercentagePoint)
			if math.Abs(off) <= 2*stated {
				inside++
			}
			least, most = min(least, stated), max(most, stated)
			d := off - mean
			mean += d / float64(i+1)
			squares += d * (off - mean)
		}
		spread := math.Sqrt(squares/n + mean*mean)
		if share := float64(inside) / n; share < 0.95 {
			t.Errorf("%.0f %% of the sugar left: %.1f %% within k = 2", 100*left, 100*share)
		}
		if least < 0.9*far || least < 0.9*spread {
			t.Errorf("%.0f %% of the sugar left: stated %.3f to %.3f %% vol, of the draws %.3f, far from the floor %.3f", 100*left, least, most, spread, far)
		}
	}
}

// A reading under the floor, by as much as is let: first order against JCGM 101 on the
// straight line that the strength goes on along, and one reading above it.
func TestMeasuredStrengthContinues(t *testing.T) {
	const u = 0.0006
	y := gravity.SugarWashYield(gravity.AsSucrose)
	for _, fg := range []float64{0.9990, 0.9945, 0.9940, 0.9932, 0.9925} {
		m := ok[units.MeasuredStrength](t)(gravity.StrengthByHydrometer(measured(t, 1.0282, u), measured(t, fg, u), y, percent(0), 0))
		// 34.2 thousandths are 4.60 % vol (problem "A strength from two readings"), so 0.1345 each:
		// two readings 0.6 · 0.1345 · √2.
		near(t, "u", m.Uncertainty().In(units.PercentagePoint), 0.6*0.1345*math.Sqrt2, 0.004)
	}
}

// Water, 1.000 before and after, has no strength with any yield; a unit of 0.001 in the
// original gravity is about 0.13 % vol (131.25 for a gravity of 1, common practice).
func TestMeasuredStrengthOfWater(t *testing.T) {
	for _, y := range []gravity.Yield{gravity.BallingYield(), gravity.SugarWashYield(gravity.AsSucrose), gravity.SugarWashYield(gravity.AsGlucose),
		gravity.SugarWashYield(gravity.AsFructose)} {
		one, err := units.Measure(units.One.Of(1), units.One.Of(0.001))
		if err != nil {
			t.Fatal(err)
		}
		other := one
		m, err := gravity.StrengthByHydrometer(one, other, y, percent(3), 0)
		if v, u := m.Value().In(units.PercentVolume), m.Uncertainty().In(units.PercentagePoint); err != nil || v != 0 || !(u > 0.1 && u < 0.2) {
			t.Errorf("%v ± %v, %v", v, u, err)
		}
	}
}
