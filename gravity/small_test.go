package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A gram or a tonne: the edges of a boil lie at the same composition, 80 % mass of
// sucrose and 48 % of fructose, and are met.
func TestBoilToTheEdge(t *testing.T) {
	for _, k := range []float64{0.001, 1, 1000} {
		for _, c := range []struct {
			sugar gravity.Sugar
			most  float64
		}{{gravity.AsSucrose, 80}, {gravity.AsFructose, 48}} {
			make := func(water float64) (gravity.Solution, float64) {
				s := solution(t, k*water, 0, 0)
				s = ok[gravity.Solution](t)(s.AddExtract(c.sugar, kg(k*c.most/100)))
				return s, ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre)
			}
			s, whole := make(1)
			edge, end := make(1 - c.most/100)
			low, gone, err := s.BoilDownTo(litre(end*(1+1e-11)), celsius(20))
			if err != nil {
				t.Fatal(err)
			}
			near(t, "extract", low.RealExtract().In(units.DegreePlato), c.most, 1e-7)
			near(t, "water gone", inKg(gone)/k, c.most/100, 1e-9)
			_, _, err = s.BoilDownTo(litre(end*(1-1e-8)), celsius(20))
			refused(t, "past the edge", err, "volume")
			if r := rangeError(t, err); r != nil {
				near(t, "least", r.Min/end, 1, 2e-9)
				near(t, "most", r.Max/whole, 1, 2e-9)
			}
			// nothing to do
			for _, at := range []gravity.Solution{s, edge} {
				v := ok[units.Volume](t)(at.Volume(celsius(20)))
				same, gone, err := at.BoilDownTo(v, celsius(20))
				if err != nil || inKg(gone) > 1e-9*k || math.Abs(inKg(same.Water())-inKg(at.Water())) > 1e-9*k {
					t.Error("as it is:", gone, err)
				}
				same, added, err := at.MakeUpTo(v, celsius(20))
				if err != nil || inKg(added) > 1e-9*k || math.Abs(inKg(same.Water())-inKg(at.Water())) > 1e-9*k {
					t.Error("as it is:", added, err)
				}
			}
			_, _, err = s.BoilDownTo(litre(whole*(1+1e-8)), celsius(20))
			refused(t, "more than there is", err, "volume")
			more, added, err := s.MakeUpTo(litre(whole+0.5*k), celsius(20))
			if err != nil {
				t.Fatal(err)
			}
			near(t, "water added", (inKg(more.Water())-inKg(s.Water()))/k, inKg(added)/k, 1e-12)
			near(t, "half a litre and a little", inKg(added)/k, 0.5, 0.01)
			_, _, err = s.MakeUpTo(litre(whole*(1-1e-8)), celsius(20))
			refused(t, "less than there is", err, "volume")
		}
	}
}

// Taking all, or all and a rounding more, leaves nothing; of nothing there is nothing.
func TestTakeAll(t *testing.T) {
	s := solution(t, 0.5, 0.1, 0.05)
	whole := ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre)
	for _, more := range []float64{0, 5e-13, 9e-13} {
		taken, left, err := s.TakeVolume(litre(whole*(1+more)), celsius(20))
		if err != nil || left != (gravity.Solution{}) || taken != s {
			t.Error(more, taken, left, err)
		}
	}
	taken, left, err := gravity.Solution{}.TakeVolume(litre(0), celsius(20))
	if err != nil || taken != (gravity.Solution{}) || left != (gravity.Solution{}) {
		t.Error(taken, left, err)
	}
}

// A liquid is as strong as itself: diluting it to its own strength takes no water, and
// one of two liquids that has the strength already makes the whole blend.
func TestOwnStrength(t *testing.T) {
	water := solution(t, 1, 0, 0)
	for i := range 200 {
		e := 0.005 + float64(i)/1000
		s := solution(t, 1-e, 0.03, e)
		low, added, err := s.DiluteTo(s.ByVolume())
		if err != nil || inKg(added) > 1e-12 || low.ByVolume().Minus(s.ByVolume()).In(units.PercentagePoint) > 1e-12 {
			t.Fatal(e, low, added, err)
		}
		a, b, _, err := gravity.BlendToStrength(water, s, s.ByVolume(), litre(1))
		if err != nil || inKg(a.Mass) > 1e-12 || inKg(b.Mass) < 0.9 {
			t.Fatal(e, a, b, err)
		}
		a, b, _, err = gravity.BlendToStrength(s, water, s.ByVolume(), litre(1))
		if err != nil || inKg(b.Mass) > 1e-12 || inKg(a.Mass) < 0.9 {
			t.Fatal(e, a, b, err)
		}
		a, b, _, err = gravity.BlendToStrength(s, s, s.ByVolume(), litre(1))
		if err != nil || math.Abs(inKg(a.Mass)+inKg(b.Mass)-inKg(s.Mass())/ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre)) > 1e-9 {
			t.Fatal(e, a, b, err)
		}
	}
}

// Beside an error stands no number.
func TestNothingBesideAnError(t *testing.T) {
	s := solution(t, 50, 0, 50)
	for what, f := range map[string]func() (float64, error){
		"index":           func() (float64, error) { return gravity.RefractiveIndex(plato(90)) },
		"index of spirit": s.RefractiveIndex,
		"reading":         func() (float64, error) { return gravity.Hydrometer{}.Reading(s, celsius(50)) },
	} {
		if v, err := f(); v != 0 || err == nil {
			t.Errorf("%s: %v beside %v", what, v, err)
		}
	}
}
