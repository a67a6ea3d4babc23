package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

func exactGrams(t testing.TB, text string) units.ExactMass {
	t.Helper()
	x, err := units.ParseExact[units.Mass](text)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// Every recipe of up to three salts, one by one: the best is what SolveSteps finds.
func TestStepsAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		step := exactGramsR(t, "0.5 g")
		n := rapid.IntRange(1, 3).Draw(t, "salts")
		first := rapid.IntRange(0, 8-n).Draw(t, "first")
		salts := append([]Stock(nil), eightSalts[first:first+n]...)
		aim := func(name string, most int) float64 { return float64(rapid.IntRange(0, most).Draw(t, name)) }
		targets := sevenTargets(aim("ca", 60), aim("mg", 20), aim("na", 60), aim("k", 30), aim("cl", 80), aim("so4", 90), aim("hco3", 120))
		targets = targets[:rapid.IntRange(1, 7).Draw(t, "targets")]
		if rapid.Bool().Draw(t, "ranges") {
			for i := range targets {
				if i%2 == 0 {
					targets[i].High = mgL(targets[i].Low.In(units.MilligramPerLitre) + aim("width", 10))
				}
			}
		}
		var limits []Bound
		if rapid.Bool().Draw(t, "limit") {
			limits = append(limits, Ion(rapid.IntRange(0, 3).Draw(t, "ion")).AtMost(mgL(20)))
		}
		water := Profile{t: 20}
		q := Request{water, litres(20), salts, targets, limits}
		got, err := q.SolveSteps(step)
		if err != nil {
			t.Fatal(err)
		}
		if !got.Proven {
			t.Fatal("not proven")
		}
		const most = 12 // steps of each salt: 6 g in 20 L
		best := math.Inf(1)
		x := make([]int, n)
		for {
			var doses []material.Dose
			for j, k := range x {
				if k > 0 {
					doses = append(doses, salts[j].Salt.Dose(grams(0.5*float64(k))))
				}
			}
			r, err := q.recipe(doses)
			if err != nil {
				t.Fatal(err)
			}
			ok := true
			for i := range limits {
				ok = ok && limits[i].of(r.Water.ion) <= limits[i].high+1e-9
			}
			if ok {
				best = min(best, inMgL(r.Deviation))
			}
			j := 0
			for ; j < n; j++ {
				if x[j]++; x[j] <= most {
					break
				}
				x[j] = 0
			}
			if j == n {
				break
			}
		}
		if inMgL(got.Deviation) > best+1e-9 {
			t.Errorf("found %v, %v exists: %v", inMgL(got.Deviation), best, got.Doses)
		}
		if inMgL(got.Deviation) < inMgL(got.Bound)-1e-7 {
			t.Errorf("%v is below the bound %v", inMgL(got.Deviation), inMgL(got.Bound))
		}
		for i := range limits {
			if v := limits[i].of(got.Water.ion); v > limits[i].high+1e-6 {
				t.Errorf("limit broken: %v", v)
			}
		}
	})
}

func exactGramsR(t *rapid.T, text string) units.ExactMass {
	x, err := units.ParseExact[units.Mass](text)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func eightSaltRequest(t testing.TB) Request {
	return Request{reports[1].profile(t, 20), litres(60), eightSalts, sevenTargets(80, 10, 25, 5, 60, 120, 90), nil}
}

func TestStepsEightSalts(t *testing.T) {
	w, err := eightSaltRequest(t).SolveSteps(exactGrams(t, "0.1 g"))
	if err != nil {
		t.Fatal(err)
	}
	t.Logf("%v nodes, deviation %v, bound %v: %v", w.Nodes, inMgL(w.Deviation), inMgL(w.Bound), w.Masses)
	if !w.Proven {
		t.Error("not proven")
	}
}

func BenchmarkSolveSteps(b *testing.B) {
	q := eightSaltRequest(b)
	step := exactGrams(b, "0.1 g")
	b.ReportAllocs()
	for b.Loop() {
		if _, err := q.SolveSteps(step); err != nil {
			b.Fatal(err)
		}
	}
}
