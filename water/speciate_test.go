package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"pgregory.net/rapid"
)

func anySolution(t *rapid.T) Profile {
	p := anyProfile(t, "water")
	for _, i := range []Ion{Ammonium, Phosphate, Lactate, Citrate, Malate, Sulfite} {
		p.mg[i] = rapid.Float64Range(0, 1000).Draw(t, i.Name())
	}
	p.alk = rapid.Float64Range(-10, 20).Draw(t, "alkalinity")
	return p
}

// The slope of the alkalinity is the difference quotient of it at fixed free metals, the
// totals of the anions and of ammonium kept: for all pH.
func TestAlkalinitySlope(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anySolution(t)
		e, err := p.Under(atm(rapid.Float64Range(1e-4, 1).Draw(t, "atm")))
		if err != nil {
			t.Fatal(err)
		}
		way := rapid.SampledFrom([]int{byCarbon, byGas}).Draw(t, "way")
		at := func(h float64) (alk, slope float64) {
			s := e.s
			s.h = h
			s.condition()
			for j := partCO3; j < partCount; j++ {
				s.free[j] = s.total[j] / s.held(j)
			}
			if way == byGas {
				s.free[partCO3] = e.s.free[partCO3] * (e.s.h / h) * (e.s.h / h)
			}
			s.free[partNH4] = s.total[partNH4] / (1 + s.of(ammonia) + s.of(ammoniumSulfatePair)*e.s.free[partSO4])
			var now sums
			s.sums(way, false, nil, &now)
			near(t, "alkalinity", now.alk, s.alkalinity(), 1e-12*(math.Abs(now.alk)+now.capacity))
			return now.alk, now.capacity
		}
		h := e.s.h
		const d = 1e-5
		_, slope := at(h)
		up, _ := at(h * math.Exp(-d))
		down, _ := at(h * math.Exp(d))
		near(t, "slope", slope, (up-down)/(2*d), 3e-6*slope) // ammonium's pair with sulfate is taken at the sulfate as it was
	})
}

// Alkalinity by carbonate: at fixed metals it is a straight line.
func TestAlkalinityOfCarbonate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anySolution(t)
		e, err := p.Under(atm(rapid.Float64Range(1e-4, 1).Draw(t, "atm")))
		if err != nil {
			t.Fatal(err)
		}
		s := e.s
		before := s.alkalinity()
		more := s.free[partCO3]
		s.free[partCO3] += more
		after := s.alkalinity()
		near(t, "alkalinity of a carbonate", s.alkOf(partCO3), (after-before)/more, 1e-9*(s.alkOf(partCO3)+math.Abs(before)/more))
	})
}

// The dose of an acid: by how much the two alkalinities run apart for a mole of it,
// as a difference quotient in water that holds nothing else.
func TestAcidSlope(t *testing.T) {
	for _, a := range Acids() {
		for _, ph := range []float64{2, 3, 4, 6, 9, 12} {
			s := (&Profile{t: 20}).solution()
			d := s.dose(a)
			d.set(&s, molal)
			s.constantsAt(20)
			s.begin(ph)
			s.condition()
			apart := func(x float64) float64 {
				d.set(&s, x)
				s.settle(byCarbon)
				return s.alkalinity() - s.alk
			}
			var now sums
			s.sums(byCarbon, true, &d, &now)
			near(t, a.Name(), now.m[now.n][now.n], (apart(0.02)-apart(0.01))/0.01, 1e-9)
		}
	}
}

// Ionic strength is half the sum of m z² over all species.
func checkStrength(t rapid.TB, e Equilibrium) {
	s := &e.s
	sum := 2 * s.inertStrength
	for _, sp := range AllSpecies() {
		z := float64(formulaCharge(t, sp.String()))
		sum += z * z * s.species(sp)
	}
	var now sums
	s.sums(byCarbon, false, nil, &now)
	near(t, "ionic strength", now.strength, sum/2, 1e-12*sum)
}

func TestIonicStrength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anySolution(t)
		e, err := p.Under(atm(rapid.Float64Range(1e-4, 1).Draw(t, "atm")))
		if err != nil {
			t.Fatal(err)
		}
		checkStrength(t, e)
	})
}

// Half of an acid neutralised, or as much strong acid as ammonia: pKa and what the
// activities take, log γ of a single charge by Davies with A = 0.5092 at 25 °C.
func TestHalfNeutralised(t *testing.T) {
	davies := func(i float64) float64 { r := math.Sqrt(i); return -0.5092 * (r/(1+r) - 0.3*i) }
	for name, r := range map[string]struct {
		w        Totals
		pk, sign float64
	}{
		"ammonium (NIST 46)": {Totals{Ammonium: mmolL(20), StrongIons: mEqL(-10)}, 9.244, -1},
		"lactic":             {Totals{Lactate: mmolL(20), StrongIons: mEqL(10)}, 3.86, 1},
	} {
		ph, err := washPH(r.w, celsius(25))
		if err != nil {
			t.Fatal(err)
		}
		h := math.Pow(10, -ph-davies(0.01)) // what H+ itself shifts
		if r.sign < 0 {
			h = 0 // OH-: 2e-5 of 0.01
		}
		want := r.pk + r.sign*davies(0.01) + math.Log10((0.01+h)/(0.01-h))
		near(t, name, ph, want, 0.006)
	}
	// Sodium bisulfite, 10 mmol/L: [H+]² = (K2 c + Kw)/(1 + c/K1), pKa 1.85 and 7.2
	// (textbook table), 4.72 without activities, which take 0.1.
	ph, err := washPH(Totals{Sulfite: mmolL(10), StrongIons: mEqL(10)}, celsius(25))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "bisulfite", ph, 4.72-0.1, 0.05)
}

// exp by seven terms: what the eighth leaves, x⁸/8!, and what rounding does; by Padé's
// approximant: what its next order leaves, and rounding.
func TestExponentials(t *testing.T) {
	for _, x := range []float64{-0.4, -0.1, -0.03, -1e-3, 0, 1e-6, 0.02, 0.03, 0.1, 0.4} {
		up, down := bothSmall(x)
		near(t, "small", up, math.Exp(x), 1.1*math.Pow(x, 8)/40320+4e-16)
		near(t, "small", down, math.Exp(-x), 1.1*math.Pow(x, 8)/40320+4e-16)
	}
	for x := -0.8; x <= 0.8; x += 0.05 {
		for _, y := range []float64{1, 2.7} {
			up, down := bothExp(x*y, y)
			near(t, "both", up, math.Exp(x), 1e-14*math.Exp(x))
			near(t, "both", down, math.Exp(-x), 1e-14*math.Exp(-x))
		}
	}
}

// Waters where the pH and the pairs of magnesium phosphate disturb each other are
// found on the sure way, and balance as any. So do strong brines of calcium phosphate,
// nearly all of it in pairs.
func TestHardCases(t *testing.T) {
	for name, p := range map[string]Profile{
		"magnesium, lactate": water(66, map[Ion]float64{Magnesium: 1400, Calcium: 3300, Manganese: 48, Lactate: 1195, Sorbate: 4470, Phosphate: 3800},
			-15.1, 13.1, 0.67),
		"manganese": water(40, map[Ion]float64{Magnesium: 1686.724051671348, Potassium: 150.65269599248205, Manganese: 95.88352294227762,
			Zinc: 1028.1047511524623, Carbonate: 1441.887423787961, Hydroxide: 225.73003643457815, Phosphate: 2958.237743896142, Citrate: 563.7134},
			0.4966, 11.043, 22.367),
		"magnesium": water(57.196675374175670, map[Ion]float64{Calcium: 237.58847126744942, Magnesium: 858.3797246224667,
			Sodium: 121.09068847748419, Copper: 1672.1849998779312, Fluoride: 961.1502455330874, Phosphate: 1735.8359135491364}, -12.351795802558641,
			11.29774045519782, 0.13627801310995125),
		"calcium phosphate": water(35, map[Ion]float64{Calcium: 895, Chloride: 283, Sulfate: 1044, Phosphate: 2167}, 165, 0, 6),
		"sulfates":          water(90, map[Ion]float64{Calcium: 8000, Magnesium: 8000, Sulfate: 45000}, 10, 0, 5),
	} {
		var e Equilibrium
		err := e.closed("test", &p)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		checkState(t, p, e)
		alk := e.s.alkalinity()
		near(t, name, alk, e.s.alk, 1e-10*(math.Abs(alk)+e.s.oh+e.s.total[partPO4]))
	}
	gas := water(22.5, map[Ion]float64{Magnesium: 3653.965387985551, Chloride: 120.39750637438307, Sulfate: 5773.697757621532,
		Phosphate: 1287.9079456764011, Citrate: 495.1832834489986}, 330.2727022637685, 0, 0)
	e, err := gas.Under(units.Kilopascal.Of(0.04))
	if err != nil {
		t.Fatal(err)
	}
	checkState(t, gas, e)
}

func water(celsius float64, mg map[Ion]float64, alk, ph, carbon float64) Profile {
	p := Profile{t: celsius, alk: alk, ph: ph, carbon: carbon}
	for i, v := range mg {
		p.mg[i] = v
	}
	return p
}
