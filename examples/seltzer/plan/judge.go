package plan

import (
	"errors"
	"fmt"
	"math"
	"time"

	"example.org/zymase/units"
)

// What the trade goes by (common practice, no source).
const (
	unchangedFor = 2 * day        // two readings this far apart that agree
	stillFor     = 12 * time.Hour // the same, while it may still creep
	nearFloor    = 0.002          // of gravity
	aboveFloor   = 0.003          // of gravity: above this it is not the floor
	begunAt      = 2.0            // % of the sugar used: less than a hydrometer shows for sure
	leastToStop  = 10.0           // % of the sugar used: before that it is slow to begin
	beginsBy     = 3 * day        // where no pace is foreseen
	mostSour     = 2.4            // pH
	leastSour    = 6.5            // pH
	fastest      = 6.0            // times as fast as nineteen in twenty: no yeast is
	coldBy       = 3.0            // K below the planned temperature
	sourBelow    = 3.2            // pH; growth of wine yeast slows sharply between 3.00 and 2.75 (Liu et al.)
)

// States of a ferment.
const (
	NotBegun   = "not begun"
	Fermenting = "fermenting"
	Slow       = "slow"
	Near       = "close to the floor and still"
	Finished   = "finished"
	Stalled    = "stopped"
	Doubtful   = "reading in doubt"
)

// judge says what the last readings mean.
func (s *StatePlan) judge() {
	n := len(s.Points)
	if n == 0 {
		s.State = NotBegun
		return
	}
	last := s.Points[n-1]
	s.State = Fermenting
	if last.Used.In(units.Percent) < begunAt {
		s.State = NotBegun
	}
	floor := last.ends
	for _, p := range s.Points[:n-1] {
		if p.portions != last.portions {
			continue
		}
		if math.Abs(p.Gravity-last.Gravity) > nearFloor/2 {
			continue
		}
		switch apart := time.Duration(last.After - p.After); {
		case last.waits && last.Gravity < floor+aboveFloor: // it waits for its next portion
			return
		case apart >= unchangedFor && last.Gravity <= floor+nearFloor:
			if s.State = Finished; last.tooCoarse() {
				s.State = Near
				s.Diagnosis = append(s.Diagnosis, fmt.Sprintf("what was read with shows the gravity to ± %.4f only, which may hide sugar: read it twice, "+
					"two days apart, with a finer hydrometer before you pack", 2*last.blur*(last.starts-last.ends)))
			}
			return
		case apart >= unchangedFor && last.Gravity >= floor+aboveFloor:
			if s.State = Stalled; last.Used.In(units.Percent) < leastToStop {
				s.State = Slow // hardly begun: not stopped
			}
			return
		case apart >= stillFor && last.Gravity < floor+aboveFloor:
			s.State = Near
		}
	}
}

// doubt looks for readings that no ferment of the wash can give.
func (s *StatePlan) doubt(floor string) {
	say := func(format string, a ...any) {
		s.State, s.Diagnosis = Doubtful, append(s.Diagnosis, fmt.Sprintf(format, a...))
	}
	if s.apart != "" {
		say("in the wash %s contradict each other: read both again", s.apart)
	}
	for i, p := range s.Points {
		if p.beyond != "" {
			say("after %v: %s: read it again, and check its unit", p.After, p.beyond)
		}
		if p.apart != "" {
			say("after %v: %s contradict each other: read both again", p.After, p.apart)
		}
		if over := p.Gravity - p.starts; over > aboveFloor {
			say("after %v: %.4f is %.4f above the original gravity: stir or degas the sample, read again, and check the original gravity", p.After, p.Gravity, over)
		}
		if under := p.ends - p.Gravity; under > aboveFloor {
			say("after %v: %.4f is %.4f below the %s, which no ferment of this wash reaches: check the hydrometer in water, and the original gravity",
				p.After, p.Gravity, under, floor)
		}
		if i > 0 && p.portions == s.Points[i-1].portions && p.Gravity-s.Points[i-1].Gravity > aboveFloor {
			by := ""
			if p.by != "hydrometer" {
				by = "by the " + p.tool() + " "
			}
			say("after %v: "+by+"the gravity rose by %.4f: one of the two readings is wrong, or sugar was added", p.After, p.Gravity-s.Points[i-1].Gravity)
		}
	}
}

// tool is the instrument that tells most, in words.
func (p StatePoint) tool() string {
	if p.by == "weight" {
		return "weight lost"
	}
	return p.by
}

// doubtPH looks for a pH that no ferment has: its own gas holds it below neutral, and the acids of yeast end well above
// strong acid (common practice, no source).
func (s *StatePlan) doubtPH(rs []Reading) {
	for i, r := range rs {
		at := i - (len(rs) - len(s.Points))
		if r.PH == nil || at < 0 {
			continue
		}
		text := ""
		switch used := s.Points[at].Used.In(units.Percent); {
		case *r.PH < mostSour:
			text = "more sour than a ferment comes to"
		case *r.PH > leastSour && used > leastToStop:
			text = "less sour than the gas of a ferment leaves it"
		default:
			continue
		}
		text = fmt.Sprintf("after %v: pH %.2f is %s: rinse the meter, calibrate it and read again", r.After, *r.PH, text)
		s.State, s.Diagnosis = Doubtful, append(s.Diagnosis, text)
	}
}

// late says how long it is usual that nothing shows, and calls a ferment slow that is behind what
// nineteen in twenty of its plan would have used.
func (m *maker) late(s *StatePlan) error {
	if err := m.tooFast(s); err != nil || s.State != NotBegun && s.State != Fermenting {
		return err
	}
	var last StatePoint // of the wash, where there is none
	if n := len(s.Points); n > 0 {
		last = s.Points[n-1]
	}
	f, err := m.byPlan()
	if _, outside := errors.AsType[*units.RangeError](err); outside { // no pace to compare it with
		s.overdue = s.State == NotBegun && time.Duration(last.After) > beginsBy
		return nil
	}
	if err != nil {
		return err
	}
	begun, err := f.fit.When(units.Percent.Of(begunAt))
	if err != nil {
		return err
	}
	s.BegunBy = ranged(begun, 0)
	if s.State == NotBegun {
		s.overdue = last.After > s.BegunBy.High90
		return nil
	}
	if last.waits { // for sugar, not for yeast
		return nil
	}
	band := f.fit.Used(time.Duration(last.After))
	const blur = 0.03 // of an instrument and the model
	if last.Used.In(units.Fraction) < band.Low90.In(units.Fraction)-blur {
		s.State = Slow
	}
	return nil
}

// tooFast doubts readings of sugar that went faster than yeast can.
func (m *maker) tooFast(s *StatePlan) error {
	f, err := m.byPlan()
	if err != nil {
		return outside(err)
	}
	for _, p := range s.Points {
		at := time.Duration(fastest * float64(p.After))
		if at >= mostDays*day || p.waits {
			continue
		}
		const blur = 0.1 // of the instruments and the model
		if p.Used.In(units.Fraction) > f.fit.Used(at).High90.In(units.Fraction)+blur {
			s.State = Doubtful
			s.Diagnosis = append(s.Diagnosis, fmt.Sprintf("after %v: %s of the sugar used is faster than any yeast: check the hours "+
				"since it was pitched, and the original gravity",
				p.After, p.Used.Text(units.Percent, 0)))
		}
	}
	return nil
}
