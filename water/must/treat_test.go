package must

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

func acidity(t rapid.TB, d Drink, c water.Titration) float64 {
	t.Helper()
	ta, err := d.Acidity(c)
	if err != nil {
		t.Fatal(err)
	}
	return ta.In(units.MilligramPerLitre)
}

// A treatment ends at its aim, and its dose weighed in makes the drink that it says. Acid
// lowers the pH and raises the acidity, a base the other way.
func TestTreatmentsReachTheirAim(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := anyDrink(t)
		if d.PH() < 2.7 || d.PH() > 5.5 {
			t.Skip()
		}
		acid := rapid.SampledFrom([]water.Acid{water.MalicAcid, water.TartaricAcid, water.CitricAcid, water.LacticAcid, water.PhosphoricAcid}).Draw(t, "acid")
		down, err := d.WithAcid(acid, ToPH(d.PH()-rapid.Float64Range(0, 0.2).Draw(t, "lower")))
		if err == nil {
			again, err := d.AddAcid(acid, down.PerLitre)
			if err != nil {
				t.Fatal(err)
			}
			near(t, "pH of the dose", again.PH(), down.After.PH(), 1e-6)
			if acidity(t, down.After, water.TartaricAcid.TitratedTo(8.2)) < acidity(t, d, water.TartaricAcid.TitratedTo(8.2))-1e-3 ||
				!down.Cautions.Has(water.AcidBurns) {
				t.Error("acid lowers the acidity")
			}
		}
		has := acidity(t, d, water.TartaricAcid.TitratedTo(8.2))
		less := has * rapid.Float64Range(0.6, 1).Draw(t, "share")
		salt := rapid.SampledFrom([]material.Material{material.PotassiumBicarbonate(), shelf.Material("potassium carbonate"), material.Chalk(),
			material.BakingSoda()}).Draw(t, "salt")
		up, err := d.WithSalt(salt, ToAcidity(milligrams(less), water.TartaricAcid.TitratedTo(8.2)))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "acidity", acidity(t, up.After, water.TartaricAcid.TitratedTo(8.2)), less, 1e-3)
		// Stoichiometry: what the acidity loses is the alkalinity of the salt, near enough (what a
		// little more salt does to the end of the titration is 0.1 to 1 %).
		want := (has - less) / (water.TartaricAcid.MolarMass().In(units.GramPerMole) / 2)
		near(t, "alkalinity of the salt", up.PerLitre.In(units.GramPerLitre)*salt.Composition().Alkalinity.In(units.Fraction)*1000/17.007, want, 0.02*want+0.3)
		if up.After.PH() < d.PH()-1e-9 || up.Cautions.Has(material.Burns) != salt.Caustic() || !up.Cautions.Has(Foams) {
			t.Error("a base lowers the pH")
		}

		other := anyDrink(t)
		aim := (d.PH() + other.PH()) / 2
		mix, err := d.WithDrink(other, ToPH(aim))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pH of the blend", mix.After.PH(), aim, 1e-6)
		if s := mix.Share.In(units.Fraction); s < 0 || s > 1 {
			t.Errorf("share %v", s)
		}
	})
}

// What is there already needs nothing.
func TestNoDoseForNothing(t *testing.T) {
	d := salted(t, 12, 25, map[water.Ion]float64{water.Tartrate: 15, water.Malate: 10})
	for _, do := range []func() (Treatment, error){
		func() (Treatment, error) { return d.WithAcid(water.TartaricAcid, ToPH(d.PH())) },
		func() (Treatment, error) { return d.WithSalt(material.PotassiumBicarbonate(), ToPH(d.PH())) },
		func() (Treatment, error) { return d.WithDrink(Drink{}, ToPH(d.PH())) },
	} {
		got, err := do()
		if err != nil || !got.PerLitre.IsZero() || !got.Share.IsZero() || math.Abs(got.After.PH()-d.PH()) > 1e-9 {
			t.Errorf("%+v %v", got, err)
		}
	}
}

// Malic to lactic: by hand, 1 g/L of malic acid (134.09 g/mol, 7.458 mmol/L) becomes 7.458 mmol/L of lactic
// acid, 0.672 g/L, and the acidity falls by as many mEq/L, 0.560 g/L as tartaric (75.04
// g/Eq). The charge of the salts stays, and the pH rises.
func TestMalolactic(t *testing.T) {
	d := salted(t, 12, 20, map[water.Ion]float64{water.Tartrate: 12, water.Malate: 7.458})
	for _, share := range []float64{0, 0.5, 1} {
		m, err := d.Malolactic(units.Fraction.Of(checked.Number(share)))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "lactic acid", mmol(m.Water(), water.Lactate)*90.08/1000, 0.672*share, 0.001)
		near(t, "malic acid", mmol(m.Water(), water.Malate), 7.458*(1-share), 1e-6)
		near(t, "fall of the acidity", (acidity(t, d, water.TartaricAcid.TitratedTo(8.2))-acidity(t, m, water.TartaricAcid.TitratedTo(8.2)))/1000, 0.560*share, 0.003)
		near(t, "strong ions", m.StrongIons().In(units.MilliequivalentPerLitre), d.StrongIons().In(units.MilliequivalentPerLitre), 1e-6)
		if share > 0 && m.PH() <= d.PH()+0.05 {
			t.Errorf("pH %v after, %v before", m.PH(), d.PH())
		}
	}
}

// Cream of tartar takes potassium, tartrate and a proton with it: by hand, 188.18 mg/L of it is 1 mmol/L, 39.10 mg/L of
// potassium, and 1 mEq/L of acidity. The pH falls where it is below the mean of the two pK, and
// rises above.
func TestSettled(t *testing.T) {
	for _, r := range []struct {
		potassium float64
		falls     bool
	}{{15, true}, {45, false}} {
		d := salted(t, 12, r.potassium, map[water.Ion]float64{water.Tartrate: 20, water.Malate: 10})
		s, err := d.Settled(milligrams(5 * 188.18))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "potassium", d.Water().Ion(water.Potassium).In(units.MilligramPerLitre)-s.Water().Ion(water.Potassium).In(units.MilligramPerLitre), 5*39.10, 0.1)
		near(t, "tartrate", mmol(s.Water(), water.Tartrate), 15, 0.001)
		near(t, "acidity", (acidity(t, d, water.TartaricAcid.TitratedTo(8.2))-acidity(t, s, water.TartaricAcid.TitratedTo(8.2)))/75.04, 5, 0.01)
		near(t, "strong ions", s.StrongIons().In(units.MilliequivalentPerLitre), d.StrongIons().In(units.MilliequivalentPerLitre)-5, 1e-3)
		if (s.PH() < d.PH()) != r.falls {
			t.Errorf("pH %.2f before, %.2f after", d.PH(), s.PH())
		}
	}
}

// The curve rises from nothing; its end is the titratable acidity, and its slope the buffer
// capacity.
func TestTitrate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := salted(t, 0, rapid.Float64Range(5, 40).Draw(t, "potassium"),
			map[water.Ion]float64{water.Tartrate: 20, water.Malate: rapid.Float64Range(5, 40).Draw(t, "malate")})
		curve, err := d.Titrate(8.2, 101)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "start", curve[0].Base.In(units.MilliequivalentPerLitre), 0, 1e-5)
		near(t, "end", curve[100].Base.In(units.MilliequivalentPerLitre)*75.0435, acidity(t, d, water.TartaricAcid.TitratedTo(8.2)), 0.5)
		for k := 1; k < len(curve); k++ {
			if curve[k].Base.In(units.MilliequivalentPerLitre) <= curve[k-1].Base.In(units.MilliequivalentPerLitre) {
				t.Fatalf("the curve falls at %v", curve[k])
			}
		}
		slope := (curve[2].Base.In(units.MilliequivalentPerLitre) - curve[0].Base.In(units.MilliequivalentPerLitre)) / (curve[2].PH - curve[0].PH)
		near(t, "slope", d.BufferCapacity().In(units.MilliequivalentPerLitre), slope, 0.1*slope)
	})
}

// Half and half has the mean of the ions.
func TestBlend(t *testing.T) {
	a, b := salted(t, 14, 20, map[water.Ion]float64{water.Malate: 40}), salted(t, 0, 15, map[water.Ion]float64{water.Malate: 20})
	m, err := a.Blend(b, units.Percent.Of(50))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "malate", mmol(m.Water(), water.Malate), 30, 1e-9)
	near(t, "strength", m.Strength().In(units.PercentVolume), 7, 1e-9)
	near(t, "acidity", acidity(t, m, water.TartaricAcid.TitratedTo(8.2)),
		(acidity(t, a, water.TartaricAcid.TitratedTo(8.2))+acidity(t, b, water.TartaricAcid.TitratedTo(8.2)))/2, 20)
}

func FuzzOrigin(f *testing.F) {
	f.Add("apple")
	f.Add(" Grape ")
	f.Add("pear")
	f.Fuzz(func(t *testing.T, text string) {
		var v Origin
		if v.UnmarshalText([]byte(text)) != nil {
			return
		}
		back, err := v.MarshalText()
		var w Origin
		if err != nil || w.UnmarshalText(back) != nil || w != v || string(back) != v.String() {
			t.Errorf("%q reads as %v, writes %q", text, v, back)
		}
	})
}

func TestNoOrigin(t *testing.T) {
	if Origin(9).Acids() != nil {
		t.Error("acids of no fruit")
	}
	if _, err := Origin(9).FromAcidity(milligrams(5000), water.TartaricAcid.TitratedTo(7)); err == nil {
		t.Error("no error")
	}
	if _, err := Origin(9).MarshalText(); err == nil {
		t.Error("no error")
	}
}

// An aim beyond both drinks is refused with what the two have, not with a share of more than all.
func TestBlendBeyondBoth(t *testing.T) {
	of := func(ph, acidity float64) Drink {
		d, err := Reading{PH: ph, Acidity: milligrams(acidity), Titration: water.MalicAcid.TitratedTo(8.2),
			Temperature: units.Celsius.Of(20)}.Drink(AcidShares{water.Malate.At(milligrams(1))})
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	sharp, bland := of(3.4, 7000), of(3.8, 4500)
	for _, r := range []struct {
		aim       Aim
		low, high float64
	}{{ToPH(3.3), 3.4, 3.8}, {ToPH(3.9), 3.4, 3.8}, {ToAcidity(milligrams(4000), water.MalicAcid.TitratedTo(8.2)), 4500, 7000},
		{ToAcidity(milligrams(8000), water.MalicAcid.TitratedTo(8.2)), 4500, 7000}} {
		_, err := sharp.WithDrink(bland, r.aim)
		var e *units.RangeError
		if !errors.As(err, &e) || math.Abs(e.Min-r.low) > 1e-3*r.low || math.Abs(e.Max-r.high) > 1e-3*r.high {
			t.Errorf("%v", err)
		}
	}
}
