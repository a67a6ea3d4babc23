package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// pitching is from the wash to the yeast in it.
func pitching(p plan.Plan, s style) []step {
	var steps []step
	if b := p.Acidity.Buffer; b != nil && !b.Mass.Decimal().IsZero() {
		steps = append(steps, step{id: "buffer", title: "Buffer", do: []string{bufferRow(p.Acidity, s).note + "."}, weigh: firstBuffer(p.Acidity, s)})
	}
	g := p.Gravity
	measure := step{id: "measure", title: "Measure the wash and write it down", read: []row{
		{label: "gravity", value: number(g.WarmOriginal, 4),
			note: "shown at " + s.temperature(p.Request.Fermenter.Temperature) + "; " + number(g.Original, 4) + " at " + s.temperature(units.Celsius.Of(20))},
		level("in the fermenter", firstOf(p, "fermenter, filled", "fermenter, filled with the first portion"), s),
	}}
	if len(p.Fermenters) > 0 {
		measure.read[1].label = "in all fermenters together"
	}
	if g.First > 0 {
		measure.read[0] = row{label: "gravity, at " + s.temperature(units.Celsius.Of(20)), value: number(g.First, 4),
			note: "of the first portion of the sugar; " + number(g.Original, 4) + " counts all of it"}
	}
	ph := row{label: "pH", value: "not foreseen"}
	if pts := p.Acidity.Points; len(pts) > 0 {
		ph.value, ph.note = number(pts[0].PH, 2), joined("at rest with air", likely(pts[0].Low, pts[0].High, pts[0].From, ""))
	}
	measure.read = append(measure.read, ph)
	steps = append(steps, measure,
		step{id: "oxygen", title: "Give it air", do: []string{"Cool wash only: stir or shake until it froths, just before the yeast. None once it ferments."}})
	y := p.Yeast
	pitch := step{id: "pitch", title: "Pitch the yeast"}
	if r := y.Rehydration; r != nil {
		steps = append(steps, step{id: "wake", title: "Wake the yeast",
			weigh: []row{{label: "dry yeast", value: exact(y.Mass)}, {label: "water", value: s.volume(r.Water)}},
			do:    []string{"Strew it on the water, and stir it in when the time is up."},
			read:  []row{{label: "water", value: s.temperature(r.Temperature), note: "for " + r.Time.String() + "; " + wakingWater(p)}}})
		pitch.do = append(pitch.do, "All of it, at once, near the temperature of the wash.")
	} else {
		pitch.weigh = []row{{label: y.Form + " yeast", value: number(y.Packs, 1) + " packs"}}
	}
	pitch.read = []row{{label: "wash", value: s.temperature(p.Request.Fermenter.Temperature)}}
	steps = append(steps, pitch)
	first := step{id: "feed-1", title: "First nutrient"}
	if len(p.Nutrient.Stages) > 0 {
		first.weigh = doses(p.Nutrient.Stages[0], s)
	}
	for _, w := range p.Nutrient.Supplements {
		first.weigh = append(first.weigh, row{label: w.What, value: s.weight(w)})
	}
	if len(first.weigh) > 0 {
		steps = append(steps, first)
	}
	return steps
}

// firstBuffer is what goes into the wash before the yeast: the whole, or what is sure to be
// wanted, or half of it.
func firstBuffer(a plan.AcidityPlan, s style) []row {
	if a.Buffer.Mass.Decimal().IsZero() {
		return nil
	}
	r := row{label: a.Buffer.What, value: s.weight(*a.Buffer)}
	if a.ByMeter {
		if a.Clear.In(units.Gram) < 0.05 {
			return nil
		}
		r.value = s.mass(a.Clear)
	}
	if a.Halves {
		r.value = "half of " + r.value
	}
	return []row{r}
}

func doses(st plan.NutrientStage, s style) []row {
	var rows []row
	for _, d := range st.Doses {
		if !d.Mass.Decimal().IsZero() {
			rows = append(rows, row{label: d.What, value: s.weight(d)})
		}
	}
	return rows
}

// about is the day that the schedule gives for something, as an estimate.
func about(p plan.Plan, what string) string {
	for _, e := range p.Schedule {
		if e.What == what {
			return "; " + e.Day + " or so"
		}
	}
	return ""
}

// halfUsed is when about half of the sugar is used, by the gravity.
func halfUsed(g plan.GravityPlan) string {
	if len(g.Portions) > 0 { // which lift it
		return "half of the sugar used: the last portion is in, and the gravity above " + number(g.TwoThirdsUsed, 4)
	}
	return "half of the sugar used: between gravity " + number(g.ThirdUsed, 4) + " and " + number(g.TwoThirdsUsed, 4)
}

// byGravity is what goes in while it ferments, nutrient, buffer and sugar, in the order in which it is due.
func byGravity(p plan.Plan, s style) []step {
	type due struct {
		used float64 // of the sugar
		step step
	}
	var all []due
	a := p.Acidity
	var other []row // half of the buffer
	if a.Halves && a.Buffer != nil {
		other = firstBuffer(a, s)
		for i := range other {
			other[i].value = "other " + other[i].value
		}
	}
	const title, id = "Buffer, the other half", "buffer-2"
	for i, st := range p.Nutrient.Stages {
		if i == 0 {
			continue
		}
		feed := step{id: fmt.Sprintf("feed-%d", i+1), title: fmt.Sprintf("Nutrient, addition %d", i+1), weigh: doses(st, s),
			when: "by gravity " + number(st.Gravity, 4) + afterPortion(p.Gravity, st.Used) + about(p, fmt.Sprintf("nutrient, addition %d", i+1)),
			read: []row{{label: "gravity", value: number(st.Gravity, 4)}},
			do:   []string{"In a little of the wash, slowly: gas comes out."}}
		if len(feed.weigh) == 0 {
			feed.id, feed.title = id, title
		}
		if i == 1 {
			feed.weigh = append(feed.weigh, other...)
		}
		if len(feed.weigh) > 0 {
			all = append(all, due{st.Used.In(units.Percent), feed})
		}
	}
	if len(other) > 0 && len(p.Nutrient.Stages) < 2 {
		const sixth = 100.0 / 6
		all = append(all, due{sixth, step{id: id, title: title, when: "a sixth of the sugar used", weigh: other}})
	}
	for i, k := range p.Gravity.Portions {
		all = append(all, due{k.Used.In(units.Percent), step{id: fmt.Sprintf("portion-%d", i+2), title: fmt.Sprintf("Sugar, portion %d", i+2),
			when:  "by gravity " + number(k.Gravity, 4) + afterPortion(p.Gravity, k.Used) + about(p, fmt.Sprintf("sugar, portion %d", i+2)),
			weigh: []row{{label: k.Sugar.What, value: s.weight(k.Sugar)}}, read: []row{{label: "gravity before", value: number(k.Gravity, 4)}}}})
	}
	slices.SortStableFunc(all, func(a, b due) int {
		if math.Abs(a.used-b.used) < 1e-6 { // what was listed first
			return 0
		}
		return cmp.Compare(a.used, b.used)
	})
	var steps []step
	for _, d := range all {
		steps = append(steps, d.step)
	}
	return steps
}

// afterPortion says which portion of the sugar is in before a gravity is read: each lifts it.
func afterPortion(g plan.GravityPlan, used units.Share) string {
	n := 0
	for i, k := range g.Portions {
		if used.In(units.Percent) > k.Used.In(units.Percent)+1e-6 {
			n = i + 2
		}
	}
	if n == 0 {
		return ""
	}
	return fmt.Sprintf(", after portion %d", n)
}

// fermenting goes by gravity: the clock only says when to look.
func fermenting(p plan.Plan, s style) []step {
	g, a := p.Gravity, p.Acidity
	steps := byGravity(p, s)
	ph := step{id: "pH", title: "Measure the pH",
		when: halfUsed(g) + about(p, "measure the pH"),
		read: []row{{label: "pH"}}}
	if n := len(a.Points); n > 2 {
		from, to := a.Points[n-3], a.Points[n-2]
		ph.read[0].value = number(from.PH, 2) + " to " + number(to.PH, 2)
		ph.read[0].note = likely(to.Low, from.High, to.From, "")
	} else {
		ph.read[0].value = "not foreseen"
	}
	switch {
	case a.Buffer == nil:
	case a.ByMeter:
		ph.do = []string{"Only now, and only by the meter, the rest of the " + a.Buffer.What + ": half of it, stir, measure again."}
	default:
		ph.do = []string{"Below " + number(a.Floor, 1) + ": " + a.Buffer.What + ", in small portions, by the meter."}
	}
	floor := number(g.Floor, 4) + " ± " + number(g.FloorUncertainty, 4)
	wait := step{id: "wait", title: "Wait until it is dry", when: "gravity near " + number(g.Floor, 4) + about(p, "about dry"),
		do: []string{"Stir the gas out of each sample."},
		read: []row{{label: "gravity", value: floor, note: "shown at " + s.temperature(p.Request.Fermenter.Temperature) + ": " + number(g.WarmFloor, 4)},
			{label: "gravity again", value: "the same", note: "days later"}, {label: "pH", value: "not foreseen"}}}
	if n := len(a.Points); n > 0 {
		wait.read[2].value, wait.read[2].note = number(a.Points[n-1].PH, 2), likely(a.Points[n-1].Low, a.Points[n-1].High, a.Points[n-1].From, "")
	}
	return append(steps, ph, wait)
}
