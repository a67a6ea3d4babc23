package plan_test

import (
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Half of the sugar used, told by each instrument alone: the refractometer of a wash of 7.1 °Bx
// shows about 3.9 then (3.5 of sugar, and 2.25 % vol bend light as 0.4 °Bx: 0.0005 of index for
// each % vol and 0.00144 for each °Bx, CRC Handbook), the scale half of the gas, 0.489 g a gram of hexose
// (Gay-Lussac), less what 59 L hold.
func TestEachInstrument(t *testing.T) {
	r := request(t)
	p := made(t, r)
	half := (p.Gravity.ThirdUsed + p.Gravity.TwoThirdsUsed) / 2
	brix := 4.25
	gas := kilogramsOf(p.Room.CO2) / 2
	lost := units.Kilogram.Of(checked.Number(gas - 59*0.00155)) // 1.55 g/L at 20 °C, 94 kPa
	for _, c := range []struct {
		name    string
		reading plan.Reading
		within  float64
	}{
		{"hydrometer", read(4*day, half), 0.5},
		{"refractometer", plan.Reading{After: 4 * day, Temperature: units.Celsius.Of(20), Brix: &brix}, 4},
		{"weight", plan.Reading{After: 4 * day, Temperature: units.Celsius.Of(20), Lost: &lost}, 1},
		{"all three", plan.Reading{After: 4 * day, Temperature: units.Celsius.Of(20), Gravity: half, Brix: &brix, Lost: &lost}, 2},
	} {
		r.Readings = []plan.Reading{c.reading}
		s := made(t, r).State
		if s.State == plan.Doubtful {
			t.Errorf("%s: %q", c.name, s.Diagnosis)
		}
		near(t, c.name, s.Points[0].Used.In(units.Percent), 50, c.within)
	}
	// Two that contradict each other are in doubt.
	lost = units.Gram.Of(100)
	r.Readings = []plan.Reading{{After: 4 * day, Temperature: units.Celsius.Of(20), Gravity: half, Lost: &lost}}
	if s := made(t, r).State; s.State != plan.Doubtful || !strings.Contains(s.Diagnosis[0], "hydrometer and weight contradict") {
		t.Errorf("%s %q", s.State, s.Diagnosis)
	}
}

func kilogramsOf(m units.Mass) float64 { return m.In(units.Kilogram) }

// A hydrometer for 60/60 °F shows 1.0283 at 20 °C as one for 20/20 °C shows less: over water of
// 60 °F, which is 0.0008 denser than that of 20 °C (CRC Handbook), and its glass no wider. The
// plan says what this one shows.
func TestHydrometerOfAnotherReference(t *testing.T) {
	r := request(t)
	at20 := made(t, r).Gravity
	r.Instruments.Reference = "15.56/15.56 °C"
	p := made(t, r)
	near(t, "shown in the wash at 20 °C", p.Gravity.WarmOriginal, at20.WarmOriginal-0.0008, 1e-4)
	near(t, "gravity 20/20", p.Gravity.Original, at20.Original, 1e-12)
	r.Readings = []plan.Reading{read(0, p.Gravity.WarmOriginal), read(4*day, p.Gravity.WarmFloor)}
	s := made(t, r).State
	near(t, "original", s.Original, at20.Original, 2e-4)
	near(t, "used, %", s.Points[0].Used.In(units.Percent), 100, 0.5)
	r.Instruments.Reference = "20 °C"
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "instruments.hydrometer_for") {
		t.Error(err)
	}
}

// A reading that agrees with the plan within both uncertainties is weighed against it: the wash
// is as planned, not 0.0003 above. One that contradicts it stands alone.
func TestReadingIsWeighed(t *testing.T) {
	r := request(t)
	g := made(t, r).Gravity
	r.Readings = []plan.Reading{read(0, g.Original+0.0003)}
	if s := made(t, r).State; s.AddWater.In(units.Kilogram) > 0.35 { // 0.6 kg by the reading alone
		t.Errorf("%v of water for 0.0003 of a division of 0.001", s.AddWater)
	}
	r.Readings = []plan.Reading{read(0, g.Original+0.003)}
	near(t, "water, kg", made(t, r).State.AddWater.In(units.Kilogram), 0.003/0.0277*60.2, 0.4)
}

// The temperature that was read in the vessel is that of its past: a cold one is foreseen to be
// slow, and the plan's own steps count where nothing was read.
func TestTemperatureOfTheFerment(t *testing.T) {
	r := request(t)
	r.Schedule.Ferment = 0 // by the wash alone
	days := func() float64 { return time.Duration(made(t, r).Forecast.Dry.Median).Hours() / 24 }
	planned := days()
	r.Fermenter.Temperatures = []plan.Warmth{{After: 0, Temperature: units.Celsius.Of(14)}}
	cold := days()
	r.Fermenter.Temperatures = append(r.Fermenter.Temperatures, plan.Warmth{After: 2 * day, Temperature: units.Celsius.Of(20)})
	warmed := days()
	if !(planned < warmed && warmed < cold) {
		t.Errorf("%.1f d at 20 °C, %.1f at 14 °C for two days, %.1f at 14 °C", planned, warmed, cold)
	}
	// 55 kJ/mol of the model from 14 to 20 °C: 1.6 times as slow (Foster 2022 read 49.5: 1.53).
	if ratio := cold / planned; ratio < 1.45 || ratio > 1.75 {
		t.Errorf("%.2f times as slow at 14 °C", ratio)
	}
	r.Fermenter.Temperatures = nil
	vessel := units.Celsius.Of(14)
	one := read(plan.Duration(30*time.Hour), 1.0260)
	r.Readings = []plan.Reading{one}
	kept := days()
	r.Readings[0].Vessel = &vessel
	if read := days(); read <= kept {
		t.Errorf("%.1f d with a vessel read at 14 °C, %.1f without", read, kept)
	}
	for field, bad := range map[string][]plan.Warmth{
		"fermenter.temperatures[1].after":       {{After: day, Temperature: units.Celsius.Of(20)}, {After: day, Temperature: units.Celsius.Of(20)}},
		"fermenter.temperatures[0].temperature": {{After: day, Temperature: units.Celsius.Of(40)}},
		"fermenter.warmest":                     {{After: day, Temperature: units.Celsius.Of(30)}},
	} {
		r := request(t)
		r.Fermenter.Temperatures = bad
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), field) {
			t.Errorf("%s: %v", field, err)
		}
	}
}

// A ferment that is far behind leaves the plan, and what can have done it is tried and ranked: with
// a cold vessel the colder wash is likelier than the planned one.
func TestCauses(t *testing.T) {
	r := request(t)
	r.Readings = []plan.Reading{read(3*day, 1.0272), read(5*day, 1.0255), read(7*day, 1.0235)}
	f := made(t, r).Forecast
	if f.Leaves == nil || f.Leaves.Faster || len(f.Leaves.Causes) != 4 {
		t.Fatalf("%+v", f.Leaves)
	}
	last := f.Leaves.Causes[0].Odds
	for _, c := range f.Leaves.Causes {
		if c.Odds > last || c.What == "" {
			t.Errorf("not ranked: %+v", f.Leaves.Causes)
		}
		last = c.Odds
	}
	if f.Leaves.Causes[0].Odds < 2 {
		t.Errorf("nothing explains it: %+v", f.Leaves.Causes)
	}
	r.Readings = []plan.Reading{read(plan.Duration(14*time.Hour), 1.0100), read(plan.Duration(22*time.Hour), 1.0000)}
	if f := made(t, r).Forecast; f.Leaves == nil || !f.Leaves.Faster || len(f.Leaves.Causes) != 3 {
		t.Errorf("%+v", f.Leaves)
	}
}
