package batch

import (
	"testing"

	"example.org/zymase/units"
)

// 18 L go into a keg of 19 L.
func TestFill(t *testing.T) {
	b := beer()
	s, left := one(b, Step{Kind: Fill, Volume: units.Litre.Of(18), Capacity: units.Litre.Of(19)})
	near(t, "in the keg", must(s.Volume(at20)).In(units.Litre), 18, 1e-9)
	near(t, "left over", left.Liquid.grams(), b.amount.grams()-s.amount.grams(), 1e-6)
	refused(t, b, Step{Kind: Fill, Volume: units.Litre.Of(20), Capacity: units.Litre.Of(19)})
	refused(t, b, Step{Kind: Fill, Volume: units.Litre.Of(100), Capacity: units.Litre.Of(190)})
}
