package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
)

// sure is the way to the state where the quick rounds do not settle: searches inside
// one another, each of which always ends. What is sought is x in low to high (the pH,
// the carbonate or the dose of an acid), which set writes; low is high where nothing is.
//
//   - At an x and given coefficients the balances have one solution, [solution.settle].
//   - The alkalinity of that solution less the one that is given rises with x: the x is
//     where they are the same, or the end that is nearer to it.
//   - A strength of zero is less than that of the state with the coefficients of zero.
//     Where the limit of the model is less too, with the coefficients of the limit, the
//     water is refused; otherwise the strength lies between.
func (s *solution) sure(fn string, way int, low, high float64, set func(x float64)) error {
	over := func(x float64) float64 {
		set(x)
		s.settle(way)
		return s.alkalinity() - s.alk
	}
	ahead := func(strength float64) float64 {
		set(high) // with none of an acid there would be no products for it
		s.g.at(strength, s.a, s.b)
		s.standard()
		s.condition()
		over(enclosed(over, low, high))
		var t sums
		s.sums(way, true, nil, &t)
		s.strength = t.strength
		return strength - s.strength
	}
	ahead(enclosed(ahead, 0, mostStrength))
	return s.inRange(fn)
}

// surePH is the sure way to the pH.
func (s *solution) surePH(fn string, way int) error {
	var last float64
	err := s.sure(fn, way, leastPH, mostPH, func(ph float64) {
		last = ph
		s.h = numeric.Exp(-math.Ln10 * ph)
		s.condition()
	})
	if err != nil {
		return err
	}
	return limit.Check(fn, "pH", last, "", leastPH+negligible, mostPH-negligible, rangeSource)
}

// sureAtPH is the sure way to the carbonate or the dose at the pH that h holds.
func (s *solution) sureAtPH(fn string, way int, dose *acidDose) error {
	switch {
	case dose != nil:
		return s.sure(fn, way, 0, beyond*mostAcid, func(x float64) { dose.set(s, x) })
	case way == byAlk:
		// x is CO2 and free HCO3-: with a pH never all of the carbon.
		return s.sure(fn, way, 0, beyond*mostCarbon*molal, func(x float64) { s.free[partCO3] = x / (s.of(BicarbonateFree) + s.of(CarbonDioxide)) })
	}
	var nothing float64
	return s.sure(fn, way, nothing, nothing, func(float64) {})
}
