package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A liquid in another amount is the same liquid.
func TestTimesKeepsTheLiquid(t *testing.T) {
	s, err := gravity.NewSolution(units.Kilogram.Of(9), units.Kilogram.Of(1), units.Kilogram.Of(0.2))
	if err != nil {
		t.Fatal(err)
	}
	d, err := s.Times(2.5)
	if err != nil || math.Abs(d.Gravity().SG()-s.Gravity().SG()) > 1e-15 || math.Abs(d.Mass().In(units.Kilogram)-2.5*10.2) > 1e-12 {
		t.Errorf("got %v %v %v", d.Gravity().SG(), d.Mass(), err)
	}
	for _, k := range []float64{-1, math.NaN(), math.Inf(1), 1e7} {
		if _, err := s.Times(k); err == nil {
			t.Errorf("%v: no error", k)
		}
	}
	heavy, err := gravity.NewSolution(units.Kilogram.Of(1e11), units.Mass{}, units.Mass{})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := heavy.Times(100); err == nil {
		t.Error("1e13 kg: no error")
	}
}

func ExampleSolution_Times() {
	test, _ := gravity.NewSolution(units.Kilogram.Of(0.9), units.Gram.Of(100), units.Mass{})
	batch, _ := test.Times(60)
	fmt.Printf("%.1f kg, %.4f\n", batch.Mass().In(units.Kilogram), batch.Gravity().SG())
	// Output: 60.0 kg, 1.0400
}
