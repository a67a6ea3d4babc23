package water

import (
	"reflect"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// What a function meets inside, a brine or a content beyond what a water can hold, comes
// out as the error it is, with nothing beside it.
func TestErrorsOfThePartsArePassedOn(t *testing.T) {
	salty := func(g float64) Profile {
		p, err := NewProfile(celsius(20), caco3(50), Sodium.At(mgL(g*393)), Chloride.At(mgL(g*607)))
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	brine := salty(32) // 0.55 mol/kg
	near, err := salty(28).WithPH(7)
	if err != nil {
		t.Fatal(err)
	}
	known := brine
	known.ph = 7
	sour, err := NewProfile(celsius(20), caco3(0), Phosphate.At(mgL(mostIon)), Lactate.At(mgL(mostIon)))
	if err != nil {
		t.Fatal(err)
	}
	full, err := NewProfile(celsius(20), caco3(50), Sulfate.At(mgL(mostIon)))
	if err != nil {
		t.Fatal(err)
	}
	one := litres(1)
	ask := Request{known, one, []Stock{{Salt: material.Gypsum()}}, []Target{Calcium.Aim(mgL(50))}, nil}
	dry := ask
	dry.Water, dry.Volume = reports[0].profile(t, 20), litres(0)

	for what, f := range map[string]func() (any, error){
		"more acid than is counted":  func() (any, error) { return sour.AlkalinityAt(1, units.AbsolutePressure{}) },
		"acidity of a brine":         func() (any, error) { return brine.TitratableAcidity(TartaricAcid.TitratedTo(7)) },
		"membrane before a brine":    func() (any, error) { return known.Permeate(units.Percent.Of(98)) },
		"lime into near a brine":     func() (any, error) { return near.BaseToPH(material.SlakedLime(), 12.4, one) },
		"more alkalinity than is":    func() (any, error) { return near.Add(one, material.SodiumHydroxide().Dose(units.Gram.Of(41))) },
		"vinegar for a mineral acid": func() (any, error) { return near.AcidToPH(AceticAcid, 2.5, one, CO2Loss{}) },
		"more sulfate than is":       func() (any, error) { return full.Dechlorinate(material.SodiumMetabisulfite(), Residual{mmol: 1}, one) },
		"salts for a brine":          func() (any, error) { return ask.Solve() },
		"salts explained":            func() (any, error) { return ask.Explain() },
		"salts explained for no one": func() (any, error) { return dry.Explain() },
	} {
		v, err := f()
		if err == nil || !reflect.ValueOf(v).IsZero() {
			t.Errorf("%s: got %+v, %v; want nothing and an error", what, v, err)
		}
	}
}
