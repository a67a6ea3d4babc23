package water

import (
	"errors"
	"testing"

	"example.org/zymase/units"
)

// mg of agent for each mg/L as Cl2 in a litre, by stoichiometry with the weights of
// 2021 (another program): sodium metabisulfite 1.3406, potassium 1.5678. Sodium
// bisulfite 104.054/70.90 and sulfite 126.037/70.90, ascorbic acid 176.124/70.90 by
// hand; the AWWA field guide, table 7-2, prints 1.47, 1.61, 1.96 and 2.5 for field use.
func TestDechlorinate(t *testing.T) {
	p := reports[0].profile(t, 20)
	for _, r := range []struct {
		agent      Dechlorinator
		ratio      float64
		field      float64
		freeAlk    float64 // mEq of alkalinity used for each mg as Cl2
		chloramine float64
	}{
		{SodiumMetabisulfite, 1.3406, 1.47, 0.0282, 0.0141}, {PotassiumMetabisulfite, 1.5678, 0, 0.0282, 0.0141},
		{SodiumBisulfite, 1.4676, 1.61, 0.0282, 0.0141}, {SodiumSulfite, 1.7777, 1.96, 0.0141, 0}, {AscorbicAcid, 2.4841, 0, 0.0141, 0},
	} {
		for _, chloramine := range []bool{false, true} {
			res, alk := FreeChlorine(mgL(4), AsCl2), r.freeAlk
			if chloramine {
				res, alk = Monochloramine(mgL(4), AsCl2), r.chloramine
			}
			d, err := p.Dechlorinate(litres(10), res, r.agent)
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
			near(t, "balance", d.Water.IonicBalance().Percent, p.IonicBalance().Percent, 0.01)
			if r.agent != AscorbicAcid {
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
		func() (Dechlorination, error) { return p.Dechlorinate(litres(1), FreeChlorine(mgL(1), AsCl2), 99) },
		func() (Dechlorination, error) { return p.Dechlorinate(litres(0), FreeChlorine(mgL(1), AsCl2), 0) },
		func() (Dechlorination, error) { return p.Dechlorinate(litres(1), FreeChlorine(mgL(100.1), AsCl2), 0) },
	} {
		if _, err := f(); !errors.As(err, &re) {
			t.Error(err)
		}
	}
	if _, err := p.Dechlorinate(litres(1), FreeChlorine(mgL(100), AsCl2), 0); err != nil {
		t.Error(err)
	}
	names := []string{"sodium metabisulfite", "potassium metabisulfite", "sodium bisulfite", "sodium sulfite anhydrous", "ascorbic acid"}
	for i, name := range names {
		if Dechlorinator(i).String() != name {
			t.Errorf("%v is not %s", Dechlorinator(i), name)
		}
	}
	// The inorganic carbon stays, where the pH is known.
	known := reports[0].equilibrium(t, 20).Water()
	d, err := known.Dechlorinate(litres(1), FreeChlorine(mgL(1), AsCl2), SodiumSulfite)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "carbon", d.Water.carbon, known.carbon, 1e-12)
	if Dechlorinator(99).String() != "unknown agent" || Dechlorinator(-1).String() != "unknown agent" {
		t.Error("name")
	}
}
