package plan_test

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func cautionWith(p plan.Plan, part string) string {
	for _, c := range p.Cautions {
		if strings.Contains(c, part) {
			return c
		}
	}
	return ""
}

// The boil can drop chalk: the floor holds with the least alkalinity that it leaves, and what
// the ends are to each other is stoichiometry. A mEq/L of alkalinity lost, 50.04 mg/L as CaCO3,
// takes half a mmol of calcium, 20.04 mg/L, and 50.04 mg of chalk with it, and asks for one mmol of
// bicarbonate more, 100.115 g/mol (atomic weights CIAAW 2021), less the potassium that yeast
// takes up.
func TestChalkInTheBoil(t *testing.T) {
	p := made(t, request(t))
	w, a := p.Water.Boiled, p.Acidity
	low, high := w.AlkalinityLow.In(units.MilligramPerLitreCaCO3), w.AlkalinityHigh.In(units.MilligramPerLitreCaCO3)
	near(t, "left at equilibrium", low, 18, 2) // Plummer & Busenberg 1982 at 90 °C by a program of its own: 21 from hard water
	near(t, "none dropped", high, p.Water.After.Alkalinity.In(units.MilligramPerLitreCaCO3)*58.4/57.15, 0.7)
	mEq := (high - low) / 50.04
	near(t, "calcium", w.CalciumHigh.Minus(w.CalciumLow).In(units.MilligramPerLitre), 20.04*mEq, 0.05)
	near(t, "scale, g", w.Scale.In(units.Gram), 50.04*mEq*57.3/1000, 0.03)
	near(t, "more buffer, g", a.Buffer.Asked.Minus(a.Clear).In(units.Gram), 100.115*mEq*57.3/1000, 0.4)
	// By the first order of its rate, 0.2/min, a twentieth of the chalk is left after 15 min: e⁻³ of 0.38 in pH.
	near(t, "end", a.Points[3].PH, 3.6+0.38*math.Exp(-3), 0.006)
	if !(a.EndClear > 3.9 && a.EndClear < 4.1) {
		t.Errorf("pH %.2f with nothing dropped", a.EndClear)
	}
	if c := cautionWith(p, "The boil can drop"); !strings.Contains(c, "too wide to dose blind") || !strings.Contains(c, "measure the alkalinity after the boil") {
		t.Errorf("%q", c)
	}

	// Hard tap water and nothing added: the dose is many times that of the water as it is.
	r := request(t)
	calcium, alkalinity := units.MilligramPerLitre.Of(110), units.MilligramPerLitreCaCO3.Of(215)
	r.Water.Report.Calcium, r.Water.Report.Alkalinity = &calcium, &alkalinity
	r.Water.Salts, r.Water.Target = nil, plan.Ions{}
	r.Buffer.Floor = 4.4
	q := made(t, r)
	if more, less := q.Acidity.Buffer.Asked.In(units.Gram), q.Acidity.Clear.In(units.Gram); more < 2*less || more-less < 20 {
		t.Errorf("%.1f g, %.1f g with nothing dropped", more, less)
	}

	// Without a boil, or in soft water, there is nothing to drop and nothing to say.
	r = request(t)
	r.Kettle.Boil = 0
	soft := request(t)
	soft.Water.Report, soft.Water.Salts, soft.Water.Target = plan.Ions{}, nil, plan.Ions{}
	for _, p := range []plan.Plan{made(t, r), made(t, soft)} {
		if p.Acidity.EndClear != 0 || p.Acidity.Buffer.Asked != p.Acidity.Clear || cautionWith(p, "The boil can drop") != "" {
			t.Errorf("%+v", p.Acidity)
		}
	}
}

// Salts that go in after the boil are for all the water in the kettle, with what is then left in it: a kettle that
// keeps 10 L back takes as much more of them as it has water.
func TestSaltsAfterTheBoilAreForTheKettle(t *testing.T) {
	dose := func(loss float64) (perLitre float64) {
		r := request(t)
		r.Water.When, r.Kettle.Loss = "after the boil", units.Litre.Of(checked.Number(loss))
		r.Kettle.Capacity = units.Litre.Of(100)
		p := made(t, r)
		sum := 0.0
		for _, d := range p.Water.Doses {
			sum += d.Asked.In(units.Gram)
		}
		return sum / (p.Water.Volume.In(units.Litre) - 1.25)
	}
	near(t, "g/L", dose(10), dose(0.5), 0.002*dose(0.5))
}
