package finish

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

func pure(t *testing.T) water.Profile {
	t.Helper()
	return check.Must(water.NewProfile(units.Celsius.Of(25), units.CalciumCarbonate{}))
}

func sold(t *testing.T, a water.Acid, percent float64) material.Material {
	t.Helper()
	return check.Must(a.AsSold(check.Must(units.Percent.Try(percent)), units.Density{}))
}

// 1 g/L of citric acid in pure water: 5.205 mmol/L with pK 3.128 gives H+ 1.66 mmol/L by
// h² + Kh − KC = 0 with the activity coefficient 0.955; the second proton adds 1 %. All
// three protons come off up to pH 8.2 save 1.5 % of the third (pK 6.4).
func TestAcidifyPureWater(t *testing.T) {
	p := pure(t)
	k := math.Pow(10, -3.128) / (0.955 * 0.955)
	c := 1.0 / 192.123
	h := (-k + math.Sqrt(k*k+4*k*c)) / 2
	ph := -math.Log10(0.955 * h * 1.01)
	s := check.Must(Acidify(p, sold(t, water.CitricAcid, 100), 0, ph, water.CitricAcid.TitratedTo(8.2), units.Litre.Of(10), law.US))
	check.Near(t, "dose", s.Dose.Mass.In(units.Gram), 10, 0.15, "by hand")
	check.Near(t, "acidity", s.After.In(units.GramPerLitre), 0.995*s.Dose.Mass.In(units.Gram)/10, 0.008, "by hand, as citric acid")
	check.Near(t, "acidity before", s.Before.In(units.MilligramPerLitre), 0, 1, "pure water")
	check.Near(t, "added", s.Concentration.In(units.GramPerLitre), s.Dose.Mass.In(units.Gram)/10, 1e-9, "by hand")
	check.Near(t, "in the drink", 192.123*acidity.Millimole(s.Drink, water.Citrate), s.Concentration.In(units.MilligramPerLitre), 0.01, "what was added")
	if len(s.Passed) != 1 || len(s.Cautions) != 4 {
		t.Errorf("%+v", s) // 27 CFR 24.246: 0.69 g/L
	}
	// The monohydrate is 192.123/210.138 of its mass citric acid.
	m := check.Must(Acidify(p, sold(t, water.CitricAcid, 100*192.123/210.138), 0, ph, water.TartaricAcid.TitratedTo(7), units.Litre.Of(10), law.EU))
	check.Near(t, "monohydrate", m.Dose.Mass.In(units.Gram)/s.Dose.Mass.In(units.Gram), 210.138/192.123, 1e-6, "molar masses")
	check.Near(t, "as tartaric to 7.0", m.After.In(units.GramPerLitre)/s.After.In(units.GramPerLitre), 75.043/64.041, 0.08,
		"molar masses; less of the third proton")
	if len(m.Passed) != 0 || len(m.Cautions) != 2 {
		t.Errorf("%+v", m)
	}
}

func TestAcidifyReachesThePH(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		alk := check.Must(units.MilligramPerLitreCaCO3.Try(rapid.Float64Range(20, 200).Draw(t, "alkalinity")))
		drink := check.Must(water.NewProfile(units.Celsius.Of(20), alk, water.Succinate.At(units.MilligramPerLitre.Of(400)),
			water.Calcium.At(units.MilligramPerLitre.Of(40))))
		target := rapid.Float64Range(2.9, 3.8).Draw(t, "target pH")
		acid := rapid.SampledFrom([]water.Acid{water.CitricAcid, water.LacticAcid, water.MalicAcid, water.TartaricAcid, water.PhosphoricAcid}).Draw(t, "acid")
		measured := rapid.SampledFrom([]float64{0, 5, 4.5}).Draw(t, "measured pH")
		s := check.Must(Acidify(drink, check.Must(acid.AsSold(units.Percent.Of(80), units.Density{})), measured, target,
			water.TartaricAcid.TitratedTo(8.2), units.Litre.Of(60), law.EU))
		e := check.Must(s.Drink.Closed(units.MolarConcentration{}))
		if math.Abs(e.PH()-target) > 1e-6 {
			t.Fatalf("pH %g, wanted %g", e.PH(), target)
		}
		if s.After.Compare(s.Before) <= 0 {
			t.Fatalf("acidity %v after %v", s.After, s.Before)
		}
		if d := s.Dose.Mass.In(units.Gram)*0.8/60 - s.Concentration.In(units.GramPerLitre); math.Abs(d) > 1e-9 {
			t.Fatalf("mass off by %g", d)
		}
	})
}

func TestAcidifyRefuses(t *testing.T) {
	p, acid, one := pure(t), sold(t, water.CitricAcid, 100), units.Litre.Of(1)
	try := func(p water.Profile, measured, target float64, acid material.Material, v units.Volume) error {
		_, err := Acidify(p, acid, measured, target, water.TartaricAcid.TitratedTo(8.2), v, law.US)
		return err
	}
	check.Refused(t, try(p, 0, 3, acid, units.Volume{}), "volume", amount.LeastVolume, amount.MostVolume)
	check.Refused(t, try(p, 2.4, 3, acid, one), "measured pH", 2.5, 9)
	check.Refused(t, try(p, 9.1, 3, acid, one), "measured pH", 2.5, 9)
	if _, is := errors.AsType[*units.StateError](try(p, 0, 3, material.Gypsum(), one)); !is {
		t.Error("gypsum is taken for an acid")
	}
	check.Refused(t, try(p, 0, 3, sold(t, water.CitricAcid, 0.9), one), "share of pure acid", 1, 100)
	check.Refused(t, try(p, 0, 2.4, acid, one), "target pH", 2.5, 7)
	check.Refused(t, try(p, 0, 7.1, acid, one), "target pH", 2.5, 7)
	if try(p, 3.5, 3.6, acid, one) == nil {
		t.Error("a higher pH is taken")
	}
	buffered := check.Must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(6000)))
	check.Refused(t, try(buffered, 0, 3.5, sold(t, water.LacticAcid, 80), one), "acid", 0, 20)
}

// A brine is beyond the activity coefficients.
func TestAcidifyRefusesABrine(t *testing.T) {
	brine := check.Must(water.NewProfile(amount.Room, units.CalciumCarbonate{}, water.Sodium.At(amount.MgPerL(15000)), water.Chloride.At(amount.MgPerL(23130))))
	for _, measured := range []float64{0, 4} {
		_, err := Acidify(brine, sold(t, water.CitricAcid, 100), measured, 3, water.TartaricAcid.TitratedTo(8.2), units.Litre.Of(1), law.US)
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != "ionic strength" {
			t.Errorf("%g: %v", measured, err)
		}
	}
}
