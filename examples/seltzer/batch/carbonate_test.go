package batch

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// The printed chart of breweries: 2.5 volumes at 38 °F need 11.2 psi (BrewingTechniques 2 (1994) no. 1, table I),
// for a beer that holds some 3 % less gas than this drink; the range of the published ways is 15 %.
func TestCarbonate(t *testing.T) {
	s, left := one(after(beer(), Step{Kind: Chill, Temperature: deg(3.33)}), Step{Kind: Carbonate, Gauge: units.BarGauge.Of(0.772)})
	near(t, "content", must(s.Content()).In(units.GramCO2PerLitre), 2.5*1.977, 0.25)
	near(t, "taken up", left.In[CarbonDioxide], s.Of(CarbonDioxide)-beer().Of(CarbonDioxide), 1e-9)
	near(t, "above it", s.Above().Pressure.In(units.Kilopascal), 101.325+77.2, 1e-9)
	liquid := must(carbonation.NewLiquid(must(s.Solution())))
	want := must(liquid.Content(s.Above().Pressure, deg(3.33))).In(units.GramCO2PerLitre)
	near(t, "as package carbonation has it", must(s.Content()).In(units.GramCO2PerLitre), want, 1e-4*want)
	again := after(s, Step{Kind: Carbonate, Gauge: units.BarGauge.Of(0.772)})
	same(t, "twice", s, again, 1e-9)
	u := Usual()
	u.Solubility = 1.05
	more, _, err := Do(Step{Kind: Carbonate, Gauge: units.BarGauge.Of(0.772)}, s, &u)
	near(t, "of a drink that holds 5 % more", must(more.Content()).In(units.GramCO2PerLitre)/must(s.Content()).In(units.GramCO2PerLitre),
		1.05, 3e-4) // what is bound as bicarbonate does not go with it
	if err != nil {
		t.Error(err)
	}
	refused(t, s, Step{Kind: Carbonate, Gauge: units.BarGauge.Of(40)})
}
