package water

import (
	"cmp"
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Series finds the equilibria of waters that resemble one another, one after another, in
// about half the time that each takes alone: the points of a curve, the tries of a search.
// Each search begins where the last one ended. The results are those of the methods of
// [Profile] that have the same names, to 1e-7 in pH, and so are the errors, sources and
// ranges; after an error the next search starts from nothing. The zero value is ready; one goroutine may
// use it at a time.
type Series struct{ last Equilibrium }

// Closed is [Profile.Closed] of p.
func (r *Series) Closed(p Profile, carbon units.MolarConcentration) (Equilibrium, error) {
	const fn = "water.Series.Closed"
	if err := p.enclose(fn, carbon); err != nil {
		return r.orNone(err)
	}
	return r.orNone(r.last.closed(fn, &p))
}

// Under is [Profile.Under] of p.
func (r *Series) Under(p Profile, co2 units.AbsolutePressure) (Equilibrium, error) {
	return r.orNone(r.last.under("water.Series.Under", &p, co2))
}

// AlkalinityAt is [Profile.AlkalinityAt] of p.
func (r *Series) AlkalinityAt(p Profile, ph float64, co2 units.AbsolutePressure) (units.CalciumCarbonate, error) {
	alk, err := r.last.alkalinityAt(&p, ph, co2)
	if err != nil {
		r.last = Equilibrium{}
	}
	return alk, limit.Named("water.Series.AlkalinityAt", err)
}

// orNone returns the state, and forgets it where it is none.
func (r *Series) orNone(err error) (Equilibrium, error) {
	if err != nil {
		r.last = Equilibrium{}
	}
	return r.last, err
}

// follow writes a water in the place of the one that e holds, with the constants,
// coefficients and concentrations to begin with: those of the last water where that held all that
// this one holds, and settled at about the same temperature and strength. A pH of zero is not known.
func (e *Equilibrium) follow(p *Profile, ph float64) {
	s := &e.s
	same := e.water.t == p.t && e.water.ethanol == p.ethanol
	like := same || math.Abs(e.water.t-p.t) < likeTemperature && math.Abs(e.water.ethanol-p.ethanol) < likeEthanol
	e.water, s.totals = *p, totals{}
	p.fillSolution(s)
	if !like || !s.served() {
		if s.serves != 0 {
			*s = solution{totals: s.totals}
		}
		s.constantsAt(p.t)
		s.begin(cmp.Or(ph, p.start()))
		return
	}
	if !same {
		s.constantsAt(p.t)
		s.g.at(s.strength, s.a, s.b)
		s.standard()
	}
	s.before = s.strength
	// Free is at most all there is; the rest follows from these in the first round.
	for c := partCa; c < partCount; c++ {
		if c != partCO3 {
			s.free[c] = min(s.free[c], s.total[c])
			if c < metalsEnd && s.free[c] < hardlyAny*s.total[c] {
				s.free[c] = s.total[c]
			}
		}
	}
	if ph != 0 {
		s.h = numeric.Exp(-math.Ln10 * ph)
	}
}

// hardlyAny is the part of a metal that was free, below which the last water held none to speak of: a step from there is
// beyond a number.
const hardlyAny = 1e-6

// How near waters are for one to begin where the other ended: K and % vol.
const likeTemperature, likeEthanol = 5, 2

// served reports whether the constants are there, and those of everything in the water.
func (s *solution) served() bool { return s.serves != 0 && s.needs()&^s.serves == 0 }
