package must

import (
	"errors"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

func gramPerLitre(x float64) units.MassConcentration {
	return units.GramPerLitre.Of(checked.Number(x))
}

// pure is a water without ions.
func pure(t rapid.TB) water.Profile {
	t.Helper()
	p, err := water.NewProfile(room, units.CalciumCarbonate{})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func brings(t rapid.TB, o Origin, extract float64, in water.Profile, r Reading, own ...water.Content) Brought {
	t.Helper()
	b, err := o.Brings(gramPerLitre(extract), in, r, own...)
	if err != nil {
		t.Fatal(o, err)
	}
	return b
}

// What was not used to make the usual compositions holds them to account.
func TestUsualAgainstOthers(t *testing.T) {
	// An apple juice of the mean acidity of Mattick & Moyer, with the strong ions of Kumar's: 175 other varieties
	// have a mean pH of 3.71 with a deviation of 0.16 (Eisele & Drake 2005, as a page quotes it).
	apple := brings(t, FromApple, 125.6, pure(t), Reading{}).Drink
	near(t, "apple", apple.PH(), 3.71, 0.1)
	// Gluconic acid that pH and acidity of 490 honeys ask for, g/kg: 20 honeys of Galicia have 3.91 to 11.71 of it with its
	// lactone (Mato et al. 1997, read).
	honey := brings(t, FromHoney, 1000*honeyOf*0.828, pure(t), Reading{}).Drink
	near(t, "gluconic acid", held(honey, water.Gluconate, 196.155)/honeyOf, (3.91+11.71)/2, (11.71-3.91)/2)
	near(t, "honey", honey.PH(), 3.91, 1e-6)
	wort := brings(t, FromMalt, 125.6, pure(t), Reading{}).Drink
	near(t, "wort", wort.PH(), 5.2, 1e-6)
	// By the charge of its acids a wort of pH 5.2 has 30 mEq/L of cations. Potassium, sodium, calcium and magnesium of
	// Holzmann & Piendl are 25.3; basic amino acids are cations too.
	near(t, "cations of the wort", wort.StrongIons().In(units.MilliequivalentPerLitre), 25.3, 0.25*25.3)
	// Lactic acid, mmol/L: 9.3 bring a wort to 4.2 to 4.5, to which the peptides are fitted; 0.6 for 0.1 pH near 5.1 by
	// another rule of thumb.
	dose := func(from Drink, ph float64) float64 {
		a, err := from.WithAcid(water.LacticAcid, ToPH(ph))
		if err != nil {
			t.Fatal(err)
		}
		return a.PerLitre.In(units.MilligramPerLitre) / 90.078
	}
	near(t, "lactic acid to 4.35", dose(wort, 4.35), 9.3, 0.5)
	near(t, "lactic acid for 0.1", dose(wort, 5.1), 0.6, 0.15)
}

// held is an acid in g/L.
func held(d Drink, i water.Ion, mass float64) float64 {
	return d.water.Ion(i).In(units.GramPerLitre) * mass / i.MolarMass().In(units.GramPerMole)
}

// Twice the extract brings twice of everything; a water adds its own; a reading is shown again.
func TestBringsInProportion(t *testing.T) {
	well, err := water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(60), water.Calcium.At(milligrams(40)), water.Chloride.At(milligrams(30)),
		water.Sodium.At(milligrams(9.5)))
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range []Origin{FromApple, FromGrape, FromHoney, FromMalt} {
		one, two := brings(t, o, 60, pure(t), Reading{}), brings(t, o, 120, pure(t), Reading{})
		for _, i := range []water.Ion{water.Potassium, water.Magnesium, water.Phosphate} {
			near(t, o.String()+" "+i.Name(), two.Drink.water.Ion(i).In(units.MilligramPerLitre), 2*one.Drink.water.Ion(i).In(units.MilligramPerLitre),
				1e-6*two.Drink.water.Ion(i).In(units.MilligramPerLitre)+1e-9)
		}
		near(t, o.String()+" amino", two.Amino.In(units.MilligramPerLitre), 2*one.Amino.In(units.MilligramPerLitre), 1e-9)
		if one.Measured || one.Band < 0.3 {
			t.Errorf("%v: %+v", o, one)
		}
		hard := brings(t, o, 120, well, Reading{})
		near(t, o.String()+" calcium",
			hard.Drink.water.Ion(water.Calcium).In(units.MilligramPerLitre)-two.Drink.water.Ion(water.Calcium).In(units.MilligramPerLitre), 40, 1e-6)
		if !(hard.Drink.PH() > two.Drink.PH()) {
			t.Errorf("%v: pH %.3f in a water with alkalinity, %.3f in one without", o, hard.Drink.PH(), two.Drink.PH())
		}
		// As if it had been measured: the same drink.
		r := Reading{PH: hard.Drink.PH(), Temperature: room}
		if o != FromMalt {
			ta, err := hard.Drink.Acidity(water.TartaricAcid.TitratedTo(8.2))
			if err != nil {
				t.Fatal(err)
			}
			r.Acidity, r.Titration = ta, water.TartaricAcid.TitratedTo(8.2)
		}
		back := brings(t, o, 120, well, r)
		near(t, o.String()+" read back", back.Drink.PH(), hard.Drink.PH(), 1e-6)
		near(t, o.String()+" strong ions", back.Drink.StrongIons().In(units.MilliequivalentPerLitre),
			hard.Drink.StrongIons().In(units.MilliequivalentPerLitre), 0.02*hard.Drink.StrongIons().In(units.MilliequivalentPerLitre))
		if !back.Measured || back.Band != bandMeasured {
			t.Errorf("%v: %+v", o, back)
		}
	}
}

// Potassium by a report stays what the report says; the acidity alone gives the guess of FromAcidity to within the minerals.
func TestBringsWhatIsKnown(t *testing.T) {
	for _, o := range []Origin{FromApple, FromGrape, FromHoney, FromMalt} {
		for _, mg := range []float64{300, 2500} {
			near(t, o.String(),
				brings(t, o, 150, pure(t), Reading{}, water.Potassium.At(milligrams(mg))).Drink.water.Ion(water.Potassium).In(units.MilligramPerLitre), mg, 1e-9)
		}
	}
	guess, err := FromApple.FromAcidity(gramPerLitre(4), water.MalicAcid.TitratedTo(8.2))
	if err != nil {
		t.Fatal(err)
	}
	b := brings(t, FromApple, 125.6, pure(t), Reading{Acidity: gramPerLitre(4), Titration: water.MalicAcid.TitratedTo(8.2)})
	near(t, "by acidity", b.Drink.PH(), guess.PH, 0.05)
	if b.Band != band || b.Measured {
		t.Errorf("%+v", b)
	}
	juice := brings(t, FromHoney, 200, pure(t), Reading{}, water.Potassium.At(milligrams(500)))
	if plain := brings(t, FromHoney, 200, pure(t), Reading{}); !(juice.Drink.PH() > plain.Drink.PH()) {
		t.Error("more potassium, and no higher pH")
	}
}

func TestBringsRefuses(t *testing.T) {
	r := Reading{PH: 3.5, Acidity: gramPerLitre(6), Titration: water.TartaricAcid.TitratedTo(8.2)}
	for what, c := range map[string]struct {
		o       Origin
		extract float64
		r       Reading
		kind    any
	}{
		"no origin": {Origin(7), 100, r, new(*units.NameError)}, "no extract": {FromApple, 0, r, new(*units.RangeError)},
		"pH alone":               {FromApple, 100, Reading{PH: 3.5}, new(*units.StateError)},
		"acidity alone of honey": {FromHoney, 100, Reading{Acidity: gramPerLitre(1)}, new(*units.StateError)},
		"acidity of malt":        {FromMalt, 100, r, new(*units.StateError)},
		"far too sour":           {FromApple, 100, Reading{PH: 2.1, Acidity: gramPerLitre(1), Titration: water.TartaricAcid.TitratedTo(8.2)}, new(*units.RangeError)},
	} {
		_, err := c.o.Brings(gramPerLitre(c.extract), pure(t), c.r)
		if !errors.As(err, c.kind) {
			t.Errorf("%s: %v", what, err)
		}
	}
	if _, err := Origin(-1).Usual(); err == nil {
		t.Error("an origin that is none has a usual composition")
	}
	if _, err := FromMalt.FromAcidity(gramPerLitre(3), water.TartaricAcid.TitratedTo(8.2)); err == nil {
		t.Error("malt by its acidity")
	}
	if len(FromHoney.Acids()) != 1 || FromMalt.Acids() != nil {
		t.Error("acids of honey and malt")
	}
}

// Each figure lies in its spread and says where it comes from.
func TestUsualSpreads(t *testing.T) {
	for _, o := range []Origin{FromApple, FromGrape, FromHoney, FromMalt} {
		u, err := o.Usual()
		if err != nil || !(u.PH.Low < u.PH.Value && u.PH.Value < u.PH.High) {
			t.Errorf("%v: %+v, %v", o, u.PH, err)
		}
		for _, p := range u.Parts {
			if c := p.Content; !(c.Low.Compare(c.Value) < 0 && c.Value.Compare(c.High) < 0) || p.Name == "" || c.Evidence.String() == "" {
				t.Errorf("%v: %+v", o, p)
			}
		}
	}
}

// The usual compositions typed a second time, from the tables that they were read in: usual, least, most, by the litre of
// wash (of honey by the kilogram); nitrogen as N.
func TestUsualAsTyped(t *testing.T) {
	type figures [3]float64
	for o, want := range map[Origin]struct {
		extract float64
		ph      figures
		parts   map[string]figures
	}{
		FromApple: {125.6, figures{3.71, 3.37, 4.24}, map[string]figures{
			"acidity as malic acid": {4200, 1500, 9100}, "calcium": {85, 50, 120}, "magnesium": {40, 20, 60}, "sodium": {17, 11, 24},
			"phosphate": {215, 120, 300}, "zinc": {0.2, 0.05, 0.5}, "amino nitrogen": {90, 20, 256},
		}},
		FromGrape: {240, figures{3.4, 3.02, 4.04}, map[string]figures{
			"acidity as tartaric acid": {7000, 3700, 13200}, "calcium": {60, 28, 134}, "magnesium": {100, 70, 151}, "phosphate": {400, 290, 640},
			"zinc": {0.5, 0.1, 1.5}, "amino nitrogen": {100, 40, 250}, "ammonium nitrogen": {50, 20, 120},
		}},
		FromHoney: {100.95, figures{3.91, 3.42, 6.10}, map[string]figures{
			"acidity as hydrochloric acid": {1061.66, 316.46, 2168.89}, // 29.12, 8.68 and 59.49 mEq/kg of 36.458
			"potassium":                    {764, 34.8, 3640}, "calcium": {50, 7.21, 94.3}, "magnesium": {20, 7, 90}, "phosphate": {276, 90, 782}, "zinc": {2, 0.5, 5},
			"amino nitrogen": {30, 5, 60},
		}},
		FromMalt: {125.6, figures{5.2, 5.0, 5.6}, map[string]figures{
			"potassium": {550, 400, 700}, "sodium": {30, 10, 60}, "calcium": {35, 20, 60}, "magnesium": {100, 70, 120}, "phosphate": {920, 600, 1200},
			"zinc": {0.12, 0.05, 0.2}, "citrate": {116, 60, 200}, "malate": {63, 30, 120}, "glutamate": {2600, 1300, 5200},
			"amino nitrogen": {160, 100, 220}, "ammonium nitrogen": {10, 5, 25},
		}},
	} {
		u, err := o.Usual()
		if err != nil {
			t.Fatal(err)
		}
		near(t, o.String()+" extract", u.Extract.In(units.GramPerLitre), want.extract, 0.05)
		k := 1.0
		if o == FromHoney {
			k = 0.010 / 0.0820423 // 10 g at 1.42 kg/L in 75 mL
		}
		if got := (figures{u.PH.Value, u.PH.Low, u.PH.High}); got != want.ph {
			t.Errorf("%v: pH %v, %v", o, got, want.ph)
		}
		if len(u.Parts) != len(want.parts) {
			t.Errorf("%v: %d parts", o, len(u.Parts))
		}
		for _, p := range u.Parts {
			f, ok := want.parts[p.Name]
			if !ok {
				t.Errorf("%v: %s", o, p.Name)
			}
			for i, c := range []units.MassConcentration{p.Content.Value, p.Content.Low, p.Content.High} {
				near(t, o.String()+" "+p.Name, c.In(units.MilligramPerLitre)/k, f[i], 1e-4*f[i])
			}
		}
	}
	for o, band := range map[Origin]float64{FromApple: 0.4, FromGrape: 0.4, FromHoney: 0.5, FromMalt: 0.3} {
		near(t, "band of "+o.String(), brings(t, o, 100, pure(t), Reading{}).Band, band, 0)
	}
	near(t, "ammonium of a wort", brings(t, FromMalt, 125.6, pure(t), Reading{}).Drink.water.Ion(water.Ammonium).In(units.MilligramPerLitre),
		10*18.039/14.007, 1e-6)
}

// A juice of currants: 30 g/L as citric acid and pH 2.8. At pH 8.2 it has given up all its protons, so that three for each mmol are
// what the lye finds and what was there as salt, less the free H+; its titration is beyond the constants unless it is thinned.
func TestSharpJuice(t *testing.T) {
	d, err := Reading{PH: 2.8, Acidity: gramPerLitre(30), Titration: water.CitricAcid.TitratedTo(8.2),
		Temperature: room}.Drink(AcidShares{water.Citrate.At(gramPerLitre(1))})
	if err != nil {
		t.Fatal(err)
	}
	found := 30000 / 192.123 * 3 // mEq/L
	near(t, "protons", 3*mmol(d.water, water.Citrate), found+d.StrongIons().In(units.MilliequivalentPerLitre), 0.02*found)
	again, err := d.Acidity(water.CitricAcid.TitratedTo(8.2))
	near(t, "read again", again.In(units.GramPerLitre), 30, 1e-3)
	if err != nil {
		t.Error(err)
	}
	thin, err := d.water.Dilute(units.Litre.Of(1), units.Litre.Of(3))
	if err != nil {
		t.Fatal(err)
	}
	quarter, err := thin.TitratableAcidity(water.CitricAcid.TitratedTo(8.2))
	near(t, "a quarter", quarter.In(units.GramPerLitre), 7.5, 1e-3)
	if err != nil {
		t.Error(err)
	}
}

// Gluconate and glutamate carry one charge each as salts, by hand: 10 mmol/L of each with 20 of sodium and no acid besides.
func TestSaltsOfHoneyAndMalt(t *testing.T) {
	for _, i := range []water.Ion{water.Gluconate, water.Glutamate} {
		p, err := water.NewProfile(room, units.CalciumCarbonate{}, i.At(milligrams(10*i.MolarMass().In(units.GramPerMole))), water.Sodium.At(milligrams(10*22.990)))
		if err != nil {
			t.Fatal(err)
		}
		d, err := New(p, units.StrengthByVolume{})
		if err != nil {
			t.Fatal(err)
		}
		near(t, i.Name(), d.StrongIons().In(units.MilliequivalentPerLitre), 10, 1e-6)
		near(t, i.Name()+", its charge", balance(p), 0, 1e-3)
	}
}
