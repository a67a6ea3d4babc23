package main

import (
	"slices"

	"example.org/zymase/examples/seltzer/plan"
)

// souring is the acid before the yeast.
func souring(p plan.Plan, s style) []step {
	a := p.Acid
	if a == nil || a.When != "before the yeast" {
		return nil
	}
	return []step{acidStep(*a, s)}
}

// acidStep is an acid to add, by its pH.
func acidStep(a plan.AcidPlan, s style) step {
	title := "Acid"
	if a.PH > a.Before {
		title = "Take acid away"
	}
	return step{id: "acid", title: title, weigh: []row{{label: a.Weight.What, value: s.weight(a.Weight)}},
		do: []string{"Three quarters of it first, dissolved in a little of the drink; stir, measure, then the rest."},
		read: []row{{label: "pH", value: number(a.PH, 2), note: "before " + number(a.Before, 2)},
			{label: "titratable acidity", value: litreOf(a.Acidity), note: "as " + a.As}}}
}

// maturing puts what is done to the acids after the ferment on the card: bacteria before the drink is chilled, the rest
// once it is racked.
func (c *card) maturing(p plan.Plan, s style) {
	a := p.After
	if a == nil {
		return
	}
	var racked []step
	for i, x := range a.Points {
		read := []row{{label: "pH", value: number(x.PH, 2), note: likely(x.Low, x.High, x.From, "")},
			{label: "titratable acidity", value: litreOf(x.Acidity), note: "as " + a.As}}
		switch {
		case i == 0:
		case x.After == "malic acid to lactic":
			c.insert("chill", step{id: "malolactic", title: "Malic acid to lactic",
				do: []string{"Kept topped up, without sulfite, until the acidity stays the same over a week."}, read: read})
		case x.After == "acid added":
			racked = append(racked, acidStep(*p.Acid, s))
		case x.After == "sulfite and sorbate added":
			keep := step{id: "keep", title: "Sulfite and sorbate",
				do: []string{"Each dissolved in a little cool water by itself, then stirred in. Measure the free SO2 after a day."}, read: read}
			if k := a.Sulfite; k != nil {
				keep.weigh = append(keep.weigh, row{label: k.Weight.What, value: s.weight(k.Weight)})
				keep.read = append(keep.read, row{label: "free SO2", value: ion(k.Free)})
			}
			if k := a.Sorbate; k != nil {
				keep.weigh = append(keep.weigh, row{label: k.Weight.What, value: s.weight(k.Weight)})
			}
			racked = append(racked, keep)
		default:
			racked = append(racked, step{id: "cold", title: "Let cream of tartar settle",
				do: []string{"At " + s.temperature(p.Request.Cold.Temperature) +
					", seeded with ground cream of tartar and stirred, then rack off the crystals while it is cold."},
				read: append(read, row{label: "settled, about", value: s.mass(a.Tartar)})})
		}
	}
	c.insert("flavour", racked...)
}

// insert puts steps before the one of that name, or of the packs where there is none.
func (c *card) insert(before string, steps ...step) {
	at := slices.IndexFunc(c.steps, func(st step) bool { return st.id == before })
	if at < 0 {
		at = 1 + slices.IndexFunc(c.steps, func(st step) bool { return st.id == "rack" })
	}
	c.steps = slices.Insert(c.steps, at, steps...)
}
