package nutrient

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

func pure(t *testing.T) water.Profile {
	t.Helper()
	return must(water.NewProfile(units.Celsius.Of(25), units.CalciumCarbonate{}))
}

// 1 g/L of citric acid in pure water: 5.205 mmol/L with pK 3.128 gives H+ 1.63 mmol/L by
// h² + Kh − KC = 0, corrected for activity to pH 2.77 to 2.80; all three protons come off
// up to pH 8.2 save 1.5 % of the third (pK 6.4), 15.5 mEq/L.
func TestAcidifyPureWater(t *testing.T) {
	p := pure(t)
	var k = math.Pow(10, -3.128) / (0.955 * 0.955) // constant for concentrations at this strength
	c := 1.0 / 192.123
	h := (-k + math.Sqrt(k*k+4*k*c)) / 2
	pH := -math.Log10(0.955 * h)
	s := must(Acidify(p, 0, pH, Citric, units.Litre.Of(10), US))
	near(t, "dose", s.Mass.In(units.Gram), 10, 0.3, "by hand; the second proton, left out there, lowers the pH")
	near(t, "acidity", s.After.In(units.MilliequivalentPerLitre), 15.5*s.Mass.In(units.Gram)/10, 0.15, "by hand")
	near(t, "acidity before", s.Before.In(units.MilliequivalentPerLitre), 0, 0.01, "pure water")
	near(t, "as citric acid", s.After.In(units.MilliequivalentPerLitre)*Citric.EquivalentMass(), s.Concentration.In(units.MilligramPerLitre), 15, "all of it is citric acid")
	near(t, "the drink's acidity", must(TitratableAcidity(s.Drink)).In(units.MilliequivalentPerLitre), s.After.In(units.MilliequivalentPerLitre), 1e-6, "the same")
	if len(s.Passed) != 1 || len(s.Cautions) != 2 {
		t.Errorf("%+v", s) // 27 CFR 24.246: 0.69 g/L
	}
	// The monohydrate weighs 210.138/192.123 as much.
	m := must(Acidify(p, 0, pH, CitricMonohydrate, units.Litre.Of(10), EU))
	near(t, "monohydrate", m.Mass.In(units.Gram)/s.Mass.In(units.Gram), 210.138/192.123, 1e-6, "molar masses")
	if len(m.Passed) != 0 || len(m.Cautions) != 1 {
		t.Errorf("%+v", m)
	}
}

// Equivalent masses: 192.123/3, 210.138/3, 90.078/0.8, 134.087/2, 150.086/2.
func TestSours(t *testing.T) {
	for a, want := range map[Sour]float64{Citric: 64.041, CitricMonohydrate: 70.046, Lactic80: 112.598, Malic: 67.044, Tartaric: 75.043} {
		near(t, a.String(), a.EquivalentMass(), want, 0.001, "CIAAW 2021, computed")
		if got, err := ParseSour(a.String()); err != nil || got != a {
			t.Errorf("%v: %v, %v", a, got, err)
		}
	}
	if _, err := ParseSour("lactic acid"); err == nil {
		t.Error("lactic acid of no strength is taken")
	}
	// Each acid goes to its own place.
	p := pure(t)
	for a, ion := range map[Sour]water.Ion{Citric: water.Citrate, Lactic80: water.Lactate, Malic: water.Malate, Tartaric: water.Tartrate} {
		s := must(Acidify(p, 0, 3, a, units.Litre.Of(1), EU))
		mmol := s.Drink.Ion(ion).In(units.MilligramPerLitre) / ion.MolarMass()
		near(t, a.String(), mmol, s.Mass.In(units.Milligram)/a.EquivalentMass()/a.facts().protons, 1e-9, "by mass")
	}
}

func TestAcidifyReachesThePH(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		alk := must(units.MilligramPerLitreCaCO3.Try(rapid.Float64Range(20, 200).Draw(t, "alkalinity")))
		drink := must(water.NewProfile(units.Celsius.Of(20), alk, water.Succinate.At(units.MilligramPerLitre.Of(400)), water.Calcium.At(units.MilligramPerLitre.Of(40))))
		target := rapid.Float64Range(2.9, 3.8).Draw(t, "target pH")
		acid := Sour(rapid.IntRange(0, 4).Draw(t, "acid"))
		measured := rapid.SampledFrom([]float64{0, 5, 4.5}).Draw(t, "measured pH")
		s := must(Acidify(drink, measured, target, acid, units.Litre.Of(60), EU))
		e := must(s.Drink.Closed(units.MolarConcentration{}))
		if math.Abs(e.PH()-target) > 1e-6 {
			t.Fatalf("pH %g, wanted %g", e.PH(), target)
		}
		if s.After.Compare(s.Before) <= 0 {
			t.Fatalf("acidity %v after %v", s.After, s.Before)
		}
	})
}

func TestAcidifyRefuses(t *testing.T) {
	p := pure(t)
	_, err := Acidify(p, 0, 3, Citric, units.Volume{}, US)
	refused(t, err, "volume", leastVolume, mostVolume)
	_, err = Acidify(p, 2.4, 3, Citric, units.Litre.Of(1), US)
	refused(t, err, "measured pH", 2.5, 9)
	_, err = Acidify(p, 3.5, 3.6, Citric, units.Litre.Of(1), US)
	if err == nil {
		t.Error("a higher pH is taken")
	}
	_, err = Acidify(p, 0, 2.4, Citric, units.Litre.Of(1), US)
	if err == nil {
		t.Error("pH 2.4 is taken")
	}
	buffered := must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(8000)))
	_, err = Acidify(buffered, 0, 2.5, Lactic80, units.Litre.Of(1), US)
	refused(t, err, "acid", 0, 20)
}
