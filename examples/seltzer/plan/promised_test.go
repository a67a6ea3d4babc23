package plan_test

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"

	"pgregory.net/rapid"
)

// samePH is how far the pH of a plan may lie from that of its batch with the usual yield, where its own is another.
const samePH = 0.02

// What a plan promises is what its batch shows when it is carried forward, step by step, with the weights as
// the scale shows them and the usual figures of all that is not known.
func TestPromisedIsCarried(t *testing.T) {
	start := request(t)
	rapid.Check(t, func(t *rapid.T) {
		r := drawRequest(t, start)
		p, err := plan.Make(r)
		if err != nil {
			t.Fatal(err)
		}
		drawn, err := plan.Draw(r, 10)
		if err != nil {
			t.Fatal(err)
		}
		keg, off := 0, 0.012
		if r.Fermentable == "honey" || r.Fermentable == "dry malt extract" {
			off = 0.04
		}
		for _, d := range drawn {
			switch {
			case strings.HasPrefix(d.What, "strength"):
				// 2.5 % of the ethanol lost is the yield of wine law where the nitrogen is usual. A pack
				// loses nothing: of the 0.4 % vol of a primer 6 % more. Malt and honey have another yield.
				if want := p.Strength.In(units.PercentVolume); math.Abs(d.Usual-want) > off*want+0.03 {
					t.Errorf("%s %.3f, %.3f in the plan", d.What, d.Usual, want)
				}
			case strings.HasPrefix(d.What, "content of the kegs"):
				for p.Packs[keg].Bottle != nil {
					keg++
				}
				if want := p.Packs[keg].Content.In(units.GramCO2PerLitre); math.Abs(d.Usual/want-1) > off/2 {
					t.Errorf("%s %.3f, %.3f in the plan", d.What, d.Usual, want)
				}
				keg++
			case strings.HasPrefix(d.What, "pH"):
				end := p.Acidity.Points[len(p.Acidity.Points)-1]
				if math.Abs(d.Usual-end.PH) > samePH {
					t.Errorf("%s %.3f, %.3f in the plan", d.What, d.Usual, end.PH)
				}
			}
		}
	})
}
