package kinetics_test

import (
	"encoding/json"
	"math"
	"strings"
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
		"read every six hours": {[]float64{24, 30, 36, 42, 48, 54}, []float64{0.3, 0.3, 0.3, 0.3, 0.3, 0.3}, 24},
		"and not yet":          {[]float64{24, 30, 36, 42}, []float64{0.3, 0.3, 0.3, 0.3}, -1},
		"one far too high":     {[]float64{24, 36, 48, 72, 96}, []float64{0.3, 0.9, 0.3, 0.3, 0.3}, 48},
		"one far too low":      {[]float64{24, 48, 60, 72}, []float64{0.3, 0.3, 0.15, 0.3}, 24},
		"lower and lower":      {[]float64{24, 48, 72, 96}, []float64{0.5, 0.4, 0.3, 0.2}, -1},
		"a hair lower":         {[]float64{24, 48, 72}, []float64{0.5, 0.471, 0.471}, 24},
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

// A mean that was written may be surer than any reading, down to 1e-8 of the sugar (chosen).
func TestWrittenMeansAtTheirEdges(t *testing.T) {
	text, err := json.Marshal(kinetics.NewForecast(pace(t, wash(), at(20))))
	if err != nil {
		t.Fatal(err)
	}
	for uncertainty, taken := range map[string]bool{"1.01e-8": true, "0.99e-8": false} {
		with := strings.TrimSuffix(string(text), "}") + `,"readings":[{"hour":20,"used":0.1,"uncertainty":` + uncertainty + `}]}`
		if err := json.Unmarshal([]byte(with), new(kinetics.Forecast)); (err == nil) != taken {
			t.Errorf("uncertainty %s: %v", uncertainty, err)
		}
	}
}

// What is read at the pitch does not tell that a ferment leaves its plan: it has not begun.
func TestLeavesNotAtThePitch(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	add(t, f, 0, 0.9, 0.02)
	add(t, f, 7, 0.9, 0.02)
	if at, _, leaves := f.Leaves(); leaves {
		t.Error("left at", at)
	}
	add(t, f, 13, 0.9, 0.02)
	if at, faster, leaves := f.Leaves(); !leaves || !faster || math.Abs(at.Hours()-7) > 1e-6 {
		t.Error(at, faster, leaves)
	}
}

// A ferment that stopped where none of the outcomes ends, read every six hours for two months: however
// badly all of them fit, the one that fits best is what is foreseen, not the plan.
func TestManyReadingsThatFitBadly(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	for h := 60.0; h < 1500; h += 6 {
		add(t, f, h, 0.67, 0.005)
	}
	if s := fraction(f.Fit().Stops(units.Percent.Of(90))); s < 0.99 {
		t.Errorf("%.3f that it stays below 90 %%", s)
	}
	if e := f.Fit().Evidence(); !(e < -800) || math.IsInf(e, 0) {
		t.Error("evidence", e)
	}
	if _, stalled := f.Stalled(); !stalled {
		t.Error("no stop is called")
	}
}
