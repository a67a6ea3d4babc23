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

// dayCurves are the gravity over the days, with its bands and what was read, the strength, the sugar
// left and the pH likewise, and the gas and the heat of each hour with their peaks; none where no
// pace is known and nothing was read.
func (m *maker) dayCurves(along []AcidityPoint) ([]Curve, error) {
	s := m.plan.State
	g := Curve{Title: "Gravity over the days", X: daysAfter, Y: Axis{"gravity", "20/20 °C"}, Limit: new(m.plan.Gravity.Floor), LimitName: m.floorName()}
	if s != nil {
		g.Title, g.Limit = "Gravity as read", new(s.Floor)
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
	f, err := m.foretold(s != nil && s.State != Doubtful)
	if err != nil {
		return nil, err
	}
	if s != nil {
		g.Title += ", and as foreseen with it"
	}
	g.BandName = bandHolds
	gas := Curve{Title: "Gas in an hour", X: daysAfter, Y: Axis{"CO2", "g/h"}, AtName: "peak", BandName: bandHolds}
	heat := Curve{Title: "Heat in an hour", X: daysAfter, Y: Axis{"heat", "W"}, AtName: "peak", BandName: bandHolds}
	strength := Curve{Title: "Strength over the days", X: daysAfter, Y: Axis{"strength", "% vol"}, BandName: bandHolds}
	sugar := Curve{Title: "Sugar left over the days", X: daysAfter, Y: Axis{"sugar", "g/L"}, BandName: bandHolds}
	ph := Curve{Title: "pH over the days", X: daysAfter, Y: Axis{Name: "pH"}, BandName: bandHolds}
	if f := m.plan.Acidity.Floor; f > 0 {
		ph.Limit, ph.LimitName = &f, "floor"
	}
	part := 1.0 // of the plan's strength and sugar, by the wash as it was read
	if dry := along[len(along)-1].Strength.In(units.PercentVolume); s != nil && s.Floor > 0 && dry > 0 {
		part = s.Final.In(units.PercentVolume) / dry
	}
	strengthOf := func(p AcidityPoint) float64 { return part * p.Strength.In(units.PercentVolume) }
	whole := part * m.plan.Nutrient.Sugar.In(units.GramPerLitre)
	sugarOf := func(p AcidityPoint) float64 { return whole * (1 - p.Used.In(units.Fraction)) }
	last, steps := m.lastDay(), 2*curveSteps
	grams := 1000 * m.poured.gas
	watts, err := m.wattsOfAll()
	if err != nil {
		return nil, err
	}
	for i := range steps + 1 {
		at := time.Duration(float64(last) * float64(i) / float64(steps))
		x := inDays(at)
		used := f.fit.Used(at)
		g.Points = append(g.Points, [2]float64{x, m.gravityAlong(along, used.Median)})
		g.LowerUpper = append(g.LowerUpper, [3]float64{x, m.gravityAlong(along, used.High90), m.gravityAlong(along, used.Low90)})
		g.Inner = append(g.Inner, [3]float64{x, m.gravityAlong(along, used.High50), m.gravityAlong(along, used.Low50)})
		strength.follow(x, used, along, strengthOf, strengthOf, strengthOf)
		sugar.follow(x, used, along, sugarOf, sugarOf, sugarOf)
		ph.follow(x, used, along, func(p AcidityPoint) float64 { return p.PH }, func(p AcidityPoint) float64 { return p.Low },
			func(p AcidityPoint) float64 { return p.High })
		hour := f.fit.InAnHour(at)
		gas.hourly(x, hour, grams)
		heat.hourly(x, hour, watts)
	}
	gas.topped()
	heat.topped()
	curves := []Curve{g, strength, sugar}
	if m.plan.Acidity.Unforeseen == "" {
		curves = append(curves, ph)
	}
	return append(curves, gas, heat), nil
}

// follow adds a point, with its bands, of what the course gives for the sugar used: in the middle, and
// from the least to the most of where the sugar may be.
func (c *Curve) follow(x float64, used kinetics.Band, along []AcidityPoint, middle, least, most func(AcidityPoint) float64) {
	span := func(from, to units.Share) [3]float64 {
		low := math.Min(onCourse(along, from, least), onCourse(along, to, least))
		high := math.Max(onCourse(along, from, most), onCourse(along, to, most))
		for _, p := range along { // a feed moves the pH the other way for a while
			if p.Used.Compare(from) > 0 && p.Used.Compare(to) < 0 {
				low, high = math.Min(low, least(p)), math.Max(high, most(p))
			}
		}
		return [3]float64{x, low, high}
	}
	c.Points = append(c.Points, [2]float64{x, onCourse(along, used.Median, middle)})
	c.LowerUpper = append(c.LowerUpper, span(used.Low90, used.High90))
	c.Inner = append(c.Inner, span(used.Low50, used.High50))
}

// onCourse is a figure of the course when a share is used, on the line between two of its points.
func onCourse(along []AcidityPoint, used units.Share, figure func(AcidityPoint) float64) float64 {
	x := used.In(units.Fraction) * float64(len(along)-1)
	i := min(int(x), len(along)-2)
	part := math.Min(x-float64(i), 1)
	return figure(along[i]) + part*(figure(along[i+1])-figure(along[i]))
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
	return onCourse(along, used, func(p AcidityPoint) float64 { return p.Gravity })
}
