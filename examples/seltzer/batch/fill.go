package batch

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// fill takes what goes into one pack; the rest leaves as liquid. A pack may be filled partly.
func (j *job) fill(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	whole, err := j.s.Volume(j.s.t)
	if err != nil {
		return err
	}
	v, have := st.Volume.In(units.Litre), whole.In(units.Litre)
	if err := limit.Check(do, "volume of the filling", v, "L", 1e-3, have, "what there is"); err != nil {
		return err
	}
	if err := limit.Check(do, "capacity of the pack", st.Capacity.In(units.Litre), "L", v, 1e7, "no less than its filling"); err != nil {
		return err
	}
	if err := limit.Check(do, "stretch of the pack", st.Stretch.In(units.Percent), "% per bar", 0, 5, "a pack"); err != nil {
		return err
	}
	j.portion(1-v/have, &j.left.Liquid)
	j.s.above.Capacity, j.s.above.Stretch = st.Capacity, st.Stretch
	return nil
}
