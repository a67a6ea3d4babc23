package mash

import (
	"strings"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Each thing that a mash pH depends on, one at a time from one mash, by hand, with its band printed (go test -v). The mash: 1 kg
// of malt of pH 5.70 ± 0.05 and buffering 30 mEq/(kg pH) from 25 to 36, in 3 L of 100.09 mg/L as CaCO3 (2.000 mEq/L): 6.00 mEq to 30, pH 5.90.
func TestEachPointWithItsBand(t *testing.T) {
	of := func(m Malt, p water.Profile) Mash { return Mash{[]Malt{m}, p, litres(3)} }
	malt := func(ph, buffer float64) Malt {
		return Malt{Name: "malt", Mass: kg(1), PH: about(ph, 0.05), BufferPerKilogram: amounts(band(buffer, buffer*25/30, buffer*36/30))}
	}
	usual, plain := malt(5.7, 30), liquor(t, 100.086, 0, 0)
	gypsum, err := plain.Add(litres(3), material.Gypsum().Dose(units.Gram.Of(1.5)))
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range []struct {
		name string
		mash Mash
		want float64
		part string // of the band, that must be there
	}{
		{"the mash itself", of(usual, plain), 5.900, "CO2 that stays"},
		{"pH of the malt, 0.10 lower", of(malt(5.6, 30), plain), 5.800, "pH of malt"},
		{"buffering, 40 for 30: 6/40", of(malt(5.7, 40), plain), 5.850, "buffering of malt"},
		{"alkalinity, none", of(usual, liquor(t, 0, 0, 0)), 5.700, "pH of malt"},
		{"alkalinity, below zero by acid: 6/30", of(usual, liquor(t, -100.086, 0, 0)), 5.500, "pH of malt"},
		{"calcium, 100 mg/L: 4.990 × 3/3.5/30", of(usual, liquor(t, 100.086, 100, 0)), 5.757, "calcium with malt phosphate"},
		{"magnesium, 24.305 mg/L: 2.000 × 3/7/30", of(usual, liquor(t, 100.086, 0, 24.305)), 5.871, "magnesium with malt phosphate"},
		// 1.5 g of CaSO4·2H2O (172.17 g/mol) are 17.43 mEq: /3.5/30 = 0.166
		{"salts, 1.5 g of gypsum", of(usual, gypsum), 5.734, "calcium with malt phosphate"},
	} {
		e, err := r.mash.PH()
		if err != nil {
			t.Fatalf("%s: %v", r.name, err)
		}
		near(t, r.name, e.Value, r.want, 0.003)
		t.Logf("%-40s pH %v", r.name, e)
		// The band of the malt alone is 0.05 each way; none is narrower, none a pH wide.
		if e.Low > e.Value-0.049 || e.High < e.Value+0.049 || e.High-e.Low > 1 {
			t.Errorf("%s: band %v", r.name, e)
		}
		found := false
		for _, p := range e.Parts {
			found = found || strings.HasPrefix(p.Name, r.part) && (p.Low != 0 || p.High != 0)
		}
		if !found {
			t.Errorf("%s: no %q in the band: %+v", r.name, r.part, e.Parts)
		}
	}

	// Solved for a dose: 5.90 to 5.40 with lactic acid (90.08 g/mol, pK 3.86: 0.972 of it gives its proton): 0.50 × 30 =
	// 15.0 mEq, 1.39 g. To 6.00 with baking soda (84.01 g/mol): 0.10 × 30 = 3.0 mEq, 0.252 g.
	acid, err := of(usual, plain).WithAcid(water.LacticAcid, 5.4)
	if err != nil {
		t.Fatal(err)
	}
	base, err := of(usual, plain).WithBase(material.BakingSoda(), 6.0)
	if err != nil {
		t.Fatal(err)
	}
	g := func(m units.Mass) float64 { return m.In(units.Gram) }
	near(t, "solve acid, g", g(acid.Mass), 1.39, 0.02)
	near(t, "solve salt, g", g(base.Mass), 0.252, 0.004)
	for name, d := range map[string]Adjustment{"lactic acid to pH 5.4": acid, "baking soda to pH 6.0": base} {
		t.Logf("%-40s %.2f g (%.2f to %.2f)", name, g(d.Mass), g(d.Low), g(d.High))
		// ± 0.05 of the malt's pH alone is 1.5 mEq: 0.14 g of the acid, 0.13 g of the salt.
		if g(d.Low) > g(d.Mass)-0.12 || g(d.High) < g(d.Mass)+0.12 {
			t.Errorf("%s: band %v to %v", name, g(d.Low), g(d.High))
		}
	}

	// The rivals: Kolbach's wort is 2.000 × 0.084 above the malt, half to twice that; of Barth and Zaman no figure was read.
	rivals, err := of(usual, plain).Rivals()
	if err != nil || len(rivals) != 3 {
		t.Fatal(rivals, err)
	}
	near(t, "balance of protons", rivals[0].PH.Value, 5.900, 0.003)
	near(t, "Kolbach", rivals[1].PH.Value, 5.868, 0.001)
	near(t, "Kolbach, low", rivals[1].PH.Low, 5.868-0.0978, 0.002)   // √(0.05² + 0.084²)
	near(t, "Kolbach, high", rivals[1].PH.High, 5.868+0.1753, 0.002) // √(0.05² + 0.168²)
	if rivals[2].Known {
		t.Error("a rival that was not read has a figure")
	}
	for _, r := range rivals[:2] {
		t.Logf("%-40s pH %.2f (%.2f to %.2f)", r.Method, r.PH.Value, r.PH.Low, r.PH.High)
	}
}
