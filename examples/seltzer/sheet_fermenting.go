package main

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

func feedSection(p plan.Plan, s style) section {
	n := p.Nutrient
	out := section{title: "Nutrient"}
	out.rows = append(out.rows,
		row{"nitrogen wanted", ion(n.Need), fmt.Sprintf("%s to %s by the demand of strains; for %.1f g/L of sugar", ion(n.Low), ion(n.High),
			n.Sugar.In(units.GramPerLitre)),
			"", ""}.explain(plan.FigureNitrogen),
		row{"nitrogen brought", ion(n.Brought), ofMust(n), "", ""}.explain(plan.FigureNutrient))
	if n.Shortfall.In(units.MilligramPerLitre) > 0.05 {
		out.rows = append(out.rows, row{"not covered", ion(n.Shortfall), "within the limits, as this scale weighs: see the cautions",
			"", ""}.explain(plan.FigureNutrient))
	}
	for _, st := range n.Stages {
		when := "with the yeast"
		if st.Used.In(units.Percent) > 0 {
			when = percent(st.Used) + " of the sugar used"
		}
		for _, d := range st.Doses {
			if !d.Mass.Decimal().IsZero() {
				note := d.What + "; gravity " + number(st.Gravity, 4) + afterPortion(p.Gravity, st.Used)
				out.rows = append(out.rows, row{when, s.weight(d), note, "", ""}.explain(plan.FigureNutrient))
			}
		}
	}
	for _, w := range n.Supplements {
		out.rows = append(out.rows, row{"once, with the yeast", s.weight(w), w.What, "", ""}.explain(plan.FigureOtherNeeds))
	}
	for _, o := range n.Others {
		value, note := trace(o.Brought), trace(o.Need)+" wanted; "+o.Source
		switch {
		case o.Unsure:
			value, note = "from yeast matter", "not known by the milligram"
		case o.Short:
			note = "SHORT, " + trace(o.Need) + " wanted: add " + o.Brings + "; " + o.Source
		}
		out.rows = append(out.rows, row{o.Name, value, note, "", ""}.explain(plan.FigureOtherNeeds))
	}
	for _, l := range n.Limits {
		out.rows = append(out.rows, row{label: "Limit: " + l})
	}
	return out
}

// trace prints a mineral, which may be far below a milligram a litre.
func trace(c units.MassConcentration) string {
	if mg := c.In(units.MilligramPerLitre); mg < 0.995 {
		return number(mg, 2) + " mg/L"
	}
	return ion(c)
}

func aciditySection(p plan.Plan, s style) section {
	a := p.Acidity
	out := section{title: "pH of the ferment"}
	if a.Unforeseen != "" {
		out.rows = append(out.rows, row{label: a.Unforeseen})
	}
	before := ""
	for i, pt := range a.Points {
		when, note := percent(pt.Used)+" of the sugar used", likely(pt.Low, pt.High, pt.From, before)
		before = pt.From
		if i == 0 {
			when = "wash, before the yeast works"
			note = joined(note, "at rest with air, no CO2 of its own yet")
		}
		if i == len(a.Points)-1 && a.EndClear > 0 {
			note += fmt.Sprintf("; %.2f if no chalk drops out", a.EndClear)
		}
		out.rows = append(out.rows, row{when, number(pt.PH, 2), note, "", ""}.explain(plan.FigurePH))
	}
	if b := a.Buffer; b != nil {
		out.rows = append(out.rows,
			row{"at the end without buffer", number(a.EndUnbuffered, 2), "floor asked for " + number(a.Floor, 1), "", ""}.explain(plan.FigurePH),
			bufferRow(a, s).explain(plan.FigureBuffer))
	}
	return out
}

// joined are the parts of a note that are there.
func joined(parts ...string) string {
	return strings.Join(slices.DeleteFunc(parts, func(s string) bool { return s == "" }), "; ")
}

// bufferRow is the buffer to weigh, or that there is none.
func bufferRow(a plan.AcidityPlan, s style) row {
	b := *a.Buffer
	switch {
	case !b.Mass.Decimal().IsZero():
		when, halves := "dissolve it in the wash before the yeast", "half of it in the wash before the yeast, half when a sixth of the sugar is used"
		switch {
		case a.ByMeter && a.Clear.In(units.Gram) < 0.05:
			when = "none at first, as none is needed if no chalk drops out; then only by a meter, when half of the sugar is used"
		case a.ByMeter && a.Halves:
			when = fmt.Sprintf("first the %s that do if no chalk drops out, %s; the rest only by a meter, when half of the sugar is used", s.mass(a.Clear), halves)
		case a.ByMeter:
			when = fmt.Sprintf("first the %s that do if no chalk drops out, in the wash before the yeast; the rest only by a meter, when "+
				"half of the sugar is used", s.mass(a.Clear))
		case a.Halves:
			when = halves
		}
		doses := ""
		if a.From != "" { // else nothing that is known moves it
			doses = fmt.Sprintf("likely %s to %s, %s", s.mass(a.Low), s.mass(a.High), mostlyFrom(a.From))
		}
		clear := ""
		if a.EndClear > 0 && !a.ByMeter {
			clear = fmt.Sprintf("%s if no chalk drops out", s.mass(a.Clear))
		}
		return row{b.What, s.weight(b), joined(doses, clear, when), "", ""}
	case a.High.IsZero():
		return row{b.What, "none", "the ferment stays above the floor without it", "", ""}
	}
	return row{b.What, "none", "the ferment is to stay above the floor without it; it may turn out to want up to " + s.mass(a.High) + ", " +
		mostlyFrom(a.From) + ": measure", "", ""}
}

// wakingWater says whose water the yeast is woken in: the batch's own, so that it is not thinned, where there is as much.
func wakingWater(p plan.Plan) string {
	of := p.Yeast.Rehydration.Water.In(units.Litre)
	if all := p.Water.Volume.In(units.Litre); all < of {
		return fmt.Sprintf("beside the plan, it thins the batch by %.1f %%", 100*of/p.Nutrient.Volume.In(units.Litre))
	}
	return "of the batch's water"
}

func yeastSection(p plan.Plan, s style) section {
	y := p.Yeast
	out := section{title: "Yeast"}
	out.rows = append(out.rows, row{"live cells", number(y.Cells, 0) + " billion", y.Source, "", ""}.explain(plan.FigureYeast))
	if y.Form == "liquid" {
		out.rows = append(out.rows, row{"packs", number(y.Packs, 1), fmt.Sprintf("likely %.1f to %.1f, %s", y.Low, y.High, mostlyFrom(y.From)),
			"", ""}.explain(plan.FigureYeast))
		return out
	}
	out.rows = append(out.rows, row{"dry yeast", exact(y.Mass),
		fmt.Sprintf("likely %.0f to %.0f g by the %s; the pack's own figure is better", y.Low, y.High, y.From), "", ""}.explain(plan.FigureYeast))
	if r := y.Rehydration; r != nil {
		out.rows = append(out.rows, row{"wake it in", s.volume(r.Water) + " water", "at " + s.temperature(r.Temperature) + " for " + r.Time.String() + "; " +
			wakingWater(p), "", ""}.explain(plan.FigureRehydration))
	}
	return out
}
