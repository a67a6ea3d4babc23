package plan

import (
	"fmt"
	"math"
	"sort"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// temperaturesOK refuses temperatures of the ferment out of order, or above the warmest.
func temperaturesOK(f Fermenter) error {
	last := time.Duration(-1)
	for i, w := range f.Temperatures {
		field := fmt.Sprintf("fermenter.temperatures[%d]", i)
		if after := time.Duration(w.After); after <= last || after > mostDays*day {
			return &RequestError{Field: field + ".after", Value: w.After.String(), Allowed: fmt.Sprintf("later than the one before, %d d at most", mostDays)}
		}
		last = time.Duration(w.After)
		if err := within(field+".temperature", w.Temperature, units.Celsius, 4, 38); err != nil {
			return err
		}
		if w.Temperature.Compare(f.Warmest) > 0 {
			return &RequestError{Field: "fermenter.warmest", Value: f.Warmest.Text(units.Celsius, 1), is: quantity(f.Warmest),
				Allowed: "at least " + w.Temperature.Text(units.Celsius, 1) + ", which the ferment comes to after " + w.After.String()}
		}
	}
	return nil
}

// mostDays is how long a ferment is foreseen.
const mostDays = 89

// warmths are the temperatures of the ferment as its pace needs them: those of the request, and
// where a vessel was read, what was read, from the reading before on. What was read last stays.
func (m *maker) warmths() []kinetics.Hold {
	f := m.req.Fermenter
	plan := []kinetics.Hold{{Temperature: f.Temperature}}
	for _, w := range f.Temperatures {
		if w.After == 0 {
			plan[0].Temperature = w.Temperature
			continue
		}
		plan = append(plan, kinetics.Hold{From: time.Duration(w.After), Temperature: w.Temperature})
	}
	return overlaid(plan, m.req.Readings)
}

// overlaid are planned temperatures with those that were read in their place.
func overlaid(plan []kinetics.Hold, rs []Reading) []kinetics.Hold {
	type span struct {
		from, to time.Duration
		t        units.Temperature
	}
	var read []span
	before := time.Duration(0)
	for _, r := range rs {
		after := min(time.Duration(r.After), mostDays*day)
		if r.Vessel != nil && after >= before {
			// The model's own limits; what lies outside is cold or hot enough at them.
			t := units.Celsius.Of(checked.Number(math.Min(math.Max(r.Vessel.In(units.Celsius), 10), 35)))
			read = append(read, span{before, after, t})
		}
		before = after
	}
	if len(read) == 0 {
		return plan
	}
	if last := &read[len(read)-1]; last.to == before {
		last.to = mostDays * day
	}
	at := []time.Duration{0}
	for _, h := range plan {
		at = append(at, h.From)
	}
	for _, s := range read {
		at = append(at, s.from, s.to)
	}
	sort.Slice(at, func(i, j int) bool { return at[i] < at[j] })
	var out []kinetics.Hold
	for i, from := range at {
		if i > 0 && from == at[i-1] || from >= mostDays*day {
			continue
		}
		t := plan[sort.Search(len(plan), func(i int) bool { return plan[i].From > from })-1].Temperature
		for _, s := range read {
			if from >= s.from && from < s.to {
				t = s.t
			}
		}
		if n := len(out); n == 0 || out[n-1].Temperature != t {
			out = append(out, kinetics.Hold{From: from, Temperature: t})
		}
	}
	return out
}
