package carbonation_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// Boiling points of water. 99.97 °C at 1 atm on ITS-90 and 99.61 °C at 1 bar:
// CRC Handbook of Chemistry and Physics, "Boiling point of water at various
// pressures" (recalled from memory); 81.3 °C at 50 kPa: the same.
func TestBoilingPoint(t *testing.T) {
	for _, c := range []struct{ kPa, want, tolerance float64 }{
		{101.325, 99.974, 0.005}, {100, 99.606, 0.005}, {50, 81.32, 0.02},
	} {
		p, err := units.Kilopascal.Try(c.kPa)
		if err != nil {
			t.Fatal(err)
		}
		got, err := carbonation.BoilingPoint(p)
		if err != nil || math.Abs(got.In(units.Celsius)-c.want) > c.tolerance {
			t.Errorf("%v kPa: got %v, %v; want %v °C", c.kPa, got, err, c.want)
		}
	}
	for _, p := range []units.AbsolutePressure{units.Kilopascal.Of(49.9), units.Kilopascal.Of(110.1), {}} {
		if got, err := carbonation.BoilingPoint(p); err == nil {
			t.Errorf("%v: got %v, want an error", p, got)
		}
	}
}

func ExampleBoilingPoint() {
	air, _ := units.AtAltitude(units.Metre.Of(640))
	t, _ := carbonation.BoilingPoint(air.Pressure())
	fmt.Println(t.Text(units.Celsius, 1))
	// Output: 97.8 °C
}
