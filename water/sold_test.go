package water

import (
	"testing"

	"example.org/zymase/units"
)

// mol/L of acids as sold, from share and density by another program; the densities
// as in SoldAcids.
func TestSold(t *testing.T) {
	want := []struct {
		acid           Acid
		percent, molar float64
	}{
		{PhosphoricAcid, 10, 1.073}, {PhosphoricAcid, 30, 3.611}, {PhosphoricAcid, 50, 6.812}, {PhosphoricAcid, 75, 12.054}, {PhosphoricAcid, 85, 14.659},
		{LacticAcid, 80, 10.569}, {LacticAcid, 88, 11.782}, {HydrochloricAcid, 10, 2.873}, {HydrochloricAcid, 37, 12.013}, {SulfuricAcid, 10, 1.087}, {SulfuricAcid, 96, 17.967},
		{CitricAcid, 100, 0}, {CitricAcid, 91.4271, 0}, {MalicAcid, 100, 0}, {TartaricAcid, 100, 0},
	}
	all := SoldAcids()
	if len(all) != len(want) {
		t.Fatalf("%d strengths", len(all))
	}
	for i, w := range want {
		s := all[i]
		if s.Acid() != w.acid {
			t.Errorf("%v at %d", s.Acid(), i)
		}
		near(t, w.acid.Name(), s.Share().In(units.Percent), w.percent, 1e-9)
		near(t, w.acid.Name(), s.Molarity().In(units.MolePerLitre), w.molar, 0.00051)
		n := units.Mole.Of(0.5)
		near(t, "mass", s.Mass(n).In(units.Gram)*s.share, 0.5*s.acid.MolarMass(), 1e-9)
		if w.molar > 0 {
			near(t, "volume", s.Volume(n).In(units.Litre), 0.5/s.Molarity().In(units.MolePerLitre), 1e-9)
			near(t, "density", s.Density().In(units.GramPerMillilitre), s.Mass(n).In(units.Gram)/s.Volume(n).In(units.Millilitre), 1e-9)
		} else if !s.Volume(n).IsZero() {
			t.Error("a powder has a volume")
		}
		if (s.Note() != "") != (w.acid == LacticAcid || w.acid == CitricAcid) {
			t.Errorf("note %q", s.Note())
		}
	}
	for name, f := range map[string]func() (Sold, error){
		"acid":  func() (Sold, error) { return NewSold(Acid(99), units.Percent.Of(50), units.Density{}) },
		"share": func() (Sold, error) { return NewSold(LacticAcid, units.Share{}, units.Density{}) },
		"light": func() (Sold, error) {
			return NewSold(LacticAcid, units.Percent.Of(50), units.KilogramPerCubicMetre.Of(899))
		},
		"heavy": func() (Sold, error) {
			return NewSold(LacticAcid, units.Percent.Of(50), units.KilogramPerCubicMetre.Of(2001))
		},
	} {
		_, err := f()
		if !refused(err) {
			t.Errorf("%s: %v", name, err)
		}
	}
	s, err := NewSold(LacticAcid, units.Percent.Of(88), units.GramPerMillilitre.Of(1.206))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "lactic 88", s.Molarity().In(units.MolePerLitre), 11.782, 0.0006)
	for _, d := range []units.Density{units.KilogramPerCubicMetre.Of(900), units.KilogramPerCubicMetre.Of(2000)} {
		if _, err := NewSold(LacticAcid, units.Percent.Of(0.01), d); err != nil {
			t.Error(err)
		}
	}
	if !(Sold{}).Mass(units.Mole.Of(1)).IsZero() || !(Sold{}).Molarity().IsZero() {
		t.Error("the zero value holds acid")
	}
}
