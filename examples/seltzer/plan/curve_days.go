package plan

import (
	"math"
	"time"

	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

var daysAfter = Axis{"time after pitching", "days"}

// bandHolds says what the bands of a curve over the days are.
const bandHolds = "nine in ten, half of them in the darker band"

// dayCurves are the gravity over the days, with its bands and what was read, and the gas and
// the heat of each hour with their peaks; none where no pace is known and nothing was read.
func (m *maker) dayCurves(along []AcidityPoint) ([]Curve, error) {
	s := m.plan.State
	g := Curve{Title: "Gravity over the days", X: daysAfter, Y: Axis{"gravity", "20/20 °C"}, Limit: &m.plan.Gravity.Floor, LimitName: "dry floor"}
	if s != nil {
		g.Title, g.Limit = "Gravity as read", &s.Floor
		if s.Original > 0 {
			g.Marks = append(g.Marks, [2]float64{0, s.Original})
		}
		for _, p := range s.Points {
			g.Marks = append(g.Marks, [2]float64{inDays(time.Duration(p.After)), p.Gravity})
		}
	}
	if m.plan.Forecast == nil {
		if g.Points = g.Marks; len(g.Points) < 2 {
			return nil, nil
		}
		return []Curve{g}, nil
	}
	fit, err := m.fit(s != nil && s.State != Doubtful)
	if err != nil {
		return nil, err
	}
	if s != nil {
		g.Title += ", and as foreseen with it"
	}
	g.BandName = bandHolds
	gas := Curve{Title: "Gas in an hour", X: daysAfter, Y: Axis{"CO2", "g/h"}, AtName: "peak", BandName: bandHolds}
	heat := Curve{Title: "Heat in an hour", X: daysAfter, Y: Axis{"heat", "W"}, AtName: "peak", BandName: bandHolds}
	last, steps := m.lastDay(), 2*curveSteps
	grams := 1000 * m.gas
	watts, err := m.wattsOfAll()
	if err != nil {
		return nil, err
	}
	for i := range steps + 1 {
		at := time.Duration(float64(last) * float64(i) / float64(steps))
		x := inDays(at)
		used := fit.Used(at)
		g.Points = append(g.Points, [2]float64{x, m.gravityAlong(along, used.Median)})
		g.LowerUpper = append(g.LowerUpper, [3]float64{x, m.gravityAlong(along, used.High90), m.gravityAlong(along, used.Low90)})
		g.Inner = append(g.Inner, [3]float64{x, m.gravityAlong(along, used.High50), m.gravityAlong(along, used.Low50)})
		hour := fit.InAnHour(at)
		gas.hourly(x, hour, grams)
		heat.hourly(x, hour, watts)
	}
	gas.topped()
	heat.topped()
	return []Curve{g, gas, heat}, nil
}

func inDays(t time.Duration) float64 { return t.Hours() / 24 }

// hourly adds a point, with its bands, of what a share of the sugar in an hour comes to.
func (c *Curve) hourly(x float64, hour kinetics.Band, all float64) {
	of := func(s units.Share) float64 { return all * s.In(units.Fraction) }
	c.Points = append(c.Points, [2]float64{x, of(hour.Median)})
	c.LowerUpper = append(c.LowerUpper, [3]float64{x, of(hour.Low90), of(hour.High90)})
	c.Inner = append(c.Inner, [3]float64{x, of(hour.Low50), of(hour.High50)})
}

// topped marks the highest point.
func (c *Curve) topped() {
	top := c.Points[0]
	for _, p := range c.Points {
		if p[1] > top[1] {
			top = p
		}
	}
	c.At = &top
}

// lastDay is how far the curves over the days go: until nine in ten are dry, and past what was
// read.
func (m *maker) lastDay() time.Duration {
	last := time.Duration(m.plan.Forecast.Dry.High90)
	if last == 0 {
		last = 3 * 7 * day
	}
	if s := m.plan.State; s != nil && len(s.Points) > 0 {
		last = max(last, time.Duration(s.Points[len(s.Points)-1].After)*11/10)
	}
	return min(last, mostDays*day)
}

// wattsOfAll is the heat of all the sugar as if it went in an hour.
func (m *maker) wattsOfAll() (float64, error) {
	_, heat, err := m.hourly(units.Percent.Of(100))
	return heat.In(units.Watt), err
}

// gravityAlong is the gravity when a share is used, between the points of the course; with
// readings by their wash.
func (m *maker) gravityAlong(along []AcidityPoint, used units.Share) float64 {
	if s := m.plan.State; s != nil && s.Floor > 0 {
		return m.gravityOf(used.In(units.Percent))
	}
	x := used.In(units.Fraction) * float64(len(along)-1)
	i := min(int(x), len(along)-2)
	part := math.Min(x-float64(i), 1)
	return along[i].Gravity + part*(along[i+1].Gravity-along[i].Gravity)
}
