package kinetics_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/internal/ferments"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// width is the spread of a time, as a factor.
func width(t *testing.T, f *kinetics.Forecast) float64 {
	t.Helper()
	w, err := f.Fit().When(units.Percent.Of(95))
	if err != nil {
		t.Fatal(err)
	}
	return w.High90.Hours() / w.Low90.Hours()
}

// From the plan alone the days are known to a factor of two either way or worse; each reading
// narrows them, and a hundred that lie on a faster ferment pull the days to it.
func TestReadingsNarrow(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	prior := width(t, f)
	if prior < 4 || prior > 12 {
		t.Errorf("from the plan alone nine in ten within a factor of %.1f", prior)
	}
	fast := pace(t, wash(), at(26)) // what really happens
	add(t, f, 30, fast.Used(hours(30)).In(units.Fraction), 0.02)
	one := width(t, f)
	if one > prior*0.75 {
		t.Errorf("one reading: %.1f, before %.1f", one, prior)
	}
	for h := 32.0; h < 90; h += 0.5 {
		add(t, f, h, fast.Used(hours(h)).In(units.Fraction), 0.02)
	}
	if many := width(t, f); many > 1.8 {
		t.Errorf("many readings: %.2f", many)
	}
	for h := 40.0; h < 130; h += 20 {
		b := f.Fit().Used(hours(h))
		if u := fast.Used(hours(h)).In(units.Fraction); u < b.Low90.In(units.Fraction)-0.01 || u > b.High90.In(units.Fraction)+0.01 {
			t.Errorf("%.0f h: %.3f outside %v to %v", h, u, b.Low90, b.High90)
		}
	}
}

// Readings in any order give the same forecast, and one that comes twice hardly moves it.
func TestOrderAndTwice(t *testing.T) {
	readings := [][2]float64{{20, 0.1}, {31, 0.22}, {44, 0.4}, {60, 0.6}, {75, 0.7}}
	a, b, c := kinetics.NewForecast(pace(t, wash(), at(20))), kinetics.NewForecast(pace(t, wash(), at(20))), kinetics.NewForecast(pace(t, wash(), at(20)))
	for i := range readings {
		add(t, a, readings[i][0], readings[i][1], 0.02)
		back := readings[len(readings)-1-i]
		add(t, b, back[0], back[1], 0.02)
		add(t, c, readings[i][0], readings[i][1], 0.02)
		add(t, c, readings[i][0], readings[i][1], 0.02)
	}
	for h := 10.0; h < 300; h += 10 {
		x, y, z := a.Fit().Used(hours(h)), b.Fit().Used(hours(h)), c.Fit().Used(hours(h))
		if x != y {
			t.Fatal(h, x, y)
		}
		if d := math.Abs(x.Median.In(units.Fraction) - z.Median.In(units.Fraction)); d > 0.03 {
			t.Error(h, x.Median, z.Median)
		}
	}
}

// One reading that is badly wrong among five good ones moves the middle less than the band
// of the plan alone is wide, and the forecast stays the better of the two.
func TestBadReading(t *testing.T) {
	truth := pace(t, wash(), at(24))
	rapid.Check(t, func(r *rapid.T) {
		f, plan := kinetics.NewForecast(pace(t, wash(), at(20))), kinetics.NewForecast(pace(t, wash(), at(20)))
		for h := 14.0; h < 70; h += 11 {
			add(t, f, h, truth.Used(hours(h)).In(units.Fraction), 0.02)
		}
		add(t, f, rapid.Float64Range(1, 80).Draw(r, "hour"), rapid.Float64Range(0, 1).Draw(r, "used"), 0.02)
		when, err := truth.When(units.Percent.Of(95))
		if err != nil {
			r.Fatal(err)
		}
		off := func(f *kinetics.Forecast) float64 {
			w, err := f.Fit().When(units.Percent.Of(95))
			if err != nil {
				r.Fatal(err)
			}
			return math.Abs(math.Log(w.Median.Hours() / when.Hours()))
		}
		if with, without := off(f), off(plan); with > max(without, 0.25) {
			r.Errorf("off by %.3f of the logarithm with the bad reading, %.3f without any", with, without)
		}
	})
}

// Another reading costs no allocation.
func TestAddDoesNotAllocate(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	used, u := share(0.3), share(0.02)
	if n := testing.AllocsPerRun(100, func() { _ = f.Add(hours(30), used, u) }); n != 0 {
		t.Error(n, "allocations")
	}
}

func TestForecastTravels(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20), kinetics.Hold{From: hours(48), Temperature: units.Celsius.Of(23)}))
	for h := 10.0; h < 100; h += 0.25 {
		add(t, f, h, h/140, 0.02)
	}
	text, err := json.Marshal(f)
	if err != nil {
		t.Fatal(err)
	}
	var back kinetics.Forecast
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	again, err := json.Marshal(&back)
	if err != nil {
		t.Fatal(err)
	}
	a, b := f.Fit().Used(hours(90)), back.Fit().Used(hours(90))
	if math.Abs(a.Median.In(units.Fraction)-b.Median.In(units.Fraction)) > 1e-9 || len(again) != len(text) && len(text) > 4000 {
		t.Error(a, b, string(again))
	}
	if _, err := json.Marshal(new(kinetics.Forecast)); err == nil {
		t.Error("a forecast without a pace was written")
	}
	for _, bad := range []string{
		`[]`, `{}`,
		strings.Replace(string(text), `"sugar":"75`, `"sugar":"7500`, 1),
		strings.Replace(string(text), `"hour":48`, `"hour":-48`, 1),
		strings.Replace(string(text), `"readings":[{"hour":`, `"readings":[{"hour":99999`, 1),
		strings.Replace(string(text), `"readings":[{"hour":`, `"readings":[{"hour":3,"used":0.1,"uncertainty":1e-300},{"hour":`, 1),
		strings.Replace(string(text), `"readings":[{"hour":`, `"readings":[{"hour":2160,"used":0.5,"uncertainty":0.02},{"hour":`, 1),
		strings.Replace(string(text), `"uncertainty":0.`, `"uncertainty":7`, 1),
		strings.Replace(string(text), `"used":0.`, `"used":7`, 1),
	} {
		if err := json.Unmarshal([]byte(bad), &back); err == nil {
			t.Errorf("read %.100s", bad)
		}
	}
}

func TestForecastRefuses(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	for _, c := range []struct {
		hour, u float64
		want    string
	}{
		{-1, 0.02, "time since the pitch -0.0416666666667 days outside 0 days to 90 days"},
		{2160, 0.02, "time since the pitch 90 days"},
		{10, 0, "uncertainty of the share used 0 % outside 0.01 % to 50 %"},
		{10, 0.6, "uncertainty of the share used 60 %"},
	} {
		err := f.Add(hours(c.hour), share(0.3), share(c.u))
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Func != "kinetics.Forecast.Add" || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%v, want %s", err, c.want)
		}
	}
	if x, y := f.Fit().Used(hours(50)), kinetics.NewForecast(pace(t, wash(), at(20))).Fit().Used(hours(50)); x != y {
		t.Error("a refused reading was taken in")
	}
}

// measured builds the forecast of a series; worts at 42 °C, beyond the model, get 35 °C.
func measured(t *testing.T, s ferments.Series) *kinetics.Forecast {
	t.Helper()
	start := kinetics.Start{}
	start.Sugar, _ = units.GramPerLitre.Try(s.SugarGramPerLitre)
	start.Nitrogen, _ = units.MilligramPerLitre.Try(s.NitrogenMilligramPerLitre)
	start.Yeast, _ = units.GramPerLitre.Try(s.YeastGramPerLitre)
	return kinetics.NewForecast(pace(t, start, at(math.Min(s.Celsius, 35))))
}

// Over the measured ferments: the worts at 42 °C stopped at a quarter of their sugar and are
// called so, no other is, and none before three readings.
func TestStalls(t *testing.T) {
	all, err := ferments.All()
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range all {
		f, called := measured(t, s), -1
		for i, h := range s.Hours {
			add(t, f, h, s.Used[i], 0.02)
			if since, stalled := f.Stalled(); stalled && called < 0 {
				called = i
				if i < 3 || since.Hours() > h-24 {
					t.Errorf("%s: called at %v h since %v", s.Name, h, since)
				}
			}
		}
		if stopped := strings.HasSuffix(s.Name, "42C"); stopped != (called >= 0) {
			t.Errorf("%s: called at reading %d; it stopped: %v", s.Name, called, stopped)
		}
		if strings.HasSuffix(s.Name, "42C") {
			if low := f.Fit().Stops(units.Percent.Of(90)).In(units.Fraction); low < 0.5 {
				t.Errorf("%s: %.2f that it stays below 90 %%", s.Name, low)
			}
			if at, faster, leaves := f.Leaves(); !leaves || faster || at.Hours() > 96 {
				t.Errorf("%s: left what was foreseen at %v, faster %v, %v", s.Name, at, faster, leaves)
			}
		}
	}
}

// A ferment as foreseen does not leave the band; one three times as fast does, on that side.
func TestLeaves(t *testing.T) {
	as := pace(t, wash(), at(20))
	f := kinetics.NewForecast(as)
	for h := 12.0; h < 200; h += 12 {
		add(t, f, h, as.Used(hours(h)).In(units.Fraction), 0.02)
	}
	if at, _, leaves := f.Leaves(); leaves {
		t.Error("as foreseen, but left at", at)
	}
	f = kinetics.NewForecast(as)
	for h := 6.0; h < 30; h += 6 {
		add(t, f, h, math.Min(1, as.Used(hours(6*h)).In(units.Fraction)), 0.02)
	}
	if _, faster, leaves := f.Leaves(); !leaves || !faster {
		t.Error("six times as fast, and not noticed")
	}
}

// The next reading tells most while the outcomes still differ: not at once, not when all is
// over, and later for a slower ferment.
func TestNext(t *testing.T) {
	warm, cold := kinetics.NewForecast(pace(t, wash(), at(22))).Fit().Next(0), kinetics.NewForecast(pace(t, wash(), at(12))).Fit().Next(0)
	if warm.Hours() < 12 || warm.Hours() > 96 || cold <= warm {
		t.Error(warm, cold)
	}
}

func TestWhenNever(t *testing.T) {
	f := kinetics.NewForecast(pace(t, wash(), at(20)))
	for h := 20.0; h < 1000; h += 12 {
		add(t, f, h, 0.25, 0.01)
	}
	_, err := f.Fit().When(units.Percent.Of(99))
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Func != "kinetics.Fit.When" {
		t.Error(err)
	}
}

func BenchmarkFit(b *testing.B) {
	p, err := kinetics.NewPace(wash(), at(20))
	if err != nil {
		b.Fatal(err)
	}
	f := kinetics.NewForecast(p)
	for h := 6.0; h < 120; h += 6 {
		_ = f.Add(hours(h), p.Used(hours(h)), share(0.02))
	}
	b.ReportAllocs()
	for b.Loop() {
		f.Fit()
	}
}

func BenchmarkNewPace(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := kinetics.NewPace(wash(), at(20)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWhen(b *testing.B) {
	p, err := kinetics.NewPace(wash(), at(20))
	if err != nil {
		b.Fatal(err)
	}
	f := kinetics.NewForecast(p).Fit()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.When(share(0.99)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAdd(b *testing.B) {
	p, err := kinetics.NewPace(wash(), at(20))
	if err != nil {
		b.Fatal(err)
	}
	f := kinetics.NewForecast(p)
	used, u := share(0.3), share(0.02)
	b.ReportAllocs()
	for b.Loop() {
		_ = f.Add(hours(30), used, u)
	}
}
