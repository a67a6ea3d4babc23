package units_test

import (
	"errors"
	"strings"
	"testing"
	"time"

	"example.org/zymase/units"
)

func TestParseDuration(t *testing.T) {
	const day = 24 * time.Hour
	for text, want := range map[string]time.Duration{
		"7 d": 7 * day, "7d": 7 * day, "1d3h": 27 * time.Hour, "1 h 30 min": 90 * time.Minute, "2 weeks": 14 * day, "1.5 h": 90 * time.Minute,
		"1,5 h": 90 * time.Minute, "90 s": 90 * time.Second, "1 wk 2 d 3 h 4 min 5 s": 9*day + 3*time.Hour + 4*time.Minute + 5*time.Second,
		"36500 days": 36500 * day, "0 min": 0, "1 Day": day, "3 HOURS": 3 * time.Hour, "1e1 d": 10 * day, "2 w": 14 * day, "2 mins": 2 * time.Minute, "2 secs": 0,
	} {
		got, err := units.ParseDuration(text)
		if text == "2 secs" {
			if err == nil {
				t.Errorf("%q is taken", text)
			}
			continue
		}
		if err != nil || got != want {
			t.Errorf("%q: %v %v, want %v", text, got, err, want)
		}
	}
	for _, text := range []string{"", "7", "d", "7 m", "-7 d", "-0 d", "1 min 1 h", "1 h 1 h", "36501 d", "1e40 d", "1 h 30", "1 h -30 min",
		"7 months", "NaN d", "1 d \x00", "                                                                 7 d"} {
		got, err := units.ParseDuration(text)
		if e, ok := errors.AsType[*units.ParseError](err); !ok || got != 0 || e.Want != "duration" {
			t.Errorf("%q: %v %v", text, got, err)
		}
	}
	for text, says := range map[string]string{"15": "no unit; write one of wk, d, h, min, s", "18 Months": "say wk or d; a month is about 30 d"} {
		if _, err := units.ParseDuration(text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%q: %v", text, err)
		}
	}
}
