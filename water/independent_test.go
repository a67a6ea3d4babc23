package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
)

// byHand is a plain solution of the same chemistry at 25 °C, with constants typed from
// the columns "log_k" of the data bases (wateq4f.dat; minteq.v4.dat for citrate), the law
// of Davies for every charge, and nothing but fixed points and halving.
type byHand struct {
	total map[string]float64 // mol/kg of Ca Mg Na K SO4 citrate and CO3 (inorganic carbon)
	inert float64            // ½Σ m z² of the rest
	pairs bool               // of citrate
	ionic float64            // strength, found
	free  map[string]float64
}

var handSpecies = []struct {
	metal, anion string
	h, z         int
	log          float64
}{
	{"", "CO3", 1, -1, 10.329}, {"", "CO3", 2, 0, 16.681}, {"", "SO4", 1, -1, 1.988},
	{"Ca", "CO3", 1, 1, 1.106 + 10.329}, {"Ca", "CO3", 0, 0, 3.224}, {"Mg", "CO3", 1, 1, 1.07 + 10.329}, {"Mg", "CO3", 0, 0, 2.98},
	{"Na", "CO3", 1, 0, -0.25 + 10.329}, {"Na", "CO3", 0, -1, 1.27},
	{"Ca", "SO4", 0, 0, 2.14}, {"Mg", "SO4", 0, 0, 2.42}, {"Na", "SO4", 0, -1, 0.70}, {"K", "SO4", 0, -1, 0.85},
	{"", "cit", 1, -2, 6.396}, {"", "cit", 2, -1, 11.157}, {"", "cit", 3, 0, 14.285},
	{"Ca", "cit", 0, -1, 4.87}, {"Ca", "cit", 1, 0, 9.26}, {"Ca", "cit", 2, 1, 12.257},
	{"Mg", "cit", 0, -1, 4.89}, {"Mg", "cit", 1, 0, 8.91}, {"Mg", "cit", 2, 1, 12.2},
	{"Na", "cit", 0, -2, 1.03}, {"Na", "cit", 1, -1, 6.45}, {"K", "cit", 0, -2, 1.1},
}

// at returns the alkalinity at a pH.
func (b *byHand) at(ph float64) (alk float64) {
	charge := map[string]int{"Ca": 2, "Mg": 2, "Na": 1, "K": 1, "CO3": -2, "SO4": -2, "cit": -3, "": 0}
	zero := map[string]int{"CO3": 2, "SO4": 0, "cit": 0}
	b.free = map[string]float64{"": 1}
	for part, n := range b.total {
		b.free[part] = n
	}
	b.ionic = 0.01
	for range 80 {
		ionic := min(b.ionic, 0.5)
		r := math.Sqrt(ionic)
		gamma := func(z int) float64 { return math.Pow(10, -0.5092*float64(z*z)*(r/(1+r)-0.3*ionic)) }
		h, oh := math.Pow(10, -ph)/gamma(1), math.Pow(10, ph-13.995)/gamma(1)
		sum := map[string]float64{}
		alk, b.ionic = oh-h, b.inert+(h+oh)/2
		for part, n := range b.free {
			if part == "" {
				continue
			}
			sum[part] += n
			b.ionic += n * float64(charge[part]*charge[part]) / 2
			alk += n * float64(zero[part])
		}
		for _, s := range handSpecies {
			if s.anion == "cit" && s.metal != "" && !b.pairs {
				continue
			}
			n := math.Pow(10, s.log-ph*float64(s.h)) * b.free[s.metal] * b.free[s.anion] * gamma(charge[s.metal]) * gamma(charge[s.anion]) / gamma(s.z)
			if s.metal != "" {
				sum[s.metal] += n
			}
			sum[s.anion] += n
			b.ionic += n * float64(s.z*s.z) / 2
			alk += n * float64(zero[s.anion]-s.h)
		}
		for part, n := range b.total {
			if sum[part] > 0 {
				b.free[part] *= math.Sqrt(n / sum[part]) // half a step, so that it never swings
			}
		}
	}
	return alk
}

// middling is calcium 60, magnesium 10, sodium 20, potassium 3, chloride 30, sulfate
// 50 mg/L, in mol/kg of water.
func middling(pairs bool) *byHand {
	mol := func(mg, mass float64) float64 { return mg / mass / 1000 / 0.998203 }
	return &byHand{pairs: pairs, inert: mol(30, 35.45) / 2, total: map[string]float64{"Ca": mol(60, 40.078), "Mg": mol(10, 24.305),
		"Na": mol(20, 22.990), "K": mol(3, 39.098), "SO4": mol(50, 96.06), "CO3": 0, "cit": 0}}
}

// between halves.
func between(low, high float64, rises func(x float64) float64) float64 {
	for range 40 {
		if mid := (low + high) / 2; rises(mid) < 0 {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

// The pairs of citrate: citric acid that brings the middling water to a pH, by the plain
// solution; and without the pairs, where it takes half as much again or more.
func TestCitratePairs(t *testing.T) {
	p, err := reports[0].profile(t, 25).WithPH(7.5)
	if err != nil {
		t.Fatal(err)
	}
	dose := func(pairs bool, ph float64) float64 {
		b := middling(pairs)
		alk := 144 / 50.0435 / 1000 / 0.998203
		b.total["CO3"] = between(0, 0.1, func(c float64) float64 { b.total["CO3"] = c; return b.at(7.5) - alk })
		return 1000 * between(0, 0.02, func(x float64) float64 { b.total["cit"] = x; return b.at(ph) - (alk - 3*x) })
	}
	for _, ph := range []float64{6, 5.4, 5, 4.5} {
		got, _, err := p.AcidPerLitre(CitricAcid, ph, CO2Loss{})
		if err != nil {
			t.Fatal(err)
		}
		with, without := dose(true, ph), dose(false, ph)
		t.Logf("pH %g: %g, by hand %g, without pairs %g", ph, got.In(units.MillimolePerLitre)*molal*1000, with, without)
		near(t, "citric acid", got.In(units.MillimolePerLitre)*molal*1000, with, 0.02*with)
	}
}

// What is said of the dose of an acid, by the plain solution: 1.3 % of it or 0.02 in pH at
// the buffer capacity of the end, the larger, on steep slopes and on flat ones.
func TestAcidDoseUncertainty(t *testing.T) {
	p, err := reports[0].profile(t, 25).WithPH(7.5)
	if err != nil {
		t.Fatal(err)
	}
	b := middling(true)
	alk := 144 / 50.0435 / 1000 / 0.998203
	b.total["CO3"] = between(0, 0.1, func(c float64) float64 { b.total["CO3"] = c; return b.at(7.5) - alk })
	for _, ph := range []float64{7.49, 7.4, 7, 6.4, 5.4, 4.6, 4.3, 3.5} {
		want := (alk - b.at(ph)) * 1000
		got, after, err := p.AcidPerLitre(HydrochloricAcid, ph, CO2Loss{})
		if err != nil {
			t.Fatal(err)
		}
		e, err := after.Equilibrium()
		if err != nil {
			t.Fatal(err)
		}
		flat := 0.02 * e.BufferCapacity().In(units.MilliequivalentPerLitre)
		near(t, "dose", got.In(units.MillimolePerLitre)*molal*1000, want, max(0.013*want, flat))
	}
}

// How far the two enthalpies of NaCO3- part the pH of a water of sodium carbonate and
// bicarbonate: not at 25 °C, and by what the uncertainty says at 90 °C.
func TestSodiumCarbonateLimit(t *testing.T) {
	apart := func(celsius float64) float64 {
		p := Profile{t: celsius, alk: 20, carbon: 15}
		p.mg[Sodium] = 20 * Sodium.MolarMass().In(units.GramPerMole)
		var e Equilibrium
		e.follow(&p, 9)
		taken := e.s
		other := heat(1.27, -20.35)
		w := warm(celsius)
		e.s.k[sodiumCarbonatePair] = other.at(&w)
		e.s.standard()
		for _, s := range []*solution{&taken, &e.s} {
			if err := s.findPH("test", byCarbon); err != nil {
				t.Fatal(err)
			}
		}
		return math.Log10(taken.h / e.s.h)
	}
	for c, most := range map[float64]float64{25: 1e-6, 50: 0.15, 90: 0.41} {
		d := math.Abs(apart(c))
		t.Log(c, d)
		if d > most || d < 0.9*most-1e-6 {
			t.Errorf("%v °C: %v", c, d)
		}
	}
}
