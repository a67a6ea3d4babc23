package plan

import (
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// meets sets the swell of the base by a batch that was searched for; with it the search is to run once more. What
// refuses the batch says so when it is made: without a swell it is searched for as before.
func (r *recipe) meets(b batch) bool {
	if r.base != nil {
		return false
	}
	swell, err := r.swells(b)
	if err == nil {
		r.swell = swell
	}
	return err == nil
}

// swells is the volume of the fermented base as the batch carries it, as a part of what the search takes it for. The
// search ferments by the yield alone; in the batch yeast grows within its nitrogen, and nutrient and acids bring water
// and extract of their own. The wash is mixed and fermented without its kettle, as neither salts nor chalk move it.
func (r *recipe) swells(b batch) (float64, error) {
	k, say := *r, new(notes)
	m := &maker{recipe: &k, batch: b}
	var err error
	if m.boiled.high, err = water.NewProfile(at20, units.CalciumCarbonate{}); err != nil {
		return 0, err
	}
	if k.brings, m.plan.Must, err = m.must(say); err != nil {
		return 0, err
	}
	if m.plan.Nutrient, err = m.feed(say); err != nil {
		return 0, err
	}
	if m.plan.Yeast, err = m.yeast(say); err != nil {
		return 0, err
	}
	dissolve := m.dissolving()
	dissolve.Kind, dissolve.Mass = forward.Dissolve, kilograms(b.share*kg(b.wash.Mass()))
	steps := []forward.Step{{Kind: forward.Dilute, Mass: kilograms((1 - b.share) * kg(b.wash.Mass()))}, dissolve}
	for _, d := range m.plan.Nutrient.fed {
		steps = append(steps, m.fed(d))
	}
	if m.plan.Yeast.Form == "dry" {
		steps = append(steps, forward.Step{Kind: forward.Pitch, Mass: m.plan.Yeast.Mass.Quantity()})
	}
	c := carried{unknowns: forward.Usual()}
	for _, st := range steps {
		if _, err := c.do(st); err != nil {
			return 0, err
		}
	}
	ferment := forward.Step{Kind: forward.Ferment, Share: m.attenuation(), Gas: true}
	if err := c.measured(ferment, kg(b.base.Ethanol())); err != nil {
		return 0, err
	}
	if _, err := c.do(ferment); err != nil {
		return 0, err
	}
	v, err := c.state.Volume(at20)
	return v.In(units.Litre) / b.base.VolumeAt20().In(units.Litre), err
}
