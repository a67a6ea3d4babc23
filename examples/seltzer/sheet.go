package main

import (
	"fmt"

	"example.org/zymase/carbonation"
	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// sheet lays a plan out in the order of the work.
func sheet(p plan.Plan, s style) []section {
	sections := []section{overview(p, s)}
	if p.State != nil {
		sections = append(sections, stateSection(p, s))
	}
	sections = append(sections, []section{
		weighing(p, s), waterSection(p, s), vesselSection(p, s),
		gravitySection(p), feedSection(p, s), aciditySection(p, s), yeastSection(p, s),
	}...)
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
	if p.Room != nil {
		sections = append(sections, roomSection(p, s))
	}
	if p.Cost != nil {
		sections = append(sections, costSection(p, s))
	}
	return append(sections, balanceSection(p, s), cautionSection(p))
}

// explain adds where a figure comes from.
func (r row) explain(f plan.Figure) row {
	w := f.Why()
	r.relation, r.source = w.Relation, w.Source
	return r
}

func overview(p plan.Plan, s style) section {
	return section{p.Name, []row{
		row{"packaged", s.volume(p.Volume) + " at " + strength(p.Strength), "in every pack", "", ""}.explain(plan.FigureStrength),
		row{"atmosphere", s.absolute(p.Atmosphere), "water boils at " + s.temperature(p.Boiling), "", ""}.explain(plan.FigureAtmosphere),
	}}
}

func weighing(p plan.Plan, s style) section {
	out := section{title: "Weigh and buy"}
	figures := map[string]plan.Figure{"kettle": plan.FigureFermentable, "water": plan.FigureSalts, "fermenter, in stages": plan.FigureNutrient, "fermenter": plan.FigureYeast}
	for _, w := range p.Weigh {
		f, ok := figures[w.For]
		if !ok {
			f = plan.FigurePriming
		}
		out.rows = append(out.rows, row{w.What, s.weight(w), w.For, "", ""}.explain(f))
	}
	return out
}

func waterSection(p plan.Plan, s style) section {
	w := p.Water
	out := section{title: "Water: " + s.volume(w.Volume) + " to start with"}
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
	for _, r := range []row{
		{"alkalinity", plain(b.Alkalinity) + " → " + plain(a.Alkalinity), note, "", ""},
		{"hardness", plain(b.Hardness) + " → " + plain(a.Hardness), "mg/L as CaCO3", "", ""},
		{"residual alkalinity", plain(b.ResidualAlkalinity) + " → " + plain(a.ResidualAlkalinity), "mg/L as CaCO3", "", ""},
		{"charge balance of the report", number(b.ChargeImbalance, 1) + " %", w.Judgement, "", ""},
	} {
		out.rows = append(out.rows, r.explain(plan.FigureWater))
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
		if v.Gravity != 1 {
			note += "; gravity " + number(v.Gravity, 4)
		}
		out.rows = append(out.rows, row{v.When, s.volume(v.Volume), note, "", ""}.explain(plan.FigureVolumeHot))
	}
	return out
}

func gravitySection(p plan.Plan) section {
	g := p.Gravity
	plato := func(e units.Extract) string { return number(e.In(units.DegreePlato), 2) + " °P" }
	return section{"Gravity, 20/20 °C", []row{
		row{"original", number(g.Original, 4), plato(g.Extract) + "; a hydrometer in the wash at fermenting temperature shows " + number(g.WarmOriginal, 4), "", ""}.explain(plan.FigureGravity),
		row{"one third of the sugar used", number(g.ThirdUsed, 4), "", "", ""}.explain(plan.FigureGravity),
		row{"two thirds used", number(g.TwoThirdsUsed, 4), "", "", ""}.explain(plan.FigureGravity),
		row{"dry floor", number(g.Floor, 4), "apparent extract " + plato(g.Apparent) + "; at fermenting temperature " + number(g.WarmFloor, 4), "", ""}.explain(plan.FigureFloor),
		{label: "Finished means: at or near the dry floor, and unchanged over several days."},
	}}
}

func feedSection(p plan.Plan, s style) section {
	n := p.Nutrient
	out := section{title: "Nutrient"}
	out.rows = append(out.rows,
		row{"nitrogen wanted", ion(n.Need), fmt.Sprintf("%s to %s by demand; for %.1f g/L of sugar", ion(n.Low), ion(n.High), n.Sugar.In(units.GramPerLitre)), "", ""}.explain(plan.FigureNitrogen),
		row{"nitrogen brought", ion(n.Brought), "", "", ""}.explain(plan.FigureNutrient))
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
	for _, l := range n.Limits {
		out.rows = append(out.rows, row{label: "Limit: " + l})
	}
	return out
}

func aciditySection(p plan.Plan, s style) section {
	a := p.Acidity
	out := section{title: "pH of the ferment"}
	if a.Unforeseen != "" {
		out.rows = append(out.rows, row{label: a.Unforeseen})
	}
	for i, pt := range a.Points {
		when := percent(pt.Used) + " of the sugar used"
		if i == 0 {
			when = "wash, before the yeast works"
		}
		out.rows = append(out.rows, row{when, number(pt.PH, 2), fmt.Sprintf("%.2f to %.2f by the acids that yeast makes", pt.Low, pt.High), "", ""}.explain(plan.FigurePH))
	}
	if b := a.Buffer; b != nil {
		out.rows = append(out.rows,
			row{"at the end without buffer", number(a.EndUnbuffered, 2), "floor asked for " + number(a.Floor, 1), "", ""}.explain(plan.FigurePH),
			row{b.What, s.weight(*b), fmt.Sprintf("%s to %s by the acids; dissolve it in the wash before the yeast", s.mass(a.Low), s.mass(a.High)), "", ""}.explain(plan.FigureBuffer))
	}
	return out
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

func packSection(p plan.Plan, k plan.PackPlan, s style) section {
	title := fmt.Sprintf("%d %ss", k.Count, k.Kind)
	if k.Count == 1 {
		title = "1 " + k.Kind
	}
	out := section{title: title}
	out.rows = append(out.rows,
		row{"content", volumes(k.Volumes), grams(k.Content), "", ""}.explain(plan.FigureVolumes),
		row{"strength", strength(k.Strength), "", "", ""}.explain(plan.FigureStrength))
	if k.Remainder.In(units.Millilitre) > 0.5 {
		out.rows = append(out.rows, row{label: "left over, too little for another", value: s.volume(k.Remainder)})
	}
	if b := k.Bottle; b != nil {
		store := s.gauge(b.StoreGauge)
		if b.AtLeast {
			store = "above " + store
		}
		out.rows = append(out.rows,
			row{"already dissolved", grams(b.Dissolved), "from the ferment, at its warmest", "", ""}.explain(plan.FigureDissolved))
		if !b.Priming.Mass.Decimal().IsZero() {
			out.rows = append(out.rows,
				row{"priming for all", s.weight(b.Priming), b.Priming.What + "; " + s.mass(b.PerBottle) + " a bottle", "", ""}.explain(plan.FigurePriming),
				syrupRow(b, s))
		}
		out.rows = append(out.rows,
			row{"in the drink when served", grams(b.Served), "the rest is in the head-space", "", ""}.explain(plan.FigureClosed),
			row{"pressure served, " + s.temperature(k.Temperature), s.gauge(b.ServedGauge), "with the air that the bottle closed on", "", ""}.explain(plan.FigureClosed),
			row{"pressure stored, " + s.temperature(b.Store), store, b.Verdict.String() + ", " + s.gauge(k.Rating), "", ""}.explain(plan.FigureClosed))
		if b.Verdict == carbonation.OverRating || b.Verdict == carbonation.Locked {
			out.rows = append(out.rows, row{label: "OVER THE RATING: lower the content, keep the bottles colder, or use stronger ones."})
		}
		return out
	}
	out.rows = append(out.rows,
		row{"set the gauge to", s.gauge(k.Gauge), "at " + s.temperature(k.Temperature) + ", here; at sea level " + s.gauge(k.SeaLevel), "", ""}.explain(plan.FigureGauge),
		row{label: "rating given by the maker", value: s.gauge(k.Rating)})
	if k.Gauge.Compare(k.Rating) > 0 {
		out.rows = append(out.rows, row{label: "OVER THE RATING: lower the content, keep the keg colder, or use a stronger one."})
	}
	return out
}

// syrupRow tells what the primer is dissolved in.
func syrupRow(b *plan.BottlePlan, s style) row {
	if b.Syrup.In(units.Gram) < 1 {
		return row{label: "dissolve it in", value: "a little of the drink"}
	}
	v := s.mass(b.Syrup) + " water"
	return row{"dissolve it in", v, "boil it, cool it: it brings the strength down to that of the other packs", "", ""}.explain(plan.FigureStrength)
}

func flavourSection(p plan.Plan, s style) section {
	f := p.Flavour
	return section{"Flavour", []row{
		row{f.Name, s.volume(f.Added), "for the whole batch, as in the trial", "", ""}.explain(plan.FigureFlavour),
		row{"it adds", strength(f.Rise), percent(f.Ethanol) + " of the ethanol", "", ""}.explain(plan.FigureFlavour),
	}}
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
