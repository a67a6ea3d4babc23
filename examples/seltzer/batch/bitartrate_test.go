package batch

import (
	"testing"

	"example.org/zymase/units"
)

// Grapes fermented and chilled: what settles holds as much potassium as tartaric acid and half of its protons, and what
// is left lets no more go. Half of the way brings half of it down. A cider has no tartaric acid.
func TestBitartrate(t *testing.T) {
	juice := after(State{t: deg(20)}, Step{Kind: Blend, With: &State{amount: Amounts{Water: 1}, t: deg(20)}},
		Step{Kind: Dissolve, Own: grapes(), Mass: units.Kilogram.Of(100)})
	wine := after(juice, Step{Kind: Ferment, Share: per(100)}, Step{Kind: Chill, Temperature: deg(2)})
	s, left := one(wine, Step{Kind: Settle, Share: per(100)})
	n := left.Sediment[Tartrate]
	if n < 0.1 || n > wine.Of(Tartrate) { // of 3.4 mol
		t.Fatalf("%.3f mol of %.3f settle", n, wine.Of(Tartrate))
	}
	most := must(must(wine.Profile()).CreamOfTartar()).In(units.GramPerLitre) * wine.litresOfWater() / 188.177
	near(t, "as package water has it", n, most, 1e-5*most)
	near(t, "potassium", left.Sediment[Potassium], n, 1e-12)
	near(t, "grams", left.Sediment.grams(), 188.177*n, 0.01)
	near(t, "charge", left.Sediment.Element(Charge), 0, 1e-12)
	again, more := one(s, Step{Kind: Settle, Share: per(100)})
	near(t, "again", more.Sediment[Tartrate], 0, 1e-3*n)
	near(t, "again", again.Of(Tartrate), s.Of(Tartrate), 1e-3*n)
	near(t, "half of the way", after(wine, Step{Kind: Settle, Share: per(50)}).Of(Tartrate), wine.Of(Tartrate)-n/2, 1e-9)
	if cider := after(beer(), Step{Kind: Chill, Temperature: deg(2)}); after(cider, Step{Kind: Settle, Share: per(100)}) != cider {
		t.Error("without tartaric acid something is done")
	}
	refused(t, wine, Step{Kind: Settle, Share: per(-1)})
	refused(t, after(wine, Step{Kind: Warm, Temperature: deg(25)}), Step{Kind: Settle, Share: per(50)})
}
