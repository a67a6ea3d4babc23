package water

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// rowOf returns the species of a formula.
func rowOf(t *testing.T, formula string) *speciesRow {
	t.Helper()
	for sp := range speciesTable {
		if speciesTable[sp].formula == formula {
			return &speciesTable[sp]
		}
	}
	t.Fatal("no species " + formula)
	return nil
}

// Constants at 25 °C with their enthalpies, typed a second time: of the data bases of
// geochemistry in kcal/mol, for the reaction from the parts that each is written from.
func TestPairConstants(t *testing.T) {
	hpo4, h2po4 := [2]float64{12.346, -3.53}, [2]float64{19.553, -4.52}
	for name, r := range map[string]struct {
		log, dH float64
		on      [2]float64
	}{
		"NaSO4-": {0.7, 1.12, [2]float64{}},
		"MgOH+":  {-11.44, 15.952, [2]float64{}}, "NaCO3-": {1.27, 8.91, [2]float64{}}, "CaOH+": {-12.78, 0, [2]float64{}},
		"HPO4-2": {0, 0, hpo4}, "H2PO4-": {0, 0, h2po4}, "H3PO4": {21.721, -10.1 / 4.184, [2]float64{}},
		"CaPO4-": {6.459, 3.1, [2]float64{}}, "CaHPO4": {2.739, 3.3, hpo4}, "CaH2PO4+": {1.408, 3.4, h2po4},
		"MgPO4-": {6.589, 3.1, [2]float64{}}, "MgHPO4": {2.87, 3.3, hpo4}, "MgH2PO4+": {1.513, 3.4, h2po4},
		"NaHPO4-": {0.29, 0, hpo4}, "KHPO4-": {0.29, 0, hpo4},
		"NH3": {-9.244, 52 / 4.184, [2]float64{}}, "NH4SO4-": {1.11, 0, [2]float64{}},
	} {
		cold, mild := warm(0), warm(25)
		k := &rowOf(t, name).k
		log, dH := r.log+r.on[0], r.dH+r.on[1]
		near(t, name, k.log10(&mild), log, 1e-9)
		near(t, name+" at 0 °C", k.log10(&cold), log-dH*4184/(math.Ln10*8.314462618)*(1/273.15-1/298.15), 1e-9)
	}
	mild := warm(25)
	for name, r := range map[string]struct{ log, kJ float64 }{ // minteq.v4.dat and others, typed again
		"Ca(citrate)-": {4.87, -8.368}, "CaH(citrate)": {9.26, -0.8368}, "CaH2(citrate)+": {12.257, 0},
		"Mg(citrate)-": {4.89, 8.368}, "MgH(citrate)": {8.91, 3.3472}, "MgH2(citrate)+": {12.2, 0},
		"Na(citrate)-2": {1.03, -2.8033}, "NaH(citrate)-": {6.45, -3.5982}, "K(citrate)-2": {1.1, 5.4392},
		"Ca(tartrate)": {2.8, -8.368}, "CaH(tartrate)+": {5.86, -9.1211}, "Mg(tartrate)": {2.3, 0}, "MgH(tartrate)+": {5.75, 0},
		"Na(tartrate)-": {0.9, -0.8368}, "NaH(tartrate)": {4.58, -2.8451}, "K(tartrate)-": {0.8, 0},
		"Ca(acetate)+": {1.18, 4}, "Mg(acetate)+": {1.27, 0},
		"Ca(succinate)": {2.34, 0}, "Mg(succinate)": {2.27, 0}, "Ca(lactate)+": {1.69, 31},
		"Ca(gluconate)+": {1.94, 34}, "H(gluconate)": {3.98254, 0}, "Ca(glutamate)": {2.06, 0}, "CaH(glutamate)+": {11.13, 0}, "Mg(glutamate)": {2.8, 0},
		"H(glutamate)-": {9.96, -41.0032}, "H2(glutamate)": {14.26, -43.5136}, "H3(glutamate)+": {16.42, -46.8608},
		"CaH(succinate)+": {6.79 - 5.71 + 5.629, 0}, "MgH(succinate)+": {6.72 - 5.71 + 5.629, 0}, // of the acid succinate, its pK 5.71 there
	} {
		cold, mild := warm(0), warm(25)
		k := &rowOf(t, name).k
		near(t, name, k.log10(&mild), r.log, 1e-5)
		near(t, name+" at 0 °C", k.log10(&cold), r.log-r.kJ*1000/(math.Ln10*8.314462618)*(1/273.15-1/298.15), 1e-5)
	}
	near(t, "portlandite", fitPortlandite.log10(&mild), 22.8, 1e-9)
	// HSO4- 1.988, MgSO4 2.42, MgHCO3+ 11.399, MgCO3 2.98, CaCO3 3.224 at 25 °C, from the
	// data base's own column beside the fits; CaHSO4+ 1.08 from HSO4-, NaHCO3 -0.25 from HCO3-.
	for name, log := range map[string]float64{"HSO4-": 1.988, "CaSO4": 2.14, "KSO4-": 0.85, "CaHCO3+": 1.106 + 10.329, "MgSO4": 2.42,
		"MgHCO3+": 11.399, "MgCO3": 2.98, "CaCO3": 3.224, "CaHSO4+": 1.08 + 1.988, "NaHCO3": -0.25 + 10.329} {
		near(t, name, rowOf(t, name).k.log10(&mild), log, 0.005)
	}
}

// pKa at 25 °C with the enthalpies of each step in kJ/mol, typed a second time.
func TestWeakAcidConstants(t *testing.T) {
	cold, mild := warm(0), warm(25)
	for name, steps := range map[string][][2]float64{
		"H(lactate)": {{3.863, -0.29}}, "H(acetate)": {{4.757, -0.41}}, "H(citrate)-2": {{6.396, -3.3472}}, "H2(citrate)-": {{4.761, 2.0502}, {6.396, -3.3472}},
		"H3(citrate)": {{3.128, 4.0584}, {4.761, 2.0502}, {6.396, -3.3472}}, "H(malate)-": {{5.094, -1.17}}, "H2(malate)": {{3.46, 2.93}, {5.094, -1.17}},
		"H(tartrate)-": {{4.366, 0.7531}}, "H2(tartrate)": {{3.036, 2.9288}, {4.366, 0.7531}}, "H(succinate)-": {{5.629, 0}},
		"H2(succinate)": {{4.207, 2.72}, {5.629, 0}},
		"HSO3-":         {{7.17, -3.67}}, "SO2": {{1.86, -17.4}, {7.17, -3.67}}, "H(sorbate)": {{4.76, 0}},
	} {
		log, slope := 0.0, 0.0
		for _, s := range steps {
			log, slope = log+s[0], slope-s[1]
		}
		k := &rowOf(t, name).k
		near(t, name, k.log10(&mild), log, 1e-9)
		near(t, name+" at 0 °C", k.log10(&cold), log-slope*1000/(math.Ln10*8.314462618)*(1/273.15-1/298.15), 1e-9)
	}
}

// Activity coefficients by the formulas, each with its parameters typed again.
func TestActivityCoefficients(t *testing.T) {
	for _, i := range []float64{0.001, 0.01, 0.1, 0.5} {
		const a, b = 0.5098, 0.3284
		var g coefficients
		g.at(i, a*math.Ln10, b)
		r := math.Sqrt(i)
		jones := func(z, size, c float64) float64 { return math.Pow(10, -a*z*z*r/(1+b*size*r)+c*i) }
		davies := func(z float64) float64 { return math.Pow(10, -a*z*z*(r/(1+r)-0.3*i)) }
		for name, want := range map[string]float64{
			"H+": jones(1, 9, 0), "OH-": jones(1, 3.5, 0), "K+": jones(1, 3.5, 0.015), "Na+": jones(1, 4.08, 0.082),
			"Ca+2": jones(2, 5, 0.165), "Mg+2": jones(2, 5.5, 0.2), "SO4-2": jones(2, 5, -0.04), "HPO4-2": jones(2, 5, 0),
			"HCO3-": jones(1, 5.4, 0), "CO3-2": jones(2, 5.4, 0), "MgHCO3+": jones(1, 4, 0), "PO4-3": jones(3, 4, 0),
			"lactate-": davies(1), "malate-2": davies(2), "citrate-3": davies(3), "H3PO4": math.Pow(10, 0.1*i),
		} {
			for sp := range speciesTable {
				if speciesTable[sp].formula == name {
					near(t, name, g.of[gammaOf[sp]], want, 1e-7*want)
					near(t, name, g.over[gammaOf[sp]], 1/want, 1e-7/want)
				}
			}
		}
	}
}

// Small amounts are taken as they are: the lower ends of the ranges are zero.
func TestSmallAmounts(t *testing.T) {
	p := reports[0].profile(t, 20)
	q, err := p.AddAcid(LacticAcid, units.Amount{}, litres(1))
	if err != nil || q.alk != p.alk {
		t.Error(err)
	}
	if d, err := p.Dechlorinate(shelf.Material("ascorbic acid"), FreeChlorine(mgL(0.5), AsCl2), litres(1)); err != nil || d.Least.In(units.Milligram) > 1.3 {
		t.Error(err)
	}
	if d, err := p.Dechlorinate(material.SodiumMetabisulfite(), FreeChlorine(mgL(0), AsCl2), litres(0.5)); err != nil || !d.Least.IsZero() {
		t.Error(err)
	}
	if r, _, err := (Report{Readings: []ReportLine{{Calcium, 0.5, AsIon}, {Iron, 0, AsIon}}}).Profile(); err != nil || r.ion(Calcium) != 0.5 {
		t.Error(err)
	}
	if _, err := washPH(Totals{Others: mmolL(0.5), Lactate: mmolL(0.5)}, celsius(0)); err != nil {
		t.Error(err)
	}
	if d, err := (Profile{t: 1}).AtRestWith(Calcite, CO2LostTo(atm(0.001))); err != nil || !d.Dissolved {
		t.Error(err)
	}
	if _, err := (Profile{t: 0.5}).InAir(); err != nil {
		t.Error(err)
	}
	r, err := Request{Profile{}, litres(0.5), []Stock{{material.Gypsum(), grams(0.5)}}, []Target{{Calcium, mgL(0.5), mgL(0.5), 0.5}},
		[]Bound{Sodium.AtMost(mgL(0.5))}}.Solve()
	if err != nil || len(r.Doses) != 1 {
		t.Error(err)
	}
	if _, err := Blend(Portion{p, litres(0.5)}, Portion{p, litres(0)}); err != nil {
		t.Error(err)
	}
	if c, err := ConvertAcidity(mgL(0.5), LacticAcid, LacticAcid); err != nil || c != mgL(0.5) {
		t.Error(err)
	}
}

// The law of each species' activity, typed a second time: sizes and b of phreeqc.dat and
// wateq4f.dat; 0.1 kg/mol for what has no charge and Davies for what has, unless said.
func TestActivityLaws(t *testing.T) {
	said := map[string]activity{
		"H+": {9, 0}, "OH-": {3.5, 0}, "HCO3-": {5.4, 0}, "CO3-2": {5.4, 0}, "Ca+2": {5, 0.165}, "Mg+2": {5.5, 0.2}, "Na+": {4.08, 0.082},
		"K+": {3.5, 0.015}, "SO4-2": {5, -0.04}, "HSO4-": {4.5, 0}, "CaHCO3+": {6, 0}, "CaOH+": {6, 0}, "MgHCO3+": {4, 0}, "MgOH+": {6.5, 0},
		"NaCO3-": {5.4, 0}, "NaSO4-": {5.4, 0}, "KSO4-": {5.4, 0}, "NH4SO4-": {5, 0}, "PO4-3": {4, 0}, "HPO4-2": {5, 0}, "H2PO4-": {5.4, 0},
		"CaPO4-": {5.4, 0}, "CaH2PO4+": {5.4, 0}, "MgPO4-": {5.4, 0}, "MgH2PO4+": {5.4, 0}, "NaHPO4-": {5.4, 0}, "KHPO4-": {5.4, 0},
		"CaSO4": {uncharged, 0.0445}, "MgSO4": {uncharged, 0.2},
	}
	for sp := range speciesTable {
		r := &speciesTable[sp]
		want, ok := said[r.formula]
		if !ok {
			want = activity{size: inDavies}
			if r.charge() == 0 {
				want = activity{uncharged, 0.1}
			}
		}
		if r.activity != want {
			t.Errorf("%s: %v, want %v", r.formula, r.activity, want)
		}
		if text := Species(sp).Describe(); r.from == basis && !strings.HasPrefix(text, r.formula+"; activity by ") ||
			r.from != basis && !strings.HasPrefix(text, r.formula+" = ") {
			t.Error(text)
		}
	}
	if got := hydroxideFree.Describe(); !strings.HasPrefix(got, "OH- = H2O - H+; log K -13.99") {
		t.Error(got)
	}
	if got := CarbonDioxide.Describe(); !strings.HasPrefix(got, "CO2 = CO3-2 + 2 H+; log K 16.681 at 25 °C") {
		t.Error(got)
	}
	if speciesCount.Describe() != "unknown species" || Species(-1).Describe() != "unknown species" {
		t.Error("a species that is none")
	}
}
