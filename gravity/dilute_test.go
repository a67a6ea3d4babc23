package gravity_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Water down to a strength and the same up again with pure ethanol; masses are kept
// and the strength is met.
func TestDiluteAndFortify(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSolution(t)
		have := s.ByVolume().In(units.PercentVolume)
		if have < 0.3 {
			return
		}
		want := volPct(rapid.Float64Range(0.05, 1).Draw(t, "part") * have)
		low, water, err := s.DiluteTo(want)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength", low.ByVolume().In(units.PercentVolume), want.In(units.PercentVolume), 1e-9)
		balance(t, "mass", inKg(low.Mass()), inKg(s.Mass())+inKg(water))
		balance(t, "ethanol", inKg(low.Ethanol()), inKg(s.Ethanol()))
		back, m, err := low.FortifyTo(s.ByVolume(), s)
		if err == nil {
			t.Fatalf("not stronger than itself: %v %v", back, m)
		}
		spirit := solution(t, 2, 0, 3)
		strong, added, err := low.FortifyTo(volPct(want.In(units.PercentVolume)+1), spirit)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength", strong.ByVolume().In(units.PercentVolume), want.In(units.PercentVolume)+1, 1e-9)
		balance(t, "mass", inKg(strong.Mass()), inKg(low.Mass())+inKg(added))
		near(t, "ethanol", inKg(strong.Ethanol()), inKg(low.Ethanol())+0.6*inKg(added), 1e-9*inKg(strong.Mass()))
	})
}

// 27 CFR 186.66 (former): 50 volumes of ethanol and 53.73 of water make 100 volumes at
// 60 °F. At 20 °C by R 22: 100 L of 50 % vol from ethanol takes water 53.65 kg or so.
func TestDiluteContraction(t *testing.T) {
	pure := solution(t, 0, 0, 39.462)
	half, water, err := pure.DiluteTo(volPct(50))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "volume", ok[units.Volume](t)(half.Volume(celsius(20))).In(units.Litre), 100, 0.01)
	near(t, "water, L", inKg(water)/0.9982, 53.7, 0.1)
}

func TestDiluteRefuses(t *testing.T) {
	s := solution(t, 90, 5, 5)
	for _, v := range []float64{0, 7, math.NaN()} {
		_, _, err := s.DiluteTo(volPct(v))
		refused(t, "dilute", err, "strength")
	}
	_, _, err := gravity.Solution{}.DiluteTo(volPct(0.01))
	refused(t, "nothing", err, "mass of the liquid")
	_, _, err = s.FortifyTo(volPct(10), gravity.Solution{})
	refused(t, "with nothing", err, "mass of the other")
	spirit := solution(t, 60, 0, 40)
	for _, v := range []float64{5, 60, math.NaN()} {
		_, _, err = s.FortifyTo(volPct(v), spirit)
		refused(t, "fortify", err, "strength")
	}
	_, _, err = s.TakeVolume(litre(200), celsius(20))
	refused(t, "take", err, "volume")
	_, _, err = s.TakeVolume(litre(-1), celsius(20))
	refused(t, "take", err, "volume")
	_, _, err = s.TakeVolume(litre(1), celsius(50))
	refused(t, "take", err, "temperature")
	if _, _, err = (gravity.Solution{}).TakeVolume(litre(0), celsius(20)); err != nil {
		t.Error(err)
	}
}

func TestTakeVolume(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSolution(t)
		c := celsius(rapid.Float64Range(0, 40).Draw(t, "°C"))
		whole := ok[units.Volume](t)(s.Volume(c)).In(units.Litre)
		v := whole * rapid.Float64Range(0, 1).Draw(t, "part")
		taken, left, err := s.TakeVolume(litre(v), c)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "volume", ok[units.Volume](t)(taken.Volume(c)).In(units.Litre), v, 1e-9*whole)
		near(t, "left", ok[units.Volume](t)(left.Volume(c)).In(units.Litre), whole-v, 1e-9*whole)
		balance(t, "mass", inKg(taken.Mass())+inKg(left.Mass()), inKg(s.Mass()))
	})
}

func TestBlendToStrength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawSolution(t), drawSolution(t)
		sa, sb := a.ByVolume().In(units.PercentVolume), b.ByVolume().In(units.PercentVolume)
		if math.Abs(sa-sb) < 0.1 {
			return
		}
		want := sa + (sb-sa)*rapid.Float64Range(0, 1).Draw(t, "way")
		v := rapid.Float64Range(0.1, 100).Draw(t, "L")
		pa, pb, blend, err := gravity.BlendToStrength(a, b, volPct(want), litre(v))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength", blend.ByVolume().In(units.PercentVolume), want, 1e-9)
		near(t, "volume", ok[units.Volume](t)(blend.Volume(celsius(20))).In(units.Litre), v, 1e-9*v)
		near(t, "mass", inKg(pa.Mass)+inKg(pb.Mass), inKg(blend.Mass()), 1e-9*v)
		near(t, "volume of the part", pa.Volume.In(units.Litre), inKg(pa.Mass)*ok[units.Volume](t)(a.Volume(celsius(20))).In(units.Litre)/inKg(a.Mass()), 1e-9*v)
	})
	a := solution(t, 90, 5, 5)
	b := solution(t, 90, 5, 10)
	for _, v := range []float64{1, 20, math.NaN()} {
		_, _, _, err := gravity.BlendToStrength(a, b, volPct(v), litre(1))
		refused(t, "blend", err, "strength")
	}
	_, _, _, err := gravity.BlendToStrength(a, b, a.ByVolume(), litre(-1))
	refused(t, "blend", err, "volume")
	_, _, _, err = gravity.BlendToStrength(a, gravity.Solution{}, a.ByVolume(), litre(1))
	refused(t, "blend", err, "mass of a liquid")
	pa, pb, _, err := gravity.BlendToStrength(a, b, b.ByVolume(), litre(10))
	if err != nil || inKg(pa.Mass) > 1e-9 || inKg(pb.Mass) < 9 {
		t.Error(pa, pb, err)
	}
}

// A spirit, a syrup and water: strength and extract are both met, and masses add.
func TestBlendToStrengthAndExtract(t *testing.T) {
	spirit := solution(t, 5, 0, 95)
	syrup := solution(t, 40, 60, 0)
	water := solution(t, 1, 0, 0)
	rapid.Check(t, func(t *rapid.T) {
		v, x := rapid.Float64Range(0, 15).Draw(t, "% vol"), rapid.Float64Range(0, 15).Draw(t, "°P")
		parts, blend, err := gravity.BlendToStrengthAndExtract(spirit, syrup, water, volPct(v), plato(x), litre(20))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength", blend.ByVolume().In(units.PercentVolume), v, 1e-9)
		near(t, "extract", blend.RealExtract().In(units.DegreePlato), x, 1e-9)
		near(t, "volume", ok[units.Volume](t)(blend.Volume(celsius(20))).In(units.Litre), 20, 1e-9)
		near(t, "mass", inKg(parts[0].Mass)+inKg(parts[1].Mass)+inKg(parts[2].Mass), inKg(blend.Mass()), 1e-9)
		near(t, "ethanol", 0.95*inKg(parts[0].Mass), inKg(blend.Ethanol()), 1e-9)
		near(t, "sugar", 0.6*inKg(parts[1].Mass), inKg(blend.Extract()), 1e-9)
	})
	_, _, err := gravity.BlendToStrengthAndExtract(spirit, syrup, water, volPct(-1), plato(5), litre(20))
	refused(t, "strength", err, "strength")
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, spirit, water, volPct(5), plato(5), litre(20))
	refused(t, "the same twice", err, "independent liquids")
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, syrup, water, volPct(5), plato(61), litre(20))
	if err == nil {
		t.Error("more extract than the syrup")
	}
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, syrup, solution(t, 95, 3, 5), volPct(2), plato(1), litre(20))
	refused(t, "weaker than the third", err, "share of liquid 1")
	if r := rangeError(t, err); r != nil {
		near(t, "least share", r.Min, 0, 2e-9)
		near(t, "most", r.Max, 100, 2e-9)
	}
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, syrup, gravity.Solution{}, volPct(2), plato(1), litre(20))
	refused(t, "nothing", err, "mass of a liquid")
}
