package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
)

const (
	closely  = 1e-11 // relative change of a round at the end
	lightly  = 2e-8  // relative change of the strength that coefficients need not follow; moves a pH by less
	longStep = 3     // of ln h in a round

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
	s.g.at(s.strength, s.a, s.b)
	s.standard()
}

// refresh takes the coefficients to the present strength and reports whether they
// moved enough to matter.
func (s *solution) refresh() bool {
	i := s.ionicStrength()
	move := i - s.strength
	if math.Abs(move) <= lightly*i {
		return false
	}
	// Aitken: the moves shrink by about the same share each time.
	if r := move / s.move; math.Abs(r) < 0.1 {
		i += move * r / (1 - r)
	}
	s.move = move
	s.strength = min(i, beyond*mostStrength)
	s.g.at(s.strength, s.a, s.b)
	s.standard()
	return true
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
	moving := true
	s.condition()
	for round := range mostRounds {
		d := s.balance(way)
		if dose != nil {
			d = max(d, dose.adjust(s, way))
		}
		if moving {
			moving = s.refresh()
			s.condition()
			continue
		}
		if d < closely {
			return round
		}
	}
	return mostRounds
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
	settled := 1.0 // the coefficients wait until the composition moves less than it did
	for round := range mostRounds {
		s.balance(way)
		d := s.balance(way)
		alk, slope := s.alkalinity(way)
		step := max(-longStep, min(longStep, (alk-s.alk)/slope)) // of ln h
		s.h *= numeric.Exp(step)
		s.h = max(leastActivity, min(mostActivity, s.h))
		d = max(d, math.Abs(step))
		if d < settled {
			if !s.refresh() && d < closely {
				return round
			}
			settled = max(d, closely)
		}
		s.condition()
	}
	return mostRounds
}

func (s *solution) inRange(fn string) error {
	return limit.Check(fn, "ionic strength", s.strength, "mol/kg", 0, mostStrength, rangeSource)
}
