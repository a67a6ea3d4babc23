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
		g, err := wrong(builtIn, sign)
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
	if _, err := wrong(builtIn, "purple"); err == nil || !strings.Contains(err.Error(), plan.Signs()[0]) {
		t.Error(err)
	}
	if _, err := wrong([]byte("{"), "flat"); err == nil {
		t.Error("half a request is taken")
	}
}
