package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
)

const (
	closely  = 1e-11 // relative change of a round at the end
	lightly  = 5e-9  // relative change of the strength that coefficients need not follow; moves a pH by less
	longStep = 3     // of ln h in a round, at most

	smallStep = 0.1 // of a round, beside which the strength moves along a straight line

	beyond = 2 // times a limit is far enough to see that it is passed

	leastPH = 0.0
	mostPH  = 14.0

	rangeSource = "extended Debye–Hückel and Davies, package water"
)

var leastActivity, mostActivity = power(-mostPH), power(-leastPH) // of H+

// begin sets a start: everything free, the strength of the totals.
func (s *solution) begin(ph float64) {
	s.h = numeric.Exp(-math.Ln10 * ph)
	m := &s.total
	s.free = [mostParts]float64{nothing: 1, partSO4: m[partSO4]}
	copy(s.free[partCa:metalsEnd], m[partCa:metalsEnd])
	s.strength = s.inertStrength + 2*(m[partCa]+m[partMg]+m[partSO4]) + 0.5*(m[partNa]+m[partK]+m[partNH4]+m[partPO4]+math.Abs(s.alk))
	s.strength = min(s.strength, mostStrength)
	s.before = s.strength
	s.g.at(s.strength, s.a, s.b)
	s.standard()
}

// moved reports whether a strength is so far from that of the coefficients that it matters.
func (s *solution) moved(strength float64) bool {
	return math.Abs(strength-s.strength) > lightly*strength
}

// refresh takes the coefficients to the strength that the state has: by the secant through
// the last two moves, as the state follows its coefficients.
func (s *solution) refresh(strength float64) {
	move := strength - s.strength
	if slope := (move - s.move) / (s.strength - s.before); slope > -1.2 && slope < -0.8 {
		strength = s.strength - move/slope
	}
	s.before, s.move = s.strength, move
	s.strength = min(strength, beyond*mostStrength)
	s.g.at(s.strength, s.a, s.b)
	s.standard()
}

// atPH solves the balances at the pH that h holds, and the dose where there is one: in
// quick rounds or else on the sure way, [solution.sure].
func (s *solution) atPH(fn string, way int, dose *acidDose) error {
	if s.quickAtPH(way, dose) < mostRounds {
		return s.inRange(fn)
	}
	return s.sureAtPH(fn, way, dose)
}

// quickAtPH returns the rounds that it takes, mostRounds where it does not settle.
func (s *solution) quickAtPH(way int, dose *acidDose) int {
	s.condition()
	last := 0.0
	for round := range mostRounds {
		s.balance(way)
		d := s.balance(way)
		if dose != nil {
			d = max(d, dose.adjust(s))
		}
		i := s.sums(way).strength
		if d < smallStep && s.moved(i) {
			s.refresh(i)
			s.condition()
		} else if left(d, last) < closely {
			s.catchUp(way, d)
			return round
		}
		last = d
	}
	return mostRounds
}

// catchUp takes the balances along with the last step, of so much, where that matters.
func (s *solution) catchUp(way int, d float64) {
	if d > closely {
		s.condition()
		s.balance(way)
	}
}

// left is what the sweeps to come will change, where the last of this round changed by d and
// that of the round before by so much, two sweeps earlier, and they go on to shrink as they do.
func left(d, before float64) float64 {
	if d >= before {
		return d
	}
	return d * math.Sqrt(d/before)
}

// findPH solves the balances and the pH for the alkalinity.
//
// At fixed coefficients and metals, alkalinity rises with pH: a step of Newton for each
// round of the balances. Where the two disturb each other it goes the sure way,
// [solution.sure].
func (s *solution) findPH(fn string, way int) error {
	if s.quickPH(way) < mostRounds {
		return s.inRange(fn)
	}
	return s.surePH(fn, way)
}

// quickPH returns the rounds that it takes, mostRounds where it does not settle.
func (s *solution) quickPH(way int) int {
	s.condition()
	s.balance(way)
	var step, strength, byStep float64 // the last step with its strength, and what a step does to that
	last := 0.0
	for round := range mostRounds {
		s.balance(way)
		d := s.balance(way)
		now := s.sums(way)
		if math.Abs(step) > negligible {
			byStep = (now.strength - strength) / step
		}
		step, strength = max(-longStep, min(longStep, (now.alk-s.alk)/now.slope)), now.strength // of ln h
		s.h *= numeric.Exp(step)
		s.h = max(leastActivity, min(mostActivity, s.h))
		d = max(d, math.Abs(step))
		i := strength
		if math.Abs(step) < smallStep {
			i += byStep * step
		}
		if d < 1 && s.moved(i) {
			s.refresh(i)
			step = 0
		} else if left(d, last) < closely {
			s.catchUp(way, d)
			return round
		}
		last = d
		s.condition()
	}
	return mostRounds
}

func (s *solution) inRange(fn string) error {
	return limit.Check(fn, "ionic strength", s.strength, "mol/kg", 0, mostStrength, rangeSource)
}
