package water

import (
	"cmp"
	"math"

	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Series finds the equilibria of waters that resemble one another, one after another, in
// about half the time that each takes alone: the points of a curve, the tries of a search.
// Each search begins where the last one ended. The results are those of the methods of
// [Profile] that have the same names, to 1e-7 in pH, and so are the errors, sources and
// ranges; after an error the next search begins anew. The zero value is ready; one goroutine may
// use it at a time.
type Series struct{ last Equilibrium }

// Closed is [Profile.Closed] of p.
func (r *Series) Closed(p Profile, carbon units.MolarConcentration) (Equilibrium, error) {
	if err := p.enclose(closedName, carbon); err != nil {
		return r.anew(err)
	}
	return r.anew(r.last.closed(closedName, &p))
}

// Under is [Profile.Under] of p.
func (r *Series) Under(p Profile, co2 units.AbsolutePressure) (Equilibrium, error) {
	return r.anew(r.last.under(underName, &p, co2))
}

// AlkalinityAt is [Profile.AlkalinityAt] of p.
func (r *Series) AlkalinityAt(p Profile, ph float64, co2 units.AbsolutePressure) (units.CalciumCarbonate, error) {
	alk, err := r.last.alkalinityAt(&p, ph, co2)
	if err != nil {
		r.last = Equilibrium{}
	}
	return alk, err
}

// anew returns the state, and forgets it where it is none.
func (r *Series) anew(err error) (Equilibrium, error) {
	if err != nil {
		r.last = Equilibrium{}
	}
	return r.last, err
}

// follow writes a water in the place of the one that e holds, with the constants,
// coefficients and concentrations to begin with: those of the last water where it came to
// rest at the same temperature with all that this one holds. A pH of zero is not known.
func (e *Equilibrium) follow(p *Profile, ph float64) {
	s := &e.s
	t := e.water.t
	e.water, s.totals = *p, totals{}
	p.fillSolution(s)
	if t != p.t || !s.served() {
		*s = solution{totals: s.totals}
		s.constantsAt(p.t)
		s.begin(cmp.Or(ph, p.start()))
		return
	}
	// Free is at most all there is; the rest follows from these in the first round.
	s.fca, s.fmg, s.fna = min(s.fca, s.ca), min(s.fmg, s.mg), min(s.fna, s.na)
	s.fk, s.fnh4 = min(s.fk, s.kk), min(s.fnh4, s.nh4)
	s.fso4, s.fpo4 = min(s.fso4, s.so4), min(s.fpo4, s.po4)
	if ph != 0 {
		s.h = numeric.Exp(-math.Ln10 * ph)
	}
}

// served reports whether the constants are there, and those of everything in the water.
func (s *solution) served() bool {
	c := &s.std
	for i, n := range s.acid {
		if lacks(n, c.acid[i][0]) {
			return false
		}
	}
	return c.h > 0 && !lacks(s.ca, c.caHCO3) && !lacks(s.mg, c.mgHCO3) && !lacks(s.nh4, c.nh3) &&
		!lacks(s.so4, c.hso4) && !lacks(s.po4, c.hp[0])
}

// lacks reports whether a total has no product of constants.
func lacks(total, product float64) bool { return total > 0 && product == 0 }
