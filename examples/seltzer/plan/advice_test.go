package plan_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func hours(h float64) plan.Duration { return plan.Duration(h * float64(time.Hour)) }

// A buffer is for the liquid that is there: for half of the batch it is half of the dose, and carried to the end it
// comes to the pH that it is for. In the wash, before anything ferments, it is found and told as well.
func TestBufferForWhatIsThere(t *testing.T) {
	sour := 3.0
	r := request(t)
	whole := made(t, r).Vessels
	full := whole[len(whole)-1].Volume
	for _, v := range whole {
		if v.When == "fermenter, filled" {
			full = v.Volume
		}
	}
	dose := func(part, after, gravity float64) float64 {
		one := read(hours(after), gravity)
		one.PH = &sour
		v := units.Litre.Of(checked.Number(part * full.In(units.Litre)))
		one.Volume = &v
		r.Readings = []plan.Reading{one}
		p := made(t, r)
		a := advice(p.State, "buffer")
		if a == nil || a.End == nil || p.State.Correction == nil || a.Weigh.Mass.String() != p.State.Correction.Mass.String() {
			t.Fatalf("%g of it after %g h: %+v, %+v", part, after, p.State.Correction, p.State.Advice)
		}
		near(t, "pH at the end", a.End.PH, 3.6, 0.02)
		if !strings.HasPrefix(p.Cautions[0], "The pH of 3.00 is below 3.6") || !strings.Contains(p.Cautions[0], p.State.Correction.Mass.String()) {
			t.Error(p.Cautions[0])
		}
		return a.Weigh.Asked.In(units.Gram)
	}
	near(t, "half of the dose", dose(0.5, 30, 1.0150)/dose(1, 30, 1.0150), 0.5, 0.005)
	if dose(1, 0, 1.0283) < 5 {
		t.Error("no buffer for a wash of pH 3.0")
	}
	r.Readings = []plan.Reading{{After: 0, Temperature: units.Celsius.Of(20), PH: &sour}} // the pH alone
	if p := made(t, r); !strings.HasPrefix(p.Cautions[0], "The pH of 3.00 is below 3.6") || advice(p.State, "buffer") == nil {
		t.Error(p.Cautions[0])
	}
	r.Readings = []plan.Reading{read(hours(30), 1.0150), read(hours(36), 1.0120)} // it stays an alarm until the pH is read again
	r.Readings[0].PH = &sour
	if p := made(t, r); !strings.HasPrefix(p.Cautions[0], "The pH of 3.00 after 30 h is below 3.6") {
		t.Error(p.Cautions[0])
	} else {
		near(t, "pH at the end", advice(p.State, "buffer").End.PH, 3.6, 0.02)
	}
	for _, r.Fermenter.Also = range [][]plan.AlsoFermenter{nil, {{Capacity: units.Litre.Of(20)}}} {
		much := units.Litre.Of(100)
		r.Readings[1].Volume = &much
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "readings[1].volume: 100.0 L: at most the ") {
			t.Error(err)
		}
	}
}

// A wash in which nothing has begun ten days on is not told to wait: warmth and fresh yeast are tried, and waiting
// leads to what there is.
func TestOverdueStart(t *testing.T) {
	cold := units.Celsius.Of(14)
	r := request(t)
	late := read(10*day, 1.0283)
	late.Vessel = &cold
	r.Readings = []plan.Reading{late}
	s := made(t, r).State
	if s.State != plan.NotBegun || len(s.Diagnosis) == 0 || !strings.HasPrefix(s.Diagnosis[0], "temperature") {
		t.Errorf("%s: %q", s.State, s.Diagnosis)
	}
	yeast, warm, wait := advice(s, "fresh yeast"), advice(s, "warm"), advice(s, "wait")
	if yeast == nil || warm == nil || wait == nil {
		t.Fatalf("%+v", s.Advice)
	}
	near(t, "waited for, % vol", wait.End.Strength.In(units.PercentVolume), 0, 0.05)
	near(t, "fresh yeast, % vol", yeast.End.Strength.In(units.PercentVolume), 4.50, 0.02)
	if time.Duration(yeast.Dry.Median) < 12*24*time.Hour || wait.Dry != (plan.Range{}) || s.Advice[0].Do != "warm it" {
		t.Errorf("%+v", s.Advice)
	}
	// As much as was pitched: by the plan's own weight, all of it in the batch by then.
	if p := made(t, r); yeast.Weigh == nil || yeast.Weigh.Mass.String() != p.Yeast.Mass.String() {
		t.Errorf("%+v of %v", yeast.Weigh, p.Yeast.Mass)
	}
	r.Readings = []plan.Reading{read(hours(10), 1.0283)} // and not before it is due
	if s := made(t, r).State; advice(s, "fresh") != nil || advice(s, "wait").End.Strength.In(units.PercentVolume) < 4.4 {
		t.Errorf("%+v", s.Advice)
	}
}

// A nutrient that is advised is the whole addition, of both its sources, for the volume that is there.
func TestWholeAdditionAdvised(t *testing.T) {
	r := request(t)
	r.Strength, r.Nutrient.Demand = units.PercentVolume.Of(11), "high"
	r.Nutrient.Sources = []string{"monoammonium phosphate", "ammonium sulfate"}
	p := made(t, r)
	stage := p.Nutrient.Stages[1]
	if len(stage.Doses) != 2 {
		t.Fatalf("%+v", p.Nutrient.Stages)
	}
	half := units.Litre.Of(30)
	wash := read(0, p.Gravity.Original)
	wash.Volume = &half
	r.Readings = []plan.Reading{wash, read(5*day, p.Gravity.Original-0.004), read(8*day, p.Gravity.Original-0.005)}
	s := made(t, r).State
	a := advice(s, "nutrient")
	if a == nil || len(a.With) != 1 {
		t.Fatalf("%s: %+v", s.State, s.Advice)
	}
	for _, v := range p.Vessels {
		if v.When != "fermenter, filled" {
			continue
		}
		for i, w := range append([]plan.Weight{*a.Weigh}, a.With...) {
			near(t, w.What, w.Asked.In(units.Gram), 30/v.Volume.In(units.Litre)*stage.Doses[i].Mass.Quantity().In(units.Gram), 0.02)
		}
	}
}

// A wash that is too strong for its vessel is let down as far as leaves a tenth of it to the foam, and that leads to what
// it says: by hand, 60 L with 7.5 L of water are as much weaker.
func TestLetDownAsFarAsFits(t *testing.T) {
	r := request(t)
	strong, sixty := read(0, 1.040), units.Litre.Of(60)
	strong.Volume = &sixty
	r.Readings = []plan.Reading{strong}
	s := made(t, r).State
	if len(s.Advice) != 2 || s.Advice[0].Cannot == "" || s.Advice[1].Cannot != "" {
		t.Fatalf("%+v", s.Advice)
	}
	a := s.Advice[1]
	near(t, "water, kg", a.Weigh.Mass.Quantity().In(units.Kilogram), 7.5, 0.1)
	near(t, "strength", a.End.Strength.In(units.PercentVolume), 6.456*60/67.5, 0.05)
	if math.Abs(a.End.Volume.In(units.Litre)-67.2) > 0.4 {
		t.Errorf("%v", a.End.Volume)
	}
}

// Packing is tried as all else: the drink as it was read goes into its packs with the primer of the plan, and the sugar that
// it still has makes gas there. By hand, 4 g/L of sucrose in the base make 0.498 g of CO2 a gram, and at most 0.514.
func TestPackingIsTried(t *testing.T) {
	r := request(t)
	p := made(t, r)
	floor := p.Gravity.Floor
	finished := func(above float64) (plan.Plan, *plan.Advice) {
		g := floor + above
		r.Readings = []plan.Reading{read(8*day, g), read(11*day, g)}
		q := made(t, r)
		a := advice(q.State, "pack")
		if q.State.State != plan.Finished || a == nil {
			t.Fatalf("%s, %+v", q.State.State, q.State.Advice)
		}
		return q, a
	}
	_, at := finished(0)
	if len(at.Packs) != 2 || at.Cannot != "" {
		t.Fatalf("%+v", at)
	}
	for i, k := range at.Packs {
		near(t, k.Kind+", % vol", k.Strength.In(units.PercentVolume), p.Packs[i].Strength.In(units.PercentVolume), 0.02)
		near(t, k.Kind+", g/L", k.Content.In(units.GramCO2PerLitre), p.Packs[i].Content.In(units.GramCO2PerLitre), 0.03)
		near(t, k.Kind+", highest bar", k.Highest.In(units.BarGauge), p.Packs[i].Highest.Gauge.In(units.BarGauge), 0.05)
	}
	q, above := finished(0.0018)
	left := q.State.Points[1].Left.In(units.GramPerLitre)
	near(t, "sugar left, g/L", left, 0.0018/(p.Gravity.Original-floor)*p.Nutrient.Sugar.In(units.GramPerLitre), 0.3)
	base := p.Packs[1].Base.In(units.Litre) / 20 // of a litre of drink
	bottle := func(a *plan.Advice) plan.PackOutcome { return a.Packs[1] }
	near(t, "gas more, g/L", bottle(above).Content.In(units.GramCO2PerLitre)-bottle(at).Content.In(units.GramCO2PerLitre), 0.498*left*base*0.97, 0.1)
	if more := bottle(above).Highest.In(units.BarGauge) - bottle(at).Highest.In(units.BarGauge); more < 1 || more > 2.5 {
		t.Errorf("%.2f bar more from %.1f g/L of sugar", more, left)
	}
	if text := strings.Join(q.Cautions, "\n"); !strings.Contains(text, "g/L of sugar, which make") {
		t.Error("nothing is said of the sugar that is left")
	}
	r.Packs[1].Rating = units.BarGauge.Of(6)
	if _, a := finished(0); a.Cannot != "" {
		t.Error(a.Cannot)
	}
	if q, a := finished(0.0018); !strings.Contains(a.Cannot, "above their rating of 6.0 bar") || advice(q.State, "wait") == nil ||
		!strings.Contains(strings.Join(q.Cautions, "\n"), "Do not pack yet: ") {
		t.Errorf("%+v", q.State.Advice)
	}
}

// What cannot tell the last 0.002 of gravity does not call a ferment finished: a hydrometer of coarse divisions, a scale.
func TestTooCoarseForFinished(t *testing.T) {
	r := request(t)
	floor := made(t, r).Gravity.Floor
	r.Readings = []plan.Reading{read(8*day, floor), read(11*day, floor)}
	r.Instruments.Hydrometer = 0.005
	if s := made(t, r).State; s.State != plan.Near || len(s.Diagnosis) != 1 || !strings.Contains(s.Diagnosis[0], "finer hydrometer") {
		t.Errorf("%s, %q", s.State, s.Diagnosis)
	}
	r.Instruments.Hydrometer = 0.002
	if s := made(t, r).State; s.State != plan.Finished {
		t.Errorf("%s, %q", s.State, s.Diagnosis)
	}
}

// Each cause that the numbers speak of has its remedy among what was tried, in the order of the causes.
func TestEachCauseHasItsRemedy(t *testing.T) {
	sour, cold, old := 2.95, units.Celsius.Of(12), 300*day
	for _, c := range []struct {
		name   string
		change func(*plan.Request)
		causes []string
		yeast  string // in why fresh yeast is tried
	}{
		{"nitrogen", func(r *plan.Request) { r.Nutrient.Sources = []string{"zinc sulfate heptahydrate"} }, []string{"nitrogen"}, ""},
		{"sour", func(r *plan.Request) { r.Readings[1].PH = &sour }, []string{"pH"}, "buffer"},
		{"cold", func(r *plan.Request) { r.Readings[1].Vessel = &cold }, []string{"temperature"}, ""},
		{"old", func(r *plan.Request) { r.Yeast.Age = &old }, []string{"yeast"}, ""},
		{"all", func(r *plan.Request) {
			r.Readings[1].PH, r.Readings[1].Vessel, r.Yeast.Age, r.Nutrient.Sources = &sour, &cold, &old, []string{"zinc sulfate heptahydrate"}
		}, []string{"nitrogen", "temperature", "pH", "yeast"}, "buffer"},
		{"strong", func(r *plan.Request) {
			r.Strength = units.PercentVolume.Of(9)
			r.Yeast.Strain = &plan.Strain{Name: "Ale", Tolerance: new(units.PercentVolume.Of(9.5))}
			r.Readings = []plan.Reading{read(15*day, 0.9955), read(19*day, 0.9955)}
		}, []string{"strength"}, "bears more"},
	} {
		r := request(t)
		r.Readings = []plan.Reading{read(5*day, 1.010), read(8*day, 1.010)}
		c.change(&r)
		s := made(t, r).State
		if s.State != plan.Stalled || len(s.Diagnosis) != len(c.causes) {
			t.Errorf("%s: %s, %q", c.name, s.State, s.Diagnosis)
			continue
		}
		for i, cause := range c.causes {
			if !strings.HasPrefix(s.Diagnosis[i], cause+": ") || s.Advice[i].Cause != cause || s.Advice[i].Cannot != "" || s.Advice[i].End == nil {
				t.Errorf("%s: %q, %+v", c.name, s.Diagnosis, s.Advice[i])
			}
		}
		if a := advice(s, "fresh yeast"); a == nil || !strings.Contains(a.Why, c.yeast) {
			t.Errorf("%s: %+v", c.name, a)
		}
	}
	// What is fed late meets the need of the plan: 138 mg/L or so of N on 57 L, 21.2 % of diammonium phosphate.
	r := request(t)
	p := made(t, r)
	r.Nutrient.Sources = []string{"zinc sulfate heptahydrate"}
	r.Readings = []plan.Reading{read(5*day, 1.010), read(8*day, 1.010)}
	a := advice(made(t, r).State, "nutrient")
	near(t, "diammonium phosphate, g", a.Weigh.Mass.Quantity().In(units.Gram),
		p.Nutrient.Need.In(units.GramPerLitre)*p.Nutrient.Volume.In(units.Litre)/0.2121, 0.5)
}

// Fresh yeast is foreseen in the pH that was read: in a sour wash it takes longer.
func TestFreshYeastInTheReadPH(t *testing.T) {
	r := request(t)
	r.Readings = []plan.Reading{read(5*day, 1.010), read(8*day, 1.010)}
	fair := advice(made(t, r).State, "fresh yeast").Dry.Median
	sour := 2.8
	r.Readings[1].PH = &sour
	if got := advice(made(t, r).State, "fresh yeast").Dry.Median; got <= fair {
		t.Errorf("dry after %v at pH 2.8, %v as planned", got, fair)
	}
}

// A buffer counts the nutrient that is still to come, whose ammonium makes it more sour: with it the end is at the floor.
func TestBufferCountsTheNutrientToCome(t *testing.T) {
	sour := 2.9
	r := request(t)
	one := read(hours(30), 1.0230)
	one.PH = &sour
	r.Readings = []plan.Reading{one}
	s := made(t, r).State
	a, fed := advice(s, "buffer"), advice(s, "nutrient")
	if a == nil || fed == nil {
		t.Fatalf("%+v", s.Advice)
	}
	near(t, "with the buffer and all nutrient to come", a.End.PH, 3.6, 0.02)
	if !strings.Contains(a.Why, "nutrient that is still to come") || fed.End.PH < 3.55 {
		t.Errorf("%s; with the next addition pH %.2f", a.Why, fed.End.PH)
	}
}
