package catalogue_test

import (
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/units"
)

// A primed bottle at 1.5 % and at 4 % of head-space answers as the library does along its
// own priming path, and higher than a drink that held all that gas when it was closed:
// that one was measured with the room its gas takes, the primed one was not.
func TestClosedVesselPriming(t *testing.T) {
	f, err := catalogue.Find("closed_vessel_pressure")
	if err != nil {
		t.Fatal(err)
	}
	ask := func(temperature, volumes, fill, priming float64) float64 {
		in := []float64{temperature, volumes, 345, fill, 18, 100, 0, 4.6, 0, 0, 0, priming, 0}
		out := make([]float64, len(f.Outputs))
		if err := f.Call(in, out); err != nil {
			t.Fatal(err)
		}
		return out[0]
	}
	s, err := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0))
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		temperature units.Temperature
		fill        units.Volume
		least       float64 // by how much more, %: volume of the gas over the head-space
	}{{units.Celsius.Of(35), units.Millilitre.Of(331.2), 1}, {units.Celsius.Of(40), units.Millilitre.Of(339.8), 3}} {
		c, err := carbonation.Vessel{Capacity: units.Millilitre.Of(345)}.Close(s, carbonation.Filling{
			Volume: row.fill, Temperature: units.Celsius.Of(18), Content: carbonation.RealVolume.Content(units.VolumesCO2.Of(0.85)),
			Air: units.Percent.Of(100), Priming: units.GramPerLitre.Of(8)}, units.Atmosphere{})
		if err != nil {
			t.Fatal(err)
		}
		want, err := c.At(row.temperature)
		if err != nil {
			t.Fatal(err)
		}
		at, fill := row.temperature.In(units.Celsius), row.fill.In(units.Millilitre)
		got, bar := ask(at, 0.85, fill, 8), want.Gauge.In(units.KilopascalGauge)
		if math.Abs(got/bar-1) > 1e-12 {
			t.Errorf("%v: %g kPa gauge, the library %g", row.fill, got, bar)
		}
		once := ask(at, 0.85+8*0.51428/1.977, fill, 0)
		if 100*(got/once-1) < row.least {
			t.Errorf("%v: %g kPa gauge, no more than %g with the gas there from the start", row.fill, got, once)
		}
	}
}
