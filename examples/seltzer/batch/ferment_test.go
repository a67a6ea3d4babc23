package batch

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Pasteur's balance of 1860: 100 g of sucrose, 105.26 g of hexose, gave 51.11 g of ethanol, 49.42 g of CO2,
// 3.16 g of glycerol, 0.67 g of succinic acid and about 1 g of yeast (recalled from memory). Here no
// ethanol is lost, and the nitrogen carries 1.0 g of yeast.
func TestFermentAsPasteur(t *testing.T) {
	u := Usual()
	u.Lost, u.Acids = 0, 0
	s := after(must(FromWater(must(water.Profile{}.InAir()).Water(), units.Litre.Of(1))),
		Step{Kind: Dissolve, What: "sucrose", Mass: units.Gram.Of(100)}, Step{Kind: Feed, What: "DAP", Mass: units.Gram.Of(0.064 / 0.2121)})
	b, left, err := Do(Step{Kind: Ferment, Share: per(100)}, s, &u)
	if err != nil {
		t.Fatal(err)
	}
	g := func(c Component) float64 { return b.Of(c) * c.MolarMass() }
	near(t, "ethanol", g(Ethanol), 51.11, 0.6)
	near(t, "CO2", (b.Of(CarbonDioxide)+left.Gas[CarbonDioxide])*CarbonDioxide.MolarMass(), 49.42, 0.6)
	near(t, "glycerol", g(Glycerol), 3.16, 0.001)
	near(t, "succinic acid", b.Of(Succinate)*118.088, 0.67, 0.001)
	near(t, "yeast", b.Yeast().In(units.Gram), 1.0, 0.001)
	near(t, "sugar", b.Fermentable().In(units.Gram), 0, 1e-12)
	near(t, "nitrogen left", b.Of(Ammonium), 0, 1e-12)
}

// The usual loss is that of wine law: 16.83 g/L of hexose make 1 % vol, so that the 4.3 kg of
// sugar, 4.526 kg of hexose, make 268.9 L of 1 % vol.
func TestFermentAsWineLaw(t *testing.T) {
	b := beer()
	sugar := wash().Fermentable().In(units.Gram)
	near(t, "% vol × L", must(b.Strength()).In(units.PercentVolume)*must(b.Volume(at20)).In(units.Litre), 1.05263*sugar/16.83, 0.005*268.9)
	// All the nitrogen is taken, and carries yeast of 6.4 % beside the 40 g that were pitched.
	near(t, "yeast grown", b.Yeast().In(units.Gram)-40, wash().Of(Ammonium)*14.007/0.064, 1e-6)
	// It keeps the gas that it holds under its own, 1.57 g/L at 20 °C and 101.3 kPa in 4.5 % vol (1.69 g/kg of water, CRC Handbook).
	near(t, "CO2", must(b.Content()).In(units.GramCO2PerLitre), 1.69*0.945*0.98, 0.04)
	if ph := must(b.PH()); ph < 3.2 || ph > 4.2 {
		t.Errorf("pH %g", ph)
	}
	// A pack keeps all that is made.
	if _, left := one(closedBottle(), Step{Kind: Ferment, Share: per(100)}); left.Out() != (Amounts{}) {
		t.Error("gas leaves a closed pack")
	}
	refused(t, wash(), Step{Kind: Ferment, Share: per(120)})
}

// With its gas kept a liquid has the gravity, the strength and the yeast that it has without, and all the CO2 that was made.
func TestFermentWithItsGasKept(t *testing.T) {
	u, s := Usual(), wash()
	open, left, err := Do(Step{Kind: Ferment, Share: per(60)}, s, &u)
	if err != nil {
		t.Fatal(err)
	}
	kept, none, err := Do(Step{Kind: Ferment, Share: per(60), Gas: true}, s, &u)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "gravity", must(kept.Gravity()).SG(), must(open.Gravity()).SG(), 1e-12)
	near(t, "strength", must(kept.Strength()).In(units.PercentVolume), must(open.Strength()).In(units.PercentVolume), 1e-12)
	near(t, "yeast", kept.Yeast().In(units.Gram), open.Yeast().In(units.Gram), 1e-12)
	near(t, "CO2", kept.Of(CarbonDioxide), open.Of(CarbonDioxide)+left.Gas[CarbonDioxide], 1e-9)
	near(t, "CO2 given off", none.Gas[CarbonDioxide], 0, 0)
	near(t, "ethanol given off", none.Gas[Ethanol], left.Gas[Ethanol], 1e-12)
}

// What is lost of the ethanol is that share of what the atoms give, and all else is as it was.
func TestFermentLosesEthanol(t *testing.T) {
	u, s := Usual(), wash()
	u.Lost = 0
	all, _, err := Do(Step{Kind: Ferment, Share: per(100), Gas: true}, s, &u)
	if err != nil {
		t.Fatal(err)
	}
	u.Lost = 4
	less, left, err := Do(Step{Kind: Ferment, Share: per(100), Gas: true}, s, &u)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "kept", less.Of(Ethanol), 0.96*all.Of(Ethanol), 1e-9)
	near(t, "lost", left.Gas[Ethanol], 0.04*all.Of(Ethanol), 1e-9)
	closes(t, s, less, left)
}
