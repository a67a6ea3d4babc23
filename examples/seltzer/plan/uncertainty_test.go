package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A strength that is planned no better than a label may be off is to be measured first. The
// yield alone is good to 3 %: 0.28 % vol (k = 2) of 4.6, 0.5 of 8.
func TestLabelWantsAMeasurement(t *testing.T) {
	told := func(p plan.Plan) bool {
		for _, c := range p.Cautions {
			if strings.HasPrefix(c, "The strength is planned to ± ") {
				return true
			}
		}
		return false
	}
	r := request(t)
	if p := made(t, r); told(p) {
		t.Errorf("%q", p.Cautions)
	}
	r.Strength = units.PercentVolume.Of(8)
	if p := made(t, r); !told(p) {
		t.Errorf("%q", p.Cautions)
	}
}
