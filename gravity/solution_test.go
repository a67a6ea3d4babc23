package gravity_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/units"
)

// A liquid of a brewer's kind: up to 30 % extract of all kinds, up to 15 % ethanol.
func drawSolution(t *rapid.T) gravity.Solution {
	s, err := gravity.NewSolution(kg(rapid.Float64Range(1, 100).Draw(t, "water kg")), units.Mass{}, units.Mass{})
	if err != nil {
		t.Fatal(err)
	}
	w := s.Water().In(units.Kilogram)
	for k := gravity.AsSucrose; k <= gravity.AsOrganicAcid; k++ {
		m := rapid.Float64Range(0, 0.1).Draw(t, k.String())
		if k >= gravity.AsGlycerol {
			m /= 5
		}
		if s, err = s.AddExtract(k, kg(m*w)); err != nil {
			t.Fatal(err)
		}
	}
	if s, err = s.AddEthanol(kg(w * rapid.Float64Range(0, 0.18).Draw(t, "ethanol"))); err != nil {
		t.Fatal(err)
	}
	return s
}

func balance(t *rapid.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-12*math.Abs(want)) {
		t.Fatalf("%s: %.16g, was %.16g", what, got, want)
	}
}

func inKg(m units.Mass) float64 { return m.In(units.Kilogram) }

// Water, extract, ethanol, CO2 and yeast after a fermentation weigh what was there
// before, for every yield.
func TestFermentConservesMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSolution(t)
		yields := []gravity.Yield{gravity.BallingYield(), gravity.SugarWashYield(gravity.AsSucrose), gravity.SugarWashYield(gravity.AsGlucose),
			gravity.StoichiometricYield(gravity.AsSucrose), gravity.StoichiometricYield(gravity.AsFructose), s.WashYield()}
		y := yields[rapid.IntRange(0, len(yields)-1).Draw(t, "yield")]
		balance(t, "yield", y.Ethanol().In(units.Fraction)+y.CO2().In(units.Fraction)+y.Biomass().In(units.Fraction)+y.Residue().In(units.Fraction),
			1+y.Water().In(units.Fraction))
		used := inKg(s.Fermentable()) * rapid.Float64Range(0, 1).Draw(t, "part")
		after, made, err := s.Ferment(kg(used), y)
		if err != nil {
			t.Fatal(err)
		}
		balance(t, "mass", inKg(after.Mass())+inKg(made.CO2)+inKg(made.Biomass), inKg(s.Mass()))
		balance(t, "parts", inKg(after.Water())+inKg(after.Extract())+inKg(after.Ethanol())+inKg(made.CO2)+inKg(made.Biomass), inKg(s.Mass()))
		balance(t, "ethanol", inKg(after.Ethanol()), inKg(s.Ethanol())+inKg(made.Ethanol))
		balance(t, "water", inKg(after.Water())+inKg(made.Water), inKg(s.Water()))
		balance(t, "extract", inKg(after.Extract())+used, inKg(s.Extract())+inKg(made.Residue))
		if after.Gravity().SG() > s.Gravity().SG()+1e-12 {
			t.Fatalf("gravity rises from %v to %v", s.Gravity(), after.Gravity())
		}
	})
}

// Mixing, splitting, adding and boiling off keep every mass.
func TestChangesConserveMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawSolution(t), drawSolution(t)
		m, err := a.Plus(b)
		if err != nil {
			t.Fatal(err)
		}
		for _, of := range []func(gravity.Solution) units.Mass{gravity.Solution.Water, gravity.Solution.Extract, gravity.Solution.Ethanol,
			gravity.Solution.Mass, gravity.Solution.Fermentable} {
			balance(t, "mix", inKg(of(m)), inKg(of(a))+inKg(of(b)))
		}
		share := percent(rapid.Float64Range(0, 100).Draw(t, "share"))
		part, err := m.Take(share)
		if err != nil {
			t.Fatal(err)
		}
		rest, err := m.Remaining(share)
		if err != nil {
			t.Fatal(err)
		}
		whole, err := part.Plus(rest)
		if err != nil {
			t.Fatal(err)
		}
		for k := gravity.AsSucrose; k <= gravity.AsOrganicAcid; k++ {
			balance(t, "split", inKg(whole.ExtractOf(k)), inKg(m.ExtractOf(k)))
		}
		balance(t, "split", inKg(whole.Mass()), inKg(m.Mass()))
		if inKg(part.Mass()) > 1e-6 {
			near(t, "a part has the same gravity", part.Gravity().SG(), m.Gravity().SG(), 1e-12)
			near(t, "a part has the same strength", part.ByVolume().In(units.PercentVolume), m.ByVolume().In(units.PercentVolume), 1e-10)
		}
		w := kg(rapid.Float64Range(0, 50).Draw(t, "added water"))
		more, err := m.AddWater(w)
		if err != nil {
			t.Fatal(err)
		}
		back, err := more.BoilOff(w)
		if err != nil {
			t.Fatal(err)
		}
		balance(t, "boil off what was added", inKg(back.Mass()), inKg(m.Mass()))
		if inKg(w) > 0.01 && more.ByVolume().Compare(m.ByVolume()) > 0 {
			t.Fatalf("water raises the strength from %v to %v", m.ByVolume(), more.ByVolume())
		}
	})
}

// The three formulas meet at their edges: no extract is OIML R 22, no ethanol is
// ICUMSA.
func TestSolutionLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 100).Draw(t, "% mass")
		c := rapid.Float64Range(0, 40).Draw(t, "°C")
		w := ok[units.Density](t)(gravity.WaterDensity(celsius(c))).In(units.KilogramPerCubicMetre)
		spirit, err := gravity.NewSolution(kg(100-p), units.Mass{}, kg(p))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength by mass", spirit.ByMass().In(units.PercentMass), p, 1e-11)
		near(t, "strength by volume", spirit.ByVolume().In(units.PercentVolume), gravity.ByVolume(massPct(p)).In(units.PercentVolume), 1e-11)
		d := ok[units.Density](t)(spirit.Density(celsius(c))).In(units.KilogramPerCubicMetre)
		near(t, "R 22 on this water", d/w, ethanol(t, p, c)/ethanol(t, 0, c), 1e-12)
		b := rapid.Float64Range(0, 80).Draw(t, "°P")
		syrup, err := gravity.NewSolution(kg(100-b), kg(b), units.Mass{})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "extract", syrup.RealExtract().In(units.DegreePlato), b, 1e-11)
		near(t, "apparent extract", syrup.Gravity().Extract().In(units.DegreePlato), b, 1e-9)
		near(t, "ICUMSA", ok[units.Density](t)(syrup.Density(celsius(c))).In(units.KilogramPerCubicMetre), sucrose(t, b, c), 1e-9)
		v := ok[units.Volume](t)(syrup.Volume(celsius(c))).In(units.Litre)
		near(t, "volume", v, 1e5/sucrose(t, b, c), 1e-9)
	})
}

// A trace of one in a mixture of two changes the density by a trace: the formulas
// of three and of two join.
func TestSolutionJoins(t *testing.T) {
	for _, c := range [][2]float64{{0.05, 0.2}, {0.1, 0.1}, {0.5, 0.001}, {0.9, 0.005}, {0.001, 0.6}} {
		e, x := c[0], c[1]
		for _, d := range []float64{1e-6, 1e-9} {
			a := solution(t, 1-e-d, d, e)
			b := solution(t, 1-e, 0, e)
			near(t, "trace of extract", a.Gravity().SG(), b.Gravity().SG(), 0.6*d+1e-12)
			a = solution(t, 1-x-d, x, d)
			b = solution(t, 1-x, x, 0)
			near(t, "trace of ethanol", a.Gravity().SG(), b.Gravity().SG(), 0.6*d+1e-12)
		}
	}
}

func TestZeroSolution(t *testing.T) {
	var s gravity.Solution
	if s.Gravity() != (gravity.Gravity{}) || s.ByVolume().In(units.PercentVolume) != 0 || !s.Mass().IsZero() || s.RealExtract().In(units.DegreePlato) != 0 {
		t.Errorf("%v %v %v", s.Gravity(), s.ByVolume(), s.Mass())
	}
	v := ok[units.Volume](t)(s.Volume(celsius(20)))
	if !v.IsZero() {
		t.Errorf("%v", v)
	}
	if e := label.EnergyEU(s); !e.Kilojoules.IsZero() || !e.Kilocalories.IsZero() {
		t.Errorf("%v", e)
	}
}

func TestSolutionRefuses(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		w, x, e float64
		about   string
	}{
		{-1, 0, 0, "water"}, {1, -1, 0, "extract"}, {1, 0, -1, "ethanol"}, {nan, 0, 0, "water"}, {1, nan, 0, "extract"}, {1, 0, math.Inf(1), "ethanol"},
		{1e13, 0, 0, "water"}, {19, 81, 0, "extract in the liquid without ethanol"}, {30, 30, 40, "extract with this much ethanol"},
		{0, 0.5, 99.5, "extract in the liquid without ethanol"},
		{55, 30, 25, "extract with this much ethanol"}, {10, 12, 60, "extract with this much ethanol"},
	} {
		s, err := gravity.NewSolution(kg(c.w), kg(c.x), kg(c.e))
		refused(t, "NewSolution", err, c.about)
		if s != (gravity.Solution{}) {
			t.Errorf("%v beside an error", s)
		}
	}
	s := solution(t, 90, 10, 5)
	_, err := s.AddWater(kg(-1))
	refused(t, "AddWater", err, "water")
	_, err = s.AddSugar(kg(-1))
	refused(t, "AddSugar", err, "sugar")
	_, err = s.AddEthanol(kg(nan))
	refused(t, "AddEthanol", err, "ethanol")
	_, err = s.AddExtract(gravity.AsGlucose, kg(-1))
	refused(t, "AddExtract", err, "glucose")
	_, err = s.AddExtract(7, kg(1))
	unknown(t, err, "kind of extract")
	_, err = s.AddExtract(gravity.AsFructose, kg(200))
	refused(t, "AddExtract", err, "extract with fructose")
	_, err = s.AddExtract(gravity.AsGlucose, kg(200))
	refused(t, "AddExtract", err, "extract with glucose")
	_, err = s.BoilOff(kg(90.1))
	refused(t, "BoilOff", err, "water")
	_, err = s.BoilOff(kg(89))
	refused(t, "BoilOff", err, "extract in the liquid without ethanol")
	_, err = s.Take(percent(100.1))
	refused(t, "Take", err, "share")
	_, err = s.Remaining(percent(-1))
	refused(t, "Remaining", err, "share lost")
	_, err = s.Plus(solution(t, 1, 0, 1000))
	if err != nil {
		t.Error(err)
	}
	_, err = s.Plus(solution(t, 1, 0, 100))
	if err != nil {
		t.Error(err)
	}
	syrup := solution(t, 30, 70, 0)
	_, err = syrup.Plus(solution(t, 0, 0, 100))
	refused(t, "Plus", err, "extract with this much ethanol")
	for _, c := range []float64{-0.01, 40.01} {
		_, err = s.Density(celsius(c))
		refused(t, "Density", err, "temperature")
		_, err = s.Volume(celsius(c))
		refused(t, "Volume", err, "temperature")
	}
	ok[units.Density](t)(syrup.Density(celsius(100)))
	_, _, err = s.Ferment(kg(10.001), gravity.BallingYield())
	refused(t, "Ferment", err, "extract used")
	_, _, err = s.Ferment(kg(-1), gravity.BallingYield())
	refused(t, "Ferment", err, "extract used")
	_, _, err = s.Ferment(kg(1), gravity.Yield{})
	refused(t, "Ferment", err, "ethanol yield")
	near(t, "the first kind", inKg(solution(t, 9, 1, 0).ExtractOf(gravity.AsSucrose)), 1, 0)
	if s.ExtractOf(-1) != (units.Mass{}) || s.ExtractOf(5) != (units.Mass{}) {
		t.Error("extract of an unknown kind")
	}
}

// Where the relation of three is published and where it is stretched.
func TestTernaryRegion(t *testing.T) {
	for _, c := range []struct {
		w, x, e float64
		want    string
		most    float64 // kg/m³ of standard uncertainty
	}{
		{90, 10, 0, "alone", 0.031}, {60, 0, 40, "alone", 0.031}, {95, 1, 4, "Hackbarth", 0.08}, {77.001, 5, 17.999, "Hackbarth", 0.11},
		{76.9, 5, 18.1, "beyond", 0.12}, {90.9, 5.1, 4, "beyond", 0.08}, {70, 18, 12, "beyond", 0.4}, {50, 30, 20, "beyond", 1.5}, {50, 15, 35, "beyond", 3},
		{10, 1, 89, "beyond", 2},
	} {
		s := solution(t, c.w, c.x, c.e)
		u, r := s.DensityUncertainty()
		if got := u.In(units.KilogramPerCubicMetre); !strings.Contains(r.String(), c.want) || got > c.most || got < 0.7*c.most && c.most < 0.12 || got < 0.03 {
			t.Errorf("%v: %v %v, want %v", c, r, u, c.want)
		}
	}
}

// The smallest masses that float64 has make no NaN.
func TestSmallestSolution(t *testing.T) {
	s := solution(t, 0, 0, 5e-324)
	near(t, "ethanol in 100 mL, R 22", label.NutritionOf(s).Ethanol.In(units.Gram), 78.924, 0.001)
}

// Masses and volumes stop at 1e12 kg and 1e12 L of drink, 1e9 L of a blend.
func TestLargestSolution(t *testing.T) {
	s := solution(t, 1e12, 0, 0)
	for _, f := range []func() error{
		func() error { _, err := gravity.NewSolution(kg(1.01e12), kg(0), kg(0)); return err },
		func() error { _, err := gravity.Solution{}.AddWater(kg(1.01e12)); return err },
		func() error { _, err := s.AddWater(kg(1e11)); return err },
	} {
		refused(t, "too much", f(), "water")
	}
	_, err := s.Times(1.01)
	refused(t, "too much", err, "mass")
	a := solution(t, 9, 0, 1)
	_, _, _, err = gravity.BlendToStrength(a, s, volPct(1), litre(1.01e9))
	refused(t, "too much", err, "volume")
	_, _, err = a.MakeUpTo(litre(1.01e9), celsius(20))
	refused(t, "too much", err, "volume")
	if _, _, err = a.MakeUpTo(litre(0.99e9), celsius(20)); err != nil {
		t.Error(err)
	}
	small := solution(t, 0.9e-9, 0, 0.9e-10)
	_, _, err = small.DiluteTo(volPct(1))
	refused(t, "too little", err, "mass of the liquid")
	_, _, err = a.FortifyTo(volPct(20), small)
	refused(t, "too little", err, "mass of the other")
	_, _, _, err = gravity.BlendToStrength(a, small, volPct(10), litre(1))
	refused(t, "too little", err, "mass of a liquid")
}
