package batch

import (
	"testing"

	"example.org/zymase/units"
)

// Half of each: strengths by volume meet in the middle, but for the contraction.
func TestBlend(t *testing.T) {
	w, b := must(FromWater(well(), units.Litre.Of(60))), beer()
	b.t = deg(10)
	s := after(b, Step{Kind: Blend, With: &w})
	a := must(b.Strength()).In(units.PercentVolume)
	near(t, "strength", must(s.Strength()).In(units.PercentVolume), a*must(b.Volume(at20)).In(units.Litre)/must(s.Volume(at20)).In(units.Litre), 1e-9)
	near(t, "temperature", s.Temperature().In(units.Celsius), 10+10*w.amount.grams()/(w.amount.grams()+b.amount.grams()), 1e-9)
	for _, l := range []float64{7.1, 12, 31.7} {
		if got := after(wash(), Step{Kind: Blend, With: &w, Volume: litres(l)}).Temperature(); got != wash().Temperature() || got != w.Temperature() {
			t.Errorf("%v of two liquids of 20 °C", got)
		}
	}
	near(t, "ten litres", must(after(b, Step{Kind: Blend, With: &w, Volume: units.Litre.Of(10)}).Volume(at20)).In(units.Litre),
		must(b.Volume(at20)).In(units.Litre)+10, 0.05)
	u := Usual()
	u.Level = 1
	more, _, err := Do(Step{Kind: Blend, With: &w, Volume: units.Litre.Of(10)}, State{}, &u)
	near(t, "by a level that shows 1 % too little", must(more.Volume(at20)).In(units.Litre), 10.1, 1e-9)
	if err != nil {
		t.Error(err)
	}
	refused(t, b, Step{Kind: Blend})
	refused(t, b, Step{Kind: Blend, With: &w, Volume: units.Litre.Of(61)})
}
