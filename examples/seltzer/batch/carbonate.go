package batch

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// carbonate brings the liquid to rest under CO2 at a gauge pressure; above what it holds there, its
// gas leaves.
//
//   - Source: [carbonation.Liquid.Content].
func (j *job) carbonate(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	total := units.Kilopascal.Of(checked.Number(st.place().In(units.Kilopascal) + st.Gauge.In(units.KilopascalGauge) + j.u.Gauge))
	rest, err := j.atRest(total, degrees(j.s.t.In(celsius)+j.u.Thermometer))
	if err != nil {
		return err
	}
	j.exchange(CarbonDioxide, rest)
	j.s.above.Pressure, j.s.above.Gas = total, true
	return nil
}
