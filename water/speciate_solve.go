package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
)

const (
	closely = 1e-11 // relative change of a round at the end
	lightly = 5e-9  // relative change of the strength that coefficients need not follow; moves a pH by less

	longStep    = 3    // of ln h in a round, at most
	longMetal   = 0.5  // of the logarithm of a free metal, beyond which its balance alone is met
	longRefresh = 1    // of a round, beyond which the strength that it leads to is not known
	lastStep    = 1e-6 // of a round: what it leaves is its square

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

// atPH solves the balances at the pH that h holds, and the dose where there is one.
func (s *solution) atPH(fn string, way int, dose *acidDose) error {
	if s.quick(way, true, dose) < mostRounds {
		return s.inRange(fn)
	}
	return s.sureAtPH(fn, way, dose)
}

// findPH solves the balances and the pH for the alkalinity: in quick rounds, [solution.quick], or
// where they do not settle on the sure way, [solution.sure].
func (s *solution) findPH(fn string, way int) error {
	if s.quick(way, false, nil) < mostRounds {
		return s.inRange(fn)
	}
	return s.surePH(fn, way)
}

func (s *solution) inRange(fn string) error {
	return limit.Check(fn, "ionic strength", s.strength, "mol/kg", 0, mostStrength, rangeSource)
}
