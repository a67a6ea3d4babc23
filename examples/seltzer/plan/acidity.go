package plan

import (
	"errors"
	"fmt"
	"math"
	"strings"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// How finely the pH is followed: by thirds of the sugar in a plan, by twelfths in its
// curves, so that the stages of nutrient fall on steps.
const (
	courseSteps = 3
	curveCourse = 12
)

// acidity follows the pH of the ferment, and finds the buffer that holds a floor. Where the
// boil can drop chalk, the pH and the dose are those of the least alkalinity that it can
// leave, so that the floor holds; the other end stands beside.
func (m *maker) acidity() error {
	f, clear, err := m.ferment()
	if err != nil {
		return err
	}
	a := AcidityPlan{Unforeseen: m.unforeseen(), Points: []AcidityPoint{}}
	if a.Unforeseen != "" {
		m.plan.Acidity, m.course = a, f
		m.caution(a.Unforeseen)
		return nil
	}
	if b := m.req.Buffer; b != nil {
		salt, err := material.FindAmong(b.Salt, ferment.Buffers()...)
		if err != nil {
			return named("buffer.salt", b.Salt, err)
		}
		if a.EndUnbuffered, err = f.PH(units.Percent.Of(100)); err != nil {
			return err
		}
		a.Floor = b.Floor
		dose, err := f.BufferFor(salt, b.Floor)
		if err != nil {
			if r, ok := errors.AsType[*units.RangeError](err); ok && r.Quantity == "ionic strength" {
				return err
			}
			return &RequestError{Field: "buffer.floor_pH", Value: trim(b.Floor), Allowed: reason(err), Err: err}
		}
		mass, err := dose.Mass.Value.Round(m.req.Scales.Small, units.Up)
		if err != nil {
			return err
		}
		w := Weight{What: salt.String(), For: "fermenter, buffer", Mass: mass, Asked: dose.Mass.Value}
		a.Buffer = &w
		a.Low, a.High, a.Clear = dose.Mass.Low, dose.Mass.High, dose.Mass.Value
		if clear != nil {
			least, err := clear.BufferFor(salt, b.Floor)
			if err != nil {
				return err
			}
			a.Clear = least.Mass.Value
			clear.Buffer = salt.Dose(mass.Quantity())
		}
		f.Buffer = salt.Dose(mass.Quantity())
		if !mass.Decimal().IsZero() {
			m.plan.Weigh = append(m.plan.Weigh, w)
		}
		for _, c := range dose.Cautions {
			if m.brings.some && strings.HasPrefix(c.Code(), "taste_potassium") {
				continue // of sugar and water: wines and ciders hold a gram of it, and nobody tastes it out
			}
			m.caution(c.Text())
		}
	}
	course, err := f.Course(courseSteps)
	if err != nil {
		return err
	}
	if a.Points, err = m.widened(course); err != nil {
		return err
	}
	m.course = f
	start := a.Points[0].PH
	if clear != nil {
		for i := range a.Points {
			if a.Points[i].Clear, err = clear.PH(a.Points[i].Used); err != nil {
				return err
			}
		}
		start, a.EndClear = max(start, a.Points[0].Clear), a.Points[courseSteps].Clear
	}
	a.Halves = a.Buffer != nil && start > ferment.PitchPH().Value
	for _, c := range course.Cautions {
		if m.brings.some && c.Code() == mayFall && a.Points[courseSteps].PH > slowPH {
			continue // the floor of a sugar wash: juices are more sour from the start
		}
		m.caution(c.Text())
	}
	m.plan.Acidity = a
	m.chalk()
	return m.otherNeeds(f)
}

// muchChalk is a dose so far above that without chalk that neither should be added blind
// (common practice, no source).
const muchChalk = 1.5

// chalk cautions where the boil decides what buffer is right.
func (m *maker) chalk() {
	w, a := m.plan.Water.Boiled, m.plan.Acidity
	if a.EndClear == 0 {
		return
	}
	plain := func(c units.CalciumCarbonate) float64 { return c.In(units.MilligramPerLitreCaCO3) }
	text := fmt.Sprintf("The boil can drop up to %.1f g of chalk and leave anything from %.0f to %.0f mg/L as CaCO3 of alkalinity", w.Scale.In(units.Gram), plain(w.AlkalinityLow), plain(w.AlkalinityHigh))
	if b := a.Buffer; b != nil && b.Asked.In(units.Gram) > 0 {
		clear, dose := a.Clear.In(units.Gram), b.Asked.In(units.Gram)
		little, first := "none is needed", "add none at first, and any"
		if clear >= 0.05 { // a tenth of a gram is printed
			little, first = fmt.Sprintf("%.1f g would do", clear), fmt.Sprintf("dissolve the %.1f g first, and the rest", clear)
		}
		text += fmt.Sprintf(": the %s of %s are for the least; with nothing dropped %s, and the whole ends at pH %.1f", b.Mass, b.What, little, a.EndClear)
		if m.plan.Acidity.ByMeter = dose > muchChalk*clear; m.plan.Acidity.ByMeter {
			text += ". That is too wide to dose blind: " + first + " only by a meter when half of the sugar is used"
		}
	}
	m.caution(text + ". To be certain, measure the alkalinity after the boil, or treat the water after it; do not add before it what it takes out.")
}

func points(c ferment.Course) []AcidityPoint {
	out := make([]AcidityPoint, len(c.Points))
	for i, p := range c.Points {
		out[i] = AcidityPoint{
			Used: p.Used, PH: p.PH.Value, Low: p.PH.Low, High: p.PH.High,
			Gravity: p.Gravity.SG(), Strength: p.Strength,
		}
	}
	return out
}

// ferment is the wash as package nutrient follows it, with the water that the boil leaves at
// chalk's equilibrium; clear is the same with none dropped, nil where none can drop.
func (m *maker) ferment() (f ferment.Tank, clear *ferment.Tank, err error) {
	b := m.batch
	wash := kg(b.wash.Mass())
	brew, err := sugar.Wash{
		Fermentable: m.fermentable, Yield: m.yield, Attenuation: m.attenuation(),
		Basis: sugar.WaterAtHand(kilograms((1 - b.share) * wash)),
	}.From(kilograms(b.share * wash))
	if err != nil {
		return f, nil, err
	}
	if m.brings.known { // the water is that of the wash
		brew.Water = b.wash.Water()
	}
	f = ferment.Tank{
		Amino: m.amino(),
		Brew:  brew, Water: m.boiledLow, Feed: m.fed, Additions: stages,
		Temperature: m.req.Fermenter.Temperature, Pressure: m.air.Pressure(),
	}
	if w := m.plan.Water.Boiled; w != nil && !w.Scale.IsZero() {
		other := f
		other.Water = m.boiledHigh
		clear = &other
	}
	return f, clear, nil
}

// boil finds both ends of what the boil makes of the water, with the treated water that tops it
// up and the salts that go in after it.
func (m *maker) boil() error {
	down, low, scale, err := m.boiledDown()
	if err != nil {
		return err
	}
	left := m.batch.water - m.batch.boiledOff - m.batch.topUp
	if m.saltsAfter() {
		into, kilos, err := m.toppedWater(low, left)
		if err != nil {
			return err
		}
		if err := m.treatAfter(into, litres(kilos/waterPerLitre)); err != nil {
			return err
		}
	}
	for _, end := range []struct {
		of   water.Profile
		into *water.Profile
	}{{low, &m.boiledLow}, {down, &m.boiledHigh}} {
		if *end.into, err = m.inFermenter(end.of, left); err != nil {
			return err
		}
	}
	if m.req.Kettle.Boil == 0 {
		return nil
	}
	m.plan.Water.Boiled = &BoiledWater{
		AlkalinityLow: m.boiledLow.Alkalinity(), AlkalinityHigh: m.boiledHigh.Alkalinity(),
		CalciumLow: m.boiledLow.Ion(water.Calcium), CalciumHigh: m.boiledHigh.Ion(water.Calcium),
		Scale: scale,
	}
	return nil
}

// boiledDown is the kettle's water after the boil, with none of its chalk dropped and with all that can, and how much
// that is.
func (m *maker) boiledDown() (down, low water.Profile, scale units.Mass, err error) {
	c, deeds, err := m.atStart()
	if err != nil {
		return down, low, scale, err
	}
	for _, d := range deeds {
		if k := d.step.Kind; k == forward.Dissolve || k == forward.Boil {
			if k == forward.Boil {
				if down, low, scale, err = c.ends(d.step); err != nil {
					return down, low, scale, err
				}
				break
			}
			continue
		}
		if _, err := c.do(d.step); err != nil {
			return down, low, scale, err
		}
	}
	return down, low, scale, nil
}

// ends are both ends of what a boil makes of a water.
func (c *carried) ends(boil forward.Step) (down, low water.Profile, scale units.Mass, err error) {
	rest := *c
	c.unknowns.Chalk, rest.unknowns.Chalk = 0, math.Inf(1)
	if _, err = c.do(boil); err != nil {
		return down, low, scale, err
	}
	left, err := rest.do(boil)
	if err != nil {
		return down, low, scale, err
	}
	down, err = c.state.Profile()
	if err != nil {
		return down, low, scale, err
	}
	low, err = rest.state.Profile()
	return down, low, left.Scale.Mass(), err
}

// inFermenter is a water as it comes from the kettle, with what joins it.
func (m *maker) inFermenter(p water.Profile, left float64) (water.Profile, error) {
	p, kilos, err := m.toppedWater(p, left)
	if err != nil || len(m.added) == 0 {
		return p, err
	}
	return p.Add(litres(kilos/waterPerLitre), m.added...)
}

// toppedWater is the water of the kettle with that of the top-up, and how many kg of it there are.
func (m *maker) toppedWater(p water.Profile, left float64) (water.Profile, float64, error) {
	if m.batch.topUp == 0 {
		return p, left, nil
	}
	kept := left * (1 - kg(m.batch.kettleLoss.Mass())/kg(m.batch.boiled.Mass()))
	p, err := water.Blend(water.Portion{Water: p, Volume: litres(kept)}, water.Portion{Water: m.treated, Volume: litres(m.batch.topUp)})
	return p, kept + m.batch.topUp, err
}

// concentrated is a water that boiled down: every content goes up alike.
func concentrated(p water.Profile, k float64) (water.Profile, error) {
	var ions []water.Content
	for _, i := range water.Ions() {
		if c := p.Ion(i).In(units.MilligramPerLitre); c > 0 && i != water.Bicarbonate && i != water.Carbonate && i != water.Hydroxide {
			ions = append(ions, i.At(units.MilligramPerLitre.Of(checked.Number(k*c))))
		}
	}
	alkalinity := units.MilligramPerLitreCaCO3.Of(checked.Number(k * p.Alkalinity().In(units.MilligramPerLitreCaCO3)))
	return water.NewProfile(p.Temperature(), alkalinity, ions...)
}
