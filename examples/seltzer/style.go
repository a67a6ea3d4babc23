package main

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
	"github.com/shopspring/decimal"
)

// A style prints quantities in metric or in US customary units, with the places
// that a brewer can use.
type style struct{ us bool }

func number(x float64, places int) string {
	if x < 0 && x > -0.5*math.Pow(10, -float64(places)) {
		x = 0
	}
	return strconv.FormatFloat(x, 'f', places, 64)
}

// mass prints 4.20 kg, 12.3 g, 45 mg; or 9 lb 4.1 oz, 0.434 oz (12.3 g).
func (s style) mass(m units.Mass) string {
	g := m.In(units.Gram)
	metric := ""
	switch a := math.Abs(g); {
	case a >= 999.5:
		metric = number(g/1000, 2) + " kg"
	case a >= 0.9995 || a == 0:
		metric = number(g, 1) + " g"
	default:
		metric = number(g*1000, 0) + " mg"
	}
	if !s.us {
		return metric
	}
	oz := m.In(units.Ounce)
	if oz < 16 {
		if oz < 0.01 {
			return metric
		}
		return number(oz, 2) + " oz (" + metric + ")"
	}
	lb := math.Floor(oz / 16)
	rest := number(oz-16*lb, 1)
	if rest == "16.0" {
		lb, rest = lb+1, "0.0"
	}
	return number(lb, 0) + " lb " + rest + " oz"
}

// balance prints a mass of the whole batch to a gram, or to a thousandth of a pound.
func (s style) balance(m units.Mass) string {
	if s.us {
		return number(m.In(units.Pound), 3) + " lb"
	}
	return number(m.In(units.Kilogram), 3) + " kg"
}

// each prints what a litre or a US gallon of the batch costs.
func (s style) each(p plan.Plan) string {
	c := p.Cost
	if total, err := decimal.NewFromString(c.Total); err == nil && s.us {
		return total.DivRound(decimal.NewFromFloat(p.Volume.In(units.USGallon)), 2).StringFixed(2) + " " + c.Currency + " a US gallon"
	}
	return c.PerLitre + " " + c.Currency + " a litre"
}

// volume prints 66.2 L, 330 mL; or 17.49 US gal, 11.2 US fl oz.
func (s style) volume(v units.Volume) string {
	l := v.In(units.Litre)
	if s.us {
		if g := v.In(units.USGallon); math.Abs(g) >= 0.5 {
			return number(g, 2) + " US gal"
		}
		if l < 0.03 {
			return number(l*1000, 1) + " mL"
		}
		return number(v.In(units.USFluidOunce), 1) + " US fl oz"
	}
	switch {
	case math.Abs(l) >= 0.9995:
		return number(l, 1) + " L"
	case math.Abs(l) >= 0.0999:
		return number(l*1000, 0) + " mL"
	default:
		return number(l*1000, 1) + " mL"
	}
}

func (s style) temperature(t units.Temperature) string {
	if s.us {
		return number(t.In(units.Fahrenheit), 0) + " °F"
	}
	c := t.In(units.Celsius)
	if c == math.Round(c) {
		return number(c, 0) + " °C"
	}
	return number(c, 1) + " °C"
}

func (s style) gauge(p units.GaugePressure) string {
	if s.us {
		return number(p.In(units.PSIGauge), 1) + " psi gauge"
	}
	return number(p.In(units.BarGauge), 2) + " bar gauge"
}

func (s style) absolute(p units.AbsolutePressure) string {
	if s.us {
		return number(p.In(units.PSI), 2) + " psi absolute"
	}
	return number(p.In(units.Kilopascal), 1) + " kPa absolute"
}

// strength, gravity, contents and water figures are the same in both systems.

func strength(v units.StrengthByVolume) string {
	return number(v.In(units.PercentVolume), 2) + " % vol"
}

func ion(c units.MassConcentration) string {
	mg := c.In(units.MilligramPerLitre)
	if math.Abs(mg) < 9.95 {
		return number(mg, 1) + " mg/L"
	}
	return number(mg, 0) + " mg/L"
}

func volumes(c units.CarbonDioxideVolumes) string {
	return number(c.In(units.VolumesCO2), 2) + " volumes"
}

func grams(c units.CarbonDioxideContent) string {
	return number(c.In(units.GramCO2PerLitre), 2) + " g/L"
}

func percent(s units.Share) string {
	return strings.TrimSuffix(number(s.In(units.Percent), 1), ".0") + " %"
}

// weight prints what the scale shows, and in US units the ounces beside it; of a scale in ounces the grams. What is
// too little for the scale is what is wanted.
func (s style) weight(w plan.Weight) string {
	m := w.Mass.Quantity()
	shown := exact(w.Mass)
	switch {
	case m.IsZero() && !w.Asked.IsZero():
		return s.mass(w.Asked) + ", by a solution"
	case m.In(units.Gram) >= 1000:
		return s.mass(m)
	case w.Mass.Unit() != units.Gram:
		return shown + " (" + number(m.In(units.Gram), 1) + " g)"
	case s.us && m.In(units.Ounce) >= 0.005: // else grams alone
		return number(m.In(units.Ounce), 2) + " oz (" + shown + ")"
	}
	return shown
}

// size prints what a pack holds: 0.33 L, 19 L; or 11.2 US fl oz.
func (s style) size(v units.Volume) string {
	if s.us {
		return s.volume(v)
	}
	return plan.SizeText(v)
}

// said is a plan whose names and sentences have the style's units.
func (s style) said(p plan.Plan) plan.Plan {
	if !s.us {
		return p
	}
	p.Weigh, p.Packs = slices.Clone(p.Weigh), slices.Clone(p.Packs)
	for i := range p.Weigh {
		p.Weigh[i].For = s.inWords(p.Weigh[i].For)
	}
	for i := range p.Packs {
		k := &p.Packs[i]
		k.Of, k.Highest.Cautions = s.inWords(k.Of), inAllWords(s, k.Highest.Cautions)
		for _, w := range []**plan.Weight{&k.Sweetener, &k.Acid} {
			if *w != nil {
				said := **w
				said.For = s.inWords(said.For)
				*w = &said
			}
		}
	}
	for _, lines := range []*[]plan.Line{&p.Balance.In, &p.Balance.Out} {
		*lines = slices.Clone(*lines)
		for i := range *lines {
			(*lines)[i].What = s.inWords((*lines)[i].What)
		}
	}
	p.Cautions = inAllWords(s, p.Cautions)
	return p
}

// exact prints a weight with every place that the scale has.
func exact(x units.ExactMass) string {
	const finest = 3 // places of a gram; more of them come of ounces
	places := int(max(0, -x.Decimal().Exponent()))
	if places > finest {
		places = 1
	}
	return x.Text(places)
}

// gas prints a volume of gas.
func (s style) gas(v units.Volume) string {
	if s.us {
		return number(v.In(units.CubicMetre)/cubicFoot, 0) + " ft³"
	}
	return number(v.In(units.CubicMetre), 2) + " m³"
}

// flow prints a flow of air.
func (s style) flow(v units.VolumeFlow) string {
	if s.us {
		return number(v.In(units.CubicMetrePerHour)/cubicFoot/60, 0) + " ft³/min"
	}
	return number(v.In(units.CubicMetrePerHour), 0) + " m³/h"
}

const cubicFoot = 0.028316846592 // m³, exact: (0.3048 m)³

// curve writes the temperatures of a curve's texts, and turns its axes into US units.
func (s style) curve(c plan.Curve) plan.Curve {
	if c.Held != nil {
		c.Title += " at " + s.temperature(*c.Held)
	}
	if c.AtWarmth != nil {
		c.AtName += " at " + s.temperature(*c.AtWarmth)
	}
	if !s.us {
		return c
	}
	onX, onY := usUnit(&c.X), usUnit(&c.Y)
	points := make([][2]float64, len(c.Points))
	for i, p := range c.Points {
		points[i] = [2]float64{onX(p[0]), onY(p[1])}
	}
	c.Points = points
	if c.At != nil {
		c.At = &[2]float64{onX(c.At[0]), onY(c.At[1])}
	}
	if c.Limit != nil {
		l := onY(*c.Limit)
		c.Limit = &l
	}
	return c
}

// usUnit gives an axis the unit of the US, and returns what turns its numbers into it.
func usUnit(a *plan.Axis) func(float64) float64 {
	const psiPerBar = 100000 / 6894.757293168361 // NIST SP 811 appendix B
	switch a.Unit {
	case "bar":
		a.Unit = "psi"
		return func(x float64) float64 { return x * psiPerBar }
	case "°C":
		a.Unit = "°F"
		return func(x float64) float64 { return x*9/5 + 32 }
	}
	return func(x float64) float64 { return x }
}
