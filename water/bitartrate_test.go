package water

import (
	"errors"
	"testing"

	"example.org/zymase/units"
)

// A pure solution above its solubility comes down to it: 4.92 g/L at 20 °C in water, 1.11 at 0 °C in 12 % vol
// (Berg & Keefer 1958, recalled from memory). Where there is less, nothing settles.
func TestCreamOfTartar(t *testing.T) {
	for _, r := range []struct{ celsius, strength, solubility float64 }{{20, 0, 4.92}, {0, 12, 1.11}, {10, 10, 2.02}} {
		for _, have := range []float64{0.9 * r.solubility, r.solubility + 1.5} {
			p := Profile{t: r.celsius}
			p.settle(-1000 * have / 188.177)
			p, err := p.WithEthanol(volPercent(t, r.strength))
			if err != nil {
				t.Fatal(err)
			}
			got, err := p.CreamOfTartar()
			if err != nil {
				t.Fatal(err)
			}
			near(t, "settled", got.In(units.GramPerLitre), max(0, have-r.solubility), 1e-4)
		}
	}
	// A page quotes 0.57 g in 100 mL at 20 °C; the uncertainty of 15 % holds it.
	near(t, "as quoted", tartarSolubility(20, 0), 5.7, 0.15*5.7)
}

// What has settled leaves a wine at rest: nothing more does. More potassium brings more down, at one pH.
func TestCreamOfTartarComesToRest(t *testing.T) {
	wine := func(potassium float64) Profile {
		p, err := NewProfile(celsius(5), units.MilligramPerLitreCaCO3.Of(0), Potassium.At(mgL(potassium)), Tartrate.At(mgL(2500)), Malate.At(mgL(1500)), Calcium.At(mgL(60)))
		if err != nil {
			t.Fatal(err)
		}
		alk, err := p.AlkalinityAt(3.4, units.AbsolutePressure{})
		if err != nil {
			t.Fatal(err)
		}
		p.alk = alk.In(units.MilligramPerLitreCaCO3) / 50.0433
		if p, err = p.WithEthanol(volPercent(t, 12)); err != nil {
			t.Fatal(err)
		}
		return p
	}
	p := wine(1000)
	less, err := wine(800).CreamOfTartar()
	if err != nil {
		t.Fatal(err)
	}
	n, err := p.CreamOfTartar()
	if err != nil || n.Compare(less) <= 0 || less.IsZero() {
		t.Fatal(n, less, err)
	}
	p.settle(n.In(units.MilligramPerLitre) / 188.177)
	if again, err := p.CreamOfTartar(); err != nil || again.In(units.MilligramPerLitre) > 0.05 {
		t.Error(again, err)
	}
	strong := wine(1000)
	strong.mg[Sodium], strong.mg[Chloride] = 20_000, 31_000 // 0.9 mol/kg
	if _, err := (Profile{t: 95}).CreamOfTartar(); err == nil {
		t.Error("95 °C is taken")
	}
	for what, bad := range map[string]Profile{"temperature": {t: 25}, "ionic strength": strong} {
		_, err := bad.CreamOfTartar()
		if r, ok := errors.AsType[*units.RangeError](err); !ok || r.Quantity != what {
			t.Error(err)
		}
	}
}
