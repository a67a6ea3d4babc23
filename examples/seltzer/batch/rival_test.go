package batch

import (
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// Where published ways differ, the draws reach as far as they do: the spread of the solubility
// of CO2 covers each published way to the gas of a dry drink, and is not twice as wide as they part. (For a
// beer rich in extract they part by more, as its dextrins are no sucrose: README, CO2 in a drink.)
func TestDrawsReachTheRivals(t *testing.T) {
	var gas Unknown
	for _, k := range Known() {
		if k.Name == "solubility of CO2" {
			gas = k
		}
	}
	drink, err := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0.2))
	if err != nil {
		t.Fatal(err)
	}
	farthest := 0.0
	for _, at := range []units.Temperature{units.Celsius.Of(1), units.Celsius.Of(4), units.Celsius.Of(10), units.Celsius.Of(20)} {
		for _, p := range []units.AbsolutePressure{units.Bar.Of(2), units.Bar.Of(3)} {
			ways, err := carbonation.Compare(drink, p, at)
			if err != nil {
				t.Fatal(err)
			}
			for _, way := range ways {
				if way.Err != nil { // its chart ends before this pressure or temperature
					continue
				}
				farthest = max(farthest, math.Abs(way.Difference))
				if rival := 1 + way.Difference/100; rival < gas.Low || rival > gas.High {
					t.Errorf("%s at %s and %s: %.3f of ours, drawn from %g to %g", way.Method, at, p, rival, gas.Low, gas.High)
				}
			}
		}
	}
	if width := 100 * (gas.High - gas.Usual); farthest < width/2 {
		t.Errorf("published ways part by %.1f %%, %.1f %% is drawn: more than they know", farthest, width)
	}
}
