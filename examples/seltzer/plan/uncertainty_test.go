package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A strength that is planned no better than a label may be off is to be measured first. By hand: of what the
// atoms give 2.5 % is lost, 0 to 10.6 % by a triangle, so a mean square of (2.5² + 8.1² − 2.5·8.1)/6 = 2.93² about
// the usual, 3 % of the yield, as package gravity states; a level good to 1 % (as 0.5 L of 57) is 0.6 % at most,
// white sugar 0.1 %. Together 3.0 to 3.1 %, or 0.28 % vol (k = 2) of 4.6, 0.5 of 8.
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
	near(t, "± at k = 2", p.Uncertainty.Planned.In(units.PercentVolume), 0.28, 0.01)
	r.Strength = units.PercentVolume.Of(8)
	if p := made(t, r); !told(p) {
		t.Errorf("%q", p.Cautions)
	}
}

// Two readings are as sure as the library says with its yield, not as their division alone.
// By hand for 4.6 % vol: 0.1345 % vol a thousandth (34.2 thousandths for 4.60), division/√12 in
// each of two. A gram a litre of sugar used takes 0.000386 of gravity with it and leaves 0.494 g of
// ethanol, 0.000088 more (0.0014 a % vol): 3 % more ethanol are 0.6 % less sugar between two known
// gravities, so 2.4 % of the strength. At k = 2 0.22 of that: with 0.0001 0.22, with 0.001 0.24,
// with 0.002 0.31.
func TestStrengthByHydrometerCountsTheYield(t *testing.T) {
	for division, want := range map[float64]float64{0.001: 0.24, 0.002: 0.31, 0.0001: 0.215, 0.005: 0.6} {
		r := request(t)
		instruments := *r.Instruments
		instruments.Hydrometer = division
		r.Instruments = &instruments
		u := made(t, r).Uncertainty
		near(t, "± at k = 2", u.ByHydrometer.In(units.PercentVolume), want, 0.012)
		near(t, "capability", u.Capability, 0.3/u.ByHydrometer.In(units.PercentVolume), 1e-9)
		if u.Supports != (division < 0.002) {
			t.Errorf("division %v: ± %v supports ±0.3: %v", division, u.ByHydrometer, u.Supports)
		}
	}
	r := request(t)
	r.Instruments = nil
	if u := made(t, r).Uncertainty; u.Division != 0.002 || u.Supports {
		t.Errorf("a common hydrometer supports a label: %+v", u)
	}
}

// What a ± comes from most is what is worst known. By hand: the yield is good to 3 % of a strength, a level that is right to within
// 10 L of 57 to 10 % (10/√3), and the dry floor, 0.036 below the original, follows the strength. A keg's 5.9 g/L lose 0.2 g/L for
// a kelvin and gain 0.026 for a kPa.
func TestWhatAnUncertaintyComesFrom(t *testing.T) {
	r := request(t)
	is := func(what, got, want string) {
		t.Helper()
		if got != want {
			t.Errorf("%s: mostly from %s, not %s", what, got, want)
		}
	}
	p := made(t, r)
	u := p.Uncertainty
	is("strength as planned", u.PlannedFrom, "ethanol lost")
	is("strength by hydrometer", u.HydrometerFrom, "ethanol lost")
	is("keg", u.KegsFrom[0], "gauge")
	is("original", p.Gravity.OriginalFrom, "level")
	level, warmth, press := units.Litre.Of(10), units.KelvinDifference.Of(3), units.KilopascalGauge.Of(1)
	r.Instruments = &plan.Instruments{Hydrometer: 0.005, Volume: &level, Thermometer: &warmth, Gauge: &press}
	p = made(t, r)
	u = p.Uncertainty
	is("strength, coarse level", u.PlannedFrom, "level")
	is("strength, coarse hydrometer", u.HydrometerFrom, "hydrometer")
	is("keg, coarse thermometer", u.KegsFrom[0], "thermometer")
	is("floor, coarse level", p.Gravity.FloorFrom, "level")
}

// What to pitch is known as well as the cells in a gram are: a triangle of 5 to 25 billion about 10, of which by hand a fortieth
// lies below 5 + √(20·5/40) = 6.58 and a fortieth above 25 − √(20·15/40) = 22.26. A pack of 50 to 200 about 100: 63.7 and 180.6.
func TestWhatToPitchIsAsSureAsTheCells(t *testing.T) {
	r := request(t)
	y := made(t, r).Yeast
	near(t, "g, high", y.High, y.Cells/6.58, 0.05)
	near(t, "g, low", y.Low, y.Cells/22.26, 0.05)
	r.Yeast.Form = "liquid"
	y = made(t, r).Yeast
	near(t, "packs, high", y.High, y.Cells/63.7, 0.01)
	near(t, "packs, low", y.Low, y.Cells/180.6, 0.01)
	if y.From != "cells in a pack" {
		t.Error(y.From)
	}
}
