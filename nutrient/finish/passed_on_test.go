package finish

import (
	"reflect"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// What a search meets inside, a liquid that no formula covers or a brine, comes out as the
// error it is, with nothing beside it.
func TestErrorsOfTheFinishArePassedOn(t *testing.T) {
	liquid := func(water, extract, ethanol float64) gravity.Solution {
		return check.Must(gravity.NewSolution(amount.Kilograms(water), amount.Kilograms(extract), amount.Kilograms(ethanol)))
	}
	var (
		spirit = liquid(40, 0, 60)
		syrup  = liquid(40, 60, 0)
		heavy  = Flavouring{Sugar: units.GramPerLitre.Of(700)}
		litre  = units.Litre.Of(1)
		drink  = check.Must(water.NewProfile(amount.Room, units.MilligramPerLitreCaCO3.Of(10), water.Citrate.At(amount.MgPerL(500))))
		most   = units.Kilogram.Of(1e12) // of one thing in a gravity.Solution
	)
	for what, f := range map[string]func() (any, error){
		"spirit and syrup": func() (any, error) { return Dilute(spirit, syrup, units.PercentVolume.Of(5)) },
		"more water than is counted": func() (any, error) {
			return Dilute(check.Must(gravity.NewSolution(units.Mass{}, units.Mass{}, most)), gravity.Solution{}, units.PercentVolume.Of(1))
		},
		"a liqueur too thick": func() (any, error) {
			return Flavouring{Strength: units.PercentVolume.Of(45), Sugar: units.GramPerLitre.Of(700)}.Liquid(litre)
		},
		"syrup as much as spirit": func() (any, error) { return BenchTrial{litre, litre}.Scale(spirit, heavy) },
		"sweet spirit": func() (any, error) {
			return SweetenWith(material.WhiteSugar(), units.GramPerLitre.Of(200), liquid(55, 0, 45))
		},
		"a titration to pH 3": func() (any, error) {
			return Acidify(drink, 0, 3, sold(t, water.CitricAcid, 100), water.Titration{As: water.CitricAcid, End: 3}, litre, law.EU)
		},
	} {
		v, err := f()
		if err == nil || !reflect.ValueOf(v).IsZero() {
			t.Errorf("%s: got %+v, %v; want nothing and an error", what, v, err)
		}
	}
}
