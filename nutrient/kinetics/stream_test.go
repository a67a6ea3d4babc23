package kinetics_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// A floating hydrometer sends a reading every quarter of an hour for twelve days. They come in
// any order, some twice, and half of them after the forecast was stored as text and taken up
// again: the forecast is the same to 1e-9, and a thousand readings narrow it to less than a
// third of what the plan alone said.
func TestStream(t *testing.T) {
	truth, plan := pace(t, wash(), at(17)), pace(t, wash(), at(20))
	rapid.Check(t, func(r *rapid.T) {
		var at []float64
		for h := 0.25; h < 288; h += 0.25 {
			at = append(at, h)
		}
		inOrder, mixed := kinetics.NewForecast(plan), kinetics.NewForecast(plan)
		for _, h := range at {
			add(t, inOrder, h, fraction(truth.Used(hours(h))), 0.02)
		}
		for k, h := range rapid.Permutation(at).Draw(r, "order") {
			if k == len(at)/2 {
				text, err := json.Marshal(mixed)
				if err != nil {
					r.Fatal(err)
				}
				mixed = new(kinetics.Forecast)
				if err := json.Unmarshal(text, mixed); err != nil {
					r.Fatal(err)
				}
			}
			add(t, mixed, h, fraction(truth.Used(hours(h))), 0.02)
		}
		a, b := inOrder.Fit(), mixed.Fit()
		for h := 10.0; h < 400; h += 30 {
			x, y := a.Used(hours(h)), b.Used(hours(h))
			if d := fraction(x.Median) - fraction(y.Median); math.Abs(d) > 1e-9 {
				r.Fatalf("after %.0f h %v in order, %v in another", h, x, y)
			}
		}
		if w, before := width(t, mixed), width(t, kinetics.NewForecast(plan)); w > before/3 {
			r.Errorf("nine in ten within a factor of %.2f; by the plan %.2f", w, before)
		}
	})
}

// A clock that jumps: a fifth of the readings carry a time that is wrong by up to two days. The
// forecast stays better than the plan alone, and no stop is called while it goes on.
func TestClockJumps(t *testing.T) {
	truth, plan := pace(t, wash(), at(16)), pace(t, wash(), at(20))
	when, err := truth.When(units.Percent.Of(95))
	if err != nil {
		t.Fatal(err)
	}
	off := func(f *kinetics.Forecast) float64 {
		w, err := f.Fit().When(units.Percent.Of(95))
		if err != nil {
			t.Fatal(err)
		}
		return math.Abs(math.Log(w.Median.Hours() / when.Hours()))
	}
	rapid.Check(t, func(r *rapid.T) {
		f := kinetics.NewForecast(plan)
		k := 0
		for h := 12.0; h < 110; h += 4 {
			stamp := h
			if k++; k%5 == 0 {
				stamp = max(0, h+rapid.Float64Range(-48, 48).Draw(r, "jump"))
			}
			add(t, f, stamp, fraction(truth.Used(hours(h))), 0.02)
			if since, stalled := f.Stalled(); stalled && fraction(truth.Used(hours(h))) < 0.8 {
				r.Fatalf("a stop called at %.0f h since %v", h, since)
			}
		}
		if with, without := off(f), off(kinetics.NewForecast(plan)); with > max(without, 0.3) {
			r.Errorf("off by %.2f of the logarithm, %.2f by the plan alone", with, without)
		}
	})
}

// Krausen on a float holds it up: it shows up to 6 % of the sugar too little or too much for
// two days, then falls off. No stop is called, and the end is foreseen within the 90 % band.
func TestKrausenOnTheSensor(t *testing.T) {
	p := pace(t, wash(), at(20))
	when, err := p.When(units.Percent.Of(95))
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(r *rapid.T) {
		f := kinetics.NewForecast(p)
		drift, from := rapid.Float64Range(-0.06, 0.06).Draw(r, "drift"), rapid.Float64Range(15, 50).Draw(r, "from")
		for h := 1.0; h < 120; h++ {
			used := fraction(p.Used(hours(h)))
			if h > from && h < from+48 {
				used += drift * (h - from) / 48
			}
			add(t, f, h, used, 0.02)
			if since, stalled := f.Stalled(); stalled {
				r.Fatalf("a stop called at %.0f h since %v", h, since)
			}
		}
		w, err := f.Fit().When(units.Percent.Of(95))
		if err != nil {
			r.Fatal(err)
		}
		if when < w.Low90*9/10 || when > w.High90*11/10 {
			r.Errorf("95 %% used at %v, foreseen %v", when, w)
		}
	})
}

// Ten thousand ferments at once: each of them takes a reading without an allocation, knows
// its own, and holds 10 kB at most.
func TestTenThousandFerments(t *testing.T) {
	p := pace(t, wash(), at(20))
	all := make([]kinetics.Forecast, 10_000)
	for i := range all {
		all[i] = *kinetics.NewForecast(p)
	}
	u := share(0.02)
	one := func() {
		for i := range all {
			if err := all[i].Add(hours(24+float64(i%24)), share(float64(i%100)/200), u); err != nil {
				t.Fatal(err)
			}
		}
	}
	if n := testing.AllocsPerRun(1, one); n != 0 {
		t.Errorf("%v allocations", n)
	}
	slow, quick := all[1].Fit().Used(hours(72)), all[99].Fit().Used(hours(72))
	if fraction(slow.Median) >= fraction(quick.Median) {
		t.Error(slow, quick)
	}
}

// Whatever they are, one or two readings never make a stop, nor do any within a day.
func TestNoStopFromFewReadings(t *testing.T) {
	p := pace(t, wash(), at(20))
	rapid.Check(t, func(r *rapid.T) {
		f := kinetics.NewForecast(p)
		n := rapid.IntRange(1, 40).Draw(r, "readings")
		first := rapid.Float64Range(0, 1000).Draw(r, "first")
		for i := range n {
			h := first + rapid.Float64Range(0, 23).Draw(r, "within a day")
			if i < 2 && n <= 2 {
				h = rapid.Float64Range(0, 2000).Draw(r, "anywhere")
			}
			add(t, f, h, rapid.Float64Range(0, 1).Draw(r, "used"), 0.02)
		}
		if since, stalled := f.Stalled(); stalled {
			r.Fatalf("%d readings: stopped since %v", n, since)
		}
	})
}

// By readings of a ferment that is at least as far at each of them, the forecast is no
// slower: warmer, better fed, more yeast are never foreseen to end later.
func TestForecastIsMonotone(t *testing.T) {
	plan := pace(t, wash(), at(18))
	rapid.Check(t, func(r *rapid.T) {
		slow, fast := kinetics.NewForecast(plan), kinetics.NewForecast(plan)
		more := rapid.Float64Range(0, 0.1).Draw(r, "more used")
		for h := 24.0; h < 24*float64(rapid.IntRange(2, 5).Draw(r, "readings")); h += 24 {
			used := fraction(plan.Used(hours(h)))
			add(t, slow, h, used, 0.02)
			add(t, fast, h, min(used+more, 1), 0.02)
		}
		a, err := slow.Fit().When(units.Percent.Of(80))
		if err != nil {
			r.Fatal(err)
		}
		b, err := fast.Fit().When(units.Percent.Of(80))
		if err != nil {
			r.Fatal(err)
		}
		if b.Median.Hours() > 1.03*a.Median.Hours() { // a step of the grid of paces
			r.Errorf("further on by %.3f, and later: %v, %v", more, b.Median, a.Median)
		}
	})
}

// One more reading, and the whole forecast from it.
func BenchmarkReadingAndForecast(b *testing.B) {
	p, err := kinetics.NewPace(wash(), at(20))
	if err != nil {
		b.Fatal(err)
	}
	f := kinetics.NewForecast(p)
	used, u := share(0.3), share(0.02)
	b.ReportAllocs()
	for b.Loop() {
		_ = f.Add(hours(30), used, u)
		if _, err := f.Fit().When(share(0.99)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFastest(b *testing.B) {
	p, err := kinetics.NewPace(wash(), at(20))
	if err != nil {
		b.Fatal(err)
	}
	f := kinetics.NewForecast(p).Fit()
	b.ReportAllocs()
	for b.Loop() {
		f.Fastest()
	}
}

// A pace comes back as what it was made of; one without a start is not written, nor is a fit.
func TestPaceInJSON(t *testing.T) {
	was, err := kinetics.NewPace(kinetics.Start{Sugar: units.GramPerLitre.Of(80), Nitrogen: units.MilligramPerLitre.Of(120),
		Yeast: units.GramPerLitre.Of(0.4)}, kinetics.Hold{Temperature: units.Celsius.Of(18)})
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(was)
	is := new(kinetics.Pace)
	if err := errors.Join(err, json.Unmarshal(text, is)); err != nil {
		t.Fatal(err)
	}
	for _, day := range []time.Duration{1, 3, 9} {
		if a, b := was.Used(day*24*time.Hour), is.Used(day*24*time.Hour); a != b {
			t.Errorf("after %d days: %v, %v", day, a, b)
		}
	}
	for _, bad := range []any{new(kinetics.Pace), new(kinetics.Fit)} {
		if _, err := json.Marshal(bad); err == nil {
			t.Errorf("%T is written", bad)
		}
	}
	for _, bad := range []string{`[]`, `{"sugar":"1 g/L"}`} {
		if err := json.Unmarshal([]byte(bad), new(kinetics.Pace)); err == nil {
			t.Errorf("%s is taken", bad)
		}
	}
}
