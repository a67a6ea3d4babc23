package batch

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// 18 L go into a keg of 19 L.
func TestFill(t *testing.T) {
	b := beer()
	s, left := one(b, Step{Kind: Fill, Volume: units.Litre.Of(18), Capacity: units.Litre.Of(19)})
	near(t, "in the keg", must(s.Volume(at20)).In(units.Litre), 18, 1e-9)
	pet := after(b, Step{Kind: Fill, Volume: units.Litre.Of(18), Capacity: units.Litre.Of(19), Stretch: per(1.5)}).Above()
	near(t, "stretch, % for a bar", pet.Stretch.In(units.Percent), 1.5, 1e-12)
	near(t, "capacity", pet.Capacity.In(units.Litre), 19, 1e-12)
	near(t, "left over", left.Liquid.grams(), b.amount.grams()-s.amount.grams(), 1e-6)
	refused(t, b, Step{Kind: Fill, Volume: units.Litre.Of(20), Capacity: units.Litre.Of(19)})
	refused(t, b, Step{Kind: Fill, Volume: units.Litre.Of(100), Capacity: units.Litre.Of(190)})
}

// A bottle that grows by 1 % for each bar has less pressure and less gas in the drink than one that does not, as much as
// package carbonation has it.
func TestFillStretches(t *testing.T) {
	pack := func(stretch float64) carbonation.PackState {
		s := after(beer(), Step{Kind: Prime, What: "white sugar", Mass: grams(7 * must(beer().Volume(at20)).In(units.Litre))},
			Step{Kind: Fill, Volume: units.Litre.Of(0.5), Capacity: units.Litre.Of(0.525), Stretch: per(stretch)}, Step{Kind: Close, Share: per(100)},
			Step{Kind: Ferment, Share: per(100)})
		return must(s.Pack(units.GaugePressure{}))
	}
	rigid, pet := pack(0), pack(1)
	// The head-space of 25 mL has 5 mL more for each bar.
	near(t, "head-space, mL", pet.Headspace.In(units.Millilitre)-rigid.Headspace.In(units.Millilitre), 5.25*pet.Gauge.In(units.BarGauge), 0.3)
	if pet.Gauge.Compare(rigid.Gauge) >= 0 || pet.Content.Compare(rigid.Content) >= 0 {
		t.Errorf("%v and %v, rigid %v and %v", pet.Gauge, pet.Content, rigid.Gauge, rigid.Content)
	}
	refused(t, beer(), Step{Kind: Fill, Volume: units.Litre.Of(0.5), Capacity: units.Litre.Of(0.525), Stretch: per(6)})
}
