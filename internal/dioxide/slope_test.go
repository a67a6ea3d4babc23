package dioxide

import (
	"math"
	"testing"
)

// The slope of Z is its difference quotient; a quotient of a cubic about its middle is off by D·step² alone.
func TestSlopeIsTheDifferenceQuotient(t *testing.T) {
	s := Series{B: -5e-5, C: -3e-9, D: 4e-13}
	for _, p := range []float64{0, 100, 1000, 5000} {
		const step = 10
		want := (s.Compressibility(p+step) - s.Compressibility(p-step)) / (2 * step)
		if got := s.Slope(p); math.Abs(got-want) > 1e-9*math.Abs(want)+s.D*step*step {
			t.Errorf("at %g kPa: %g, want %g", p, got, want)
		}
	}
}
