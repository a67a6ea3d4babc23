package main

import (
	"os"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// Whole plans lie where published batches do: not one formula, but what they come to together.
// Each band names where it was read.
func TestPlansLieWherePublishedBatchesDo(t *testing.T) {
	text, err := os.ReadFile("../seltzer/request.json")
	if err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string][2]string{
		"built in":   {"", ""},
		"weaker":     {`"strength": "4.6 % vol",`, `"strength": "3.5 % vol",`},
		"stronger":   {`"strength": "4.6 % vol",`, `"strength": "6 % vol",`},
		"warmer":     {`"temperature": "20 °C", "warmest": "22 °C"`, `"temperature": "25 °C", "warmest": "27 °C"`},
		"at the sea": {`"altitude": "640 m"`, `"altitude": "0 m"`},
		"hungry":     {`"demand": "medium"`, `"demand": "high"`},
	} {
		if change[0] != "" && !strings.Contains(string(text), change[0]) {
			t.Fatalf("%s: the request has moved on", name)
		}
		req, err := plan.ParseRequest([]byte(strings.Replace(string(text), change[0], change[1], 1)))
		if err != nil {
			t.Fatal(name, err)
		}
		p, err := plan.Make(req)
		if err != nil {
			t.Fatal(name, err)
		}
		within := func(what string, v, low, high float64, source string) {
			t.Helper()
			if !(v >= low && v <= high) {
				t.Errorf("%s: %s %.4g, published %g to %g (%s)", name, what, v, low, high, source)
			}
		}
		within("dry floor", p.Gravity.Floor, 0.990, 0.996, "common practice, no source")
		within("end pH without buffer", p.Acidity.EndUnbuffered, 2.5, 3.5,
			"a thread on acid production in sugar washes, 2.5 to 3; a yeast supplier's sheet of 2021: below 3.5 without care")
		last := p.Acidity.Points[len(p.Acidity.Points)-1]
		within("end pH with buffer", last.PH, 3.5, 4.0, "a yeast supplier's sheet of 2021: keep above 3.5 to 4.0")
		sugar := p.Nutrient.Sugar.In(units.GramPerLitre) / p.Strength.In(units.PercentVolume)
		within("sugar for 1 % vol, g/L", sugar, 15.2, 16.3,
			"16.5 to 17.2 g of hexose by strain, Winetech 2020, which is 15.7 to 16.3 g of sucrose; the flavouring brings up to 3 % of the strength")
		within("nitrogen, mg for a gram of sugar", p.Nutrient.Need.In(units.MilligramPerLitre)/p.Nutrient.Sugar.In(units.GramPerLitre),
			0.75, 1.25, "the wine trade's rule for strains of low to high need")
		for _, pack := range p.Packs {
			within("volumes in the "+pack.Kind, pack.Volumes.In(units.VolumesCO2), 2.8, 4.0, "suppliers' articles on seltzer")
			if pack.Kind == "keg" { // 3.0 volumes at 39.2 °F
				within("gauge at sea level, psi", pack.SeaLevel.In(units.PSIGauge), 16, 20,
					"BrewingTechniques 2 (1994) no. 1, table I: 17.0 at 38 °F, 18.1 at 40 °F, and 5 % for a drink with less in it than beer")
			}
		}
		if p.Yeast.Rehydration != nil {
			within("water to rehydrate, °C", p.Yeast.Rehydration.Temperature.In(units.Celsius), 25, 29, "a yeast supplier's sheet on ale yeast")
		}
	}
}
