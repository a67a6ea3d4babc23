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

// 1 g/L of citric acid in pure water: 5.205 mmol/L with pK 3.128 gives H+ 1.66 mmol/L by
// h² + Kh − KC = 0 with the activity coefficient 0.955; the second proton adds 1 %. All
// three protons come off up to pH 8.2 save 1.5 % of the third (pK 6.4): 15.5 mEq/L.
func TestAcidifyPureWater(t *testing.T) {
	p := pure(t)
	k := math.Pow(10, -3.128) / (0.955 * 0.955)
	c := 1.0 / 192.123
	h := (-k + math.Sqrt(k*k+4*k*c)) / 2
	pH := -math.Log10(0.955 * h * 1.01)
	full := units.Percent.Of(100)
	s := must(Acidify(p, 0, pH, water.CitricAcid, full, units.Litre.Of(10), US))
	near(t, "dose", s.Mass.In(units.Gram), 10, 0.15, "by hand")
	near(t, "acidity", s.After.In(units.MilliequivalentPerLitre), 15.5*s.Mass.In(units.Gram)/10, 0.15, "by hand")
	near(t, "acidity before", s.Before.In(units.MilliequivalentPerLitre), 0, 0.01, "pure water")
	near(t, "as citric acid", must(TitratableAs(s.After, water.CitricAcid)).In(units.MilligramPerLitre), s.Concentration.In(units.MilligramPerLitre), 15, "all of it is citric acid")
	near(t, "the drink's acidity", must(TitratableAcidity(s.Drink)).In(units.MilliequivalentPerLitre), s.After.In(units.MilliequivalentPerLitre), 1e-6, "the same")
	if len(s.Passed) != 1 || len(s.Cautions) != 2 {
		t.Errorf("%+v", s) // 27 CFR 24.246: 0.69 g/L
	}
	// The monohydrate is 192.123/210.138 of its mass citric acid.
	m := must(Acidify(p, 0, pH, water.CitricAcid, share(192.123/210.138), units.Litre.Of(10), EU))
	near(t, "monohydrate", m.Mass.In(units.Gram)/s.Mass.In(units.Gram), 210.138/192.123, 1e-6, "molar masses")
	if len(m.Passed) != 0 || len(m.Cautions) != 1 {
		t.Errorf("%+v", m)
	}
}

// Masses for an equivalent: tartaric 75.04, malic 67.04, citric 64.04, lactic 90.08.
func TestTitratableAs(t *testing.T) {
	one := units.MilliequivalentPerLitre.Of(1)
	for a, want := range map[water.Acid]float64{water.TartaricAcid: 75.043, water.MalicAcid: 67.044, water.CitricAcid: 64.041, water.LacticAcid: 90.078} {
		near(t, a.String(), must(TitratableAs(one, a)).In(units.MilligramPerLitre), want, 0.001, "CIAAW 2021, computed")
	}
	_, err := TitratableAs(units.MilliequivalentPerLitre.Of(-1), water.MalicAcid)
	refused(t, err, "acidity", 0, 10000)
	_, err = TitratableAs(one, water.Acid(-1))
	refused(t, err, "molar mass of the acid", 1, 1000)
}

func TestAcidifyReachesThePH(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		alk := must(units.MilligramPerLitreCaCO3.Try(rapid.Float64Range(20, 200).Draw(t, "alkalinity")))
		drink := must(water.NewProfile(units.Celsius.Of(20), alk, water.Succinate.At(units.MilligramPerLitre.Of(400)), water.Calcium.At(units.MilligramPerLitre.Of(40))))
		target := rapid.Float64Range(2.9, 3.8).Draw(t, "target pH")
		acid := rapid.SampledFrom([]water.Acid{water.CitricAcid, water.LacticAcid, water.MalicAcid, water.TartaricAcid, water.PhosphoricAcid}).Draw(t, "acid")
		measured := rapid.SampledFrom([]float64{0, 5, 4.5}).Draw(t, "measured pH")
		s := must(Acidify(drink, measured, target, acid, units.Percent.Of(80), units.Litre.Of(60), EU))
		e := must(s.Drink.Closed(units.MolarConcentration{}))
		if math.Abs(e.PH()-target) > 1e-6 {
			t.Fatalf("pH %g, wanted %g", e.PH(), target)
		}
		if s.After.Compare(s.Before) <= 0 {
			t.Fatalf("acidity %v after %v", s.After, s.Before)
		}
		if d := s.Mass.In(units.Gram)*0.8/60 - s.Concentration.In(units.GramPerLitre); math.Abs(d) > 1e-9 {
			t.Fatalf("mass off by %g", d)
		}
	})
}

func TestAcidifyRefuses(t *testing.T) {
	p, full, one := pure(t), units.Percent.Of(100), units.Litre.Of(1)
	_, err := Acidify(p, 0, 3, water.CitricAcid, full, units.Volume{}, US)
	refused(t, err, "volume", leastVolume, mostVolume)
	_, err = Acidify(p, 2.4, 3, water.CitricAcid, full, one, US)
	refused(t, err, "measured pH", 2.5, 9)
	_, err = Acidify(p, 9.1, 3, water.CitricAcid, full, one, US)
	refused(t, err, "measured pH", 2.5, 9)
	_, err = Acidify(p, 0, 3, water.CitricAcid, units.Share{}, one, US)
	refused(t, err, "strength of the acid", 1, 100)
	_, err = Acidify(p, 0, 2.4, water.CitricAcid, full, one, US)
	refused(t, err, "target pH", 2.5, 7)
	_, err = Acidify(p, 0, 7.1, water.CitricAcid, full, one, US)
	refused(t, err, "target pH", 2.5, 7)
	if _, err = Acidify(p, 3.5, 3.6, water.CitricAcid, full, one, US); err == nil {
		t.Error("a higher pH is taken")
	}
	buffered := must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(6000)))
	_, err = Acidify(buffered, 0, 3.5, water.LacticAcid, full, one, US)
	refused(t, err, "acid", 0, 20)
}
