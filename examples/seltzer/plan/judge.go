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
			say("after %v: the gravity rose by %.4f: one of the two readings is wrong, or sugar was added", p.After, p.Gravity-s.Points[i-1].Gravity)
		}
	}
}

// late says how long it is usual that nothing shows, and calls a ferment slow that is behind what
// nineteen in twenty of its plan would have used.
func (m *maker) late(s *StatePlan) error {
	if s.State != NotBegun && s.State != Fermenting {
		return nil
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
