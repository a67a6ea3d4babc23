package ferment

import (
	"reflect"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// What a search meets inside, a liquid that no formula covers or a brine, comes out as the
// error it is, with nothing beside it.
func TestErrorsOfAFermentArePassedOn(t *testing.T) {
	// Ferments of a Brew made by hand.
	sea, dry, vain := hall(material.AmmoniumSulfate()), hall(material.AmmoniumSulfate()), hall(material.AmmoniumSulfate())
	sea.Water = check.Must(water.NewProfile(amount.Room, units.MilligramPerLitreCaCO3.Of(100), water.Potassium.At(amount.MgPerL(100))))
	sea.Brew.Water = units.Kilogram.Of(1e9) // to 60 L of drink
	dry.Brew.Water = units.Milligram.Of(1)
	vain.Brew.Start = gravity.Solution{}
	fed := hall(material.AmmoniumSulfate())
	fed.Feed[0].Mass = amount.Grams(0.9 * 60 / fed.Feed[0].Material.Composition().Nitrogen().In(units.Fraction))
	half := units.Percent.Of(50)

	for what, f := range map[string]func() (any, error){
		"pH of a brine":                func() (any, error) { return sea.At(end) },
		"a share above all":            func() (any, error) { return hall(material.AmmoniumSulfate()).At(units.Percent.Of(101)) },
		"buffer for a brine":           func() (any, error) { return sea.BufferFor(material.BakingSoda(), 3.5) },
		"a brine corrected":            func() (any, error) { return sea.Correct(material.BakingSoda(), half, 3, 3.5) },
		"all buffer in a drop":         func() (any, error) { return dry.BufferFor(material.BakingSoda(), 3.5) },
		"all correction in a drop":     func() (any, error) { return dry.Correct(material.BakingSoda(), half, 3, 3.5) },
		"sugar used that is not there": func() (any, error) { return vain.At(end) },
		"a pH out of reach":            func() (any, error) { return fed.Correct(shelf.Material("trisodium citrate dihydrate"), half, 2.5, 6.4) },
	} {
		v, err := f()
		if err == nil || !reflect.ValueOf(v).IsZero() {
			t.Errorf("%s: got %+v, %v; want nothing and an error", what, v, err)
		}
	}
}
