package plan_test

import (
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What goes on over the days begins as the wash and ends at the plan's own figures: nothing made and all the
// sugar there, then the strength of the base and hardly any sugar. Every point lies within its bands, the
// darker within the lighter.
func TestCurvesOverTheDays(t *testing.T) {
	p, curves, err := plan.MakeWithCurves(request(t))
	if err != nil {
		t.Fatal(err)
	}
	points := p.Acidity.Points
	dry := points[len(points)-1]
	ends := map[string][2]float64{ // at the start, and at the end to a twentieth of the way
		"Strength over the days":   {0, dry.Strength.In(units.PercentVolume)},
		"Sugar left over the days": {p.Nutrient.Sugar.In(units.GramPerLitre), 0},
		"pH over the days":         {points[0].PH, dry.PH},
	}
	for _, c := range curves {
		for i, at := range c.Points {
			if len(c.Inner) == 0 {
				break
			}
			wide, dark := c.LowerUpper[i], c.Inner[i]
			if !(wide[1] <= dark[1]+1e-9 && dark[1] <= at[1]+1e-9 && at[1] <= dark[2]+1e-9 && dark[2] <= wide[2]+1e-9) {
				t.Errorf("%s after %.1f days: %v, %v, %v", c.Title, at[0], wide, dark, at)
			}
		}
		want, ok := ends[c.Title]
		if !ok {
			continue
		}
		delete(ends, c.Title)
		first, last := c.Points[0][1], c.Points[len(c.Points)-1][1]
		way := max(want[0]-want[1], want[1]-want[0])
		near(t, c.Title+", start", first, want[0], way/50) // the forecast's own blur
		near(t, c.Title+", end", last, want[1], way/20)
	}
	if len(ends) > 0 {
		t.Errorf("not drawn: %v", ends)
	}
}
