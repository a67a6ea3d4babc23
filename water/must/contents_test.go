package must

import (
	"errors"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Each acid carries as a salt the charge that it has lost where its weakest proton that counts is half gone: phosphate as
// H2PO4-, sulfite as HSO3-, glutamate with its amino group's proton on. So the strong ions of its
// potassium salt are the potassium, by hand.
func TestChargeOfEachAcid(t *testing.T) {
	for ion, z := range map[water.Ion]float64{
		water.Phosphate: 1, water.Lactate: 1, water.Acetate: 1, water.Citrate: 3, water.Malate: 2, water.Tartrate: 2, water.Succinate: 2,
		water.Sulfite: 1, water.Sorbate: 1, water.Gluconate: 1, water.Glutamate: 1,
	} {
		p, err := water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(0), ion.At(milligrams(10*ion.MolarMass().In(units.GramPerMole))),
			water.Potassium.At(milligrams(10*z*water.Potassium.MolarMass().In(units.GramPerMole))))
		if err != nil {
			t.Fatal(err)
		}
		near(t, ion.Name(), strongIons(p), 10*z, 1e-9)
	}
}

// A drink is titrated as it is where its acids as sodium salts have less than 420 mmol/L of ionic strength, and as a
// fourth of it in distilled water from there, as the comment of Acidity has it. By hand: n mmol/L of z-valent anions with
// their sodium have n·(z² + z)/2; so 70 of citrate, 140 of malate and 420 of lactate are the border.
func TestThinnedWhereStrong(t *testing.T) {
	by := water.TartaricAcid.TitratedTo(8.2)
	for _, r := range []struct {
		ion    water.Ion
		n      float64
		thin   bool
		charge float64
	}{
		{water.Citrate, 69.9, false, 3}, {water.Citrate, 70.1, true, 3}, {water.Malate, 139.8, false, 2}, {water.Malate, 140.1, true, 2},
		{water.Lactate, 419.5, false, 1}, {water.Lactate, 420.5, true, 1},
	} {
		p, err := water.NewProfile(room, check.Must(units.MilligramPerLitreCaCO3.Try(-r.n*r.charge*50.043)),
			r.ion.At(milligrams(r.n*r.ion.MolarMass().In(units.GramPerMole))))
		if err != nil {
			t.Fatal(err)
		}
		want := check.Must(p.TitratableAcidity(by)).In(units.MilligramPerLitre)
		fourth := 4 * check.Must(check.Must(p.Dilute(units.Litre.Of(1), units.Litre.Of(3))).TitratableAcidity(by)).In(units.MilligramPerLitre)
		if want == fourth {
			t.Fatalf("%v: %v thinned or not", r.ion, want)
		}
		if r.thin {
			want = fourth
		}
		near(t, r.ion.Name(), check.Must(check.Must(New(p, percent(0))).Acidity(by)).In(units.MilligramPerLitre), want, 1e-9*want)
	}
}

// What there is little of counts too: a drink of half a mmol/L of acid is read back, phosphate alone is an acid, and half a
// mmol/L of magnesium stays when malic acid goes. A little tartrate may settle, and none does not.
func TestLittleCounts(t *testing.T) {
	by := water.TartaricAcid.TitratedTo(8.2)
	for _, ion := range []water.Ion{water.Malate, water.Phosphate} {
		for _, n := range []float64{0.5, 5} {
			d := salted(t, 5, 0.4*n, map[water.Ion]float64{ion: n})
			r := Reading{PH: d.PH(), Acidity: check.Must(d.Acidity(by)), Titration: by, Temperature: units.Celsius.Of(25), Strength: percent(5)}
			back, err := r.Drink(AcidShares{ion.At(milligrams(1))})
			if err != nil {
				t.Fatal(ion, err)
			}
			near(t, ion.Name(), mmol(back.Water(), ion), n, 1e-4*n)
		}
	}
	d := salted(t, 12, 20, map[water.Ion]float64{water.Malate: 20}, water.Magnesium.At(milligrams(12.15)))
	after, err := d.Malolactic(percentOf(50))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "magnesium", after.Water().Ion(water.Magnesium).In(units.MilligramPerLitre), 12.15, 1e-9)
	for tartrate, settles := range map[float64]bool{0: false, 0.5: true} {
		d := salted(t, 12, 20, map[water.Ion]float64{water.Malate: 20, water.Tartrate: tartrate})
		down := check.Must(d.WithAcid(water.MalicAcid, ToPH(d.PH()-0.1)))
		up := check.Must(d.WithSalt(material.PotassiumBicarbonate(), ToPH(d.PH()+0.1)))
		if down.Cautions.Has(Settles) != settles || up.Cautions.Has(Settles) != settles {
			t.Errorf("%g mmol/L of tartrate: %v, %v", tartrate, down.Cautions, up.Cautions)
		}
	}
}

// An acidity half a mg/L below that of the known ions alone is refused with what they make, and half a mg/L above it
// is taken.
func TestAcidityOfTheIonsAlone(t *testing.T) {
	by := water.TartaricAcid.TitratedTo(8.2)
	ions := []water.Content{water.Lactate.At(milligrams(1800)), water.Potassium.At(milligrams(200))}
	alk := 200/water.Potassium.MolarMass().In(units.GramPerMole) - 1800/water.Lactate.MolarMass().In(units.GramPerMole)
	p, err := water.NewProfile(room, check.Must(units.MilligramPerLitreCaCO3.Try(alk*50.043)), ions...)
	if err != nil {
		t.Fatal(err)
	}
	alone := check.Must(p.TitratableAcidity(by)).In(units.MilligramPerLitre)
	of := func(mg float64) (Drink, error) {
		return Analysis{Ions: ions, Acidity: milligrams(mg), Titration: by, Temperature: room}.Drink(AcidShares{water.Malate.At(milligrams(1))})
	}
	_, err = of(alone - 0.5)
	if e, is := errors.AsType[*units.RangeError](err); !is || e.Quantity != "titratable acidity" {
		t.Error(err)
	} else {
		near(t, "least", e.Min, alone, 0.1)
	}
	if _, err := of(alone + 0.5); err != nil {
		t.Error(err)
	}
}

// A fruit whose known cations are more than its strong ions brings no potassium besides, and its charge stays that of the
// fruit: by hand, 2 g/L of sodium is 87 mEq/L, where an apple juice has 39.
func TestNoPotassiumBesides(t *testing.T) {
	b := brings(t, FromApple, 125.6, pure(t), Reading{}, water.Sodium.At(gramPerLitre(2)))
	near(t, "potassium", b.Drink.Water().Ion(water.Potassium).In(units.MilligramPerLitre), 0, 0)
	near(t, "strong ions", b.Drink.StrongIons().In(units.MilliequivalentPerLitre), 39, 0.5)
}
