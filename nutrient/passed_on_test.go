package nutrient

import (
	"reflect"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// What a search meets inside, a liquid that no formula covers or a brine, comes out as the
// error it is, with nothing beside it.
func TestErrorsOfThePartsArePassedOn(t *testing.T) {
	liquid := func(water, extract, ethanol float64) gravity.Solution {
		return must(gravity.NewSolution(kilograms(water), kilograms(extract), kilograms(ethanol)))
	}
	var (
		spirit  = liquid(40, 0, 60)
		syrup   = liquid(40, 60, 0)
		heavy   = Flavouring{Sugar: units.GramPerLitre.Of(700)}
		litre   = units.Litre.Of(1)
		drink   = must(water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(10), water.Citrate.At(mgPerL(500))))
		dextrin = must(must(liquid(0.4, 0, 0.1).AddExtract(gravity.Dextrin, kilograms(0.5))).Times(1))
	)
	wash := Wash{Fermentable: WhiteSugar(), Attenuation: units.Percent.Of(100)}
	in := func(b Basis, base gravity.Solution) Wash {
		w := wash
		w.Basis, w.Base = b, base
		return w
	}
	most := units.Kilogram.Of(1e12) // of one thing in a gravity.Solution

	// Ferments of a Brew made by hand.
	sea, dry, vain := hall(AmmoniumSulfate()), hall(AmmoniumSulfate()), hall(AmmoniumSulfate())
	sea.Water = must(water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(100), water.Potassium.At(mgPerL(100))))
	sea.Brew.Water = units.Kilogram.Of(1e9) // to 60 L of drink
	dry.Brew.Water = units.Milligram.Of(1)
	vain.Brew.Start = gravity.Solution{}
	fed := hall(AmmoniumSulfate())
	fed.Feed[0].Mass = grams(0.9 * 60 / fed.Feed[0].Source.Nitrogen().In(units.Fraction))
	half := units.Percent.Of(50)

	for what, f := range map[string]func() (any, error){
		"spirit and syrup": func() (any, error) { return Dilute(spirit, syrup, units.PercentVolume.Of(5)) },
		"more water than is counted": func() (any, error) {
			return Dilute(must(gravity.NewSolution(units.Mass{}, units.Mass{}, most)), emptyLiquid, units.PercentVolume.Of(1))
		},
		"a liqueur too thick": func() (any, error) {
			return Flavouring{Strength: units.PercentVolume.Of(45), Sugar: units.GramPerLitre.Of(700)}.Liquid(litre)
		},
		"syrup as much as spirit":       func() (any, error) { return Trial{litre, litre}.Scale(spirit, heavy) },
		"sweet spirit":                  func() (any, error) { return SweetenWith(WhiteSugar(), units.GramPerLitre.Of(200), liquid(55, 0, 45)) },
		"a base larger than the kettle": func() (any, error) { return in(Kettle(litre, room), liquid(5, 0, 0)).For(units.PercentVolume.Of(5)) },
		"dextrin and sugar and ethanol": func() (any, error) { return in(WaterAtHand(units.Mass{}), dextrin).For(units.PercentVolume.Of(19)) },
		"water beyond all that is meant": func() (any, error) {
			return in(WaterAtHand(units.Kilogram.Of(1)), must(gravity.NewSolution(most, units.Mass{}, units.Mass{}))).From(units.Kilogram.Of(1))
		},
		"a titration to pH 3": func() (any, error) {
			return Acidify(drink, 0, 3, sold(t, water.CitricAcid, 100), water.Titration{As: water.CitricAcid, End: 3}, litre, EU)
		},
		"pH of a brine":                func() (any, error) { return sea.At(end) },
		"PH of a brine":                func() (any, error) { return sea.PH(end) },
		"buffer for a brine":           func() (any, error) { return sea.BufferFor(3.5, SodiumBicarbonate) },
		"a brine corrected":            func() (any, error) { return sea.Correct(half, 3, 3.5, SodiumBicarbonate) },
		"all buffer in a drop":         func() (any, error) { return dry.BufferFor(3.5, SodiumBicarbonate) },
		"all correction in a drop":     func() (any, error) { return dry.Correct(half, 3, 3.5, SodiumBicarbonate) },
		"sugar used that is not there": func() (any, error) { return vain.At(end) },
		"a pH out of reach":            func() (any, error) { return fed.Correct(half, 2.5, 6.4, TrisodiumCitrate) },
	} {
		v, err := f()
		if err == nil || !reflect.ValueOf(v).IsZero() {
			t.Errorf("%s: got %+v, %v; want nothing and an error", what, v, err)
		}
	}
}
