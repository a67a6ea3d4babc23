package rival_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// Balling's own worked examples, Die Gährungschemie (1854/1865): complete attenuation, p =
// 12, n = 0, A = 6.190; beer test, p = 11.177, n = 5.550, A = 2.888. His arithmetic is by
// hand: the beer test, put back into his own formula, is 0.003 °P off.
func TestBallingWorkedExamples(t *testing.T) {
	near(t, "A", ok[units.StrengthByMass](t)(rival.StrengthBalling(plato(12), plato(0))).In(units.PercentMass), 6.190, 0.0006)
	near(t, "A", ok[units.StrengthByMass](t)(rival.StrengthBalling(plato(11.177), plato(5.550))).In(units.PercentMass), 2.888, 0.002)
	near(t, "p", ok[units.Extract](t)(rival.OriginalExtractBalling(massPct(2.888), plato(5.550))).In(units.DegreePlato), 11.177, 0.0035)
	near(t, "n", ok[units.Extract](t)(rival.RealExtractBalling(plato(11.177), massPct(2.888))).In(units.DegreePlato), 5.550, 0.0035)
}

func TestBallingRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 40).Draw(t, "original °P")
		n := p * rapid.Float64Range(0, 1).Draw(t, "left")
		a := ok[units.StrengthByMass](t)(rival.StrengthBalling(plato(p), plato(n)))
		if a.In(units.PercentMass) > 20 {
			return
		}
		near(t, "original", ok[units.Extract](t)(rival.OriginalExtractBalling(a, plato(n))).In(units.DegreePlato), p, 1e-9*p)
		near(t, "real", ok[units.Extract](t)(rival.RealExtractBalling(plato(p), a)).In(units.DegreePlato), n, 1e-9*p)
	})
}

func TestBallingRefuses(t *testing.T) {
	for _, a := range []float64{20.1, -0.1, math.NaN()} {
		_, err := rival.OriginalExtractBalling(massPct(a), plato(1))
		edges(t, err, "strength", 0, 20)
	}
	_, err := rival.OriginalExtractBalling(massPct(5), plato(40.1))
	edges(t, err, "real extract", 0, 40)
	_, err = rival.StrengthBalling(plato(40.1), plato(1))
	edges(t, err, "original extract", 0, 40)
	_, err = rival.StrengthBalling(plato(10), plato(10.1))
	edges(t, err, "real extract", 0, 10)
	_, err = rival.RealExtractBalling(plato(12), massPct(7))
	edges(t, err, "strength", 0, 12/(2.0665-0.12798)) // all of 12 °P
	_, err = rival.RealExtractBalling(plato(41), massPct(1))
	edges(t, err, "original extract", 0, 40)
}
