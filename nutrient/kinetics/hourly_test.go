package kinetics_test

import (
	"math"
	"testing"
	"time"

	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

func fraction(s units.Share) float64 { return s.In(units.Fraction) }

// What goes in each hour sums to what is used; its middle follows that of the pace, and the
// peak of the outcomes holds the pace's own.
func TestInAnHour(t *testing.T) {
	p := pace(t, wash(), at(20))
	f := kinetics.NewForecast(p).Fit()
	sum, peak, peakAt := 0.0, 0.0, 0.0
	for h := 0.5; h < 900; h++ {
		b := f.InAnHour(hours(h))
		if !(fraction(b.Low90) <= fraction(b.Low50) && fraction(b.Low50) <= fraction(b.Median) && fraction(b.Median) <= fraction(b.High50) &&
			fraction(b.High50) <= fraction(b.High90)) {
			t.Fatal(h, b)
		}
		sum += fraction(b.Median)
		if x := fraction(b.High90); x > peak {
			peak, peakAt = x, h
		}
	}
	if sum < 0.5 || sum > 1.2 {
		t.Errorf("the middles of all hours sum to %.2f", sum)
	}
	when, most := f.Fastest()
	own, inOne := p.Fastest()
	if own < when.Low90 || own > when.High90 || fraction(inOne) < fraction(most.Low90) || fraction(inOne) > fraction(most.High90) {
		t.Errorf("the pace's peak %.4f at %v; foreseen %v at %v", fraction(inOne), own, most, when)
	}
	// No hour is likelier to be as fast as the fastest of each.
	if fraction(most.High90) < peak || peakAt <= 0 {
		t.Errorf("peak %v, an hour %.4f", most, peak)
	}
}

// A ferment known by many readings peaks as it does: one of a narrow band, within a tenth of
// its own pace.
func TestFastestAsRead(t *testing.T) {
	p := pace(t, wash(), at(20), kinetics.Hold{From: hours(30), Temperature: units.Celsius.Of(24)})
	f := kinetics.NewForecast(p)
	for h := 6.0; h < 200; h += 2 {
		add(t, f, h, fraction(p.Used(hours(h))), 0.01)
	}
	when, most := f.Fit().Fastest()
	own, inOne := p.Fastest()
	if r := fraction(most.Median) / fraction(inOne); r < 0.85 || r > 1.15 {
		t.Errorf("peak %v, of the pace %v", most, inOne)
	}
	if d := when.Median - own; d < -8*time.Hour || d > 8*time.Hour {
		t.Errorf("peak at %v, of the pace at %v", when.Median, own)
	}
}

// Readings of a colder ferment speak for the colder pace, and those of the planned one for the
// plan; a Bayes factor of their own: the logarithm of the ratio of two sums.
func TestEvidence(t *testing.T) {
	plan, cold := pace(t, wash(), at(22)), pace(t, wash(), at(12))
	for _, truth := range []*kinetics.Pace{plan, cold} {
		f := kinetics.NewForecast(plan)
		for h := 20.0; h < 100; h += 10 {
			add(t, f, h, fraction(truth.Used(hours(h))), 0.02)
		}
		for2, other := f.On(truth).Fit().Evidence(), f.On(plan).Fit().Evidence()
		if truth == plan {
			other = f.On(cold).Fit().Evidence()
		}
		if !(for2 > other+0.5) {
			t.Errorf("evidence %.2f for the true pace, %.2f for the other", for2, other)
		}
	}
	if e := kinetics.NewForecast(plan).Fit().Evidence(); math.Abs(e) > 1e-9 {
		t.Error("without readings nothing speaks for anything, but", e)
	}
}
