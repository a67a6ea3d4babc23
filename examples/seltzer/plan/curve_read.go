package plan

import (
	"errors"
	"time"

	"example.org/zymase/units"
)

// readCurve is the gravity over the days, as the readings have it and, where there is a
// schedule, as it is foreseen with them.
func (m *maker) readCurve(along []AcidityPoint) (Curve, error) {
	s := m.plan.State
	c := Curve{Title: "Gravity as read", X: "days after pitching", Y: "gravity, 20/20 °C", Limit: &s.Floor, LimitName: "dry floor"}
	days := func(t time.Duration) float64 { return t.Hours() / 24 }
	if s.Original > 0 {
		c.Marks = append(c.Marks, [2]float64{0, s.Original})
	}
	for _, p := range s.Points {
		c.Marks = append(c.Marks, [2]float64{days(time.Duration(p.After)), p.Gravity})
	}
	c.Points = c.Marks
	if m.req.Schedule == nil {
		return c, nil
	}
	when, err := m.timetable()
	if err != nil {
		return c, err
	}
	c.Title += ", and as foreseen with it"
	c.Points = nil
	for _, p := range along {
		if p.Used.In(units.Percent) > dry {
			continue // the last of the sugar takes for ever
		}
		at, err := when(p.Used)
		if _, outside := errors.AsType[*units.RangeError](err); outside {
			continue
		}
		if err != nil {
			return c, err
		}
		c.Points = append(c.Points, [2]float64{days(at.Median), p.Gravity})
	}
	return c, nil
}
