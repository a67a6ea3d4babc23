package water

import (
	"math/rand/v2"
	"runtime"
	"testing"
)

// The work that searches do, counted: a number that only sets how soon a search ends changes no figure, and no clock
// would tell it from a busy machine. Whoever makes a search quicker, or slower and knows why, changes the counts.
// They are those of one kind of processor, as the last bit of a sum can be another elsewhere.
func TestCountedWork(t *testing.T) {
	if runtime.GOARCH != "amd64" {
		t.Skip("counts of amd64")
	}
	counted := func(what string, got, want int) {
		t.Helper()
		if got != want {
			t.Errorf("%s: %d, counted %d", what, got, want)
		}
	}
	g := rand.New(rand.NewPCG(1, 2))
	var rounds [6]int
	var like Equilibrium
	for range 300 {
		p := randomWater(g)
		s := p.solution()
		fresh := func(ph float64) {
			s = p.solution()
			s.constantsAt(p.t)
			s.fugacity = fugacity(1, p.t)
			s.begin(ph)
		}
		fresh(p.start())
		rounds[0] += s.quick(byCarbon, false, nil)
		fresh(p.start())
		rounds[1] += s.quick(byGas, false, nil)
		fresh(6)
		rounds[2] += s.quick(byAlk, true, nil)
		for i, way := range []int{byCarbon, byGas} {
			fresh(4)
			d := s.dose(PhosphoricAcid)
			d.set(&s, molal)
			s.constantsAt(p.t)
			rounds[3+i] += s.quick(way, true, &d)
		}
		p.t, p.ethanol = 20+g.Float64(), g.Float64()
		like.follow(&p, 0)
		like.s.fugacity = fugacity(1, p.t)
		rounds[5] += like.s.quick(byGas, false, nil)
	}
	for i, want := range [...]int{1468, 1426, 1192, 1125, 1127, 1408} {
		counted([...]string{"closed", "under gas", "at a pH", "acid, closed", "acid under gas", "in a series"}[i], rounds[i], want)
	}

	nodes, proven, tied := 0, 0, 0
	for i := range 60 {
		q := randomRequest(g, i%2 == 0)
		w, err := q.SolveSteps(exactGrams(t, "0.1 g"))
		if err != nil {
			continue
		}
		nodes += w.Nodes
		if w.Proven {
			proven++
		}
		if w.Tied {
			tied++
		}
	}
	counted("nodes of weighed salts", nodes, 924_249)
	counted("proven", proven, 60)
	counted("tied", tied, 16)
}

// randomWater is any drinking water or drink.
func randomWater(g *rand.Rand) Profile {
	mg := map[Ion]float64{}
	for i := range ionCount {
		if i == Bicarbonate || i == Carbonate || i == Hydroxide {
			continue
		}
		if g.IntN(3) > 0 {
			mg[i] = 200 * g.Float64() * g.Float64()
		}
	}
	p := water(90*g.Float64(), mg, -3+10*g.Float64(), 0, 0.1+20*g.Float64())
	p.ethanol = 15 * g.Float64() * float64(g.IntN(2))
	return p
}
