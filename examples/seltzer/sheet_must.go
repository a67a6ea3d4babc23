package main

import (
	"fmt"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// mustSection is what a juice, honey or malt brings, and the acid that goes in before the yeast.
func mustSection(p plan.Plan, s style) section {
	out := section{title: "Acids of the wash"}
	if b := p.Must; b != nil {
		out.title = "What the " + b.Of + " brings"
		note := "as measured"
		if !b.Measured {
			note = fmt.Sprintf("±%.1f: %s", b.Band, b.Source)
		} else if b.Source != "" {
			note = b.Source
		}
		out.rows = append(out.rows,
			row{"pH", number(b.PH, 2), note, "", ""}.explain(plan.FigureMust),
			row{"titratable acidity", litreOf(b.Acidity), "as " + b.As, "", ""}.explain(plan.FigureMust),
			row{"potassium", ion(b.Potassium), "in the wash", "", ""}.explain(plan.FigureMust),
			row{"nitrogen for the yeast", ion(b.Nitrogen), "in the wash; it counts against the need", "", ""}.explain(plan.FigureMustNitrogen))
	}
	if b := p.Must; b != nil && b.Blend != nil {
		x := b.Blend
		out.rows = append(out.rows, row{"of it the other juice", s.mass(x.Mass),
			fmt.Sprintf("%s of the blend; pH %.2f and %.2f → %.2f, acidity %s and %s → %s as %s",
				percent(x.Share), x.PH, x.OtherPH, b.PH, litreOf(x.Acidity), litreOf(x.OtherAcidity), litreOf(b.Acidity), b.As), "", ""}.explain(plan.FigureMust))
	}
	if a := p.Acid; a != nil && a.When == "before the yeast" {
		out.rows = append(out.rows, acidRow(*a, s))
	}
	return out
}

// acidRow is an acid with what it does.
func acidRow(a plan.AcidPlan, s style) row {
	note := fmt.Sprintf("%s, %s g in a litre; pH %.2f → %.2f, acidity %s → %s as %s", a.When, number(a.PerLitre.In(units.GramPerLitre), 2),
		a.Before, a.PH, litreOf(a.WasAcid), litreOf(a.Acidity), a.As)
	if a.Uncertain {
		note += "; by the meter, as the wash was not measured"
	}
	return row{a.Weight.What, s.weight(a.Weight), note, "", ""}.explain(plan.FigureAcid)
}

// afterSection is what becomes of the acids after the ferment, and what keeps the drink.
func afterSection(p plan.Plan, s style) section {
	a := p.After
	out := section{title: "Acids after the ferment, without gas"}
	if a == nil {
		return out
	}
	before := ""
	for _, x := range a.Points {
		out.rows = append(out.rows, row{x.After, "pH " + number(x.PH, 2),
			joined(likely(x.Low, x.High, x.From, before), "acidity "+litreOf(x.Acidity)+" as "+a.As), "", ""}.explain(plan.FigureAfter))
		before = x.From
	}
	if !a.Tartar.IsZero() {
		out.rows = append(out.rows, row{"cream of tartar settled", s.mass(a.Tartar), "on the wall and the bottom: rack off it", "", ""}.explain(plan.FigureTartar))
	}
	if x := p.Acid; x != nil && x.When != "before the yeast" {
		out.rows = append(out.rows, acidRow(*x, s))
	}
	if x := a.Sulfite; x != nil {
		out.rows = append(out.rows, row{x.Weight.What, s.weight(x.Weight),
			fmt.Sprintf("%s of molecular SO2 at pH %.2f is %s of free SO2, of which %.1f %% is molecular", trace(x.Molecular), x.PH, ion(x.Free),
				x.Share.In(units.Percent)), "", ""}.explain(plan.FigureSulfite))
	}
	if x := a.Sorbate; x != nil {
		note := fmt.Sprintf("%s of sorbic acid, %s of it undissociated, which is what acts", ion(x.SorbicAcid), ion(x.Undissociated))
		if !x.Advised.IsZero() {
			note += fmt.Sprintf("; at this strength %s is advised", ion(x.Advised))
		}
		out.rows = append(out.rows, row{x.Weight.What, s.weight(x.Weight), note, "", ""}.explain(plan.FigureSorbate))
	}
	for _, l := range limitsOf(a) {
		out.rows = append(out.rows, row{label: "Limit: " + l})
	}
	return out
}

func limitsOf(a *plan.AfterPlan) (all []string) {
	if a.Sulfite != nil {
		all = append(all, a.Sulfite.Limits...)
	}
	if a.Sorbate != nil {
		all = append(all, a.Sorbate.Limits...)
	}
	return all
}

// litreOf prints an acidity.
func litreOf(c units.MassConcentration) string { return number(c.In(units.GramPerLitre), 1) + " g/L" }

// ofMust tells what juice, honey or malt brings beside the nutrient.
func ofMust(n plan.NutrientPlan) string {
	if n.FromMust.IsZero() {
		return ""
	}
	return "beside " + ion(n.FromMust) + " that the wash has of its own"
}
