package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// The demand for nitrogen is that of the request, or, where that leaves it out, that of the strain's own sheet; two
// that differ are told of, and none at all is refused.
func TestDemandOfTheStrain(t *testing.T) {
	wanted := func(batch, sheet string) (mg float64, told bool) {
		r := request(t)
		r.Nutrient.Demand, r.Yeast.Strain = batch, &plan.Strain{Name: "The strain", Demand: sheet}
		p := made(t, r)
		return p.Nutrient.Need.In(units.MilligramPerLitre), strings.Contains(strings.Join(p.Cautions, "\n"), "The strain has a "+sheet+" demand")
	}
	high, _ := wanted("high", "high")
	// A low demand is 0.75 of 1.25 mg a gram of sugar: a rule of the wine trade, recalled from memory.
	for _, c := range []struct {
		batch, sheet string
		as           float64
		told         bool
	}{{"", "high", 1, false}, {"high", "", 1, false}, {"low", "high", 0.6, true}} {
		if mg, told := wanted(c.batch, c.sheet); told != c.told || mg < 0.99*c.as*high || mg > 1.01*c.as*high {
			t.Errorf("%+v: %.1f of %.1f mg/L, told of: %v", c, mg, high, told)
		}
	}
	r := request(t)
	r.Nutrient.Demand = ""
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "nutrient.demand: missing") {
		t.Error(err)
	}
}
