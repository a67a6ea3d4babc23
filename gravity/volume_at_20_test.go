package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// Water at 20 °C is 998.203 kg/m³ (Bettin & Spieweck 1990), and a litre of any liquid is
// what Volume says.
func TestVolumeAt20(t *testing.T) {
	w, err := gravity.NewSolution(units.Kilogram.Of(998.203), units.Mass{}, units.Mass{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "water", w.VolumeAt20().In(units.Litre), 1000, 1e-3)
	if v := (gravity.Solution{}).VolumeAt20(); !v.IsZero() {
		t.Errorf("nothing takes %v", v)
	}
	rapid.Check(t, func(t *rapid.T) {
		s := drawSolution(t)
		v, err := s.Volume(units.Celsius.Of(20))
		if err != nil || v != s.VolumeAt20() {
			t.Fatalf("%v, %v: %v", v, s.VolumeAt20(), err)
		}
	})
}
