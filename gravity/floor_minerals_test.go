package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// 1 % of sodium chloride is 10.053 g/L and 1005.3 kg/m³ at 20 °C, water 998.2 (Poradnik
// fizykochemiczny, WNT 1974, read): 1.0071, and the salts of a brewery within 0.0001 a gram.
func TestGravityWithMinerals(t *testing.T) {
	water, _ := gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Mass{})
	got, err := water.GravityWith(units.GramPerLitre.Of(10.053))
	if err != nil || math.Abs(got.SG()-1005.3/998.2) > 0.0001*10.053 {
		t.Errorf("%v, %v", got.SG(), err)
	}
	for _, x := range []float64{-1, 20.1, math.NaN()} {
		if _, err := water.GravityWith(units.GramPerLitre.Of(checked.Number(x))); err == nil {
			t.Errorf("%g g/L: no error", x)
		}
	}
}

// A wash of 4.3 kg of sugar in 57 kg of water with 0.9 g/L of salts, nutrient and buffer.
func ExampleSolution_GravityWith() {
	wash, _ := gravity.NewSolution(units.Kilogram.Of(57), units.Kilogram.Of(4.3), units.Mass{})
	shown, err := wash.GravityWith(units.GramPerLitre.Of(0.9))
	fmt.Printf("%.4f %.4f %v\n", wash.Gravity().SG(), shown.SG(), err)
	// Output: 1.0277 1.0284 <nil>
}
