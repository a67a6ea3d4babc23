package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// Weighed is a [Recipe] in masses that a scale can weigh.
type Weighed struct {
	Recipe
	Masses []units.ExactMass // of the doses, exact multiples of the step
	Step   units.ExactMass
	Bound  units.MassConcentration // the deviation of the best continuous doses: none can be below it
	Proven bool                    // no other multiples of the step are nearer to the targets by more than 0.001 mg/L
	Tied   bool                    // others may be as near with fewer salts or less mass: the search for them stopped early
	Nodes  int                     // partial recipes looked at
}

// SolveSteps returns the doses in whole multiples of a scale's step that bring the
// water nearest to the targets, and proves that none are nearer by more than 0.001
// mg/L; equally near, the fewest salts and then the least mass are taken.
//
// The search stops after 250,000 partial recipes; Proven and Tied say what it had shown
// by then. Targets that are values need a few thousand; wide ranges with many salts
// leave many recipes equally near. Of random requests with up to eight salts and the
// scale at 0.1 g, 99 in 100 are proven.
//
// Errors are those of [Request.Solve], a [*units.RangeError] for a step that is not
// positive, and an [*UnreachableError] where the limits leave no multiple of it.
//
//   - Source: closest-point search in a lattice, C. P. Schnorr and M. Euchner,
//     Mathematical Programming 66 (1994) 181, inside the bounds; the slope of the
//     continuous optimum where a bound holds it. Where that does not end, in a basis
//     reduced by A. K. Lenstra, H. W. Lenstra, L. Lovász, Mathematische Annalen 261
//     (1982) 515.
func (r Request) SolveSteps(step units.ExactMass) (Weighed, error) {
	const fn = "water.Request.SolveSteps"
	g := step.Quantity().In(units.Gram)
	if err := limit.Check(fn, "step of the scale", g, "g", 1e-6, 1e6, "a step to weigh in"); err != nil {
		return Weighed{}, err
	}
	s, err := r.solved(fn)
	if err != nil {
		return Weighed{}, err
	}
	l := newLattice(s, g)
	if err := l.search(fn); err != nil {
		return Weighed{}, err
	}
	var doses []material.Dose
	out := Weighed{Step: step, Bound: milligrams(math.Sqrt(l.floor)), Nodes: l.nodes}
	out.Tied, out.Proven = l.tied, l.proven
	for j, n := range l.best {
		if n > 0 {
			m, err := step.Unit().Exact(step.Decimal().Mul(decimal.NewFromInt(int64(n))))
			if err != nil {
				return Weighed{}, limit.Named("water.Request.SolveSteps", err)
			}
			out.Masses = append(out.Masses, m)
			doses = append(doses, s.salts[j].Salt.Dose(m.Quantity()))
		}
	}
	out.Recipe, err = r.recipe(doses)
	return out, limit.Named("water.Request.SolveSteps", err)
}
