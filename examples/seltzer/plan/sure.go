package plan

import (
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
)

// doubt is the standard uncertainty of the strength of the base, as a part of it. The batch is carried to
// its dry base with the usual unknowns, and once more with each of them off by its deviation; what that
// moves adds in squares. It is the list that [Draw] draws, to first order.
//
//   - Source: JCGM 100:2008 (GUM), eq. 10, with differences for the derivatives (5.1.3, note 2).
func (m *maker) doubt() (float64, error) {
	base, err := m.baseWalk()
	if err != nil {
		return 0, err
	}
	for i, st := range base.steps {
		if st.Kind == forward.Ferment {
			base.steps = base.steps[:i+1]
			break
		}
	}
	end := func(steps []forward.Step, s forward.State, u *forward.Unknowns) (float64, error) {
		if base.states, _, err = forward.Walk(base.states[:0], steps, s, u, &base.like); err != nil {
			return 0, err
		}
		c, err := base.end().Strength()
		return c.In(units.PercentVolume), err
	}
	usual := forward.Usual()
	usual.Chalk = 0 // nine tenths of the work of a walk, and no ethanol comes from it
	was, err := end(base.steps, forward.State{}, &usual)
	if err != nil {
		return 0, err
	}
	usually := base.states
	base.states = make([]forward.State, 0, len(base.steps))
	sum := 0.0
	for _, k := range m.known() {
		first := slices.IndexFunc(base.steps, func(st forward.Step) bool { return k.Moves(st.Kind) })
		u := usual
		of := k.In(&u)
		if first < 0 || of == &u.Chalk {
			continue
		}
		var from forward.State // before the first step that it moves
		if first > 0 {
			from = usually[first-1]
		}
		*of += k.Deviation()
		is, err := end(base.steps[first:], from, &u)
		if err != nil {
			return 0, err
		}
		sum += (is/was - 1) * (is/was - 1)
	}
	return math.Sqrt(sum), nil
}
