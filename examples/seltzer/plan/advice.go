package plan

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"time"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Outcome is a liquid at the end of what was tried on it.
type Outcome struct {
	Gravity  float64                `json:"gravity"`
	Strength units.StrengthByVolume `json:"strength"`
	PH       float64                `json:"pH,omitempty"` // 0 where it is not foreseen
	Volume   units.Volume           `json:"volume"`       // at the temperature of the ferment
}

// Advice is something that can be done next. It was tried on the batch as it was read, to the end
// of the ferment, within the vessel.
type Advice struct {
	Do     string             `json:"do"`                // "buffer", "warm it"
	Cause  string             `json:"against,omitempty"` // "nitrogen", "pH", "temperature", "strength" or "yeast"
	Why    string             `json:"why"`               // what the numbers support
	Weigh  *Weight            `json:"weigh,omitempty"`   // what goes in
	With   []Weight           `json:"with,omitempty"`    // what goes in beside it
	To     *units.Temperature `json:"to,omitempty"`      // to warm it to
	End    *Outcome           `json:"leads_to"`          // when it is done
	Packs  []PackOutcome      `json:"packs,omitempty"`   // what comes of the packs
	Dry    Range              `json:"dry"`               // days since the pitch; none where they are not foreseen
	Cannot string             `json:"cannot,omitempty"`  // why not, by the vessel or the formulas
}

// try does something to the batch as it is, within the vessel, and ferments it out.
func (o *onward) try(a Advice, steps ...forward.Step) Advice {
	c := o.now
	for _, st := range steps {
		if _, err := c.do(st); err != nil {
			a.Cannot = told(err)
			return a
		}
		if err := o.fits(c.state); err != nil {
			a.Cannot = err.Error()
			return a
		}
	}
	end, err := o.end(c.state)
	if err != nil {
		a.Cannot = told(err)
		return a
	}
	a.End = end
	if end.PH > 0 && end.PH < tooSour {
		a.Why += fmt.Sprintf("; at a pH below %.2f yeast may stop before that", tooSour)
	}
	if was, err := o.full(o.now.state); err == nil && a.Weigh != nil {
		if part, err := o.full(c.state); err == nil && part > foamy && part > was+0.005 {
			a.Why += "; the fermenter is then more than nine tenths full: fit a blow-off tube"
		}
	}
	return a
}

const tooSour = 2.75 // of a ferment: growth of wine yeast slows sharply between 3.00 and 2.75 (Liu et al.)

// foamy is the part of a fermenter above which foam can reach the airlock (common practice, no source).
const foamy = 0.9

// full is how much of the fermenters a liquid fills.
func (o *onward) full(s forward.State) (float64, error) {
	v, err := s.Volume(o.m.req.Fermenter.Temperature)
	return v.In(units.Litre) / o.m.holds(), err
}

// fits refuses what the fermenters do not hold.
func (o *onward) fits(s forward.State) error {
	v, err := s.Volume(o.m.req.Fermenter.Temperature)
	if err != nil {
		return err
	}
	if full := litres(o.m.holds()); v.Compare(full) > 0 {
		of := "a fermenter"
		if len(o.m.req.Fermenter.Also) > 0 {
			of = "fermenters"
		}
		return &tooFull{fmt.Sprintf("it would fill %.1f L of %s of %.1f L", v.In(units.Litre), of, full.In(units.Litre))}
	}
	return nil
}

// tooFull is a fermenter that would run over.
type tooFull struct{ text string }

func (e *tooFull) Error() string { return e.text }

// partly is try for as much of one thing as the vessel takes with room for foam, where it does not take all of it.
func (o *onward) partly(all Advice, st forward.Step) (Advice, bool) {
	if all.Cannot == "" {
		return all, false
	}
	least, most := 0.0, kg(st.Mass)
	for range 40 {
		c, middle := o.now, (least+most)/2
		st.Mass = kilograms(middle)
		_, err := c.do(st)
		if part, no := o.full(c.state); err == nil && no == nil && part <= foamy {
			least = middle
		} else {
			most = middle
		}
	}
	w := Weight{What: all.Weigh.What, For: "fermenter, as much as fits", Asked: kilograms(least)}
	var err error
	if w.Mass, err = w.Asked.Round(o.m.req.Scales.Sugar, units.Down); err != nil || w.Mass.Decimal().IsZero() {
		return all, false
	}
	st.Mass = w.Mass.Quantity()
	return o.try(Advice{Do: all.Do, Why: "as much as leaves room for foam", Weigh: &w}, st), true
}

// advise tries what the readings call for: each on its own.
func (o *onward) advise(s *StatePlan, say *notes) error {
	m := o.m
	add := func(a Advice) { s.Advice = append(s.Advice, a) }
	both := func(a Advice, st forward.Step) {
		all := o.try(a, st)
		add(all)
		if part, some := o.partly(all, st); some {
			add(part)
		}
	}
	if c := s.Correction; c != nil {
		why := "the pH is below its floor"
		if i := m.lastPH(); m.req.Buffer != nil && *m.req.Readings[i].PH >= m.req.Buffer.Floor || m.req.Buffer == nil && *m.req.Readings[i].PH >= sourBelow {
			why = "the pH is going to fall below its floor"
		}
		if len(o.toCome) > 0 {
			why += "; tried with the nutrient that is still to come"
		}
		add(o.try(Advice{Do: "buffer", Cause: "pH", Why: why, Weigh: c},
			append([]forward.Step{{Kind: forward.Feed, What: c.What, Mass: c.Mass.Quantity()}}, o.toCome...)...))
	}
	if len(s.Points) == 0 {
		switch {
		case s.AddSugar.In(units.Gram) >= 5:
			w := m.grossly(m.fermentable.Name(), s.AddSugar)
			st := weighable(m.fermentable)
			st.Kind, st.Mass = forward.Dissolve, w.Mass.Quantity()
			both(Advice{Do: "bring it up with", Why: "the wash is weaker than planned", Weigh: w}, st)
		case s.AddWater.In(units.Gram) >= 50:
			w := m.grossly("water", s.AddWater)
			both(Advice{Do: "let it down with", Why: "the wash is stronger than planned", Weigh: w}, forward.Step{Kind: forward.Dilute, Mass: w.Mass.Quantity()})
		}
		return nil
	}
	if last := s.Points[len(s.Points)-1]; o.coming > 0 && last.Gravity < o.m.plan.Gravity.Portions[last.portions-1].Gravity+nearFloor {
		w := m.plan.Gravity.Portions[last.portions-1].Sugar
		st := weighable(m.fermentable)
		st.Kind, st.Mass = forward.Dissolve, w.Mass.Quantity()
		next := *o
		next.coming--
		add(next.try(Advice{Do: "the next portion of the sugar", Why: "most of the sugar that is in is used", Weigh: &w}, st))
	}
	if s.State == Finished {
		a, err := o.pack(s)
		if err != nil {
			return outside(err)
		}
		add(a)
		if a.Cannot == "" {
			return nil
		}
		say.caution("Do not pack yet: " + a.Cannot + ".")
		add(o.try(Advice{Do: "wait", Why: "the sugar that is left may still go"}))
		return nil
	}
	return o.onTheWay(s, add)
}

// A trial is what is tried on a ferment on its way.
type trial struct {
	*onward
	s        *StatePlan
	last     StatePoint
	read     Reading
	late     bool
	part     float64 // of the planned wash, that there is
	suspects []suspect
}

// onTheWay are food, warmth, yeast and time, the first three with the buffer in where it wants one.
func (o *onward) onTheWay(s *StatePlan, add func(Advice)) error {
	rs := o.m.req.Readings
	t := trial{onward: o, s: s, last: s.Points[len(s.Points)-1], read: rs[len(rs)-1], late: s.State == Slow || s.State == Stalled || s.overdue}
	t.suspects = o.m.suspects(s, t.read)
	var err error
	if t.part, err = o.part(s); err != nil {
		return outside(err)
	}
	for _, try := range []func(func(Advice)) error{t.food, t.warmth, t.yeast} {
		if err := try(add); err != nil {
			return err
		}
	}
	ranked(s.Advice, t.suspects)
	return t.time(add)
}

// buffered is try with the buffer in.
func (t *trial) buffered(a Advice, steps ...forward.Step) Advice {
	if c := t.s.Correction; c != nil {
		a.Why += "; tried with the buffer in"
		steps = append([]forward.Step{{Kind: forward.Feed, What: c.What, Mass: c.Mass.Quantity()}}, steps...)
	}
	return t.try(a, steps...)
}

// food is the next addition of nutrient, or what the plan lacked of it.
func (t *trial) food(add func(Advice)) error {
	m := t.m
	n, err := t.now.state.YeastNitrogenLeft()
	if err != nil {
		return outside(err)
	}
	a := Advice{Do: "nutrient", Cause: "nitrogen", Why: fmt.Sprintf("%.0f mg/L of nitrogen are left by the plan", n.In(units.MilligramPerLitre))}
	for _, st := range m.plan.Nutrient.Stages {
		if st.Used.Compare(t.last.Used) <= 0 || len(m.addition(st)) == 0 {
			continue
		}
		starved := n.In(units.MilligramPerLitre) < hungry
		if !(starved && t.s.State == Fermenting) && !(t.late && (starved || !t.s.overdue)) {
			return nil
		}
		if st, err = m.times(st, t.part); err == nil {
			add(t.buffered(weighing(a, st), m.addition(st)...))
		}
		return err
	}
	if !t.late || !has(t.suspects, "nitrogen") {
		return nil
	}
	st, err := m.missing(t.part)
	if err != nil {
		return outside(err)
	}
	a.Why = "the plan brought too little"
	if t.last.Used.In(units.Percent) > lateToFeed {
		a.Why += "; so late yeast takes up little of it: it helps fresh yeast more"
	}
	if a = weighing(a, st); a.Weigh != nil {
		add(t.buffered(a, m.addition(st)...))
	}
	return nil
}

const hungry = 20 // mg/L of nitrogen: less is next to none (common practice, no source)

// warmth is to warm what is late, and to cool what is too hot.
func (t *trial) warmth(add func(Advice)) error {
	m := t.m
	if most, _ := m.hottest(); t.read.Vessel != nil && t.read.Vessel.Compare(most) > 0 {
		to := m.cooled()
		add(t.buffered(Advice{Do: "cool it", Cause: "temperature", To: &to, Why: "the vessel was read at " + t.read.Vessel.Text(units.Celsius, 1)}))
	}
	is, of := t.read.Temperature, "the sample was read at "
	if t.read.Vessel != nil {
		is, of = *t.read.Vessel, "the vessel was read at "
	}
	warmer, ok := m.warmer(is)
	if !t.late || !ok {
		return nil
	}
	a := t.buffered(Advice{Do: "warm it", Cause: "temperature", To: &warmer, Why: of + is.Text(units.Celsius, 1)})
	now := time.Duration(t.last.After)
	holds := m.warmths()
	for len(holds) > 1 && holds[len(holds)-1].From >= now {
		holds = holds[:len(holds)-1]
	}
	holds = append(holds[:len(holds):len(holds)], kinetics.Hold{From: max(now, time.Hour), Temperature: warmer})
	if !t.s.overdue { // no pace tells how long what has not begun takes
		a.Dry = t.dry(kinetics.NewPace(t.begins(), holds...))
	}
	add(a)
	return nil
}

// yeast is as much as was pitched, anew.
func (t *trial) yeast(add func(Advice)) error {
	if !t.late {
		return nil
	}
	a, steps, err := t.m.repitch(t.part)
	if err != nil {
		return err
	}
	if has(t.suspects, "strength") {
		a.Cause, a.Why = "strength", a.Why+", of a strain that bears more"
	}
	a = t.buffered(a, steps...)
	a.Dry = t.again(t.last)
	add(a)
	return nil
}

// time is to wait: what stands still stays as it is.
func (t *trial) time(add func(Advice)) error {
	a := Advice{Do: "wait", Why: "as it stands"}
	switch {
	case t.s.overdue:
		a.Why = "nothing has begun when nineteen in twenty have, and mostly nothing will"
	case t.s.State == Stalled:
		a.Why = "it stands still, and mostly stays so"
	default:
		a = t.try(a)
		f, err := t.m.byReadings()
		if err == nil {
			a.Dry = t.dry(f.of.Pace(), nil)
		}
		add(a)
		return outside(err)
	}
	var err error
	if a.End, err = t.onward.read(t.now.state); err == nil {
		add(a)
	}
	return outside(err)
}

// dry is when a pace gets there by the readings; none where they say otherwise.
func (t *trial) dry(p *kinetics.Pace, err error) Range {
	f, no := t.m.byReadings()
	if err != nil || no != nil || time.Duration(t.last.After) >= mostDays*day {
		return Range{}
	}
	when, err := f.of.On(p).Fit().When(units.Percent.Of(dry))
	if err != nil {
		return Range{}
	}
	r := ranged(when, 0)
	if r.Median <= t.last.After {
		return Range{}
	}
	for _, at := range []*Duration{&r.Low90, &r.Low50, &r.Median, &r.High50, &r.High90} {
		*at = max(*at, t.last.After)
	}
	return r
}

// has tells whether a cause is among suspects.
func has(all []suspect, cause string) bool {
	return slices.ContainsFunc(all, func(c suspect) bool { return c.cause == cause })
}

// weighing is an advice with the doses of an addition.
func weighing(a Advice, st NutrientStage) Advice {
	for _, w := range st.Doses {
		switch {
		case w.Mass.Decimal().IsZero():
		case a.Weigh == nil:
			a.Weigh = &w
		default:
			a.With = append(a.With, w)
		}
	}
	return a
}

const lateToFeed = 50 // % of the sugar used (common practice, no source)

// missing is what the nutrient of the plan left of the need, for so much of the planned wash: by the sources of the request, then
// by those that every shop has, within the limits of law.
func (m *maker) missing(part float64) (st NutrientStage, err error) {
	var whose law.Jurisdiction
	if err := whose.UnmarshalText([]byte(m.req.Nutrient.Law)); err != nil {
		return st, named("nutrient.law", m.req.Nutrient.Law, err)
	}
	offers, _, err := m.sources()
	if err != nil {
		return st, err
	}
	for _, name := range []string{"diammonium phosphate", "autolysed yeast"} {
		if slices.ContainsFunc(offers, func(o nutrient.Offer) bool { return o.Material.Name() == name }) {
			continue
		}
		of, err := material.FindAmong(name, nutrient.Sources()...)
		if err != nil {
			return st, err
		}
		offers = append(offers, nutrient.Offer{Material: of})
	}
	n := m.plan.Nutrient
	feed, err := nutrient.FeedInOrder(n.lacking(), n.Volume, whose, offers...)
	if err != nil {
		return st, err
	}
	for _, d := range feed.Doses {
		more := d.Mass
		for _, had := range n.fed {
			if had.Material.Name() == d.Material.Name() {
				more = more.Minus(had.Mass)
			}
		}
		w := Weight{What: d.Material.Name(), For: "fermenter", Asked: kilograms(part * max(0, kg(more)))}
		if w.Mass, err = w.Asked.Round(m.req.Scales.Small, units.Nearest); err != nil {
			return st, err
		}
		st.Doses = append(st.Doses, w)
	}
	return st, nil
}

// begins is what sets the pace, in a liquid as sour as it was read.
func (o *onward) begins() kinetics.Start {
	start := o.m.begins()
	if i := o.m.lastPH(); i >= 0 {
		start.PH = max(*o.m.req.Readings[i].PH, 2.5)
	}
	return start
}

// part is how much of the planned wash there is.
func (o *onward) part(s *StatePlan) (float64, error) {
	planned, err := o.m.brewed.wash.Volume(o.m.req.Fermenter.Temperature)
	if err != nil || s.Wash.IsZero() {
		return 1, err
	}
	return s.Wash.In(units.Litre) / planned.In(units.Litre), nil
}

// times is an addition for so much of the planned wash.
func (m *maker) times(st NutrientStage, part float64) (NutrientStage, error) {
	if part == 1 {
		return st, nil
	}
	st.Doses = slices.Clone(st.Doses)
	for i := range st.Doses {
		w := &st.Doses[i]
		w.Asked = kilograms(part * kg(w.Asked))
		var err error
		if w.Mass, err = w.Asked.Round(m.req.Scales.Small, units.Nearest); err != nil {
			return st, err
		}
	}
	return st, nil
}

// repitch is as much yeast as was pitched into what there is.
func (m *maker) repitch(part float64) (a Advice, steps []forward.Step, err error) {
	a = Advice{Do: "fresh yeast, awake", Cause: "yeast", Why: "as much as was pitched"}
	y := m.plan.Yeast
	if y.Form != "dry" {
		a.Why = fmt.Sprintf("as much as was pitched, %.1f packs", part*y.Packs)
		return a, nil, nil
	}
	w := Weight{What: "dry yeast", For: "fermenter", Mass: y.Mass, Asked: y.Mass.Quantity()}
	if part != 1 {
		w.Asked = kilograms(part * kg(w.Asked))
		if w.Mass, err = w.Asked.Round(m.req.Scales.Small, units.Up); err != nil {
			return a, nil, err
		}
	}
	a.Weigh = &w
	return a, []forward.Step{{Kind: forward.Pitch, Mass: w.Mass.Quantity()}}, nil
}

// ranked puts what helps against the causes that the numbers speak of before what might help.
func ranked(all []Advice, by []suspect) {
	place := func(a Advice) int {
		for i, c := range by {
			if c.cause == a.Cause {
				return i
			}
		}
		return len(by)
	}
	sort.SliceStable(all, func(i, k int) bool { return place(all[i]) < place(all[k]) })
}

// warmer is how warm a slow ferment can be made: to the plan, or 3 K above it where it is there
// already, not above the warmest of the plan.
func (m *maker) warmer(is units.Temperature) (units.Temperature, bool) {
	to := m.req.Fermenter.Temperature
	if to.Minus(is).In(units.KelvinDifference) < 1 {
		to = units.Celsius.Of(checked.Number(math.Min(is.In(units.Celsius)+3, m.req.Fermenter.Warmest.In(units.Celsius))))
		if most, _ := m.hottest(); to.Compare(most) > 0 {
			to = most
		}
	}
	return to, to.Minus(is).In(units.KelvinDifference) >= 1
}

// again is when the sugar left is used by yeast pitched anew, at the planned temperature, in the
// ethanol that is there.
func (o *onward) again(last StatePoint) Range {
	n, err := o.now.state.YeastNitrogenLeft()
	if err != nil {
		return Range{}
	}
	start := o.begins()
	start.Sugar = last.Left
	start.Ethanol = units.GramPerLitre.Of(checked.Number(10 * last.Strength.In(units.PercentVolume) * pureEthanol))
	start.Nitrogen = units.MilligramPerLitre.Of(checked.Number(math.Max(n.In(units.MilligramPerLitre), 20)))
	p, err := kinetics.NewPace(start, kinetics.Hold{Temperature: o.m.req.Fermenter.Temperature})
	if err != nil {
		return Range{}
	}
	t, err := kinetics.NewForecast(p).Fit().When(units.Percent.Of(dry))
	if err != nil {
		return Range{}
	}
	return ranged(t, time.Duration(last.After))
}

// grossly is a mass to weigh on the scale for sugar.
func (m *maker) grossly(what string, mass units.Mass) *Weight {
	w := &Weight{What: what, For: "fermenter", Asked: mass}
	if rounded, err := mass.Round(m.req.Scales.Sugar, units.Nearest); err == nil {
		w.Mass = rounded
	}
	return w
}
