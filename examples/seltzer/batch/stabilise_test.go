package batch

import (
	"testing"

	"example.org/zymase/units"
)

// Potassium metabisulfite brings 57.6 % of its mass as SO2, sodium's 67.4; potassium sorbate 74.6 % as sorbic acid (handbooks of wine making).
func TestStabilise(t *testing.T) {
	b := beer()
	for _, c := range []struct {
		what  string
		of    Component
		molar float64
		share float64
	}{{"potassium metabisulfite", Sulfite, 64.06, 0.576}, {"sodium metabisulfite", Sulfite, 64.06, 0.674}, {"potassium sorbate", Sorbate, 112.13, 0.746}} {
		s := after(b, Step{Kind: Stabilise, What: c.what, Mass: units.Gram.Of(10)})
		near(t, c.what, s.Of(c.of)*c.molar, 10*c.share, 0.01)
	}
	refused(t, b, Step{Kind: Stabilise, What: "white sugar"})
}
