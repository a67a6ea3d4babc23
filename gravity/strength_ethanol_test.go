package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// 27 CFR 186.66 (former; table 6): parts by volume at 60 °F of ethanol and water
// that make 100. R 22 at 15.556 °C must give the water within 0.01.
func TestContractionCFR(t *testing.T) {
	const c = (60 - 32) / 1.8
	pure, water := ethanol(t, 100, c), ethanol(t, 0, c)
	for _, r := range []struct{ vol, water, tol float64 }{{50, 53.73, 0.01}, {56, 47.75, 0.01}, {94, 7.36, 0.01}, {95.5, 5.59, 0.01}} {
		// mass fraction with vol % at 60 °F
		lo, hi := 0.0, 100.0
		for range 60 {
			if p := (lo + hi) / 2; p*ethanol(t, p, c)/pure < r.vol {
				lo = p
			} else {
				hi = p
			}
		}
		rho := ethanol(t, lo, c)
		near(t, fmt.Sprint(2*r.vol, " proof"), rho*(1-lo/100)*100/water, r.water, r.tol)
	}
}

// 40 % vol has the density 948.05 kg/m³ in OIML R 22 table (recalled from memory);
// the conversion to 33.3 % mass is common knowledge of the trade.
func TestByVolume(t *testing.T) {
	near(t, "0 %", gravity.ByVolume(massPct(0)).In(units.PercentVolume), 0, 0)
	near(t, "100 %", gravity.ByVolume(massPct(100)).In(units.PercentVolume), 100, 1e-12)
	near(t, "40 % vol", gravity.ByMass(volPct(40)).In(units.PercentMass), 33.30, 0.01)
	near(t, "beer: ABV = ABW × SG/0.79067", gravity.ByVolume(massPct(4)).In(units.PercentVolume), 4*ethanol(t, 4, 20)/998.20123/0.79067, 1e-4)
	// out of range text cannot be made, but a sum can be
	near(t, "above", gravity.ByVolume(massPct(120)).In(units.PercentVolume), 100, 1e-12)
	near(t, "below", gravity.ByMass(volPct(-5)).In(units.PercentMass), 0, 0)
	near(t, "NaN", gravity.ByMass(volPct(math.NaN())).In(units.PercentMass), 0, 0)
}

func TestByVolumeRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 100).Draw(t, "% mass")
		v := gravity.ByVolume(massPct(p))
		if got := gravity.ByMass(v).In(units.PercentMass); math.Abs(got-p) > 1e-9*p {
			t.Fatalf("%.15g %% mass comes back as %.15g", p, got)
		}
		if x := v.In(units.PercentVolume); x < p && p < 99.999 {
			t.Fatalf("%v %% mass is %v %% vol, and ethanol is the lighter", p, x)
		}
	})
}
