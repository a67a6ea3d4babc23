package gravity_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// From the gravity of a fermenting liquid comes the extract that is left and the gas
// that it makes.
func TestProgress(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wort := solution(t, 90, rapid.Float64Range(1, 25).Draw(t, "sugar"), 0)
		y := rapid.SampledFrom([]gravity.Yield{wort.WashYield(), gravity.BallingYield()}).Draw(t, "yield")
		part := rapid.Float64Range(0, 1).Draw(t, "part")
		now, _, err := wort.Ferment(kg(part*inKg(wort.Fermentable())), y)
		if err != nil {
			t.Fatal(err)
		}
		p, err := wort.At(now.Gravity(), y)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "part", p.Part.In(units.Percent), 100*part, 1e-7)
		near(t, "left", inKg(p.Left), inKg(now.Fermentable()), 1e-7)
		near(t, "CO2", inKg(p.CO2), 4*44.009/342.297*inKg(now.Fermentable()), 1e-5) // Gay-Lussac
		volume := ok[units.Volume](t)(now.Volume(celsius(20))).In(units.Litre)
		near(t, "CO2 content", p.CO2Content.In(units.GramCO2PerLitre), 1000*inKg(p.CO2)/volume, 1e-6)
		dry, _, err := wort.Dry(y)
		if err != nil || p.Floor != dry.Gravity() {
			t.Fatal(p.Floor, dry.Gravity(), err)
		}
		if inKg(p.Left) > 1e-6 && (!p.Cautions().Has("closed_too_early") || !strings.Contains(p.Cautions()[0].Text(), "Glass bursts")) {
			t.Fatal("no caution")
		}
	})
}

func TestProgressEdges(t *testing.T) {
	wort := solution(t, 92, 8, 0)
	y := wort.WashYield()
	dry, _, err := wort.Dry(y)
	if err != nil {
		t.Fatal(err)
	}
	floor := dry.Gravity().SG()
	p, err := wort.At(sg(t, floor-0.0004), y)
	if err != nil || !p.Left.IsZero() || p.Part.In(units.Percent) != 100 || len(p.Cautions()) != 0 || p.Liquid != dry {
		t.Error(p, err)
	}
	for _, v := range []float64{floor - 0.0006, wort.Gravity().SG() + 0.0001} {
		_, err = wort.At(sg(t, v), y)
		edges(t, err, "gravity", v, floor-0.0005, wort.Gravity().SG())
	}
	_, err = wort.At(dry.Gravity(), gravity.Yield{})
	refused(t, "yield", err, "ethanol yield")
	p, err = wort.At(wort.Gravity(), y)
	if err != nil || math.Abs(p.Part.In(units.Percent)) > 1e-6 {
		t.Error(p.Part, err)
	}
	// nothing to ferment
	water := solution(t, 1, 0, 0)
	if p, err = water.At(gravity.Gravity{}, y); err != nil || !p.Left.IsZero() {
		t.Error(p, err)
	}
	// 0.001 in gravity hides 2.2 g/L of sugar, 1.1 g/L of CO2
	p, err = wort.AtWorst(measured(t, floor, 0.0005), y, 2)
	if err != nil {
		t.Fatal(err)
	}
	litres := ok[units.Volume](t)(p.Liquid.Volume(celsius(20))).In(units.Litre)
	near(t, "sugar", 1000*inKg(p.Left)/litres, 2.2, 0.3)
	near(t, "CO2", p.CO2Content.In(units.GramCO2PerLitre), 1.1, 0.15)
	if p, err = wort.AtWorst(measured(t, floor, 1), y, 0.05); err != nil || math.Abs(p.Part.In(units.Percent)) > 1e-6 {
		t.Error("never above the wort", p.Part, err)
	}
	_, err = wort.AtWorst(measured(t, floor, 0.001), y, 11)
	refused(t, "k", err, "coverage factor")
	_, err = wort.AtWorst(measured(t, 0.5, 0.001), y, 2)
	refused(t, "reading", err, "specific gravity")
}
