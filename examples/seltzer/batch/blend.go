package batch

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// blend adds a volume of another liquid, by its level, or all of it. The warmth is shared by
// mass.
func (j *job) blend(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	if st.With == nil {
		return &units.StateError{Func: do, What: "blend", Why: "has no other liquid"}
	}
	part := 1.0
	if !st.Volume.IsZero() {
		whole, err := st.With.Volume(at20)
		if err != nil {
			return err
		}
		part = st.Volume.In(units.Litre) / whole.In(units.Litre)
		if err := limit.Check(do, "volume of the other liquid", st.Volume.In(units.Litre), "L", 0, whole.In(units.Litre), "what there is of it"); err != nil {
			return err
		}
		part *= 1 + j.u.Level/100
	}
	have, more := j.s.amount.grams(), part*st.With.amount.grams()
	for c, n := range &st.With.amount {
		if n != 0 {
			j.bring(Component(c), part*n)
		}
	}
	if have == 0 {
		j.s.t = st.With.t
	} else if more > 0 {
		t := j.s.t.In(celsius)
		j.s.t = degrees(t + more/(have+more)*(st.With.t.In(celsius)-t)) // as warm as both, to the bit, where they are alike
	}
	return nil
}
