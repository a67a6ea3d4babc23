package carbonation

import (
	"math"

	"example.org/zymase/internal/chemistry"
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
	drink            Liquid
	at20             float64 // gas-free liquid, its volume at 20 °C
	liquid           float64 // the same at T
	capacity         float64 // of the vessel at T and at the pressure of the atmosphere
	stretch          float64 // growth of the vessel, share of its volume per kPa over that
	outside          float64 // the same pressure
	nitrogen, oxygen float64 // mol in all
	co2              float64 // g in all
	T                float64
}

// settled is how the gas of a vessel divides once it has come to rest.
type settled struct {
	co2, air, vapours, total float64 // pressures; the total is no more than the highest
	space                    float64 // head-space
	inLiquid, inSpace        float64 // g of CO2
	locked, beyond           bool
}

// A balance is a vessel whose gas is to be divided.
type balance struct {
	contents
	held    warmed
	vapours float64
	rt      float64
	nl, ol  float64 // mol of nitrogen and of oxygen that the drink takes for a kPa
}

func (c contents) balance() balance {
	u := 1 / c.T
	b := balance{contents: c, held: c.drink.warmed(c.T, u), vapours: c.drink.vapours(c.T, u), rt: chemistry.Gas * c.T}
	nl, ol := airHeld(c.T, u)
	b.nl, b.ol = c.at20*c.drink.water()*nl, c.at20*c.drink.water()*ol
	return b
}

// settle finds the head-space at which vessel, liquid and gas fit.
//
//   - Source: conservation of CO2, nitrogen and oxygen; Henry's law as [Liquid.Content],
//     for air as IAPWS G7-04; gas law with the virial series of [GasDensity] for CO2 at
//     its own partial pressure, ideal air; Dalton's law. The volume of dissolved air,
//     0.03 mL in a litre, is left out.
//
// The head-space is what is searched, as it has one solution at most and a bracket that
// holds for any vessel: less of it means more pressure of every gas, so a wider vessel
// and never less room than before, while the liquid that the gas swells gives back no
// more than a twentieth of the room that is taken away. At no head-space at all every
// gas is dissolved: what does not fit then is full of liquid.
func (b *balance) settle() settled {
	full := b.with(0, 0)
	locked := settled{locked: true, vapours: b.vapours}
	if b.room(full.total, b.co2) <= 0 {
		return locked
	}
	var p float64 // of CO2, where the next search for it begins
	space, err := numeric.Root(func(space float64) float64 {
		s := b.with(space, p)
		p = s.co2
		return b.room(s.total, s.inLiquid) - space
	}, 0, b.room(highest, 0), 0)
	s := b.with(space, p)
	if err != nil { // the room at no head-space was rounding
		return locked
	}
	return s
}

// brim is what the vessel holds at a total pressure. Under a vacuum it keeps its size: how a wall bends in is another law.
func (c contents) brim(total float64) float64 {
	return c.capacity * (1 + c.stretch*max(0, total-c.outside))
}

// room is what a liquid with that much CO2 in it leaves in the vessel at a total pressure.
func (b *balance) room(total, inLiquid float64) float64 {
	return b.brim(total) - b.liquid - inLiquid/chemistry.CO2*molarVolumeDissolved
}

// with is the state at a head-space, whether it fits the vessel or not. Its CO2 is found
// by Newton's method from a guess, by halves where that leaves the bracket: what is held
// rises with the pressure. Where the total would pass the highest pressure the state is
// beyond, and the pressures stop there.
func (b *balance) with(space, guess float64) settled {
	s := settled{space: space, vapours: b.vapours, air: airAbove(b.nitrogen, b.oxygen, space/b.rt, b.nl, b.ol)}
	rest := b.vapours + s.air
	low, high, tried := 0., float64(highest), false
	p := guess
	if !(p > low && p < high) { // as the laws are at no pressure
		kPa := b.at20*b.held.dissolved(1, min(rest, highest)) + chemistry.CO2*space/b.rt
		p = min(b.co2/kPa, high/2)
	}
	for range mostSteps {
		total, squeeze := p+rest, b.held.squeeze
		if total > highest {
			total, squeeze = highest, 0
		}
		s.co2, s.total = p, total
		s.inLiquid = b.at20 * b.held.dissolved(p, total)
		z := b.held.gas.Compressibility(p)
		s.inSpace = chemistry.CO2 * p * space / (b.rt * z)
		over := s.inLiquid + s.inSpace - b.co2
		if p == highest && over < 0 {
			break
		}
		if over < 0 {
			low = p
		} else {
			high = p
		}
		slope := s.inLiquid*(z+p*squeeze) + s.inSpace*(1-p*b.held.gas.Slope(p)/z) // times p
		next := p * (1 - over/slope)
		if math.Abs(next-p) <= settledWithin*p { // also where rounding alone would leave the bracket
			break
		}
		switch {
		case next >= high && high == highest && !tried:
			next, tried = highest, true
		case !(next > low && next < high):
			next = (low + high) / 2
		}
		p = next
	}
	s.beyond = s.co2+rest > highest
	return s
}

// upTo finds where between nothing and the most there can be a function passes zero.
func upTo(most float64, f func(float64) float64) (float64, error) {
	return numeric.Root(f, 0, most, 0)
}
