package plan

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A Curve is a relation to draw, in metric units: y against x, with the point that
// the plan uses and a limit, if there is one.
type Curve struct {
	Title      string
	Held       *units.Temperature // at which it holds, if at one
	X, Y       Axis
	Points     [][2]float64
	At         *[2]float64 // what the plan uses
	AtName     string
	AtWarmth   *units.Temperature // of At, if its name has one
	Limit      *float64           // a horizontal line
	LimitName  string
	LowerUpper [][3]float64 // x, low, high: a band around the curve, or nil
	Inner      [][3]float64 // a narrower band inside it, or nil
	BandName   string       // what the bands hold
	Marks      [][2]float64 // what was read, or nil
}

// Axis is what an axis of a curve is, and its unit, "" for a number.
type Axis struct{ Name, Unit string }

// String is the axis as it is written: "gauge pressure, bar".
func (a Axis) String() string {
	if a.Unit == "" {
		return a.Name
	}
	return a.Name + ", " + a.Unit
}

const curveSteps = 24

// MakeWithCurves plans a batch, and draws what a sheet shows of it: pH over the sugar
// used where it is foreseen, gravity and strength, the gravity as read over the days, gas in the kegs over pressure, pressure of the bottles
// over temperature.
func MakeWithCurves(req Request) (Plan, []Curve, error) {
	m, err := newMaker(req)
	if err != nil {
		return Plan{}, nil, err
	}
	var curves []Curve
	if m.recipe.base == nil {
		if curves, err = m.fermentCurves(); err != nil {
			return Plan{}, nil, err
		}
	}
	for i, r := range m.recipe.packs {
		k := m.batch.packed[i]
		var c Curve
		if r.Kind == keg {
			c, err = m.kegCurve(k, m.plan.Packs[i])
		} else {
			c, err = m.bottleCurve(m.poured.packs[i], m.plan.Packs[i])
		}
		if err != nil {
			return Plan{}, nil, err
		}
		curves = append(curves, c)
	}
	return m.plan, curves, nil
}

// fermentCurves are those of the ferment.
func (m *maker) fermentCurves() ([]Curve, error) {
	along, err := m.measureAlong(curveCourse)
	if err != nil {
		return nil, err
	}
	ph := make([]float64, len(along))
	if len(m.plan.Acidity.Points) > 0 {
		c := carried{state: m.brewed.unstaged, unknowns: m.brewed.unknowns}
		if err := m.reader(curveCourse).course(&c, ph); err != nil {
			return nil, err
		}
	}
	for i := range along {
		p := &along[i]
		p.PH = ph[i]
		of := func(end func(AcidityPoint) float64) float64 { return onCourse(m.plan.Acidity.Points, p.Used, end) }
		if len(m.plan.Acidity.Points) > 0 {
			p.Low = p.PH - of(func(p AcidityPoint) float64 { return p.PH - p.Low })
			p.High = p.PH + of(func(p AcidityPoint) float64 { return p.High - p.PH })
		}
	}
	curves := m.gravityCurves(along)
	if m.plan.Acidity.Unforeseen == "" {
		curves = append(curves, m.acidityCurve(along))
	}
	days, err := m.dayCurves(along)
	if err != nil {
		return nil, err
	}
	return append(days, curves...), nil
}

var sugarUsed = Axis{"sugar used", "%"}

func (m *maker) gravityCurves(along []AcidityPoint) []Curve {
	g := Curve{Title: "Gravity against sugar used", X: sugarUsed, Y: Axis{"gravity", "20/20 °C"}, Limit: new(m.plan.Gravity.Floor), LimitName: m.floorName()}
	s := Curve{Title: "Strength against sugar used", X: sugarUsed, Y: Axis{"strength", "% vol"}}
	for _, p := range along {
		used := p.Used.In(units.Percent)
		g.Points = append(g.Points, [2]float64{used, p.Gravity})
		s.Points = append(s.Points, [2]float64{used, p.Strength.In(units.PercentVolume)})
	}
	return []Curve{g, s}
}

func (m *maker) acidityCurve(along []AcidityPoint) Curve {
	c := Curve{Title: "pH against sugar used", X: sugarUsed, Y: Axis{Name: "pH"}}
	for _, p := range along {
		used := p.Used.In(units.Percent)
		c.Points = append(c.Points, [2]float64{used, p.PH})
		c.LowerUpper = append(c.LowerUpper, [3]float64{used, p.Low, p.High})
	}
	if f := m.plan.Acidity.Floor; f > 0 {
		c.Limit, c.LimitName = &f, "floor"
	}
	return c
}

// kegCurve is the content at rest over the gauge pressure, at the keg's temperature.
func (m *maker) kegCurve(k packed, p PackPlan) (Curve, error) {
	c := Curve{Title: "Gas in the kegs", Held: &p.Temperature, X: Axis{"gauge pressure here", "bar"}, Y: Axis{"CO2", "volumes"}}
	if bar := p.Gauge.In(units.BarGauge); bar >= 0 {
		c.At, c.AtName = &[2]float64{bar, p.Volumes.In(units.VolumesCO2)}, "set point"
	}
	liquid, err := carbonation.NewLiquid(k.drink)
	if err != nil {
		return c, err
	}
	most := max(1, 1.6*p.Gauge.In(units.BarGauge))
	for i := range curveSteps + 1 {
		bar := most * float64(i) / curveSteps
		total, err := m.air.Absolute(units.BarGauge.Of(checked.Number(bar)))
		if err != nil {
			return c, err
		}
		content, err := liquid.Content(total, p.Temperature)
		if err != nil {
			return c, err
		}
		c.Points = append(c.Points, [2]float64{bar, carbonation.RealVolume.Volumes(content).In(units.VolumesCO2)})
	}
	return c, nil
}

// bottleCurve is the pressure over the temperature, with the rating.
func (m *maker) bottleCurve(f poured, p PackPlan) (Curve, error) {
	rating := p.Rating.In(units.BarGauge)
	c := Curve{
		Title: "Pressure of the bottles", X: Axis{"temperature", "°C"}, Y: Axis{"gauge pressure", "bar"},
		At:     &[2]float64{p.Bottle.Store.In(units.Celsius), p.Bottle.StoreGauge.In(units.BarGauge)},
		AtName: "stored", AtWarmth: &p.Bottle.Store,
		Limit: &rating, LimitName: "rating given",
	}
	f.state = f.stored
	least, most := 0.0, max(40, p.Bottle.Store.In(units.Celsius)+5)
	for i := range curveSteps + 1 {
		t := least + (most-least)*float64(i)/curveSteps
		if _, err := f.do(m.temper(f.state.Temperature(), units.Celsius.Of(checked.Number(t)))); err != nil {
			return c, err
		}
		state, err := f.meter.Pack(&f.state, p.Rating)
		if err != nil {
			return c, err
		}
		if state.AtLeast {
			break // beyond what is computed
		}
		c.Points = append(c.Points, [2]float64{t, state.Gauge.In(units.BarGauge)})
	}
	return c, nil
}
