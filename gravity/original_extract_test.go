package gravity_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// Balling's own worked examples, Die Gährungschemie (1854/1865). His arithmetic is
// by hand: the beer test, put back into his own formula, is 0.003 °P off.
func TestBallingYieldWorkedExamples(t *testing.T) {
	// complete attenuation: p = 12, n = 0, A = 6.190, b = A/(p−n) = 0.5158
	a := ok[units.StrengthByMass](t)(rival.StrengthBalling(plato(12), plato(0))).In(units.PercentMass)
	near(t, "A", a, 6.190, 0.0006)
	near(t, "b", a/12, 0.5158, 0.0001)
	// by the yield: from 100 g of beer 12.792 g extract, 5.921 g CO2, 0.681 g yeast
	y := gravity.BallingYield()
	near(t, "extract used", a/y.Ethanol().In(units.Fraction), 12.792, 0.0015)
	near(t, "CO2", a/y.Ethanol().In(units.Fraction)*y.CO2().In(units.Fraction), 5.921, 0.0007)
	near(t, "yeast", a/y.Ethanol().In(units.Fraction)*y.Biomass().In(units.Fraction), 0.681, 0.0005)
	// beer test: p = 11.177, n = 5.550, A = 2.888, b = 0.5134
	a = ok[units.StrengthByMass](t)(rival.StrengthBalling(plato(11.177), plato(5.550))).In(units.PercentMass)
	near(t, "A", a, 2.888, 0.002)
	near(t, "b", a/(11.177-5.550), 0.5134, 0.0002)
	near(t, "p", ok[units.Extract](t)(rival.OriginalExtractBalling(massPct(2.888), plato(5.550))).In(units.DegreePlato), 11.177, 0.0035)
	near(t, "n", ok[units.Extract](t)(rival.RealExtractBalling(plato(11.177), massPct(2.888))).In(units.DegreePlato), 5.550, 0.0035)
	// 100 parts of extract: 48.391 ethanol, 46.286 CO2, 5.323 dry yeast (p. 370)
	near(t, "ethanol", 100*y.Ethanol().In(units.Fraction), 48.391, 1e-9)
	near(t, "CO2", 100*y.CO2().In(units.Fraction), 46.286, 1e-9)
	near(t, "yeast", 100*y.Biomass().In(units.Fraction), 5.323, 1e-9)
	// modern form: 2.0665, 0.9565, 0.11 (Speers, Brewing calculations)
	near(t, "extract per g", 1/y.Ethanol().In(units.Fraction), 2.0665, 0.00005)
	near(t, "CO2 per g", y.CO2().In(units.Fraction)/y.Ethanol().In(units.Fraction), 0.9565, 0.00005)
	near(t, "yeast per g", y.Biomass().In(units.Fraction)/y.Ethanol().In(units.Fraction), 0.11, 0.00005)
}

func TestOriginalExtractAfterBalling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 40).Draw(t, "original °P")
		n := p * rapid.Float64Range(0, 1).Draw(t, "left")
		a, err := rival.StrengthBalling(plato(p), plato(n))
		if err != nil {
			t.Fatal(err)
		}
		if a.In(units.PercentMass) > 20 {
			return
		}
		back, err := rival.OriginalExtractBalling(a, plato(n))
		if err != nil || math.Abs(back.In(units.DegreePlato)-p) > 1e-9*p {
			t.Fatalf("original %v: %v", back, err)
		}
		real, err := rival.RealExtractBalling(plato(p), a)
		if err != nil || math.Abs(real.In(units.DegreePlato)-n) > 1e-9*p {
			t.Fatalf("real %v, want %v: %v", real, n, err)
		}
		byYield, err := gravity.BallingYield().OriginalExtract(a, plato(n))
		if err != nil || math.Abs(byYield.In(units.DegreePlato)-p) > 0.002 {
			t.Fatalf("by yield %v, want %v: %v", byYield, p, err)
		}
	})
}

// Original extract, from the liquid that a wort became, is the wort's.
func TestOriginalExtractOfFermented(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(1, 25).Draw(t, "°P")
		s, err := gravity.NewSolution(kg(100-p), kg(p), units.Mass{})
		if err != nil {
			t.Fatal(err)
		}
		for _, y := range []gravity.Yield{gravity.BallingYield(), gravity.SugarWashYield(gravity.AsSucrose), gravity.StoichiometricYield(gravity.AsSucrose)} {
			after, _, err := s.Ferment(kg(p*rapid.Float64Range(0, 1).Draw(t, "used")), y)
			if err != nil {
				t.Fatal(err)
			}
			got, err := y.OriginalExtract(after.ByMass(), after.RealExtract())
			if err != nil || math.Abs(got.In(units.DegreePlato)-p) > 1e-9*p {
				t.Fatalf("got %v, want %v: %v", got, p, err)
			}
		}
	})
}

func TestOriginalExtractRefuses(t *testing.T) {
	_, err := gravity.Yield{}.OriginalExtract(massPct(5), plato(1))
	refused(t, "yield", err, "ethanol yield")
	_, err = gravity.BallingYield().OriginalExtract(massPct(20.1), plato(1))
	refused(t, "yield", err, "strength")
	_, err = gravity.SugarWashYield(gravity.AsSucrose).OriginalExtract(massPct(5), plato(0.1))
	refused(t, "yield", err, "real extract")
	_, err = gravity.BallingYield().OriginalExtract(massPct(5), plato(60.1))
	refused(t, "yield", err, "real extract")
}
