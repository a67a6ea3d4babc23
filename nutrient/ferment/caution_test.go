package ferment

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// The cautions at each side of the figure that they go by: growth slows sharply below pH
// 3.00 (Liu et al.), keep above 3.5 (yeast supplier 2021), potassium 300 mg/L (Kudo et al.
// 1998, recalled from memory); 20 mg/L of nitrogen left is common practice, no source.
func TestCautionsOfAFerment(t *testing.T) {
	point := func(ph, low, nitrogen float64) []Point {
		return []Point{{PH: evidence.Figure[float64]{Value: 6, Low: 6}}, {PH: evidence.Figure[float64]{Value: ph, Low: low}, Nitrogen: amount.MgPerL(nitrogen)}}
	}
	var fed nutrient.Supply
	fed.Ammonium, fed.Potassium = amount.MgPerL(1), amount.MgPerL(100)
	for _, c := range []struct {
		name      string
		points    []Point
		potassium float64 // in the water, mg/L
		want      string
	}{
		{"good", point(3.6, 3.51, 19.9), 200.5, ""},
		{"alkaline", append([]Point{{PH: evidence.Figure[float64]{Value: 8.35, Low: 8.35}}}, point(3.6, 3.51, 0)...), 200.5, "about pH 8.3: yeast starts slowly"},
		{"not alkaline", append([]Point{{PH: evidence.Figure[float64]{Value: 8.25, Low: 8.25}}}, point(3.6, 3.51, 0)...), 200.5, ""},
		{"slow", point(2.99, 2.9, 0), 200.5, "falls to about 3.0"},
		{"not slow", point(3.01, 2.9, 0), 200.5, "may fall to 2.9"},
		{"maybe", point(3.6, 3.49, 0), 200.5, "may fall to 3.5"},
		{"nitrogen", point(3.6, 3.55, 20.5), 200.5, "nitrogen is left"},
		{"potassium", point(3.6, 3.55, 0), 199, "Potassium is about 299 mg/L"},
	} {
		f := fermenting{feed: fed, start: acidity.Liquid{Potassium: c.potassium / formula.WeightK}}
		all := f.cautions(c.points[0].PH.Value, lowest(c.points), c.points[len(c.points)-1].Nitrogen)
		switch {
		case c.want == "" && len(all) == 0:
		case c.want != "" && len(all) == 1 && strings.Contains(all[0].Text(), c.want):
		default:
			t.Errorf("%s: %q, want one with %q", c.name, all, c.want)
		}
	}
	f := fermenting{}
	last := point(3.6, 3.55, 0)
	if all := f.cautions(3.6, lowest(last), last[1].Nitrogen); len(all) != 0 {
		t.Errorf("without ammonium: %q", all)
	}
}

// The litre of package water, which a kilogram of water fills.
func TestWaterPerLitre(t *testing.T) {
	check.Near(t, "water at 20 °C, kg/L", waterPerLitre, 0.99820, 0.00005, "Bettin & Spieweck 1990: 998.203 kg/m³")
}

// What a ferment of water holds in each litre of drink: 57.4 kg of water in 60 L.
func TestWaterFillsAShareOfTheDrink(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	f.Water = check.Must(water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}))
	c := check.Must(f.checked("test"))
	check.Near(t, "share", c.perLitre, f.Brew.Water.In(units.Kilogram)/0.9982/60, 1e-6, "by hand")
	check.Near(t, "hexose", c.hexose, f.Brew.Fermentable.In(units.Gram)*0.9994*1.05263, 0.05, "inversion 5.263 %")
}

// What is said of a course is said of its pH, wherever that comes from; a pH that none is, is refused.
func TestCautionsByPH(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	course := check.Must(f.Course(3))
	of := check.Must(f.Cautions(course.Points[0].PH.Value, course.Points[3].PH))
	if len(of) == 0 || !slices.Equal(of, course.Cautions) {
		t.Errorf("%q, of the course %q", of, course.Cautions)
	}
	if all := check.Must(f.Cautions(7, evidence.Figure[float64]{Value: 2.5, Low: 2.4})); !slices.ContainsFunc(all,
		func(c caution.Caution) bool { return c.Code() == "likely_to_stop" }) {
		t.Errorf("%q", all)
	}
	for _, ph := range []float64{0, 13.5, math.NaN()} {
		if _, err := f.Cautions(ph, course.Points[3].PH); err == nil || !strings.Contains(err.Error(), "Tank.Cautions") {
			t.Errorf("pH %g: %v", ph, err)
		}
	}
}
