package batch

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// 10 % of sucrose has a gravity of 1.0400 at 20/20 °C (ICUMSA SPS-4; the Plato table), and is
// 111.1 g in a kilogram of water: 0.325 mol.
func TestDissolve(t *testing.T) {
	kilo := must(FromWater(must(water.Profile{}.InAir()).Water(), units.Litre.Of(1/0.998203)))
	s := after(kilo, Step{Kind: Dissolve, What: "sucrose", Mass: units.Gram.Of(1000. / 9)})
	near(t, "gravity", must(s.Gravity()).SG(), 1.0400, 0.00005)
	u := Usual()
	u.Hydrometer = 0.5
	near(t, "shown by a hydrometer half a division too high", must(s.Shown(&u)), must(s.Gravity()).SG()+0.0005, 1e-12)
	near(t, "osmotic load", must(s.OsmoticLoad()), 111.11/342.297, 1e-4)
	near(t, "fermentable", s.Fermentable().In(units.Gram), 111.11, 0.01)
	v := must(s.Volume(at20)).In(units.Millilitre)
	near(t, "volume", v, 1111.11/1.03810, 0.1) // kg/m³, SPS-4
	refused(t, kilo, Step{Kind: Dissolve, What: "sucrose", Mass: units.Kilogram.Of(9)})
	refused(t, kilo, Step{Kind: Dissolve, What: "gypsum", Mass: units.Gram.Of(9)})
	if _, err := new(State).Profile(); err == nil {
		t.Error("nothing has a profile")
	}
	if _, err := new(State).OsmoticLoad(); err == nil {
		t.Error("nothing has an osmotic load")
	}
	if g, err := new(State).Gravity(); err != nil || g.SG() != 1 {
		t.Error("nothing has a gravity", g, err)
	}
	if _, err := FromWater(water.Profile{}, units.Litre.Of(1)); err == nil {
		t.Error("a water of unknown pH is taken")
	}
	if _, err := FromWater(well(), units.Volume{}); err == nil {
		t.Error("no volume is taken")
	}
	if all := must(FromWater(well(), units.Litre.Of(1))).Amounts(); math.Abs(all.Element(Charge)) > 1e-18 {
		t.Error("a water has a charge")
	}
}

// In a world where yeast leaves 2 % more of the sugar, that much of it is dextrin by mass; salts of a juice beyond the usual are charge.
func TestDissolveInOtherWorlds(t *testing.T) {
	u, s := Usual(), must(FromWater(well(), units.Litre.Of(10)))
	u.Left, u.Wash, u.Sugar, u.Scale = 2, 0.5, 0.3, 0.2
	d, left, err := Do(Step{Kind: Dissolve, What: "sucrose", Mass: units.Gram.Of(500), Salts: 0.04}, s, &u)
	if err != nil {
		t.Fatal(err)
	}
	closes(t, s, d, left)
	whole := 500 * 1.003 * 1.002 // g
	near(t, "sucrose", d.Of(Sucrose)*342.297, 0.98*whole, 1e-3)
	near(t, "dextrin", d.Of(Dextrin)*molar[Dextrin], 0.02*whole, 1e-6)
	near(t, "protons", d.Of(Proton)-s.Of(Proton), -0.5*0.04*0.5, 1e-12)
	near(t, "unnamed", d.Of(Unnamed)-s.Of(Unnamed), 0.5*0.04*0.5, 1e-12)
}
