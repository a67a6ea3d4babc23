package water

import (
	"math"

	"example.org/zymase/internal/limit"
)

// sure is the way to the state where the quick rounds do not settle: searches inside
// one another, each of which always ends. What is sought is x in low to high (the pH,
// the carbonate or the dose of an acid), which set writes; low is high where nothing is.
//
//   - At an x and given coefficients the balances have one solution, [solution.settle].
//   - The alkalinity of that solution less the one that is given rises with x: the x is
//     where they are the same, or the end that is nearer to it.
//   - The ionic strength of that state, from coefficients without any, is above zero.
//     Where it is above the limit of the model with the coefficients at that limit, the
//     water is refused; otherwise the two enclose the strength of the state.
func (s *solution) sure(fn string, way int, low, high float64, set func(x float64)) error {
	over := func(x float64) float64 {
		set(x)
		s.settle(way)
		alk, _ := s.alkalinity(way)
		return alk - s.alk
	}
	s.fso4, s.fpo4, s.co3 = 0, 0, 0
	lack := func(strength float64) float64 {
		set(high) // with none of an acid there would be no products for it
		s.strength = strength
		s.g.at(strength, s.k.a, s.k.b)
		s.standard()
		s.condition()
		x := low
		if below := over(low); below < 0 && low < high {
			x = high
			if above := over(high); above > 0 {
				x = enclosed(over, low, high, below, above)
			}
		}
		over(x)
		return strength - s.ionicStrength()
	}
	above := lack(mostStrength)
	if above < 0 {
		return limit.Check(fn, "ionic strength", mostStrength-above, "mol/kg", 0, mostStrength, rangeSource)
	}
	lack(enclosed(lack, 0, mostStrength, lack(0), above))
	return nil
}

// surePH is the sure way to the pH.
func (s *solution) surePH(fn string, way int) error {
	var last float64
	err := s.sure(fn, way, leastPH, mostPH, func(ph float64) {
		last = ph
		s.h = math.Exp(-math.Ln10 * ph)
		s.condition()
	})
	if err != nil {
		return err
	}
	return limit.Check(fn, "pH", last, "", leastPH+trifle, mostPH-trifle, rangeSource)
}

// sureAtPH is the sure way to the carbonate or the dose at the pH that h holds.
func (s *solution) sureAtPH(fn string, way int, dose *acidDose) error {
	switch {
	case dose != nil:
		return s.sure(fn, way, 0, beyond*mostAcid, func(x float64) { dose.set(s, x) })
	case way == byAlk:
		// x is the carbonate with its acids, its pairs apart.
		return s.sure(fn, way, 0, beyond*mostCarbon*molal, func(x float64) { s.co3 = x / (1 + s.c.hco3 + s.c.co2) })
	}
	return s.sure(fn, way, 0, 0, func(float64) {})
}
