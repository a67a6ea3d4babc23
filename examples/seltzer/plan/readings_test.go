package plan_test

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

const day = plan.Duration(24 * time.Hour)

func read(after plan.Duration, gravity float64) plan.Reading {
	return plan.Reading{After: after, Gravity: gravity, Temperature: units.Celsius.Of(20)}
}

// Readings that the plan itself foresees say what the plan says.
func TestReadingsAsPlanned(t *testing.T) {
	r := request(t)
	g := made(t, r).Gravity
	r.Readings = []plan.Reading{read(0, g.Original), read(2*day, g.ThirdUsed), read(4*day, g.TwoThirdsUsed), read(8*day, g.Floor), read(11*day, g.Floor)}
	s := made(t, r).State
	if s.State != plan.Finished || len(s.Points) != 4 {
		t.Fatalf("%+v", s)
	}
	for i, want := range []float64{100. / 3, 200. / 3, 100, 100} {
		near(t, "used, %", s.Points[i].Used.In(units.Percent), want, 0.001)
	}
	near(t, "original", s.Original, g.Original, 1e-9)
	near(t, "sugar to add, g", s.AddSugar.In(units.Gram), 0, 0.01)
	near(t, "water to add, g", s.AddWater.In(units.Gram), 0, 0.1)
	near(t, "left, g/L", s.Points[3].Left.In(units.GramPerLitre), 0, 0.01)
}

// A wash that came out strong is let down; a weak one is brought up; by hand: 59 L of
// wash with a tenth too much sugar take a tenth of their water.
func TestReadingsOfTheWash(t *testing.T) {
	r := request(t)
	p := made(t, r)
	volume := units.Litre.Of(59)
	strong := read(0, 1+1.1*(p.Gravity.Original-1))
	strong.Volume = &volume
	r.Readings = []plan.Reading{strong}
	s := made(t, r).State
	near(t, "water to add, kg", s.AddWater.In(units.Kilogram), 5.9*0.0283/0.0277, 0.15) // the tenth is of the minerals' 0.0006 too
	near(t, "strength when dry", s.Final.In(units.PercentVolume), 1.1*4.49, 0.06)
	if s.State != plan.NotBegun || !s.AddSugar.IsZero() {
		t.Errorf("%+v", s)
	}
	weak := read(0, 1+0.9*(p.Gravity.Original-1))
	weak.Volume = &volume
	r.Readings = []plan.Reading{weak}
	// 70.8 g/kg planned; a tenth of 59 L at 70.8 g/L
	near(t, "sugar to add, kg", made(t, r).State.AddSugar.In(units.Kilogram), 0.1*59*0.0715/0.93, 0.02) // in sugar as much as in 93 % of the mass, the water
}

// Why a stalled ferment stalled: what the numbers speak of, and nothing else.
func TestDiagnosis(t *testing.T) {
	sour := 2.95
	good := 3.7
	for _, c := range []struct {
		name   string
		change func(*plan.Request)
		want   []string
	}{
		{"nothing measured", func(*plan.Request) {}, []string{"nothing"}},
		{"pH measured and fine", func(r *plan.Request) { r.Readings[1].PH = &good }, []string{"nothing"}},
		{"sour", func(r *plan.Request) { r.Readings[1].PH = &sour }, []string{"pH"}},
		{"cold", func(r *plan.Request) { r.Readings[1].Temperature = units.Celsius.Of(14) }, []string{"temperature"}},
		{"old yeast", func(r *plan.Request) { age := 300 * day; r.Yeast.Age = &age }, []string{"yeast"}},
		{"no nitrogen to speak of", func(r *plan.Request) { r.Nutrient.Sources = []string{"zinc sulfate heptahydrate"} }, []string{"nitrogen"}},
		{"sour and cold", func(r *plan.Request) {
			r.Readings[1].PH, r.Readings[1].Temperature = &sour, units.Celsius.Of(14)
		}, []string{"pH", "temperature"}},
	} {
		r := request(t)
		r.Readings = []plan.Reading{read(5*day, 1.010), read(8*day, 1.010)}
		c.change(&r)
		p, err := plan.Make(r)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		s := p.State
		if s.State != plan.Stalled || len(s.Diagnosis) != len(c.want) {
			t.Errorf("%s: %s, %q", c.name, s.State, s.Diagnosis)
			continue
		}
		for i, w := range c.want {
			if !strings.HasPrefix(s.Diagnosis[i], w) {
				t.Errorf("%s: %q", c.name, s.Diagnosis)
			}
		}
		if sour := c.name == "sour" || c.name == "sour and cold"; sour != (s.Correction != nil) {
			t.Errorf("%s: correction %v", c.name, s.Correction)
		} else if sour && !strings.Contains(s.Correction.For, " 3.6 when dry") {
			t.Errorf("%s: the correction is not for the end: %s", c.name, s.Correction.For)
		}
		// 1.010 hides about half of the sugar; 0.514 g of CO2 from a gram.
		near(t, c.name+": gas/left", s.Gas.In(units.GramCO2PerLitre)/s.Points[1].Left.In(units.GramPerLitre), 0.51428, 1e-4)
		found := false
		for _, text := range p.Cautions {
			found = found || strings.HasPrefix(text, "Do not pack yet")
		}
		if !found {
			t.Errorf("%s: no caution against packing", c.name)
		}
	}
}

// Readings that no ferment of the wash can give are kept as they were read, told, and never
// called finished.
func TestReadingsInDoubt(t *testing.T) {
	for _, c := range []struct {
		readings []plan.Reading
		want     string
	}{
		{[]plan.Reading{read(8*day, 0.985), read(12*day, 0.985)}, "below the dry floor"},
		{[]plan.Reading{read(day, 1.040)}, "above the original gravity"},
		{[]plan.Reading{read(2*day, 1.010), read(4*day, 1.015)}, "the gravity rose by 0.0050"},
	} {
		r := request(t)
		r.Readings = c.readings
		p := made(t, r)
		if p.State.State != plan.Doubtful || len(p.State.Diagnosis) == 0 || !strings.Contains(p.State.Diagnosis[0], c.want) {
			t.Errorf("%s: %s, %q", c.want, p.State.State, p.State.Diagnosis)
		}
		last := c.readings[len(c.readings)-1]
		near(t, c.want, p.State.Points[len(c.readings)-1].Gravity, last.Gravity, 2e-4)
	}
}

// A ferment that is late by its readings makes the rest late; a stalled one is not dated.
func TestReadingsMoveTheDays(t *testing.T) {
	r := request(t)
	p := made(t, r)
	on := func(p plan.Plan, what string) string {
		for _, e := range p.Schedule {
			if e.What == what {
				return e.Day
			}
		}
		return ""
	}
	if got := on(p, "about dry"); got != "2027-03-15" {
		t.Errorf("dry on %s", got)
	}
	// Two thirds used after 8 d, three times as slow as foreseen: the rest is late as well.
	r.Readings = []plan.Reading{read(8*day, p.Gravity.TwoThirdsUsed)}
	if got := on(made(t, r), "about dry"); got != "2027-03-23" {
		t.Errorf("late: dry on %s", got)
	}
	r.Readings = []plan.Reading{read(5*day, p.Gravity.Floor), read(7*day, p.Gravity.Floor)}
	if got := on(made(t, r), "about dry"); got != "2027-03-13" {
		t.Errorf("done: dry on %s", got)
	}
	r.Readings = []plan.Reading{read(5*day, 1.010), read(8*day, 1.010)}
	stalled := made(t, r)
	found := false
	for _, c := range stalled.Cautions {
		found = found || strings.HasPrefix(c, "The days from")
	}
	if !found || on(stalled, "about dry") != "2027-03-15" {
		t.Errorf("%q", stalled.Cautions)
	}
}

func TestReadingsRefused(t *testing.T) {
	acid := 1.0
	bad := read(day, 1.01)
	bad.PH = &acid
	for _, c := range []struct {
		readings []plan.Reading
		want     string
	}{
		{[]plan.Reading{read(day, 1.01), read(day, 1.01)}, "readings[1].after"},
		{[]plan.Reading{read(day, 10.1)}, "readings[0].gravity"},
		{[]plan.Reading{read(day, math.NaN())}, "readings[0].gravity"},
		{[]plan.Reading{bad}, "readings[0].pH"},
		{[]plan.Reading{{After: day, Gravity: 1.01, Temperature: units.Celsius.Of(80)}}, "readings[0].temperature"},
	} {
		r := request(t)
		r.Readings = c.readings
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("got %v, want %s", err, c.want)
		}
	}
}

// What cannot be planned has a nearest request, which can; what can be comes back.
func TestNearest(t *testing.T) {
	same, changes, err := plan.Nearest(request(t))
	if err != nil || len(changes) != 0 || same.Volume != request(t).Volume {
		t.Errorf("%v, %q", err, changes)
	}
	start := request(t)
	rapid.Check(t, func(t *rapid.T) {
		r := start
		r.Kettle.Capacity, _ = units.Litre.Try(rapid.Float64Range(12, 60).Draw(t, "kettle L"))
		r.Fermenter.Capacity, _ = units.Litre.Try(rapid.Float64Range(12, 60).Draw(t, "fermenter L"))
		if rapid.Bool().Draw(t, "too strong") {
			r.Strength = units.PercentVolume.Of(30)
		}
		if _, err := plan.Make(r); err == nil {
			t.Skip()
		}
		near, changes, err := plan.Nearest(r)
		if err != nil {
			t.Fatal(err)
		}
		if len(changes) == 0 {
			t.Fatal("no change named")
		}
		p, err := plan.Make(near)
		if err != nil {
			t.Fatalf("%q: %v", changes, err)
		}
		full := false
		for _, v := range p.Vessels {
			full = full || v.When == "kettle, start of the boil" && v.Volume.In(units.Litre)/r.Kettle.Capacity.In(units.Litre) > 0.97 ||
				v.When == "fermenter, filled" && v.Volume.In(units.Litre)/r.Fermenter.Capacity.In(units.Litre) > 0.97
		}
		if near.Volume != r.Volume && !full {
			t.Fatalf("%q leaves room", changes)
		}
	})
	for _, c := range []struct {
		change func(*plan.Request)
		want   string
	}{
		{func(r *plan.Request) { r.Buffer.Floor = 7 }, "buffer.floor_pH 5 for 7"},
		{func(r *plan.Request) { _ = r.Packs[0].Content.UnmarshalText([]byte("9 vol")) }, "packs[0].co2 6 vol for 9"},
		{func(r *plan.Request) { _ = r.Packs[0].Content.UnmarshalText([]byte("0.2 g/L")) }, "packs[0].co2 0.5 vol for 0.1012"},
		{func(r *plan.Request) { _ = r.Packs[1].Content.UnmarshalText([]byte("0.55 vol")) }, "packs[1].co2 0.68 vol for 0.55 vol"},
		{func(r *plan.Request) { r.Fermenter.Warmest = units.Celsius.Of(15) }, "fermenter.warmest 20.0 °C for 15.0 °C"},
		{func(r *plan.Request) { r.Flavour = syruped(t, 600, 30).Flavour }, "flavour.added 17.6 mL for 30 mL"},
		{func(r *plan.Request) { r.Fermentable = "juice 12 °Bx" }, "no buffer"},
		{func(r *plan.Request) { r.Fermentable, r.Strength = "juice 12 °Bx", units.PercentVolume.Of(9) }, "no buffer; strength 6.8 % vol for 9"},
	} {
		r := request(t)
		c.change(&r)
		if _, err := plan.Make(r); err == nil {
			t.Errorf("%s: planned as it is", c.want)
		}
		near, changes, err := plan.Nearest(r)
		if err != nil || strings.Join(changes, "; ") != c.want {
			t.Errorf("%s: %q, %v", c.want, changes, err)
			continue
		}
		if _, err := plan.Make(near); err != nil {
			t.Errorf("%s: %v", c.want, err)
		}
		if _, again, err := plan.Nearest(near); err != nil || len(again) != 0 {
			t.Errorf("%s: then %q, %v", c.want, again, err)
		}
	}
	r := request(t)
	r.Fermentable = "sawdust"
	if _, _, err := plan.Nearest(r); err == nil {
		t.Error("sawdust has a nearest")
	}
}

// What no ferment of the wash can show is doubted, not held to the nearest end: more weight lost than its sugar
// has gas for (2.1 kg, by the plan's own balance), a refractometer above the wash or below what is dry.
func TestReadingsBeyondTheWash(t *testing.T) {
	lost, little := units.Kilogram.Of(99), units.Kilogram.Of(1.9)
	high, low, fair := 39.0, 0.3, 4.0
	for what, c := range map[string]struct {
		r      plan.Reading
		doubts bool
	}{
		"weight": {plan.Reading{Lost: &lost}, true}, "less weight": {plan.Reading{Lost: &little}, false},
		"brix above": {plan.Reading{Brix: &high}, true}, "brix below": {plan.Reading{Brix: &low}, true}, "brix": {plan.Reading{Brix: &fair}, false},
	} {
		r := request(t)
		c.r.After, c.r.Temperature = plan.Duration(90*time.Hour), units.Celsius.Of(20)
		r.Readings = []plan.Reading{read(0, 1.0283), c.r}
		p := made(t, r)
		if doubts := p.State.State == plan.Doubtful; doubts != c.doubts {
			t.Errorf("%s: %s, %v", what, p.State.State, p.State.Diagnosis)
		}
	}
}

// A refusal within the search for the packs' strength names the field that is wrong.
func TestTopUpTooLarge(t *testing.T) {
	r := request(t)
	much := units.Litre.Of(300)
	r.Kettle.TopUp = &much
	_, err := plan.Make(r)
	if re, ok := errors.AsType[*plan.RequestError](err); !ok || re.Field != "kettle.top_up" {
		t.Error(err)
	}
}
