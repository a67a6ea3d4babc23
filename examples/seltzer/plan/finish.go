package plan

import (
	"fmt"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
)

// A finished drink is about a litre of what a pack holds: base drink, flavouring,
// the primer fermented, and water.
type finished struct {
	packed
	volume float64 // L at 20 °C
}

func (f finished) strength() float64 { return 100 * kg(f.drink.Ethanol()) / pureEthanol / f.volume }

// finish puts a finished drink together from litres of base drink and kilograms of
// water, with the primer of a litre. Where yeast is to prime it, it ferments the sugar of
// the flavouring too.
func (r *recipe) finish(p packRecipe, litre gravity.Solution, base, water float64) (finished, error) {
	f := finished{packed: packed{base: base, primer: p.primed, water: water, sweet: p.sweet.perLitre, acid: p.acid}}
	var err error
	if f.drink, err = litre.Times(base); err != nil {
		return f, err
	}
	if water > 0 {
		if f.drink, err = f.drink.AddWater(kilograms(water)); err != nil {
			return f, err
		}
	}
	if f.drink, err = p.softened(f.drink); err != nil {
		return f, err
	}
	f.sugar = kg(f.drink.Fermentable())
	if a := p.taste; a != nil {
		f.flavour = base * a.Added.In(units.Litre) / a.Sample.In(units.Litre)
		flavouring, err := p.flavouring.Times(f.flavour)
		if err != nil {
			return f, err
		}
		if f.drink, err = f.drink.Plus(flavouring); err != nil {
			return f, err
		}
	}
	if p.primes() && !f.drink.Fermentable().IsZero() { // the flavouring's sugar
		if f.drink, _, err = f.drink.Dry(p.inPack.sucrose); err != nil {
			return f, err
		}
	}
	if p.primed > 0 {
		with, err := sugar.Of(p.primer).AddTo(f.drink, kilograms(p.primed))
		if err != nil {
			return f, err
		}
		if f.drink, _, err = with.Dry(p.inPack.primer); err != nil {
			return f, err
		}
	}
	f.volume = f.drink.VolumeAt20().In(units.Litre) + base*(1-1/r.swell)
	return f, nil
}

// undiluted is a drink without water: as much base drink as there is room for in a
// litre, beside the primer.
func (r *recipe) undiluted(p *packRecipe, litre gravity.Solution) (finished, error) {
	if p.primed == 0 && p.sweet.perLitre == 0 && p.acid == 0 {
		return r.finish(*p, litre, 1, 0)
	}
	f, err := fill(p.lastBase, &p.baseSlope, func(base float64) (finished, error) { return r.finish(*p, litre, base, 0) })
	if err == nil {
		p.lastBase = f.base
	}
	return f, err
}

// diluted makes a litre of a lower strength. The ethanol fixes how much base drink is
// in it, the rest is water.
func (r *recipe) diluted(p *packRecipe, litre gravity.Solution, strength float64) (finished, error) {
	wanted := strength / 100 * pureEthanol // kg
	primed := 0.0
	if p.primed > 0 {
		water, err := gravity.NewSolution(kilograms(1), units.Mass{}, units.Mass{})
		if err != nil {
			return finished{}, err
		}
		with, err := sugar.Of(p.primer).AddTo(water, kilograms(p.primed))
		if err != nil {
			return finished{}, err
		}
		primed = kg(with.Fermentable()) * p.inPack.primer.Ethanol().In(units.Fraction)
	}
	unprimed := *p
	unprimed.primed = 0
	base, err := r.finish(unprimed, litre, 1, 0)
	if err != nil {
		return finished{}, err
	}
	share := (wanted - primed) / kg(base.drink.Ethanol())
	if share <= 0 {
		return finished{}, errTooWeak
	}
	from := p.lastWater
	if from == 0 {
		from = 1 - share
	}
	f, err := fill(from, &p.waterSlope, func(water float64) (finished, error) { return r.finish(*p, litre, share, max(0, water)) })
	if err == nil {
		p.lastWater = f.water
	}
	return f, err
}

// fill finds x, near a guess, for which mix(x) is a litre. The volume grows by nearly x,
// so that a few secants close it; slope is how it grew the last time.
func fill(x float64, slope *float64, mix func(x float64) (finished, error)) (finished, error) {
	last, lastX := 0.0, x
	for n := range mostFills {
		f, err := mix(x)
		if err != nil {
			return f, err
		}
		missing := 1 - f.volume
		if math.Abs(missing) < 1e-10 { // of a litre
			return f, nil
		}
		if grows := (last - missing) / (x - lastX); n > 0 && grows > 0.1 && grows < 10 { // else keep what was known
			*slope = grows
		}
		last, lastX = missing, x
		x += missing / *slope
	}
	return finished{}, fmt.Errorf("a litre does not fill in %d steps", mostFills)
}

const mostFills = 30

// pureEthanol is the density of ethanol at 20 °C in kg/L, as a Solution has it.
var pureEthanol = func() float64 {
	s, _ := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Kilogram.Of(1))
	return 1 / s.VolumeAt20().In(units.Litre)
}()

// times returns so many litres of a finished drink.
func (f finished) times(volume float64) (packed, error) {
	n := volume / f.volume
	k := f.packed
	for _, x := range []*float64{&k.base, &k.flavour, &k.primer, &k.water, &k.sugar, &k.sweet, &k.acid} {
		*x *= n
	}
	var err error
	k.drink, err = f.drink.Times(n)
	return k, err
}
