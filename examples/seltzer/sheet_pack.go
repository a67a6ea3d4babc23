package main

import (
	"fmt"
	"math"
	"strings"

	"example.org/zymase/carbonation"
	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// packSection is all that is known of one kind of pack: its own cautions, too.
func packSection(p plan.Plan, k plan.PackPlan, s style) section {
	out := section{title: packTitle(k)}
	if packsOf(k) == 0 {
		out.title = k.Named()
	}
	out.rows = append(out.rows,
		row{"content", volumes(k.Volumes), contentNote(k), "", ""}.explain(plan.FigureVolumes),
		row{"strength", strength(k.Strength), "", "", ""}.explain(plan.FigureStrength))
	out.rows = append(out.rows, row{"rack for them", s.volume(k.Base), "of base drink, measured cold" + withFlavour(p, k, s), "",
		""}.explain(plan.FigureFermentable))
	out.rows = append(out.rows, tasteRows(k, s)...)
	if k.Remainder.In(units.Millilitre) > 0.5 {
		out.rows = append(out.rows, row{label: "left over, too little for another", value: s.volume(k.Remainder)})
	}
	if k.Bottle != nil {
		out.rows = append(out.rows, bottleRows(k, s)...)
	} else {
		out.rows = append(out.rows, kegRows(k, s)...)
	}
	return section{out.title, append(out.rows, highestRows(p, k, s)...)}
}

// degassed tells whether a pack is to hold no gas at all.
func degassed(k plan.PackPlan) bool { return k.Still && k.Content.IsZero() }

// contentNote is a content by mass, and what it takes to have none.
func contentNote(k plan.PackPlan) string {
	if degassed(k) {
		return grams(k.Content) + ": degas it before it is filled"
	}
	return grams(k.Content)
}

// withFlavour is what of the flavouring goes to one kind of pack.
func withFlavour(p plan.Plan, k plan.PackPlan, s style) string {
	if k.Taste == "" {
		return ""
	}
	return ", with " + s.volume(k.Flavouring) + " of " + k.Taste
}

// withoutAcid is the pH of a drink before its acid.
func withoutAcid(k plan.PackPlan) string {
	if k.Acid == nil {
		return ""
	}
	return number(k.PH.Without, 2) + " without it; "
}

// tasteRows are what a kind of pack gets of its own, and when.
func tasteRows(k plan.PackPlan, s style) []row {
	var rows []row
	primed := k.Bottle != nil && k.Bottle.Priming.What != ""
	if k.Water.In(units.Gram) >= 1 && !primed {
		rows = append(rows, row{"water to them", s.mass(k.Water),
			"boiled and cooled covered, as air in it stales the drink: it brings them to their strength", "", ""}.explain(plan.FigureStrength))
	}
	for _, w := range []*plan.Weight{k.Sweetener, k.Acid} {
		if w != nil {
			rows = append(rows, row{w.What, s.weight(*w), w.For + ", dissolved, stirred in before they are filled", "", ""}.explain(plan.FigureTaste))
		}
	}
	if ph := k.PH; ph != nil {
		label := "pH with the acid"
		if k.Acid == nil {
			label = "pH, about"
		}
		rows = append(rows, row{label, number(ph.With, 2), withoutAcid(k) + "with its gas, at " + s.temperature(units.Celsius.Of(20)), "", ""}.explain(plan.FigurePH))
	}
	for _, d := range k.Trial {
		liked, each := "", ""
		if k.Count > 0 {
			each = ", " + s.volume(d.ForEach) + " for each " + k.Kind
			if k.PartFull != nil {
				each = ", " + s.volume(d.ForEach) + " for a full " + k.Kind
			}
		}
		if d.Liked {
			liked = "; THE ONE LIKED"
		}
		rows = append(rows, row{"tried: " + s.volume(d.InSample) + " in the sample", s.volume(d.ForAll),
			s.volume(d.PerLitre) + " a litre" + each + liked, "", ""}.explain(plan.FigureFlavour))
	}
	if l := k.Own; l != nil {
		within := ""
		if !l.Within {
			within = "; NOT within the label's tolerance"
		}
		rows = append(rows,
			row{"its own label", number(l.Strength.In(units.PercentVolume), 1) + " % vol",
				fmt.Sprintf("%.0f kJ / %.0f kcal in 100 mL; carbohydrate %.1f g, sugars %.1f g%s",
					l.Kilojoules.In(units.Kilojoule), l.Kilocalories.In(units.Kilocalorie), l.Carbohydrate.In(units.GramPerLitre)/10,
					l.Sugars.In(units.GramPerLitre)/10, within), "", ""}.explain(plan.FigureTolerance, plan.FigureEnergy))
	}
	return rows
}

func bottleRows(k plan.PackPlan, s style) []row {
	b := k.Bottle
	if f := b.Filling; f != nil {
		return []row{
			row{"fill under counter-pressure", s.gauge(f.Gauge),
				"from a keg at " + s.temperature(f.Temperature) + " with " + grams(f.Content) + ", of which the head-space takes a part", "", ""}.explain(plan.FigureGauge),
			row{"in the drink when served", grams(b.Served), "the rest is in the head-space", "", ""}.explain(plan.FigureClosed),
			row{"pressure served, " + s.temperature(k.Temperature), bound(s.gauge(b.ServedGauge), b.ServedAtLeast), "closed on CO2", "", ""}.explain(plan.FigureClosed),
			row{"pressure stored, " + s.temperature(b.Store), bound(s.gauge(b.StoreGauge), b.AtLeast), "", "", ""}.explain(plan.FigureClosed),
		}
	}
	rows := []row{row{"already dissolved", grams(b.Dissolved), "from the ferment, at its warmest", "", ""}.explain(plan.FigureDissolved)}
	if !b.FromFlavour.IsZero() {
		note := "it ferments in the " + k.Kind
		if b.Priming.What == "" {
			note = "if it ferments in the " + k.Kind
		}
		rows = append(rows, row{"gas from the flavouring's sugar", grams(b.FromFlavour), note, "", ""}.explain(plan.FigurePriming))
	}
	switch {
	case b.Held:
		rows = append(rows, row{"priming for all", "none", s.weight(b.Priming) + " of " + b.Priming.What + " would take them over their rating",
			"", ""}.explain(plan.FigurePriming))
	case !b.Priming.Mass.Decimal().IsZero():
		rows = append(rows,
			row{"priming for all", s.weight(b.Priming), b.Priming.What + "; " + s.mass(b.PerBottle) + " a " + k.Kind, "", ""}.explain(plan.FigurePriming),
			syrupRow(b, s))
	}
	return append(rows,
		row{"in the drink when served", grams(b.Served), "the rest is in the head-space", "", ""}.explain(plan.FigureClosed),
		row{"pressure served, " + s.temperature(k.Temperature), bound(s.gauge(b.ServedGauge), b.ServedAtLeast), "with the air that the " + k.Kind + " closed on",
			"", ""}.explain(plan.FigureClosed),
		row{"pressure stored, " + s.temperature(b.Store), bound(s.gauge(b.StoreGauge), b.AtLeast), "", "", ""}.explain(plan.FigureClosed))
}

func kegRows(k plan.PackPlan, s style) []row {
	var rows []row
	if f := k.PartFull; f != nil {
		filled := fmt.Sprintf("%d full, 1 with %s", k.Count, s.volume(f.Drink))
		if k.Count == 0 {
			filled = s.volume(f.Drink)
		}
		note := room(k, s)
		rows = append(rows, row{"filled", filled, strings.ToLower(note[:1]) + strings.TrimSuffix(note[1:], "."), "",
			""}.explain(plan.FigureKegRoom))
	}
	if k.Still {
		own := s.gauge(k.Gauge)
		if k.Gauge.In(units.KilopascalGauge) < 0 { // its gas presses less than the air
			own = "none"
		}
		return append(rows, row{"pressure of its own", own,
			"at " + s.temperature(k.Temperature) + ", still: push it with nitrogen, or with CO2 only while it pours", "", ""}.explain(plan.FigureGauge))
	}
	if k.Gauge.In(units.KilopascalGauge) < 0 {
		return append(rows, row{"set the gauge to", "nothing",
			"no regulator can set " + s.gauge(k.Gauge) + ", at which it would hold that content at " + s.temperature(k.Temperature) +
				"; under CO2 without pressure it holds more", "", ""}.explain(plan.FigureGauge))
	}
	rows = append(rows,
		row{"set the gauge to", s.gauge(k.Gauge), "at " + s.temperature(k.Temperature) + ", here; at sea level " + s.gauge(k.SeaLevel),
			"", ""}.explain(plan.FigureGauge),
		row{"that takes", fmt.Sprintf("about %.0f d", hours(carbonation.StillKeg())/24),
			fmt.Sprintf("at rest; rolled or shaken all the while about %.0f min: 95 %% of the way", 60*hours(carbonation.RolledKeg())),
			"", ""}.explain(plan.FigureKegTime))
	if f := k.PartFull; f != nil && !f.Charge.IsZero() {
		rows = append(rows, row{"or fill its room once, to", s.gauge(f.Charge), "the one not full, cold; cylinder closed, then shaken until the gauge stands at " +
			s.gauge(k.Gauge), "", ""}.explain(plan.FigureKegRoom))
	}
	return rows
}

// hours are how long a keg takes for 95 % of the way to rest.
func hours(rate units.Rate) float64 { return math.Log(20) / rate.In(units.PerHour) }

// highestRows set the highest pressure against the rating, with the cautions that follow.
func highestRows(p plan.Plan, k plan.PackPlan, s style) []row {
	h := k.Highest
	note, closed := h.When, plan.FigureClosed
	if k.Bottle == nil {
		closed = plan.FigureKegClosed
	}
	if h.Sugar {
		note += ", its sugar fermented"
		if h.Flavouring && !h.Sweetener && p.Request.Yeast.Attenuation == nil {
			note = h.When + ", the flavouring's sugar fermented"
		}
	}
	verdict := h.Verdict.String()
	if h.Verdict == carbonation.MayFreeze { // as cold as it may get
		verdict = carbonation.WithinRating.String()
	}
	rated := ", " + s.gauge(k.Rating)
	if b := k.Bottle; b != nil && h.When == "stored" && h.Gauge.Compare(b.StoreGauge) > 0 { // [plan] rates the worst of what it may hold
		rated += "; if the drink took up all the air it can and all its sugar makes gas"
	}
	rows := []row{row{"highest, at " + s.temperature(h.Temperature), bound(s.gauge(h.Gauge), h.AtLeast), note + ": " + verdict + rated, "", ""}.explain(closed)}
	if h.Verdict != carbonation.WithinRating {
		rows = append(rows, row{label: strings.ToUpper(h.Verdict.String()) + ": " + cure(k)})
	}
	for _, c := range h.Cautions {
		rows = append(rows, row{label: c})
	}
	return rows
}

// cure is what brings a pack within its rating.
func cure(k plan.PackPlan) string {
	if k.Highest.Verdict == carbonation.MayFreeze {
		return "keep the " + k.Kind + "s warmer."
	}
	text := "lower the content, "
	if k.Highest.Sweetener {
		text += "sweeten them less or with what yeast leaves, "
	}
	if k.Highest.Flavouring {
		text += "take less of the flavouring or one without sugar, "
	}
	if k.Bottle == nil || k.Highest.When == "stored" {
		text += "keep the " + k.Kind + "s colder, "
	}
	return text + "or use stronger ones."
}

// bound marks a pressure that is only known to be higher.
func bound(pressure string, atLeast bool) string {
	if atLeast {
		return "above " + pressure
	}
	return pressure
}

// syrupRow tells what the primer is dissolved in.
func syrupRow(b *plan.BottlePlan, s style) row {
	if b.Syrup.In(units.Gram) < 1 {
		return row{label: "dissolve it in", value: "a little of the drink"}
	}
	v := s.mass(b.Syrup) + " water"
	return row{"dissolve it in", v, "boil it, cool it: it brings the strength down to that of the other packs", "", ""}.explain(plan.FigureStrength)
}
