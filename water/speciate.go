package water

import "math"

// solution is a water in moles a kilogram of water, with the state of its
// equilibrium. It holds no pointers: it lives on the stack.
type solution struct {
	totals

	a, b, henry, water float64               // constants at the temperature
	serves             uint32                // the parts whose species have constants
	live               [speciesCount]uint8   // the species made of them, by anion
	spans              [mostParts]span       // those of an anion in live
	anions             [anionCount + 1]uint8 // the anions among them, nothing first
	lives, anionLives  int
	k                  [speciesCount]float64 // constants of the species
	g                  coefficients
	std                [speciesCount]float64 // the species for each free part, at an activity of H+ of 1

	// at the pH
	hydrogen, oh float64    // concentrations of H+ and OH-
	power        [8]float64 // of the activity of H+, from -1

	// the state
	h            float64            // activity
	free         [mostParts]float64 // free parts; of nothing, 1
	strength     float64            // that the coefficients are of
	before, move float64            // the strength before, and how far it was from that of its state
}

// span is a part of a list.
type span struct{ first, end uint8 }

// totals are what is given.
type totals struct {
	total         [mostParts]float64 // of carbonate: the inorganic carbon
	inertStrength float64            // ½Σ m z² of the ions that react with nothing
	inertCharge   float64            // their charge
	alk, fugacity float64            // two of these, the carbon and the pH make a state
	unreported    float64            // charge of the report that its ions do not balance
	ethanol       float64            // % vol
}

const (
	mostStrength = 0.5 // mol/kg, Davies
	mostRounds   = 100 // of the quick ways; a drinking water needs ten or twenty
)

// always are the parts that are served in any water: a titrant brings sodium.
const always = 1<<nothing | 1<<partNa | 1<<partK | 1<<partCO3

// needs returns the parts that the water holds.
func (t *totals) needs() uint32 {
	need := uint32(always)
	for c := range partCount {
		if t.total[c] > 0 {
			need |= 1 << c
		}
	}
	return need
}

// constantsAt fills the constants that the solution needs.
func (s *solution) constantsAt(celsius float64) {
	w := warm(celsius)
	s.a, s.b = debyeHuckel(celsius, &w)
	s.henry, s.water = fitHenry.at(&w), fitWater.at(&w)
	s.serves, s.lives, s.anionLives = s.needs(), 0, 0
	for i := range plan.rows {
		rows := &plan.rows[i]
		if s.serves>>rows.anion&1 == 0 {
			continue
		}
		s.anions[s.anionLives] = uint8(rows.anion)
		s.anionLives++
		first := s.lives
		for _, sp := range plan.order[rows.first:rows.end] {
			f := &plan.facts[sp]
			if s.serves>>f.metal&1 == 0 {
				continue
			}
			s.live[s.lives] = sp
			s.lives++
			s.k[sp] = power(speciesTable[sp].k.log10(&w) + byEthanol[sp]*s.ethanol)
		}
		s.spans[rows.anion] = span{uint8(first), uint8(s.lives)}
	}
}

// made are the species that are served.
func (s *solution) made() []uint8 { return s.live[:s.lives] }

// madeOf are those of an anion, or of nothing.
func (s *solution) madeOf(anion component) []uint8 {
	i := s.spans[anion%mostParts]
	return s.live[i.first:i.end]
}

// standard sets the products of constants and coefficients for an activity of H+ of 1.
func (s *solution) standard() {
	g := &s.g
	for _, r := range s.made() {
		f := &plan.facts[r]
		s.std[r] = s.k[r] * g.of[f.ofMetal%mostGammas] * g.of[f.ofAnion%mostGammas] * g.over[f.of%mostGammas]
	}
}

// condition takes the standard products to the pH.
func (s *solution) condition() {
	h, over := s.h, 1/s.h
	s.hydrogen = h * s.g.over[gammaOf[hydrogen]]
	s.oh = s.water * over * s.g.over[gammaOf[hydroxideFree]]
	s.power = [8]float64{over, 1, h, h * h, h * h * h}
}

// Ways to set the carbonate.
const (
	byCarbon = iota // total inorganic carbon
	byGas           // fugacity of CO2
	byAlk           // alkalinity at a known pH
)

// gasCO3 is the free carbonate beside the gas, at the pH.
func (s *solution) gasCO3() float64 {
	return s.fugacity * s.henry / (s.k[CarbonDioxide] * s.h * s.h * s.g.of[gammaOf[CarbonateFree]])
}

// anionsFollow writes the anions that their totals leave beside the free metals.
func (s *solution) anionsFollow(way int) {
	for _, a := range s.anions[1:s.anionLives] {
		j := component(a) % mostParts
		switch {
		case j != partCO3 || way == byCarbon:
			s.free[j] = s.total[j] / s.held(j)
		case way == byGas:
			s.free[j] = s.gasCO3()
		}
	}
}

func change(old, new float64) float64 {
	if new == old {
		return 0
	}
	return math.Abs(new-old) / math.Abs(new)
}

// held returns the forms of an anion for each free one, the free one counted.
func (s *solution) held(j component) float64 {
	sum := 1.0
	for _, r := range s.madeOf(j) {
		f := &plan.facts[r]
		sum += s.std[r] * s.power[f.protons%8] * s.free[f.metal%mostParts]
	}
	return sum
}

// alkOf returns the alkalinity of an anion for each free one.
func (s *solution) alkOf(j component) float64 {
	sum := plan.free[j%mostParts].alk
	for _, r := range s.madeOf(j) {
		f := &plan.facts[r]
		sum += f.alk * s.std[r] * s.power[f.protons%8] * s.free[f.metal%mostParts]
	}
	return sum
}

// alkalinity returns that of the state: the protons that it takes up on the way to the forms
// that alkalinity counts from.
func (s *solution) alkalinity() float64 {
	alk := s.oh - s.hydrogen + s.alkOf(nothing)
	for _, a := range s.anions[1:s.anionLives] {
		alk += s.free[a%mostParts] * s.alkOf(component(a))
	}
	return alk
}
