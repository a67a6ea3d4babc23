package plan

import (
	"errors"
	"fmt"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

var at20 = units.Celsius.Of(20)

func kilograms(x float64) units.Mass { return units.Kilogram.Of(checked.Number(x)) }
func litres(x float64) units.Volume  { return units.Litre.Of(checked.Number(x)) }
func kg(m units.Mass) float64        { return m.In(units.Kilogram) }

// A recipe is what does not change while the strength is searched.
type recipe struct {
	req         Request
	restless    int // the pack whose primer moved most
	air         units.Atmosphere
	fermentable material.Material
	yield       gravity.Yield
	fruit       fruit   // juice beside the sugar of the fermentable, which then is both
	brings      brought // acids and minerals of the fermentable
	packs       []packRecipe
	base        *gravity.Solution // a litre of a base that is made; nil where it is brewed
	fixed       *Request          // the request that this one settles, as it was given
	swell       float64           // of the base: [recipe.swells]
}

type packRecipe struct {
	Pack
	field  string // its path in the request
	of     string // its size and its mark, as a [PackPlan] has them
	mark   string
	target units.CarbonDioxideContent
	primer material.Material // of bottles
	inPack inPack            // what sugar turns into in them

	ratio      float64 // of its strength to the batch's
	taste      *Flavour
	tasteField string           // the path of the flavouring in the request
	flavouring gravity.Solution // a litre
	sweet      sweetness
	acid       float64                    // kg in a litre of the drink
	mineral    bool                       // an acid that counts as salts do, without a volume
	filling    units.CarbonDioxideContent // of the drink that is filled under counter-pressure: the head-space takes some

	primed float64 // kg of primer as weighed, in 1 L of finished drink
	excess float64 // g/L that it is served with above the target, without a primer

	// The try before, and g/L of gas when served for a kg/L of primer.
	wasPrimed, served, slope float64

	// A litre of the mix before, where the next one starts: L of base drink, kg of water.
	lastBase, lastWater   float64
	baseSlope, waterSlope float64 // L of drink for each of them more
}

// A batch is the liquid of each vessel for one share of fermentable in the wash.
// Masses are of the whole batch.
type batch struct {
	share float64 // of fermentable, as weighed, in the wash

	water, fermentable float64          // kg, in all
	topUp, late        float64          // kg of the water and of the fermentable that meet the wash in the fermenter
	boiledOff          float64          // kg
	wash               gravity.Solution // in the fermenter, all the sugar in
	filled             gravity.Solution // the same with the first portion alone
	base               gravity.Solution // fermented
	packed             []packed

	strength float64 // % vol, of every pack
}

// A packed drink is what goes into one kind of pack, all of them together.
type packed struct {
	base    float64 // L at 20 °C
	flavour float64 // L of flavouring
	primer  float64 // kg as weighed
	water   float64 // kg that brings it down to the common strength
	sweet   float64 // kg as weighed
	acid    float64 // kg
	sugar   float64 // kg that yeast could use, beside the flavouring's
	drink   gravity.Solution
}

// A draught is a kilogram of wash, what it ferments to, and a litre for each pack.
type draught struct {
	wash     gravity.Solution // 1 kg
	base     gravity.Solution // from it
	litre    gravity.Solution // of base, at 20 °C
	density  float64          // of base, kg/L
	packs    []finished       // undiluted
	strength float64          // % vol of the weakest: what all of them can have
}

// draw works out what a share of fermentable in the wash leads to.
func (r *recipe) draw(share float64) (d draught, err error) {
	if r.base != nil {
		d.litre, d.base, d.wash = *r.base, *r.base, *r.base
		d.density = kg(d.base.Mass())
		err = r.undilutedAll(&d)
		return d, err
	}
	if d.wash, err = r.washOf(share, 1); err != nil {
		return d, err
	}
	if d.base, err = r.ends(d.wash); err != nil {
		return d, err
	}
	v := d.base.VolumeAt20().In(units.Litre) * r.swell
	d.density = kg(d.base.Mass()) / v
	if d.litre, err = d.base.Times(1 / v); err != nil {
		return d, err
	}
	err = r.undilutedAll(&d)
	return d, err
}

// undilutedAll is a litre for each pack without water, and the strength that all of them can have.
func (r *recipe) undilutedAll(d *draught) (err error) {
	d.packs, d.strength = make([]finished, len(r.packs)), 100
	for i := range r.packs {
		if d.packs[i], err = r.undiluted(&r.packs[i], d.litre); err != nil {
			return err
		}
		d.strength = min(d.strength, d.packs[i].strength()/r.packs[i].ratio)
	}
	return nil
}

// mix works the whole batch out for a share of fermentable in the wash. All packs get
// the strength of the weakest, or their own in the same proportion, the others water.
func (r *recipe) mix(share float64) (batch, error) {
	d, err := r.draw(share)
	if err != nil {
		return batch{}, err
	}
	b := batch{share: share, strength: d.strength, packed: make([]packed, 0, len(r.packs))}
	if r.base != nil {
		if b.strength, err = r.letDown(d.strength); err != nil {
			return b, err
		}
	}
	var baseVolume float64
	for i, p := range r.packs {
		f := d.packs[i]
		if want := b.strength * p.ratio; f.strength() > want*(1+1e-12) {
			if f, err = r.diluted(&r.packs[i], d.litre, want); err != nil {
				return b, r.packs[i].tooWeak(err)
			}
		}
		k, err := f.times(p.Volume.In(units.Litre))
		if err != nil {
			return b, err
		}
		baseVolume += k.base
		b.packed = append(b.packed, k)
	}

	if r.base != nil {
		err = r.takenOf(&b, baseVolume)
	} else {
		err = r.backwards(&b, d, baseVolume)
	}
	return b, err
}

// washOf returns a wash of some kilograms, of which a share is the fermentable as
// weighed and the rest water.
func (r *recipe) washOf(share, total float64) (gravity.Solution, error) {
	water, err := gravity.NewSolution(kilograms((1-share)*total), units.Mass{}, units.Mass{})
	if err != nil {
		return gravity.Solution{}, err
	}
	return sugar.Of(r.fermentable).AddTo(water, kilograms(share*total))
}

// boilOff returns the water that boils away, in kg: the request counts it as cold
// water.
func (r *recipe) boilOff() (float64, error) {
	d, err := gravity.WaterDensity(at20)
	if err != nil {
		return 0, err
	}
	cold := r.req.Kettle.BoilOff.In(units.LitrePerMinute) * r.req.Kettle.Boil.minutes()
	return cold * d.In(units.GramPerMillilitre), nil
}

// solution returns a volume of the flavouring, in litres.
func (f Flavour) solution(volume float64) (gravity.Solution, error) {
	var l finish.Flavouring
	if f.Strength != nil {
		l.Strength = *f.Strength
	}
	if f.Sugar != nil {
		l.Sugar = *f.Sugar
	}
	return l.Liquid(litres(volume))
}

// solve finds the share of fermentable between lo and hi at which f is zero.
func (r *recipe) solve(f func(share float64) (float64, error), lo, hi float64) (float64, error) {
	var failed error
	share, err := numeric.Root(func(x float64) float64 {
		y, err := f(x)
		if err != nil {
			failed = err
			return math.NaN()
		}
		return y
	}, lo, hi, 1e-11)
	if failed != nil {
		err = failed
	}
	if err != nil {
		return 0, &RequestError{
			Field: "strength", Value: r.req.Strength.Text(units.PercentVolume, 1), is: quantity(r.req.Strength),
			Allowed: fmt.Sprintf("what %s reaches with these packs and this flavour (%s)", r.fermentable.Name(), reason(err)), Err: err,
		}
	}
	return share, nil
}

// forStrength solves the batch for the strength asked for, with the priming that
// the drink of that strength needs. The strength is nearly proportional to the share, and
// priming depends but little on it, so that both are mended together; where that fails,
// the share is bracketed.
func (r *recipe) forStrength() (batch, error) {
	if r.base != nil {
		return r.forBase()
	}
	want := r.req.Strength.In(units.PercentVolume)
	r.primeAhead()
	x := math.Log(0.95 * r.guess())                // of the share
	slope, lastX, lastY := 1+0.0035*want, 0.0, 0.0 // to begin with: a stronger wash shrinks more
	for n := range mostPrimings {
		b, err := r.mix(math.Exp(x))
		if err != nil {
			break
		}
		change, err := r.prime(b)
		if err != nil {
			return b, err
		}
		if n == 0 && r.req.swell == 0 { // near enough: it hardly depends on the share
			r.setSwell(b)
		}
		y := math.Log(b.strength / want)
		if n > 0 && change < leastChange && math.Abs(y) < 1e-6 { // a millionth of the sugar, which is rounded to a scale next
			return b, nil
		}
		if s := (y - lastY) / (x - lastX); n > 0 && s > 0.7 && s < 1.4 {
			slope = s
		}
		lastX, lastY, x = x, y, x-y/slope
	}
	r.restart()
	return r.forStrengthBracketed()
}

// restart forgets where the tries before ended.
func (r *recipe) restart() {
	for i := range r.packs {
		p := &r.packs[i]
		p.primed, p.wasPrimed, p.served, p.slope = 0, 0, 0, gasOfSugar
		p.lastBase, p.lastWater, p.baseSlope, p.waterSlope = 1, 0, 1, 1
	}
	r.primeAhead()
}

// guess is the share of fermentable in the wash by the rule of thumb of the trade,
// 16.5 g of sucrose in a kilogram for 1 % vol.
func (r *recipe) guess() float64 {
	sugar := sugar.Of(r.fermentable).Solids().In(units.Fraction) * sugar.Of(r.fermentable).Fermentability().In(units.Fraction)
	return 0.0165 * r.req.Strength.In(units.PercentVolume) / sugar
}

// forStrengthBracketed is forStrength with a root for each priming.
func (r *recipe) forStrengthBracketed() (batch, error) {
	want := r.req.Strength.In(units.PercentVolume)
	above := func(share float64) (float64, error) {
		d, err := r.draw(share)
		return d.strength - want, err
	}
	guess := r.guess()
	lo, hi := guess/20, math.Min(1.5*guess, 1)
	if d, err := r.draw(hi); err == nil && d.strength < want {
		return batch{}, &RequestError{
			Field: "strength", Value: r.req.Strength.Text(units.PercentVolume, 1), is: quantity(r.req.Strength),
			Allowed: fmt.Sprintf("at most %.1f %% vol from %s with this flavour and priming", d.strength-0.05, r.fermentable.Name()),
			Err: &units.RangeError{Func: "plan.Make", Quantity: "strength", Value: want, Unit: "% vol", Min: leastStrength, Max: d.strength,
				Source: "no water at all"},
		}
	}
	for range mostPrimings {
		share, err := r.solve(above, lo, hi)
		if err != nil {
			return batch{}, err
		}
		b, err := r.mix(share)
		if err != nil {
			if _, named := errors.AsType[*RequestError](err); named {
				return b, err
			}
			return b, &RequestError{Field: "packs", Value: "their strengths with priming", Allowed: reason(err), Err: err}
		}
		change, err := r.prime(b)
		if err != nil {
			return b, err
		}
		if change < leastChange {
			return b, nil
		}
	}
	return batch{}, r.unreached()
}

const (
	mostPrimings = 40
	gasOfSugar   = 480  // g of CO2 that a kg of sugar leaves in the drink, about
	leastChange  = 1e-3 // g/L of primer: a tenth of a scale's step in a batch, and what is left is mended on the states
)

// forWeight solves the batch for a fermentable as weighed, near a share: by secants, and
// by bracketing where they fail.
func (r *recipe) forWeight(fermentable float64, was batch) (batch, error) {
	x0, y0 := was.share, was.fermentable-fermentable
	x1 := x0 * fermentable / was.fermentable
	for range mostSecants {
		b, err := r.mix(x1)
		if err != nil {
			break
		}
		y1 := b.fermentable - fermentable
		if math.Abs(y1) < 1e-8*fermentable { // a hundredth of a milligram in a kilogram
			return b, nil
		}
		if y1 == y0 {
			break
		}
		x0, y0, x1 = x1, y1, x1-y1*(x1-x0)/(y1-y0)
	}
	share, err := r.solve(func(share float64) (float64, error) {
		b, err := r.mix(share)
		return b.fermentable - fermentable, err
	}, (1-2*coarsest)*was.share, (1+2*coarsest)*was.share)
	if err != nil {
		return batch{}, err
	}
	return r.mix(share)
}

const mostSecants = 12
