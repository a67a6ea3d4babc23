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
	hydrogen, oh float64              // concentrations of H+ and OH-
	power        [8]float64           // of the activity of H+, from -1
	pairs        [mostAnions]pairSums // by slotOf an anion

	// the state
	h            float64            // activity
	free         [mostParts]float64 // free parts; of nothing, 1
	share        [mostParts]float64 // of the total that is free
	strength     float64            // that the coefficients are of
	before, move float64            // the strength before, and how far it was from that of its state
}

// pairSums are the species of an anion for each free one and each free metal, nothing first.
type pairSums [metalCount + 1]pairSum

// pairSum is a sum of species, with those of their alkalinity, of its square and of z².
type pairSum struct{ all, alk, alk2, zz float64 }

const mostAnions = 16 // a power of two

// slotOf is the place of an anion, or of nothing, in a list of mostAnions.
func slotOf(anion component) uint8 {
	if anion == nothing {
		return 0
	}
	return uint8(anion-partCO3+1) % mostAnions
}

// beside returns the sums beside the free metals.
func (p *pairSums) beside(free *[mostParts]float64) pairSum {
	sum := p[0]
	for i := 1; i <= metalCount; i++ {
		m, n := &p[i], free[i]
		sum.all += m.all * n
		sum.alk += m.alk * n
		sum.alk2 += m.alk2 * n
		sum.zz += m.zz * n
	}
	return sum
}

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
		for _, sp := range plan.order[rows.first:rows.end] {
			f := &plan.facts[sp]
			if s.serves>>f.metal&1 == 0 {
				continue
			}
			s.live[s.lives] = sp
			s.lives++
			s.k[sp] = power(speciesTable[sp].k.log10(&w) + byEthanol[sp]*s.ethanol)
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
	s.hydrogen = h * s.g.over[gammaOf[hydrogen]]
	s.oh = s.water * over * s.g.over[gammaOf[hydroxideFree]]
	s.power = [8]float64{over, 1, h, h * h, h * h * h}
	for _, a := range s.anions[:s.anionLives] {
		s.pairs[slotOf(component(a))] = pairSums{}
	}
	for _, r := range s.made() {
		f := &plan.facts[r]
		c := s.std[r] * s.power[f.protons%8]
		p := &s.pairs[f.slot%mostAnions]
		i := f.metal % 8
		if i > uint8(metalCount) {
			continue // never; the compiler learns it
		}
		p[i].all += c
		p[i].alk += f.alk * c
		p[i].alk2 += f.alk2 * c
		p[i].zz += f.zz * c
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
		held := s.held(component(j))
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
		s.free[partCO3] = max(0, old+(s.alk-s.alkalinity())/s.alkOf(partCO3))
	}
	bound := [metalCount + 1]float64{1, 1, 1, 1, 1, 1}
	for _, a := range s.anions[:s.anionLives] {
		p := &s.pairs[slotOf(component(a))]
		n := s.free[a%mostParts]
		for i := 1; i <= metalCount; i++ {
			bound[i] += p[i].all * n
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
func (s *solution) held(j component) float64 {
	p, free := &s.pairs[slotOf(j)], &s.free
	return 1 + p[0].all + p[1].all*free[1] + p[2].all*free[2] + p[3].all*free[3] + p[4].all*free[4] + p[5].all*free[5]
}

// alkOf returns the alkalinity of an anion for each free one.
func (s *solution) alkOf(j component) float64 {
	p, free := &s.pairs[slotOf(j)], &s.free
	return plan.free[j%mostParts].alk + p[0].alk + p[1].alk*free[1] + p[2].alk*free[2] + p[3].alk*free[3] + p[4].alk*free[4] + p[5].alk*free[5]
}

// sums are what a state holds.
type sums struct {
	alk      float64 // protons that it takes up on the way to the forms that alkalinity counts from
	slope    float64 // of alk by -ln h, the totals of metals and anions kept (carbonate's only in a closed water)
	capacity float64 // that slope beside free metals as they are
	strength float64 // ½Σ m z²
}

// sums adds up the state. In the slope each metal follows by itself, beside the others as
// they are.
func (s *solution) sums(way int) (t sums) {
	none := &s.pairs[0] // hydroxides and ammonia
	sum := none.beside(&s.free)
	t.alk = s.oh - s.hydrogen + sum.alk
	t.capacity = s.oh + s.hydrogen + sum.alk2
	zz := s.hydrogen + s.oh + sum.zz
	run := [metalCount + 1]float64{0, none[1].alk, none[2].alk, none[3].alk, none[4].alk, none[5].alk} // of alk by each free metal
	for _, a := range s.anions[1:s.anionLives] {
		j := component(a) % mostParts
		n := s.free[j]
		if n == 0 {
			continue
		}
		p, own := &s.pairs[slotOf(j)], &plan.free[j]
		sum := p.beside(&s.free)
		one, mean := own.alk+sum.alk, 0.0
		t.alk += one * n
		t.capacity += (own.alk*own.alk + sum.alk2) * n
		zz += (own.zz + sum.zz) * n
		if way != byGas || j != partCO3 {
			mean = one / (1 + sum.all)
			t.capacity -= mean * one * n
		}
		for i := 1; i <= metalCount; i++ {
			run[i] += n * (p[i].alk - mean*p[i].all)
		}
	}
	t.slope = t.capacity
	if nh3 := none[partNH4].alk * s.free[partNH4]; nh3 != 0 { // ammonium is no metal: its total is kept
		t.capacity -= nh3 * nh3 / s.total[partNH4]
	}
	for i := 1; i <= metalCount; i++ {
		n := s.free[i]
		zz += plan.free[i].zz * n
		if x := run[i] * n; x != 0 {
			t.slope -= x * x / s.total[i]
		}
	}
	t.strength = s.inertStrength + zz/2
	return t
}

// alkalinity returns that of the state.
func (s *solution) alkalinity() float64 {
	alk := s.oh - s.hydrogen + s.alkOf(nothing)
	for _, a := range s.anions[1:s.anionLives] {
		alk += s.free[a%mostParts] * s.alkOf(component(a))
	}
	return alk
}

// meanAlk returns the mean of the protons that an anion takes up, by its forms and pairs.
func (s *solution) meanAlk(j component) float64 { return s.alkOf(j) / s.held(j) }
