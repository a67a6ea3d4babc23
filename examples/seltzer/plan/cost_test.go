package plan_test

import (
	"slices"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A thing that is weighed twice and has no price is told once; a price for what the batch
// does not take is told too.
func TestPricesThatDoNotMeet(t *testing.T) {
	r := request(t)
	if c := made(t, r).Cost; len(c.Unused) != 0 {
		t.Errorf("%q", c.Unused)
	}
	r.Prices[0].What = "sugar" // the batch takes "white sugar", in the kettle and in the bottles
	c := made(t, r).Cost
	if n := len(slices.DeleteFunc(slices.Clone(c.Unpriced), func(s string) bool { return s != "white sugar" })); n != 1 {
		t.Errorf("%q", c.Unpriced)
	}
	if !slices.Equal(c.Unused, []string{"sugar"}) {
		t.Errorf("%q", c.Unused)
	}
}

// Salts without a target are refused in plain words.
func TestNoTarget(t *testing.T) {
	r := request(t)
	r.Water.Target = plan.Ions{}
	if _, err := plan.Make(r); err == nil || err.Error() != "water.target: no ion is given: at least one, as the salts are to reach it; or no salts" {
		t.Error(err)
	}
	r.Water.Salts = nil
	if p := made(t, r); p.Water.After.Calcium.In(units.MilligramPerLitre) != p.Water.Before.Calcium.In(units.MilligramPerLitre) {
		t.Errorf("%+v", p.Water)
	}
}
