package plan

import (
	"errors"
	"fmt"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// An onward is the batch as it was read, and what it takes to carry it on.
type onward struct {
	m     *maker
	now   carried
	place units.AbsolutePressure
	rest  units.Share // of the sugar that is there and to come, which the yeast still uses

	coming int            // portions of the sugar that are still to come
	toCome []forward.Step // nutrient of the plan that is still to come
}

// goOn carries the batch on from its readings, and tries on it what can be done.
func (m *maker) goOn(say *notes) (*StatePlan, error) {
	if m.plan.State == nil {
		return nil, nil
	}
	s := *m.plan.State
	if s.State == Doubtful {
		m.alarm(nil, &s, say)
		return &s, nil
	}
	o, err := m.asRead(&s)
	if err != nil {
		o = nil
	} else if s.AsItStands, err = o.end(o.now.state); outside(err) != nil {
		return &s, err
	}
	if full, is := errors.AsType[*tooFull](err); is {
		say.warn("The sugar that is still to come does not fit: " + full.text + ". Leave a part of it out, or rack a part of the wash into another fermenter.")
	}
	if final := s.Final.In(units.PercentVolume); final > mostStrength+0.5 {
		say.warn(fmt.Sprintf("As it stands it would come to %.1f %% vol: few yeasts end above %.0f %% vol, and the sugar that is left goes on in a "+
			"closed pack. Let it down.", final, mostStrength))
	}
	m.alarm(o, &s, say)
	if s.State == Stalled || s.State == Slow || s.overdue {
		m.diagnose(&s, m.req.Readings[len(m.req.Readings)-1])
	}
	if o == nil {
		return &s, outside(err)
	}
	if s.State == Finished {
		o.hides(&s, say)
	}
	err = o.advise(&s, say)
	return &s, err
}

// outside lets pass what no formula covers: the plan then says nothing of it.
func outside(err error) error {
	if _, is := errors.AsType[*units.RangeError](err); is {
		return nil
	}
	if _, is := errors.AsType[*tooFull](err); is { // each advice tells
		return nil
	}
	return err
}

// asRead is the batch as its readings have it: the plan's wash, its gravity and its volume moved
// to what was read, fermented as far, with the pH that was read.
func (m *maker) asRead(s *StatePlan) (*onward, error) {
	o := &onward{m: m, now: carried{unknowns: forward.Usual()}, place: m.air.Pressure()}
	used, portions := 0.0, 1
	if n := len(s.Points); n > 0 {
		used, portions = s.Points[n-1].Used.In(units.Fraction), s.Points[n-1].portions
	}
	whole := m.attenuation().In(units.Fraction)
	o.rest = units.Percent.Of(100)
	if part := used * whole; part < 1 {
		o.rest = units.Fraction.Of(checked.Number((whole - part) / (1 - part)))
	}
	steps, err := m.untilNow(used)
	if err != nil {
		return nil, err
	}
	c := &o.now
	if c.state, err = m.tap(m.inKettle()); err != nil {
		return nil, err
	}
	o.coming = m.portions() - portions
	ferment := forward.Step{Kind: forward.Ferment, Share: m.attenuation(), Pressure: o.place}
	for _, st := range steps {
		if _, err := c.do(st); err != nil {
			return nil, err
		}
	}
	filled := c.state
	if err := o.portion(m.portions() - 1); err != nil {
		return nil, err
	}
	if err := c.measured(ferment, kg(m.batch.base.Ethanol())); err != nil {
		return nil, err
	}
	c.state = filled
	// The gravity that was read: water or sugar that is there, though the plan has it not.
	is, want := kg(c.state.Fermentable())/kg(c.state.Mass()), kg(s.first.Fermentable())/kg(s.first.Mass())
	switch mass := kg(c.state.Mass()); {
	case want < is*(1-1e-9):
		_, err = c.do(forward.Step{Kind: forward.Dilute, Mass: kilograms(mass * (is/want - 1))})
	case want > is*(1+1e-9):
		var half gravity.Solution
		if half, err = m.washOf(0.5, 2); err == nil { // a kilogram of it
			more := weighable(m.fermentable)
			more.Kind, more.Mass = forward.Dissolve, kilograms(mass*(want-is)/(kg(half.Fermentable())-want))
			_, err = c.do(more)
		}
	}
	if err != nil {
		return nil, err
	}
	if c.state, err = c.state.OfVolume(s.first.VolumeAt20()); err != nil {
		return nil, err
	}
	if err := o.portion(portions - 1); err != nil {
		return nil, err
	}
	if used > 0 {
		all, err := o.ofAll(s.first)
		if err != nil {
			return nil, err
		}
		if err := o.fermented(s, ferment, used, whole*all); err != nil {
			return nil, err
		}
	}
	if s.Wash.In(units.Litre) > 0 && used > 0 && m.levelHolds(portions) { // a level that was read since
		is, err := c.state.Volume(at20)
		if err != nil {
			return nil, err
		}
		cold, err := o.cold(s.Wash)
		if err != nil {
			return nil, err
		}
		v := is.In(units.Litre)
		cold = litres(weighed(v, m.doubts[ofVolume].part()*v, cold.In(units.Litre), m.off("level")/100*v))
		if c.state, err = c.state.OfVolume(cold); err != nil {
			return nil, err
		}
	}
	part, err := o.part(s)
	if err != nil {
		return nil, err
	}
	for i, st := range m.plan.Nutrient.Stages {
		if i == 0 || st.Used.In(units.Fraction) <= used {
			continue
		}
		if st, err = m.times(st, part); err != nil {
			return nil, err
		}
		o.toCome = append(o.toCome, m.addition(st)...)
	}
	return o, o.sour(len(m.req.Readings)-1, used)
}

// fermented carries the wash on to the last reading, by the pH of the one before that was the last to have one.
func (o *onward) fermented(s *StatePlan, ferment forward.Step, used, whole float64) error {
	from, rs := 0.0, o.m.req.Readings
	if i := o.m.lastPH(); i >= 0 && i < len(rs)-1 && o.m.portions() == 1 {
		if p := i - (len(rs) - len(s.Points)); p >= 0 { // the first may be of the wash
			from = min(s.Points[p].Used.In(units.Fraction), used)
		}
		if ferment.Share = units.Fraction.Of(checked.Number(min(1, from*whole))); from > 0 {
			if _, err := o.now.do(ferment); err != nil {
				return err
			}
		}
		if err := o.sour(i, from); err != nil {
			return err
		}
	}
	if from*whole >= 1 {
		return nil
	}
	ferment.Share = units.Fraction.Of(checked.Number(min(1, (used-from)*whole/(1-from*whole))))
	_, err := o.now.do(ferment)
	return err
}

// lastPH is the last reading that has a pH, -1 where none has.
func (m *maker) lastPH() int {
	for i := len(m.req.Readings) - 1; i >= 0; i-- {
		if m.req.Readings[i].PH != nil {
			return i
		}
	}
	return -1
}

// levelHolds tells whether no sugar has gone in since a level was read last.
func (m *maker) levelHolds(portions int) bool {
	in := 1
	for _, r := range m.req.Readings {
		if r.Volume != nil {
			in = m.portionsAt(r)
		}
	}
	return m.portions() == 1 || in == portions
}

// portion puts in so many of the later portions of the sugar.
func (o *onward) portion(n int) error {
	if n == 0 {
		return nil
	}
	st := weighable(o.m.fermentable)
	st.Kind, st.Mass = forward.Dissolve, o.m.later(n)
	_, err := o.now.do(st)
	return err
}

// ofAll is all the sugar over what is in the batch now, none of it used.
func (o *onward) ofAll(first gravity.Solution) (float64, error) {
	has := kg(o.now.state.Fermentable())
	if o.coming == 0 || has == 0 {
		return 1, nil
	}
	all, err := o.m.joined(first, o.m.portions())
	return kg(all.Fermentable()) / has, err
}

// cold is a volume at the temperature of the ferment, at 20 °C.
func (o *onward) cold(v units.Volume) (units.Volume, error) {
	warm, err := o.now.state.Volume(o.m.req.Fermenter.Temperature)
	if err != nil {
		return v, err
	}
	at, err := o.now.state.Volume(at20)
	return litres(v.In(units.Litre) * at.In(units.Litre) / warm.In(units.Litre)), err
}

// sour moves the pH to that of a reading, if it has one, when so much of the sugar is used. Before the ferment it is only moved
// where no gas that the wash can hold explains it.
func (o *onward) sour(reading int, used float64) error {
	read := o.m.req.Readings[reading].PH
	if read == nil || o.m.unforeseen() != "" {
		return nil
	}
	gas := o.place
	planned, err := new(forward.Meter).PHUnder(&o.now.state, gas)
	if err == nil && 100*used < begunAt && *read > planned { // it holds something between the gas of the air and of a ferment
		gas = water.AirCO2(o.m.air)
		if planned, err = new(forward.Meter).PHUnder(&o.now.state, gas); err == nil && *read <= planned {
			return nil // as planned: it tells the gas
		}
	}
	if err != nil {
		return outside(err)
	}
	with, err := o.now.state.WithPH(weighed(planned, o.m.pHSpread(used), *read, o.m.off("pH meter")), gas)
	if err != nil {
		return outside(err) // no formula covers it: as planned
	}
	o.now.state = with
	return nil
}

// untilNow are the steps of the plan before the ferment, with the nutrient that is due when so
// much of the sugar is used.
func (m *maker) untilNow(used float64) ([]forward.Step, error) {
	deeds, err := m.deeds()
	if err != nil {
		return nil, err
	}
	var out []forward.Step
	for _, d := range deeds {
		if d.step.Kind == forward.Ferment {
			break
		}
		if d.late || d.staged {
			continue
		}
		out = append(out, d.step)
	}
	for i, st := range m.plan.Nutrient.Stages {
		if i == 0 || st.Used.In(units.Fraction) <= used {
			out = append(out, m.addition(st)...)
		}
	}
	return out, nil
}

// feeding is the step of a dose, of one's own nutrient by its label.
func (m *maker) feeding(d Weight) forward.Step {
	st := forward.Step{Kind: forward.Feed, What: d.What, Mass: d.Mass.Quantity()}
	for _, of := range m.plan.Nutrient.fed {
		if of.Material.Name() == d.What && m.req.Nutrient.owns(of.Material) {
			st.What, st.Own = "", of.Material
		}
	}
	return st
}

// addition are the steps of one stage.
func (m *maker) addition(st NutrientStage) (out []forward.Step) {
	for _, d := range st.Doses {
		if !d.Mass.Decimal().IsZero() {
			out = append(out, m.feeding(d))
		}
	}
	return out
}

// end ferments a liquid out, and reads it.
func (o *onward) end(from forward.State) (*Outcome, error) {
	all := *o
	c := &all.now
	c.state = from
	if err := all.portion(o.coming); err != nil {
		return nil, err
	}
	if err := all.fits(c.state); o.coming > 0 && err != nil {
		return nil, err
	}
	if _, err := c.do(forward.Step{Kind: forward.Ferment, Share: o.rest, Pressure: o.place}); err != nil {
		return nil, err
	}
	return o.read(c.state)
}

// fed is end with the nutrient of the plan that is still to come.
func (o *onward) fed(from forward.State) (*Outcome, error) {
	c := o.now
	c.state = from
	if _, err := c.do(o.toCome...); err != nil {
		return nil, err
	}
	return o.end(c.state)
}

// read measures a liquid.
func (o *onward) read(s forward.State) (*Outcome, error) {
	var out Outcome
	g, err := s.Gravity()
	if err != nil {
		return nil, err
	}
	out.Gravity = g.SG()
	if out.Strength, err = s.Strength(); err != nil {
		return nil, err
	}
	if out.Volume, err = s.Volume(o.m.req.Fermenter.Temperature); err != nil {
		return nil, err
	}
	if o.m.unforeseen() == "" {
		if out.PH, err = s.PH(); outside(err) != nil {
			return nil, err
		}
		if err != nil { // beyond what the formulas cover
			out.PH = 0
		}
	}
	return &out, nil
}
