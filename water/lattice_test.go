package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

func latticeOf(t rapid.TB, q Request, grams float64) *lattice {
	s, err := q.solved("f")
	if err != nil {
		t.Fatal(err)
	}
	return newLattice(s, grams)
}

// With targets that are values the sum of squares is exactly floor + slope·d + |R d|²,
// d the steps from the continuous optimum: for any multiples of the step.
func TestLatticeIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "salts")
		aim := func(name string, most int) float64 { return float64(rapid.IntRange(0, most).Draw(t, name)) }
		salts := append([]Stock(nil), eightSalts[:n]...)
		q := Request{anyProfile(t, "water"), litres(20), salts,
			sevenTargets(aim("ca", 300), aim("mg", 60), aim("na", 200), aim("k", 40), aim("cl", 300), aim("so4", 500), aim("hco3", 400)), nil}
		l := latticeOf(t, q, 0.1)
		model, sum := l.floor, 0.0
		for i := range n {
			l.x[i] = float64(rapid.IntRange(0, 60).Draw(t, "steps"))
			model += l.slope[i] * (l.x[i] - l.at[i])
		}
		for i := range n {
			row := 0.0
			for j := i; j < n; j++ {
				row += l.r[i*n+j] * (l.x[j] - l.at[j])
			}
			model += row * row
		}
		for r := range l.have {
			v := l.have[r]
			for i := range n {
				v += l.gain[r*n+i] * l.x[i]
			}
			sum += v * v
		}
		near(t, "sum of squares", model, sum, 1e-9*(1+sum))
		// Salts in use come first; then those of the least slope.
		used := true
		for i := range n {
			if used = used && l.at[i] > 0; used {
				continue
			}
			if l.at[i] > 0 || i > 0 && l.at[i-1] == 0 && l.slope[i] < l.slope[i-1] {
				t.Errorf("order %v: at %v, slope %v", l.order, l.at, l.slope)
			}
		}
	})
}

// Table salt to 40 mg/L of sodium in 20 L, by 0.05 g: a step is 0.9835 mg/L
// (393.39·0.0025), the optimum 40.672 steps; 41 are 0.3229 mg/L too much. So more than
// (40 + 0.3229)/0.9835 = 41.0 cannot be better. Gypsum changes nothing that is asked.
func TestLatticeNarrow(t *testing.T) {
	q := Request{Profile{t: 20}, litres(20), []Stock{{Salt: material.TableSalt()}, {Salt: material.Gypsum()}}, []Target{Sodium.Aim(mgL(40))},
		[]Bound{Chloride.AtMost(mgL(1000))}}
	l := latticeOf(t, q, 0.05)
	l.value = inf
	l.round()
	near(t, "first try", math.Sqrt(l.value), 0.3229, 0.0002)
	l.narrow()
	if l.most[0] != 41 || l.most[1] != 0 {
		t.Errorf("at most %v steps", l.most)
	}
	// What one level can bring, and the levels below it: 41 steps of 0.9835 mg/L.
	for i, want := range []float64{0, 0.98348, 0.98348} {
		near(t, "richest step", l.richest[i], want, 1e-4)
		near(t, "all steps", l.rest[i], 41*want, 1e-3)
		near(t, "least of the limit", l.restLimit[i], 0, 1e-12)
	}
	// A stock of 0.3 g is six steps of 0.05 g, of 0.29 g five; without one, 50 g/L.
	for stock, most := range map[float64]float64{0.3: 6, 0.29: 5, 0: 20000} {
		q.Salts[0].Most = grams(stock)
		near(t, "stock", latticeOf(t, q, 0.05).most[0], most, 0)
	}
}

// A floor of chloride turns the limit's row round: levels below can take away, by
// 0.60661·2.5 mg/L a step over the norm of the row.
func TestLatticeFloor(t *testing.T) {
	q := Request{Profile{t: 20}, litres(20), []Stock{{Salt: material.TableSalt()}}, []Target{Sodium.Aim(mgL(4))}, []Bound{Chloride.AtLeast(mgL(10))}}
	w, err := q.SolveSteps(exactGrams(t, "0.05 g"))
	if err != nil {
		t.Fatal(err)
	}
	// 10/1.51653 = 6.59: seven steps, of 0.9835 mg/L sodium.
	near(t, "dose", w.Doses[0].Mass.In(units.Gram), 0.35, 1e-12)
	near(t, "sodium off", w.Off[0].off(), 7*0.98348-4, 1e-3)
	if !w.Proven || w.Tied {
		t.Errorf("%+v", w)
	}
	l := latticeOf(t, q, 0.05)
	_ = l.search("test")
	near(t, "least of the limit", l.restLimit[1], l.limits[0]*l.most[0], 1e-12)
	// Ten litres hold no multiple of 30 g between 20 and 22 mg/L.
	q.Limits = []Bound{Chloride.AtLeast(mgL(20)), Chloride.AtMost(mgL(22))}
	if _, err := q.SolveSteps(exactGrams(t, "30 g")); err == nil {
		t.Error("a multiple found")
	}
}

// The nearest comes before the fewest: 50 mg/L of calcium in 10 L by steps of 0.1 g,
// of the anhydrous salt 0.1 g at hand. 1.7 g of the dihydrate and that 0.1 g bring
// 1.7·27.2624 + 0.1·36.1135 = 49.9575 mg/L, 1.8 g of the dihydrate alone 49.07.
func TestStepsTies(t *testing.T) {
	two := []Stock{{Salt: material.CalciumChlorideDihydrate()}, {material.CalciumChloride(), grams(0.1)}}
	w, err := Request{Profile{}, litres(10), two, []Target{Calcium.Aim(mgL(50))}, nil}.SolveSteps(exactGrams(t, "0.1 g"))
	if err != nil || len(w.Doses) != 2 {
		t.Fatal(w.Doses, err)
	}
	near(t, "dihydrate", w.Doses[0].Mass.In(units.Gram), 1.7, 1e-12)
	near(t, "anhydrous", w.Doses[1].Mass.In(units.Gram), 0.1, 1e-12)
	near(t, "off", inMgL(w.Deviation), 0.0425, 0.0002)
	// Anything from 40 to 60 mg/L is right: 1.2 g of the anhydrous (43.3 mg/L), 1.5 g of
	// the dihydrate (40.9); the lighter is taken.
	two[1].Most = units.Mass{}
	w, err = Request{Profile{}, litres(10), two, []Target{Calcium.Between(mgL(40), mgL(60))}, nil}.SolveSteps(exactGrams(t, "0.1 g"))
	if err != nil || len(w.Doses) != 1 || w.Doses[0].Material != material.CalciumChloride() {
		t.Fatal(w.Doses, err)
	}
	near(t, "dose", w.Doses[0].Mass.In(units.Gram), 1.2, 1e-12)
	near(t, "off", inMgL(w.Deviation), 0, 1e-12)
}

// d 2, e -20, slope 20: 4x² - 60x + 400 is least at 7.5.
func TestLatticeMiddleByHand(t *testing.T) {
	l := &lattice{n: 1, r: []float64{2}, at: []float64{0}, slope: []float64{20}, most: []float64{9}}
	near(t, "middle", l.middle(0, -20), 7.5, 1e-12)
	if count, steps := l.taken([]float64{1, 0, 2}); count != 2 || steps != 3 {
		t.Errorf("%d salts, %v steps", count, steps)
	}
}

// No other number of steps costs less than the middle.
func TestLatticeMiddle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		of := func(name string, most float64) float64 { return rapid.Float64Range(0, most).Draw(t, name) }
		l := &lattice{n: 1, r: []float64{of("d", 3)}, at: []float64{0}, slope: []float64{of("slope", 20)}, most: []float64{math.Floor(of("most", 9))}}
		if rapid.Bool().Draw(t, "used") {
			l.at, l.slope = []float64{of("at", 9)}, []float64{0}
		}
		if rapid.Bool().Draw(t, "flat") {
			l.r[0], l.slope[0] = 0, 0
		}
		e := rapid.Float64Range(-20, 20).Draw(t, "e")
		cost := func(x float64) float64 {
			v := l.r[0]*(x-l.at[0]) + e
			return v*v + l.slope[0]*(x-l.at[0])
		}
		m := l.middle(0, e)
		if m < 0 || m > l.most[0] {
			t.Fatalf("middle %v of %v", m, l.most[0])
		}
		for i := range 101 {
			if x := l.most[0] * float64(i) / 100; cost(x) < cost(m)-1e-9*(1+math.Abs(cost(m))) {
				t.Fatalf("%v costs %v, the middle %v costs %v", x, cost(x), m, cost(m))
			}
		}
	})
}

// Sodium at most 5 mg/L, where a step of 0.5 g in 20 L is 9.83: none is the answer.
// Of 63 to 82 mg/L of calcium in 10 L by whole grams, 2 g of the anhydrous chloride
// (72.2) take one salt, a gram of each (63.4) two.
func TestStepsOfOne(t *testing.T) {
	w, err := Request{Profile{}, litres(20), []Stock{{material.TableSalt(), grams(0.5)}}, []Target{Sodium.Aim(mgL(9))},
		[]Bound{Sodium.AtMost(mgL(5))}}.SolveSteps(exactGrams(t, "0.5 g"))
	if err != nil || len(w.Doses) != 0 {
		t.Error(w.Doses, err)
	}
	w, err = Request{Profile{}, litres(10), []Stock{{Salt: material.CalciumChlorideDihydrate()}, {Salt: material.CalciumChloride()}},
		[]Target{Calcium.Between(mgL(63), mgL(82))}, nil}.SolveSteps(exactGrams(t, "1 g"))
	if err != nil || len(w.Doses) != 1 || w.Doses[0].Material != material.CalciumChloride() {
		t.Error(w.Doses, err)
	}
}

// SolveSteps passes on what the parts refuse.
func TestStepsRefuses(t *testing.T) {
	q := Request{Profile{}, litres(10), []Stock{{Salt: material.TableSalt()}}, []Target{Sodium.Aim(mgL(50))}, nil}
	step := exactGrams(t, "0.1 g")
	for name, bad := range map[string]Request{
		"salts":  {Volume: litres(1), Targets: q.Targets},
		"volume": {Salts: q.Salts, Targets: q.Targets},
		"limits": {Volume: litres(1), Salts: q.Salts, Targets: q.Targets, Limits: []Bound{Calcium.AtLeast(mgL(5))}},
	} {
		if w, err := bad.SolveSteps(step); err == nil || w.Step != (units.ExactMass{}) {
			t.Errorf("%s: %v, %v", name, w, err)
		}
	}
}
