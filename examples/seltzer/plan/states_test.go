package plan

import (
	"math"
	"testing"

	forward "example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/units"
)

// The vessels that are printed are the states of the batch, carried forward with the weights as the scale shows
// them, but for what the plan's own arithmetic leaves out: the volume of crystal water (0.01 %) and nutrient (as much again), after the
// ferment that of the yeast's own make-up (0.05 %), and which salts are in the liquid (0.0001 to 0.0002 of gravity).
func TestVesselsAreStates(t *testing.T) {
	for name, change := range map[string]func(*Request){
		"as it is":  func(*Request) {},
		"dextrose":  func(r *Request) { r.Fermentable = "dextrose monohydrate" },
		"stronger":  func(r *Request) { r.Strength = units.PercentVolume.Of(6) },
		"long boil": func(r *Request) { r.Kettle.Boil *= 3 },
		"no loss":   func(r *Request) { r.Kettle.Loss = units.Volume{} },
	} {
		r := builtIn(t)
		change(&r)
		m, err := newMaker(r)
		if err != nil {
			t.Fatal(name, err)
		}
		c, deeds, err := m.atStart()
		if err != nil {
			t.Fatal(name, err)
		}
		compared := 0
		same := func(when string, volume float64) {
			t.Helper()
			v, err := c.state.Volume(at20)
			if err != nil {
				t.Fatal(name, err)
			}
			g, err := c.state.Gravity()
			if err != nil {
				t.Fatal(name, err)
			}
			for _, p := range m.plan.Vessels {
				if p.When != when {
					continue
				}
				compared++
				if off := p.Cold.In(units.Litre)/v.In(units.Litre) - 1; !(math.Abs(off) < volume) {
					t.Errorf("%s, %s: %v, carried forward %v", name, when, p.Cold, v)
				}
				if !(math.Abs(p.Gravity-g.SG()) < 0.0002) {
					t.Errorf("%s, %s: %.5f, carried forward %.5f", name, when, p.Gravity, g.SG())
				}
			}
		}
		for _, d := range deeds {
			boil, ferment := d.step.Kind == forward.Boil, d.step.Kind == forward.Ferment
			if boil {
				same("kettle, sugar dissolved, cold", 1e-4)
			}
			if ferment {
				same("fermenter, filled", 2e-4)
				if err := c.measured(d.step, kg(m.batch.base.Ethanol())); err != nil {
					t.Fatal(name, err)
				}
			}
			if _, err := c.do(d.step); err != nil {
				t.Fatal(name, err)
			}
			if boil {
				same("kettle, end of the boil", 1e-4)
			}
			if ferment {
				same("fermenter, fermented dry", 6e-4)
			}
		}
		if compared != 4 {
			t.Errorf("%s: %d vessels compared", name, compared)
		}
	}
}
