package plan_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// portioned is a batch whose sugar goes in by three portions, with readings.
func portioned(t *testing.T, rs ...plan.Reading) plan.Request {
	r := request(t)
	r.Portions, r.Readings = 3, rs
	return r
}

func readAfter(hours int, gravity float64, portions int) plan.Reading {
	r := plan.Reading{After: plan.Duration(time.Duration(hours) * time.Hour), Gravity: gravity, Temperature: units.Celsius.Of(20)}
	if portions > 0 {
		r.Portions = &portions
	}
	return r
}

// By hand: a third of the sugar fell from 1.0101 by so much of the 0.0336 that all of it falls by; the next third raises
// it by 0.0090, 0.386 of its mass a litre. As planned it ends as planned.
func TestReadingsWithPortions(t *testing.T) {
	plain := made(t, portioned(t))
	g := plain.Gravity
	fall := g.Original - g.Floor
	p := made(t, portioned(t, readAfter(0, g.First, 0), readAfter(24, g.Portions[0].Gravity, 1), readAfter(48, g.Portions[1].Gravity, 2)))
	s := p.State
	near(t, "used, one portion", s.Points[0].Used.In(units.Percent), 100*(g.First-g.Portions[0].Gravity)/fall, 1.2)
	near(t, "used, as planned", s.Points[0].Used.In(units.Percent), 100*2./9, 0.7)
	near(t, "used, two portions", s.Points[1].Used.In(units.Percent), 100*4./9, 0.7)
	sugar := plain.Nutrient.Sugar.In(units.GramPerLitre)
	near(t, "left of one portion", s.Points[0].Left.In(units.GramPerLitre), sugar/9, 1)
	near(t, "left of two", s.Points[1].Left.In(units.GramPerLitre), sugar*2/9, 1)
	near(t, "floor", s.Floor, g.Floor, 0.0001)
	near(t, "end", s.AsItStands.Gravity, g.Floor, 0.0004)
	base := 0.0
	for _, v := range plain.Vessels {
		if v.When == "fermenter, fermented dry" {
			base = v.Volume.In(units.Litre)
		}
	}
	near(t, "volume at the end", s.AsItStands.Volume.In(units.Litre), base, 0.15)
	if s.State != plan.Fermenting || s.Advice[0].Do != "the next portion of the sugar" ||
		s.Advice[0].Weigh.Mass.Quantity().Compare(g.Portions[1].Sugar.Mass.Quantity()) != 0 {
		t.Errorf("%s, %+v", s.State, s.Advice)
	}
	// By weight: what the gas of so much of the sugar weighs, less the 1.4 g/L that is kept.
	lost := units.Kilogram.Of(checked.Number(p.Room.CO2.In(units.Kilogram)*4/9 - 0.0014*58))
	weight := readAfter(48, 0, 2)
	weight.Lost = &lost
	near(t, "used, by weight", made(t, portioned(t, weight)).State.Points[0].Used.In(units.Percent), 100*4./9, 1)
	// All that is in is used, for days: it waits, and has not stopped; with all of it in it is finished.
	s = made(t, portioned(t, readAfter(0, g.First, 0), readAfter(96, 0.9985, 1), readAfter(150, 0.9985, 1))).State
	if s.State != plan.Fermenting || s.Advice[0].Do != "the next portion of the sugar" {
		t.Errorf("%s: %+v", s.State, s.Points)
	}
	s = made(t, portioned(t, readAfter(0, g.First, 0), readAfter(240, g.Floor, 3), readAfter(300, g.Floor, 3))).State
	if s.State != plan.Finished {
		t.Errorf("%s", s.State)
	}
	s = made(t, portioned(t, readAfter(0, g.First, 0), readAfter(240, 1.001, 3), readAfter(300, 1.001, 3))).State
	if s.State != plan.Stalled {
		t.Errorf("%s", s.State)
	}
}

// Which portions are in is told, and in an order that can be.
func TestPortionsThatAreIn(t *testing.T) {
	for _, c := range []struct {
		r    plan.Request
		says string
	}{
		{portioned(t, readAfter(24, 1.003, 0)), "readings[0].portions: missing: how many of the 3 portions are in"},
		{portioned(t, readAfter(24, 1.003, 4)), "readings[0].portions: 4: 1 to 3"},
		{portioned(t, readAfter(24, 1.003, 2), readAfter(48, 1.002, 1)), "readings[1].portions: 1: 2 to 3"},
		{portioned(t, readAfter(0, 1.010, 2)), "readings[0].portions: 2: 1 in the wash itself"},
		{func() plan.Request {
			r := portioned(t, readAfter(24, 1.003, 1))
			r.Portions = 0
			return r
		}(), "readings[0].portions: 1: left out"},
	} {
		if _, err := plan.Make(c.r); err == nil || !strings.HasPrefix(err.Error(), c.says) {
			t.Errorf("%v, want %s", err, c.says)
		}
	}
}

// Salts after the boil and a top-up: the salts meet the target in what both come to, and the batch that is carried
// forward has that water.
func TestSaltsAfterBesideATopUp(t *testing.T) {
	r := request(t)
	r.Water.When, r.Kettle.TopUp = "after the boil", new(units.Litre.Of(20))
	p := made(t, r)
	for _, d := range p.Water.Doses {
		if d.For != "fermenter, after the top-up" {
			t.Errorf("%+v", d)
		}
	}
	near(t, "calcium", p.Water.After.Calcium.In(units.MilligramPerLitre), r.Water.Target.Calcium.In(units.MilligramPerLitre), 1)
	// By hand: the tap's 14 mg/L, of which the boil's chalk leaves less, and what the salts hold in some 56.9 L of water.
	grams := func(what string) (g float64) {
		for _, d := range p.Water.Doses {
			if d.What == what {
				g = d.Mass.Quantity().In(units.Gram)
			}
		}
		return g
	}
	added := (grams("gypsum")*0.2328 + grams("calcium chloride dihydrate")*0.2726) * 1000 / 56.9
	if had := p.Water.After.Calcium.In(units.MilligramPerLitre) - added; had < 6 || had > 15 {
		t.Errorf("%.1f mg/L of calcium before the salts", had)
	}
	drawn, err := plan.Draw(r, 10)
	if err != nil {
		t.Fatal(err)
	}
	end := p.Acidity.Points[len(p.Acidity.Points)-1]
	for _, d := range drawn {
		if strings.HasPrefix(d.What, "pH") && math.Abs(d.Usual-end.PH) > samePH {
			t.Errorf("pH %.2f, %.2f in the plan", d.Usual, end.PH)
		}
	}
	in, out := 0.0, 0.0
	for _, l := range p.Balance.In {
		in += l.Mass.In(units.Kilogram)
	}
	for _, l := range p.Balance.Out {
		out += l.Mass.In(units.Kilogram)
	}
	if math.Abs(in-out) > 1e-9*in {
		t.Errorf("%g kg in, %g out", in, out)
	}
}

// A kettle that is too small gets the top-up that makes it do.
func TestNearestTopUp(t *testing.T) {
	r := request(t)
	r.Kettle.Capacity = units.Litre.Of(50)
	near, changes, err := plan.Nearest(r)
	if err != nil || len(changes) != 1 || changes[0] != "kettle.top_up 13 L" || near.Volume != r.Volume {
		t.Errorf("%q, %v", changes, err)
	}
	made(t, near)
}

// Where the yeast is to leave sugar no gravity is called dry.
func TestPlannedEnd(t *testing.T) {
	r := request(t)
	r.Packs[1].Priming, r.Packs[1].Filled = "", "counter-pressure"
	part := units.Percent.Of(75)
	r.Yeast.Attenuation = &part
	r.Readings = []plan.Reading{readAfter(100, 0.9946, 0)}
	p := made(t, r)
	if text := strings.Join(append(p.State.Diagnosis, p.Cautions...), "\n"); !strings.Contains(text, "below the planned end") ||
		strings.Contains(text, "dry floor") {
		t.Error(text)
	}
}

func ExampleRequest_EndName() {
	fmt.Println(plan.Request{}.EndName())
	// Output: dry floor dry
}
