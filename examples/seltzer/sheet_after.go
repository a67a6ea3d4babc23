package main

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

func uncertaintySection(p plan.Plan) section {
	u := p.Uncertainty
	pm := func(v units.StrengthByVolume) string { return "± " + strength(v) }
	supports := "supports ±0.3 % vol on a label, if the scale is true in water"
	if !u.Supports {
		supports = "too coarse for ±0.3 % vol on a label: distil, or have it measured"
	}
	out := section{title: "How sure (k = 2)", rows: []row{
		row{"strength as planned", pm(u.Planned), mostlyFrom(u.PlannedFrom), "", ""}.explain(plan.FigureUncertainty),
		row{"strength by two hydrometer readings", pm(u.ByHydrometer), fmt.Sprintf("%s; division %g: %s", mostlyFrom(u.HydrometerFrom), u.Division, supports),
			"", ""}.explain(plan.FigureUncertainty),
	}}
	i := 0
	for _, k := range p.Packs {
		if k.Kind != "keg" || k.Still {
			continue
		}
		out.rows = append(out.rows, row{"content of the " + k.Named(), "± " + grams(u.Kegs[i]), mostlyFrom(u.KegsFrom[i]), "", ""}.explain(plan.FigureUncertainty))
		i++
	}
	return out
}

// likely are the ends of a pH at k = 2; nothing where no unknown moves it, and what they come from once where the row before
// says the same.
func likely(low, high float64, unknown, before string) string {
	switch text := fmt.Sprintf("likely %.2f to %.2f", low, high); unknown {
	case "":
		return ""
	case before:
		return text
	default:
		return text + ", " + mostlyFrom(unknown)
	}
}

// mostlyFrom says which unknown most of an uncertainty comes from.
func mostlyFrom(unknown string) string { return "mostly from the " + unknown }

func stateSection(p plan.Plan, s style) section {
	st := p.State
	out := section{title: "By the readings: " + st.State}
	explained := func(f plan.Figure, label, value, note string) {
		out.rows = append(out.rows, row{label, value, note, "", ""}.explain(f))
	}
	add := func(label, value, note string) { explained(plan.FigureReading, label, value, note) }
	if st.Original > 0 {
		note, would := "as planned", ""
		if _, whole := backToPlan(st); !whole {
			would = "; tried below"
		}
		switch {
		case len(st.Points) > 0 && (st.AddSugar.In(units.Gram) >= 5 || st.AddWater.In(units.Gram) >= 50):
			note = "not as planned"
		case st.AddSugar.In(units.Gram) >= 5:
			note = s.mass(st.AddSugar) + " of the fermentable would bring it up to the plan" + would
		case st.AddWater.In(units.Gram) >= 50:
			note = s.mass(st.AddWater) + " of water would bring it down to the plan" + would
		}
		add("original, measured", number(st.Original, 4), note)
	}
	for _, pt := range st.Points {
		note := fmt.Sprintf("%s used; %s ± %.2f, %s; %.1f g/L of sugar left", percent(pt.Used), strength(pt.Strength),
			pt.Uncertainty.In(units.PercentVolume), mostlyFrom(pt.From), pt.Left.In(units.GramPerLitre))
		add("after "+pt.After.String(), number(pt.Gravity, 4), note)
	}
	floor, is := p.Request.EndName()
	explained(plan.FigureFloor, floor+" of this wash", number(st.Floor, 4), strength(st.Final)+" if "+is)
	if st.State != plan.Finished && len(st.Points) > 0 {
		explained(plan.FigureGasLeft, "gas that the sugar left can make", grams(st.Gas), "in a closed pack")
	}
	for _, d := range st.Diagnosis {
		out.rows = append(out.rows, row{label: s.inWords(d)})
	}
	if c := st.Correction; c != nil {
		explained(plan.FigureBuffer, c.What, s.weight(*c), c.For+"; add half, stir, measure again")
	}
	if r := st.BegunBy; r.High90 > 0 && st.State == plan.NotBegun {
		explained(plan.FigureForecast, "usually begun", "by "+days(r.Median), "nineteen in twenty by "+days(r.High90)+"; before that it is no fault")
	}
	if e := st.AsItStands; e != nil {
		explained(plan.FigureOnward, "if it ferments out as it stands", strength(e.Strength), outcome(*e, s))
	}
	for _, a := range st.Advice {
		r := adviceRow(a, s)
		r.label = "tried: " + r.label
		out.rows = append(out.rows, r)
	}
	return out
}

// outcome is what something leads to.
func outcome(e plan.Outcome, s style) string {
	text := "gravity " + number(e.Gravity, 4)
	if e.PH > 0 {
		text += ", pH " + number(e.PH, 2)
	}
	return text + ", " + s.volume(e.Volume)
}

// adviceRow is something that can be done, why, and what it leads to.
func adviceRow(a plan.Advice, s style) row {
	r := row{label: a.Do, note: s.inWords(a.Why)}
	switch {
	case a.Weigh != nil:
		r.value = s.weight(*a.Weigh)
		switch {
		case strings.HasSuffix(a.Do, " with"):
			r.label += " " + a.Weigh.What
		case !strings.Contains(a.Do, "yeast") && !strings.Contains(a.Do, "portion"):
			r.label += ": " + a.Weigh.What
		}
		for _, w := range a.With {
			r.value += ", " + s.weight(w)
			r.label += ", " + w.What
		}
	case a.To != nil:
		r.value = s.temperature(*a.To)
	case a.End != nil:
		r.value = strength(a.End.Strength)
	default:
		r.value = "no"
	}
	switch {
	case a.Cannot != "":
		r.note += "; it cannot be done: " + s.inWords(a.Cannot)
	case a.End != nil:
		r.note += "; leads to " + strength(a.End.Strength) + ", " + outcome(*a.End, s)
	}
	for _, k := range a.Packs {
		above := ""
		if k.AtLeast {
			above = "above "
		}
		r.note += fmt.Sprintf("; %s: %s, %s CO2, at most %s%s at %s of the %s rated", k.Kind, strength(k.Strength), grams(k.Content), above, s.gauge(k.Highest),
			s.temperature(k.Temperature), s.gauge(k.Rating))
	}
	if d := a.Dry; d.High90 > 0 {
		r.note += fmt.Sprintf("; dry after %s, nine in ten %s to %s", days(d.Median), inDays(d.Low90), days(d.High90))
	}
	return r.explain(plan.FigureOnward)
}

func scheduleSection(p plan.Plan) section {
	out := section{title: "When (estimated; the gravity decides)"}
	for _, e := range p.Schedule {
		out.rows = append(out.rows, row{e.What, e.Day, e.Sign, "", ""}.explain(plan.FigureSchedule))
	}
	return out
}

func roomSection(p plan.Plan, s style) section {
	r := p.Room
	limit, danger := r.Reached.String(), "to the limit; danger to life after "+r.Dangerous.String()
	if r.Dangerous == 0 {
		danger = "to the limit; all of it, evenly mixed, stays below what endangers life, but it collects low"
	}
	if r.Reached == 0 {
		limit, danger = "not reached", "all of it, evenly mixed, stays below the limit, but it collects low"
	}
	return section{"Air of the room", []row{
		row{"CO2 from the ferment", s.mass(r.CO2), s.gas(r.Gas) + " of gas; up to " + s.mass(r.Peak) + " in the busiest hour", "", ""}.explain(plan.FigureRoom),
		row{"fresh air at the peak", s.flow(r.FreshAir), fmt.Sprintf("holds %.0f ppm", r.LimitPPM), "", ""}.explain(plan.FigureRoom),
		row{"without fresh air", limit, danger, "", ""}.explain(plan.FigureRoom),
	}}
}

func costSection(p plan.Plan, s style) section {
	c := p.Cost
	out := section{title: "Buy"}
	for _, b := range c.Buy {
		out.rows = append(out.rows, row{fmt.Sprintf("%s, %d × %s", b.What, b.Packs, b.Pack), b.Price + " " + c.Currency,
			exact(b.Left) + " left over", "", ""}.explain(plan.FigureCost))
	}
	out.rows = append(out.rows, row{"together", c.Total + " " + c.Currency, s.each(p), "", ""}.explain(plan.FigureCost))
	if len(c.Unused) > 0 {
		out.rows = append(out.rows, row{label: "Priced, but not in this batch: " + strings.Join(c.Unused, ", ")})
	}
	if len(c.Unpriced) > 0 {
		out.rows = append(out.rows, row{label: "Without a price: " + strings.Join(c.Unpriced, ", ")})
	}
	return out
}
