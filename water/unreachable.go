package water

import (
	"errors"
	"fmt"

	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// unreachable names a limit that no salt at hand can bring the water to: the first
// that stays broken by itself, else the whole set.
func (s *salter) unreachable(fn string, water Profile, err error) error {
	if !errors.Is(err, numeric.ErrInfeasible) {
		return &UnreachableError{Func: fn, Limit: "the optimum", Reason: "the solver did not end", Err: err}
	}
	for _, h := range s.held {
		l := &s.limits[h.limit]
		have := l.of(water.ion)
		least, most := have, have // what doses up to the stock can do
		for j, c := range s.program[h.limit] {
			most, least = s.reach(j, c, most, least)
		}
		if !h.floor() && least > l.high {
			return &UnreachableError{fn, l.name, fmt.Sprintf("the water has %.4g %s, at most %.4g allowed, and no salt at hand takes it away", have, l.unit,
				l.high), err}
		}
		if h.floor() && most < l.low {
			return &UnreachableError{fn, l.name, fmt.Sprintf("the water has %.4g %s, at least %.4g wanted, and the salts at hand bring it to %.4g at most",
				have, l.unit, l.low, most), err}
		}
	}
	return &UnreachableError{fn, "the set of limits", "each can be met by itself, but not all together with the salts at hand", err}
}

func (s *salter) reach(j int, c, most, least float64) (float64, float64) {
	grams := inf
	for _, k := range s.capped {
		if k == j {
			grams = s.salts[j].Most.In(units.Gram) / s.litres
		}
	}
	switch by := c * grams; { // NaN where it brings nothing
	case by > 0:
		most += by
	case by < 0:
		least += by
	}
	return most, least
}
