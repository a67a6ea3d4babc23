package batch

import (
	"testing"

	"example.org/zymase/carbonation"
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
	// By Henry's law, each gas alone: what a litre of the drink holds in air of the place is what it holds of each part of it.
	drink := must(s.Solution())
	nitrogen, oxygen, err := must(carbonation.NewLiquid(drink)).Aerated(kPa(101.325), b.t)
	if err != nil {
		t.Fatal(err)
	}
	dry := 101.325 - must(must(carbonation.NewLiquid(drink)).Pressure(units.CarbonDioxideContent{}, b.t)).In(units.Kilopascal)
	v, room := drink.VolumeAt20().In(units.Litre), p.Headspace.In(units.Litre)/(8.314462618*(b.t.In(units.Celsius)+273.15)) // mol for each kPa
	for _, g := range []struct {
		what string
		c    Component
		held float64 // mol for each kPa
	}{
		{"nitrogen", Nitrogen, nitrogen.In(units.GramPerLitre) * v / molar[Nitrogen] / (0.790524 * dry)},
		{"oxygen", Oxygen, oxygen.In(units.GramPerLitre) * v / molar[Oxygen] / (0.209476 * dry)},
	} {
		near(t, g.what, left.Gas[g.c]/b.Of(g.c), room/(room+g.held), 1e-5)
	}
	closes(t, b, s, left)
	near(t, "pressure above", after(b, Step{Kind: Open, Pressure: kPa(94)}).Above().Pressure.In(units.Kilopascal), 94, 1e-12)
	refused(t, s, Step{Kind: Open})
	full := b
	full.above.Capacity = must(b.Volume(at20))
	refused(t, full, Step{Kind: Open})
}
