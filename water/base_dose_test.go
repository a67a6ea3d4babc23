package water

import (
	"errors"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// 60 L from 144 to 100 mg/L as CaCO3: 44/50.043 mEq/L, 52.75 mmol in all.
func TestAlkalinityDoses(t *testing.T) {
	p := reports[0].profile(t, 20)
	for acid, protons := range map[Acid]float64{HydrochloricAcid: 1, LacticAcid: 1, PhosphoricAcid: 1, SulfuricAcid: 2, CitricAcid: 3,
		MalicAcid: 2, TartaricAcid: 2, AceticAcid: 1} {
		n, err := p.AcidToAlkalinity(acid, caco3(100), litres(60))
		if err != nil {
			t.Fatal(err)
		}
		near(t, acid.Name(), n.In(units.Millimole), 44/50.043*60/protons, 0.001)
		q, err := p.AddAcid(acid, n, litres(60))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "after", q.Alkalinity().In(units.MilligramPerLitreCaCO3), 100, 1e-9)
	}
	for _, s := range []material.Material{material.BakingSoda(), material.PotassiumBicarbonate(), material.SlakedLime(), material.Chalk(),
		shelf.Material("sodium carbonate anhydrous"), material.DiammoniumPhosphate()} {
		m, err := p.BaseToAlkalinity(s, caco3(200), litres(60))
		if err != nil {
			t.Fatal(err)
		}
		q, _ := p.Add(litres(60), s.Dose(m))
		near(t, s.Name(), q.Alkalinity().In(units.MilligramPerLitreCaCO3), 200, 1e-9)
	}
}

func TestBaseToPH(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t, "water")
		e, err := p.Under(atm(rapid.Float64Range(0.001, 0.1).Draw(t, "atm")))
		if err != nil {
			t.Fatal(err)
		}
		w := e.Water()
		s := rapid.SampledFrom([]material.Material{material.SodiumHydroxide(), shelf.Material("potassium hydroxide"), material.SlakedLime(),
			shelf.Material("sodium carbonate anhydrous")}).Draw(t, "base")
		target := w.ph + rapid.Float64Range(0, 1).Draw(t, "rise")
		d, err := w.BaseToPH(s, target, litres(10))
		if r, ok := errors.AsType[*units.RangeError](err); ok && s == shelf.Material("sodium carbonate anhydrous") && r.Max > 9 && r.Max < target {
			t.Skip("a carbonate makes a water no more than its own pH")
		}
		if err != nil {
			t.Fatal(err)
		}
		if got := d.Water.ph; got < target-1e-6 || got > target+1e-6 || len(d.Cautions) != 1 {
			t.Errorf("pH %v, want %v", got, target)
		}
		back, err := w.Add(litres(10), d.Dose)
		if err != nil || back.ph < target-1e-6 || back.ph > target+1e-6 {
			t.Errorf("pH %v by the dose, want %v (%v)", back.ph, target, err)
		}
	})
}

// A dose near the most that is taken is found, and what is out of reach of it says up to
// where it reaches: 1 mmol/L of sodium bicarbonate at pH 6.5 is 0.7 mmol/L of CO2 beside
// it, so that a bicarbonate comes close to 8.3 only where it is ten times as much and more.
func TestBaseToPHOfMuchBicarbonate(t *testing.T) {
	p, err := NewProfile(celsius(25), caco3(50.043), Sodium.At(mgL(22.99)))
	if err != nil {
		t.Fatal(err)
	}
	if p, err = p.WithPH(6.5); err != nil {
		t.Fatal(err)
	}
	d, err := p.BaseToPH(material.PotassiumBicarbonate(), 8, litres(1))
	if g := d.Dose.Mass.In(units.Gram); err != nil || g <= 8.192 || g > 16 {
		t.Fatalf("%v g, %v", g, err)
	}
	near(t, "pH", d.Water.ph, 8, 1e-6)
	most, err := p.Add(litres(1), material.PotassiumBicarbonate().Dose(units.Gram.Of(16)))
	if err != nil {
		t.Fatal(err)
	}
	d, err = p.BaseToPH(material.PotassiumBicarbonate(), 8.3, litres(1))
	var e *units.RangeError
	if !errors.As(err, &e) || e.Quantity != "pH" || e.Min != p.ph || e.Max != most.ph || !d.Dose.Mass.IsZero() {
		t.Errorf("%v, %v; 16 g/L reach %v", d, err, most.ph)
	}
}

func TestBaseRefuses(t *testing.T) {
	p := reports[0].equilibrium(t, 20).Water()
	l := litres(1)
	for name, f := range map[string]func() error{
		"acid":           func() error { _, err := p.AcidToAlkalinity(Acid(99), caco3(1), l); return err },
		"acid upwards":   func() error { _, err := p.AcidToAlkalinity(LacticAcid, caco3(145), l); return err },
		"acid, no water": func() error { _, err := p.AcidToAlkalinity(LacticAcid, caco3(1), litres(0)); return err },
		"gypsum":         func() error { _, err := p.BaseToAlkalinity(material.Gypsum(), caco3(200), l); return err },
		"base downwards": func() error { _, err := p.BaseToAlkalinity(material.BakingSoda(), caco3(100), l); return err },
		"base, no water": func() error { _, err := p.BaseToAlkalinity(material.BakingSoda(), caco3(200), litres(0)); return err },
		"pH, gypsum":     func() error { _, err := p.BaseToPH(material.Gypsum(), 8, l); return err },
		"pH downwards":   func() error { _, err := p.BaseToPH(material.BakingSoda(), 7.4, l); return err },
		"pH of bicarb":   func() error { _, err := p.BaseToPH(material.BakingSoda(), 9.5, l); return err },
		"pH, lye":        func() error { _, err := p.BaseToPH(material.SodiumHydroxide(), 12.6, l); return err },
		"pH, not known":  func() error { _, err := reports[0].profile(t, 20).BaseToPH(material.BakingSoda(), 8, l); return err },
	} {
		if err := f(); !refused(err) {
			t.Errorf("%s: %v", name, err)
		}
	}
	d, err := p.BaseToPH(material.BakingSoda(), p.ph, l)
	if err != nil || d.Dose.Mass.In(units.Gram) > 1e-9 || len(d.Cautions) != 0 {
		t.Errorf("%v, %v", d, err)
	}
}
