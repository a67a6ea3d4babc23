package water

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/units"
)

// A pure solution above its solubility comes down to it: 4.92 g/L at 20 °C in water, 1.11 at 0 °C in 12 % vol
// (Berg & Keefer 1958, recalled from memory). Where there is less, nothing settles.
func TestCreamOfTartar(t *testing.T) {
	for _, r := range []struct{ celsius, strength, solubility float64 }{{20, 0, 4.92}, {0, 12, 1.11}, {10, 10, 2.02}} {
		for _, have := range []float64{0.9 * r.solubility, r.solubility + 0.1, r.solubility + 1.5} {
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

// The whole table of Berg & Keefer 1958 (recalled from memory), g/L, where what is dissolved comes down to it; and between
// its figures the logarithm by thirds: 16 % vol stands a third of the way from 14 to 20, 18 °C three fifths from 15 to 20.
func TestCreamOfTartarTable(t *testing.T) {
	left := func(celsius, strength float64) float64 {
		const have = 6.0
		p := Profile{t: celsius}
		p.settle(-1000 * have / 188.177)
		p, err := p.WithEthanol(volPercent(t, strength))
		if err != nil {
			t.Fatal(err)
		}
		got, err := p.CreamOfTartar()
		if err != nil {
			t.Fatal(err)
		}
		return have - got.In(units.GramPerLitre)
	}
	at16 := func(at14, at20 float64) float64 { return at14 * math.Cbrt(at20/at14) }
	for _, r := range []struct{ celsius, water, at10, at12, at14, at20 float64 }{
		{0, 2.25, 1.26, 1.11, 0.98, 0.68}, {5, 2.66, 1.58, 1.49, 1.24, 0.86}, {10, 3.42, 2.02, 1.81, 1.63, 1.10},
		{15, 4.17, 2.45, 2.25, 2.03, 1.51}, {20, 4.92, 3.08, 2.77, 2.51, 1.82},
	} {
		for strength, want := range map[float64]float64{0: r.water, 10: r.at10, 12: r.at12, 14: r.at14, 16: at16(r.at14, r.at20)} {
			near(t, "left in solution", left(r.celsius, strength), want, 1e-4)
		}
	}
	near(t, "11 °C", left(11, 0), math.Pow(3.42, 0.8)*math.Pow(4.17, 0.2), 1e-4)
	near(t, "18 °C", left(18, 0), math.Pow(4.17, 0.4)*math.Pow(4.92, 0.6), 1e-4)
}

// What has settled leaves a wine at rest: nothing more does. More potassium brings more down, at one pH.
func TestCreamOfTartarComesToRest(t *testing.T) {
	wine := func(potassium, tartrate float64) Profile {
		p, err := NewProfile(celsius(5), units.MilligramPerLitreCaCO3.Of(0), Potassium.At(mgL(potassium)), Tartrate.At(mgL(tartrate)),
			Malate.At(mgL(1500)), Calcium.At(mgL(60)))
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
	p := wine(1000, 2500)
	// However little tartrate there is, under much potassium it settles in part: here 0.8 mmol/L.
	if n, err := wine(8000, 0.8*Tartrate.MolarMass().In(units.GramPerMole)).CreamOfTartar(); err != nil || n.IsZero() ||
		n.In(units.MilligramPerLitre) > 0.8*188.177 {
		t.Error(n, err)
	}
	less, err := wine(800, 2500).CreamOfTartar()
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
	strong := wine(1000, 2500)
	strong.mg[Sodium], strong.mg[Chloride] = 20_000, 31_000 // 0.9 mol/kg
	if _, err := (Profile{t: 95}).CreamOfTartar(); err == nil {
		t.Error("95 °C is taken")
	}
	for what, bad := range map[string]Profile{"temperature": {t: 25}, "ionic strength": strong} {
		_, err := bad.CreamOfTartar()
		if r, ok := errors.AsType[*units.RangeError](err); !ok || r.Quantity != what || what == "temperature" && (r.Min != 0 || r.Max != 20) {
			t.Error(err)
		}
	}
}
