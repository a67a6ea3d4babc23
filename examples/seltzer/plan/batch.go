package plan

import (
	"fmt"
	"math"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
)

var at20 = units.Celsius.Of(20)

func kilograms(x float64) units.Mass { return units.Kilogram.Of(checked.Number(x)) }
func litres(x float64) units.Volume  { return units.Litre.Of(checked.Number(x)) }
func kg(m units.Mass) float64        { return m.In(units.Kilogram) }

// A recipe is what does not change while the strength is searched.
type recipe struct {
	req         Request
	air         units.Atmosphere
	fermentable nutrient.Fermentable
	yield       gravity.Yield
	packs       []packRecipe
}

type packRecipe struct {
	Pack
	field  string // its path in the request
	target units.CarbonDioxideContent
	primer nutrient.Fermentable // of bottles
	primed float64              // kg of primer as weighed, to 1 L of base drink
	short  float64              // g/L that the head-space takes of the content
}

// A batch is the liquid of each vessel for one share of fermentable in the wash.
// Masses are of the whole batch.
type batch struct {
	share float64 // of fermentable, as weighed, in the wash

	water, fermentable float64          // kg, at the start
	boiledOff          float64          // kg
	start              gravity.Solution // sugar dissolved
	boiled             gravity.Solution // end of boil
	wash               gravity.Solution // in the fermenter
	base               gravity.Solution // fermented dry
	made               gravity.Fermented
	kettleLoss         gravity.Solution
	fermenterLoss      gravity.Solution
	packed             []packed

	strength float64 // % vol, of every pack
}

// A packed drink is what goes into one kind of pack.
type packed struct {
	base    float64 // L at 20 °C
	flavour float64 // L of flavouring
	primer  float64 // kg as weighed
	water   float64 // kg that brings it down to the common strength
	added   float64 // kg of flavouring, primer and water
	made    gravity.Fermented
	drink   gravity.Solution // finished, of all packs of this kind
}

// mix works the whole batch out for a share of fermentable in the wash.
func (r *recipe) mix(share float64) (batch, error) {
	b := batch{share: share}
	perKg, err := r.washOf(share, 1)
	if err != nil {
		return b, err
	}
	base, made, err := perKg.Dry(r.yield)
	if err != nil {
		return b, err
	}
	v, err := base.Volume(at20)
	if err != nil {
		return b, err
	}
	density := kg(base.Mass()) / v.In(units.Litre) // kg/L
	litre, err := base.Times(1 / v.In(units.Litre))
	if err != nil {
		return b, err
	}

	// Packs: all get the strength of the weakest, the others water with their primer.
	finished := make([]packed, len(r.packs))
	b.strength = 100
	for i, p := range r.packs {
		if finished[i], err = r.finish(p, litre); err != nil {
			return b, err
		}
		b.strength = min(b.strength, finished[i].drink.ByVolume().In(units.PercentVolume))
	}
	var baseVolume float64
	for i, p := range r.packs {
		k, err := finished[i].diluted(b.strength, p.Volume.In(units.Litre))
		if err != nil {
			return b, err
		}
		baseVolume += k.base
		b.packed = append(b.packed, k)
	}

	// Fermenter and kettle, backwards: each loss has the composition of its vessel.
	lost := r.req.Fermenter.Loss.In(units.Litre) * density
	perWash := kg(base.Mass()) // kg of base drink from 1 kg of wash
	inFermenter := (baseVolume*density + lost) / perWash
	washVolume, err := perKg.Volume(at20)
	if err != nil {
		return b, err
	}
	left := r.req.Kettle.Loss.In(units.Litre) / washVolume.In(units.Litre) // kg of wash
	boiled := inFermenter + left

	if b.boiledOff, err = r.boilOff(); err != nil {
		return b, err
	}
	b.fermentable = share * boiled
	b.water = (1-share)*boiled + b.boiledOff
	steps := []struct {
		into *gravity.Solution
		from gravity.Solution
		kg   float64
	}{
		{&b.boiled, perKg, boiled}, {&b.wash, perKg, inFermenter}, {&b.kettleLoss, perKg, left},
		{&b.base, base, inFermenter}, {&b.fermenterLoss, base, lost / perWash},
	}
	for _, s := range steps {
		if *s.into, err = s.from.Times(s.kg); err != nil {
			return b, err
		}
	}
	if b.start, err = b.boiled.AddWater(kilograms(b.boiledOff)); err != nil {
		return b, err
	}
	b.made = gravity.Fermented{
		CO2: kilograms(kg(made.CO2) * inFermenter), Biomass: kilograms(kg(made.Biomass) * inFermenter),
	}
	return b, nil
}

// washOf returns a wash of some kilograms, of which a share is the fermentable as
// weighed and the rest water.
func (r *recipe) washOf(share, total float64) (gravity.Solution, error) {
	water, err := gravity.NewSolution(kilograms((1-share)*total), units.Mass{}, units.Mass{})
	if err != nil {
		return gravity.Solution{}, err
	}
	return r.fermentable.AddTo(water, kilograms(share*total))
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

// finish makes a litre of base drink into what a pack wants, not yet diluted.
func (r *recipe) finish(p packRecipe, litre gravity.Solution) (packed, error) {
	k := packed{base: 1, drink: litre, primer: p.primed}
	if f := r.req.Flavour; f != nil {
		k.flavour = f.Added.In(units.Litre) / f.Sample.In(units.Litre)
		flavouring, err := f.solution(k.flavour)
		if err != nil {
			return k, err
		}
		k.added += kg(flavouring.Mass())
		if k.drink, err = k.drink.Plus(flavouring); err != nil {
			return k, err
		}
	}
	if p.primed > 0 {
		with, err := p.primer.AddTo(k.drink, kilograms(p.primed))
		if err != nil {
			return k, err
		}
		k.added += p.primed
		if k.drink, k.made, err = with.Dry(p.primer.Yield()); err != nil {
			return k, err
		}
	}
	return k, nil
}

// diluted brings a finished drink down to a strength with water, and up to a volume
// in litres.
func (k packed) diluted(strength, volume float64) (packed, error) {
	have := k.drink.ByVolume().In(units.PercentVolume)
	v, err := k.drink.Volume(at20)
	if err != nil {
		return k, err
	}
	litres20 := v.In(units.Litre)
	if have > strength*(1+1e-12) {
		// The ethanol fixes the volume; what the mixture contracts is made up in a few steps.
		want := litres20 * have / strength
		s := k.drink
		for range mostFills {
			missing := want - litres20
			if math.Abs(missing) < 1e-14*want {
				break
			}
			k.water += missing
			if s, err = k.drink.AddWater(kilograms(math.Max(0, k.water))); err != nil {
				return k, err
			}
			if v, err = s.Volume(at20); err != nil {
				return k, err
			}
			litres20 = v.In(units.Litre)
		}
		k.drink = s
		k.added += k.water
	}
	n := volume / litres20
	for _, x := range []*float64{&k.base, &k.flavour, &k.primer, &k.water, &k.added} {
		*x *= n
	}
	k.made.CO2 = kilograms(kg(k.made.CO2) * n)
	k.made.Biomass = kilograms(kg(k.made.Biomass) * n)
	k.drink, err = k.drink.Times(n)
	return k, err
}

const mostFills = 20

// solution returns a volume of the flavouring, in litres.
func (f Flavour) solution(volume float64) (gravity.Solution, error) {
	strength := units.StrengthByVolume{}
	if f.Strength != nil {
		strength = *f.Strength
	}
	w := gravity.ByMass(strength)
	d, err := gravity.EthanolDensity(w, at20)
	if err != nil {
		return gravity.Solution{}, err
	}
	mass := d.In(units.GramPerMillilitre) * volume
	ethanol := mass * w.In(units.PercentMass) / 100
	sugar := 0.0
	if f.Sugar != nil {
		sugar = f.Sugar.In(units.GramPerLitre) / 1000 * volume
	}
	return gravity.NewSolution(kilograms(mass-ethanol), kilograms(sugar), kilograms(ethanol))
}

// solve finds the share of fermentable in the wash at which f is zero.
func (r *recipe) solve(f func(batch) float64) (batch, error) {
	sugar := r.fermentable.Solids().In(units.Fraction) * r.fermentability()
	guess := 0.0165 * r.req.Strength.In(units.PercentVolume) / sugar
	var failed error
	share, err := numeric.Root(func(x float64) float64 {
		b, err := r.mix(x)
		if err != nil {
			failed = err
			return math.NaN()
		}
		return f(b)
	}, guess/20, math.Min(2*guess, 0.95), 1e-13)
	if failed != nil {
		err = failed
	}
	if err != nil {
		return batch{}, &RequestError{
			Field: "strength", Value: r.req.Strength.Text(units.PercentVolume, 1),
			Allowed: fmt.Sprintf("what %s reaches with these packs and this flavour (%v)", r.fermentable.Name(), err), Err: err,
		}
	}
	return r.mix(share)
}

func (r *recipe) fermentability() float64 { return r.fermentable.Fermentability().In(units.Fraction) }

// forStrength solves the batch for the strength asked for, with the priming that
// the drink of that strength needs.
func (r *recipe) forStrength() (batch, error) {
	want := r.req.Strength.In(units.PercentVolume)
	var b batch
	for range 4 { // priming depends on the drink, and that a little on the priming
		var err error
		if b, err = r.solve(func(b batch) float64 { return b.strength - want }); err != nil {
			return b, err
		}
		if err := r.prime(b); err != nil {
			return b, err
		}
	}
	return r.solve(func(b batch) float64 { return b.strength - want })
}

// forWeight solves the batch for a fermentable as weighed.
func (r *recipe) forWeight(fermentable float64) (batch, error) {
	return r.solve(func(b batch) float64 { return b.fermentable - fermentable })
}

// prime sets the priming of each kind of bottle, for 1 L of base drink. It is called
// again with the batch that follows from it, and aims at the content in the drink when
// it is served, after the head-space has taken its part.
func (r *recipe) prime(b batch) error {
	for i := range r.packs {
		p, k := &r.packs[i], b.packed[i]
		if p.Kind != bottle {
			continue
		}
		dissolved, err := r.dissolved(b, k)
		if err != nil {
			return err
		}
		with, err := primer(p.primer)
		if err != nil {
			return err
		}
		if p.primed > 0 {
			closed, err := r.close(*p, k, dissolved)
			if err != nil {
				return err
			}
			served, err := closed.At(p.Temperature)
			if err != nil {
				return err
			}
			p.short += p.target.In(units.GramCO2PerLitre) - served.Content.In(units.GramCO2PerLitre)
		}
		aim, err := units.GramCO2PerLitre.Try(p.target.In(units.GramCO2PerLitre) + p.short)
		if err != nil {
			return &RequestError{Field: p.field + ".co2", Value: p.Content.String(), Allowed: reason(err), Err: err}
		}
		dose, err := carbonation.PrimingSugar(aim, dissolved, p.Volume, r.flavourSugar(), with)
		if err != nil {
			return &RequestError{Field: p.field + ".co2", Value: p.Content.String(), Allowed: reason(err), Err: err}
		}
		p.primed = kg(dose.Sugar) / k.base
	}
	return nil
}

// dissolved returns the CO2 that a packed drink keeps from the ferment of its base.
// The water that dilutes it was boiled and brings none.
func (r *recipe) dissolved(b batch, k packed) (units.CarbonDioxideContent, error) {
	l, err := carbonation.NewLiquid(b.base)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	c, err := carbonation.ResidualContent(l, r.req.Fermenter.Warmest, r.air.Pressure())
	if err != nil {
		return c, err
	}
	v, err := k.drink.Volume(at20)
	return units.GramCO2PerLitre.Of(checked.Number(c.In(units.GramCO2PerLitre) * k.base / v.In(units.Litre))), err
}

// close fills one bottle.
func (r *recipe) close(p packRecipe, k packed, dissolved units.CarbonDioxideContent) (carbonation.ClosedVessel, error) {
	with, err := primer(p.primer)
	if err != nil {
		return carbonation.ClosedVessel{}, err
	}
	// The vessel counts its priming as sucrose; the primer's gas is turned into it.
	perLitre := k.primer / p.Volume.In(units.Litre)
	sucrose := kg(with.CO2Per(kilograms(perLitre))) / kg(carbonation.Sucrose.CO2Per(units.Kilogram.Of(1)))
	vessel := carbonation.Vessel{
		Capacity: litres(p.Size.In(units.Litre) * (1 + p.HeadSpace.In(units.Fraction))),
		Rating:   p.Rating,
	}
	return vessel.Close(k.drink, carbonation.Filling{
		Volume: p.Size, Temperature: at20, Content: dissolved, Air: units.Percent.Of(100),
		Priming: units.GramPerLitre.Of(checked.Number(1000 * sucrose)), SugarLeft: r.flavourSugar(),
	}, r.air)
}

// flavourSugar is what the flavouring brings that yeast in a bottle can use.
func (r *recipe) flavourSugar() units.MassConcentration {
	f := r.req.Flavour
	if f == nil || f.Sugar == nil {
		return units.MassConcentration{}
	}
	return units.GramPerLitre.Of(checked.Number(f.Sugar.In(units.GramPerLitre) * f.Added.In(units.Litre) / f.Sample.In(units.Litre)))
}

// primer returns a fermentable as carbonation counts it.
func primer(f nutrient.Fermentable) (carbonation.Primer, error) {
	switch f.Name() {
	case nutrient.DextroseMonohydrate().Name():
		return carbonation.DextroseMonohydrate, nil
	case nutrient.DextroseAnhydrous().Name():
		return carbonation.DextroseAnhydrous, nil
	case nutrient.Honey().Name():
		return carbonation.Honey, nil
	}
	return carbonation.NewPrimer(f.Name(), f.Solids(), f.Fermentability())
}
