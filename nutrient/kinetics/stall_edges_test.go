package kinetics_test

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// A ferment that stands still, as the doc comment of Stalled has it: two spans of twelve hours or more with less than
// 4 % of the sugar a day, from a tenth of the sugar to 93 %.
func TestStalledAtItsEdges(t *testing.T) {
	for what, c := range map[string]struct {
		hours, used []float64
		since       float64 // below zero: none
	}{
		"just flat":            {[]float64{24, 48, 72}, []float64{0.3, 0.3 + 0.0395, 0.3 + 0.079}, 24},
		"just not flat":        {[]float64{24, 48, 72}, []float64{0.3, 0.3 + 0.0405, 0.3 + 0.081}, -1},
		"one span":             {[]float64{24, 48}, []float64{0.3, 0.3}, -1},
		"spans just long":      {[]float64{24, 36.5, 49}, []float64{0.3, 0.3, 0.3}, 24},
		"spans too short":      {[]float64{24, 35.5, 47}, []float64{0.3, 0.3, 0.3}, -1},
		"a tenth and more":     {[]float64{24, 48, 72}, []float64{0.101, 0.101, 0.101}, 24},
		"less than a tenth":    {[]float64{24, 48, 72}, []float64{0.099, 0.099, 0.099}, -1},
		"nearly all":           {[]float64{96, 120, 144}, []float64{0.929, 0.929, 0.929}, 96},
		"all but a trace":      {[]float64{96, 120, 144}, []float64{0.931, 0.931, 0.931}, -1},
		"it went on":           {[]float64{24, 48, 72, 96}, []float64{0.3, 0.3, 0.5, 0.5}, -1},
		"it went on, then not": {[]float64{24, 48, 72, 96, 120}, []float64{0.3, 0.3, 0.5, 0.5, 0.5}, 72},
		"three spans":          {[]float64{24, 48, 72, 96}, []float64{0.3, 0.3, 0.3, 0.3}, 24},
	} {
		f := kinetics.NewForecast(pace(t, wash(), at(20)))
		for i, h := range c.hours {
			add(t, f, h, c.used[i], 0.01)
		}
		since, stalled := f.Stalled()
		if stalled != (c.since >= 0) || stalled && math.Abs(since.Hours()-c.since) > 1e-6 {
			t.Errorf("%s: %v since %v", what, stalled, since)
		}
	}
}

// A reading is from the pitch to before 90 days, its uncertainty from 0.01 to 50 %.
func TestReadingsAtTheirEdges(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	half := units.Percent.Of(50)
	for _, u := range []units.Share{units.Percent.Of(0.01), units.Percent.Of(50)} {
		if err := f.Add(hours(24), half, u); err != nil {
			t.Error(err)
		}
	}
	for _, u := range []float64{0.0099, 50.1, math.NaN()} {
		refusedAdd(t, f.Add(hours(24), half, check.Percent(u)), "uncertainty of the share used", 0.01, 50)
	}
	if err := f.Add(hours(0), units.Percent.Of(0), units.Percent.Of(1)); err != nil {
		t.Error(err)
	}
	refusedAdd(t, f.Add(hours(90*24), half, units.Percent.Of(1)), "time since the pitch", 0, 90)
	refusedAdd(t, f.Add(hours(-0.1), half, units.Percent.Of(1)), "time since the pitch", 0, 90)
}

func refusedAdd(t *testing.T, err error, quantity string, least, most float64) {
	t.Helper()
	e := check.OutOfRange(t, quantity, err, quantity)
	if e.Min != least || e.Max != most {
		t.Errorf("%v: want %v to %v", err, least, most)
	}
}
