package water

import (
	"math"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// A pure acid is titrated nearly whole: 1 g/L of tartaric acid to pH 7 is 1 g/L as
// tartaric, less what pKa and the end point leave (pKa2 4.34: 0.1 %).
func TestTitratableAcidity(t *testing.T) {
	for _, r := range []struct {
		acid  Acid
		conv  Titration
		share float64
		tol   float64
	}{
		{TartaricAcid, TartaricAcid.TitratedTo(7), 1, 0.002}, {TartaricAcid, TartaricAcid.TitratedTo(8.2), 1, 0.001},
		{LacticAcid, LacticAcid.TitratedTo(8.2), 1, 0.001},
		{MalicAcid, MalicAcid.TitratedTo(8.2), 1, 0.002}, {CitricAcid, CitricAcid.TitratedTo(8.2), 1, 0.01},
		// 49.036/75.043 g/Eq: 1 g of tartaric is 0.6534 g as sulfuric.
		{TartaricAcid, SulfuricAcid.TitratedTo(7), 0.6534, 0.002},
	} {
		n, _ := units.Millimole.Try(1000 / r.acid.MolarMass().In(units.GramPerMole))
		p, err := Profile{t: 20}.AddAcid(r.acid, n, litres(1))
		if err != nil {
			t.Fatal(err)
		}
		ta, err := p.TitratableAcidity(r.conv)
		if err != nil {
			t.Fatal(err)
		}
		near(t, r.acid.Name(), ta.In(units.GramPerLitre), r.share, r.tol)
	}
	hard, err := reports[0].profile(t, 20).TitratableAcidity(TartaricAcid.TitratedTo(7))
	if err != nil || !hard.IsZero() {
		t.Errorf("%v, %v", hard, err)
	}
}

// The sodium hydroxide of the titration brings the water to its end point, when it is
// weighed in.
func TestTitratableAcidityIsLye(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t, "water")
		p.drawAcids(t)
		p.alk = rapid.Float64Range(-20, -0.1).Draw(t, "alkalinity")
		conv := Titration{rapid.Float64Range(4, 10).Draw(t, "end point"), HydrochloricAcid}
		ta, err := p.TitratableAcidity(conv)
		if err != nil {
			t.Fatal(err)
		}
		still, err := p.Closed(units.MolarConcentration{})
		if err != nil {
			t.Fatal(err)
		}
		if ta.IsZero() != (still.PH() >= conv.End) {
			t.Fatalf("%v of acid at pH %v", ta, still.PH())
		}
		lye := ta.In(units.MilligramPerLitre) / HydrochloricAcid.MolarMass().In(units.GramPerMole) *
			material.SodiumHydroxide().MolarMass().In(units.GramPerMole) / 1000
		titrated, err := still.Water().Add(litres(1), material.SodiumHydroxide().Dose(units.Gram.Of(checked.Number(lye))))
		if err != nil {
			t.Fatal(err)
		}
		if end := max(conv.End, still.PH()); math.Abs(titrated.ph-end) > 1e-6 {
			t.Errorf("ends at pH %v, wanted %v", titrated.ph, end)
		}
	})
}

// The end points as the methods print them (recalled from memory): OIV 7.0, AOAC 8.2.
func TestTitrationEnds(t *testing.T) {
	for c, end := range map[Titration]float64{TartaricAcid.TitratedTo(7): 7, SulfuricAcid.TitratedTo(7): 7, TartaricAcid.TitratedTo(8.2): 8.2,
		LacticAcid.TitratedTo(8.2): 8.2, MalicAcid.TitratedTo(8.2): 8.2, CitricAcid.TitratedTo(8.2): 8.2} {
		near(t, c.As.Name(), c.End, end, 1e-12)
	}
}

// Conversions by equivalent mass: tartaric 75.04, sulfuric 49.04, citric 64.04,
// malic 67.04, lactic 90.08, acetic 60.05 g/Eq (the usual table of the wine trade).
func TestConvertAcidity(t *testing.T) {
	for acid, g := range map[Acid]float64{TartaricAcid: 75.04, SulfuricAcid: 49.04, CitricAcid: 64.04, MalicAcid: 67.04, LacticAcid: 90.08,
		AceticAcid: 60.05, HydrochloricAcid: 36.46, PhosphoricAcid: 49.00} {
		c, err := ConvertAcidity(units.GramPerLitre.Of(75.043), TartaricAcid, acid)
		if err != nil {
			t.Fatal(err)
		}
		near(t, acid.Name(), c.In(units.GramPerLitre), g, 0.006)
	}
	for _, f := range []func() error{
		func() error { _, err := ConvertAcidity(mgL(1), Acid(99), LacticAcid); return err },
		func() error { _, err := ConvertAcidity(mgL(1), LacticAcid, Acid(-1)); return err },
		func() error {
			_, err := ConvertAcidity(units.MassConcentration{}.Minus(mgL(1)), LacticAcid, LacticAcid)
			return err
		},
		func() error { _, err := (Profile{}).TitratableAcidity(Titration{7, Acid(99)}); return err },
		func() error { _, err := (Profile{}).TitratableAcidity(Titration{3.9, LacticAcid}); return err },
		func() error { _, err := (Profile{}).TitratableAcidity(Titration{10.1, LacticAcid}); return err },
		func() error { _, err := (Profile{t: 95}).TitratableAcidity(TartaricAcid.TitratedTo(7)); return err },
	} {
		if err := f(); !refused(err) {
			t.Error(err)
		}
	}
	for _, end := range []float64{4, 10} {
		if _, err := (Profile{t: 20}).TitratableAcidity(Titration{end, LacticAcid}); err != nil {
			t.Error(err)
		}
	}
}
