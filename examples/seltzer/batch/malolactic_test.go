package batch

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// 134.09 g of malic acid become 90.08 g of lactic acid and 44.01 g of CO2; half of the acidity goes, so that the pH
// rises.
func TestMalolactic(t *testing.T) {
	wine := after(beer(), Step{Kind: Acidify, What: "malic acid", Mass: units.Gram.Of(134.087)})
	s, left := one(wine, Step{Kind: Malolactic, Share: per(100)})
	closes(t, wine, s, left)
	near(t, "malic acid", s.Of(Malate), 0, 1e-9)
	near(t, "lactic acid", s.Of(Lactate)-wine.Of(Lactate), 1, 1e-4)
	near(t, "gas", s.Of(CarbonDioxide)+left.Gas[CarbonDioxide]-wine.Of(CarbonDioxide), 1, 1e-4)
	near(t, "nothing else leaves", left.Gas.grams(), left.Gas[CarbonDioxide]*molar[CarbonDioxide], 1e-9)
	acidity := func(s State) float64 { // by the litre of water, to pH 8.2
		return must(must(s.Profile()).TitratableAcidity(water.Titration{End: 8.2, As: water.HydrochloricAcid})).In(units.MilligramPerLitre) / 36.458
	}
	near(t, "acidity, mEq/L", acidity(wine)-acidity(s), 1000/s.litresOfWater(), 0.05)
	if before, now := must(wine.PH()), must(s.PH()); now <= before {
		t.Errorf("pH %.2f, then %.2f", before, now)
	}
	half := after(wine, Step{Kind: Malolactic, Share: per(50)})
	near(t, "half", half.Of(Malate), wine.Of(Malate)/2, 1e-9)
	if same := after(beer(), Step{Kind: Malolactic, Share: per(100)}); same != beer() {
		t.Error("without malic acid something is done")
	}
	refused(t, wine, Step{Kind: Malolactic, Share: per(101)})
}
