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
	last, t := s.totals, e.water.t
	e.water, s.totals = *p, totals{}
	p.fillSolution(s)
	first := s.h == 0
	if !first && (t != p.t || !s.served()) {
		*s, first = solution{totals: s.totals}, true
	}
	if first {
		s.constantsAt(p.t)
		s.begin(cmp.Or(ph, p.start()))
		return
	}
	s.fca, s.fmg, s.fna = again(s.fca, last.ca, s.ca), again(s.fmg, last.mg, s.mg), again(s.fna, last.na, s.na)
	s.fk, s.fnh4 = again(s.fk, last.kk, s.kk), again(s.fnh4, last.nh4, s.nh4)
	s.fso4, s.fpo4 = again(s.fso4, last.so4, s.so4), again(s.fpo4, last.po4, s.po4)
	s.move = 0
	if ph != 0 {
		s.h = numeric.Exp(-math.Ln10 * ph)
	}
}

// again is the free part of a total, as large a share of it as of the last one.
func again(free, last, total float64) float64 {
	if last == 0 {
		return total
	}
	return free / last * total
}

// served reports whether the constants hold those of everything in the water.
func (s *solution) served() bool {
	c := &s.std
	for i, n := range s.acid {
		if n > 0 && c.acid[i][0] == 0 {
			return false
		}
	}
	return (s.ca == 0 || c.caHCO3 > 0) && (s.mg == 0 || c.mgHCO3 > 0) && (s.nh4 == 0 || c.nh3 > 0) &&
		(s.so4 == 0 || c.hso4 > 0) && (s.po4 == 0 || c.hp[0] > 0)
}
