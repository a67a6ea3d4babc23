package main

import (
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What is to be done follows from the readings, with doses for the volume that is there: by
// hand, half of the planned 59.2 L takes half of each dose.
func TestNow(t *testing.T) {
	volume := units.Litre.Of(29.6)
	sour := 3.3
	read := func(hours int, gravity float64) plan.Reading {
		return plan.Reading{After: plan.Duration(time.Duration(hours) * time.Hour), Gravity: gravity, Temperature: units.Celsius.Of(20)}
	}
	wash := read(0, 1.0283)
	wash.Volume = &volume
	weak, strong := wash, wash
	weak.Gravity, strong.Gravity = 1.0250, 1.0310
	full := read(0, 1.040)
	full.Volume = new(units.Litre.Of(60))
	sourWash, pHAlone := wash, plan.Reading{After: 0, Temperature: units.Celsius.Of(20), PH: new(8.5)}
	sourWash.PH = &sour
	late := read(100, 1.0060)
	late.PH = &sour
	early := read(60, 1.0200)
	early.PH = &sour
	for _, c := range []struct {
		name     string
		readings []plan.Reading
		done     string
		state    string
		want     []string // in what is to be done and taken
		never    string
	}{
		{"nothing yet", nil, "", "no readings yet", []string{"Clean and sanitise"}, "nutrient"},
		{"some steps done", nil, "clean weigh", "no readings yet", []string{"Measure the water and treat it", "gypsum 2.3 g"}, "Clean"},
		{"all done", nil, strings.Join(allSteps(t), " "), "no readings yet", []string{"every step is done"}, "take"},
		{"as planned", []plan.Reading{wash}, "", plan.NotBegun, []string{"as planned", "diammonium phosphate 2.9 g", "autolysed yeast 1.5 g"}, "come up"},
		{"weak", []plan.Reading{weak}, "", plan.NotBegun, []string{"come up to the plan", "white sugar"}, "water"},
		{"strong", []plan.Reading{strong}, "", plan.NotBegun, []string{"come down to the plan", "water"}, "white sugar"},
		{"strong, no room", []plan.Reading{full}, "", plan.NotBegun, []string{"no room for all", "water 7.4"}, "stir in:"},
		{"late", []plan.Reading{wash, read(240, 1.0283)}, "", plan.NotBegun, []string{"by now it should be", "fresh yeast"}, "no fault"},
		{"sour wash", []plan.Reading{sourWash}, "", plan.NotBegun, []string{"its pH is not", "potassium bicarbonate"}, "The wash is as planned."},
		{"pH alone", []plan.Reading{pHAlone}, "", plan.NotBegun, []string{"gravity of the wash is not read"}, "The wash is as planned."},
		{"nearly done", []plan.Reading{wash, read(200, 0.9956), read(220, 0.9956)}, "pitch feed-1", plan.Near, []string{"stays out"}, "addition 2"},
		{"asleep", []plan.Reading{wash, read(30, 1.0283)}, "", plan.NotBegun, []string{"Nothing is fermented yet"}, "addition"},
		{"a third", []plan.Reading{wash, read(40, 1.0170)}, "pitch feed-1", plan.Fermenting, []string{"addition 2", "2.9 g", "other half of", "addition 3"}, "pH"},
		{"fed", []plan.Reading{wash, read(40, 1.0180)}, "pitch feed-1 feed-2", plan.Fermenting,
			[]string{"let it work", "nutrient, addition 3 gravity 1.0168"}, "addition 2"},
		{"first forgotten", []plan.Reading{wash, read(40, 1.0260)}, "pitch", plan.Fermenting, []string{"addition 1"}, "addition 1, white sugar"},
		{"half", []plan.Reading{wash, read(80, 1.0100)}, "pitch feed-1 feed-2 feed-3", plan.Fermenting, []string{"Measure the pH"}, "addition"},
		{"sour", []plan.Reading{wash, late}, "pitch feed-1 feed-2 feed-3", plan.Fermenting, []string{"below the floor of 3.6", "foams"}, "Measure the pH"},
		{"sour before the second half", []plan.Reading{wash, early}, "pitch feed-1", plan.Fermenting, []string{"addition 2", "add half, stir"}, "other half of"},
		{"dry", []plan.Reading{wash, read(200, 0.9946), read(272, 0.9946)}, "", plan.Finished, []string{"Chill"}, "Do not pack"},
		{"dry, too much left for the bottles", []plan.Reading{wash, read(200, 0.9963), read(272, 0.9963)}, "", plan.Finished,
			[]string{"Do not pack yet", "rating of 6.0 bar"}, "Chill"},
		{"stalled", []plan.Reading{wash, read(100, 1.0100), read(172, 1.0100)}, "", plan.Stalled, []string{"measure the pH"}, "Chill"},
		{"impossible", []plan.Reading{wash, read(100, 1.0500)}, "", plan.Doubtful, []string{"read again"}, "Chill"},
	} {
		req, err := plan.ParseRequest(builtIn)
		if err != nil {
			t.Fatal(err)
		}
		req.Readings = c.readings
		if strings.Contains(c.name, "bottles") {
			req.Packs[1].Rating = units.BarGauge.Of(6)
		}
		p, err := plan.Make(req)
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		n, err := nowOf(p, style{}, strings.Fields(c.done))
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		text := strings.Join(n.next, "\n") + strings.Join(n.cautions, "\n")
		for _, r := range append(n.take, n.when...) {
			text += "\n" + r.label + " " + r.value + " " + r.note
		}
		if n.state != c.state {
			t.Errorf("%s: %s, want %s", c.name, n.state, c.state)
		}
		for _, want := range c.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s: no %q in\n%s", c.name, want, text)
			}
		}
		if strings.Contains(text, c.never) {
			t.Errorf("%s: %q in\n%s", c.name, c.never, text)
		}
		if open := c.state == plan.Fermenting || c.state == plan.Stalled; open && len(urgent(p)) == 0 {
			t.Errorf("%s: nothing warns of packing it", c.name)
		}
	}
}

// allSteps are the steps of the built-in card.
func allSteps(t *testing.T) (ids []string) {
	t.Helper()
	for _, st := range cardOf(drinksToTry(t)["sparkler"], style{}).steps {
		ids = append(ids, st.id)
	}
	return ids
}

// What cannot wait stands above everything: a hot vessel, a pH that is going to fall, a wash that no yeast ends.
func TestUrgent(t *testing.T) {
	hot, sour := units.Celsius.Of(38), 3.62
	for want, one := range map[string]plan.Reading{
		"The vessel was read at 38": {After: plan.Duration(40 * time.Hour), Gravity: 1.0170, Temperature: units.Celsius.Of(20), Vessel: &hot},
		"By the pH that was read":   {After: plan.Duration(45 * time.Hour), Gravity: 1.0130, Temperature: units.Celsius.Of(20), PH: &sour},
		"As it stands it would":     {After: 0, Gravity: 1.15, Temperature: units.Celsius.Of(20), Volume: new(units.Litre.Of(20))},
	} {
		req, err := plan.ParseRequest(builtIn)
		if err != nil {
			t.Fatal(err)
		}
		req.Strength, req.Readings = units.PercentVolume.Of(9), []plan.Reading{one}
		if one.After > 0 {
			req.Strength = units.PercentVolume.Of(4.6)
		}
		p, err := plan.Make(req)
		if err != nil {
			t.Fatal(want, err)
		}
		if all := urgent(p); len(all) == 0 || !strings.HasPrefix(all[0], want) {
			t.Errorf("%s: %q", want, all)
		}
	}
}
