package plan

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
)

// PackOutcome is a kind of pack filled with the drink as it was read, by the plan's additions for what there is of it.
type PackOutcome struct {
	Kind        string                     `json:"kind"` // as the plan names it
	Strength    units.StrengthByVolume     `json:"strength"`
	Content     units.CarbonDioxideContent `json:"co2"` // on its gas, or when served
	Highest     units.GaugePressure        `json:"highest_gauge"`
	AtLeast     bool                       `json:"gauge_is_at_least"`
	Temperature units.Temperature          `json:"at"` // where it is highest
	Rating      units.GaugePressure        `json:"rating"`
}

// pack carries the drink as it was read through what the plan does after the ferment, into its packs.
func (o *onward) pack(s *StatePlan) (Advice, error) {
	m := o.m
	a := Advice{Do: "pack", Why: "the gravity is at the floor and has stayed there"}
	if p := m.plan.After; p != nil && len(p.Points) > 1 {
		var first []string
		for _, at := range p.Points[1:] {
			first = append(first, at.After)
		}
		a.Why += "; before that, as planned: " + strings.Join(first, ", ")
	}
	var err error
	if a.End, err = o.read(o.now.state); err != nil {
		return a, err
	}
	c, part, err := o.racked()
	if err != nil {
		return a, err
	}
	left := o.leftOver(s)
	for i := range m.recipe.packs {
		out, high, err := o.filled(i, c, part, left)
		if full, ok := errors.AsType[*RequestError](err); ok {
			a.Cannot = fmt.Sprintf("%s: %s", out.Kind, full.Allowed)
			return a, nil
		}
		if err != nil {
			return a, err
		}
		a.Packs = append(a.Packs, out)
		if !high || a.Cannot != "" {
			continue
		}
		by := "come"
		if left > leastLeft {
			by = fmt.Sprintf("with the %.1f g/L of sugar that is left come", left)
		}
		above := ""
		if out.AtLeast {
			above = "above "
		}
		comes := fmt.Sprintf("the %s %s to %s%s at %s, above their rating of %s", out.Kind, by, above, out.Highest.Text(units.BarGauge, 1),
			out.Temperature.Text(units.Celsius, 0), out.Rating.Text(units.BarGauge, 1))
		if m.recipe.packs[i].Kind == keg && over(m.plan.Packs[i].Highest.Verdict) { // as planned, and cautioned of there
			a.Why += "; if it ferments there " + comes
			continue
		}
		a.Cannot = comes
	}
	return a, nil
}

// leastLeft is what of sugar a gravity hardly shows, g/L: 0.0005 of gravity.
const leastLeft = 1.3

// leftOver is the sugar by the last reading beyond what the plan leaves, g in a litre of base.
func (o *onward) leftOver(s *StatePlan) float64 {
	base := o.m.batch.base
	return max(0, s.Points[len(s.Points)-1].Left.In(units.GramPerLitre)-1000*kg(base.Fermentable())/base.VolumeAt20().In(units.Litre))
}

// racked is the drink as it was read off its yeast, after what the plan does then, and how many times the plan's base it is.
func (o *onward) racked() (c carried, part float64, err error) {
	m := o.m
	c = o.now
	planned := 0.0
	for _, k := range m.batch.packed {
		planned += k.base
	}
	for _, st := range []forward.Step{
		{Kind: forward.Warm, Temperature: m.req.Fermenter.Warmest, Pressure: o.place},
		{Kind: forward.Transfer, Volume: litres(m.lost())},
		{Kind: forward.Fine, Share: units.Percent.Of(100)},
	} {
		if _, err := c.do(st); err != nil {
			return c, 0, err
		}
	}
	v, err := c.state.Volume(at20)
	if err != nil {
		return c, 0, err
	}
	part = v.In(units.Litre) / planned
	for _, d := range m.plan.After.done() {
		d.step.Mass = kilograms(part * kg(d.step.Mass))
		if _, err := c.do(d.step); err != nil {
			return c, 0, err
		}
	}
	if v, err = c.state.Volume(at20); err == nil {
		part = v.In(units.Litre) / planned
	}
	return c, part, err
}

// filled is a kind of pack of a base that is so many times the plan's, with so much sugar left in it, g/L, and whether that is
// more than it is rated for.
func (o *onward) filled(i int, c carried, part, left float64) (out PackOutcome, high bool, err error) {
	m, r, k, planned := o.m, o.m.recipe.packs[i], o.m.batch.packed[i], o.m.poured.packs[i]
	p := m.plan.Packs[i]
	out.Kind, out.Rating = p.Named(), r.Rating
	base, err := c.state.Volume(at20)
	if err != nil {
		return out, false, err
	}
	if _, err := c.do(forward.Step{Kind: forward.Transfer, Volume: litres(max(0, base.In(units.Litre)-part*k.base))}); err != nil {
		return out, false, err
	}
	steps, err := m.mixed(i, k, part)
	if err != nil {
		return out, false, err
	}
	if _, err := c.do(steps...); err != nil {
		return out, false, err
	}
	drink, err := c.state.Solution()
	if err != nil {
		return out, false, err
	}
	through, err := m.passage(i, drink, c.state.Temperature(), planned.set)
	if err != nil {
		return out, false, err
	}
	if c.state, err = c.state.OfVolume(r.Size.Plus(r.Size)); err != nil {
		return out, false, err
	}
	if _, err := c.do(slices.Concat(through.ready, through.served)...); err != nil {
		return out, false, r.full("as it is filled", err)
	}
	if out.Strength, err = c.state.Strength(); err != nil {
		return out, false, err
	}
	if out.Content, err = new(forward.Meter).Content(&c.state); err != nil {
		return out, false, err
	}
	k.sugar += left / 1000 * k.base
	worst, err := m.highestWith(i, k)
	if err != nil {
		return out, false, err
	}
	out.Highest, out.AtLeast, out.Temperature = worst.Gauge, worst.AtLeast, worst.Temperature
	return out, over(worst.Verdict), nil
}

// highestWith is the highest pressure of a kind of pack of the plan with what goes into it changed.
func (m *maker) highestWith(i int, k packed) (HighestPlan, error) {
	r, f := m.recipe.packs[i], m.poured.packs[i]
	held, err := f.held(r)
	if err != nil {
		return HighestPlan{}, err
	}
	if r.Kind == keg {
		r.target = held
		return m.highestKeg(r, k, m.plan.Packs[i].Gauge, m.momentsOfKeg(r))
	}
	r.filling = f.filling
	closed, err := m.close(r, k, held, true)
	if err != nil {
		return HighestPlan{}, err
	}
	return m.highest(r, closed)
}

// hides says how much of the sugar may be left where a ferment counts as finished.
func (o *onward) hides(s *StatePlan, say *notes) {
	if left := o.leftOver(s); left > leastLeft {
		last := s.Points[len(s.Points)-1]
		say.caution(fmt.Sprintf("The last reading is %.4f above the %s: it may hide %.1f g/L of sugar, which make up to %.1f g/L of CO2 on top "+
			"of what is planned in a closed pack.", last.Gravity-last.ends, o.m.floorName(), left, gasOfSucrose*left))
	}
}

// tooCoarse tells whether the gravity is not told from the floor's nearness, k = 2.
func (p StatePoint) tooCoarse() bool {
	off := 2 * p.blur * (p.starts - p.ends)
	return off > nearFloor*(1+1e-9) || p.Gravity-p.ends+off > aboveFloor
}
