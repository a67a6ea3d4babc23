package water

// rowFact is what the sums need to know of a species that is made of free parts.
type rowFact struct {
	metal, anion, protons uint8   // what it is made of; one more proton than it has, so that they count from zero
	of, ofMetal, ofAnion  uint8   // activity coefficients of it and of what it is made of
	alk, alk2, zz         float64 // protons that it takes up on the way to the form that alkalinity counts from; squares of that and of the charge
}

// speciesPlan is the table of the species, ready for the sums. H+, OH- and the free parts
// stand by themselves and are not made.
type speciesPlan struct {
	facts [speciesCount]rowFact
	made  [speciesCount]bool
	order [speciesCount]uint8 // what is made, by anion
	rows  [anionCount + 1]struct {
		anion      component
		first, end int // in order
	}
	free [mostParts]struct {
		of        uint8 // coefficient of the free part
		zz, alk   float64
		ion       Ion // of a profile, its mol/kg for a mg/L there (none of carbonate), and its charge as alkalinity counts it
		perMg     float64
		inProfile float64
	}
}

const mostParts = 32 // a power of two, so that an index needs no check

var plan = planOf(&speciesTable)

func planOf(table *[speciesCount]speciesRow) (p speciesPlan) {
	for i := range p.free {
		p.free[i].of = gammaUnity
	}
	for sp := range table {
		if r := &table[sp]; r.isPart() {
			c := r.metal + r.anion // one of them is nothing
			p.free[c].ion, p.free[c].inProfile = partTable[c].ion, float64(c.charge()+partTable[c].zero)
			if c != partCO3 {
				p.free[c].perMg = ionTable[partTable[c].ion].perMg
			}
			p.free[c].of, p.free[c].zz, p.free[c].alk = gammaOf[sp], float64(r.charge()*r.charge()), float64(partTable[c].zero)
		}
	}
	for sp := range table {
		r := &table[sp]
		if r.isPart() || r.metal == nothing && r.anion == nothing {
			continue
		}
		p.made[sp] = true
		alk := float64(partTable[r.anion].zero - r.protons)
		p.facts[sp] = rowFact{uint8(r.metal), uint8(r.anion), uint8(r.protons + 1),
			gammaOf[sp], p.free[r.metal].of, p.free[r.anion].of,
			alk, alk * alk, float64(r.charge() * r.charge())}
	}
	n := 0
	for i := range p.rows {
		row := &p.rows[i]
		if i > 0 {
			row.anion = partCO3 + component(i-1)
		}
		row.first = n
		for sp := range table {
			if p.made[sp] && table[sp].anion == row.anion {
				p.order[n] = uint8(sp)
				n++
			}
		}
		row.end = n
	}
	return p
}

// isPart reports whether it is a bare metal or anion.
func (r *speciesRow) isPart() bool {
	return r.protons == 0 && (r.metal == nothing) != (r.anion == nothing)
}

// charge returns the charge of the species.
func (r *speciesRow) charge() int { return r.metal.charge() + r.anion.charge() + r.protons }
