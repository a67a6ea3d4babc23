package plan

import (
	"errors"
	"fmt"
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// What counts as dry in a date: the gravity is then within some 0.0003 of the floor.
const dry = 99 // % of the fermentable sugar

// A timetable says when a share of the sugar is used.
type timetable func(used units.Share) (kinetics.TimeBand, error)

// begins is what sets the pace of the wash.
func (m *maker) begins() kinetics.Start {
	n, y := m.plan.Nutrient, m.plan.Yeast
	const gramPerBillion = 0.04 // 4e-11 g a cell: Coleman et al. 2007, as read second-hand
	yeast := y.Cells * gramPerBillion / n.Volume.In(units.Litre)
	start := kinetics.Start{Sugar: n.Sugar, Nitrogen: n.Brought.Plus(n.FromMust), Yeast: units.GramPerLitre.Of(checked.Number(yeast))}
	if m.unforeseen() != "" && n.Brought.Compare(n.Need) < 0 {
		start.Nitrogen = n.Need // what malt, juice and honey bring is not counted: taken as enough
	}
	if a := m.plan.Acidity; len(a.Points) > 1 {
		// Sour washes are slow: what it comes to when two thirds are used.
		start.PH = math.Max(a.Points[len(a.Points)-2].PH, 2.5)
	}
	return start
}

// timetable is the forecast by the pace of the wash, by how long the brewer thinks it takes, if
// that is given, and by the readings. Where no pace is known it is an even one.
func (m *maker) timetable(say *notes) (timetable, error) {
	thought := m.thought()
	f, err := m.foretold(m.plan.State != nil && m.plan.State.goesOn())
	if outside, ok := errors.AsType[*units.RangeError](err); ok {
		if thought == 0 {
			return nil, &RequestError{Field: "schedule.ferment", Value: "missing",
				Allowed: "how long it takes with you: the model of a ferment's pace does not reach this wash: " + reason(outside)}
		}
		say.caution("The days are by an even pace: the model of a ferment's pace does not reach this wash. The gravity decides.")
		return even(thought), nil
	} else if err != nil {
		return nil, err
	}
	if m.plan.State == nil {
		return f.fit.When, nil
	}
	return func(used units.Share) (kinetics.TimeBand, error) {
		t, err := f.fit.When(used)
		if _, never := errors.AsType[*units.RangeError](err); !never {
			return t, err
		}
		say.caution(daysOfThePlan) // by the readings it hardly gets there
		plan, err := m.byPlan()
		if err != nil {
			return t, err
		}
		return plan.fit.When(used)
	}, nil
}

const daysOfThePlan = "The days from \"about dry\" on are those of the plan: the readings do not tell when this ferment ends."

// thought is how long the brewer thinks the ferment takes, 0 if nothing is said.
func (m *maker) thought() time.Duration {
	if m.req.Schedule == nil {
		return 0
	}
	return time.Duration(m.req.Schedule.Ferment)
}

// A foretold is a forecast, and its fit at this moment.
type foretold struct {
	of  *kinetics.Forecast
	fit *kinetics.Fit
}

// foretold is the forecast of the plan, or with its readings. The error is a [*units.RangeError] where the model does not
// reach the wash.
func (m *maker) foretold(readings bool) (foretold, error) {
	if readings {
		return m.byReadings()
	}
	return m.byPlan()
}

// foretell is the pace of the wash as pitched, with what the brewer thinks.
func (m *maker) foretell() (foretold, error) {
	p, err := kinetics.NewPace(m.begins(), m.warmths()...)
	if err == nil { // and it gets there
		_, err = p.When(units.Percent.Of(dry))
	}
	if err != nil {
		return foretold{}, err
	}
	return m.learned(p, nil)
}

// foretellRead is that with the readings.
func (m *maker) foretellRead() (foretold, error) {
	plan, err := m.byPlan()
	if err != nil {
		return plan, err
	}
	return m.learned(plan.of.Pace(), m.plan.State.Points)
}

// learned is a pace with what the brewer thinks, and with what was read.
func (m *maker) learned(p *kinetics.Pace, read []StatePoint) (foretold, error) {
	f := kinetics.NewForecast(p)
	if thought := m.thought(); thought > 0 {
		if err := think(f, p, thought); err != nil {
			return foretold{}, &RequestError{Field: "schedule.ferment", Value: m.req.Schedule.Ferment.String(), Allowed: reason(err), Err: err}
		}
	}
	for _, r := range read {
		if time.Duration(r.After) >= mostDays*day {
			continue // beyond what is foreseen
		}
		u := 50 * r.Uncertainty.In(units.PercentVolume) / m.plan.State.Final.In(units.PercentVolume) // k = 2
		if err := f.Add(time.Duration(r.After), r.Used, units.Percent.Of(checked.Number(math.Min(math.Max(u, 1), 50)))); err != nil {
			return foretold{}, err
		}
	}
	return foretold{f, f.Fit()}, nil
}

// think takes in how long the brewer thinks the ferment takes: two rough readings, of a pace
// drawn out or in to that time.
func think(f *kinetics.Forecast, p *kinetics.Pace, whole time.Duration) error {
	half, err := p.When(units.Percent.Of(50))
	if err != nil {
		return err
	}
	end, err := p.When(units.Percent.Of(95))
	if err != nil {
		return err
	}
	middle := time.Duration(float64(half) * float64(whole) / float64(end))
	if err := f.Add(middle, units.Percent.Of(50), units.Percent.Of(10)); err != nil {
		return err
	}
	return f.Add(whole, units.Percent.Of(95), units.Percent.Of(10))
}

// even is the pace of a ferment that uses as much each hour, after half a day of lag.
func even(whole time.Duration) timetable {
	return func(used units.Share) (t kinetics.TimeBand, err error) {
		t.Median, err = nutrient.EstimatedTime(used, whole)
		t.Low50, t.High50, t.Low90, t.High90 = t.Median, t.Median, t.Median, t.Median
		return t, err
	}
}

// hourlyPeak is the most of its gas that the ferment gives in an hour, as a share of all: what
// nineteen of twenty forecasts stay below.
func (m *maker) hourlyPeak() float64 {
	if f := m.plan.Forecast; f != nil {
		return kg(f.GasMost) / m.poured.gas
	}
	if f, err := m.byPlan(); err == nil {
		_, most := f.fit.Fastest()
		return most.High90.In(units.Fraction)
	}
	whole := 7 * day
	if thought := m.thought(); thought > 0 {
		whole = thought
	}
	return peakOverAll / whole.Hours()
}

// between is how a range of days is written in the sign of an event.
func between(start time.Time, t kinetics.TimeBand, more time.Duration) string {
	low, high := start.Add(t.Low90+more).Format(dateForm), start.Add(t.High90+more).Format(dateForm)
	if low == high {
		return ""
	}
	return fmt.Sprintf("; nine in ten from %s to %s", low, high)
}
