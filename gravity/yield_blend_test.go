package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

// Half of the extract is malt, half white sugar: half-way between 0.494 and 0.484 g of
// ethanol, 0.472 and 0.463 g of CO2.
func ExampleYield_Blend() {
	y := gravity.SugarWashYield(gravity.AsSucrose).Blend(gravity.BallingYield(), units.Percent.Of(50))
	fmt.Printf("%.3f g of ethanol and %.3f g of CO2 from a gram\n", y.Ethanol().In(units.Fraction), y.CO2().In(units.Fraction))
	// Output: 0.489 g of ethanol and 0.467 g of CO2 from a gram
}

// The masses of a blend balance as those of its parts do, and its ends are its parts.
// A blend is taken for the larger part: that of glucose reaches to 60 % mass (CRC Handbook), where
// that of sucrose goes on.
func TestBlendIsItsLargerPart(t *testing.T) {
	y, o := gravity.SugarWashYield(gravity.AsSucrose), gravity.SugarWashYield(gravity.AsGlucose)
	_, err := y.Blend(o, percent(51)).OriginalExtract(massPct(20), plato(50))
	e := check.OutOfRange(t, "more glucose", err, "original extract")
	near(t, "least", e.Min, 0, 0)
	near(t, "most", e.Max, 60, 0)
	ok[units.Extract](t)(y.Blend(o, percent(49)).OriginalExtract(massPct(20), plato(50)))
}

func TestBlend(t *testing.T) {
	malt, wash := gravity.BallingYield(), gravity.SugarWashYield(gravity.AsGlucose)
	for _, part := range []float64{0, 17, 100} {
		y := wash.Blend(malt, percent(part))
		if sum := y.Ethanol().In(units.Fraction) + y.CO2().In(units.Fraction) + y.Biomass().In(units.Fraction) +
			y.Residue().In(units.Fraction) - y.Water().In(units.Fraction); math.Abs(sum-1) > 1e-12 {
			t.Errorf("%g %%: %.15g g from a gram", part, sum)
		}
	}
	if wash.Blend(malt, units.Percent.Of(0)) != wash || wash.Blend(malt, units.Percent.Of(100)) != malt {
		t.Error("an end is not its part")
	}
	if wash.Blend(malt, units.Percent.Of(100).Plus(units.Percent.Of(50))) != malt {
		t.Error("more than the whole")
	}
}
