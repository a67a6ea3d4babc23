package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A base of 11.2 % vol let down: the ethanol stays what it was, and the whole base is used.
func TestMadeBase(t *testing.T) {
	r := kindOf(t, "strong_base")
	r.Flavour = nil
	p := made(t, r)
	near(t, "taken", p.Base.Taken.In(units.Litre), 10-0.3, 1e-6)
	ethanol := 0.0 // L: of 1 g of sugar 1/16.0 % vol in a litre (16.83 g of hexose, sucrose 0.95 of it)
	for i, k := range p.Packs {
		share := r.Packs[i].Volume.In(units.Litre) / 22 * p.Volume.In(units.Litre)
		ethanol += share * k.Strength.In(units.PercentVolume) / 100
		if k.Bottle != nil {
			ethanol -= k.Bottle.Priming.Asked.In(units.Gram) / 15.99 / 100
		}
		// Water of little alkalinity moves a drink that is buffered by its acids but little.
		if ph := k.PH.Without; ph < 3.55 || ph > 3.8 {
			t.Errorf("pH %v", ph)
		}
	}
	near(t, "ethanol, L", ethanol, 9.7*0.112, 0.002)
	sum := func(lines []plan.Line) (kg float64) {
		for _, l := range lines {
			kg += l.Mass.In(units.Kilogram)
		}
		return kg
	}
	near(t, "mass", sum(p.Balance.In), sum(p.Balance.Out), 1e-9)

	// A volume asked for leaves what it does not take.
	r.Volume = p.Volume
	r.Packs = append([]plan.Pack(nil), r.Packs...)
	r.Packs[1].Volume = units.Litre.Of(2)
	r.Packs[0].Volume = p.Volume.Minus(r.Packs[1].Volume)
	q := made(t, r)
	// A litre less of 6 % vol, of which 0.34 by its primer, and one more of 5: 0.06 L of base less or so.
	near(t, "left", q.Base.Left.In(units.Litre), 0.05, 0.05)

	// A gravity above that of a dry base is sugar: 10 g/L of it raise it by 0.0039 (ICUMSA).
	r = kindOf(t, "strong_base")
	r.Packs = r.Packs[:1]
	r.AtHand.Base.Gravity += 0.0039
	some := made(t, r).Base.Sugar.In(units.GramPerLitre)
	r.AtHand.Base.Gravity += 0.0039
	near(t, "hidden sugar", made(t, r).Base.Sugar.In(units.GramPerLitre)-some, 10, 0.2)
	if !strings.Contains(made(t, r).Cautions[0], "it may hold") {
		t.Error(made(t, r).Cautions[0])
	}
}

// What a base cannot be is refused by its field, with what can.
func TestRefusedBase(t *testing.T) {
	for _, c := range []struct {
		change func(*plan.Request)
		says   string
	}{
		{func(r *plan.Request) { r.Strength = units.PercentVolume.Of(12) }, "strength: 12.0 % vol: at most the 11.2 % vol that the base has"},
		{func(r *plan.Request) {
			r.Volume, r.Packs = units.Litre.Of(40), r.Packs[:1]
			r.Packs[0].Volume = r.Volume
		}, "at_hand.base.volume: 10 L: at least 18."},
		{func(r *plan.Request) { r.AtHand.Base.Gravity = 0.98 }, "at_hand.base.gravity: 0.98: at least the 0.98"},
		{func(r *plan.Request) { r.AtHand.Base.Gravity = 1.2 }, "at_hand.base.gravity: 1.2: 0.95 to 1.1"},
		{func(r *plan.Request) { r.AtHand.Base.PH = new(8.0) }, "at_hand.base.pH: 8: 2.5 to 7, or left out"},
		{func(r *plan.Request) { r.AtHand.Base.Volume = new(units.Millilitre.Of(300)) }, "at_hand.base.volume: 0.3 L: more"},
		{func(r *plan.Request) { r.Fermentable = "white sugar" }, "fermentable: given: left out"},
		{func(r *plan.Request) { r.AtHand.Sugar = new(units.Kilogram.Of(1)) }, "at_hand.sugar: given: left out"},
		{func(r *plan.Request) { r.Kettle.Boil = plan.Duration(600e9) }, "kettle: given: left out"},
	} {
		r := kindOf(t, "strong_base")
		c.change(&r)
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c.says) {
			t.Errorf("%v, want %s", err, c.says)
		}
	}
	// Without a base what brews one is asked for.
	if _, err := plan.ReadRequest([]byte(`{"name":"x","place":{"altitude":"0 m"}}`)); err == nil || !strings.HasPrefix(err.Error(), "fermentable: missing") {
		t.Error(err)
	}
}
