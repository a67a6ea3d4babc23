package water

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

var eightSalts = []Stock{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.EpsomSalt()},
	{Salt: shelf.Material("magnesium chloride hexahydrate")},
	{Salt: material.TableSalt()}, {Salt: material.BakingSoda()}, {Salt: material.PotassiumChloride()}, {Salt: material.PotassiumBicarbonate()}}

func sevenTargets(ca, mg, na, k, cl, so4, hco3 float64) []Target {
	return []Target{Calcium.Aim(mgL(ca)), Magnesium.Aim(mgL(mg)), Sodium.Aim(mgL(na)), Potassium.Aim(mgL(k)),
		Chloride.Aim(mgL(cl)), Sulfate.Aim(mgL(so4)), Bicarbonate.Aim(mgL(hco3))}
}

// 6 g of gypsum and 4 g of table salt in 60 L, found back from the water they make.
func TestSolveFindsTheDoses(t *testing.T) {
	soft := reports[1].profile(t, 12)
	want := []material.Dose{material.Gypsum().Dose(grams(6)), material.TableSalt().Dose(grams(4))}
	after, _ := soft.Add(litres(60), want...)
	r, err := Request{soft, litres(60), []Stock{{Salt: material.Gypsum()}, {Salt: material.TableSalt()}, {Salt: material.EpsomSalt()}},
		[]Target{Calcium.Aim(after.Ion(Calcium)), Sulfate.Aim(after.Ion(Sulfate)), Sodium.Aim(after.Ion(Sodium)), Chloride.Aim(after.Ion(Chloride)),
			Magnesium.Aim(after.Ion(Magnesium))}, nil}.Solve()
	if err != nil || len(r.Doses) != 2 {
		t.Fatal(r.Doses, err)
	}
	for i, d := range r.Doses {
		if d.Material != want[i].Material {
			t.Errorf("%v", d)
		}
		near(t, d.Material.Name(), d.Mass.In(units.Gram), want[i].Mass.In(units.Gram), 1e-9)
	}
	near(t, "deviation", inMgL(r.Deviation), 0, 1e-9)
}

// One salt, two targets pulling apart: least squares by hand. x g/L of NaCl brings
// 393.39x of sodium and 606.61x of chloride; sodium 100 of weight 4, chloride 50:
// x = (4·393.39·100 + 606.61·50)/(4·393.39² + 606.61²).
func TestSolveWeights(t *testing.T) {
	na, cl := 1000*22.990/58.440, 1000*35.45/58.440
	want := (4*na*100 + cl*50) / (4*na*na + cl*cl)
	targets := []Target{{Ion: Sodium, Low: mgL(100), High: mgL(100), Weight: 4}, Chloride.Aim(mgL(50))}
	r, err := Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}}, targets, nil}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "salt", r.Doses[0].Mass.In(units.Gram), 10*want, 1e-9)
	dna, dcl := na*want-100, cl*want-50
	near(t, "deviation", inMgL(r.Deviation), math.Sqrt(4*dna*dna+dcl*dcl), 1e-9)
	near(t, "sodium off", r.Off[0].off(), dna, 1e-9)
	near(t, "chloride off", r.Off[1].off(), dcl, 1e-9)
	// Chloride of weight a quarter.
	quarter, err := Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}},
		[]Target{Sodium.Aim(mgL(100)), {Chloride, mgL(50), mgL(50), 0.25}}, nil}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "salt", quarter.Doses[0].Mass.In(units.Gram), 10*(na*100+0.25*cl*50)/(na*na+0.25*cl*cl), 1e-9)
	// A stock of 1 g binds.
	r, err = Request{Profile{}, litres(10), []Stock{{material.TableSalt(), grams(1)}}, targets, nil}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "stock", r.Doses[0].Mass.In(units.Gram), 1, 1e-9)
	// Anything from 20 to 200 of sodium is right: only chloride counts.
	r, err = Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}}, []Target{Sodium.Between(mgL(20), mgL(200)), Chloride.Aim(mgL(50))}, nil}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "range", r.Doses[0].Mass.In(units.Gram), 10*50/cl, 1e-9)
	// Sodium at most 25 binds.
	r, err = Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}}, targets, []Bound{Sodium.AtMost(mgL(25))}}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "limit", r.Doses[0].Mass.In(units.Gram), 10*25/na, 1e-9)
	r, err = Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}}, targets, []Bound{Sodium.AtLeast(mgL(250))}}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "floor", r.Doses[0].Mass.In(units.Gram), 10*250/na, 1e-9)
}

// What a recipe has of an ion is told, however little; a bound of the solver's numbers
// of salts, targets and limits is in reach.
func TestSolveLittle(t *testing.T) {
	r, err := Request{Profile{}, litres(10), []Stock{{material.TableSalt(), grams(0.01)}}, []Target{Sodium.Aim(mgL(0.5))}, nil}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "sodium", r.Off[0].Have.In(units.MilligramPerLitre), 0.39339, 0.00001)
	near(t, "off", r.Off[0].off(), 0.39339-0.5, 0.00001)
	var limits []Bound
	for range 16 {
		limits = append(limits, Sodium.AtMost(mgL(0.3)))
	}
	r, err = Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}}, []Target{Sodium.Aim(mgL(0.5))}, limits}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "held", r.Off[0].off(), -0.2, 1e-9)
	// A stock of half a gram of it reaches 19.67 mg/L in 10 L, and says so.
	_, err = Request{Profile{}, litres(10), []Stock{{material.TableSalt(), grams(0.5)}}, []Target{Sodium.Aim(mgL(50))}, []Bound{Sodium.AtLeast(mgL(20))}}.Solve()
	if err == nil || !strings.Contains(err.Error(), "bring it to 19.67 at most") {
		t.Error(err)
	}
	_, err = Request{Profile{}, litres(10), []Stock{{material.TableSalt(), grams(0.01)}}, []Target{Sodium.Aim(mgL(50))}, []Bound{Sodium.AtLeast(mgL(1))}}.Solve()
	if err == nil || !strings.Contains(err.Error(), "bring it to 0.3934 at most") {
		t.Error(err)
	}
}

// Two ranges that one salt keeps: calcium of 40 to 60 and chloride of 50 to 100 mg/L by the anhydrous chloride alone, of which
// 110.98/40.078 g bring a gram of calcium and 70.90/40.078 of chloride; the least that does is taken, wherever it stands. Beside
// magnesium of 10 to 20 mg/L by Epsom salt, 246.47/24.305 g, sulfate of 30 to 90 is in its range too.
func TestSolveTwoRanges(t *testing.T) {
	chlorides := []Stock{{Salt: material.CalciumChloride()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.TableSalt()}}
	for turn := range 3 {
		salts := append(append([]Stock(nil), chlorides[turn:]...), chlorides[:turn]...)
		targets := []Target{Calcium.Between(mgL(40), mgL(60)), Chloride.Between(mgL(50), mgL(100))}
		r, err := Request{Profile{}, litres(10), salts, targets, nil}.Solve()
		if err != nil || len(r.Doses) != 1 || r.Doses[0].Material != material.CalciumChloride() {
			t.Fatal(r.Doses, err)
		}
		near(t, "dose", r.Doses[0].Mass.In(units.Gram), 0.4*110.98/40.078, 1e-4)
		salts = append(salts, Stock{Salt: material.EpsomSalt()}, Stock{Salt: shelf.Material("magnesium chloride hexahydrate")})
		r, err = Request{Profile{}, litres(10), salts, append(targets, Magnesium.Between(mgL(10), mgL(20)), Sulfate.Between(mgL(30), mgL(90))), nil}.Solve()
		if err != nil || len(r.Doses) != 2 || inMgL(r.Deviation) > 1e-9 {
			t.Fatal(r.Doses, inMgL(r.Deviation), err)
		}
		for _, d := range r.Doses {
			want := map[material.Material]float64{material.CalciumChloride(): 0.4 * 110.98 / 40.078, material.EpsomSalt(): 0.1 * 246.47 / 24.305}[d.Material]
			near(t, d.Material.Name(), d.Mass.In(units.Gram), want, 1e-4)
		}
	}
}

// Calcium, magnesium, sulfate and chloride can be had in two ways of four salts, or
// in three: fewest salts win, then least mass.
func TestSolveTies(t *testing.T) {
	four := []Stock{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.EpsomSalt()},
		{Salt: shelf.Material("magnesium chloride hexahydrate")}}
	after, _ := Profile{}.Add(litres(1), material.Gypsum().Dose(grams(0.2)), shelf.Material("magnesium chloride hexahydrate").Dose(grams(0.2)))
	r, err := Request{Profile{}, litres(1), four, []Target{Calcium.Aim(after.Ion(Calcium)), Magnesium.Aim(after.Ion(Magnesium)),
		Sulfate.Aim(after.Ion(Sulfate)), Chloride.Aim(after.Ion(Chloride))}, nil}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	if len(r.Doses) != 2 || r.Doses[0].Material != material.Gypsum() || r.Doses[1].Material != shelf.Material("magnesium chloride hexahydrate") {
		t.Errorf("%v", r.Doses)
	}
	// The anhydrous salt of two forms has the least mass.
	r, err = Request{Profile{}, litres(1), []Stock{{Salt: material.CalciumChlorideDihydrate()}, {Salt: material.CalciumChloride()}},
		[]Target{Calcium.Aim(mgL(50))}, nil}.Solve()
	if err != nil || len(r.Doses) != 1 || r.Doses[0].Material != material.CalciumChloride() {
		t.Errorf("%v, %v", r.Doses, err)
	}
	// Of three forms too, wherever it stands; calcium by gypsum weighs most.
	for _, three := range [][]Stock{{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.CalciumChloride()}},
		{{Salt: material.CalciumChloride()}, {Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}},
		{{Salt: material.Gypsum()}, {Salt: material.CalciumChloride()}, {Salt: material.CalciumChlorideDihydrate()}}} {
		r, err = Request{Profile{}, litres(1), three, []Target{Calcium.Aim(mgL(50))}, nil}.Solve()
		if err != nil || len(r.Doses) != 1 || r.Doses[0].Material != material.CalciumChloride() {
			t.Errorf("%v, %v", r.Doses, err)
		}
		// A limit that holds nothing back changes nothing of it.
		r, err = Request{Profile{}, litres(1), three, []Target{Calcium.Aim(mgL(50))}, []Bound{Chloride.AtMost(mgL(1000))}}.Solve()
		if err != nil || len(r.Doses) != 1 || r.Doses[0].Material != material.CalciumChloride() {
			t.Errorf("%v, %v", r.Doses, err)
		}
	}
	// With 0.1 g of it at hand both are needed.
	r, err = Request{Profile{}, litres(1), []Stock{{Salt: material.CalciumChlorideDihydrate()}, {material.CalciumChloride(), grams(0.1)}},
		[]Target{Calcium.Aim(mgL(50))}, nil}.Solve()
	if err != nil || len(r.Doses) != 1 || r.Doses[0].Material != material.CalciumChlorideDihydrate() {
		t.Errorf("%v, %v", r.Doses, err)
	}
}

func TestSolveRefuses(t *testing.T) {
	aim := []Target{Calcium.Aim(mgL(50))}
	gyp := []Stock{{Salt: material.Gypsum()}}
	hard := reports[2].profile(t, 20)
	for name, r := range map[string]Request{
		"no salts":   {hard, litres(1), nil, aim, nil},
		"no targets": {hard, litres(1), gyp, nil, nil},
		"twice":      {hard, litres(1), []Stock{{Salt: material.Gypsum()}, {Salt: material.Gypsum()}}, aim, nil},
		"aim twice":  {hard, litres(1), gyp, []Target{aim[0], aim[0]}, nil},
		"volume":     {hard, litres(0), gyp, aim, nil},
		"weight":     {hard, litres(1), gyp, []Target{{Calcium, mgL(1), mgL(1), -1}}, nil},
		"upside":     {hard, litres(1), gyp, []Target{Calcium.Between(mgL(2), mgL(1))}, nil},
		"no ion":     {hard, litres(1), gyp, []Target{Ion(99).Aim(mgL(1))}, nil},
		"no limit":   {hard, litres(1), gyp, aim, []Bound{Ion(99).AtMost(mgL(1))}},
		"bad ratio":  {hard, litres(1), gyp, aim, SulfateToChloride(math.NaN(), 1)},
		"bad range":  {hard, litres(1), gyp, aim, []Bound{HardnessBetween(caco3(3), caco3(2))}},
	} {
		_, err := r.Solve()
		if !refused(err) {
			t.Errorf("%s: %v", name, err)
		}
	}
	for name, limits := range map[string][]Bound{
		"sodium":              {Sodium.AtMost(mgL(10))},
		"magnesium":           {Magnesium.AtLeast(mgL(100))},
		"the set of limits":   {Calcium.AtLeast(mgL(300)), Sulfate.AtMost(mgL(620))},
		"hardness":            {HardnessBetween(caco3(10), caco3(20))},
		"residual alkalinity": {ResidualAlkalinityBetween(caco3(0), caco3(20))},
	} {
		r := Request{hard, litres(1), gyp, aim, limits}
		_, solve := r.Solve()
		_, steps := r.SolveSteps(exactGrams(t, "1 g"))
		_, explain := r.Explain()
		for fn, err := range map[string]error{"water.Request.Solve": solve, "water.Request.SolveSteps": steps, "water.Request.Explain": explain} {
			ue, ok := errors.AsType[*UnreachableError](err)
			if !ok || ue.Func != fn || ue.Limit != name || ue.Unwrap() == nil || !strings.HasPrefix(ue.Error(), fn+": "+name+" cannot be met: ") {
				t.Errorf("%s, %s: %v", fn, name, err)
			}
		}
	}
}

// Limits hold, in the units they are given in.
func TestSolveLimits(t *testing.T) {
	soft := reports[1].profile(t, 20)
	limits := append(SulfateToChloride(1.5, 2), HardnessBetween(caco3(60), caco3(90)), ResidualAlkalinityBetween(caco3(0), caco3(30)), Sodium.AtMost(mgL(20)))
	r, err := Request{soft, litres(60), eightSalts, sevenTargets(100, 10, 60, 5, 150, 150, 100), limits}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	w := r.Water
	ratio := w.ion(Sulfate) / w.ion(Chloride)
	if ratio < 1.5-1e-9 || ratio > 2+1e-9 {
		t.Errorf("sulfate to chloride %v", ratio)
	}
	if h := w.Hardness().In(units.MilligramPerLitreCaCO3); h < 60-1e-9 || h > 90+1e-9 {
		t.Errorf("hardness %v", h)
	}
	if v := w.ResidualAlkalinity().In(units.MilligramPerLitreCaCO3); v < -1e-9 || v > 30+1e-9 {
		t.Errorf("residual alkalinity %v", v)
	}
	if v := w.ion(Sodium); v > 20+1e-9 {
		t.Errorf("sodium %v", v)
	}
}

// No random feasible change of the doses is any better: the optimum is global, as
// the problem is convex.
func TestSolveIsOptimal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t, "water")
		n := rapid.IntRange(1, 8).Draw(t, "salts")
		aim := func(name string, most float64) float64 {
			return float64(rapid.IntRange(0, int(most)).Draw(t, name))
		}
		targets := sevenTargets(aim("ca", 300), aim("mg", 60), aim("na", 200), aim("k", 40), aim("cl", 300), aim("so4", 500), aim("hco3", 400))
		if rapid.Bool().Draw(t, "ranges") {
			for i := range targets {
				targets[i].High = mgL(targets[i].Low.In(units.MilligramPerLitre) + aim("width", 30))
			}
		}
		salts := append([]Stock(nil), eightSalts[:n]...)
		if rapid.Bool().Draw(t, "stocks") {
			for j := range salts {
				salts[j].Most = grams(aim("stock", 20) + 1)
			}
		}
		q := Request{p, litres(60), salts, targets, nil}
		best, err := q.Solve()
		if err != nil {
			t.Fatal(err)
		}
		again, _ := q.Solve()
		if d := cmp.Diff(best.Doses, again.Doses, cmp.Comparer(func(a, b units.Mass) bool { return a == b }), cmp.Comparer(material.Material.Equal)); d != "" {
			t.Error(d)
		}
		g := rand.New(rand.NewPCG(1, uint64(n)))
		mass := make(map[material.Material]float64)
		for _, d := range best.Doses {
			mass[d.Material] = d.Mass.In(units.Gram)
		}
		for range 30 {
			var doses []material.Dose
			for _, s := range salts {
				m := mass[s.Salt] + g.NormFloat64()*math.Pow(10, -4*g.Float64())*(1+mass[s.Salt])
				if most := s.Most.In(units.Gram); most > 0 {
					m = min(m, most)
				}
				doses = append(doses, s.Salt.Dose(grams(max(0, m))))
			}
			other, err := q.recipe(doses)
			if err == nil && inMgL(other.Deviation) < inMgL(best.Deviation)-1e-7*(1+inMgL(best.Deviation)) {
				t.Fatalf("%v is better than %v: %v, %v", inMgL(other.Deviation), inMgL(best.Deviation), other.Doses, best.Doses)
			}
		}
	})
}

func TestSalterDoesNotAllocate(t *testing.T) {
	s, water := benchSalter(t)
	if n := testing.AllocsPerRun(100, func() {
		if err := s.solve("f", water, units.Litre.Of(60)); err != nil {
			t.Fatal(err)
		}
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func benchSalter(t testing.TB) (*salter, Profile) {
	s, err := newSalter("f", eightSalts, sevenTargets(80, 10, 25, 5, 60, 120, 90))
	if err != nil {
		t.Fatal(err)
	}
	return s, reports[1].profile(t, 20)
}

func BenchmarkSolveContinuous(b *testing.B) {
	s, water := benchSalter(b)
	b.ReportAllocs()
	for b.Loop() {
		if err := s.solve("f", water, units.Litre.Of(60)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMathExp(b *testing.B) {
	x, sum := -5.0, 0.0
	for b.Loop() {
		sum += math.Exp(x)
		if x += 0.01; x > 5 {
			x = -5
		}
	}
	if sum == 0 {
		b.Fatal("no sum")
	}
}
