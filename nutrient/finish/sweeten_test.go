package finish

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// 20 g/L of sucrose in 60 L and what they add: the sugar itself takes about 0.62 L/kg, and
// if it ferments it makes at most 0.51428 g of CO2 a gram (Gay-Lussac, CIAAW 2021).
func TestSweetenWith(t *testing.T) {
	b := check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
	s := check.Must(SweetenWith(material.Sucrose(), units.GramPerLitre.Of(20), b.Finish))
	v := check.Must(s.Liquid.Volume(amount.Room)).In(units.Litre)
	check.Near(t, "volume", v, 60/(1-0.020*0.62), 0.02, "0.62 L/kg")
	check.Near(t, "sugar", s.Fermentable.In(units.Gram)/v, 20, 1e-9, "asked")
	check.Near(t, "strength", s.Strength.In(units.PercentVolume), 4.6*60/v, 1e-9, "the same ethanol in more volume")
	check.Near(t, "gas", s.IfItFerments.In(units.GramCO2PerLitre), 20*0.51428, 0.001, "Gay-Lussac")
	if len(s.Cautions) != 1 {
		t.Errorf("%q", s.Cautions)
	}
	check.Near(t, "hydrate", check.Must(SweetenWith(material.DextroseMonohydrate(), units.GramPerLitre.Of(20), b.Finish)).Fermentable.In(units.Gram),
		22*60/(1-0.022*0.65), 5, "crystal water")
	// A glass of it takes its share.
	glass := check.Must(SweetenWith(material.Sucrose(), units.GramPerLitre.Of(20), check.Must(b.Finish.Take(units.Percent.Of(0.5)))))
	check.Near(t, "in 0.3 L", glass.Fermentable.In(units.Gram), s.Fermentable.In(units.Gram)/200, 1e-9, "in proportion")
	_, err := SweetenWith(material.Sucrose(), units.GramPerLitre.Of(201), b.Finish)
	check.Refused(t, err, "sugar", 0.1, 200)
	_, err = SweetenWith(shelf.Material("lactose monohydrate"), units.GramPerLitre.Of(20), b.Finish)
	check.Refused(t, err, "sugar that sweetens", 1, 100)
	if _, err = SweetenWith(material.Sucrose(), units.GramPerLitre.Of(20), gravity.Solution{}); err == nil {
		t.Error("no drink is taken")
	}
}
