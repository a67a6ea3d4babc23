package main

import (
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// sheet lays a plan out in the order of the work.
func sheet(p plan.Plan, s style) []section {
	p = s.said(p)
	sections := []section{overview(p, s)}
	if p.State != nil {
		sections = append(sections, stateSection(p, s))
	}
	if p.Base != nil {
		return append(sections, baseSections(p, s)...)
	}
	sections = append(sections, []section{
		weighing(p, s), waterSection(p, s), vesselSection(p, s),
		gravitySection(p, s), mustSection(p, s), feedSection(p, s), aciditySection(p, s), yeastSection(p, s), afterSection(p, s),
	}...)
	sections = slices.DeleteFunc(sections, func(s section) bool { return len(s.rows) == 0 })
	for _, k := range p.Packs {
		sections = append(sections, packSection(p, k, s))
	}
	if p.Flavour != nil {
		sections = append(sections, flavourSection(p, s))
	}
	sections = append(sections, labelSection(p, s), uncertaintySection(p))
	if len(p.Schedule) > 0 {
		sections = append(sections, scheduleSection(p))
	}
	if p.Forecast != nil {
		sections = append(sections, forecastSection(p, s))
	}
	if p.Room != nil {
		sections = append(sections, roomSection(p, s))
	}
	if p.Cost != nil {
		sections = append(sections, costSection(p, s))
	}
	return append(sections, balanceSection(p, s), cautionSection(p))
}

// baseSections are of a base that is let down.
func baseSections(p plan.Plan, s style) []section {
	var sections []section
	if len(p.Weigh) > 0 {
		sections = append(sections, weighing(p, s))
	}
	b := p.Base
	rows := []row{
		row{"base to take", s.volume(b.Taken), "measured cold", "", ""}.explain(plan.FigureFermentable),
		row{"water to it, in all", s.mass(b.Added), "boiled and cooled covered", "", ""}.explain(plan.FigureStrength),
	}
	if b.Left.In(units.Millilitre) > 0.5 {
		rows = append(rows, row{"left of the base", s.volume(b.Left), "", "", ""}.explain(plan.FigureFermentable))
	}
	if !b.Sugar.IsZero() {
		rows = append(rows, row{"sugar that its gravity may hide", number(b.Sugar.In(units.GramPerLitre), 1) + " g/L",
			"above the gravity of a dry base of its strength", "", ""}.explain(plan.FigureFloor))
	}
	sections = append(sections, section{"Base", rows})
	if !p.Water.Volume.IsZero() {
		sections = append(sections, waterSection(p, s))
	}
	for _, k := range p.Packs {
		sections = append(sections, packSection(p, k, s))
	}
	if p.Flavour != nil {
		sections = append(sections, flavourSection(p, s))
	}
	sections = append(sections, labelSection(p, s))
	if u := uncertaintySection(p); len(p.Uncertainty.Kegs) > 0 {
		u.rows = u.rows[2:] // what is known of the strength is what is known of the base's
		sections = append(sections, u)
	}
	if p.Cost != nil {
		sections = append(sections, costSection(p, s))
	}
	return append(sections, balanceSection(p, s), cautionSection(p))
}

// explain adds where a figure comes from, and those in its remark.
func (r row) explain(figures ...plan.Figure) row {
	for _, f := range figures {
		w, join := f.Why(), ""
		if r.relation != "" {
			join = "\n"
		}
		r.relation += join + w.Relation
		r.source += join + w.Source
	}
	return r
}

func overview(p plan.Plan, s style) section {
	every := "in every pack"
	if slices.ContainsFunc(p.Request.Packs, func(k plan.Pack) bool { return k.Strength != nil }) {
		every = "in every pack that has no strength of its own"
	}
	if !slices.ContainsFunc(p.Request.Packs, func(k plan.Pack) bool { return k.Strength == nil }) {
		return section{p.Name, []row{
			row{"packaged", s.volume(p.Volume), "each pack at its own strength", "", ""}.explain(plan.FigureStrength),
			atmosphereRow(p, s),
		}}
	}
	return section{p.Name, []row{
		row{"packaged", s.volume(p.Volume) + " at " + strength(p.Strength), every, "", ""}.explain(plan.FigureStrength),
		atmosphereRow(p, s),
	}}
}

func atmosphereRow(p plan.Plan, s style) row {
	return row{"atmosphere", s.absolute(p.Atmosphere), "water boils at " + s.temperature(p.Boiling), "", ""}.explain(plan.FigureAtmosphere, plan.FigureBoiling)
}

// weighed are the figures that a weight is one of, by what it is for.
var weighed = map[string]plan.Figure{
	"fermenter, acid before the yeast": plan.FigureAcid, "fermenter, acid after the ferment": plan.FigureAcid, "fermenter, to keep it": plan.FigureSulfite,
	"kettle": plan.FigureFermentable, "dissolved in the water": plan.FigureFermentable, "water": plan.FigureSalts,
	"kettle, after the boil": plan.FigureSalts, "fermenter, after the top-up": plan.FigureSalts, "fermenter, in stages": plan.FigureNutrient,
	"fermenter, with the yeast": plan.FigureOtherNeeds,
	"fermenter":                 plan.FigureYeast, "fermenter, buffer": plan.FigureBuffer,
}

func weighing(p plan.Plan, s style) section {
	out := section{title: "Weigh and buy"}
	for _, w := range p.Weigh {
		r := row{w.What, s.weight(w), w.For, "", ""}
		f, ok := weighed[w.For]
		switch first, _, _ := strings.Cut(w.For, " "); {
		case strings.HasPrefix(w.For, "fermenter, portion"):
			f, ok = plan.FigureFermentable, true
		case first == "sweetening" || first == "souring":
			f, ok = plan.FigureTaste, true
		case first == "priming":
			f, ok = plan.FigurePriming, true
		}
		if ok {
			r = r.explain(f)
		}
		out.rows = append(out.rows, r)
	}
	for _, k := range p.Packs {
		if b := k.Bottle; b != nil && b.Held {
			out.rows = append(out.rows, row{label: "No " + b.Priming.What + " is listed for priming the " + k.Named() + ": with it they pass their rating. See there."})
		}
	}
	return out
}

func balanceSection(p plan.Plan, s style) section {
	out := section{title: "Mass balance"}
	list := func(way string, lines []plan.Line) {
		for _, l := range lines {
			if l.Mass.IsZero() {
				continue
			}
			out.rows = append(out.rows, row{way + l.What, s.balance(l.Mass), "", "", ""}.explain(plan.FigureBalance))
		}
	}
	list("in: ", p.Balance.In)
	list("out: ", p.Balance.Out)
	if b := p.Balance; !b.ByAtoms.IsZero() {
		out.rows = append(out.rows, row{"strength without losses", strength(b.ByAtoms),
			"by the balance of atoms; the plan's yield is a measured one. Yeast rich in nitrogen would weigh " + s.mass(b.YeastLow), "", ""}.explain(plan.FigureBalance))
	}
	return out
}

const cautionTitle = "Cautions"

func cautionSection(p plan.Plan) section {
	out := section{title: cautionTitle}
	for _, c := range p.Cautions {
		out.rows = append(out.rows, row{label: c})
	}
	return out
}
