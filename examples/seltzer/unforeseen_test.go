package main

import (
	"bytes"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// Text and page say that a pH is not foreseen, and show none; of sugar they show it.
func TestSheetsWithoutPH(t *testing.T) {
	for _, c := range []struct {
		fermentable string
		foreseen    bool
		lines       int // in its section and in the cautions
	}{{"white sugar", true, 0}, {"honey", true, 0}, {"dry malt extract", true, 0}, {"apple juice 12 °Bx", true, 0}, {"juice 12 °Bx", false, 2}} {
		req, err := plan.ParseRequest(builtIn)
		if err != nil {
			t.Fatal(err)
		}
		if req.Fermentable = c.fermentable; !c.foreseen {
			req.Buffer = nil
		}
		p, curves, err := plan.MakeWithCurves(req)
		if err != nil {
			t.Fatal(err)
		}
		var text, page bytes.Buffer
		printText(&text, sheet(p, style{}), true)
		if err := printHTML(&page, p, curves, style{}); err != nil {
			t.Fatal(err)
		}
		for _, out := range []string{strings.Join(strings.Fields(text.String()), " "), page.String()} {
			shown := strings.Contains(out, "wash, before the yeast works")
			lines := strings.Count(out, "is not foreseen: which acids and minerals it brings is not known. Name the fruit")
			if shown != c.foreseen || lines != c.lines {
				t.Errorf("%s: pH shown %t, %d lines", c.fermentable, shown, lines)
			}
		}
		if strings.Contains(page.String(), "pH against sugar used") != c.foreseen {
			t.Errorf("%s: plot of pH", c.fermentable)
		}
	}
}
