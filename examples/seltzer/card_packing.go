package main

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// packing is from the dry drink to the glass.
func packing(p plan.Plan, s style) []step {
	rack := step{id: "rack", title: "Rack it off the yeast", do: []string{"Hose to the bottom, without a splash."},
		read: []row{level("in the fermenter, before", firstOf(p, "fermenter, fermented dry", "fermenter, at the end"), s)}}
	if left := vessel(p, "left with the yeast"); !left.Volume.IsZero() {
		rack.do = append(rack.do, "Leave "+s.volume(left.Volume)+" with the yeast.")
	}
	if b := p.Base; b != nil {
		rack.read = []row{{label: "base to take", value: s.volume(b.Taken), note: "measured cold"}}
	}
	steps := []step{
		{id: "chill", title: "Chill, fine, let it settle", when: "dry, by two readings" + about(p, "pack"),
			do: []string{"As cold as you can, a day or more; fining only if you want it bright, by its maker's dose.",
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
		own, with := k.Taste != "" && p.Request.Packs[i].Flavour != nil, ""
		if fill.weigh = blending(k, own, s); !own {
			with = withFlavour(p, k, s)
		}
		if len(p.Packs) > 1 {
			fill.do = append(fill.do, "From "+s.volume(k.Base)+" of base drink"+with+".")
		}
		if degassed(k) {
			fill.do = append(fill.do, "Degas it before: stir or swirl it until no more gas comes, warm or under a vacuum, without a splash in air.")
		}
		fill.do = append(fill.do, letDown(k)...)
		switch {
		case k.Bottle != nil && k.Bottle.Filling != nil:
			f := k.Bottle.Filling
			fill.title, fill.when = "Carbonate, then fill "+packTitle(k), strings.TrimPrefix(about(p, "carbonated: fill under counter-pressure"), "; ")
			fill.do = append(fill.do, "Carbonate the drink in a keg first; chill bottles and drink to "+s.temperature(f.Temperature)+".",
				"Under counter-pressure, each "+s.size(p.Request.Packs[i].Size)+" of drink; head-space "+percent(*p.Request.Packs[i].HeadSpace)+"; close it on its foam.")
			fill.read = append(fill.read, row{label: "gauge of the keg", value: s.gauge(f.Gauge), note: "at " + s.temperature(f.Temperature)})
		case k.Bottle != nil:
			steps = append(steps, priming(k, n, s)...)
			fill.do = append(fill.do, "Each "+s.size(p.Request.Packs[i].Size)+" of drink; head-space "+percent(*p.Request.Packs[i].HeadSpace)+".")
		default:
			fill.do = append(fill.do, kegFill(s.size(p.Request.Packs[i].Size), k, s))
		}
		if k.Remainder.In(units.Millilitre) > 0.5 {
			fill.do = append(fill.do, s.volume(k.Remainder)+" is left over.")
		}
		fill.read = append(fill.read, row{label: k.Kind + "s filled", value: fmt.Sprint(packsOf(k))})
		fill.cautions = append(fill.cautions, k.Highest.Cautions...)
		steps = append(steps, fill)
		highest := row{label: "highest, at " + s.temperature(k.Highest.Temperature), value: bound(s.gauge(k.Highest.Gauge), k.Highest.AtLeast),
			note: k.Named() + ", " + k.Highest.When + ": " + k.Highest.Verdict.String() + ", " + s.gauge(k.Rating)}
		if b := k.Bottle; b != nil {
			closing.do = append(closing.do, plural(k)+": "+map[bool]string{true: "seam", false: "cap"}[k.Kind == "can"]+" each as it is filled.")
			ready := ""
			if b.Priming.What != "" {
				ready = about(p, k.Kind+"s ready")
			}
			store.do = append(store.do, plural(k)+": never above "+s.temperature(b.Store)+ready+".")
			open.read = append(open.read, row{label: k.Named() + ", at " + s.temperature(k.Temperature), value: bound(s.gauge(b.ServedGauge), b.ServedAtLeast),
				note: grams(b.Served) + " in the drink"})
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
				closing.read = append(closing.read, row{label: regulator(p, k), value: gauge, note: "at " + s.temperature(k.Temperature)})
				store.do = append(store.do, plural(k)+": on gas at "+s.temperature(k.Temperature)+about(p, "kegs ready")+".")
			}
			open.read = append(open.read, row{label: k.Named() + ", at " + s.temperature(k.Temperature), value: volumes(k.Volumes), note: grams(k.Content)})
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
		return []step{{id: "prime-" + n, title: "Do not prime",
			do: []string{s.weight(b.Priming) + " of " + b.Priming.What + " would take the " + k.Named() + " over their rating."}}}
	case b.Priming.Mass.Decimal().IsZero():
		return nil
	}
	syrup := syrupRow(b, s)
	return []step{{id: "prime-" + n, title: "Prime the share of the " + k.Named(),
		weigh: []row{{label: b.Priming.What, value: s.weight(b.Priming), note: s.mass(b.PerBottle) + " a " + k.Kind},
			{label: "to dissolve it in", value: syrup.value}},
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

// blending is what joins the base drink of one kind of pack before it is filled, its flavouring where it is its own.
func blending(k plan.PackPlan, own bool, s style) []row {
	var rows []row
	if k.Water.In(units.Gram) >= 1 && (k.Bottle == nil || k.Bottle.Priming.What == "") {
		rows = append(rows, row{label: "water, boiled and cooled", value: s.mass(k.Water)})
	}
	if own {
		rows = append(rows, row{label: k.Taste, value: s.volume(k.Flavouring), note: "stirred in"})
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
	name := k.Named()
	return strings.ToUpper(name[:1]) + name[1:]
}

// packsOf counts packs, the part full one too.
func packsOf(k plan.PackPlan) int {
	if k.PartFull != nil {
		return k.Count + 1
	}
	return k.Count
}

func packTitle(k plan.PackPlan) string {
	if packsOf(k) == 1 {
		return "1 " + k.One()
	}
	return fmt.Sprintf("%d %s", packsOf(k), k.Named())
}

// kegFill is how much drink goes into kegs of a size.
func kegFill(size string, k plan.PackPlan, s style) string {
	const how = " of drink, from the bottom, under CO2."
	f := k.PartFull
	switch {
	case f == nil:
		return "Each " + size + how
	case k.Count == 0:
		return s.volume(f.Drink) + how + " " + room(k, s)
	}
	return "Each " + size + how + " One more with " + s.volume(f.Drink) + ". " + room(k, s)
}

// room is what the gas in a keg that is not full comes to.
func room(k plan.PackPlan, s style) string {
	f := k.PartFull
	if k.Still {
		return "Not full: purge its room, " + s.volume(f.Room) + ", with nitrogen; of CO2 it takes " + s.mass(f.CO2) + ", for the drink to take up."
	}
	return "Not full: its room, " + s.volume(f.Room) + ", takes " + s.mass(f.CO2) + " of CO2."
}

// regulator is what is set for a kind of keg, by its name where there are others.
func regulator(p plan.Plan, k plan.PackPlan) string {
	for _, other := range p.Packs {
		if other.Kind == k.Kind && !other.Still && other.Named() != k.Named() {
			return "regulator, " + k.Named()
		}
	}
	return "regulator"
}
