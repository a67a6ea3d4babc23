package main

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// brewing is from the clean vessel to the wash in the fermenter.
func brewing(p plan.Plan, s style) []step {
	scale := step{id: "weigh", title: "Weigh out", do: []string{"A pot with a name for each: the steps below say which goes in when."}}
	for _, w := range p.Weigh {
		if !w.Mass.Decimal().IsZero() {
			scale.weigh = append(scale.weigh, row{label: w.What, value: s.weight(w), note: w.For})
		}
	}
	start := vessel(p, "water to start with")
	water := step{id: "water", title: "Measure the water", read: []row{level("water", start, s)}}
	if water.weigh = going(p, s, "water"); len(water.weigh) > 0 {
		water.title = "Measure the water and treat it"
		water.do = []string{"Stir until nothing lies on the bottom."}
	}
	if t := vessel(p, "water to top up with"); !t.Volume.IsZero() {
		aside := "Treat all of the water alike, then set aside what is to top up with."
		if len(water.weigh) == 0 {
			aside = "Set aside what is to top up with."
		}
		water.do = append(water.do, aside)
		water.read = append(water.read, level("set aside", t, s))
	}
	if r := p.Yeast.Rehydration; r != nil && start.Volume.Compare(r.Water) >= 0 {
		water.do = append(water.do, "Set aside "+s.volume(r.Water)+" of it, boiled, to wake the yeast in: until then the volumes are so much less.")
	}
	dissolve := step{id: "dissolve", title: "Dissolve", weigh: append(going(p, s, "kettle"), going(p, s, "dissolved in the water")...),
		do:   []string{"Off the heat, stirring, so that nothing burns on."},
		read: []row{level("in the kettle, cold", vessel(p, "kettle, sugar dissolved, cold"), s)}}
	if v := vessel(p, "sugar dissolved, cold"); !v.Volume.IsZero() {
		dissolve.do, dissolve.read = []string{"Stir until it is clear: what lies on the bottom is missing above."}, []row{level("together, cold", v, s)}
	}
	if strings.Contains(p.Request.Fermentable, "juice ") {
		dissolve.title, dissolve.do = "Mix the juice with the water", nil
	}
	steps := []step{
		{id: "clean", title: "Clean and sanitise",
			do: []string{"Clean all of it. Sanitise what touches the wash once it is cool: fermenter, airlock, spoon, hydrometer and its jar."}},
		scale, water, dissolve,
	}
	cool := step{id: "cool", title: "Cool and fill the fermenter"}
	if boil := p.Request.Kettle.Boil; boil > 0 {
		steps = append(steps, step{id: "boil", title: "Boil for " + boil.String(),
			do:   []string{"It boils at " + s.temperature(p.Boiling) + " here, a little above with its sugar."},
			read: []row{level("start of the boil", vessel(p, "kettle, start of the boil"), s), level("end of the boil", vessel(p, "kettle, end of the boil"), s)}})
	} else {
		cool.title = "Fill the fermenter"
	}
	if salts := going(p, s, "kettle, after the boil"); len(salts) > 0 {
		steps = append(steps, step{id: "salts", title: "Treat it once it has boiled", weigh: salts, do: []string{"Stir until nothing lies on the bottom."}})
	}
	cool.do = []string{"To " + s.temperature(p.Request.Fermenter.Temperature) + "."}
	if left := vessel(p, "left in the kettle"); !left.Volume.IsZero() {
		cool.do = append(cool.do, "Leave "+s.volume(left.Volume)+" in the kettle.")
	}
	for i, f := range p.Fermenters {
		cool.read = append(cool.read, row{label: fermenterName(i), value: s.volume(f.Filled),
			note: percent(f.Share) + " of all that goes in, yeast and nutrient too"})
	}
	steps = append(steps, cool)
	if t := vessel(p, "water to top up with"); !t.Volume.IsZero() {
		steps = append(steps, step{id: "top-up", title: "Top up", do: []string{"With the water set aside; cold, it cools the rest."},
			read: []row{level("water", t, s)}})
	}
	if salts := going(p, s, "fermenter, after the top-up"); len(salts) > 0 {
		steps = append(steps, step{id: "salts", title: "Treat it once it is together", weigh: salts, do: []string{"Stir until nothing lies on the bottom."}})
	}
	return steps
}

// vessel is the liquid at a moment that the plan names.
func vessel(p plan.Plan, when string) plan.Vessel {
	for _, v := range p.Vessels {
		if v.When == when {
			return v
		}
	}
	return plan.Vessel{}
}

// level is a volume to read off.
func level(label string, v plan.Vessel, s style) row {
	return row{label: label, value: s.volume(v.Volume), note: "at " + s.temperature(v.Temperature)}
}

// going are the weights that go to one place.
func going(p plan.Plan, s style, to string) []row {
	var rows []row
	for _, w := range p.Weigh {
		if w.For == to && !w.Mass.Decimal().IsZero() {
			rows = append(rows, row{label: w.What, value: s.weight(w)})
		}
	}
	return rows
}

// fermenterName is what one of several is called.
func fermenterName(i int) string { return fmt.Sprintf("fermenter %d", i+1) }

// firstOf is the first of the moments that the plan has.
func firstOf(p plan.Plan, moments ...string) plan.Vessel {
	for _, m := range moments {
		if v := vessel(p, m); !v.Volume.IsZero() {
			return v
		}
	}
	return plan.Vessel{}
}

// lettingDown is what is done with a base before it is packed.
func lettingDown(p plan.Plan, s style) []step {
	steps := []step{{id: "clean", title: "Clean and sanitise", do: []string{"Clean all of it. Sanitise what touches the drink."}}}
	if len(p.Weigh) > 0 {
		scale := step{id: "weigh", title: "Weigh out", do: []string{"A pot with a name for each: the steps below say which goes in when."}}
		for _, w := range p.Weigh {
			if !w.Mass.Decimal().IsZero() {
				scale.weigh = append(scale.weigh, row{label: w.What, value: s.weight(w), note: w.For})
			}
		}
		steps = append(steps, scale)
	}
	if b := p.Base; b.Added.In(units.Gram) >= 1 {
		steps = append(steps, step{id: "water", title: "Boil and cool the water",
			weigh: append([]row{{label: "water, in all", value: s.mass(b.Added)}}, going(p, s, "water")...),
			do:    []string{"Boil it, salts stirred in after, and cool it covered: it is to bring neither air nor germs."}})
	}
	return steps
}
