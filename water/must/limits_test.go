package must

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Each refusal states the limits that the doc comments promise.
func TestLimits(t *testing.T) {
	wine := Reading{PH: 3.4, Acidity: milligrams(7000), Titration: water.TartaricAcid.TitratedTo(7), Temperature: room}
	drink := check.Must(wine.Drink(FromGrape.Acids()))
	reading := func(change func(*Reading)) error {
		r := wine
		change(&r)
		_, err := r.Drink(FromGrape.Acids())
		return err
	}
	brings := func(gramsPerLitre float64) error {
		_, err := FromApple.Brings(gramPerLitre(gramsPerLitre), pure(t), Reading{})
		return err
	}
	second := func(_ any, err error) error { return err }
	shares := func(parts ...water.Content) error { return second(wine.Drink(parts)) }
	for what, c := range map[string]struct {
		err         error
		quantity    string
		least, most float64
	}{
		"pH low":          {reading(func(r *Reading) { r.PH = 1.9 }), "pH", 2, 6},
		"pH high":         {reading(func(r *Reading) { r.PH = 6.1 }), "pH", 2, 6},
		"acidity below":   {reading(func(r *Reading) { r.Acidity = milligrams(-1) }), "titratable acidity", 0, 100000},
		"acidity above":   {reading(func(r *Reading) { r.Acidity = milligrams(100001) }), "titratable acidity", 0, 100000},
		"too sour for it": {reading(func(r *Reading) { r.PH, r.Acidity = 2, milligrams(5000) }), "strong cations at this pH and acidity", 0, 1000},
		"share below":     {second(drink.Blend(drink, percentOf(-1))), "share", 0, 100},
		"share above":     {second(drink.Blend(drink, percentOf(101))), "share", 0, 100},
		"extract below":   {brings(0.9), "extract", 1, 900},
		"extract above":   {brings(901), "extract", 1, 900},
		"pH wanted":       {second(drink.WithAcid(water.TartaricAcid, ToPH(1.9))), "pH wanted", 2, 6},
		"acidity wanted":  {second(drink.WithAcid(water.TartaricAcid, ToAcidity(milligrams(-1), water.TartaricAcid.TitratedTo(7)))), "acidity wanted", 0, 100000},
		"a part below":    {shares(water.Malate.At(milligrams(-1))), "malate among the acids", 0, 1e6},
		"a part above":    {shares(water.Malate.At(milligrams(1.02e6))), "malate among the acids", 0, 1e6},
		"parts of naught": {shares(), "acids together", 1e-6, 1e6},
		"tartar above":    {second(salted(t, 12, 15, map[water.Ion]float64{water.Tartrate: 20}).Settled(milligrams(16 * 188.18))), "cream of tartar", 0, 15},
		"too much base": {second(drink.WithSalt(material.PotassiumBicarbonate(), ToAcidity(milligrams(8000), water.TartaricAcid.TitratedTo(7)))),
			"acidity wanted", 0, 7000},
		"no base": {second(drink.WithSalt(material.Gypsum(), ToPH(3.6))), "alkalinity of the salt", 1e-3, 100}, // % as OH-,
	} {
		t.Run(what, func(t *testing.T) {
			if e, is := errors.AsType[*units.RangeError](c.err); is { // what was solved for is so to 1e-8 only
				e.Max = math.Round(1e6*e.Max) / 1e6
			}
			check.Refused(t, c.err, c.quantity, c.least, c.most)
		})
	}
}

// What was read is never taken for what was left out, however small or odd it is.
func TestSmallReadingsCount(t *testing.T) {
	acidity := Reading{Acidity: milligrams(0.5), Titration: water.MalicAcid.TitratedTo(8.2)}
	for _, c := range []struct {
		f    Origin
		r    Reading
		says string
	}{
		{FromApple, Reading{PH: 0.5}, "one reading of two: give the titratable acidity"},
		{FromGrape, Reading{PH: 0.5}, "one reading of two: give the titratable acidity"},
		{FromHoney, Reading{PH: 0.5}, "one reading of two: give the titratable acidity"}, {FromMalt, Reading{PH: 0.5}, "pH 0.5"},
		{FromHoney, acidity, "one reading of two: give the pH"}, {FromMalt, acidity, "does not show its buffers in a titration"},
		{FromApple, Reading{PH: 0.5, Acidity: acidity.Acidity, Titration: acidity.Titration}, "pH 0.5"},
	} {
		if b, err := c.f.Brings(gramPerLitre(120), pure(t), c.r); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%v of %+v: pH %.2f, %v", c.f, c.r, b.Drink.PH(), err)
		}
	}
	small, err := FromApple.Brings(gramPerLitre(120), pure(t), Reading{Acidity: milligrams(0.5), Titration: water.MalicAcid.TitratedTo(8.2)})
	if err == nil && small.Drink.PH() < 5 {
		t.Errorf("an apple juice without acid has pH %.2f", small.Drink.PH())
	}
	for _, a := range []Aim{ToPH(1), ToPH(0.5), ToAcidity(milligrams(1), water.MalicAcid.TitratedTo(8.2))} {
		var back Aim
		text, err := json.Marshal(a)
		if err := errors.Join(err, json.Unmarshal(text, &back)); err != nil || back != a {
			t.Errorf("%s: %+v, %v", text, back, err)
		}
	}
}

// A juice of usual composition has the acidity that is usual, by the titration that it is stated by: malic acid
// to pH 8.2 for apples, tartaric for grapes; honey by its milliequivalents to 8.5 (Codex CXS 12 and its methods).
func TestUsualAcidityIsMet(t *testing.T) {
	for _, c := range []struct {
		f  Origin
		by water.Titration
	}{{FromApple, water.MalicAcid.TitratedTo(8.2)}, {FromGrape, water.TartaricAcid.TitratedTo(8.2)}} {
		u := check.Must(c.f.Usual())
		b := check.Must(c.f.Brings(u.Extract, pure(t), Reading{}))
		near(t, c.f.String(), check.Must(b.Drink.Acidity(c.by)).In(units.MilligramPerLitre), u.Parts[0].Content.Value.In(units.MilligramPerLitre), 0.5)
	}
	u := check.Must(FromHoney.Usual())
	b := check.Must(FromHoney.Brings(u.Extract, pure(t), Reading{}))
	near(t, "honey", check.Must(b.Drink.Acidity(water.HydrochloricAcid.TitratedTo(8.5))).In(units.MilligramPerLitre),
		u.Parts[0].Content.Value.In(units.MilligramPerLitre), 0.5)
}

// Kliewer et al. 1967: 50 wine varieties, early, from 3.7 to 13.2 g/L and pH 3.02 to 4.04, as the table of usual
// figures quotes them.
func TestUsualGrape(t *testing.T) {
	u := check.Must(FromGrape.Usual())
	near(t, "acidity, low", u.Parts[0].Content.Low.In(units.GramPerLitre), 3.7, 1e-9)
	near(t, "acidity, high", u.Parts[0].Content.High.In(units.GramPerLitre), 13.2, 1e-9)
	near(t, "pH, low", u.PH.Low, 3.02, 1e-9)
	near(t, "pH, high", u.PH.High, 4.04, 1e-9)
}

func percentOf(v float64) units.Share { return check.Percent(v) }

// A drink may have up to 16 % vol, where the effect of ethanol on its acids was read.
func TestStrongestDrink(t *testing.T) {
	for _, strength := range []float64{0, 16} {
		r := Reading{PH: 3.4, Acidity: milligrams(7000), Titration: water.TartaricAcid.TitratedTo(7), Temperature: room,
			Strength: units.PercentVolume.Of(checked.Number(strength))}
		check.Must(r.Drink(FromGrape.Acids()))
	}
	r := Reading{PH: 3.4, Acidity: milligrams(7000), Titration: water.TartaricAcid.TitratedTo(7), Temperature: room, Strength: units.PercentVolume.Of(16.1)}
	_, err := r.Drink(FromGrape.Acids())
	check.Refused(t, err, "strength", 0, 16)
}

// No dose of 50 g/L of lactic acid, 555 mEq/L at 90.08 g/mol, makes 60 g/L of acidity as tartaric, 799 mEq/L at 75.04 g/Eq; and
// 1 mol/L of lactic and acetic acid no more than 75.04 g/L.
func TestMostAcid(t *testing.T) {
	d := salted(t, 0, 5, map[water.Ion]float64{water.Malate: 20})
	by := water.TartaricAcid.TitratedTo(8.2)
	_, err := d.WithAcid(water.LacticAcid, ToAcidity(gramPerLitre(60), by))
	check.Refused(t, err, "dose for the aim", 0, 50_000)
	_, err = Analysis{Acidity: gramPerLitre(90), Titration: by, Temperature: room}.Drink(AcidShares{water.Lactate.At(milligrams(89)),
		water.Acetate.At(milligrams(59))})
	e, is := errors.AsType[*units.RangeError](err)
	if !is || e.Quantity != "titratable acidity" || e.Min != 0 || math.Abs(e.Max-75_040) > 100 {
		t.Error(err)
	}
}

// A drink without any is refused as JSON, and a long text that is no aim is not written out whole.
func TestRefusedJSON(t *testing.T) {
	_, err := json.Marshal(Drink{})
	if e, is := errors.AsType[*units.StateError](err); !is || e.Func != "must.Drink.MarshalJSON" {
		t.Error(err)
	}
	err = new(Aim).UnmarshalJSON([]byte(`{"pH":3.4,"acidity":` + strings.Repeat(" ", 100) + `"5 g/L"}`))
	if e, is := errors.AsType[*units.ParseError](err); !is || len(e.Input) > 64 {
		t.Error(err)
	}
	for _, ion := range []water.Ion{water.Potassium, water.Bicarbonate} {
		_, err := Reading{PH: 3.4, Acidity: milligrams(7000), Titration: water.TartaricAcid.TitratedTo(7), Temperature: room}.Drink(AcidShares{ion.At(milligrams(1))})
		if e, is := errors.AsType[*units.NameError](err); !is || e.Name != ion.Name() || len(e.Choices) != len(weak) {
			t.Error(err)
		}
	}
}

// A drink is what is in it at 20 °C, where nothing else is said ([Origin.FromAcidity], [Origin.Brings]).
func TestRoom(t *testing.T) {
	for _, o := range []Origin{FromApple, FromGrape, FromHoney, FromMalt} {
		near(t, o.String(), brings(t, o, 100, pure(t), Reading{}).Drink.Water().Temperature().In(units.Celsius), 20, 0)
	}
	guess := check.Must(FromApple.FromAcidity(gramPerLitre(5), water.MalicAcid.TitratedTo(8.2)))
	near(t, "by acidity", guess.Drink.Water().Temperature().In(units.Celsius), 20, 0)
}
