package main

import (
	"strings"
	"testing"
)

// Over the measured ferments the forecast does better than each rival, before any reading and
// after a third of them; its bands hold at least their share; stopped ferments are called and
// no other is.
func TestForecastBeatsItsRivals(t *testing.T) {
	f, err := scoreForecasts()
	if err != nil {
		t.Fatal(err)
	}
	if f.Clusters < 10 || f.Series < 40 {
		t.Errorf("%d series in %d clusters", f.Series, f.Clusters)
	}
	for k, tallies := range [][]*tally{f.Before, f.After} {
		ours := tallies[0]
		for _, rival := range tallies[1:] {
			if ours.Score >= rival.Score {
				t.Errorf("%d: score %.4f, of %q %.4f", k, ours.Score, rival.Way, rival.Score)
			}
		}
		if _, high := wilson(ours.In90, ours.Figures); high < 0.9 {
			t.Errorf("%d: the 90 %% band held %d of %d", k, ours.In90, ours.Figures)
		}
		if _, high := wilson(ours.In50, ours.Figures); high < 0.5 {
			t.Errorf("%d: the 50 %% band held %d of %d", k, ours.In50, ours.Figures)
		}
	}
	if after, before := f.After[0].Score, f.Before[0].Score; after > 0.75*before {
		t.Errorf("a third of the readings: score %.4f, without %.4f", after, before)
	}
	if f.Called != f.Stalls || f.Stalls != 3 || f.FalseCalls != 0 {
		t.Errorf("%d of %d stopped ferments called, %d falsely", f.Called, f.Stalls, f.FalseCalls)
	}
}

func TestForecastIsPrinted(t *testing.T) {
	var out, bad strings.Builder
	if code := run([]string{"-forecast"}, &out, &bad); code != 0 {
		t.Fatal(code, bad.String())
	}
	for _, want := range []string{"after the first third", "logistic of attenuation", "3 of 3 called, 0 of 38"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("%q is missing in\n%s", want, out.String())
		}
	}
}
