package plan

import (
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// carried is the batch carried forward step by step with the weights as the scale shows them:
// where each thing goes. No figure of it is searched for.
type carried struct {
	state    forward.State
	unknowns forward.Unknowns
	like     *water.Series // once there is a step; shared with the forks of this

	in, stay, out []Line

	fed              units.Mass // nitrogen for the yeast, by the nutrient
	pitched, grown   float64    // kg of dry yeast
	gas              float64    // kg of CO2 that the ferment made
	atoms            float64    // kg of ethanol that the balance of atoms gives
	givenOff, lost   float64    // kg of CO2 and air, of ethanol
	boiledOff, scale float64    // kg
}

// atStart is the water in the kettle, and the steps to come.
func (m *maker) atStart() (*carried, []deed, error) {
	deeds, err := m.deeds()
	if err != nil {
		return nil, nil, err
	}
	c := &carried{unknowns: forward.Usual()}
	c.state, err = m.tap(m.inKettle())
	return c, deeds, err
}

// do carries the state through steps.
func (c *carried) do(steps ...forward.Step) (forward.Left, error) {
	if c.like == nil {
		c.like = new(water.Series)
	}
	var room [6]forward.State // few have more steps
	states, left, err := forward.Walk(room[:0], steps, c.state, &c.unknowns, c.like)
	if err == nil && len(states) > 0 {
		c.state = states[len(states)-1]
	}
	return left, err
}

// mass is that of so many moles, in kg.
func mass(of forward.Component, mol float64) float64 { return mol * of.MolarMass() / 1000 }

// yeastIn is the dry yeast in amounts, in kg.
func yeastIn(a *forward.Amounts) (sum float64) {
	for _, of := range []forward.Component{forward.YeastMatter, forward.YeastNitrogen, forward.YeastPhosphorus, forward.YeastPotassium} {
		sum += mass(of, a[of])
	}
	return sum
}

// note adds to a line.
func note(lines []Line, what string, kilos float64) []Line {
	if i := slices.IndexFunc(lines, func(l Line) bool { return l.What == what }); i >= 0 {
		lines[i].Mass = kilograms(kg(lines[i].Mass) + kilos)
		return lines
	}
	return append(lines, Line{what, kilograms(kilos)})
}

// deed carries a batch through a step, and notes where each thing goes.
func (c *carried) deed(d deed) error {
	before := c.state
	left, err := c.do(d.step)
	if err != nil {
		return err
	}
	in, ethanol := kg(left.In.Mass()), mass(forward.Ethanol, left.Gas[forward.Ethanol])
	c.lost += ethanol
	c.givenOff += kg(left.Gas.Mass()) - ethanol
	c.boiledOff += kg(left.Vapour.Mass())
	c.scale += kg(left.Scale.Mass())
	switch d.step.Kind {
	case forward.Boil:
		c.givenOff -= in // from the air, into a water that lacked it
	case forward.Transfer:
		c.stay = note(c.stay, d.line, kg(left.Liquid.Mass())-yeastIn(&left.Liquid))
	case forward.Settle:
		c.stay = note(c.stay, d.line, kg(left.Sediment.Mass()))
	case forward.Ferment:
		c.grown = kg(c.state.Yeast()) - kg(before.Yeast())
		c.gas = mass(forward.CarbonDioxide, c.state.Of(forward.CarbonDioxide)+left.Gas[forward.CarbonDioxide]-before.Of(forward.CarbonDioxide))
	default:
		if d.step.Kind == forward.Feed {
			c.fed = c.fed.Plus(left.In.YeastNitrogen())
		}
		if d.line != "" {
			c.in = note(c.in, d.line, in)
		}
		c.pitched += yeastIn(&left.In)
	}
	return nil
}

// A pouring is the base drink with what was done to it, and each kind of pack as it is filled, without what a
// cylinder brings.
type pouring struct {
	carried
	meter forward.Meter
	packs []poured
}

// pour carries the base drink into its packs; the last of them takes what there is. The drink of a pack is what is in it
// then, and once its primer is fermented.
func (m *maker) pour(*notes) (*pouring, []packed, error) {
	c := m.brewed.carried
	c.in, c.stay = slices.Clone(c.in), slices.Clone(c.stay)
	for _, d := range m.plan.After.done() {
		if err := c.deed(d); err != nil {
			return nil, nil, err
		}
	}
	return m.pourOf(&c)
}

// pourOf is pour of a base.
func (m *maker) pourOf(c *carried) (*pouring, []packed, error) {
	whole, err := c.state.Volume(at20)
	if err != nil {
		return nil, nil, err
	}
	packs := slices.Clone(m.batch.packed)
	out := &pouring{carried: *c, packs: make([]poured, len(packs))}
	left := whole.In(units.Litre)
	for i := range packs {
		fork, part := &out.packs[i], min(left, packs[i].base)
		fork.carried, fork.meter = *c, &out.meter
		if i == len(packs)-1 {
			part = left
		}
		left -= part
		if _, err := fork.do(forward.Step{Kind: forward.Transfer, Volume: litres(max(0, whole.In(units.Litre)-part))}); err != nil {
			return nil, nil, err
		}
		fork.before = fork.state
		if packs[i], err = m.fill(i, fork); err != nil {
			return nil, nil, m.recipe.packs[i].refused(err)
		}
	}
	return out, packs, nil
}

// balance lists what goes in and what comes out, as the batch is carried forward with the
// weights as the scale shows them.
func (m *maker) balance(*notes) (b Balance, err error) {
	c, joined := m.poured.carried, "flavouring and priming"
	if m.recipe.base == nil {
		m.listBase(&c)
	} else {
		joined = "water, " + joined
	}
	added := 0.0
	for i := range m.poured.packs {
		added += m.poured.packs[i].added
		c.out = append(c.out, Line{"in the " + m.plan.Packs[i].Named(), m.poured.packs[i].state.Mass()})
	}
	b.In, b.Out = note(c.in, joined, added), c.out
	if m.recipe.base == nil && m.unforeseen() == "" {
		most := ferment.UsualMetabolism()
		b.YeastLow = kilograms(c.grown * most.LeanNitrogen.In(units.Fraction) / most.FullNitrogen.In(units.Fraction))
		b.ByAtoms = units.PercentVolume.Of(checked.Number(c.atoms / kg(m.batch.base.Ethanol()) * m.batch.strength))
	}
	return b, nil
}

// listBase is what left it before the packs.
func (m *maker) listBase(c *carried) {
	c.out = note(c.out, "boiled off", c.boiledOff)
	if c.scale > 1e-9 {
		c.out = note(c.out, "chalk dropped, as usual", c.scale)
	}
	c.out = append(c.out, c.stay...)
	if m.unforeseen() != "" { // its nitrogen is not known
		c.out = note(c.out, "yeast, dry, and losses", c.pitched+c.grown+c.lost)
	} else {
		if c.pitched > 0 {
			c.out = note(c.out, "yeast pitched, dry", c.pitched)
		}
		c.out = note(c.out, "yeast grown, dry, by its nitrogen", c.grown)
		c.out = note(c.out, "ethanol lost, other products", c.lost)
	}
	c.out = note(c.out, "CO2 given off", c.givenOff)
}

// measured sets what is lost of the ethanol so that so much is left, kg: that of a measured yield.
func (c *carried) measured(ferment forward.Step, ethanol float64) error {
	wash := c.state
	c.unknowns.Lost, ferment.Gas = 0, true
	if _, err := c.do(ferment); err != nil {
		return err
	}
	c.atoms = mass(forward.Ethanol, c.state.Of(forward.Ethanol))
	c.unknowns.Lost = max(0, 100*(1-ethanol/c.atoms))
	c.state = wash
	return nil
}
