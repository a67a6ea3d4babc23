package batch

import (
	"testing"

	"example.org/zymase/units"
)

// 0.6 mL of 40 % vol in 200 mL of 4.6 % vol: (200·4.6 + 0.6·40)/200.6 = 4.706 % vol.
func TestFlavour(t *testing.T) {
	b := beer()
	v, a := must(b.Volume(at20)).In(units.Litre), must(b.Strength()).In(units.PercentVolume)
	added := 0.003 * v
	s := after(b, Step{Kind: Flavour, Volume: litres(added), Strength: units.PercentVolume.Of(40)})
	near(t, "strength", must(s.Strength()).In(units.PercentVolume), (v*a+added*40)/(v+added), 0.002)
	sweet := after(b, Step{Kind: Flavour, Volume: units.Litre.Of(1), Sugar: units.GramPerLitre.Of(600)})
	near(t, "sugar", sweet.Fermentable().In(units.Gram), 600, 1e-6)
	refused(t, b, Step{Kind: Flavour, Volume: units.Litre.Of(1), Sugar: units.GramPerLitre.Of(900)})
	refused(t, b, Step{Kind: Flavour, Volume: units.Litre.Of(1).Minus(units.Litre.Of(2))})
}
