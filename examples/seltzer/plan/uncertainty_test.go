package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A strength that is planned no better than a label may be off is to be measured first. By hand: of what the
// atoms give 2.5 % is lost, 0 to 8 % by a triangle, so a mean square of (2.5² + 5.5² − 2.5·5.5)/6 = 1.95² about
// the usual; a level good to 1 % (as 0.5 L of 57) is 0.6 % at most, white sugar 0.1 %. Together 2.0 to 2.1 %, or 0.19 % vol
// (k = 2) of 4.6, 0.33 of 8.
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
	p := made(t, r)
	if told(p) {
		t.Errorf("%q", p.Cautions)
	}
	near(t, "± at k = 2", p.Uncertainty.Planned.In(units.PercentVolume), 0.19, 0.01)
	r.Strength = units.PercentVolume.Of(8)
	if p := made(t, r); !told(p) {
		t.Errorf("%q", p.Cautions)
	}
}

// Two readings are as sure as the library says with its yield, not as their division alone.
// By hand for 4.6 % vol: 0.1345 % vol a thousandth (34.2 thousandths for 4.60), division/√12 in
// each of two. A gram a litre of sugar used takes 0.000386 of gravity with it and leaves 0.494 g of
// ethanol, 0.000088 more (0.0014 a % vol): 2 % more ethanol (1.95 of 97.5) are 0.4 % less sugar
// between two known gravities, so 1.6 % of the strength. At k = 2 0.147 of that: with 0.0001 0.147, with 0.001 0.184,
// with 0.002 0.265.
func TestStrengthByHydrometerCountsTheYield(t *testing.T) {
	for division, want := range map[float64]float64{0.001: 0.184, 0.002: 0.265, 0.0001: 0.147, 0.005: 0.57} {
		r := request(t)
		instruments := *r.Instruments
		instruments.Hydrometer = division
		r.Instruments = &instruments
		u := made(t, r).Uncertainty
		near(t, "± at k = 2", u.ByHydrometer.In(units.PercentVolume), want, max(0.012, 0.04*want))
		near(t, "capability", u.Capability, 0.3/u.ByHydrometer.In(units.PercentVolume), 1e-9)
		if u.Supports != (division < 0.005) {
			t.Errorf("division %v: ± %v supports ±0.3: %v", division, u.ByHydrometer, u.Supports)
		}
	}
	r := request(t)
	r.Instruments = nil
	if u := made(t, r).Uncertainty; u.Division != 0.002 || u.Capability > 1.2 {
		t.Errorf("a common hydrometer hardly supports a label: %+v", u)
	}
}
