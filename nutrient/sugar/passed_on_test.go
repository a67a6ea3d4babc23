package sugar

import (
	"reflect"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// What a search meets inside, a liquid that no formula covers or a brine, comes out as the
// error it is, with nothing beside it.
func TestErrorsOfAWashArePassedOn(t *testing.T) {
	liquid := func(water, extract, ethanol float64) gravity.Solution {
		return check.Must(gravity.NewSolution(amount.Kilograms(water), amount.Kilograms(extract), amount.Kilograms(ethanol)))
	}
	var (
		litre   = units.Litre.Of(1)
		dextrin = check.Must(check.Must(liquid(0.4, 0, 0.1).AddExtract(gravity.AsDextrin, amount.Kilograms(0.5))).Times(1))
		most    = units.Kilogram.Of(1e12) // of one thing in a gravity.Solution
	)
	wash := Wash{Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100)}
	in := func(b Basis, base gravity.Solution) Wash {
		w := wash
		w.Basis, w.Base = b, base
		return w
	}
	for what, f := range map[string]func() (any, error){
		"a base larger than the kettle": func() (any, error) {
			return in(Kettle(litre, amount.Room), liquid(5, 0, 0)).For(units.PercentVolume.Of(5))
		},
		"dextrin and sugar and ethanol": func() (any, error) { return in(WaterAtHand(units.Mass{}), dextrin).For(units.PercentVolume.Of(19)) },
		"water beyond all that is meant": func() (any, error) {
			return in(WaterAtHand(units.Kilogram.Of(1)), check.Must(gravity.NewSolution(most, units.Mass{}, units.Mass{}))).From(units.Kilogram.Of(1))
		},
	} {
		v, err := f()
		if err == nil || !reflect.ValueOf(v).IsZero() {
			t.Errorf("%s: got %+v, %v; want nothing and an error", what, v, err)
		}
	}
}
