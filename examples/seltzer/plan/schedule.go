package plan

import (
	"fmt"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
)

// dateForm is how a day is written: ISO 8601.
const dateForm = "2006-01-02"

// Times of the trade (common practice, no source).
const (
	steadyFor   = 3 * day  // gravity unchanged before packing
	kegRest     = 10 * day // at the set pressure: 7 to 14 days, supplier articles (read)
	bottleRest  = 14 * day // to condition, near 20 °C
	peakOverAll = 2.0      // busiest hour against the mean hour of a ferment
)

// schedule estimates when what is due. Sugar used decides, not the clock.
func (m *maker) schedule() error {
	s := m.req.Schedule
	if s == nil {
		return nil
	}
	start, err := time.Parse(dateForm, s.Start)
	if err != nil {
		return &RequestError{Field: "schedule.start", Value: fmt.Sprintf("%q", s.Start), Allowed: "a day as 2026-12-05"}
	}
	whole := time.Duration(s.Ferment)
	if whole < 2*day || whole > 120*day {
		return &RequestError{Field: "schedule.ferment", Value: s.Ferment.String(), Allowed: "2 d to 120 d"}
	}
	add := func(at time.Duration, what, sign string) {
		m.plan.Schedule = append(m.plan.Schedule, Event{Day: start.Add(at).Format(dateForm), What: what, Sign: sign})
	}
	add(0, "brew, pitch, first nutrient", fmt.Sprintf("gravity %.4f", m.plan.Gravity.Original))
	for i, n := range m.plan.Nutrient.Stages {
		if i == 0 {
			continue
		}
		at, err := nutrient.EstimatedTime(n.Used, whole)
		if err != nil {
			return err
		}
		add(at, fmt.Sprintf("nutrient, addition %d", i+1), fmt.Sprintf("by gravity %.4f", n.Gravity))
	}
	half, err := nutrient.EstimatedTime(units.Percent.Of(50), whole)
	if err != nil {
		return err
	}
	add(half, "measure the pH", "half of the sugar is used")
	if whole, err = m.slipped(whole); err != nil {
		return err
	}
	add(whole, "about dry", fmt.Sprintf("gravity near %.4f", m.plan.Gravity.Floor))
	packs := whole + steadyFor
	add(packs, "pack", "the same gravity over three days, at or near the floor")
	for i, p := range m.plan.Packs {
		if m.recipe.packs[i].Content.still {
			continue
		}
		if p.Kind == keg {
			add(packs+kegRest, "kegs ready", "7 to 14 days at the set pressure")
		} else {
			add(packs+bottleRest, "bottles ready", "open one and see")
		}
	}
	return nil
}

// slipped is when the ferment is dry by its readings: it is as late then as the last of them
// found it. A ferment that stands still is dated no more.
func (m *maker) slipped(whole time.Duration) (time.Duration, error) {
	s := m.plan.State
	if s == nil || len(s.Points) == 0 {
		return whole, nil
	}
	last := s.Points[len(s.Points)-1]
	switch s.State {
	case Stalled, Doubtful, NotBegun:
		m.caution("The days from \"about dry\" on are those of the plan: the readings do not tell when this ferment ends.")
		return whole, nil
	case Finished:
		return min(whole, time.Duration(last.After)), nil
	}
	expected, err := nutrient.EstimatedTime(last.Used, whole)
	if err != nil {
		return 0, err
	}
	return max(time.Duration(last.After), whole+time.Duration(last.After)-expected), nil
}

// room is the fresh air that the ferment asks for.
func (m *maker) room() error {
	r := m.req.Room
	if r == nil {
		return nil
	}
	whole := 7 * day
	if m.req.Schedule != nil {
		whole = time.Duration(m.req.Schedule.Ferment)
	}
	total := kg(m.batch.made.CO2)
	peak := peakOverAll * total / whole.Hours()
	const limitPPM, freshPPM = 5000, 420 // OSHA 29 CFR 1910.1000, 8 h mean; outside air in 2024
	v, err := carbonation.Ventilate(kilograms(peak), r.Volume, m.req.Fermenter.Temperature, limitPPM, freshPPM, m.air)
	if err != nil {
		return &RequestError{Field: "room.volume", Value: r.Volume.Text(units.CubicMetre, 1), Allowed: reason(err), Err: err}
	}
	density, err := carbonation.GasDensity(m.req.Fermenter.Temperature, m.air.Pressure())
	if err != nil {
		return err
	}
	gas := units.CubicMetre.Of(checked.Number(total / density.In(units.KilogramPerCubicMetre)))
	made := func(at time.Duration) Duration { // 0 where all the gas is not enough
		if peak*at.Hours() > total {
			return 0
		}
		return Duration(at.Round(time.Hour))
	}
	m.plan.Room = &RoomPlan{
		CO2: kilograms(total), Gas: gas, Peak: units.Gram.Of(checked.Number(1000 * peak)),
		FreshAir: v.FreshAir, Reached: made(v.Reached), Dangerous: made(v.Dangerous),
		LimitPPM: limitPPM,
	}
	for _, c := range v.Cautions.List() {
		m.caution(c.Text())
	}
	return nil
}
