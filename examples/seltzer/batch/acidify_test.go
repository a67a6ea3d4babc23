package batch

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A mmol of a strong acid in a litre takes 50.04 mg/L as CaCO3 of alkalinity, and so does one of lactic
// acid; citric acid, 192.12 g/mol, three times as much.
func TestAcidify(t *testing.T) {
	w := must(FromWater(well(), units.Litre.Of(10)))
	before := must(w.Alkalinity()).In(units.MilligramPerLitreCaCO3)
	for name, g := range map[string]float64{"hydrochloric acid": 0.36458, "lactic acid": 0.90078, "citric acid": 1.92123 / 3, "phosphoric acid": 0.97994} {
		s := after(w, Step{Kind: Acidify, What: name, Mass: grams(g)})
		near(t, name, must(s.Alkalinity()).In(units.MilligramPerLitreCaCO3), before-50.04, 0.05)
	}
	// 30 °C and pH by package water, whatever way the acid went in.
	p := must(well().AddAcid(water.LacticAcid, units.Millimole.Of(10), units.Litre.Of(10)))
	ph, _ := p.PH()
	near(t, "pH", must(after(w, Step{Kind: Acidify, What: "lactic acid", Mass: grams(0.90078)}).PH()), ph, 1e-3)
	refused(t, w, Step{Kind: Acidify, What: "baking soda"})
}
