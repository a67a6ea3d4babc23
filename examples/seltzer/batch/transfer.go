package batch

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// transfer racks the liquid off, and leaves a volume of it behind, with a share of the yeast that
// the rest would have carried along.
func (j *job) transfer(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	settled, err := share(st)
	if err != nil {
		return err
	}
	whole, err := j.s.Volume(at20)
	if err != nil {
		return err
	}
	v := st.Volume.In(units.Litre)
	if v > 0 || settled == 0 {
		if err := limit.Check(do, "volume left behind", v, "L", 0, whole.In(units.Litre), "what there is"); err != nil {
			return err
		}
	}
	if v > 0 {
		j.portion(v/whole.In(units.Litre), &j.left.Liquid)
	}
	j.settle(settled)
	return nil
}
