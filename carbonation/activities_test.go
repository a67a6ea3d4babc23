package carbonation

import (
	"math"
	"testing"
)

// Carey & Lewis, Ind. Eng. Chem. 24 (1932) 882, as in Perry's Handbook: mole
// fraction of ethanol in the liquid and in its vapour, temperature at which it boils
// under 1 atm; recalled from memory.
func TestActivitiesAgainstBoiling(t *testing.T) {
	for _, row := range []struct{ x, y, celsius float64 }{{0.0190, 0.1700, 95.5}, {0.0721, 0.3891, 89.0}, {0.0966, 0.4375, 86.7}} {
		aw, ae := activities(1-row.x, row.x, 0)
		T := row.celsius + 273.15
		water, ethanol := aw*waterVapour(T, 1/T), ae*ethanolVapour(T)
		if p := water + ethanol; math.Abs(p-101.325) > 2.5 {
			t.Errorf("x = %g boils at %.2f kPa", row.x, p)
		}
		if y := ethanol / (water + ethanol); math.Abs(y-row.y) > 0.012 {
			t.Errorf("x = %g: vapour has %.4f, printed %.4f", row.x, y, row.y)
		}
	}
}

// Without ethanol, Raoult's law; sugar thins both.
func TestActivitiesLimits(t *testing.T) {
	if aw, ae := activities(2, 0, 1); aw != 2.0/3 || ae != 0 {
		t.Errorf("no ethanol: %g, %g", aw, ae)
	}
	aw, ae := activities(50, 1, 0)
	bw, be := activities(50, 1, 51)
	if math.Abs(bw/aw-0.5) > 1e-12 || math.Abs(be/ae-0.5) > 1e-12 {
		t.Errorf("sugar: %g of %g, %g of %g", bw, aw, be, ae)
	}
	// At infinite dilution ethanol's activity coefficient is e^1.6798 and water's, in ethanol, e^0.9227.
	if _, e := activities(1, 1e-9, 0); math.Abs(e/1e-9-math.Exp(1.6798)) > 1e-6 {
		t.Errorf("ethanol at infinite dilution: %g", e/1e-9)
	}
	if w, _ := activities(1e-9, 1, 0); math.Abs(w/1e-9-math.Exp(0.9227)) > 1e-6 {
		t.Errorf("water at infinite dilution: %g", w/1e-9)
	}
}
