package plan

import (
	"math"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// legs are the ferment in so many equal steps of the sugar used, each on from the one before it, with the nutrient as it goes in.
func (m *maker) legs(n int) [][]forward.Step {
	all, at := make([][]forward.Step, n+1), 0.0
	stages := m.plan.Nutrient.Stages
	for i := range all {
		until := float64(i) / float64(n)
		for ; len(stages) > 0 && stages[0].Used.In(units.Fraction) < until+1e-9; stages = stages[1:] {
			to := stages[0].Used.In(units.Fraction)
			all[i] = append(append(all[i], m.fermenting(at, to)), m.addition(stages[0])...)
			at = to
		}
		all[i] = append(all[i], m.fermenting(at, until))
		at = until
	}
	return all
}

// fermenting is the ferment from one part of what the yeast uses to another. Its gas stays: what is read here does not depend
// on it.
func (m *maker) fermenting(from, to float64) forward.Step {
	all := m.attenuation().In(units.Fraction)
	part := min(max(0, all*(to-from)/(1-all*from)), 1)
	return forward.Step{Kind: forward.Ferment, Share: units.Fraction.Of(checked.Number(part)), Gas: true}
}

// A reader carries worlds through the legs, one after the other, and reads their pH: like waters follow one another.
type reader struct {
	*maker
	legs   [][]forward.Step
	meters []forward.Meter // one for each leg
	like   water.Series
}

func (m *maker) reader(steps int) *reader {
	return &reader{maker: m, legs: m.legs(steps), meters: make([]forward.Meter, steps+1)}
}

// course carries a world from its wash before the nutrient of the stages to its end, and puts its pH in each but those that are
// known: at first at rest with air, then under its own gas.
func (r *reader) course(c *carried, ph []float64) error {
	c.like = &r.like
	gas := water.AirCO2(r.air)
	for i, leg := range r.legs {
		if _, err := c.do(leg...); err != nil {
			return err
		}
		if ph[i] == 0 {
			var err error
			if ph[i], err = r.meters[i].PHUnder(&c.state, gas); err != nil {
				return err
			}
		}
		gas = r.air.Pressure()
	}
	return nil
}

// By how much a pH at the end has to move for it to be read on the way too, and for the other side to be looked at.
const (
	moves = 0.02
	bends = 0.05
)

// read are the figures of a world by its wash, and that without the nutrient of the stages. It is held against another, whose wash
// it has where it has none of its own, and whose pH where that hardly moves: a thinner or a
// stronger wash, more ethanol or glycerol move it by less than 0.01.
func (r *reader) read(wash *forward.State, unstaged forward.State, u *forward.Unknowns, from *inDoubt, sour bool) (is inDoubt, err error) {
	if is, err = r.base(wash, u, sour); err != nil {
		return is, err
	}
	if wash == nil {
		is[ofOriginal], is[ofVolume], is[ofPH] = from[ofOriginal], from[ofVolume], from[ofPH]
	}
	if !sour {
		copy(is[ofBuffer:], from[ofBuffer:])
		return is, nil
	}
	if from != nil && math.Abs(is[ofEnd]-from[ofEnd]) < moves {
		end := is[ofEnd]
		copy(is[ofBuffer:], from[ofBuffer:])
		is[ofEnd] = end
		return is, nil
	}
	return is, r.way(&is, unstaged, u)
}

// base reads what needs no pH of the way, of a world by its wash; that of another world is nil.
func (r *reader) base(wash *forward.State, u *forward.Unknowns, sour bool) (f inDoubt, err error) {
	c := carried{state: r.brewed.wash, unknowns: *u, like: &r.like}
	if wash != nil {
		c.state = *wash
		original, err := wash.Gravity()
		if err != nil {
			return f, err
		}
		v, err := wash.Volume(at20)
		if err != nil {
			return f, err
		}
		f[ofOriginal], f[ofVolume] = original.SG(), v.In(units.Litre)
	}
	if _, err := c.do(r.fermenting(0, 1)); err != nil {
		return f, err
	}
	strength, err := c.state.Strength()
	if err != nil {
		return f, err
	}
	floor, err := c.state.Gravity()
	if err != nil {
		return f, err
	}
	f[ofStrength], f[ofFloor] = strength.In(units.PercentVolume), floor.SG()
	if sour && r.unforeseen() == "" {
		f[ofEnd], err = r.meters[courseSteps].PHUnder(&c.state, r.air.Pressure())
	}
	return f, err
}

// way reads the pH on the way of a world by its wash without the nutrient of the stages, and what hangs on it.
func (r *reader) way(f *inDoubt, unstaged forward.State, u *forward.Unknowns) error {
	if r.unforeseen() != "" {
		return nil
	}
	c := carried{state: unstaged, unknowns: *u}
	if err := r.course(&c, f[ofPH:]); err != nil {
		return err
	}
	if a := r.plan.Acidity; a.Buffer != nil {
		var err error
		if f[ofBuffer], err = r.meters[len(r.meters)-1].Lacks(&c.state, a.Floor, r.air.Pressure()); err != nil {
			return err
		}
	}
	return r.readAfter(&c, f[ofAfter:])
}

// readAfter reads the pH of the drink each time that it is told once it is fermented.
func (r *reader) readAfter(c *carried, ph []float64) error {
	if r.plan.After == nil {
		return nil
	}
	for _, d := range r.brewed.racked {
		if _, err := c.do(d.step); err != nil {
			return err
		}
	}
	done := 0
	for i, p := range r.plan.After.Points {
		for ; done < p.deeds; done++ {
			if _, err := c.do(r.plan.After.deeds[done].step); err != nil {
				return err
			}
		}
		d, _, _, err := gasFree(c.state)
		if err != nil {
			return err
		}
		ph[i] = d.PH()
	}
	return nil
}
