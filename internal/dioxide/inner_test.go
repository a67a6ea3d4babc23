package dioxide

import (
	"math"
	"testing"

	"example.org/zymase/internal/chemistry"
)

func TestLogKelvinIsMathLog(t *testing.T) {
	for T := 271.15; T <= 363.15; T += 0.5 {
		if got, want := logKelvin(T), math.Log(T); math.Abs(got-want) > 1.5e-13 {
			t.Errorf("ln %g: %v, want %v", T, got, want)
		}
	}
}

// The series in pressure is the reversion of Z = 1 + Bρ + Cρ² but for p⁴, and its ln φ is
// the integral of (Z−1)/p.
func TestSeriesIsReversion(t *testing.T) {
	for _, celsius := range []float64{-10, 0, 20, 60, 100} {
		T := celsius + chemistry.ZeroCelsius
		B, C := Virials(1 / T)
		s := GasAt(1 / T)
		for _, p := range []float64{50, 150, 300} {
			rho := p / (chemistry.Gas * T)
			for range 200 {
				rho = p / (chemistry.Gas * T * (1 + B*rho + C*rho*rho))
			}
			if z := 1 + B*rho + C*rho*rho; math.Abs(s.Compressibility(p)-z) > 4*math.Pow(-s.B*p, 4) {
				t.Errorf("%g °C, %g kPa: Z %.9f, want %.9f", celsius, p, s.Compressibility(p), z)
			}
		}
		const p, h = 1500, 1
		slope := (s.LogFugacity(p+h) - s.LogFugacity(p-h)) / (2 * h)
		if want := (s.Compressibility(p) - 1) / p; math.Abs(slope/want-1) > 1e-6 {
			t.Errorf("%g °C: slope of ln φ %g, want %g", celsius, slope, want)
		}
	}
}
