package batch

import (
	"testing"

	"example.org/zymase/units"
)

// What is in the drink stays, what stands above it goes: of 2 g of gas in a bottle of 4 % head-space some 2 to 4 %.
func TestOpen(t *testing.T) {
	b := after(closedBottle(), Step{Kind: Ferment, Share: per(100)})
	p := must(b.Pack(units.GaugePressure{}))
	s, left := one(b, Step{Kind: Open})
	near(t, "kept", s.Of(CarbonDioxide)*44.009, p.InLiquid.In(units.Gram), 0.006*p.InLiquid.In(units.Gram)) // and what is bound
	near(t, "gone", left.Gas[CarbonDioxide]*44.009, p.InSpace.In(units.Gram), 1e-9)
	near(t, "content", must(s.Content()).In(units.GramCO2PerLitre), p.Content.In(units.GramCO2PerLitre), 0.01)
	// Air stands above the drink rather than in it: of 15 mL at rest with 330 mL nearly three quarters of the nitrogen, half of the oxygen.
	near(t, "nitrogen gone", left.Gas[Nitrogen]/b.Of(Nitrogen), 0.73, 0.04)
	near(t, "oxygen gone", left.Gas[Oxygen]/b.Of(Oxygen), 0.58, 0.05)
	refused(t, s, Step{Kind: Open})
	full := b
	full.above.Capacity = must(b.Volume(at20))
	refused(t, full, Step{Kind: Open})
}
