package batch

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// flavour adds a volume, measured at 20 °C, of a flavouring that brings alcohol and sugar.
//
//   - Source: [finish.Flavouring.Liquid].
func (j *job) flavour(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	v := st.Volume.In(units.Litre)
	if err := limit.Check(do, "volume of the flavouring", v, "L", 0, 1e9, aStep); err != nil {
		return err
	}
	if v == 0 {
		return nil
	}
	litre, err := flavouring(st.Strength, st.Sugar)
	if err != nil {
		return err
	}
	for _, c := range [...]Component{Water, Ethanol, Sucrose} {
		j.bring(c, v*litre[c])
	}
	return nil
}
