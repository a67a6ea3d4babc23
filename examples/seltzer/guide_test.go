package main

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// The page answers for each sign with figures of the batch and what no figure tells, and refuses a sign that
// is none with the signs there are.
func TestGuideOfThePage(t *testing.T) {
	for _, sign := range plan.Signs() {
		g, err := wrong(builtIn, sign, style{})
		if err != nil {
			t.Fatal(sign, err)
		}
		if len(g.Figures) == 0 || len(g.Rest) == 0 {
			t.Errorf("%s: %+v", sign, g)
		}
		for _, r := range g.Figures {
			if r.Label == "" || r.Note == "" || strings.Contains(r.Value+r.Note, "NaN") {
				t.Errorf("%s: %+v", sign, r)
			}
		}
	}
	if _, err := wrong(builtIn, "purple", style{}); err == nil || !strings.Contains(err.Error(), plan.Signs()[0]) {
		t.Error(err)
	}
	if _, err := wrong([]byte("{"), "flat", style{}); err == nil {
		t.Error("half a request is taken")
	}
}

// A US plan has a US guide: no temperature, pressure or mass in metric alone; contents by the litre stay.
func TestGuideInUSUnits(t *testing.T) {
	for _, c := range [][2]string{
		{"at 4 °C, 10 K warmer: 1.25 bar gauge", "at 39 °F, 18 °F warmer: 18.1 psi gauge"},
		{"2.5 g/L of it, 40 g each (20 L)", "2.5 g/L of it, 1.41 oz (40.0 g) each (5.28 US gal)"},
		{"pH 3.5; 50 mg/L", "pH 3.5; 50 mg/L"}, {"-2 °C", "28 °F"},
	} {
		if got := (style{us: true}).inWords(c[0]); got != c[1] {
			t.Errorf("%s: %s", c[0], got)
		}
		if got := (style{}).inWords(c[0]); got != c[0] {
			t.Errorf("%s: %s in metric", c[0], got)
		}
	}
	for _, sign := range plan.Signs() {
		g, err := wrong(builtIn, sign, style{us: true})
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range g.Figures {
			for _, unit := range []string{"°C", " K", " bar", " kg"} {
				if strings.Contains(r.Value+r.Note, unit) {
					t.Errorf("%s: %+v", sign, r)
				}
			}
		}
	}
	code, out, err := seltzerRun(t, "", "-seen", "flat", "-units", "us")
	if code != 0 || strings.Contains(out, "°C") || !strings.Contains(out, "°F") {
		t.Error(out, err)
	}
}
