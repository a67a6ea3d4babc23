package plan

import (
	"cmp"
	"fmt"

	"example.org/zymase/carbonation"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

func (k *recipe) setPacks() error {
	if len(k.req.Packs) == 0 {
		return &RequestError{Field: "packs", Value: "missing", Allowed: "at least one keg or bottle"}
	}
	sum := 0.0
	for i, p := range k.req.Packs {
		r := packRecipe{Pack: p, slope: gasOfSugar, lastBase: 1, baseSlope: 1, waterSlope: 1, field: fmt.Sprintf("packs[%d]", i)}
		if err := r.set(); err != nil {
			return err
		}
		if err := r.setTaste(k.req, func(name string) string { return r.field + "." + name }); err != nil {
			return err
		}
		if err := r.labelOK(r.field + ".label"); err != nil {
			return err
		}
		sum += p.Volume.In(units.Litre)
		k.packs = append(k.packs, r)
	}
	k.namePacks()
	if total := k.req.Volume.In(units.Litre); sum < 0.999*total || sum > 1.001*total {
		return &RequestError{Field: "packs", Value: fmt.Sprintf("they hold %s L", brief(sum)),
			Allowed: fmt.Sprintf("what the batch is, %s L: change volume or a pack's volume", brief(total))}
	}
	return nil
}

// set checks one pack.
func (p *packRecipe) set() error {
	f := func(name string) string { return p.field + "." + name }
	if err := oneOf(f("kind"), p.Kind, keg, bottle, can); err != nil {
		return err
	}
	if err := p.setFilled(f); err != nil {
		return err
	}
	p.target = p.Content.grams
	if !p.Content.byMass {
		p.target = carbonation.RealVolume.Content(p.Content.volumes)
	}
	p.filling = p.target // and a little more, once the bottle is known
	if p.Content.still {
		if err := p.setStill(f); err != nil {
			return err
		}
	}
	largest := mostVolume // a keg may be part full
	if p.Kind != keg {
		largest = p.Volume.In(units.Litre)
	}
	checks := []error{
		within(f("volume"), p.Volume, units.Litre, 0.05, mostVolume),
		within(f("size"), p.Size, units.Litre, 0.05, largest),
		within(f("temperature"), p.Temperature, units.Celsius, -2, 40),
		within(f("rating"), p.Rating, units.BarGauge, 0.1, 300),
	}
	if !p.Content.still {
		checks = append(checks, within(f("co2"), carbonation.RealVolume.Volumes(p.target), units.VolumesCO2, leastContent, mostContent))
	}
	if p.Kind != keg {
		var head units.Share
		if p.HeadSpace != nil {
			head = *p.HeadSpace
		}
		checks = append(checks, within(f("head_space"), head, units.Percent, 0.5, 50))
		if p.Store == nil {
			return &RequestError{Field: f("store"), Value: "missing", Allowed: "the warmest the " + p.Kind + "s may get, such as 35 °C"}
		}
		checks = append(checks, within(f("store"), *p.Store, units.Celsius, 0, 70))
		p.primer = material.WhiteSugar()
		if p.primes() {
			var err error
			p.primer, err = material.FindAmong(p.Priming, sugar.Fermentables()...)
			checks = append(checks, named(f("prime_with"), p.Priming, err))
			if err == nil && sugar.Of(p.primer).Fermentability().In(units.Percent) < 1 {
				checks = append(checks, &RequestError{Field: f("prime_with"), Value: p.Priming, Allowed: "something that yeast ferments"})
			}
		}
		var err error
		if p.inPack, err = usuallyInPack(p.primer); err != nil {
			return named(f("prime_with"), p.Priming, err)
		}
	} else {
		for _, given := range []struct {
			name string
			is   bool
		}{{"head_space", p.HeadSpace != nil}, {"prime_with", p.Priming != ""}} {
			if given.is {
				return &RequestError{Field: f(given.name), Value: "given", Allowed: "only for bottles"}
			}
		}
		if p.Store != nil {
			checks = append(checks, within(f("store"), *p.Store, units.Celsius, 0, 70))
		}
	}
	return cmp.Or(checks...)
}

// primes tells whether the pack is primed.
func (p *packRecipe) primes() bool { return p.Kind != keg && !p.Content.still && p.Filled == "" }

// setStill checks a pack of still drink.
func (p *packRecipe) setStill(f func(name string) string) error {
	switch {
	case p.Priming != "":
		return &RequestError{Field: f("prime_with"), Value: p.Priming, Allowed: "left out of a still drink"}
	case p.Filled != "":
		return &RequestError{Field: f("filled"), Value: p.Filled, Allowed: "left out of a still drink"}
	}
	return nil
}
