package ask

import (
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
)

func function(t *testing.T) *catalogue.Function {
	t.Helper()
	f, err := catalogue.Find("pressure_gauge_from_absolute")
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// At sea level the standard atmosphere is 101.325 kPa (ISO 2533:1975); by
// definition 1 bar is 100 kPa.
func TestQuestion(t *testing.T) {
	for _, c := range []struct {
		name   string
		inputs []string
		want   float64
		err    string
	}{
		{"all", []string{"pressure", "2 bar absolute", "altitude", "0"}, 98.675, ""},
		{"a default", []string{"pressure", "201.325"}, 100, ""},
		{"another way to write the name", []string{"Pressure", "201.325"}, 100, ""},
		{"missing", []string{"altitude", "0"}, 0, "pressure is missing; pressure_gauge_from_absolute takes pressure (kPa absolute), altitude (m) [0 if left out]"},
		{"twice", []string{"pressure", "1", "PRESSURE", "2"}, 0, "pressure is given twice"},
		{"unknown", []string{"mood", "1"}, 0, `no input "mood"`},
		{"empty", []string{"pressure", ""}, 0, "pressure is empty"},
		{"no number", []string{"pressure", "two"}, 0, "pressure: "},
		{"out of range", []string{"pressure", "1e6"}, 0, "outside"},
	} {
		q := New(function(t))
		var err error
		for i := 0; i < len(c.inputs) && err == nil; i += 2 {
			err = q.Give(c.inputs[i], c.inputs[i+1], (*catalogue.Input).Parse)
		}
		var out []float64
		if err == nil {
			out, err = q.Answer()
		}
		switch {
		case c.err == "" && (err != nil || out[0] < c.want-1e-9 || out[0] > c.want+1e-9):
			t.Errorf("%s: %v, %v; want %v", c.name, out, err, c.want)
		case c.err != "" && (err == nil || !strings.Contains(err.Error(), c.err)):
			t.Errorf("%s: %v; want %q", c.name, err, c.err)
		}
	}
}

func TestWishes(t *testing.T) {
	f := function(t)
	for _, c := range []struct {
		heads []string
		head  string
		value float64
		err   string
	}{
		{nil, "gauge_pressure (kPa gauge)", 250, ""},
		{[]string{"Gauge pressure"}, "gauge_pressure (kPa gauge)", 250, ""},
		{[]string{"gauge_pressure (bar gauge)"}, "gauge_pressure (bar gauge)", 2.5, ""},
		{[]string{"mood"}, "", 0, "pressure_gauge_from_absolute gives gauge_pressure (kPa gauge)"},
		{[]string{"gauge_pressure (kg)"}, "", 0, "gauge_pressure: "},
	} {
		results, err := Wishes(f, c.heads)
		if c.err != "" {
			if err == nil || !strings.Contains(err.Error(), c.err) {
				t.Errorf("%q: %v; want %q", c.heads, err, c.err)
			}
			continue
		}
		if err != nil || len(results) != 1 || results[0].Head() != c.head || results[0].Of([]float64{250}) != c.value {
			t.Errorf("%q: %+v, %v", c.heads, results, err)
		}
	}
}

// A range of cells gives each input of a series, in order; empty cells at its end count for
// nothing, too many and a hole are refused.
func TestSeries(t *testing.T) {
	f, err := catalogue.Find("ferment_forecast")
	if err != nil {
		t.Fatal(err)
	}
	parse := (*catalogue.Input).ParseCell
	q := New(f)
	if err := q.Give("hours", "24; 48;;", parse); err != nil {
		t.Fatal(err)
	}
	second, _ := f.Input("hour_2")
	third, _ := f.Input("hour_3")
	if v, given := q.Input(second); v != 48 || !given {
		t.Error(v, given)
	}
	if _, given := q.Input(third); given {
		t.Error("an empty cell was given")
	}
	for _, bad := range []string{"1;2;3;4;5;6;7;8;9", "1;;2", "1;x"} {
		if err := New(f).Give("hours", bad, parse); err == nil {
			t.Errorf("%q was taken", bad)
		}
	}
}
