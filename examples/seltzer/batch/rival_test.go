package batch

import (
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
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
				rival, err := units.Ratio(way.Content, ways[0].Content)
				if err != nil {
					t.Fatal(err)
				}
				farthest = max(farthest, 100*math.Abs(rival-1))
				if rival < gas.Low || rival > gas.High {
					t.Errorf("%s at %s and %s: %.3f of ours, drawn from %g to %g", way.Method, at, p, rival, gas.Low, gas.High)
				}
			}
		}
	}
	if width := 100 * (gas.High - gas.Usual); farthest < width/2 {
		t.Errorf("published ways part by %.1f %%, %.1f %% is drawn: more than they know", farthest, width)
	}
}

// drawn is an unknown by its name.
func drawn(t *testing.T, name string) Unknown {
	t.Helper()
	for _, k := range Known() {
		if k.Name == name {
			return k
		}
	}
	t.Fatalf("no unknown %q", name)
	return Unknown{}
}

// The scales of sugar on a hydrometer differ by which formula was printed on it: each published one
// lies within what is drawn for its reading, up to the 25 °P of a strong wort.
func TestDrawsReachTheScales(t *testing.T) {
	reading := drawn(t, "hydrometer")
	scales := map[string]func(float64) (units.Extract, error){
		"NBS": rival.BrixNBS, "ASBC": rival.PlatoASBC, "Lincoln": rival.PlatoLincoln, "hyperbola": rival.PlatoHyperbola,
	}
	for name, scale := range scales {
		compared := 0
		for s := 1.004; s < 1.105; s += 0.004 {
			extract, err := scale(s)
			if err != nil {
				continue // the formula ends before
			}
			g, err := gravity.FromExtract(extract)
			if err != nil {
				t.Fatal(err)
			}
			compared++
			if d := (g.SG() - s) / 0.001; d < reading.Low || d > reading.High {
				t.Errorf("%s at %.3f: %.2f thousandths from ours, drawn from %g to %g", name, s, d, reading.Low, reading.High)
			}
		}
		if compared < 10 {
			t.Errorf("%s: compared at %d gravities only", name, compared)
		}
	}
}

// So it is with the two tables that correct a refractometer for its warmth, where both have the
// temperature, and with the polynomial in circulation for its scale.
func TestDrawsReachTheRefractometers(t *testing.T) {
	reading := drawn(t, "refractometer")
	differences := 0
	check := func(what string, theirs, ours units.Extract) {
		differences++
		if d := theirs.In(units.DegreePlato) - ours.In(units.DegreePlato); d < reading.Low || d > reading.High || d == 0 {
			t.Errorf("%s: %.3f °Bx from ours, drawn from %g to %g", what, d, reading.Low, reading.High)
		}
	}
	for _, read := range []units.Extract{units.DegreePlato.Of(10), units.DegreePlato.Of(15), units.DegreePlato.Of(20), units.DegreePlato.Of(25),
		units.DegreePlato.Of(30)} {
		at := units.Celsius.Of(15)
		crc, err1 := rival.RefractometerCorrectionCRC(read, at)
		oiv, err2 := rival.RefractometerCorrectionOIV(read, at)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		check(read.String()+" at 15 °C", oiv, crc)
	}
	for n := 1.334; n < 1.385; n += 0.005 {
		theirs, err1 := rival.BrixFromIndexPolynomial(n)
		ours, err2 := gravity.BrixFromIndex(n)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		check("the polynomial", theirs, ours)
	}
	if differences < 10 {
		t.Errorf("%d compared", differences)
	}
}
