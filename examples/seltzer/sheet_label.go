package main

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

func flavourSection(p plan.Plan, s style) section {
	f, whole := p.Flavour, "for the whole batch, as in the trial"
	if slices.ContainsFunc(p.Request.Packs, func(k plan.Pack) bool { return k.Flavour != nil }) {
		whole = "for the packs that have no flavouring of their own, as in the trial"
	}
	rows := []row{
		row{f.Name, s.volume(f.Added), whole, "", ""}.explain(plan.FigureFlavour),
		row{"it adds", strength(f.Rise), percent(f.Ethanol) + " of the ethanol", "", ""}.explain(plan.FigureFlavour),
	}
	if !f.Sugar.IsZero() {
		rows = append(rows, row{"its sugar in the drink", number(f.Sugar.In(units.GramPerLitre), 1) + " g/L", "in primed bottles it ferments",
			"", ""}.explain(plan.FigureFlavour))
	}
	return section{"Flavour", rows}
}

func labelSection(p plan.Plan, s style) section {
	l := p.Label
	within, each := "is within ±"+number(l.Tolerance.In(units.PercentVolume), 1)+" % vol of it", "every pack "
	own := func(k plan.Pack) bool { return k.Strength != nil }
	if slices.ContainsFunc(p.Request.Packs, own) && slices.ContainsFunc(p.Request.Packs, func(k plan.Pack) bool { return !own(k) }) {
		each = "every pack without a strength of its own "
	}
	if !l.Within {
		each = "NOT " + each
	}
	within = "as planned " + each + within
	alone := !slices.ContainsFunc(p.Packs, func(k plan.PackPlan) bool { return k.Own == nil })
	kJ, kcal := l.Kilojoules.In(units.Kilojoule), l.Kilocalories.In(units.Kilocalorie)
	out := section{"Label (" + l.Law + ")", []row{
		row{"alcohol", number(l.Strength.In(units.PercentVolume), 1) + " % vol", within, "", ""}.explain(plan.FigureTolerance),
		row{"counts as", l.Category, l.Rules, "", ""}.explain(plan.FigureTolerance),
		row{"energy in 100 mL", fmt.Sprintf("%.0f kJ / %.0f kcal", kJ, kcal),
			fmt.Sprintf("%.0f kcal in %s", l.PerServing.In(units.Kilocalorie), s.volume(l.Serving)), "", ""}.explain(plan.FigureEnergy),
		carbohydrateRow(l, alone),
		row{"standard drinks in " + s.volume(l.Serving), number(l.DrinksUS, 1) + " US",
			fmt.Sprintf("%.1f UK units; %.1f Australia and New Zealand", l.UnitsUK, l.DrinksAU), "", ""}.explain(plan.FigureDrinks),
	}}
	if alone && len(p.Packs) > 1 {
		of := "of all"
		if strings.Contains(each, "without") {
			of = "of those without a strength of their own"
		}
		out.rows = append(out.rows, row{label: "Each pack has a label of its own: this is the mean " + of + "."})
	}
	return out
}

// carbohydrateRow is the carbohydrate as the law counts it, of packs that may have sweeteners of their own or not.
func carbohydrateRow(l plan.LabelPlan, sweetened bool) row {
	in100mL := func(c units.MassConcentration) string { return number(c.In(units.GramPerLitre)/10, 1) + " g" }
	polyols := "glycerol of the yeast"
	if sweetened {
		polyols = "polyols"
	}
	note := "sugars " + in100mL(l.Sugars) + ", " + polyols + " " + in100mL(l.Polyols)
	switch c := l.Carbohydrate.In(units.GramPerLitre) / 10; {
	case l.Law == "US":
		note += ", acids " + in100mL(l.Acids)
	case c > 0 && c <= 0.5:
		note += "; up to 0.5 g a label may say 0 g or < 0.5 g"
	}
	return row{"carbohydrate in 100 mL", in100mL(l.Carbohydrate), note, "", ""}.explain(plan.FigureCarbohydrate)
}
