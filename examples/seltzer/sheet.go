package main

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// sheet lays a plan out in the order of the work.
func sheet(p plan.Plan, s style) []section {
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
		rows = append(rows, row{"sugar that its gravity may hide", number(b.Sugar.In(units.GramPerLitre), 1) + " g/L", "above the gravity of a dry base of its strength", "", ""}.explain(plan.FigureFloor))
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
	"kettle": plan.FigureFermentable, "dissolved in the water": plan.FigureFermentable, "water": plan.FigureSalts, "kettle, after the boil": plan.FigureSalts, "fermenter, after the top-up": plan.FigureSalts, "fermenter, in stages": plan.FigureNutrient, "fermenter, with the yeast": plan.FigureOtherNeeds,
	"fermenter": plan.FigureYeast, "fermenter, buffer": plan.FigureBuffer,
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
			out.rows = append(out.rows, row{label: "No " + b.Priming.What + " is listed for priming the " + k.Kind + "s: with it they pass their rating. See there."})
		}
	}
	return out
}

func waterSection(p plan.Plan, s style) section {
	w := p.Water
	out := section{title: "Water: " + s.volume(w.Volume) + " to start with"}
	if !vessel(p, "water to top up with").Volume.IsZero() {
		out.title = "Water: " + s.volume(w.Volume) + " in all"
	}
	add := func(label string, before, after string, target *units.MassConcentration) {
		note := ""
		if target != nil {
			note = "target " + ion(*target)
		}
		out.rows = append(out.rows, row{label, before + " → " + after, note, "", ""}.explain(plan.FigureWater))
	}
	b, a, t := w.Before, w.After, w.Target
	add("calcium", ion(b.Calcium), ion(a.Calcium), t.Calcium)
	add("magnesium", ion(b.Magnesium), ion(a.Magnesium), t.Magnesium)
	add("sodium", ion(b.Sodium), ion(a.Sodium), t.Sodium)
	add("potassium", ion(b.Potassium), ion(a.Potassium), t.Potassium)
	add("chloride", ion(b.Chloride), ion(a.Chloride), t.Chloride)
	add("sulfate", ion(b.Sulfate), ion(a.Sulfate), t.Sulfate)
	plain := func(c units.CalciumCarbonate) string { return number(c.In(units.MilligramPerLitreCaCO3), 0) }
	note := "mg/L as CaCO3"
	if t.Alkalinity != nil {
		note += "; target " + plain(*t.Alkalinity)
	}
	rows := []row{
		{"alkalinity", plain(b.Alkalinity) + " → " + plain(a.Alkalinity), note, "", ""},
		{"hardness", plain(b.Hardness) + " → " + plain(a.Hardness), "mg/L as CaCO3", "", ""},
		{"residual alkalinity", plain(b.ResidualAlkalinity) + " → " + plain(a.ResidualAlkalinity), "mg/L as CaCO3", "", ""},
		{"charge balance of the report", number(b.ChargeImbalance, 1) + " %", w.Judgement, "", ""},
	}
	if k := w.Boiled; k != nil && !k.Scale.IsZero() {
		met := "likewise; the targets are met before the boil"
		if p.Request.Water.When != "" {
			met = "likewise; the targets are met after the boil, for the least that it leaves"
		}
		rows = append(rows,
			row{"alkalinity after the boil", plain(k.AlkalinityLow) + " to " + plain(k.AlkalinityHigh), "mg/L as CaCO3; chalk at equilibrium to nothing dropped", "", ""},
			row{"calcium after the boil", ion(k.CalciumLow) + " to " + ion(k.CalciumHigh), met, "", ""},
			row{"chalk from the boil", "up to " + s.mass(k.Scale), "as scale and haze", "", ""})
	}
	for _, r := range rows {
		f := plan.FigureWater
		if strings.Contains(r.label, "the boil") {
			f = plan.FigureBoiledWater
		}
		out.rows = append(out.rows, r.explain(f))
	}
	return out
}

func vesselSection(p plan.Plan, s style) section {
	out := section{title: "Volumes"}
	for _, v := range p.Vessels {
		note := "at " + s.temperature(v.Temperature)
		if v.Temperature != units.Celsius.Of(20) {
			note += "; " + s.volume(v.Cold) + " at " + s.temperature(units.Celsius.Of(20))
		}
		if number(v.Gravity, 3) != number(1, 3) { // water
			note += "; gravity " + number(v.Gravity, 4)
		}
		out.rows = append(out.rows, row{v.When, s.volume(v.Volume), note, "", ""}.explain(plan.FigureVolumeHot))
	}
	for i, f := range p.Fermenters {
		out.rows = append(out.rows, row{fermenterName(i), s.volume(f.Filled), percent(f.Share) + " of all that goes in; holds " + s.volume(f.Capacity) + "; rack " + s.volume(f.Racked) + " from it", "", ""}.explain(plan.FigureVolumeHot))
	}
	return out
}

func gravitySection(p plan.Plan, s style) section {
	g := p.Gravity
	plato := func(e units.Extract) string { return number(e.In(units.DegreePlato), 2) + " °P" }
	minerals := ""
	if g.Minerals >= 0.00005 {
		minerals = "Salts, nutrient and buffer are " + number(g.Minerals, 4) + " of the floor. "
	}
	rows := []row{
		row{"original", number(g.Original, 4), plato(g.Extract) + "; a hydrometer in the wash at fermenting temperature shows " + number(g.WarmOriginal, 4), "", ""}.explain(plan.FigureGravity, plan.FigureWarmReading),
		row{"one third of the sugar used", number(g.ThirdUsed, 4), "", "", ""}.explain(plan.FigureGravity),
		row{"two thirds used", number(g.TwoThirdsUsed, 4), "", "", ""}.explain(plan.FigureGravity),
		row{"dry floor", number(g.Floor, 4) + " ± " + number(g.FloorUncertainty, 4), "apparent extract " + plato(g.Apparent) + "; at fermenting temperature " + number(g.WarmFloor, 4), "", ""}.explain(plan.FigureFloor, plan.FigureApparent, plan.FigureWarmReading),
		{label: minerals + "A hydrometer adds its own error, and shows more while gas clings to it: stir the gas out."},
		{label: "Finished means: at or near the dry floor, and unchanged over several days."},
	}
	if g.First > 0 {
		first := []row{row{"first portion of the sugar", number(g.First, 4), "what is measured before the yeast; the original counts all the sugar", "", ""}.explain(plan.FigureGravity)}
		for i, k := range g.Portions {
			first = append(first, row{fmt.Sprintf("portion %d goes in by", i+2), number(k.Gravity, 4), s.weight(k.Sugar) + "; two thirds of the sugar so far are used", "", ""}.explain(plan.FigureGravity))
		}
		rows = slices.Insert(rows, 1, first...)
	}
	if a := p.Request.Yeast.Attenuation; a != nil && a.In(units.Percent) < 100 {
		for i := range rows {
			if rows[i].label == "dry floor" {
				rows[i].label = "at the end"
				rows[i].note += "; " + percent(*a) + " of its sugar used"
			}
			rows[i].label = strings.Replace(rows[i].label, "the dry floor", "this gravity", 1)
		}
	}
	return section{"Gravity, 20/20 °C", rows}
}

func feedSection(p plan.Plan, s style) section {
	n := p.Nutrient
	out := section{title: "Nutrient"}
	out.rows = append(out.rows,
		row{"nitrogen wanted", ion(n.Need), fmt.Sprintf("%s to %s by demand; for %.1f g/L of sugar", ion(n.Low), ion(n.High), n.Sugar.In(units.GramPerLitre)), "", ""}.explain(plan.FigureNitrogen),
		row{"nitrogen brought", ion(n.Brought), ofMust(n), "", ""}.explain(plan.FigureNutrient))
	if n.Shortfall.In(units.MilligramPerLitre) > 0.05 {
		out.rows = append(out.rows, row{"not covered within the limits", ion(n.Shortfall), "add another source, or expect a slow ferment", "", ""}.explain(plan.FigureNutrient))
	}
	for _, st := range n.Stages {
		when := "with the yeast"
		if st.Used.In(units.Percent) > 0 {
			when = percent(st.Used) + " of the sugar used"
		}
		for _, d := range st.Doses {
			if !d.Mass.Decimal().IsZero() {
				out.rows = append(out.rows, row{when, s.weight(d), d.What + "; gravity " + number(st.Gravity, 4), "", ""}.explain(plan.FigureNutrient))
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
	for i, pt := range a.Points {
		when, note := percent(pt.Used)+" of the sugar used", fmt.Sprintf("%.2f to %.2f %s", pt.Low, pt.High, byAcids(p))
		if i == 0 {
			when, note = "wash, before the yeast works", "at rest with air; its own CO2 brings it down within a twentieth of the sugar"
		}
		if pt.Clear > 0 {
			note += fmt.Sprintf("; %.2f if no chalk drops out", pt.Clear)
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

// bufferRow is the buffer to weigh, or that there is none.
func bufferRow(a plan.AcidityPlan, s style) row {
	b := *a.Buffer
	switch {
	case !b.Mass.Decimal().IsZero():
		when, halves := "dissolve it in the wash before the yeast", "half of it in the wash before the yeast, half with the second nutrient"
		switch {
		case a.ByMeter && a.Clear.In(units.Gram) < 0.05:
			when = "none at first, as none is needed if no chalk drops out; then only by a meter, when half of the sugar is used"
		case a.ByMeter && a.Halves:
			when = fmt.Sprintf("first the %s that do if no chalk drops out, %s; the rest only by a meter, when half of the sugar is used", s.mass(a.Clear), halves)
		case a.ByMeter:
			when = fmt.Sprintf("first the %s that do if no chalk drops out, in the wash before the yeast; the rest only by a meter, when half of the sugar is used", s.mass(a.Clear))
		case a.Halves:
			when = halves
		}
		doses := fmt.Sprintf("%s to %s by the acids", s.mass(a.Low), s.mass(a.High))
		if a.EndClear > 0 && !a.ByMeter {
			doses += fmt.Sprintf("; %s if no chalk drops out", s.mass(a.Clear))
		}
		return row{b.What, s.weight(b), doses + "; " + when, "", ""}
	case a.High.IsZero():
		return row{b.What, "none", "the ferment stays above the floor without it", "", ""}
	}
	return row{b.What, "none", "the ferment is to stay above the floor without it; up to " + s.mass(a.High) + " if the yeast makes more acid: measure", "", ""}
}

func yeastSection(p plan.Plan, s style) section {
	y := p.Yeast
	out := section{title: "Yeast"}
	out.rows = append(out.rows, row{"live cells", number(y.Cells, 0) + " billion", y.Source, "", ""}.explain(plan.FigureYeast))
	if y.Form == "liquid" {
		out.rows = append(out.rows, row{"packs", number(y.Packs, 1), fmt.Sprintf("%.1f to %.1f by what packs hold", y.Low, y.High), "", ""}.explain(plan.FigureYeast))
		return out
	}
	out.rows = append(out.rows, row{"dry yeast", exact(y.Mass), fmt.Sprintf("%.0f to %.0f g by what a gram holds; the pack's own figure is better", y.Low, y.High), "", ""}.explain(plan.FigureYeast))
	if r := y.Rehydration; r != nil {
		out.rows = append(out.rows, row{"wake it in", s.volume(r.Water) + " water", "at " + s.temperature(r.Temperature) + " for " + r.Time.String(), "", ""}.explain(plan.FigureRehydration))
	}
	return out
}

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
		rows = append(rows, row{"its sugar in the drink", number(f.Sugar.In(units.GramPerLitre), 1) + " g/L", "in primed bottles it ferments", "", ""}.explain(plan.FigureFlavour))
	}
	return section{"Flavour", rows}
}

func labelSection(p plan.Plan, s style) section {
	l := p.Label
	within := "as planned every pack is within ±" + number(l.Tolerance.In(units.PercentVolume), 1) + " % vol of it"
	if !l.Within {
		within = "as planned NOT every pack is within ±" + number(l.Tolerance.In(units.PercentVolume), 1) + " % vol of it"
	}
	kJ, kcal := l.Kilojoules.In(units.Kilojoule), l.Kilocalories.In(units.Kilocalorie)
	return section{"Label (" + l.Law + ")", []row{
		row{"alcohol", number(l.Strength.In(units.PercentVolume), 1) + " % vol", within, "", ""}.explain(plan.FigureTolerance),
		row{"counts as", l.Category, l.Rules, "", ""}.explain(plan.FigureTolerance),
		row{"energy in 100 mL", fmt.Sprintf("%.0f kJ / %.0f kcal", kJ, kcal), fmt.Sprintf("%.0f kcal in %s", l.PerServing.In(units.Kilocalorie), s.volume(l.Serving)), "", ""}.explain(plan.FigureEnergy),
		carbohydrateRow(l),
		row{"standard drinks in " + s.volume(l.Serving), number(l.DrinksUS, 1) + " US", fmt.Sprintf("%.1f UK units; %.1f Australia and New Zealand", l.UnitsUK, l.DrinksAU), "", ""}.explain(plan.FigureDrinks),
	}}
}

// carbohydrateRow is the carbohydrate as the law counts it.
func carbohydrateRow(l plan.LabelPlan) row {
	in100mL := func(c units.MassConcentration) string { return number(c.In(units.GramPerLitre)/10, 1) + " g" }
	note := "sugars " + in100mL(l.Sugars) + ", glycerol of the yeast " + in100mL(l.Polyols)
	switch c := l.Carbohydrate.In(units.GramPerLitre) / 10; {
	case l.Law == "US":
		note += ", acids " + in100mL(l.Acids)
	case c > 0 && c <= 0.5:
		note += "; up to 0.5 g a label may say 0 g or < 0.5 g"
	}
	return row{"carbohydrate in 100 mL", in100mL(l.Carbohydrate), note, "", ""}.explain(plan.FigureCarbohydrate)
}

func balanceSection(p plan.Plan, s style) section {
	out := section{title: "Mass balance"}
	list := func(way string, lines []plan.Line) {
		for _, l := range lines {
			out.rows = append(out.rows, row{way + l.What, s.balance(l.Mass), "", "", ""}.explain(plan.FigureBalance))
		}
	}
	list("in: ", p.Balance.In)
	list("out: ", p.Balance.Out)
	if b := p.Balance; !b.ByAtoms.IsZero() {
		out.rows = append(out.rows, row{"strength without losses", strength(b.ByAtoms), "by the balance of atoms; the plan's yield is a measured one. Yeast " + s.mass(b.YeastLow) + " if well fed", "", ""}.explain(plan.FigureBalance))
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
