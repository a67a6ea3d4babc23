package must

import (
	"encoding/json"
	"errors"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// What cannot be a wash is refused wherever it is found: a report beyond an ion's range, a water too strong for
// its activities, a titration that is none.
func TestBringsRefusals(t *testing.T) {
	salty, err := water.NewProfile(room, units.CalciumCarbonate{}, water.Sodium.At(gramPerLitre(20)), water.Chloride.At(gramPerLitre(31)))
	if err != nil {
		t.Fatal(err)
	}
	sour := Reading{Acidity: gramPerLitre(5), Titration: water.MalicAcid.TitratedTo(8.2)}
	for what, ask := range map[string]func() (Brought, error){
		"titration of a fruit": func() (Brought, error) {
			return FromApple.Brings(gramPerLitre(120), pure(t), Reading{Acidity: gramPerLitre(5)})
		},
		"acidity of no juice": func() (Brought, error) {
			return FromApple.Brings(gramPerLitre(120), pure(t), Reading{Acidity: gramPerLitre(500), Titration: water.TartaricAcid.TitratedTo(7)})
		},
		"titration to no end": func() (Brought, error) {
			return FromApple.Brings(gramPerLitre(120), pure(t), Reading{Acidity: gramPerLitre(5), Titration: water.Titration{End: 3}})
		},
		"fruit in a brine": func() (Brought, error) { return FromApple.Brings(gramPerLitre(120), salty, sour) },
		"fruit and much of one": func() (Brought, error) {
			return FromGrape.Brings(gramPerLitre(220), pure(t), sour, water.Sodium.At(gramPerLitre(60)))
		},
		"honey in a brine": func() (Brought, error) { return FromHoney.Brings(gramPerLitre(230), salty, Reading{}) },
		"malt in a brine":  func() (Brought, error) { return FromMalt.Brings(gramPerLitre(120), salty, Reading{PH: 5.2}) },
		"malt and much of one": func() (Brought, error) {
			return FromMalt.Brings(gramPerLitre(120), pure(t), Reading{PH: 5.2}, water.Sodium.At(gramPerLitre(60)))
		},
		"honey and much of one": func() (Brought, error) {
			return FromHoney.Brings(gramPerLitre(230), pure(t), Reading{}, water.Potassium.At(gramPerLitre(60)))
		},
	} {
		if b, err := ask(); err == nil {
			t.Errorf("%s: pH %.2f", what, b.Drink.PH())
		}
	}
}

// A drink that is none has nothing to blend with.
func TestNoDrinkToBlend(t *testing.T) {
	d := salted(t, 12, 25, map[water.Ion]float64{water.Tartrate: 15, water.Malate: 10})
	if b, err := d.WithDrink(Drink{}, ToPH(d.PH()-0.1)); err == nil {
		t.Errorf("%+v", b)
	}
}

// A text that is none of what it should be is refused.
func TestTextsThatAreNone(t *testing.T) {
	for text, into := range map[string]any{
		`[]`: new(Drink), `{"pH":"x"}`: new(Aim), `{"name":5}`: new(Constituent), `{"name":"acidity as gold"}`: new(Constituent), `{"name":"gold"}`: new(Constituent),
	} {
		if err := json.Unmarshal([]byte(text), into); err == nil {
			t.Errorf("%T: %s is taken", into, text)
		}
	}
}

// Whatever moves ions in a drink stays within what a water can hold.
func TestMovedOutOfRange(t *testing.T) {
	d := salted(t, 12, 25, map[water.Ion]float64{water.Tartrate: 15, water.Malate: 10})
	_, err := d.moved("must.Drink.Malolactic", 0, map[water.Ion]float64{water.Lactate: 1e4})
	if wrong, is := errors.AsType[*units.RangeError](err); !is || wrong.Func != "must.Drink.Malolactic" {
		t.Error(err)
	}
}
