package plan

import (
	"math"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// setSwell sets the swell of the base by a batch of about the share that is searched for. What refuses the batch says so when
// it is made: without a swell it is searched for as before.
func (r *recipe) setSwell(b batch) bool {
	if r.base != nil {
		return false
	}
	swell, err := r.swells(b)
	if err == nil {
		r.swell = swell
	}
	return err == nil
}

// missed is the swell that the batch came to with its own nutrient, its acid and what was done to it after the ferment,
// and the part of the ethanol that the atoms gave of what the search took, 0 for all of it; whether either was off by so
// much that the packs would miss their strength.
func (m *maker) missed() (swell, atoms float64, is bool) {
	const most = 7e-4 // of either: with the scale's step the strength is kept to 0.1 %
	if m.recipe.base != nil {
		return 0, 0, false
	}
	volume := func(s forward.State) float64 {
		v, err := s.Volume(at20)
		if err != nil {
			return math.NaN()
		}
		return v.In(units.Litre)
	}
	swell = volume(m.brewed.fermented) / m.batch.base.VolumeAt20().In(units.Litre)
	if len(m.plan.After.done()) > 0 {
		swell *= volume(m.poured.state) / volume(m.brewed.state)
	}
	if m.req.Yeast.Yield != nil {
		if given := m.brewed.atoms / kg(m.batch.base.Ethanol()); given < 1-most {
			atoms = given
		}
	}
	return swell, atoms, math.Abs(swell/m.recipe.swell-1) > most || atoms > 0
}

// swells is the volume of the fermented base as the batch carries it, as a part of what the search takes it for. The
// search ferments by the yield alone; in the batch yeast grows within its nitrogen, and nutrient and acids bring water
// and extract of their own. The wash is mixed, fed what it lacks as one salt and fermented without its kettle, as neither salts nor chalk move it.
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
	n, err := m.wants()
	if err != nil {
		return 0, err
	}
	dissolve := m.dissolving()
	dissolve.Kind, dissolve.Mass = forward.Dissolve, kilograms(b.share*kg(b.wash.Mass()))
	salt := material.DiammoniumPhosphate()
	fed := kilograms(n.lacking().In(units.GramPerLitre) / 1000 * n.Volume.In(units.Litre) / salt.Composition().Nitrogen().In(units.Fraction))
	c := carried{unknowns: forward.Usual()}
	if _, err := c.do(forward.Step{Kind: forward.Dilute, Mass: kilograms((1 - b.share) * kg(b.wash.Mass()))}, dissolve,
		forward.Step{Kind: forward.Feed, What: salt.Name(), Mass: fed}); err != nil {
		return 0, err
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
