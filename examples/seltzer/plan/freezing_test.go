package plan_test

import (
	"slices"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// A drink of 4.6 % vol freezes near −1.5 °C (Lange's Handbook, table 5.13: 2 °C below zero
// at 6 % vol): a keg that stands at −2 °C says so, one at 0 °C does not. A store of bottles
// is not asked below 0 °C.
func TestFreezingKeg(t *testing.T) {
	for c, frozen := range map[units.Temperature]bool{units.Celsius.Of(-2): true, units.Celsius.Of(0): false} {
		r := request(t)
		r.Packs[0].Temperature = c
		if p := made(t, r).Packs[0]; slices.Contains(p.Highest.Cautions, carbonation.Freezing.Text()) != frozen {
			t.Errorf("at %v: %q", c, p.Highest.Cautions)
		}
	}
}
