package water

import "math"

// solution is a water in moles a kilogram of water, with the state of its
// equilibrium. It holds no pointers: it lives on the stack.
type solution struct {
	totals

	a, b, henry, water float64               // constants at the temperature
	serves             uint32                // the parts whose species have constants
	live               [speciesCount]uint8   // the species made of them
	anions             [anionCount + 1]uint8 // the anions among them, nothing first
	lives, anionLives  int
	k                  [speciesCount]float64 // constants of the species
	g                  coefficients
	std                [speciesCount]float64 // the species for each free part, at an activity of H+ of 1

	// at the pH
	hydrogen, oh float64             // concentrations of H+ and OH-
	power        [8]float64          // of the activity of H+, from -1
	pairs        [mostParts]pairSums // by anion

	// the state
	h              float64            // activity
	free           [mostParts]float64 // free parts; of nothing, 1
	share          [mostParts]float64 // of the total that is free
	strength, move float64            // move is how far it last was from where it stood
}

// pairSums are the species of an anion for each free one and each free metal (nothing
// first): their sum, the sum of their alkalinity, and that of its square.
type pairSums struct{ all, alk, alk2 [metalCount + 1]float64 }

// times returns a sum beside the free metals.
func times(sum *[metalCount + 1]float64, free *[mostParts]float64) float64 {
	return sum[0] + sum[1]*free[1] + sum[2]*free[2] + sum[3]*free[3] + sum[4]*free[4] + sum[5]*free[5]
}

// totals are what is given.
type totals struct {
	total         [mostParts]float64 // of carbonate: the inorganic carbon
	inertStrength float64            // ½Σ m z² of the ions that react with nothing
	inertCharge   float64            // their charge
	alk, fugacity float64            // two of these, the carbon and the pH make a state
	unreported    float64            // charge of the report that its ions do not balance
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
	s.serves, s.lives = s.needs(), 0
	for sp := range speciesTable {
		f := &plan.facts[sp]
		if plan.made[sp] && s.serves>>f.metal&1 != 0 && s.serves>>f.anion&1 != 0 {
			s.live[s.lives] = uint8(sp)
			s.lives++
			s.k[sp] = speciesTable[sp].k.at(&w)
		}
	}
	s.anions[0], s.anionLives = uint8(nothing), 1
	for j := partCO3; j < partCount; j++ {
		if s.serves>>j&1 != 0 {
			s.anions[s.anionLives] = uint8(j)
			s.anionLives++
		}
	}
}

// made are the species that are served.
func (s *solution) made() []uint8 { return s.live[:s.lives] }

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
	s.hydrogen = h * s.g.over[gammaOf[Hydrogen]]
	s.oh = s.water * over * s.g.over[gammaOf[HydroxideFree]]
	s.power = [8]float64{over, 1, h, h * h, h * h * h}
	for _, j := range s.anions[:s.anionLives] {
		s.pairs[j%mostParts] = pairSums{}
	}
	for _, r := range s.made() {
		f := &plan.facts[r]
		c := s.std[r] * s.power[f.protons%8]
		p := &s.pairs[f.anion%mostParts]
		i := f.metal % 8
		if i > uint8(metalCount) {
			continue // never; the compiler learns it
		}
		p.all[i] += c
		p.alk[i] += f.alk * c
		p.alk2[i] += f.alk2 * c
	}
}

// Ways to set the carbonate.
const (
	byCarbon = iota // total inorganic carbon
	byGas           // fugacity of CO2
	byAlk           // alkalinity at a known pH
)

// balance brings the free concentrations nearer to the mass balances, the metals
// after the anions, and returns the largest relative change.
func (s *solution) balance(way int) float64 {
	moved := 0.0
	old := s.free[partCO3]
	for _, a := range s.anions[1:s.anionLives] {
		j := a % mostParts
		held := 1 + times(&s.pairs[j].all, &s.free)
		if component(j) != partCO3 {
			// Shares, as an acid dose moves the totals themselves.
			share := 1 / held
			moved = max(moved, change(s.share[j], share))
			s.share[j] = share
			s.free[j] = s.total[j] * share
			continue
		}
		switch way {
		case byCarbon:
			s.free[j] = s.total[j] / held
		case byGas:
			s.free[j] = s.gasCO3()
		}
	}
	if way == byAlk {
		alk, _ := s.alkalinity(byAlk)
		s.free[partCO3] = max(0, old+(s.alk-alk)/s.alkPerCO3())
	}
	bound := [metalCount + 1]float64{1, 1, 1, 1, 1, 1}
	for _, a := range s.anions[:s.anionLives] {
		p := &s.pairs[a%mostParts].all
		n := s.free[a%mostParts]
		for i := 1; i <= metalCount; i++ {
			bound[i] += p[i] * n
		}
	}
	for i := 1; i <= metalCount; i++ {
		s.free[i] = s.total[i] / bound[i]
	}
	return max(moved, change(old, s.free[partCO3]))
}

// gasCO3 is the free carbonate beside the gas, at the pH.
func (s *solution) gasCO3() float64 {
	return s.fugacity * s.henry / (s.k[CarbonDioxide] * s.h * s.h * s.g.of[gammaOf[CarbonateFree]])
}

func change(old, new float64) float64 {
	if new == old {
		return 0
	}
	return math.Abs(new-old) / math.Abs(new)
}

// held returns the forms of an anion for each free one, the free one counted.
func (s *solution) held(j component) float64 { return 1 + times(&s.pairs[j].all, &s.free) }

// alkOf returns the alkalinity of an anion for each free one.
func (s *solution) alkOf(j component) float64 {
	return plan.free[j].alk + times(&s.pairs[j].alk, &s.free)
}

func (s *solution) carbonPerCO3() float64 { return s.held(partCO3) }
func (s *solution) alkPerCO3() float64    { return s.alkOf(partCO3) }

// alkalinity returns the protons that the state takes up on the way to the forms
// that alkalinity counts from, and its slope by -ln h with the free metals as they are
// and the totals of the anions and of ammonium kept (carbonate's only in a closed water).
func (s *solution) alkalinity(way int) (alk, slope float64) {
	// Of nothing: hydroxides and ammonia.
	alk = s.oh - s.hydrogen + times(&s.pairs[nothing].alk, &s.free)
	slope = s.oh + s.hydrogen + times(&s.pairs[nothing].alk2, &s.free)
	if nh3 := s.pairs[nothing].alk[partNH4] * s.free[partNH4]; nh3 > 0 {
		slope -= nh3 * nh3 / s.total[partNH4]
	}
	for _, a := range s.anions[1:s.anionLives] {
		j := a % mostParts
		n := s.free[j]
		if n == 0 {
			continue
		}
		p, own := &s.pairs[j], plan.free[j].alk
		one := own + times(&p.alk, &s.free)
		two := own*own + times(&p.alk2, &s.free)
		alk += one * n
		slope += two * n
		if way != byGas || component(j) != partCO3 {
			slope -= one * one * n / (1 + times(&p.all, &s.free))
		}
	}
	return alk, slope
}

// meanAlk returns the mean of the protons that an anion takes up, by its forms and pairs.
func (s *solution) meanAlk(j component) float64 { return s.alkOf(j) / s.held(j) }

// ionicStrength returns ½Σ m z² of the state.
func (s *solution) ionicStrength() float64 {
	sum := s.hydrogen + s.oh
	for c := partCa; c < partCount; c++ {
		sum += plan.free[c].zz * s.free[c]
	}
	for _, r := range s.made() {
		f := &plan.facts[r]
		sum += f.zz * s.std[r] * s.power[f.protons%8] * s.free[f.metal%mostParts] * s.free[f.anion%mostParts]
	}
	return s.inertStrength + sum/2
}
