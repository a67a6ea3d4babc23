package main

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

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
			row{"alkalinity after the boil", plain(k.AlkalinityLow) + " to " + plain(k.AlkalinityHigh),
				"mg/L as CaCO3; chalk at equilibrium to nothing dropped", "", ""},
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
		out.rows = append(out.rows, row{fermenterName(i), s.volume(f.Filled),
			percent(f.Share) + " of all that goes in; holds " + s.volume(f.Capacity) + "; rack " + s.volume(f.Racked) + " from it", "",
			""}.explain(plan.FigureVolumeHot))
	}
	return out
}

func gravitySection(p plan.Plan, s style) section {
	g := p.Gravity
	plato := func(e units.Extract) string { return number(e.In(units.DegreePlato), 2) + " °P" }
	minerals, portionsIn := "", ""
	if len(g.Portions) > 0 {
		portionsIn = "with each portion in that is due by then"
	}
	if g.Minerals >= 0.00005 {
		minerals = "Salts of water, nutrient and buffer are " + number(g.Minerals, 4) + " of the floor. "
	}
	rows := []row{
		row{"original", number(g.Original, 4) + " ± " + number(g.OriginalUncertainty, 4), mostlyFrom(g.OriginalFrom) + "; " + plato(g.Extract) +
			"; a hydrometer in the wash at fermenting temperature shows " + number(g.WarmOriginal, 4), "", ""}.explain(plan.FigureGravity, plan.FigureWarmReading),
		row{"one third of the sugar used", number(g.ThirdUsed, 4), portionsIn, "", ""}.explain(plan.FigureGravity),
		row{"two thirds used", number(g.TwoThirdsUsed, 4), portionsIn, "", ""}.explain(plan.FigureGravity),
		row{"dry floor", number(g.Floor, 4) + " ± " + number(g.FloorUncertainty, 4),
			mostlyFrom(g.FloorFrom) + "; apparent extract " + plato(g.Apparent) + "; at fermenting temperature " + number(g.WarmFloor, 4),
			"", ""}.explain(plan.FigureFloor, plan.FigureApparent, plan.FigureWarmReading),
		{label: minerals + "A hydrometer adds its own error, and shows more while gas clings to it: stir the gas out."},
		{label: "Finished means: at or near the dry floor, and unchanged over several days."},
	}
	if g.First > 0 {
		first := []row{row{"first portion of the sugar", number(g.First, 4), "what is measured before the yeast; the original counts all the sugar",
			"", ""}.explain(plan.FigureGravity)}
		for i, k := range g.Portions {
			first = append(first, row{fmt.Sprintf("portion %d goes in by", i+2), number(k.Gravity, 4),
				s.weight(k.Sugar) + "; two thirds of the sugar so far are used", "", ""}.explain(plan.FigureGravity))
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
