package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A card is a plan in the order of the work: what is done, one step after another, with a
// box to tick and blanks for what was read. Every figure on it is one of the plan's.
type card struct {
	alias  map[string]string // of steps by what is filled in them
	title  string
	before []string // cautions that belong to no one step
	steps  []step
}

// A step is one thing to do.
type step struct {
	id       string // keeps its name from plan to plan, so that a tick stays where it was
	title    string
	when     string // what has to be so first; empty: the step before is done
	do       []string
	weigh    []row // what goes in
	read     []row // what should be read: a blank stands beside it
	cautions []string
}

// cardOf lays a plan out as a brew-day card.
func cardOf(p plan.Plan, s style) card {
	c := card{title: p.Name, alias: map[string]string{}}
	for i, k := range p.Packs {
		for as, is := range map[string]bool{
			"fill-counter": k.Bottle != nil && k.Bottle.Filling != nil, "fill-still": k.Bottle != nil && k.Still, "fill-sweet": k.Sweetener != nil,
		} {
			if _, have := c.alias[as]; is && !have {
				c.alias[as] = fmt.Sprintf("fill-%d", i+1)
			}
		}
	}
	if p.Base != nil {
		c.add(lettingDown(p, s)...)
	} else {
		c.add(brewing(p, s)...)
		c.add(souring(p, s)...)
		c.add(pitching(p, s)...)
		c.add(fermenting(p, s)...)
	}
	c.add(packing(p, s)...)
	c.maturing(p, s)
	for _, text := range p.Cautions {
		c.caution(text)
	}
	return c
}

func (c *card) add(steps ...step) { c.steps = append(c.steps, steps...) }

// cautionsOf says to which steps a caution belongs, by words that stand in it; the first
// of the steps that is on the card takes it.
var cautionsOf = []struct{ words, steps string }{
	{"too little for the scale", "weigh"},
	{"was tried", "flavour fill-1"},
	{"that were tried", "flavour fill-1"},
	{" is weighed: of what it brings", "weigh"},
	{"is there for its vitamins", "feed-1 pitch"},
	{"The sulfite is dosed for the batch", "keep"},
	{"salts at hand", "water"},
	{"water report", "water"},
	{"Boiling sugar", "boil dissolve"},
	{"boil over", "boil"},
	{"The boil can drop", "buffer"},
	{"blow-off", "cool"},
	{"Bicarbonate foams", "buffer"},
	{"Keep half of the buffer back", "buffer"},
	{"The yeast is to leave", "fill-1"},
	{"The gravity of the base", "fill-1"},
	{"The base is taken", "rack"},
	{"of the base: measure it", "rack"},
	{"Primed bottles need yeast", "prime-1 prime-2 prime-3"},
	{"Nothing is boiled", "dissolve"},
	{"The top-up water", "top-up"},
	{"Sugar strewn", "portion-2"},
	{"by its sheet", "pitch"},
	{"largest dose on its label", "feed-1 pitch"},
	{"rests on what is usual of it", "measure"},
	{"Concentrated acid", "acid"},
	{"foams up", "acid"},
	{"measured sample first", "acid dissolve"},
	{"may be soured", "acid"},
	{"settle out as tartrates", "acid"},
	{"Not sour enough", "malolactic rack"},
	{"Sulfites harm", "keep"},
	{"limits known here", "keep"},
	{"Sorbate keeps", "keep"},
	{"Dissolve it in water first", "keep"},
	{"Juices hold acids", "measure"},
	{"extracts differ", "measure"},
	{"hydrometer", "measure"},
	{"cells in the pack", "pitch"},
	{"yeast was", "pitch"},
	{"nitrogen", "feed-1 pitch"},
	{"Ammonium", "feed-1 pitch"},
	{"Potassium is", "feed-1 pitch"},
	{"minerals and no vitamins", "feed-1 pitch"},
	{"is what is usual of it", "feed-1 pitch"},
	{"before you rely on a limit", "feed-1 pitch"},
	{"The pH", "pH"},
	{"even pace", "wait"},
	{"The days from", "wait"},
	{"CO2 is heavier", "wait close"},
	{"fresh air", "wait"},
	{"Finished means", "wait"},
	{"oil-based", "flavour"},
	{"The flavouring", "flavour"},
	{"Push a still keg", "close"},
	{"Filling under counter-pressure", "fill-counter"},
	{"under counter-pressure, or keep it cold", "fill-counter"},
	{"PET stretches", "close"},
	{"are sweetened with", "fill-sweet"},
	{"Prime only", "prime-1 prime-2 prime-3"},
	{"Bottle a still drink", "fill-still"},
	{"Vessels under pressure", "fill-1"},
	{"Air shut in", "close"},
	{"cylinder", "close"},
	{"measure it before you print", "open"},
	{"label", "open"},
}

// caution puts a caution to its step, or before all.
func (c *card) caution(text string) {
	for _, of := range cautionsOf {
		if !strings.Contains(text, of.words) || strings.Contains(text, "do not fill") {
			continue
		}
		for _, id := range strings.Fields(of.steps) {
			if as, ok := c.alias[id]; ok {
				id = as
			}
			for i := range c.steps {
				if c.steps[i].id == id {
					c.steps[i].cautions = append(c.steps[i].cautions, text)
					return
				}
			}
		}
	}
	c.before = append(c.before, text)
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
	dissolve := step{id: "dissolve", title: "Dissolve", weigh: append(going(p, s, "kettle"), going(p, s, "dissolved in the water")...), do: []string{"Off the heat, stirring, so that nothing burns on."},
		read: []row{level("in the kettle, cold", vessel(p, "kettle, sugar dissolved, cold"), s)}}
	if v := vessel(p, "sugar dissolved, cold"); !v.Volume.IsZero() {
		dissolve.do, dissolve.read = []string{"Stir until it is clear: what lies on the bottom is missing above."}, []row{level("together, cold", v, s)}
	}
	if strings.Contains(p.Request.Fermentable, "juice ") {
		dissolve.title, dissolve.do = "Mix the juice with the water", nil
	}
	steps := []step{
		{id: "clean", title: "Clean and sanitise", do: []string{"Clean all of it. Sanitise what touches the wash once it is cool: fermenter, airlock, spoon, hydrometer and its jar."}},
		scale, water, dissolve,
	}
	cool := step{id: "cool", title: "Cool and fill the fermenter"}
	if boil := p.Request.Kettle.Boil; boil > 0 {
		steps = append(steps, step{id: "boil", title: "Boil for " + boil.String(), do: []string{"It boils at " + s.temperature(p.Boiling) + " here, a little above with its sugar."},
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
		cool.read = append(cool.read, row{label: fermenterName(i), value: s.volume(f.Filled), note: percent(f.Share) + " of all that goes in, yeast and nutrient too"})
	}
	steps = append(steps, cool)
	if t := vessel(p, "water to top up with"); !t.Volume.IsZero() {
		steps = append(steps, step{id: "top-up", title: "Top up", do: []string{"With the water set aside; cold, it cools the rest."}, read: []row{level("water", t, s)}})
	}
	if salts := going(p, s, "fermenter, after the top-up"); len(salts) > 0 {
		steps = append(steps, step{id: "salts", title: "Treat it once it is together", weigh: salts, do: []string{"Stir until nothing lies on the bottom."}})
	}
	return steps
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
		steps = append(steps, step{id: "water", title: "Boil and cool the water", weigh: append([]row{{label: "water, in all", value: s.mass(b.Added)}}, going(p, s, "water")...),
			do: []string{"Boil it, salts stirred in after, and cool it covered: it is to bring neither air nor germs."}})
	}
	return steps
}

// pitching is from the wash to the yeast in it.
func pitching(p plan.Plan, s style) []step {
	var steps []step
	if b := p.Acidity.Buffer; b != nil && !b.Mass.Decimal().IsZero() {
		steps = append(steps, step{id: "buffer", title: "Buffer", do: []string{bufferRow(p.Acidity, s).note + "."}, weigh: firstBuffer(p.Acidity, s)})
	}
	g := p.Gravity
	measure := step{id: "measure", title: "Measure the wash and write it down", read: []row{
		{label: "gravity", value: number(g.WarmOriginal, 4), note: "shown at " + s.temperature(p.Request.Fermenter.Temperature) + "; " + number(g.Original, 4) + " at 20 °C"},
		level("in the fermenter", firstOf(p, "fermenter, filled", "fermenter, filled with the first portion"), s),
	}}
	if len(p.Fermenters) > 0 {
		measure.read[1].label = "in all fermenters together"
	}
	if g.First > 0 {
		measure.read[0] = row{label: "gravity, at 20 °C", value: number(g.First, 4), note: "of the first portion of the sugar; " + number(g.Original, 4) + " counts all of it"}
	}
	ph := row{label: "pH", value: "not foreseen"}
	if pts := p.Acidity.Points; len(pts) > 0 {
		ph.value, ph.note = number(pts[0].PH, 2), "at rest with air"
		if pts[0].Clear > 0 {
			ph.note += "; " + number(pts[0].Clear, 2) + " if no chalk drops out"
		}
	}
	measure.read = append(measure.read, ph)
	steps = append(steps, measure,
		step{id: "oxygen", title: "Give it air", do: []string{"Cool wash only: stir or shake until it froths, just before the yeast. None once it ferments."}})
	y := p.Yeast
	pitch := step{id: "pitch", title: "Pitch the yeast"}
	if r := y.Rehydration; r != nil {
		steps = append(steps, step{id: "wake", title: "Wake the yeast", weigh: []row{{label: "dry yeast", value: exact(y.Mass)}, {label: "water", value: s.volume(r.Water)}},
			do: []string{"Strew it on the water, and stir it in when the time is up."}, read: []row{{label: "water", value: s.temperature(r.Temperature), note: "for " + r.Time.String()}}})
		pitch.do = append(pitch.do, "All of it, at once, near the temperature of the wash.")
	} else {
		pitch.weigh = []row{{label: y.Form + " yeast", value: number(y.Packs, 1) + " packs"}}
	}
	pitch.read = []row{{label: "wash", value: s.temperature(p.Request.Fermenter.Temperature)}}
	steps = append(steps, pitch)
	first := step{id: "feed-1", title: "First nutrient"}
	if len(p.Nutrient.Stages) > 0 {
		first.weigh = doses(p.Nutrient.Stages[0], s)
	}
	for _, w := range p.Nutrient.Supplements {
		first.weigh = append(first.weigh, row{label: w.What, value: s.weight(w)})
	}
	if len(first.weigh) > 0 {
		steps = append(steps, first)
	}
	return steps
}

// firstBuffer is what goes into the wash before the yeast: the whole, or what is sure to be
// wanted, or half of it.
func firstBuffer(a plan.AcidityPlan, s style) []row {
	r := row{label: a.Buffer.What, value: s.weight(*a.Buffer)}
	if a.ByMeter {
		if a.Clear.In(units.Gram) < 0.05 {
			return nil
		}
		r.value = s.mass(a.Clear)
	}
	if a.Halves {
		r.value = "half of " + r.value
	}
	return []row{r}
}

func doses(st plan.NutrientStage, s style) []row {
	var rows []row
	for _, d := range st.Doses {
		if !d.Mass.Decimal().IsZero() {
			rows = append(rows, row{label: d.What, value: s.weight(d)})
		}
	}
	return rows
}

// about is the day that the schedule gives for something, as an estimate.
func about(p plan.Plan, what string) string {
	for _, e := range p.Schedule {
		if e.What == what {
			return "; " + e.Day + " or so"
		}
	}
	return ""
}

// fermenting goes by gravity: the clock only says when to look.
func fermenting(p plan.Plan, s style) []step {
	var steps []step
	g, a := p.Gravity, p.Acidity
	for i, st := range p.Nutrient.Stages {
		d := doses(st, s)
		if i == 0 || len(d) == 0 {
			continue
		}
		feed := step{id: fmt.Sprintf("feed-%d", i+1), title: fmt.Sprintf("Nutrient, addition %d", i+1), weigh: d,
			when: "by gravity " + number(st.Gravity, 4) + about(p, fmt.Sprintf("nutrient, addition %d", i+1)), read: []row{{label: "gravity", value: number(st.Gravity, 4)}},
			do: []string{"In a little of the wash, slowly: gas comes out."}}
		if i == 1 && a.Halves && a.Buffer != nil {
			for _, r := range firstBuffer(a, s) {
				r.value = "other " + r.value
				feed.weigh = append(feed.weigh, r)
			}
		}
		steps = append(steps, feed)
	}
	for i, k := range g.Portions {
		steps = append(steps, step{id: fmt.Sprintf("portion-%d", i+2), title: fmt.Sprintf("Sugar, portion %d", i+2), when: "by gravity " + number(k.Gravity, 4),
			weigh: []row{{label: k.Sugar.What, value: s.weight(k.Sugar)}}, read: []row{{label: "gravity before", value: number(k.Gravity, 4)}}})
	}
	ph := step{id: "pH", title: "Measure the pH", when: "half of the sugar used: between gravity " + number(g.ThirdUsed, 4) + " and " + number(g.TwoThirdsUsed, 4) + about(p, "measure the pH"),
		read: []row{{label: "pH"}}}
	if n := len(a.Points); n > 2 {
		from, to := a.Points[n-3], a.Points[n-2]
		ph.read[0].value = number(from.PH, 2) + " to " + number(to.PH, 2)
		ph.read[0].note = fmt.Sprintf("%.2f to %.2f %s", to.Low, from.High, byAcids(p))
	} else {
		ph.read[0].value = "not foreseen"
	}
	switch {
	case a.Buffer == nil:
	case a.ByMeter:
		ph.do = []string{"Only now, and only by the meter, the rest of the " + a.Buffer.What + ": half of it, stir, measure again."}
	default:
		ph.do = []string{"Below " + number(a.Floor, 1) + ": " + a.Buffer.What + ", in small portions, by the meter."}
	}
	floor := number(g.Floor, 4) + " ± " + number(g.FloorUncertainty, 4)
	wait := step{id: "wait", title: "Wait until it is dry", when: "gravity near " + number(g.Floor, 4) + about(p, "about dry"),
		do: []string{"Stir the gas out of each sample."},
		read: []row{{label: "gravity", value: floor, note: "shown at " + s.temperature(p.Request.Fermenter.Temperature) + ": " + number(g.WarmFloor, 4)},
			{label: "gravity again", value: "the same", note: "days later"}, {label: "pH", value: "not foreseen"}}}
	if n := len(a.Points); n > 0 {
		wait.read[2].value, wait.read[2].note = number(a.Points[n-1].PH, 2), fmt.Sprintf("%.2f to %.2f %s", a.Points[n-1].Low, a.Points[n-1].High, byAcids(p))
	}
	return append(steps, ph, wait)
}

// packing is from the dry drink to the glass.
func packing(p plan.Plan, s style) []step {
	rack := step{id: "rack", title: "Rack it off the yeast", do: []string{"Hose to the bottom, without a splash."}, read: []row{level("in the fermenter, before", firstOf(p, "fermenter, fermented dry", "fermenter, at the end"), s)}}
	if left := vessel(p, "left with the yeast"); !left.Volume.IsZero() {
		rack.do = append(rack.do, "Leave "+s.volume(left.Volume)+" with the yeast.")
	}
	if b := p.Base; b != nil {
		rack.read = []row{{label: "base to take", value: s.volume(b.Taken), note: "measured cold"}}
	}
	steps := []step{
		{id: "chill", title: "Chill, fine, let it settle", when: "dry, by two readings" + about(p, "pack"), do: []string{"As cold as you can, a day or more; fining only if you want it bright, by its maker's dose.",
			"Warmest since the ferment " + s.temperature(warmest(p)) + ": by that the gas it holds was counted."}},
		rack,
	}
	if f := p.Flavour; f != nil {
		steps = append(steps, step{id: "flavour", title: "Flavour", weigh: []row{{label: f.Name, value: s.volume(f.Added)}}, do: []string{flavourHow(p)}})
	}
	closing := step{id: "close", title: "Close"}
	store := step{id: "store", title: "Store"}
	open := step{id: "open", title: "Open", do: []string{"One first, cold, away from the face."}}
	for i, k := range p.Packs {
		n := fmt.Sprint(i + 1)
		fill := step{id: "fill-" + n, title: fmt.Sprintf("Fill %s", packTitle(k))}
		fill.weigh = blending(k, s)
		if len(p.Packs) > 1 {
			fill.do = append(fill.do, "From "+s.volume(k.Base)+" of base drink"+withFlavour(p, k, s)+".")
		}
		fill.do = append(fill.do, letDown(k)...)
		switch {
		case k.Bottle != nil && k.Bottle.Filling != nil:
			f := k.Bottle.Filling
			fill.title = "Carbonate, then fill " + packTitle(k)
			fill.do = append(fill.do, "Carbonate the drink in a keg first; chill bottles and drink to "+s.temperature(f.Temperature)+".",
				"Under counter-pressure, each "+p.Request.Packs[i].Size.String()+" of drink; head-space "+percent(*p.Request.Packs[i].HeadSpace)+"; close it on its foam.")
			fill.read = append(fill.read, row{label: "gauge of the keg", value: s.gauge(f.Gauge), note: "at " + s.temperature(f.Temperature)})
		case k.Bottle != nil:
			steps = append(steps, priming(k, n, s)...)
			fill.do = append(fill.do, "Each "+p.Request.Packs[i].Size.String()+" of drink; head-space "+percent(*p.Request.Packs[i].HeadSpace)+".")
		default:
			fill.do = append(fill.do, "Each "+p.Request.Packs[i].Size.String()+" of drink, from the bottom, under CO2.")
			if f := k.PartFull; f != nil {
				fill.do = append(fill.do, "One of them with "+s.volume(f.Drink)+": its room takes "+s.mass(f.CO2)+" of CO2.")
			}
		}
		if k.Remainder.In(units.Millilitre) > 0.5 {
			fill.do = append(fill.do, s.volume(k.Remainder)+" is left over.")
		}
		fill.read = append(fill.read, row{label: k.Kind + "s filled", value: fmt.Sprint(packsOf(k))})
		fill.cautions = append(fill.cautions, k.Highest.Cautions...)
		steps = append(steps, fill)
		highest := row{label: "highest, at " + s.temperature(k.Highest.Temperature), value: bound(s.gauge(k.Highest.Gauge), k.Highest.AtLeast), note: k.Kind + "s, " + k.Highest.When + ": " + k.Highest.Verdict.String() + ", " + s.gauge(k.Rating)}
		if b := k.Bottle; b != nil {
			closing.do = append(closing.do, plural(k)+": "+map[bool]string{true: "seam", false: "cap"}[k.Kind == "can"]+" each as it is filled.")
			store.do = append(store.do, plural(k)+": never above "+s.temperature(b.Store)+about(p, "bottles ready")+".")
			open.read = append(open.read, row{label: k.Kind + "s, at " + s.temperature(k.Temperature), value: s.gauge(b.ServedGauge), note: grams(b.Served) + " in the drink"})
		} else {
			gauge := "no pressure: see the sheet"
			if k.Gauge.In(units.KilopascalGauge) >= 0 {
				gauge = s.gauge(k.Gauge)
			}
			if k.Still {
				closing.do = append(closing.do, plural(k)+": purge and close; no CO2 on a still drink.")
				store.do = append(store.do, plural(k)+": at "+s.temperature(k.Temperature)+", without gas.")
			} else {
				closing.do = append(closing.do, plural(k)+": purge, then set the regulator and listen for leaks.")
				closing.read = append(closing.read, row{label: "regulator", value: gauge, note: "at " + s.temperature(k.Temperature)})
				store.do = append(store.do, plural(k)+": on gas at "+s.temperature(k.Temperature)+about(p, "kegs ready")+".")
			}
			open.read = append(open.read, row{label: "kegs, at " + s.temperature(k.Temperature), value: volumes(k.Volumes), note: grams(k.Content)})
		}
		store.read = append(store.read, highest)
	}
	return append(steps, closing, store, open)
}

// priming is the step before bottles are filled.
func priming(k plan.PackPlan, n string, s style) []step {
	b := k.Bottle
	switch {
	case b.Held:
		return []step{{id: "prime-" + n, title: "Do not prime", do: []string{s.weight(b.Priming) + " of " + b.Priming.What + " would take the " + k.Kind + "s over their rating."}}}
	case b.Priming.Mass.Decimal().IsZero():
		return nil
	}
	syrup := syrupRow(b, s)
	return []step{{id: "prime-" + n, title: "Prime the " + k.Kind + "s' share", weigh: []row{{label: b.Priming.What, value: s.weight(b.Priming), note: s.mass(b.PerBottle) + " a " + k.Kind}, {label: "to dissolve it in", value: syrup.value}},
		do: []string{"Stir it in evenly, without a splash: what is uneven bursts one bottle and leaves another flat."}}}
}

// warmest is the warmest that the drink has been since it fermented.
func warmest(p plan.Plan) units.Temperature {
	if p.Base != nil {
		return p.Request.AtHand.Base.Warmest
	}
	return p.Request.Fermenter.Warmest
}

// flavourHow is how the batch's flavouring goes in.
func flavourHow(p plan.Plan) string {
	for _, k := range p.Request.Packs {
		if k.Flavour != nil {
			return "Only to the packs that have none of their own, as their fill says; taste before the last third."
		}
	}
	return "For the whole batch; taste before the last third."
}

// blending is what joins the base drink of one kind of pack before it is filled.
func blending(k plan.PackPlan, s style) []row {
	var rows []row
	if k.Water.In(units.Gram) >= 1 && (k.Bottle == nil || k.Bottle.Priming.What == "") {
		rows = append(rows, row{label: "water, boiled and cooled", value: s.mass(k.Water)})
	}
	for _, w := range []*plan.Weight{k.Sweetener, k.Acid} {
		if w != nil && !w.Mass.Decimal().IsZero() {
			rows = append(rows, row{label: w.What, value: s.weight(*w), note: "dissolved, stirred in"})
		}
	}
	return rows
}

// letDown says what the water of a pack does.
func letDown(k plan.PackPlan) []string {
	if k.Water.In(units.Gram) < 1 || k.Bottle != nil && k.Bottle.Priming.What != "" {
		return nil
	}
	return []string{"The water first, the base onto it, without a splash: it is let down to " + strength(k.Strength) + "."}
}

// plural names a kind of pack at the start of a sentence.
func plural(k plan.PackPlan) string {
	name := strings.ToUpper(k.Kind[:1]) + k.Kind[1:] + "s"
	if k.Of != "" {
		name += " of " + k.Of
	}
	return name
}

// packsOf counts packs, the part full one too.
func packsOf(k plan.PackPlan) int {
	if k.PartFull != nil {
		return k.Count + 1
	}
	return k.Count
}

func packTitle(k plan.PackPlan) string {
	name := fmt.Sprintf("%d %ss", packsOf(k), k.Kind)
	if packsOf(k) == 1 {
		name = "1 " + k.Kind
	}
	if k.Of != "" {
		name += " of " + k.Of
	}
	return name
}

// printCard writes a card for a terminal or a printer.
func printCard(w io.Writer, c card) {
	fmt.Fprintln(w, strings.ToUpper(c.title))
	for _, text := range c.before {
		wrap(w, "  ! ", text)
	}
	for i, st := range c.steps {
		fmt.Fprintf(w, "\n[ ] %2d  %s\n", i+1, st.title)
		if st.when != "" {
			wrap(w, "        when    ", st.when)
		}
		for _, r := range st.weigh {
			fmt.Fprintln(w, strings.TrimRight("        take    "+pad(r.label, labelWidth)+" "+pad(r.value, valueWidth)+" "+r.note, " "))
		}
		for _, text := range st.do {
			wrap(w, "        ", text)
		}
		for _, r := range st.read {
			fmt.Fprintln(w, "        read    "+pad(r.label, labelWidth)+" "+pad(r.value, valueWidth)+" ____________")
			if r.note != "" {
				wrap(w, "                  ", r.note)
			}
		}
		for _, text := range st.cautions {
			wrap(w, "      ! ", text)
		}
	}
}
