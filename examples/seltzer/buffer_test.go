package main

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// A ferment that stays above the floor by itself has no buffer to weigh or to dissolve.
func TestNoBufferToDissolve(t *testing.T) {
	r, err := plan.ReadRequest([]byte(strings.Replace(string(builtIn), `"floor_pH": 3.6`, `"floor_pH": 2.5`, 1)))
	if err != nil {
		t.Fatal(err)
	}
	p, err := plan.Make(r)
	if err != nil {
		t.Fatal(err)
	}
	if !p.Acidity.Buffer.Mass.Decimal().IsZero() {
		t.Fatal(p.Acidity.Buffer.Mass)
	}
	for _, w := range p.Weigh {
		if w.Mass.Decimal().IsZero() {
			t.Errorf("%s: nothing to weigh", w.What)
		}
	}
	row := bufferRow(p.Acidity, style{})
	if row.value != "none" || strings.Contains(row.note, "dissolve") {
		t.Errorf("%+v", row)
	}
}
