package plan

import (
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// A deed is a step of the plan with the line of the balance that it belongs to: of what comes in,
// or of the liquid that stays behind.
type deed struct {
	line string
	step forward.Step
	late bool // sugar of the later portions
}

// deeds are the plan as steps, from the water to the base drink off its yeast.
func (m *maker) deeds() ([]deed, error) {
	r, place := m.req, m.air.Pressure()
	dissolve := m.dissolving()
	dissolve.Kind, dissolve.Mass = forward.Dissolve, kilograms(m.batch.fermentable)
	var salts []deed
	all := make([]deed, 0, 24)
	kettlePart := 1 - m.batch.topUp/m.batch.water
	if m.saltsAfter() {
		kettlePart = 1
	}
	for _, d := range m.plan.Water.Doses {
		salts = append(salts, deed{line: "salts", step: forward.Step{Kind: forward.Treat, What: d.What, Mass: kilograms(kettlePart * kg(d.Mass.Quantity()))}})
	}
	late := dissolve
	late.Mass = kilograms(m.batch.late)
	dissolve.Mass = kilograms(m.batch.fermentable - m.batch.late)
	if !m.saltsAfter() {
		all, salts = append(all, salts...), nil
	}
	all = append(all, deed{line: m.fermentable.Name(), step: dissolve},
		deed{line: "", step: forward.Step{Kind: forward.Boil, For: forward.Duration(r.Kettle.Boil), Rate: r.Kettle.BoilOff, Pressure: place}})
	if m.batch.topUp == 0 {
		all, salts = append(all, salts...), nil
	}
	all = append(all, deed{line: kettleLeft, step: forward.Step{Kind: forward.Transfer, Volume: r.Kettle.Loss}})
	if m.batch.topUp > 0 {
		with, err := m.topUp()
		if err != nil {
			return nil, err
		}
		all = append(all, deed{line: waterToTopUp, step: forward.Step{Kind: forward.Blend, With: with, Volume: litres(m.batch.topUp / waterPerLitre)}})
	}
	all = append(all, salts...)
	pitching := deed{line: "", step: forward.Step{Kind: forward.Cool, Temperature: r.Fermenter.Temperature}}
	if r.Kettle.Boil == 0 && r.Fermenter.Temperature.Compare(at20) > 0 {
		pitching.step.Kind = forward.Heat
	}
	all = append(all, pitching)
	if m.batch.late > 0 { // as if before the yeast: what is in the end does not depend on when
		all = append(all, deed{line: m.fermentable.Name() + ", later portions", step: late, late: true})
	}
	all = append(all, m.soured...)
	for _, d := range m.fed {
		st := forward.Step{Kind: forward.Feed, What: d.Material.Name(), Mass: d.Mass}
		if r.Nutrient.owns(d.Material) {
			st.What, st.Own = "", d.Material
		}
		all = append(all, deed{line: "nutrient and buffer", step: st})
	}
	if w := m.plan.Acidity.Buffer; w != nil {
		all = append(all, deed{line: "nutrient and buffer", step: forward.Step{Kind: forward.Feed, What: w.What, Mass: w.Mass.Quantity()}})
	}
	if m.plan.Yeast.Form == "dry" {
		all = append(all, deed{line: "dry yeast", step: forward.Step{Kind: forward.Pitch, Mass: m.plan.Yeast.Mass.Quantity()}})
	}
	return append(append(all,
		deed{line: "", step: forward.Step{Kind: forward.Ferment, Share: m.attenuation(), Pressure: place}},
		deed{line: "", step: forward.Step{Kind: forward.Warm, Temperature: r.Fermenter.Warmest, Pressure: place}},
		deed{line: leftWithYeast, step: forward.Step{Kind: forward.Transfer, Volume: litres(m.leaves())}},
		deed{line: "", step: forward.Step{Kind: forward.Fine, Share: units.Percent.Of(100)}}), m.after...), nil
}

// topUp is the water beside the kettle, treated where the salts do not go in after it.
func (m *maker) topUp() (*forward.State, error) { return m.treatedWater(m.batch.topUp / waterPerLitre) }

// treatedWater is twice so many litres of the treated water, as a level may show less.
func (m *maker) treatedWater(v float64) (*forward.State, error) {
	s, err := m.tap(litres(2 * v))
	if err != nil {
		return nil, err
	}
	u := forward.Usual()
	doses := m.plan.Water.Doses
	if m.saltsAfter() {
		doses = nil
	}
	for _, d := range doses {
		st := forward.Step{Kind: forward.Treat, What: d.What, Mass: kilograms(2 * v * waterPerLitre / m.batch.water * kg(d.Mass.Quantity()))}
		if s, _, err = forward.Do(st, s, &u); err != nil {
			return nil, err
		}
	}
	if m.recipe.base != nil { // it was boiled: its gas is out
		if s, _, err = forward.Do(forward.Step{Kind: forward.Degas, Share: units.Percent.Of(100)}, s, &u); err != nil {
			return nil, err
		}
	}
	return &s, nil
}

// mixed are the steps that make the drink of a kind of pack, for so many times its base.
func (m *maker) mixed(i int, times float64) ([]forward.Step, error) {
	r, k := m.recipe.packs[i], m.batch.packed[i]
	steps := []forward.Step{{Kind: forward.Dilute, Mass: kilograms(times * k.water)}}
	if m.recipe.base != nil && k.water > 0 {
		with, err := m.treatedWater(times * k.water / waterPerLitre)
		if err != nil {
			return nil, err
		}
		steps[0] = forward.Step{Kind: forward.Blend, With: with, Volume: litres(times * k.water / waterPerLitre)}
	}
	if f := r.taste; f != nil {
		steps = append(steps, flavoured(*f, times*k.flavour))
	}
	if k.sweet > 0 {
		own, err := r.sweet.material()
		if err != nil {
			return nil, err
		}
		steps = append(steps, forward.Step{Kind: forward.Sweeten, Own: own, Mass: kilograms(times * k.sweet)})
	}
	if k.acid > 0 {
		steps = append(steps, forward.Step{Kind: forward.Acidify, What: r.Acid.What, Mass: kilograms(times * k.acid)})
	}
	if k.primer > 0 {
		prime := weighable(r.primer)
		prime.Kind, prime.Mass = forward.Prime, kilograms(times*k.primer)
		steps = append(steps, prime)
	}
	return steps, nil
}

// inKettle is the water that the kettle starts with.
func (m *maker) inKettle() units.Volume {
	return litres((m.batch.water - m.batch.topUp) / waterPerLitre)
}

// tap is so much of the water as it comes.
func (m *maker) tap(v units.Volume) (forward.State, error) {
	if m.tapped != (forward.State{}) {
		return m.tapped.OfVolume(v)
	}
	tap, err := m.req.Water.Report.profile()
	if err != nil {
		return forward.State{}, err
	}
	known, err := tap.WithPH(m.req.Water.PH)
	if err != nil { // its CO2 is boiled off: any will do
		e, err := tap.InAir()
		if err != nil {
			return forward.State{}, err
		}
		known = e.Water()
	}
	m.tapped, err = forward.FromWater(known, v)
	return m.tapped, err
}

// carried is the batch carried forward step by step with the weights as the scale shows them:
// where each thing goes. No figure of it is searched for.
type carried struct {
	state    forward.State
	before   forward.State // the base of a pack, before anything joins it
	unknowns forward.Unknowns
	like     water.Series

	in, stay, out []Line

	pitched, grown   float64 // kg of dry yeast
	gas              float64 // kg of CO2 that the ferment made
	atoms            float64 // kg of ethanol that the balance of atoms gives
	givenOff, lost   float64 // kg of CO2 and air, of ethanol
	boiledOff, scale float64 // kg
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

// do carries the state through a step.
func (c *carried) do(st forward.Step) (forward.Left, error) {
	var room [1]forward.State
	states, left, err := forward.Walk(room[:0], []forward.Step{st}, c.state, &c.unknowns, &c.like)
	if err != nil {
		return left, err
	}
	c.state = states[0]
	return left, nil
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
	if n := len(lines); n > 0 && lines[n-1].What == what {
		lines[n-1].Mass = kilograms(kg(lines[n-1].Mass) + kilos)
		return lines
	}
	return append(lines, Line{what, kilograms(kilos)})
}

// A brewing is the batch carried to its base drink, and the states on the way that a plan prints.
type brewing struct {
	carried
	water, start, boiled forward.State // in the kettle: as it comes, with the sugar, after the boil
	filled, wash         forward.State // with the first portion of the sugar; with all that goes in before the yeast works
	fermented            forward.State
	deeds, joined        []deed  // all of them; from filled to wash
	left                 float64 // L, with the yeast, of what the packs do not take
	at                   []usedAt
}

// usedAt is the wash with all its sugar in when a part of it is used, once it is asked for.
type usedAt struct {
	used, sg float64
	strength units.StrengthByVolume
}

// brew carries the plan to its base drink.
func (m *maker) brew() error {
	c, deeds, err := m.atStart()
	if err != nil {
		return err
	}
	b := &brewing{carried: *c, water: c.state}
	b.in = note(b.in, "water, as it comes", kg(b.state.Mass()))
	filled := slices.IndexFunc(deeds, func(d deed) bool { return d.step.Kind == forward.Cool || d.step.Kind == forward.Heat }) + 1
	fermented := slices.IndexFunc(deeds, func(d deed) bool { return d.step.Kind == forward.Ferment })
	b.deeds, b.joined = deeds, deeds[filled:fermented]
	for i, d := range deeds {
		switch {
		case d.step.Kind == forward.Boil:
			b.start = b.state
		case i == filled:
			b.filled = b.state
		}
		if i == fermented {
			b.wash = b.state
			if err := b.measured(d.step, kg(m.batch.base.Ethanol())); err != nil {
				return err
			}
		}
		if d.line == leftWithYeast {
			if b.left, err = m.notRacked(b.state); err != nil {
				return err
			}
			d.step.Volume = litres(b.left)
			deeds[i] = d
		}
		if err := b.deed(d); err != nil {
			return err
		}
		switch {
		case d.step.Kind == forward.Boil:
			b.boiled = b.state
		case i == fermented:
			b.fermented = b.state
		}
	}
	m.brewed = b
	return nil
}

// leaves is what stays with the yeast, L: about the loss that the request has, once the batch is carried all that
// the packs do not take.
func (m *maker) leaves() float64 {
	if m.brewed == nil {
		return m.lost()
	}
	return m.brewed.left
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
		if d.line != "" {
			c.in = note(c.in, d.line, in)
		}
		c.pitched += yeastIn(&left.In)
	}
	return nil
}

// usedUp is the wash with so many portions of its sugar in, when a part of all the sugar that the yeast uses
// is used.
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
	_, err := c.do(forward.Step{Kind: forward.Ferment, Share: units.Fraction.Of(checked.Number(min(1, part))), Pressure: m.air.Pressure()})
	return c.state, err
}

// measuredAt is what a hydrometer shows then, and the strength.
func (m *maker) measuredAt(used float64, portions int) (at usedAt, err error) {
	whole := portions == m.portions()
	for _, at := range m.brewed.at {
		if whole && at.used == used {
			return at, nil
		}
	}
	s, err := m.usedUp(used, portions)
	if err != nil {
		return at, err
	}
	g, err := s.Gravity()
	if err != nil {
		return at, err
	}
	at = usedAt{used: used, sg: g.SG()}
	if at.strength, err = s.Strength(); err == nil && whole {
		m.brewed.at = append(m.brewed.at, at)
	}
	return at, err
}

// carry takes the batch from its base drink into its packs.
func (m *maker) carry() (*carried, error) {
	c := m.brewed.carried
	c.in, c.stay = slices.Clone(c.in), slices.Clone(c.stay)
	for _, d := range m.after {
		if err := c.deed(d); err != nil {
			return nil, err
		}
	}
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
	return &c, m.packaged(&c)
}

// measured sets what is lost of the ethanol so that so much is left, kg: that of a measured yield.
func (c *carried) measured(ferment forward.Step, ethanol float64) error {
	wash := c.state
	c.unknowns.Lost = 0
	if _, err := c.do(ferment); err != nil {
		return err
	}
	c.atoms = mass(forward.Ethanol, c.state.Of(forward.Ethanol))
	c.unknowns.Lost = max(0, 100*(1-ethanol/c.atoms))
	c.state = wash
	return nil
}

// packaged is each kind of pack as it is filled, without what a cylinder brings; the last of
// them takes what there is.
func (m *maker) packaged(c *carried) error {
	whole, err := c.state.Volume(at20)
	if err != nil {
		return err
	}
	left, added := whole.In(units.Litre), 0.0
	for i, k := range m.batch.packed {
		fork, part := *c, min(left, k.base)
		if i == len(m.batch.packed)-1 {
			part = left
		}
		left -= part
		if _, err := fork.do(forward.Step{Kind: forward.Transfer, Volume: litres(max(0, whole.In(units.Litre)-part))}); err != nil {
			return err
		}
		fork.before = fork.state
		steps, err := m.mixed(i, 1)
		if err != nil {
			return err
		}
		for _, st := range steps {
			more, err := fork.do(st)
			if err != nil {
				return err
			}
			added += kg(more.In.Mass())
		}
		if err := m.sourness(i, &fork, steps); err != nil {
			return err
		}
		c.out = append(c.out, Line{"in the " + m.plan.Packs[i].named(), fork.state.Mass()})
	}
	c.in = note(c.in, "flavouring and priming", added)
	return nil
}

// flavoured is the step that adds so many litres of a flavouring.
func flavoured(f Flavour, litresOfIt float64) forward.Step {
	st := forward.Step{Kind: forward.Flavour, Volume: litres(litresOfIt)}
	if f.Strength != nil {
		st.Strength = *f.Strength
	}
	if f.Sugar != nil {
		st.Sugar = *f.Sugar
	}
	return st
}

// weighable is a fermentable as a step knows it: by its name, or by its label.
func weighable(f material.Material) forward.Step {
	if m, err := material.Find(f.Name()); err == nil && m == f {
		return forward.Step{What: m.Name()}
	}
	return forward.Step{Own: f}
}
