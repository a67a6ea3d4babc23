package water

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/zymase/units"
)

// Four drinking waters and a wash together settle in so many rounds, from three to six
// each: the quick way stays quick. A round takes about 25 times math.Exp. A budget too, no published value.
func TestQuickWaysAreQuick(t *testing.T) {
	sour := Totals{StrongIons: mEqL(10), Ammonium: mmolL(5), Phosphate: mmolL(5), Succinate: mmolL(5), Lactate: mmolL(10), CO2: units.Kilopascal.Of(100)}
	e, err := sour.Equilibrium(celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	wash := e.water
	wash.ph = 0
	type way struct {
		name string
		most int
		run  func(p *Profile, s *solution) int
	}
	waters := []Profile{wash}
	for _, r := range reports {
		waters = append(waters, r.equilibrium(t, 20).water)
	}
	for _, w := range []way{
		{"closed", 16, func(p *Profile, s *solution) int { s.begin(p.start()); return s.quick(byCarbon, false, nil) }},
		{"in air", 28, func(p *Profile, s *solution) int {
			s.fugacity = fugacity(0.04, p.t)
			s.begin(p.start())
			return s.quick(byGas, false, nil)
		}},
		{"at pH 7", 19, func(p *Profile, s *solution) int { s.begin(7); return s.quick(byAlk, true, nil) }},
		{"lactic acid", 18, func(p *Profile, s *solution) int {
			d := s.dose(LacticAcid)
			d.set(s, molal)
			s.constantsAt(p.t)
			s.begin(5.5)
			return s.quick(byCarbon, true, &d)
		}},
		{"phosphoric acid in air", 17, func(p *Profile, s *solution) int {
			d := s.dose(PhosphoricAcid)
			d.set(s, molal)
			s.constantsAt(p.t)
			s.fugacity = fugacity(0.04, p.t)
			s.begin(5.5)
			return s.quick(byGas, true, &d)
		}},
	} {
		sum := 0
		for _, p := range waters {
			s := p.solution()
			s.constantsAt(p.t)
			sum += w.run(&p, &s)
		}
		if sum > w.most {
			t.Errorf("%s: %d rounds, more than %d", w.name, sum, w.most)
		}
	}
}

// The start: a salt all in its ions. ½Σ m z² of 1 mmol/kg is 3 for CaCl2 and Na2SO4
// each, 4 for MgSO4, and 1 for NaHCO3 and NH4Cl (textbook).
func TestStartingStrength(t *testing.T) {
	for name, r := range map[string]struct {
		s    solution
		want float64
	}{
		"CaCl2":  {solution{totals: totalsOf(1e-3, 0, map[component]float64{partCa: 1e-3})}, 3e-3},
		"Na2SO4": {solution{totals: totalsOf(0, 0, map[component]float64{partNa: 2e-3, partSO4: 1e-3})}, 3e-3},
		"MgSO4":  {solution{totals: totalsOf(0, 0, map[component]float64{partMg: 1e-3, partSO4: 1e-3})}, 4e-3},
		"NaHCO3": {solution{totals: totalsOf(0, 1e-3, map[component]float64{partNa: 1e-3})}, 1e-3},
		"KH2PO4": {solution{totals: totalsOf(0, 0, map[component]float64{partK: 1e-3, partPO4: 1e-3})}, 1e-3},
		"NH4Cl":  {solution{totals: totalsOf(0.5e-3, 0, map[component]float64{partNH4: 1e-3})}, 1e-3},
	} {
		r.s.constantsAt(20)
		r.s.begin(7)
		near(t, name, r.s.strength, r.want, 1e-15)
	}
}

func totalsOf(inert, alk float64, of map[component]float64) (t totals) {
	t.inertStrength, t.alk = inert, alk
	for c, n := range of {
		t.total[c] = n
	}
	return t
}

// A step of Newton solves its equations: the metals' slopes (symmetric, the lower half written), what each moves of what is
// sought beside them, and what that moves of each; for as many metals as there may be.
func TestStepSolvesItsEquations(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 5))
	for n := range mostUnknowns {
		for range 20 {
			var s sums
			s.n = n
			for i := range n + 1 {
				for j := range n + 1 {
					s.m[i][j] = r.Float64() - 0.5
				}
				s.m[i][i] += float64(n + 1) // so that it is positive definite
				s.off[i] = r.Float64() - 0.5
			}
			was := s
			x := s.step(-100, 100)
			for i := range n + 1 {
				sum := was.m[i][n] * x[n]
				for j := range n {
					if i == n || j <= i {
						sum += was.m[i][j] * x[j]
					} else {
						sum += was.m[j][i] * x[j]
					}
				}
				near(t, "equation", sum, was.off[i], 1e-12)
			}
			if y := was.step(-1e-9, 1e-9)[n]; math.Abs(y) > 1e-9 {
				t.Errorf("%v is beyond the ends", y)
			}
		}
	}
}
