package plan

import (
	"errors"
	"fmt"
	"math"
	"strings"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// How finely the pH is followed: by thirds of the sugar in a plan, by twelfths in its
// curves, so that the stages of nutrient fall on steps.
const (
	courseSteps = 3
	curveCourse = 12
)

// acidity finds the buffer that holds a floor. Where the boil can drop chalk, the dose is that of the least alkalinity that it
// can leave, so that the floor holds.
func (m *maker) acidity(say *notes) (a AcidityPlan, f ferment.Tank, err error) {
	if f, err = m.ferment(m.plan.Nutrient.fed); err != nil {
		return a, f, err
	}
	a = AcidityPlan{Unforeseen: m.unforeseen(), Points: []AcidityPoint{}}
	if a.Unforeseen != "" {
		say.caution(a.Unforeseen)
		return a, f, nil
	}
	b := m.req.Buffer
	if b == nil {
		return a, f, nil
	}
	salt, err := material.FindAmong(b.Salt, ferment.Buffers()...)
	if err != nil {
		return a, f, named("buffer.salt", b.Salt, err)
	}
	dose, err := f.BufferFor(salt, b.Floor)
	if err != nil {
		if r, ok := errors.AsType[*units.RangeError](err); ok && r.Quantity == "ionic strength" {
			return a, f, err
		}
		return a, f, &RequestError{Field: "buffer.floor_pH", Value: trim(b.Floor), Allowed: reason(err), Err: err}
	}
	mass, err := dose.Mass.Value.Round(m.req.Scales.Small, units.Up)
	if err != nil {
		return a, f, err
	}
	w := Weight{What: salt.String(), For: "fermenter, buffer", Mass: mass, Asked: dose.Mass.Value}
	a.Floor, a.Buffer, a.Clear = b.Floor, &w, dose.Mass.Value
	f.Buffer = salt.Dose(mass.Quantity())
	if !mass.Decimal().IsZero() {
		say.weigh(w)
	}
	for _, c := range dose.Cautions {
		if m.brings.some && strings.HasPrefix(c.Code(), "taste_potassium") {
			continue // of sugar and water: wines and ciders hold a gram of it, and nobody tastes it out
		}
		say.caution(c.Text())
	}
	return a, f, nil
}

// acidCourse is the pH of the ferment as the batch has it, how sure it is, and what buffer it may want.
func (m *maker) acidCourse(say *notes) (AcidityPlan, error) {
	a := m.plan.Acidity
	if a.Unforeseen != "" {
		return a, nil
	}
	var err error
	if a.Points, err = m.measureAlong(courseSteps); err != nil {
		return a, err
	}
	lowest := 1
	for i := range a.Points {
		p, d := &a.Points[i], m.doubts[ofPH+i]
		p.PH = d.of
		p.Low, p.High = d.around(p.PH)
		if p.From = d.from; i > 1 && p.PH < a.Points[lowest].PH {
			lowest = i
		}
	}
	start, end := a.Points[0], a.Points[courseSteps]
	w := m.plan.Water.Boiled
	drops := w != nil && !w.Scale.IsZero()
	if drops {
		a.EndClear = m.doubts[ofEnd].none
	}
	if b := a.Buffer; b != nil {
		if a.EndUnbuffered, err = m.unbuffered(); err != nil {
			return a, err
		}
		a.Halves = start.High > ferment.PitchPH().Value
		d, c := m.doubts[ofBuffer], m.course.Buffer.Material.Composition()
		charge := c.Potassium.In(units.Fraction)/chemistry.K + c.Sodium.In(units.Fraction)/chemistry.Na // mol in a gram
		dose := func(lacks float64) units.Mass {
			return units.Gram.Of(checked.Number(max(0, b.Mass.Quantity().In(units.Gram)+lacks/charge)))
		}
		least, most := d.around(d.of)
		a.Low, a.High, a.From = dose(least), dose(most), d.from
		if drops {
			a.Clear = dose(d.none)
		}
	}
	cautions, err := m.course.Cautions(start.PH, evidence.Figure[float64]{Value: a.Points[lowest].PH, Low: a.Points[lowest].Low})
	if err != nil {
		return a, err
	}
	for _, c := range cautions {
		if m.brings.some && c.Code() == mayFall && end.PH > slowPH {
			continue // the floor of a sugar wash: juices are more sour from the start
		}
		say.caution(c.Text())
	}
	m.chalk(&a, say)
	return a, nil
}

// muchChalk is a dose so far above that without chalk that neither should be added blind
// (common practice, no source).
const muchChalk = 1.5

// chalk cautions where the boil decides what buffer is right.
func (m *maker) chalk(a *AcidityPlan, say *notes) {
	w := m.plan.Water.Boiled
	if a.EndClear == 0 {
		return
	}
	plain := func(c units.CalciumCarbonate) float64 { return c.In(units.MilligramPerLitreCaCO3) }
	text := fmt.Sprintf("The boil can drop up to %.1f g of chalk and leave anything from %.0f to %.0f mg/L as CaCO3 of alkalinity",
		w.Scale.In(units.Gram), plain(w.AlkalinityLow), plain(w.AlkalinityHigh))
	if b := a.Buffer; b != nil && b.Asked.In(units.Gram) > 0 {
		clear, dose := a.Clear.In(units.Gram), b.Asked.In(units.Gram)
		little, first := "none is needed", "add none at first, and any"
		if clear >= 0.05 { // a tenth of a gram is printed
			little, first = fmt.Sprintf("%.1f g would do", clear), fmt.Sprintf("dissolve the %.1f g first, and the rest", clear)
		}
		text += fmt.Sprintf(": the %s of %s are for the least; with nothing dropped %s, and the whole ends at pH %.1f", b.Mass, b.What, little, a.EndClear)
		if a.ByMeter = dose > muchChalk*clear; a.ByMeter {
			text += ". That is too wide to dose blind: " + first + " only by a meter when half of the sugar is used"
		}
	}
	say.caution(text + ". To be certain, measure the alkalinity after the boil, or treat the water after it; do not add before it what it takes out.")
}

// ferment is the wash as package nutrient follows it, with the water that the boil leaves at chalk's equilibrium.
func (m *maker) ferment(fed []material.Dose) (ferment.Tank, error) {
	b := m.batch
	wash := kg(b.wash.Mass())
	brew, err := sugar.Wash{
		Fermentable: m.fermentable, Yield: m.yield, Attenuation: m.attenuation(),
		Basis: sugar.WaterAtHand(kilograms((1 - b.share) * wash)),
	}.From(kilograms(b.share * wash))
	if err != nil {
		return ferment.Tank{}, err
	}
	brew.Water = b.wash.Water()
	return ferment.Tank{
		Amino: m.amino(), AcidsKnown: true, // what the plan prints of them is read off the batch

		Brew: brew, Water: m.boiled.low, Feed: fed, Additions: stages,
		Temperature: m.req.Fermenter.Temperature, Pressure: m.air.Pressure(),
	}, nil
}

// boiledWater is the wash's water at both ends of what the boil can make of it: with chalk at equilibrium and with
// none dropped.
type boiledWater struct{ low, high water.Profile }

// boil finds both ends of what the boil makes of the water, with what tops it up and the salts that go in after it:
// that of the batch's wash, by the litre of all its water.
func (m *maker) boil(say *notes) (p WaterPlan, b boiledWater, err error) {
	p = m.plan.Water
	wash, err := m.washAt(0, math.Inf(1))
	if err != nil {
		return p, b, err
	}
	clear, rest := &wash[0], &wash[1]
	if b.low, err = rest.state.Profile(); err != nil {
		return p, b, err
	}
	if b.high, err = clear.state.Profile(); err != nil {
		return p, b, err
	}
	if m.saltsAfter() {
		kilos := mass(forward.Water, rest.state.Of(forward.Water))
		if m.batch.topUp == 0 { // they go in before what stays in the kettle is left there
			kilos = m.batch.water - m.batch.boiledOff
		}
		volume := litres(kilos / waterPerLitre)
		salts, err := m.saltsAtHand()
		if err != nil {
			return p, b, err
		}
		doses, err := m.treat(&p, b.low, volume, salts, say)
		if err != nil {
			return p, b, err
		}
		for _, w := range []*water.Profile{&b.low, &b.high} {
			if *w, err = w.Add(volume, doses...); err != nil {
				return p, b, err
			}
		}
	}
	if m.req.Kettle.Boil == 0 {
		return p, b, nil
	}
	p.Boiled = &BoiledWater{
		AlkalinityLow: b.low.Alkalinity(), AlkalinityHigh: b.high.Alkalinity(),
		CalciumLow: b.low.Ion(water.Calcium), CalciumHigh: b.high.Ion(water.Calcium),
		Scale: kilograms(rest.scale),
	}
	return p, b, nil
}
