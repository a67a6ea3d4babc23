package plan

import (
	"fmt"
	"slices"
	"sort"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// dateForm is how a day is written: ISO 8601.
const dateForm = "2006-01-02"

// Times of the trade (common practice, no source).
const (
	steadyFor   = 3 * day  // gravity unchanged before packing
	kegRest     = 10 * day // at the set pressure: 7 to 14 days, supplier articles (read)
	bottleRest  = 14 * day // to condition, near 20 °C
	peakOverAll = 2.0      // busiest hour against the mean hour of a ferment whose pace is not known
)

// schedule estimates when what is due. Sugar used decides, not the clock.
func (m *maker) schedule(say *notes) (due []Event, err error) {
	s := m.req.Schedule
	if s == nil {
		return nil, nil
	}
	start, err := time.Parse(dateForm, s.Start)
	if err != nil {
		return nil, &RequestError{Field: "schedule.start", Value: fmt.Sprintf("%q", s.Start), Allowed: "a day as 2026-12-05"}
	}
	if d := time.Duration(s.Ferment); d != 0 && (d < 2*day || d > 89*day) {
		return nil, &RequestError{Field: "schedule.ferment", Value: s.Ferment.String(), Allowed: "2 d to 89 d, or left out"}
	}
	when, err := m.timetable(say)
	if err != nil {
		return nil, err
	}
	add := func(at time.Duration, what, sign string) {
		due = append(due, Event{Day: start.Add(at).Format(dateForm), What: what, Sign: sign})
	}
	g := m.plan.Gravity
	first, read := "brew, pitch", g.Original
	if n := m.plan.Nutrient; len(n.Supplements) > 0 || len(n.Stages) > 0 && n.Stages[0].some() {
		first += ", first nutrient"
	}
	if g.First > 0 { // of the first portion of the sugar
		read = g.First
	}
	add(0, first, fmt.Sprintf("gravity %.4f", read))
	for _, d := range m.dueByGravity() {
		at, err := when(d.used)
		if err != nil {
			return nil, err
		}
		add(at.Median, d.what, fmt.Sprintf("by gravity %.4f", d.gravity))
	}
	half, err := when(units.Percent.Of(50))
	if err != nil {
		return nil, err
	}
	add(half.Median, "measure the pH", "half of the sugar is used")
	end, err := when(units.Percent.Of(dry))
	if err != nil {
		return nil, err
	}
	end = m.dated(end, say)
	add(end.Median, "about dry", fmt.Sprintf("gravity near %.4f", m.plan.Gravity.Floor)+between(start, end, 0))
	packs := end.Median + steadyFor
	add(packs, "pack", "the same gravity over three days, at or near the floor"+between(start, end, steadyFor))
	for i, p := range m.plan.Packs {
		rest, what, sign := bottleRest, p.Kind+"s ready", "open one and see"
		switch r := m.recipe.packs[i]; {
		case r.Content.still:
			continue
		case r.counterPressure():
			rest, what, sign = kegRest, "carbonated: fill under counter-pressure", inGas
		case p.Kind == keg:
			rest, sign = kegRest, inGas
		}
		if !slices.ContainsFunc(due, func(e Event) bool { return e.What == what }) {
			add(packs+rest, what, sign)
		}
	}
	sort.SliceStable(due, func(i, k int) bool { return due[i].Day < due[k].Day })
	return due, nil
}

// A dose is due when so much of the sugar is used.
type dose struct {
	used    units.Share
	what    string
	gravity float64
}

// dueByGravity are the later additions of nutrient and portions of sugar, in their order.
func (m *maker) dueByGravity() (all []dose) {
	for i, n := range m.plan.Nutrient.Stages {
		if i > 0 && n.some() {
			all = append(all, dose{n.Used, fmt.Sprintf("nutrient, addition %d", i+1), n.Gravity})
		}
	}
	for i, k := range m.plan.Gravity.Portions {
		all = append(all, dose{k.Used, fmt.Sprintf("sugar, portion %d", i+2), k.Gravity})
	}
	sort.SliceStable(all, func(i, k int) bool { // where both are due, the nutrient
		return all[i].used.In(units.Percent) < all[k].used.In(units.Percent)-1e-6
	})
	return all
}

// some tells whether anything is weighed for it.
func (s NutrientStage) some() bool {
	return slices.ContainsFunc(s.Doses, func(w Weight) bool { return !w.Mass.Decimal().IsZero() })
}

const inGas = "7 to 14 days at the set pressure"

// dated is the end of the ferment as its readings leave it. One that stands still is dated no
// more, and one that is done ended with its last reading at the latest.
func (m *maker) dated(end kinetics.TimeBand, say *notes) kinetics.TimeBand {
	s := m.plan.State
	if s == nil || len(s.Points) == 0 {
		return end
	}
	last := time.Duration(s.Points[len(s.Points)-1].After)
	switch s.State {
	case Stalled, Doubtful, NotBegun:
		say.caution(daysOfThePlan)
	case Finished:
		return kinetics.TimeBand{Low90: last, Low50: last, Median: last, High50: last, High90: last}
	default:
		end.Low90, end.Median, end.High90 = max(end.Low90, last), max(end.Median, last), max(end.High90, last)
	}
	return end
}

// room is the fresh air that the ferment asks for.
func (m *maker) room(say *notes) (*RoomPlan, error) {
	r := m.req.Room
	if r == nil {
		return nil, nil
	}
	total := m.poured.gas
	peak := m.hourlyPeak() * total
	const limitPPM, freshPPM = 5000, 420 // OSHA 29 CFR 1910.1000, 8 h mean; outside air in 2024
	v, err := carbonation.Ventilate(kilograms(peak), r.Volume, m.req.Fermenter.Temperature, units.PartPerMillion.Of(limitPPM),
		units.PartPerMillion.Of(freshPPM), m.air)
	if err != nil {
		return nil, &RequestError{Field: "room.volume", Value: r.Volume.Text(units.CubicMetre, 1), Allowed: reason(err), Err: err}
	}
	density, err := carbonation.GasDensity(m.air.Pressure(), m.req.Fermenter.Temperature)
	if err != nil {
		return nil, err
	}
	gas := units.CubicMetre.Of(checked.Number(total / density.In(units.KilogramPerCubicMetre)))
	made := func(at time.Duration) Duration { // 0 where all the gas is not enough
		if peak*at.Hours() > total {
			return 0
		}
		if at >= 2*time.Hour {
			return Duration(at.Truncate(time.Hour)) // down, as it is the time that there is
		}
		return Duration(max(time.Minute, at.Truncate(time.Minute)))
	}
	for _, c := range v.Cautions {
		say.caution(c.Text())
	}
	return &RoomPlan{
		CO2: kilograms(total), Gas: gas, Peak: units.Gram.Of(checked.Number(1000 * peak)),
		FreshAir: v.FreshAir, Reached: made(v.Reached), Dangerous: made(v.Dangerous),
		LimitPPM: limitPPM,
	}, nil
}
