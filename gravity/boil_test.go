package gravity_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Boiling down and making up meet the volume, move water alone, and undo each other.
func TestBoilDownAndMakeUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := rapid.Float64Range(1, 100).Draw(t, "water")
		s := solution(t, w, w*rapid.Float64Range(0, 1).Draw(t, "sugar"), 0)
		c := celsius(rapid.Float64Range(0, 100).Draw(t, "°C"))
		whole := ok[units.Volume](t)(s.Volume(c)).In(units.Litre)
		down := litre(whole - inKg(s.Water())*rapid.Float64Range(0, 0.5).Draw(t, "part"))
		less, gone, err := s.BoilDownTo(down, c)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "volume", ok[units.Volume](t)(less.Volume(c)).In(units.Litre), down.In(units.Litre), 1e-9*whole)
		near(t, "water gone", inKg(s.Water())-inKg(less.Water()), inKg(gone), 1e-9*whole)
		if less.Extract() != s.Extract() {
			t.Fatal("extract changed")
		}
		back, added, err := less.MakeUpTo(litre(whole), c)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "water added", inKg(added), inKg(gone), 1e-8*whole)
		near(t, "volume", ok[units.Volume](t)(back.Volume(c)).In(units.Litre), whole, 1e-9*whole)
	})
}

func TestBoilRefuses(t *testing.T) {
	s := solution(t, 50, 5, 0)
	for _, v := range []float64{0, 3, 60, math.NaN()} {
		_, _, err := s.BoilDownTo(litre(v), celsius(95))
		refused(t, "boil", err, "volume")
	}
	for _, v := range []float64{0, 50, 1.1e9, math.NaN()} {
		_, _, err := s.MakeUpTo(litre(v), celsius(20))
		refused(t, "make up", err, "volume")
	}
	for _, c := range []float64{-1, 101} {
		_, _, err := s.BoilDownTo(litre(50), celsius(c))
		refused(t, "boil", err, "temperature")
		_, _, err = s.MakeUpTo(litre(60), celsius(c))
		refused(t, "make up", err, "temperature")
	}
	beer := solution(t, 50, 5, 2)
	_, _, err := beer.BoilDownTo(litre(50), celsius(20))
	refused(t, "boil", err, "ethanol")
	if _, _, err := beer.MakeUpTo(litre(60), celsius(20)); err != nil {
		t.Error(err)
	}
	fructose := solution(t, 50, 0, 0)
	fructose = ok[gravity.Solution](t)(fructose.AddExtract(gravity.AsFructose, kg(5)))
	_, _, err = fructose.BoilDownTo(litre(6), celsius(20))
	refused(t, "past the table of fructose", err, "volume")
	low, _, err := fructose.BoilDownTo(litre(9), celsius(20))
	if err != nil || low.RealExtract().In(units.DegreePlato) > 48 {
		t.Error(low, err)
	}
	var nothing gravity.Solution
	full, water, err := nothing.MakeUpTo(litre(20), celsius(20))
	if err != nil || math.Abs(inKg(water)-19.964) > 0.001 || full.Gravity() != (gravity.Gravity{}) {
		t.Error(water, err)
	}
}

// US proof is twice the strength by volume at 60 °F: 27 CFR 186.66 (former) has 50 % vol
// for 100 proof, and USP 29 has 42.49 % mass there (recalled from memory).
func TestByVolumeAt(t *testing.T) {
	f60 := units.Fahrenheit.Of(60)
	for p, v := range map[float64]float64{1: 1.26, 2: 2.51, 4: 5.00, 10: 12.39, 20: 24.47, 32: 38.46} { // USP 29
		near(t, "USP 29", ok[units.StrengthByVolume](t)(gravity.ByVolumeAt(massPct(p), f60)).In(units.PercentVolume), v, 0.011)
		near(t, "USP 29", ok[units.StrengthByMass](t)(gravity.ByMassAt(volPct(v), f60)).In(units.PercentMass), p, 0.01)
	}
	near(t, "100 proof", ok[units.StrengthByMass](t)(gravity.ByMassAt(volPct(50), f60)).In(units.PercentMass), 42.49, 0.02)
	rapid.Check(t, func(t *rapid.T) {
		p, c := rapid.Float64Range(0, 100).Draw(t, "% mass"), celsius(rapid.Float64Range(-20, 40).Draw(t, "°C"))
		v := ok[units.StrengthByVolume](t)(gravity.ByVolumeAt(massPct(p), c))
		near(t, "back", ok[units.StrengthByMass](t)(gravity.ByMassAt(v, c)).In(units.PercentMass), p, 1e-9*p+1e-11)
		near(t, "20 °C", ok[units.StrengthByVolume](t)(gravity.ByVolumeAt(massPct(p), celsius(20))).In(units.PercentVolume),
			gravity.ByVolume(massPct(p)).In(units.PercentVolume), 1e-12)
	})
	for _, p := range []float64{-1, 101, math.NaN()} {
		_, err := gravity.ByVolumeAt(massPct(p), f60)
		refused(t, "strength", err, "strength")
		_, err = gravity.ByMassAt(volPct(p), f60)
		refused(t, "strength", err, "strength")
	}
	for _, c := range []float64{-21, 41} {
		_, err := gravity.ByVolumeAt(massPct(5), celsius(c))
		refused(t, "temperature", err, "temperature")
		_, err = gravity.ByMassAt(volPct(5), celsius(c))
		refused(t, "temperature", err, "temperature")
	}
}
