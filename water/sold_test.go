package water

import (
	"errors"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// mol/L of acids as sold, from share and density by another program; the densities
// as in SoldAcids.
func TestSold(t *testing.T) {
	want := []struct {
		acid           Acid
		percent, molar float64
	}{
		{PhosphoricAcid, 10, 1.073}, {PhosphoricAcid, 30, 3.611}, {PhosphoricAcid, 50, 6.812}, {PhosphoricAcid, 75, 12.054}, {PhosphoricAcid, 85, 14.659},
		{LacticAcid, 80, 10.569}, {LacticAcid, 88, 11.782}, {HydrochloricAcid, 10, 2.873}, {HydrochloricAcid, 37, 12.013}, {SulfuricAcid, 10, 1.087},
		{SulfuricAcid, 96, 17.967},
		{CitricAcid, 100, 0}, {CitricAcid, 91.4271, 0}, {MalicAcid, 100, 0}, {TartaricAcid, 100, 0},
	}
	all := SoldAcids()
	if len(all) != len(want) {
		t.Fatalf("%d strengths", len(all))
	}
	for i, w := range want {
		s := all[i]
		acid, share, err := AcidOf(s)
		if err != nil || acid != w.acid {
			t.Errorf("%v at %d, %v", acid, i, err)
		}
		near(t, w.acid.Name(), share.In(units.Percent), w.percent, 1e-9)
		d, err := acid.Dose(units.Mole.Of(0.5), s)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "mass", d.Mass.In(units.Gram)*share.In(units.Fraction), 0.5*acid.MolarMass().In(units.GramPerMole), 1e-9)
		if w.molar > 0 {
			near(t, w.acid.Name(), 0.5/d.Volume().In(units.Litre), w.molar, 0.00051)
			near(t, "density", s.Density().In(units.GramPerMillilitre), d.Mass.In(units.Gram)/d.Volume().In(units.Millilitre), 1e-9)
		} else if !d.Volume().IsZero() {
			t.Error("a powder has a volume")
		}
		if s.Cautions().Has("lactoyllactic_acid") != (w.acid == LacticAcid) {
			t.Errorf("%s: %v", s, s.Cautions())
		}
		// The same acid by its amount and by its mass makes the same water.
		p := reports[0].profile(t, 20)
		byAmount, err := p.AddAcid(acid, units.Millimole.Of(10), units.Litre.Of(100))
		if err != nil {
			t.Fatal(err)
		}
		tenth, _ := acid.Dose(units.Millimole.Of(10), s)
		byMass, err := p.Add(units.Litre.Of(100), tenth)
		if err != nil {
			t.Fatal(err)
		}
		near(t, s.Name()+", alkalinity", byMass.alk, byAmount.alk, 1e-9)
		near(t, s.Name()+", its ion", byMass.mg[acid.Ion()], byAmount.mg[acid.Ion()], 1e-9)
	}
	if _, _, err := AcidOf(material.Gypsum()); !stateError(err) {
		t.Error(err)
	}
	if _, err := LacticAcid.Dose(units.Mole.Of(1), all[0]); !stateError(err) {
		t.Error(err)
	}
	if _, err := LacticAcid.Dose(units.Mole.Of(1), material.Gypsum()); !stateError(err) {
		t.Error(err)
	}
	if _, err := PhosphoricAcid.Dose(units.Mole.Of(-1), all[0]); !refused(err) {
		t.Error(err)
	}
	for name, f := range map[string]func() (material.Material, error){
		"acid":  func() (material.Material, error) { return Acid(99).AsSold(units.Percent.Of(50), units.Density{}) },
		"share": func() (material.Material, error) { return LacticAcid.AsSold(units.Share{}, units.Density{}) },
		"light": func() (material.Material, error) {
			return LacticAcid.AsSold(units.Percent.Of(50), units.KilogramPerCubicMetre.Of(899))
		},
		"heavy": func() (material.Material, error) {
			return LacticAcid.AsSold(units.Percent.Of(50), units.KilogramPerCubicMetre.Of(2001))
		},
	} {
		_, err := f()
		if !refused(err) {
			t.Errorf("%s: %v", name, err)
		}
	}
	s, err := LacticAcid.AsSold(units.Percent.Of(88), units.GramPerMillilitre.Of(1.206))
	if err != nil {
		t.Fatal(err)
	}
	if s.Name() != "lactic acid 88 %" || !s.Equal(all[6]) {
		t.Error(s)
	}
	for _, d := range []units.Density{units.KilogramPerCubicMetre.Of(900), units.KilogramPerCubicMetre.Of(2000)} {
		if _, err := LacticAcid.AsSold(units.Percent.Of(0.01), d); err != nil {
			t.Error(err)
		}
	}
}

// An acid by its label in the words of the label is the same acid: lactic 88 % brings 0.88 × 89.070/90.078
// of lactate and takes alkalinity as 0.88 × 17.007/90.078 of hydroxide does.
func TestAcidByLabel(t *testing.T) {
	m, err := material.ByLabel("a lactic acid", material.Composition{Lactate: percent(88 * 89.070 / 90.078), Acidity: percent(88 * 17.007 / 90.078)})
	if err != nil {
		t.Fatal(err)
	}
	acid, share, err := AcidOf(m)
	if err != nil || acid != LacticAcid {
		t.Fatal(acid, err)
	}
	near(t, "share", share.In(units.Percent), 88, 1e-3)
}

func percent(x float64) units.Share { return units.Percent.Of(checked.Number(x)) }

func stateError(err error) bool { _, is := errors.AsType[*units.StateError](err); return is }

// An acid is sold as a hundredth of a per cent of itself to all of it.
func TestSoldLimits(t *testing.T) {
	for _, percent := range []float64{0.009, 100.5} {
		_, err := LacticAcid.AsSold(units.Percent.Of(checked.Number(percent)), units.Density{})
		if r, ok := errors.AsType[*units.RangeError](err); !ok || r.Quantity != "share of acid" || r.Min != 0.01 || r.Max != 100 {
			t.Errorf("%v %%: %v", percent, err)
		}
	}
}

// A pure acid has its own name, a weaker one its share beside it.
func TestSoldNames(t *testing.T) {
	for percent, want := range map[units.Share]string{units.Percent.Of(100): "citric acid", units.Percent.Of(99.5): "citric acid 99.5 %"} {
		m, err := CitricAcid.AsSold(percent, units.Density{})
		if err != nil || m.Name() != want {
			t.Errorf("%v: %q, %v", percent, m.Name(), err)
		}
	}
}
