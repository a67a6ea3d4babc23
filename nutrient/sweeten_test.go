package nutrient

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// 20 g/L of sucrose in 60 L and what they add: the sugar itself takes about 0.62 L/kg, and
// if it ferments it makes at most 0.51428 g of CO2 a gram (Gay-Lussac, CIAAW 2021).
func TestSweetenWith(t *testing.T) {
	b := must(SugarForStrength(WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
	s := must(SweetenWith(Sucrose(), units.GramPerLitre.Of(20), b.Finish))
	v := must(s.Liquid.Volume(room)).In(units.Litre)
	near(t, "volume", v, 60/(1-0.020*0.62), 0.02, "0.62 L/kg")
	near(t, "sugar", s.Fermentable.In(units.Gram)/v, 20, 1e-9, "asked")
	near(t, "strength", s.Strength.In(units.PercentVolume), 4.6*60/v, 1e-9, "the same ethanol in more volume")
	near(t, "gas", s.IfItFerments.In(units.GramCO2PerLitre), 20*0.51428, 0.001, "Gay-Lussac")
	if len(s.Cautions) != 1 {
		t.Errorf("%q", s.Cautions)
	}
	near(t, "hydrate", must(SweetenWith(DextroseMonohydrate(), units.GramPerLitre.Of(20), b.Finish)).Fermentable.In(units.Gram), 22*60/(1-0.022*0.65), 5, "crystal water")
	// A glass of it takes its share.
	glass := must(SweetenWith(Sucrose(), units.GramPerLitre.Of(20), must(b.Finish.Take(units.Percent.Of(0.5)))))
	near(t, "in 0.3 L", glass.Fermentable.In(units.Gram), s.Fermentable.In(units.Gram)/200, 1e-9, "in proportion")
	_, err := SweetenWith(Sucrose(), units.GramPerLitre.Of(201), b.Finish)
	refused(t, err, "sugar", 0.1, 200)
	_, err = SweetenWith(Lactose(), units.GramPerLitre.Of(20), b.Finish)
	refused(t, err, "sugar that sweetens", 1, 100)
	if _, err = SweetenWith(Sucrose(), units.GramPerLitre.Of(20), gravity.Solution{}); err == nil {
		t.Error("no drink is taken")
	}
}
