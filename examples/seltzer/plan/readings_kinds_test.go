package plan_test

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func brix(after plan.Duration, shown float64) plan.Reading {
	return plan.Reading{After: after, Temperature: units.Celsius.Of(20), Brix: &shown}
}

// The wash may be read by its Brix alone, or by its volume alone: 9.0 °Bx are 1.0359 (sucrose by mass, recalled from memory) and 0.0006 of salts,
// 5.8 % vol or so when dry; 30 L stay 30 L.
func TestWashByBrixOrVolume(t *testing.T) {
	r := request(t)
	p := made(t, r)
	r.Readings = []plan.Reading{brix(0, 9)}
	s := made(t, r).State
	near(t, "original", s.Original, 1.0365, 3e-4)
	near(t, "% vol", s.Final.In(units.PercentVolume), 4.493*(s.Original-1)/(p.Gravity.Original-1), 0.1)
	if advice(s, "let it down") == nil {
		t.Errorf("%+v", s.Advice)
	}
	r.Readings = append(r.Readings, read(3*day, 1.0140))
	if used := made(t, r).State.Points[0].Used.In(units.Percent); math.Abs(used-100*(1.0365-1.0140)/(1.0365-0.9930)) > 2 {
		t.Errorf("%.1f %% used of a wash of 9 °Bx", used)
	}
	both := read(0, p.Gravity.Original)
	high := 12.0
	both.Brix = &high
	r.Readings = []plan.Reading{both}
	if s := made(t, r).State; s.State != plan.Doubtful || !strings.Contains(s.Diagnosis[0], "hydrometer and refractometer contradict") {
		t.Errorf("%s, %q", s.State, s.Diagnosis)
	}
	thirty := units.Litre.Of(30)
	r.Readings = []plan.Reading{{After: 0, Temperature: units.Celsius.Of(20), Volume: &thirty}}
	near(t, "L", made(t, r).State.AsItStands.Volume.In(units.Litre), 30, 0.2)
	r.Readings = []plan.Reading{brix(0, 39)}
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "readings[0].brix: 39: ") {
		t.Error(err)
	}
	r.Readings = []plan.Reading{{After: day, Temperature: units.Celsius.Of(20)}}
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "readings[0].gravity: missing: ") {
		t.Error(err)
	}
}

// What no ferment can show is in doubt, and says what was read: a pH that carbonic acid alone rules out, one more sour than any
// yeast makes, sugar that went faster than yeast can, a refractometer or a scale that goes back.
func TestImpossibleIsDoubted(t *testing.T) {
	lost := func(after float64, kilos float64) plan.Reading {
		x := units.Kilogram.Of(checked.Number(kilos))
		return plan.Reading{After: hours(after), Temperature: units.Celsius.Of(20), Lost: &x}
	}
	sour := func(ph float64) plan.Reading {
		one := read(hours(60), 1.0100)
		one.PH = &ph
		return one
	}
	for _, c := range []struct {
		readings []plan.Reading
		want     string
	}{
		{[]plan.Reading{sour(9)}, "pH 9.00"},
		{[]plan.Reading{sour(7.5)}, "pH 7.50"},
		{[]plan.Reading{sour(2)}, "pH 2.00"},
		{[]plan.Reading{read(hours(2), 0.996)}, "faster than any yeast"},
		{[]plan.Reading{brix(hours(40), 4), brix(hours(60), 6)}, "by the refractometer the gravity rose"},
		{[]plan.Reading{lost(40, 1), lost(60, 0.4)}, "by the weight lost the gravity rose"},
		{[]plan.Reading{read(2*day, 1.010), read(4*day, 1.015)}, "after 4 d: the gravity rose by 0.0050"},
	} {
		r := request(t)
		r.Readings = c.readings
		s := made(t, r).State
		if s.State != plan.Doubtful || len(s.Diagnosis) == 0 || !strings.Contains(s.Diagnosis[0], c.want) {
			t.Errorf("%s: %s, %q", c.want, s.State, s.Diagnosis)
		}
		if len(s.Advice) > 0 {
			t.Errorf("%s: %+v", c.want, s.Advice)
		}
	}
	for _, fair := range [][]plan.Reading{{sour(5)}, {sour(2.9)}, {read(hours(14), 1.0100)}} {
		r := request(t)
		r.Readings = fair
		if s := made(t, r).State; s.State == plan.Doubtful {
			t.Errorf("%q", s.Diagnosis)
		}
	}
}

// A vessel that was read too hot is an alarm at once and a cause with its remedy; warmer than the plan's warmest, the gas that
// the priming counts on is gone. A sample's temperature is not taken for the vessel's.
func TestVesselRead(t *testing.T) {
	r := request(t)
	hot, warm, cold := units.Celsius.Of(38), units.Celsius.Of(26), units.Celsius.Of(14)
	r.Readings = []plan.Reading{read(5*day, 1.010), read(8*day, 1.010)}
	r.Readings[1].Vessel = &hot
	p := made(t, r)
	if !strings.HasPrefix(p.Cautions[0], "The vessel was read at 38 °C") {
		t.Error(p.Cautions[0])
	}
	if d := p.State.Diagnosis; len(d) != 1 || !strings.HasPrefix(d[0], "temperature: ") ||
		p.State.Advice[0].Do != "cool it" || p.State.Advice[0].To.In(units.Celsius) != 20 {
		t.Errorf("%q, %+v", d, p.State.Advice)
	}
	r.Readings[1].Vessel = &warm
	p = made(t, r)
	if text := strings.Join(p.Cautions, "\n"); !strings.Contains(text, "fermenter.warmest, 22 °C") || strings.Contains(text, "yeasts die") {
		t.Error(text)
	}
	r.Readings[1].Vessel, r.Readings[1].Temperature = nil, cold
	if d := made(t, r).State.Diagnosis; len(d) != 1 || !strings.Contains(d[0], "the sample was 6.0 K below the plan's") {
		t.Errorf("%q", d)
	}
	r.Yeast.Strain = &plan.Strain{Name: "Ale", Warmest: new(units.Celsius.Of(24))}
	r.Readings[1].Vessel = &warm
	if d := made(t, r).State.Diagnosis; len(d) != 1 || !strings.Contains(d[0], "above the 24 °C of its sheet") {
		t.Errorf("%q", d)
	}
	r.Yeast.Strain = nil
}

// The next portion of the sugar is tried by itself, and what does not fit is told.
func TestNextPortionTried(t *testing.T) {
	r := request(t)
	r.Portions = 3
	one, level := read(hours(60), 1.000), units.Litre.Of(74.9)
	one.Portions = new(1)
	r.Readings = []plan.Reading{one}
	p := made(t, r)
	a := advice(p.State, "the next portion")
	if a == nil || a.Cannot != "" {
		t.Fatalf("%+v", p.State.Advice)
	}
	near(t, "all portions, % vol", a.End.Strength.In(units.PercentVolume), 4.49, 0.02)
	r.Readings[0].Volume = &level
	p = made(t, r)
	if a := advice(p.State, "the next portion"); a == nil || !strings.Contains(a.Cannot, "of a fermenter of 75.0 L") || p.State.AsItStands != nil {
		t.Errorf("%+v, %+v", p.State.Advice, p.State.AsItStands)
	}
}

// The pH of a wash is read before it holds the gas of a ferment, and after the water gave up some: what lies between tells
// nothing, what lies below is an acid that the plan has not.
func TestPHOfTheWash(t *testing.T) {
	r := request(t)
	p := made(t, r)
	planned := math.Round(100*p.Acidity.Points[0].PH) / 100
	wash := read(0, p.Gravity.Original)
	r.Readings = []plan.Reading{wash}
	without := made(t, r).State.AsItStands
	for _, ph := range []float64{planned, planned - 0.3, 7, 3.5} {
		r.Readings[0].PH = &ph
		end := made(t, r).State.AsItStands
		if end == nil {
			t.Fatalf("pH %.2f: nothing is carried on", ph)
		}
		near(t, "gravity at the end", end.Gravity, without.Gravity, 1e-4)
		switch {
		case ph > 6:
			near(t, "pH at the end", end.PH, without.PH, 0.01)
		case end.PH > without.PH-0.3:
			t.Errorf("pH %.2f of the wash comes to %.2f, %.2f by the plan", ph, end.PH, without.PH)
		}
	}
	one := read(hours(45), 1.0130) // above its floor still, and going to fall below it
	r.Readings = []plan.Reading{one}
	for _, c := range []struct {
		ph   float64
		want bool
	}{{3.62, true}, {4.4, false}} {
		r.Readings[0].PH = &c.ph
		p := made(t, r)
		a := advice(p.State, "buffer")
		if told := strings.HasPrefix(p.Cautions[0], "By the pH that was read it comes to "); told != c.want || (a != nil) != c.want {
			t.Errorf("pH %.2f: %s, %+v", c.ph, p.Cautions[0], a)
		} else if c.want {
			near(t, "pH at the end", a.End.PH, 3.6, 0.02)
		}
	}
}

// A wash that is far too strong is carried on and let down all the same, and told that no yeast ends it.
func TestFarTooStrong(t *testing.T) {
	r := request(t)
	r.Strength = units.PercentVolume.Of(11)
	strong := read(0, 1.140)
	ph := 5.0
	strong.PH = &ph
	strong.Volume = new(units.Litre.Of(20))
	r.Readings = []plan.Reading{strong}
	p := made(t, r)
	a := advice(p.State, "let it down")
	if a == nil || a.End == nil || !strings.Contains(strings.Join(p.Cautions, "\n"), "few yeasts end above 15 % vol") {
		t.Errorf("%+v, %+v", p.State, a)
	}
	near(t, "let down, % vol", a.End.Strength.In(units.PercentVolume), p.Request.Strength.In(units.PercentVolume), 0.4)
}
