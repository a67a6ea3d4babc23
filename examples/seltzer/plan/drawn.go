package plan

import (
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Drawn is a figure of the plan over many worlds: in each of them all that is not known
// (yield, acids, chalk, solubility, instruments) is as it may be.
type Drawn struct {
	What  string         `json:"what"`
	Unit  string         `json:"unit"`
	Usual float64        `json:"usual"` // with the usual figures of all unknowns
	Of    forward.Spread `json:"of"`
}

// Draw carries the plan of a request forward through so many worlds, and returns what its
// figures come to. With a thousand it takes some tenths of a second.
//
//   - Source: package batch; the weights are those of the plan.
//   - Range: 10 to 100,000 worlds. The error is a [*RequestError], as of [Make], or a
//     [*units.RangeError]. Of honey, juice and malt there are no figures that rest on their nitrogen.
func Draw(req Request, n int) ([]Drawn, error) {
	if !(n >= 10 && n <= 100_000) {
		return nil, &units.RangeError{Func: "plan.Draw", Quantity: "worlds", Value: float64(n), Min: 10, Max: 100_000, Source: "a limit of the function"}
	}
	m, err := newMaker(req)
	if err != nil {
		return nil, err
	}
	all, err := m.toDraw()
	if err != nil {
		return nil, err
	}
	for i := range all.walks[0].steps {
		if st := &all.walks[0].steps[i]; st.Kind == forward.Boil {
			st.Rests = new(forward.Rests)
		}
	}
	usual, known := forward.Usual(), m.known()
	if m.recipe.base == nil { // about the plan's own yield
		usual.Lost = m.brewed.unknowns.Lost
		about(unknown(known, ethanolLost), usual.Lost)
	}
	worlds := forward.Draw(n, known)
	if err := all.carry(&usual); err != nil {
		return nil, err
	}
	out := make([]Drawn, len(all.list))
	for i, f := range all.list {
		out[i] = Drawn{What: f.what, Unit: f.unit, Usual: f.now}
	}
	columns := make([][]float64, len(all.list))
	for w := range worlds {
		if err := all.carry(&worlds[w]); err != nil {
			return nil, err
		}
		for i, f := range all.list {
			columns[i] = append(columns[i], f.now)
		}
	}
	for i := range out {
		out[i].Of = forward.Over(worlds, columns[i])
	}
	return out, nil
}

// about moves what is known of an unknown to another usual figure; what cannot be below zero stays above it.
func about(k *forward.Unknown, usual float64) {
	off := usual - k.Usual
	if k.Low >= 0 {
		k.Low = max(0, k.Low+off)
	} else {
		k.Low += off
	}
	k.Usual, k.High = usual, k.High+off
}

// A figure is read off the states of a walk.
type figure struct {
	what, unit string
	read       func(u *forward.Unknowns) (float64, error)
	now        float64
}

// walks are those of a plan, and the figures that are read from them.
type walks struct {
	list  []figure
	walks []*walk // the base first, then a fork for each kind of pack
}

// A walk is a list of steps with room for its states.
type walk struct {
	steps  []forward.Step
	states []forward.State
	from   *walk // whose end is its start
	like   water.Series
}

// end is the last state.
func (w *walk) end() *forward.State { return &w.states[len(w.states)-1] }

// carry takes one world through all walks, and reads the figures.
func (a *walks) carry(u *forward.Unknowns) (err error) {
	for _, w := range a.walks {
		var start forward.State
		if w.from != nil {
			start = *w.from.end()
		}
		if w.states, _, err = forward.Walk(w.states[:0], w.steps, start, u, &w.like); err != nil {
			return err
		}
	}
	for i := range a.list {
		if a.list[i].now, err = a.list[i].read(u); err != nil {
			return err
		}
	}
	return nil
}

// toDraw lays out the walks of the plan and what is read off them.
func (m *maker) toDraw() (*walks, error) {
	if m.recipe.base != nil {
		return m.baseToDraw()
	}
	base, err := m.baseWalk()
	if err != nil {
		return nil, err
	}
	a := new(walks)
	a.walks = append(a.walks, base)
	after := func(k forward.Kind) func() *forward.State { // the last of its kind
		for i := len(base.steps) - 1; i >= 0; i-- {
			if base.steps[i].Kind == k {
				return func() *forward.State { return &base.states[i] }
			}
		}
		return func() *forward.State { return &base.states[0] }
	}
	boiled, dry := after(forward.Boil), after(forward.Ferment)
	wash := func() *forward.State { // before the ferment
		for i, st := range base.steps {
			if st.Kind == forward.Ferment {
				return &base.states[i-1]
			}
		}
		return &base.states[0]
	}
	read := func(what, unit string, f func(u *forward.Unknowns) (float64, error)) {
		a.list = append(a.list, figure{what: what, unit: unit, read: f})
	}
	read("original gravity by hydrometer", "", func(u *forward.Unknowns) (float64, error) { return wash().Shown(u) })
	read(m.floorName()+" by hydrometer", "", func(u *forward.Unknowns) (float64, error) { return dry().Shown(u) })
	if !m.brings.known { // the acids of a juice leave none
		read("alkalinity after the boil", "mg/L as CaCO3", func(*forward.Unknowns) (float64, error) {
			c, err := boiled().Alkalinity()
			return c.In(units.MilligramPerLitreCaCO3), err
		})
	}
	if m.unforeseen() == "" {
		var meter forward.Meter
		read("pH at the end", "", func(*forward.Unknowns) (float64, error) { return meter.PH(dry()) })
		read("yeast grown, dry", "g", func(*forward.Unknowns) (float64, error) {
			return dry().Yeast().In(units.Gram) - wash().Yeast().In(units.Gram), nil
		})
	}
	for i := range m.recipe.packs {
		if err := m.packFigures(a, base, i, read); err != nil {
			return nil, err
		}
	}
	return a, nil
}

// baseWalk is from the water to the base drink off its yeast.
func (m *maker) baseWalk() (*walk, error) {
	tap, err := m.tap(m.inKettle().Plus(m.inKettle())) // more than is taken, by any level
	if err != nil {
		return nil, err
	}
	base := &walk{steps: make([]forward.Step, 0, 1+len(m.brewed.deeds)+len(m.plan.After.done()))}
	base.steps = append(base.steps, forward.Step{Kind: forward.Blend, With: &tap, Volume: m.inKettle()})
	for _, deeds := range [...][]deed{m.brewed.deeds, m.plan.After.done()} {
		for i := range deeds {
			base.steps = append(base.steps, deeds[i].step)
		}
	}
	return base, nil
}

// baseToDraw lays out the walks of a base that is let down.
func (m *maker) baseToDraw() (*walks, error) {
	whole := m.batch.base.VolumeAt20()
	state, err := m.baseState(2 * whole.In(units.Litre)) // more than is taken, by any level
	if err != nil {
		return nil, err
	}
	a, base := new(walks), &walk{steps: []forward.Step{{Kind: forward.Blend, With: &state, Volume: whole}}}
	a.walks = append(a.walks, base)
	for i := range m.recipe.packs {
		if err := m.packFigures(a, base, i, func(what, unit string, f func(u *forward.Unknowns) (float64, error)) {
			a.list = append(a.list, figure{what: what, unit: unit, read: f})
		}); err != nil {
			return nil, err
		}
	}
	return a, nil
}

// packFigures adds the fork of one kind of pack, mixed for the whole base, and its figures.
func (m *maker) packFigures(a *walks, base *walk, i int, read func(what, unit string, f func(*forward.Unknowns) (float64, error))) error {
	r := m.recipe.packs[i]
	whole := 0.0
	for _, k := range m.batch.packed {
		whole += k.base
	}
	steps, err := m.mixed(i, m.batch.packed[i], whole/m.batch.packed[i].base)
	if err != nil {
		return err
	}
	f := m.poured.packs[i]
	p, err := m.passage(i, f.mixed, f.state.Temperature(), f.set)
	if err != nil {
		return err
	}
	fork := &walk{from: base, steps: slices.Concat(steps, p.ready, p.served)}
	a.walks = append(a.walks, fork)
	name := r.named()
	read("strength of the "+name, "% vol", func(*forward.Unknowns) (float64, error) {
		c, err := fork.end().Strength()
		return c.In(units.PercentVolume), err
	})
	when := ""
	if r.Kind != keg {
		when = " when served"
	}
	var meters [2]forward.Meter // as served, as stored
	read("content of the "+name+when, "g/L", func(*forward.Unknowns) (float64, error) {
		c, err := meters[0].Content(fork.end())
		return c.In(units.GramCO2PerLitre), err
	})
	if r.Kind == keg {
		return nil
	}
	stored := &walk{from: fork, steps: p.stored}
	a.walks = append(a.walks, stored)
	read("pressure of the "+name+", stored", "bar gauge", func(u *forward.Unknowns) (float64, error) {
		p, err := meters[1].Pack(stored.end(), r.Rating)
		if p.AtLeast { // 20 bar absolute
			return p.Gauge.In(units.BarGauge), err
		}
		// A drink that holds less gas presses harder; that little of it is above the drink is left out.
		more := p.CO2.In(units.Bar) * (1/u.Solubility - 1)
		return p.Gauge.In(units.BarGauge) + more, err
	})
	return nil
}
