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
	if p := made(t, r); len(p.Nutrient.Supplements) != 0 || cautionWith(p, "No Epsom salt is weighed") == "" {
		t.Errorf("%+v", p.Nutrient.Supplements)
	}
}
