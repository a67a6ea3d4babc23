package plan

import (
	"math"
	"os"
	"path/filepath"
	"testing"

	"example.org/zymase/units"
)

// Each pack holds its volume, and as much ethanol as the plan says, as the batch carries it: of malt, honey, fruit and sugar.
// What is done to a wine or a cider after its ferment the search does not see: malic acid that turns into lactic takes two
// thousandths of a cider's volume.
func TestPacksHaveTheirVolumeAndStrength(t *testing.T) {
	names, err := filepath.Glob("../drinks/*.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range append(names, "../request.json") {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		r, err := ParseRequest(text)
		if err != nil {
			t.Fatal(err)
		}
		m, err := newMaker(r)
		if err != nil {
			t.Fatal(err)
		}
		off := 4e-4
		if m.plan.After != nil {
			off = 2e-3
		}
		for i, k := range m.batch.packed {
			p := m.recipe.packs[i]
			for what, x := range map[string][2]float64{
				"L":     {k.drink.VolumeAt20().In(units.Litre), p.Volume.In(units.Litre)},
				"% vol": {k.drink.ByVolume().In(units.PercentVolume), m.batch.strength * p.ratio},
			} {
				if is, want := x[0], x[1]; !(math.Abs(is/want-1) < off) {
					t.Errorf("%s, %s: %.4f %s in the batch, %.4f in the plan", filepath.Base(name), p.field, is, what, want)
				}
			}
		}
	}
}
