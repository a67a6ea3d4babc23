package plan

import (
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A brewing is the batch carried to its base drink, and the states on the way that a plan prints.
type brewing struct {
	carried
	water, start, boiled forward.State // in the kettle: as it comes, with the sugar, after the boil
	filled, wash         forward.State // with the first portion of the sugar; with all that goes in before the yeast works
	unfed                forward.State // before the first of the nutrient
	unstaged             forward.State // before that which goes in by stages
	fermented            forward.State
	deeds, joined        []deed  // all of them; from filled to wash
	racked               []deed  // from fermented to off its yeast
	left                 float64 // L, with the yeast, of what the packs do not take
}

// usedAt is the wash with all its sugar in when a part of it is used.
type usedAt struct {
	used, sg float64
	strength units.StrengthByVolume
}

// brew carries the plan to its base drink.
func (m *maker) brew(*notes) (*brewing, error) {
	c, deeds, err := m.atStart()
	if err != nil {
		return nil, err
	}
	b := &brewing{carried: *c, water: c.state}
	b.in = note(b.in, "water, as it comes", kg(b.state.Mass()))
	filled := slices.IndexFunc(deeds, func(d deed) bool { return d.step.Kind == forward.Cool || d.step.Kind == forward.Heat }) + 1
	fermented := slices.IndexFunc(deeds, func(d deed) bool { return d.step.Kind == forward.Ferment })
	unfed := slices.IndexFunc(deeds, func(d deed) bool { return d.step.Kind == forward.Feed || d.step.Kind == forward.Ferment })
	b.deeds, b.joined, b.racked = deeds, deeds[filled:fermented], deeds[fermented+1:]
	for i, d := range deeds {
		switch {
		case d.step.Kind == forward.Boil:
			b.start = b.state
		case i == filled:
			b.filled = b.state
		}
		if i == unfed {
			b.unfed = b.state
		}
		if i == fermented-m.plan.Nutrient.staged {
			b.unstaged = b.state
		}
		if i == fermented {
			b.wash = b.state
			if err := b.measured(d.step, kg(m.batch.base.Ethanol())); err != nil {
				return nil, err
			}
		}
		if d.line == leftWithYeast {
			if b.left, err = m.notRacked(b.state); err != nil {
				return nil, err
			}
			d.step.Volume = litres(b.left)
			deeds[i] = d
		}
		if err := b.deed(d); err != nil {
			return nil, err
		}
		switch {
		case d.step.Kind == forward.Boil:
			b.boiled = b.state
		case i == fermented:
			b.fermented = b.state
		}
	}
	return b, nil
}

// notRacked is what the packs do not take of the fermented base.
func (m *maker) notRacked(base forward.State) (float64, error) {
	v, err := base.Volume(at20)
	left := v.In(units.Litre)
	for _, k := range m.batch.packed {
		left -= k.base
	}
	return max(0, left), err
}

// usedUp is the wash with so many portions of its sugar in, when a part of all the sugar that the yeast uses
// is used, its gas still in it.
func (m *maker) usedUp(used float64, portions int) (forward.State, error) {
	whole := m.brewed.wash
	c := carried{state: whole, unknowns: m.brewed.unknowns}
	if portions < m.portions() {
		c.state = m.brewed.filled
		for _, d := range m.brewed.joined {
			if d.late {
				d.step.Mass = m.later(portions - 1)
			}
			if _, err := c.do(d.step); err != nil {
				return c.state, err
			}
		}
	} else if used == 1 {
		return m.brewed.fermented, nil
	}
	if used == 0 {
		return c.state, nil
	}
	c.like = m.brewed.like
	part := used * m.attenuation().In(units.Fraction) * kg(whole.Fermentable()) / kg(c.state.Fermentable())
	_, err := c.do(forward.Step{Kind: forward.Ferment, Share: units.Fraction.Of(checked.Number(min(1, part))), Gas: true})
	return c.state, err
}

// measuredAt is what a hydrometer shows then, and the strength.
func (m *maker) measuredAt(used float64, portions int) (at usedAt, err error) {
	for _, at := range m.thirds {
		if portions == m.portions() && at.used == used {
			return at, nil
		}
	}
	return m.measured(used, portions)
}

// measured is that of a wash carried there.
func (m *maker) measured(used float64, portions int) (at usedAt, err error) {
	s, err := m.usedUp(used, portions)
	if err != nil {
		return at, err
	}
	g, err := s.Gravity()
	if err != nil {
		return at, err
	}
	at = usedAt{used: used, sg: g.SG()}
	at.strength, err = s.Strength()
	return at, err
}

// unbuffered is the pH at the end without the buffer.
func (m *maker) unbuffered() (float64, error) {
	c := carried{state: m.brewed.filled, unknowns: m.brewed.unknowns, like: m.brewed.like}
	for _, d := range m.brewed.joined {
		if b := m.plan.Acidity.Buffer; d.step.Kind == forward.Feed && d.step.What == b.What && d.step.Mass == b.Mass.Quantity() {
			continue
		}
		if _, err := c.do(d.step); err != nil {
			return 0, err
		}
	}
	if _, err := c.do(m.fermenting(0, 1)); err != nil {
		return 0, err
	}
	return new(forward.Meter).PHUnder(&c.state, m.air.Pressure())
}
