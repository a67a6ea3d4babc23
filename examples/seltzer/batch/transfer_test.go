package batch

import (
	"testing"

	"example.org/zymase/units"
)

func TestTransfer(t *testing.T) {
	b := beer()
	v := must(b.Volume(at20)).In(units.Litre)
	s, left := one(b, Step{Kind: Transfer, Volume: units.Litre.Of(1.5), Share: per(98)})
	near(t, "left over", must(s.Volume(at20)).In(units.Litre), v-1.5, 1e-9)
	near(t, "yeast carried along", s.Yeast().In(units.Gram), 0.02*(1-1.5/v)*b.Yeast().In(units.Gram), 1e-9)
	near(t, "strength", must(s.Strength()).In(units.PercentVolume), must(b.Strength()).In(units.PercentVolume), 1e-12)
	near(t, "sediment and liquid", left.Sediment.grams()+left.Liquid.grams(), b.amount.grams()-s.amount.grams(), 1e-9)
	refused(t, b, Step{Kind: Transfer, Volume: units.Litre.Of(100)})
	refused(t, b, Step{Kind: Transfer, Share: per(101)})
}
