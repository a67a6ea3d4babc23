package batch

import (
	"testing"

	"example.org/zymase/units"
)

// The ethanol stays: strength by mass falls as the mass grows.
func TestDilute(t *testing.T) {
	b := beer()
	s := after(b, Step{Kind: Dilute, Mass: units.Kilogram.Of(20)})
	a, d := must(b.Solution()), must(s.Solution())
	near(t, "% mass", d.ByMass().In(units.PercentMass), a.ByMass().In(units.PercentMass)*a.Mass().In(units.Kilogram)/(a.Mass().In(units.Kilogram)+20), 1e-9)
}
