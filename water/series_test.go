package water

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// Whatever waters follow one another, in whatever order of questions, the answers are
// those of each water alone, as far as the ionic strength is followed: a part in 1e7, of a gram of acids too.
func TestSeries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var r Series
		for range rapid.IntRange(2, 8).Draw(t, "waters") {
			p := anySolution(t)
			if rapid.Bool().Draw(t, "fewer") {
				for _, i := range []Ion{Calcium, Magnesium, Sulfate, Ammonium, Phosphate, Lactate, Citrate, Malate, Sulfite} {
					if rapid.Bool().Draw(t, "none") {
						p.mg[i] = 0
					}
				}
			}
			p.t = rapid.SampledFrom([]float64{5, 20}).Draw(t, "celsius")
			p.ph = rapid.SampledFrom([]float64{0, 4, 8}).Draw(t, "known pH")
			gas := atm(rapid.Float64Range(0, 12).Draw(t, "atm"))
			ph := rapid.Float64Range(2, 12).Draw(t, "pH")
			mmol := units.MillimolePerLitre.Of(checked.Number(rapid.Float64Range(0, 30).Draw(t, "carbon")))
			same := func(what string, a, b Equilibrium, one, two error) {
				if (one == nil) != (two == nil) {
					t.Fatalf("%s: %v in a series, %v alone", what, one, two)
				}
				if math.Abs(a.PH()-b.PH()) > 1e-7 || math.Abs(a.s.strength-b.s.strength) > 1e-6*b.s.strength ||
					math.Abs(a.s.free[partCa]-b.s.free[partCa]) > 1e-7*b.s.total[partCa] {
					t.Fatalf("%s: pH %.14g at %g mol/kg in a series, %.14g at %g alone", what, a.PH(), a.s.strength, b.PH(), b.s.strength)
				}
			}
			switch rapid.IntRange(0, 2).Draw(t, "question") {
			case 0:
				a, one := r.Under(p, gas)
				b, two := p.Under(gas)
				same("under", a, b, one, two)
			case 1:
				a, one := r.Closed(p, mmol)
				b, two := p.Closed(mmol)
				same("closed", a, b, one, two)
			default:
				a, one := r.AlkalinityAt(p, ph, gas)
				b, two := p.AlkalinityAt(ph, gas)
				if d := a.Minus(b).In(units.MilligramPerLitreCaCO3); (one == nil) != (two == nil) || math.Abs(d) > 1e-7*math.Abs(b.In(units.MilligramPerLitreCaCO3))+1e-4 {
					t.Fatalf("alkalinity at a pH: %v, %v in a series, %v, %v alone", a, one, b, two)
				}
			}
		}
	})
}

// A like water begins where the last one ended, at the pH asked if one is, with the constants of its own temperature
// and strength; one far from that, or with a part that the last one had not, begins anew.
func TestFollow(t *testing.T) {
	whole := water(20, map[Ion]float64{Calcium: 60, Magnesium: 8, Sodium: 12, Potassium: 90, Ammonium: 30, Chloride: 60, Sulfate: 80, Phosphate: 60,
		Lactate: 9, Acetate: 9, Citrate: 9, Malate: 9, Tartrate: 9, Succinate: 9, Sulfite: 9, Sorbate: 9}, -1, 0, 0)
	rest, err := whole.Under(atm(1))
	if err != nil {
		t.Fatal(err)
	}
	follows := func(what string, want bool, last Equilibrium, p Profile) {
		t.Helper()
		h, strength, ca := last.s.h, last.s.strength, last.s.free[partCa]
		e := last
		e.follow(&p, 0)
		if got := e.s.h == h && e.s.strength == strength && e.s.free[partCa] == min(ca, e.s.total[partCa]); got != want {
			t.Errorf("%s: follows %v", what, got)
		}
		e = last
		e.follow(&p, 5)
		near(t, what, e.s.h, 1e-5, 1e-19)
	}
	follows("the same", true, rest, whole)
	for i := range whole.mg {
		if i := Ion(i); whole.mg[i] > 0 {
			part := whole
			part.mg[i] = 0
			follows("without "+i.Name(), true, rest, part)
			last, err := part.Under(atm(1))
			if err != nil {
				t.Fatal(err)
			}
			follows("with "+i.Name(), i == Sodium || i == Potassium || i == Chloride, last, whole)
		}
	}
	for _, c := range []struct {
		by, strength float64
		want         bool
	}{{4.9, 0, true}, {-4.9, 1.9, true}, {5, 0, false}, {0, 2, false}} {
		other := whole
		other.t, other.ethanol = 20+c.by, c.strength
		follows(fmt.Sprintf("%+v", c), c.want, rest, other)
		alone, after := Equilibrium{}, rest
		alone.follow(&other, 0)
		after.follow(&other, 0)
		if alone.s.k != after.s.k || alone.s.a != after.s.a || alone.s.henry != after.s.henry {
			t.Errorf("%+v: other constants", c)
		}
	}
	follows("the first", false, Equilibrium{}, whole)
	first := water(0, nil, 1, 0, 1)
	follows("the first at 0 °C", false, Equilibrium{}, first)
}

// A series says no as a water does, gives nothing with it, and goes on.
func TestSeriesErrors(t *testing.T) {
	var r Series
	good, err := NewProfile(celsius(20), units.MilligramPerLitreCaCO3.Of(50), Calcium.At(mgL(20)))
	if err != nil {
		t.Fatal(err)
	}
	refused := func(e Equilibrium, err error) {
		t.Helper()
		if err == nil || e != (Equilibrium{}) {
			t.Errorf("%v with the error %v", e, err)
		}
		if _, err := r.Under(good, atm(1)); err != nil {
			t.Error(err)
		}
	}
	refused(r.Under(good, atm(100)))
	refused(r.Closed(good, units.MillimolePerLitre.Of(-1)))
	refused(r.Closed(Profile{t: 95}, units.MillimolePerLitre.Of(1)))
	a, err := r.AlkalinityAt(good, 14, atm(1))
	refused(Equilibrium{}, err)
	if !a.IsZero() {
		t.Errorf("%v with an error", a)
	}
}

func TestSeriesAllocatesNothing(t *testing.T) {
	p, err := NewProfile(celsius(20), units.MilligramPerLitreCaCO3.Of(50), Calcium.At(mgL(20)))
	if err != nil {
		t.Fatal(err)
	}
	var r Series
	if n := testing.AllocsPerRun(100, func() { _, err = r.Under(p, atm(1)) }); n != 0 || err != nil {
		t.Errorf("%g allocations, error %v", n, err)
	}
}

func BenchmarkSeries(b *testing.B) {
	var waters [8]Profile
	for i := range waters {
		var err error
		waters[i], err = NewProfile(celsius(20), units.MilligramPerLitreCaCO3.Of(checked.Number(-100-10*float64(i))), Calcium.At(mgL(60)), Magnesium.At(mgL(8)),
			Sodium.At(mgL(12)), Potassium.At(mgL(90)), Ammonium.At(mgL(30)), Chloride.At(mgL(60)), Sulfate.At(mgL(80)), Phosphate.At(mgL(60)),
			Succinate.At(mgL(400)), Lactate.At(mgL(100)))
		if err != nil {
			b.Fatal(err)
		}
	}
	gas := atm(1)
	b.ReportAllocs()
	var r Series
	i := 0
	for b.Loop() {
		if _, err := r.Under(waters[i%8], gas); err != nil {
			b.Fatal(err)
		}
		i++
	}
}

// A water that follows one with hardly any of a metal settles as soon as one that is solved alone: each of the quick rounds squares
// what the last one left.
func TestFollowHardlyAny(t *testing.T) {
	whole := water(20, map[Ion]float64{Calcium: 60, Magnesium: 8, Sodium: 12, Potassium: 90, Ammonium: 30, Chloride: 60, Sulfate: 80, Succinate: 90}, -1, 0, 0)
	for _, i := range []Ion{Calcium, Magnesium, Sodium, Potassium, Ammonium} {
		part := whole
		part.mg[i] = 1e-17
		last, err := part.Under(atm(1))
		if err != nil {
			t.Fatal(err)
		}
		last.follow(&whole, 3.6)
		last.s.fugacity = fugacity(100, 20)
		if n := last.s.quick(byGas, true, nil); n > 8 {
			t.Errorf("%s: %d rounds", i, n)
		}
	}
}
