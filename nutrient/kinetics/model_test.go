package kinetics

import (
	"math"
	"testing"
)

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got/want-1) <= within) {
		t.Errorf("%s: %.6g, by hand %.6g", what, got, want)
	}
}

// Each rate by hand, with the coefficients of Coleman, Fish & Block 2007, table A2, as the doc
// comment of the model carries them from two carriers (the original not read); above 22 °C less
// by 17.9 kJ/mol against the slope 0.0771 (Foster et al. 2022, fig. S1, as read).
func TestRatesByHand(t *testing.T) {
	// 20 °C: ln µ = -3.92 + 1.564 = -2.356; ln β = -2.64 + 1.542 = -1.098;
	// ln kd' = -9.81 - 2.16 + 1.912 = -10.058.
	r := ratesAt(20, 1)
	near(t, "growth at 20 °C", math.Log(r.growth), -2.356, 1e-9)
	near(t, "uptake at 20 °C", math.Log(r.uptake), -1.098, 1e-9)
	near(t, "death at 20 °C", math.Log(r.death), -10.058, 1e-9)
	// 10 °C: death stays at that of 11.3 °C: -9.81 - 1.2204 + 0.6103582.
	near(t, "death at 10 °C", math.Log(ratesAt(10, 1).death), -10.4200418, 1e-9)
	// 30 °C: 17.9/0.008314 (1/295.15 - 1/303.15) = 0.1925; less 8 times 0.0771 = 0.6168: -0.4243.
	near(t, "levelling at 30 °C", math.Log(levelling(30)), -0.42430, 2e-4)
	near(t, "speed at 20 °C", speed(20), 1, 1e-12)
	near(t, "half the pace", ratesAt(20, 0.5).uptake, r.uptake/2, 1e-12)
}

// Cells of a gram of nitrogen: ln Y = 3.50 - 0.00361 N; at 100 mg/L 3.139, below 70 as at 70
// (3.2473), beyond 277 as at 277 (2.50003). The carrier prints 24.8 at 80 mg/L: ln 3.2112.
func TestCellsByHand(t *testing.T) {
	for _, c := range []struct{ nitrogen, ln float64 }{{100, 3.139}, {80, 3.2112}, {20, 3.2473}, {600, 2.50003}} {
		_, cells := newLiquid(200, c.nitrogen, 0.1)
		near(t, "ln of the cells", math.Log(cells), c.ln, 1e-9)
	}
	l, _ := newLiquid(200, 600, 0.1)
	near(t, "nitrogen taken, g/L", l.nitrogen, 0.277, 1e-12)
}

// At the half-saturations growth and uptake are half their most: ln Kn = -4.73, ln Ks = 2.33, as the
// model carries them; 0.55 g of ethanol a gram of sugar.
func TestChangeByHand(t *testing.T) {
	d := liquid{active: 2, nitrogen: math.Exp(-4.73), ethanol: 10, sugar: math.Exp(2.33)}.change(rates{growth: 0.1, uptake: 0.3, death: 1e-4}, 20)
	near(t, "active cells", d.active, 2*(0.05-1e-3), 2e-3)
	near(t, "nitrogen", d.nitrogen, -0.005, 2e-3)
	near(t, "ethanol", d.ethanol, 0.3, 3e-3)
	near(t, "sugar", d.sugar, -d.ethanol/0.55, 1e-12)
}

// The chosen slowing by acid: none from pH 3, 0.85 at 2.75, 0.7 at 2.5.
func TestSlowingByHand(t *testing.T) {
	for ph, want := range map[float64]float64{0: 1, 3: 1, 4: 1, 2.75: 0.85, 2.5: 0.7} {
		near(t, "slowing", Start{PH: ph}.slowing(), want, 1e-12)
	}
}
