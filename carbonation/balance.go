package carbonation

import (
	"math"

	"example.org/zymase/internal/numeric"
)

// Iterations stop once a step is that small, a part of the value; they never come
// near the number of steps.
const settledWithin, mostSteps = 1e-14, 200

// rounding is by how much, a part of it, a value may pass an edge that it was
// computed at.
const rounding = 1e-9

// contents is what a closed vessel holds at one temperature, in L, kPa, K, mol
// and g.
type contents struct {
	drink    Liquid
	at20     float64 // gas-free liquid, its volume at 20 °C
	liquid   float64 // the same at T
	capacity float64 // of the vessel at T and at the pressure of the atmosphere
	stretch  float64 // growth of the vessel, share of its volume per kPa over that
	outside  float64 // the same pressure
	air      float64 // mol in the head-space
	co2      float64 // g in all
	T        float64
}

// settled is how the CO2 of a vessel divides once it has come to rest.
type settled struct {
	co2, air, vapours, total float64 // pressures
	space                    float64 // head-space
	inLiquid, inSpace        float64 // g of CO2
	locked, beyond           bool
}

// settle finds the pressure of CO2 at which what is dissolved and what is in the
// head-space add up to all there is.
//
//   - Source: conservation of CO2 and of air; Henry's law as [Liquid.Content]; gas
//     law with the virial series of [GasDensity] for CO2 at its own partial
//     pressure, ideal air; Dalton's law. Air that dissolves is left out, so that
//     the pressure is a little too high rather than too low.
func (c contents) settle() settled {
	u := 1 / c.T
	drink, vapours := c.drink.warmed(c.T, u), c.drink.vapours(c.T, u)
	// Head-space with all the gas dissolved: the smallest it can be.
	if c.capacity-c.liquid-c.co2/molarMassCO2*molarVolumeDissolved <= 0 {
		return settled{locked: true, vapours: vapours}
	}
	at := func(p float64) (s settled, ok bool) {
		s = settled{co2: p, vapours: vapours, total: p + vapours}
		for range mostSteps {
			s.inLiquid = c.at20 * drink.dissolved(p, s.total)
			s.space = c.capacity*(1+c.stretch*(s.total-c.outside)) - c.liquid - s.inLiquid/molarMassCO2*molarVolumeDissolved
			if s.space <= 0 {
				return s, false
			}
			s.air = c.air * gasConstant * c.T / s.space
			next := p + vapours + s.air
			if math.Abs(next-s.total) <= settledWithin*next {
				break
			}
			s.total = next
		}
		s.inSpace = molarMassCO2 * p * s.space / (gasConstant * c.T * drink.gas.compressibility(p))
		return s, true
	}
	excess := func(p float64) float64 {
		s, ok := at(p)
		if !ok { // more is dissolved than there is
			return c.co2
		}
		return s.inLiquid + s.inSpace - c.co2
	}
	// With all of it in the liquid the pressure would be the highest it can be.
	top, inRange := c.drink.pressureOf(c.T, u, c.co2/c.at20, vapours)
	if top *= 1 + rounding; !inRange {
		top = highest - vapours
	}
	if excess(top) < 0 {
		return settled{beyond: true, vapours: vapours}
	}
	p, err := upTo(top, excess)
	s, ok := at(p)
	s.beyond = err != nil || !ok || s.total > highest
	return s
}

// upTo finds where between nothing and the most there can be a function passes zero.
func upTo(most float64, f func(float64) float64) (float64, error) {
	return numeric.Root(f, 0, most, 0)
}
