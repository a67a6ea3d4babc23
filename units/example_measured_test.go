package units_test

import (
	"fmt"
	"math"

	"example.org/zymase/units"
)

func ExampleMeasure() {
	t, err := units.Measure(units.Celsius.Of(20), units.KelvinDifference.Of(0.5))
	fmt.Println(t, err)
	// Output: 20 ± 1 °C (k = 2) <nil>
}

func ExampleReadTo() {
	// a hydrometer with divisions of 0.002
	g, _ := units.ReadTo(units.One.Of(1.038), units.One.Of(0.002))
	fmt.Println(g.Text(units.One, 4, 2))
	// Output: 1.0380 ± 0.0012 (k = 2)
}

func ExampleLimited() {
	// a thermometer good to ± 1 °F
	t, _ := units.Limited(units.Fahrenheit.Of(68), units.FahrenheitDifference.Of(1))
	fmt.Println(t.Text(units.Celsius, 2, 2))
	// Output: 20.00 ± 0.64 °C (k = 2)
}

func ExampleMeasured_Value() {
	m, _ := units.Measure(units.Kilogram.Of(4.2), units.Gram.Of(5))
	fmt.Println(m.Value())
	// Output: 4.2 kg
}

func ExampleMeasured_Uncertainty() {
	m, _ := units.Measure(units.Kilogram.Of(4.2), units.Gram.Of(5))
	fmt.Println(m.Uncertainty().Text(units.Gram, 1))
	// Output: 5.0 g
}

func ExampleMeasured_Expanded() {
	m, _ := units.Measure(units.Kilogram.Of(4.2), units.Gram.Of(5))
	u, err := m.Expanded(2)
	fmt.Println(u.Text(units.Gram, 0), err)
	// Output: 10 g <nil>
}

func ExampleMeasured_Widened() {
	m, _ := units.ReadTo(units.One.Of(1.038), units.One.Of(0.002))
	m, err := m.Widened(units.One.Of(0.001)) // error of the instrument
	fmt.Println(m.Text(units.One, 4, 2), err)
	// Output: 1.0380 ± 0.0023 (k = 2) <nil>
}

func ExampleMeasured_Capability() {
	m, _ := units.Measure(units.PercentVolume.Of(4.6), units.PercentagePoint.Of(0.2))
	c, err := m.Capability(units.PercentagePoint.Of(0.3)) // label tolerance
	fmt.Printf("%.2f %v\n", c, err)
	// Output: 0.75 <nil>
}

func ExampleMeasured_Text() {
	m, _ := units.Measure(units.PercentVolume.Of(4.63), units.PercentagePoint.Of(0.149))
	fmt.Println(m.Text(units.PercentVolume, 1, 2))
	// Output: 4.6 ± 0.3 % vol (k = 2)
}

func ExampleMeasured_String() {
	m, _ := units.Measure(units.PercentVolume.Of(4.63), units.PercentagePoint.Of(0.149))
	fmt.Println(m)
	// Output: 4.63 ± 0.298 % vol (k = 2)
}

// mean is the function of the examples below: the mean of two weighings.
func mean(a, b *units.MeasuredMass) func(units.Trial) (units.Mass, error) {
	return func(x units.Trial) (units.Mass, error) {
		return units.Times(units.At(x, a).Plus(units.At(x, b)), 0.5), nil
	}
}

func ExamplePropagate() {
	a, _ := units.Measure(units.Gram.Of(100.2), units.Gram.Of(0.3))
	b, _ := units.Measure(units.Gram.Of(100.6), units.Gram.Of(0.4))
	m, err := units.Propagate(mean(&a, &b), &a, &b)
	fmt.Println(m.Text(units.Gram, 2, 1), err)
	// Output: 100.40 ± 0.25 g (k = 1) <nil>
}

func ExampleCorrelation() {
	a, _ := units.Measure(units.Gram.Of(100.2), units.Gram.Of(0.3))
	b, _ := units.Measure(units.Gram.Of(100.6), units.Gram.Of(0.4))
	onOneScale := units.Correlation{A: &a, B: &b, R: 1}
	m, err := units.Propagate(mean(&a, &b), &a, &b, onOneScale)
	fmt.Println(m.Text(units.Gram, 2, 1), err)
	// Output: 100.40 ± 0.35 g (k = 1) <nil>
}

func ExampleAt() {
	a, _ := units.Measure(units.Gram.Of(100), units.Gram.Of(1))
	m, _ := units.Propagate(func(x units.Trial) (units.Mass, error) {
		return units.Times(units.At(x, &a), 3), nil
	}, &a)
	fmt.Println(m.Text(units.Gram, 0, 1))
	// Output: 300 ± 3 g (k = 1)
}

func ExampleBudget() {
	a, _ := units.Measure(units.Gram.Of(100.2), units.Gram.Of(0.3))
	b, _ := units.Measure(units.Gram.Of(100.6), units.Gram.Of(0.4))
	parts, err := units.Budget(mean(&a, &b), &a, &b)
	fmt.Println(parts[0].Text(units.Gram, 2), parts[1].Text(units.Gram, 2), err)
	// Output: 0.15 g 0.20 g <nil>
}

func ExampleSimulate() {
	a, _ := units.Measure(units.Gram.Of(100.2), units.Gram.Of(0.3))
	b, _ := units.Measure(units.Gram.Of(100.6), units.Gram.Of(0.4))
	m, failed, err := units.Simulate(mean(&a, &b), 100_000, 1, &a, &b)
	fmt.Println(m.Text(units.Gram, 2, 1), failed, err)
	// Output: 100.40 ± 0.25 g (k = 1) 0 <nil>
}

func ExampleCrossCheck() {
	vol := func(v, u float64) units.MeasuredStrength {
		q, _ := units.PercentVolume.Try(v)
		w, _ := units.PercentagePoint.Try(u)
		m, _ := units.Measure(q, w)
		return m
	}
	methods := []string{"hydrometer", "distillation", "weight lost"}
	mean, deviations, err := units.CrossCheck(vol(4.6, 0.1), vol(4.7, 0.1), vol(5.4, 0.2))
	fmt.Println(mean.Text(units.PercentVolume, 2, 2), err)
	for i, d := range deviations {
		fmt.Printf("%s: %+.1f u, disagrees: %v\n", methods[i], d, math.Abs(d) > 2)
	}
	// Output:
	// 4.73 ± 0.13 % vol (k = 2) <nil>
	// hydrometer: -1.8 u, disagrees: false
	// distillation: -0.4 u, disagrees: false
	// weight lost: +3.5 u, disagrees: true
}
