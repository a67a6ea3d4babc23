package carbonation

import (
	"math"
	"testing"

	"example.org/zymase/internal/chemistry"
)

// Nitrogen and oxygen in water against two sets that the guideline's constants do not
// come from: R. F. Weiss, Deep-Sea Research 17 (1970) 721, Bunsen coefficients, 0.4 %
// (constants read in a public program for sea water); and R. W. Hyland & A. Wexler, J.
// Res. Natl. Bur. Stand. 77A (1973) 133, table 3, 1 bar, 1e-6 mole fraction per bar (read).
func TestAirHeld(t *testing.T) {
	hyland := map[float64]float64{0: 18.65, 5: 16.42, 10: 14.89, 15: 13.51, 20: 12.52, 25: 11.61, 30: 10.88, 35: 10.23, 40: 9.67, 45: 9.27, 50: 8.90}
	for c, want := range hyland {
		T := c + chemistry.ZeroCelsius
		n, o := airHeld(T, 1/T)
		if x := n * chemistry.Water / 1000 * 100 * 1e6; math.Abs(x/want-1) > 0.03 {
			t.Errorf("nitrogen, %g °C: %g, want %g", c, x, want)
		}
		if c > 40 {
			continue
		}
		weiss := func(a1, a2, a3 float64) float64 { // mol/(kg·kPa), from litres of gas in a litre of water
			return math.Exp(a1+a2*100/T+a3*math.Log(T/100)) / 22.4 / 101.325 / (water(c) / 1000)
		}
		if want := weiss(-59.6274, 85.7761, 24.3696); math.Abs(n/want-1) > 0.025 {
			t.Errorf("nitrogen, %g °C: %g, want %g", c, n, want)
		}
		if want := weiss(-58.3877, 85.8079, 23.8439); math.Abs(o/want-1) > 0.02 {
			t.Errorf("oxygen, %g °C: %g, want %g", c, o, want)
		}
	}
	// 9.09 mg/L at 20 °C under air at 1 atm, the saturation table of every handbook of water
	// analysis (recalled from memory); argon is not in it.
	_, o := airHeld(293.15, 1/293.15)
	if x := o * 0.209476 * (101.325 - 2.339) * 31998 * 0.9982; math.Abs(x/9.09-1) > 0.015 {
		t.Errorf("oxygen at 20 °C: %g mg/L", x)
	}
	// ln(kH/GPa) at 300 K, IAPWS G7-04 table 5 (recalled from memory).
	n, o := airHeld(300, 1./300)
	for _, row := range [][2]float64{{n, 2.1716}, {o, 1.5024}} {
		if k := math.Log(1000 / chemistry.Water / row[0] / 1e6); math.Abs(k-row[1]) > 6e-5 {
			t.Errorf("at 300 K %g, want %g", k, row[1])
		}
	}
}
