package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A source without nitrogen is weighed for what is short, by hand in 59.0 L: 0.15 mg/L of zinc
// at 22.74 % in its heptahydrate is 39 mg; 5 mg/L of magnesium at 9.861 % in Epsom salt, 3.0 g;
// thiamine up to 0.5 mg/L, 30 mg. Each to the next step of the scale, or it would be short again.
func TestSourcesWithoutNitrogen(t *testing.T) {
	r := request(t)
	r.Water.Report, r.Water.Target, r.Water.Salts = plan.Ions{}, plan.Ions{}, nil
	r.Nutrient.Sources = []string{"diammonium phosphate", "zinc sulfate heptahydrate", "Epsom salt", "thiamine hydrochloride"}
	p := made(t, r)
	want := map[string]float64{"zinc sulfate heptahydrate": 0.0391, "Epsom salt": 3.0, "thiamine hydrochloride": 0.0296}
	for _, w := range p.Nutrient.Supplements {
		near(t, w.What, w.Mass.Quantity().In(units.Gram)/want[w.What], 1.01, 0.021)
		delete(want, w.What)
	}
	if len(want) > 0 {
		t.Errorf("not weighed: %v", want)
	}
	if c := cautionWith(p, "is too little for the scale"); !strings.Contains(c, "take 39 mL") {
		t.Errorf("%q", c)
	}
	for _, o := range p.Nutrient.Others {
		if o.Short != (o.Name == "potassium" || o.Name == "other vitamins") {
			t.Errorf("%+v", o)
		}
	}
	// One nitrogen salt alone, and what it leaves open is said.
	r.Nutrient.Sources = r.Nutrient.Sources[:1]
	c := cautionWith(made(t, r), "the yeast is short of")
	for _, what := range []string{"magnesium (Epsom salt)", "zinc (", "thiamine (", "other vitamins ("} {
		if !strings.Contains(c, what) {
			t.Errorf("%q: no %s", c, what)
		}
	}
	// What the water holds already is not weighed again, and that is said.
	r = request(t)
	r.Nutrient.Sources = append(r.Nutrient.Sources, "Epsom salt")
	if p := made(t, r); len(p.Nutrient.Supplements) != 1 || cautionWith(p, "No Epsom salt is weighed") == "" {
		t.Errorf("%+v", p.Nutrient.Supplements)
	}
}

// Yeast matter that is listed after a salt which meets the whole need is weighed for its vitamins, 50 mg/L
// (common practice, no source), and its nitrogen counts: in 59.0 L 2.95 g, 3.0 g on the scale, of 4 % nitrogen are 2.0 mg/L,
// so that the salt, of 21.2 %, is 0.56 g less. What a thiamine salt brings is weighed beside it, as what yeast
// matter brings is not known.
func TestYeastMatterForItsVitamins(t *testing.T) {
	grams := func(p plan.Plan, what string) (g float64) {
		for _, w := range p.Weigh {
			if w.What == what {
				g += w.Mass.Quantity().In(units.Gram)
			}
		}
		return g
	}
	r := request(t)
	r.Nutrient.Sources = []string{"diammonium phosphate", "autolysed yeast", "thiamine hydrochloride"}
	p := made(t, r)
	near(t, "autolysed yeast", grams(p, "autolysed yeast"), 3.0, 1e-9)
	near(t, "thiamine", grams(p, "thiamine hydrochloride"), 0.030, 0.0011)
	near(t, "nitrogen", p.Nutrient.Brought.In(units.MilligramPerLitre), p.Nutrient.Need.In(units.MilligramPerLitre), 0.4)
	for _, o := range p.Nutrient.Others {
		if o.Short && o.Name == "other vitamins" {
			t.Errorf("%+v", o)
		}
	}
	if cautionWith(p, "is there for its vitamins") == "" {
		t.Error("not said that its vitamins are not known")
	}
	r.Nutrient.Sources = []string{"diammonium phosphate"}
	q := made(t, r)
	near(t, "less of the salt", grams(q, "diammonium phosphate")-grams(p, "diammonium phosphate"), 3.0*0.04/0.21214, 0.11)
	// Alone it meets the whole need, and is not weighed twice.
	r.Nutrient.Sources = []string{"autolysed yeast"}
	if p := made(t, r); len(p.Nutrient.Supplements) != 0 || cautionWith(p, "is there for its vitamins") != "" {
		t.Errorf("%+v", p.Nutrient.Supplements)
	}
}
