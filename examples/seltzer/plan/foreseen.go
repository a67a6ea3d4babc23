package plan

import (
	"errors"
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// ForecastPlan is how the ferment may go, from the plan, the brewer's own time and the readings.
// Times are since the yeast was pitched.
type ForecastPlan struct {
	Third   Range `json:"a_third_used"`
	Dry     Range `json:"dry"`                      // [ForecastPlan.DryGravity] read
	Settled Range `json:"unchanged_for_three_days"` // from then on

	DryGravity float64                 `json:"dry_means_gravity"`
	DryLeft    units.MassConcentration `json:"dry_means_sugar_left"`
	Stops      units.Share             `json:"chance_that_it_stops"` // for good, above the next
	StopsAbove float64                 `json:"stops_means_gravity_above"`
	Next       Duration                `json:"next_reading_tells_most"`

	Fastest  Range       `json:"fastest"`
	Gas      units.Mass  `json:"gas_in_the_fastest_hour"`
	GasMost  units.Mass  `json:"gas_in_the_fastest_hour_high"` // nineteen in twenty stay below it
	Heat     units.Power `json:"heat_in_the_fastest_hour"`
	HeatMost units.Power `json:"heat_in_the_fastest_hour_high"`

	Leaves *Leaving `json:"leaves_the_plan,omitempty"`
	Trust  string   `json:"outside_what_the_model_was_fitted_to,omitempty"`
}

// Range is when something may be expected: half of all outcomes lie from Low50 to High50, nine
// in ten from Low90 to High90.
type Range struct {
	Low90  Duration `json:"low_90"`
	Low50  Duration `json:"low_50"`
	Median Duration `json:"median"`
	High50 Duration `json:"high_50"`
	High90 Duration `json:"high_90"`
}

// Leaving is the first moment from which two readings lie outside what nine in ten ferments of
// the plan would show.
type Leaving struct {
	After  Duration `json:"after"`
	Faster bool     `json:"faster"`
	Causes []Cause  `json:"causes"` // the likeliest first
}

// What counts as stopped in a forecast: short of it for good.
const stopped = 90 // % of the fermentable sugar

// goesOn says whether the readings tell of a ferment on its way.
func (s *StatePlan) goesOn() bool { return s.State == Fermenting || s.State == Slow || s.State == Near }

// foresee is the forecast, where there is something to date or to learn from.
func (m *maker) foresee(*notes) (*ForecastPlan, error) {
	s := m.plan.State
	if m.req.Schedule == nil && s == nil {
		return nil, nil
	}
	f, err := m.foretold(s != nil && s.State != Doubtful)
	if _, outside := errors.AsType[*units.RangeError](err); outside {
		return nil, nil // the model does not reach this wash
	}
	if err != nil {
		return nil, err
	}
	fit := f.fit
	out := &ForecastPlan{DryGravity: m.gravityOf(dry), StopsAbove: m.gravityOf(stopped), Trust: f.of.Pace().Caution()}
	left := (1 - dry/100.0) * m.plan.Nutrient.Sugar.In(units.GramPerLitre)
	out.DryLeft = units.GramPerLitre.Of(checked.Number(left))
	for _, of := range []struct {
		used units.Share
		into *Range
	}{{units.Fraction.Of(1. / 3), &out.Third}, {units.Percent.Of(dry), &out.Dry}} {
		t, err := fit.When(of.used)
		if _, never := errors.AsType[*units.RangeError](err); never {
			continue // it is hardly to be expected: the chance that it stops says so
		}
		if err != nil {
			return nil, err
		}
		*of.into = ranged(t, 0)
		if of.into == &out.Dry {
			out.Settled = ranged(t, steadyFor)
		}
	}
	out.Stops = fit.Stops(units.Percent.Of(stopped))
	last := time.Duration(0)
	if s != nil && len(s.Points) > 0 {
		last = time.Duration(s.Points[len(s.Points)-1].After)
	}
	if last < mostDays*day {
		out.Next = Duration(fit.Next(last).Round(time.Hour))
	}
	when, share := fit.Fastest()
	out.Fastest = ranged(when, 0)
	if out.Gas, out.Heat, err = m.hourly(share.Median); err != nil {
		return nil, err
	}
	if out.GasMost, out.HeatMost, err = m.hourly(share.High90); err != nil {
		return nil, err
	}
	if s != nil {
		if at, faster, leaves := f.of.Leaves(); leaves {
			out.Leaves = &Leaving{After: Duration(at.Round(time.Hour)), Faster: faster}
			if out.Leaves.Causes, err = m.causes(f.of, faster); err != nil {
				return nil, err
			}
		}
	}
	return out, nil
}

// gravityOf is the gravity when so many per cent of the sugar are used.
func (m *maker) gravityOf(percent float64) float64 {
	g := m.plan.Gravity
	if m.plan.State != nil && m.plan.State.Floor > 0 {
		og := m.plan.State.begins
		return og + percent/100*(m.plan.State.Floor-og)
	}
	return g.Original + percent/100*(g.Floor-g.Original) // a straight line: within 0.0002
}

// hourly is the gas, and the heat, of an hour in which a share of the sugar goes.
func (m *maker) hourly(share units.Share) (units.Mass, units.Power, error) {
	part := share.In(units.Fraction)
	heat, err := ferment.UsualHeat().CoolingPower(kilograms(part*kg(m.batch.wash.Fermentable())), time.Hour)
	return kilograms(part * m.poured.gas), heat, err
}

// ranged is a time as the plan has it, rounded to an hour.
func ranged(t kinetics.TimeBand, more time.Duration) Range {
	at := func(d time.Duration) Duration {
		return Duration((time.Duration(math.Round(d.Hours())) * time.Hour) + more)
	}
	return Range{at(t.Low90), at(t.Low50), at(t.Median), at(t.High50), at(t.High90)}
}
