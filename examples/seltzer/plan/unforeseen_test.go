package plan_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// A juice of a fruit that is not named has no pH foreseen, no buffer and no advice from it; sugar
// has all of them.
func TestUnforeseenPH(t *testing.T) {
	sour := 2.95
	for _, c := range []struct {
		fermentable string
		foreseen    bool
	}{{"white sugar", true}, {"invert sugar syrup", true}, {"juice 12 °Bx", false}} {
		r := request(t)
		r.Fermentable, r.Readings = c.fermentable, []plan.Reading{read(5*day, 1.018), read(8*day, 1.018)}
		r.Readings[1].PH = &sour
		if c.foreseen {
			p := made(t, r)
			if !strings.Contains(strings.Join(p.Cautions, "\n"), "the pH of a sugar wash") {
				t.Errorf("%s: %q", c.fermentable, p.Cautions)
			}
			if len(p.Acidity.Points) == 0 || p.Acidity.Unforeseen != "" || p.State.Correction == nil {
				t.Errorf("%s: %+v, %+v", c.fermentable, p.Acidity, p.State)
			}
			continue
		}
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "buffer: potassium bicarbonate: left out for ") {
			t.Errorf("%s with a buffer: %v", c.fermentable, err)
		}
		r.Buffer = nil
		p, curves, err := plan.MakeWithCurves(r)
		if err != nil {
			t.Fatal(err)
		}
		if len(p.Acidity.Points) != 0 || !strings.Contains(p.Acidity.Unforeseen, "Measure it") || p.State.Correction != nil {
			t.Errorf("%s: %+v, %+v", c.fermentable, p.Acidity, p.State)
		}
		if d := p.State.Diagnosis; len(d) != 2 || !strings.HasPrefix(d[0], "pH: 2.95") || !strings.HasPrefix(d[1], "buffer: ") {
			t.Errorf("%s: %q", c.fermentable, d)
		}
		for _, k := range curves {
			if strings.HasPrefix(k.Title, "pH") {
				t.Errorf("%s: %s", c.fermentable, k.Title)
			}
		}
		for _, text := range p.Cautions {
			for _, wrong := range []string{"likely to stop", "Potassium is about", "bicarbonate", "sugar wash"} {
				if strings.Contains(text, wrong) {
					t.Errorf("%s: %s", c.fermentable, text)
				}
			}
		}
		if !slices.Contains(p.Cautions, p.Acidity.Unforeseen) {
			t.Errorf("%s: %q", c.fermentable, p.Cautions)
		}
	}
}

// Juice brings nitrogen of its own, as honey and malt do: it may go without a source, sugar may
// not.
func TestNoNutrient(t *testing.T) {
	r := request(t)
	r.Nutrient.Sources = nil
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "nutrient.sources: missing") {
		t.Error(err)
	}
	r.Fermentable, r.Buffer = "juice 12 °Bx", nil
	p := made(t, r)
	if n := p.Nutrient; !n.Brought.IsZero() || n.Need.IsZero() || len(n.Stages) != 0 {
		t.Errorf("%+v", n)
	}
	told := false
	for _, c := range p.Cautions {
		told = told || strings.HasPrefix(c, "The nitrogen that juice brings is not counted")
	}
	if !told {
		t.Errorf("%q", p.Cautions)
	}
}

// A juice without its Brix is told how to say it.
func TestJuiceByName(t *testing.T) {
	r := request(t)
	r.Fermentable = "apple juice"
	if _, err := plan.Make(r); err == nil || !strings.Contains(err.Error(), `"apple juice 12 °Bx"`) {
		t.Error(err)
	}
}
