package water

import (
	"errors"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// mg of agent for each mg/L as Cl2 in a litre, by stoichiometry with the weights of
// 2021 (another program): sodium metabisulfite 1.3406, potassium 1.5678. Sodium
// bisulfite 104.054/70.90 and sulfite 126.037/70.90, ascorbic acid 176.124/70.90 by
// hand; the AWWA field guide, table 7-2, prints 1.47, 1.61, 1.96 and 2.5 for field use.
func TestDechlorinate(t *testing.T) {
	p := reports[0].profile(t, 20)
	for _, r := range []struct {
		agent      material.Material
		ratio      float64
		field      float64
		freeAlk    float64 // mEq of alkalinity used for each mg as Cl2
		chloramine float64
	}{
		{material.SodiumMetabisulfite(), 1.3406, 1.47, 0.0282, 0.0141}, {material.PotassiumMetabisulfite(), 1.5678, 0, 0.0282, 0.0141},
		{shelf.Material("sodium bisulfite"), 1.4676, 1.61, 0.0282, 0.0141}, {shelf.Material("sodium sulfite anhydrous"), 1.7777, 1.96, 0.0141, 0},
		{shelf.Material("ascorbic acid"), 2.4841, 0, 0.0141, 0},
	} {
		for _, chloramine := range []bool{false, true} {
			res, alk := FreeChlorine(mgL(4), AsCl2), r.freeAlk
			if chloramine {
				res, alk = Monochloramine(mgL(4), AsCl2), r.chloramine
			}
			d, err := p.Dechlorinate(r.agent, res, litres(10))
			if err != nil {
				t.Fatal(err)
			}
			near(t, r.agent.String(), d.Least.In(units.Milligram)/40, r.ratio, 0.0001)
			near(t, "dose", d.Dose.In(units.Gram), 1.1*d.Least.In(units.Gram), 1e-12)
			if r.field > 0 {
				near(t, "field dose", d.Dose.In(units.Milligram)/40, r.field, 0.02)
			}
			near(t, "alkalinity used", (p.alk-d.Water.alk)/4, alk, 0.00005)
			near(t, "chloride", d.Water.ion(Chloride)-30, 4*0.5, 0.0001)
			near(t, "balance", d.Water.IonicBalance().Difference().In(units.Percent), p.IonicBalance().Difference().In(units.Percent), 0.01)
			if r.agent != shelf.Material("ascorbic acid") {
				near(t, "sulfate", d.Water.ion(Sulfate)-50, 4*1.355, 0.001)
			}
			if len(d.Cautions) == 0 {
				t.Error("no caution")
			}
		}
	}
	// 1 mg/L of HOCl is 70.90/52.457 as Cl2, of NH2Cl 70.90/51.473.
	near(t, "HOCl", FreeChlorine(mgL(1), AsItself).AsCl2().In(units.MilligramPerLitre), 1.3516, 0.0001)
	near(t, "NH2Cl", Monochloramine(mgL(1), AsItself).AsCl2().In(units.MilligramPerLitre), 1.3774, 0.0001)
	near(t, "Cl2", FreeChlorine(mgL(1), AsCl2).AsCl2().In(units.MilligramPerLitre), 1, 1e-12)
	var re *units.RangeError
	for _, f := range []func() (Dechlorination, error){
		func() (Dechlorination, error) {
			return p.Dechlorinate(material.SodiumMetabisulfite(), FreeChlorine(mgL(1), AsCl2), litres(0))
		},
		func() (Dechlorination, error) {
			return p.Dechlorinate(material.SodiumMetabisulfite(), FreeChlorine(mgL(100.1), AsCl2), litres(1))
		},
	} {
		if _, err := f(); !errors.As(err, &re) {
			t.Error(err)
		}
	}
	if _, err := p.Dechlorinate(material.SodiumMetabisulfite(), FreeChlorine(mgL(100), AsCl2), litres(1)); err != nil {
		t.Error(err)
	}
	names := []string{"sodium metabisulfite", "potassium metabisulfite", "sodium bisulfite", "sodium sulfite anhydrous", "ascorbic acid"}
	for i, d := range Dechlorinators() {
		if d.Name() != names[i] {
			t.Errorf("%v is not %s", d, names[i])
		}
	}
	// The inorganic carbon stays, where the pH is known.
	known := reports[0].equilibrium(t, 20).Water()
	d, err := known.Dechlorinate(shelf.Material("sodium sulfite anhydrous"), FreeChlorine(mgL(1), AsCl2), litres(1))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "carbon", d.Water.carbon, known.carbon, 1e-12)
	for _, none := range []material.Material{{}, material.Gypsum(), material.Honey()} {
		_, err := known.Dechlorinate(none, FreeChlorine(mgL(1), AsCl2), litres(1))
		if _, ok := errors.AsType[*units.StateError](err); !ok {
			t.Error(none, err)
		}
	}
}

// A content that is the mass of nothing known is no Cl2: it counts as none and is refused.
func TestUnknownFormOfChlorine(t *testing.T) {
	for _, r := range []Residual{FreeChlorine(mgL(2), ChlorineAs(9)), Monochloramine(mgL(2), ChlorineAs(-1))} {
		_, err := Profile{}.Dechlorinate(shelf.Material("ascorbic acid"), r, litres(1))
		_, written := r.MarshalJSON()
		for _, e := range []error{err, written} {
			if _, ok := errors.AsType[*units.NameError](e); !ok || !r.AsCl2().IsZero() {
				t.Error(e, r.AsCl2())
			}
		}
	}
}
