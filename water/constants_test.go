package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
)

// Constants of pairs at 25 °C with their enthalpies in kcal/mol, as the USGS data
// base phreeqc.dat of version 3 has them: recalled from memory, typed a second time.
func TestPairConstants(t *testing.T) {
	for name, r := range map[string]struct {
		f       *fit
		log, dH float64
	}{
		"NaSO4-": {&fitNaSO4, 0.7, 1.12}, "KSO4-": {&fitKSO4, 0.85, 2.25},
		"MgOH+": {&fitMgOH, -11.44, 15.952}, "NaCO3-": {&fitNaCO3, 1.27, 8.91},
		"HPO4-2": {&fitHPO4, 12.346, -3.53}, "H2PO4-": {&fitH2PO4, 19.553, -4.52}, "H3PO4": {&fitH3PO4, 21.721, -10.1 / 4.184},
		"CaPO4-": {&fitCaPO4, 6.459, 3.1}, "CaHPO4": {&fitCaHPO4, 2.739, 3.3}, "CaH2PO4+": {&fitCaH2PO4, 1.408, 3.4},
		"MgPO4-": {&fitMgPO4, 6.589, 3.1}, "MgHPO4": {&fitMgHPO4, 2.87, 3.3}, "MgH2PO4+": {&fitMgH2PO4, 1.513, 3.4},
		"NH3": {&fitAmmonia, -9.244, 52 / 4.184}, "portlandite": {&fitPortlandite, 22.8, -31},
	} {
		cold, mild := warm(0), warm(25)
		near(t, name, r.f.log10(&mild), r.log, 1e-9)
		near(t, name+" at 0 °C", r.f.log10(&cold), r.log-r.dH*4184/(math.Ln10*8.314462618)*(1/273.15-1/298.15), 1e-9)
	}
	// Second and first ionisation: HSO4- 1.988, MgSO4 2.42, MgHCO3+ 11.40, MgCO3 2.98,
	// CaCO3 3.224 at 25 °C, from the data base's own column beside the fits.
	mild := warm(25)
	for name, r := range map[string]struct {
		f   *fit
		log float64
	}{"HSO4-": {&fitBisulfate, 1.988}, "MgSO4": {&fitMgSO4, 2.42}, "MgHCO3+": {&fitMgHCO3, 11.399}, "MgCO3": {&fitMgCO3, 2.98}, "CaCO3": {&fitCaCO3, 3.224}} {
		near(t, name, r.f.log10(&mild), r.log, 0.005)
	}
	for name, c := range map[string][2]float64{"NH4SO4-": {constNH4SO4, 1.11}, "CaHSO4+": {constCaHSO4, 1.08}, "CaOH+": {constCaOH, -12.78}, "CaHCO3+": {constCaHCO3, -1}, "NaHCO3": {constNaHCO3, -0.25}, "NaHPO4-": {constNaHPO4, 0.29}, "KHPO4-": {constKHPO4, 0.29}} {
		near(t, name, math.Log10(c[0]), c[1], 1e-9)
	}
}

// pKa at 25 °C (NIST 46 for citric and acetic; compilations for the rest) with the
// enthalpies of each step in kJ/mol.
func TestWeakAcidConstants(t *testing.T) {
	want := map[Ion][][2]float64{
		Lactate: {{3.86, -0.3}}, Acetate: {{4.757, -0.41}}, Citrate: {{3.128, 4.06}, {4.761, 2.05}, {6.396, -3.35}}, Malate: {{3.4, 3}, {5.2, -1}},
		Tartrate: {{2.98, 3.2}, {4.34, 1}}, Succinate: {{4.21, 3}, {5.64, -0.5}}, Sulfite: {{1.85, -17.8}, {7.2, -3.7}}, Sorbate: {{4.76, 0}},
	}
	cold, mild := warm(0), warm(25)
	for i := range weakAcids {
		a := &weakAcids[i]
		steps := want[a.ion]
		if len(steps) != a.protons || a.charge != -a.ion.Charge() {
			t.Errorf("%v has %d protons", a.ion, a.protons)
		}
		log, slope := 0.0, 0.0
		for j := range a.protons {
			s := steps[len(steps)-1-j]
			log, slope = log+s[0], slope-s[1]
			near(t, a.ion.Name(), a.steps[j].log10(&mild), log, 1e-9)
			near(t, a.ion.Name()+" at 0 °C", a.steps[j].log10(&cold), log-slope*1000/(math.Ln10*8.314462618)*(1/273.15-1/298.15), 1e-9)
		}
	}
}

// Activity coefficients by the formulas, each with its parameters typed again.
func TestActivityCoefficients(t *testing.T) {
	for _, i := range []float64{0.001, 0.01, 0.1, 0.5} {
		const a, b = 0.5098, 0.3284
		var g gammas
		g.at(i, a*math.Ln10, b)
		r := math.Sqrt(i)
		jones := func(z, size, c float64) float64 { return math.Pow(10, -a*z*z*r/(1+b*size*r)+c*i) }
		davies := func(z float64) float64 { return math.Pow(10, -a*z*z*(r/(1+r)-0.3*i)) }
		for name, v := range map[string][2]float64{
			"H+": {g.h, jones(1, 9, 0)}, "OH-": {g.oh, jones(1, 3.5, 0)}, "K+": {g.k, jones(1, 3.5, 0.015)}, "Na+": {g.na, jones(1, 4.08, 0.082)},
			"Ca+2": {g.ca, jones(2, 5, 0.165)}, "Mg+2": {g.mg, jones(2, 5.5, 0.2)}, "SO4-2": {g.so4, jones(2, 5, -0.04)}, "HPO4-2": {g.hpo4, jones(2, 5, 0)},
			"HCO3-": {g.hco3, jones(1, 5.4, 0)}, "CO3-2": {g.co3, jones(2, 5.4, 0)}, "MgHCO3+": {g.mgHCO3, jones(1, 4, 0)}, "PO4-3": {g.po4, jones(3, 4, 0)},
			"one": {g.one, davies(1)}, "two": {g.two, davies(2)}, "three": {g.three, davies(3)}, "neutral": {g.neutral, math.Pow(10, 0.1*i)},
		} {
			near(t, name, v[0], v[1], 1e-7*v[1])
		}
	}
}

// Small amounts are taken as they are: the lower ends of the ranges are zero.
func TestSmallAmounts(t *testing.T) {
	p := reports[0].profile(t, 20)
	q, err := p.AddAcid(litres(1), LacticAcid, units.Amount{})
	if err != nil || q.alk != p.alk {
		t.Error(err)
	}
	if d, err := p.Dechlorinate(litres(1), FreeChlorine(mgL(0.5), AsCl2), AscorbicAcid); err != nil || d.Least.In(units.Milligram) > 1.3 {
		t.Error(err)
	}
	if d, err := p.Dechlorinate(litres(0.5), FreeChlorine(mgL(0), AsCl2), SodiumMetabisulfite); err != nil || !d.Least.IsZero() {
		t.Error(err)
	}
	if r, _, err := (Report{Readings: []Reading{{Calcium, 0.5, AsIon}, {Iron, 0, AsIon}}}).Profile(); err != nil || r.ion(Calcium) != 0.5 {
		t.Error(err)
	}
	if _, err := WashPH(Wash{Others: mmolL(0.5), Lactate: mmolL(0.5)}, celsius(0)); err != nil {
		t.Error(err)
	}
	if d, err := (Profile{t: 1}).AtRestWith(Calcite, CO2LostTo(atm(0.001))); err != nil || d.Amount >= 0 {
		t.Error(err)
	}
	if _, err := (Profile{t: 0.5}).InAir(); err != nil {
		t.Error(err)
	}
	r, err := Solve(Request{Profile{}, litres(0.5), []Stock{{Gypsum, grams(0.5)}}, []Target{{Calcium, mgL(0.5), mgL(0.5), 0.5}}, []Limit{AtMost(Sodium, mgL(0.5))}})
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
