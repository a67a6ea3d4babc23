package gravity_test

import (
	"fmt"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// US proof is twice the strength by volume at 60 °F.
func ExampleByVolumeAt() {
	v, err := gravity.ByVolumeAt(units.PercentMass.Of(42.49), units.Fahrenheit.Of(60))
	fmt.Println(v.Text(units.PercentVolume, 1), err)
	// Output: 50.0 % vol <nil>
}

func ExampleByMassAt() {
	w, err := gravity.ByMassAt(units.PercentVolume.Of(50), units.Fahrenheit.Of(60))
	fmt.Println(w.Text(units.PercentMass, 2), err)
	// Output: 42.48 % mass <nil>
}

func ExampleSolution_BoilDownTo() {
	s, water, err := wash().BoilDownTo(units.Litre.Of(58), units.Celsius.Of(98))
	fmt.Println(water.Text(units.Kilogram, 2), s.Gravity().Text(4), err)
	// Output: 4.27 kg 1.0318 <nil>
}

func ExampleSolution_MakeUpTo() {
	s, water, err := wash().MakeUpTo(units.Litre.Of(64), units.Celsius.Of(20))
	fmt.Println(water.Text(units.Kilogram, 2), s.Gravity().Text(4), err)
	// Output: 3.96 kg 1.0277 <nil>
}

// One batch, two ways: by hydrometer, and by the weight lost as CO2.
func Example_crossCheck() {
	og, _ := units.ReadTo(units.One.Of(1.030), units.One.Of(0.002))
	fg, _ := units.ReadTo(units.One.Of(0.996), units.One.Of(0.002))
	hydrometer, _ := gravity.StrengthByHydrometer(og, fg, wash().WashYield(), units.Percent.Of(3), 0)
	lost, _, _ := wash().FermentByWeight(units.Kilogram.Of(2.0), units.GramCO2PerLitre.Of(1.7), wash().WashYield())
	scale, _ := units.Measure(lost.ByVolume(), units.PercentagePoint.Of(0.15))
	mean, deviations, err := units.CrossCheck(hydrometer, scale)
	fmt.Println(mean.Text(units.PercentVolume, 2, 2), err)
	for i, m := range []units.MeasuredStrength{hydrometer, scale} {
		fmt.Println(m.Text(units.PercentVolume, 1, 2), math.Abs(deviations[i]) > 2)
	}
	// Output:
	// 4.62 ± 0.22 % vol (k = 2) <nil>
	// 4.6 ± 0.3 % vol (k = 2) false
	// 4.7 ± 0.3 % vol (k = 2) false
}
