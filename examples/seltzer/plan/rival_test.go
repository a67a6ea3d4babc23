package plan

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Each published way from original and apparent extract to the strength of a malt beer lies within what is drawn
// for Balling's yield, the end of its triangle, which is not twice as wide as they part.
func TestDrawsReachTheStrengthMethods(t *testing.T) {
	farthest, compared := 0.0, 0
	reach := math.Sqrt(6) * maltSpread
	for original := 8.0; original <= 16; original += 2 {
		for _, left := range []float64{0.1, 0.2, 0.3} {
			o, err1 := units.DegreePlato.Try(original)
			a, err2 := units.DegreePlato.Try(original * left)
			if err1 != nil || err2 != nil {
				t.Fatal(err1, err2)
			}
			ways, err := gravity.StrengthMethods(o, a)
			if err != nil {
				t.Fatal(err)
			}
			for _, way := range ways[1:] {
				compared++
				d := way.ByMass.In(units.PercentMass)/ways[0].ByMass.In(units.PercentMass) - 1
				farthest = max(farthest, math.Abs(d))
				if math.Abs(d) > reach {
					t.Errorf("%s, %g to %.1f °P: %+.1f %% of ours, %.1f is drawn", way.Name, original, original*left, 100*d, 100*reach)
				}
			}
		}
	}
	if compared < 40 || farthest < reach/2 {
		t.Errorf("%d compared, they part by %.1f %%, %.1f is drawn: more than they know", compared, 100*farthest, 100*reach)
	}
}
