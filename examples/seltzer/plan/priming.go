package plan

import (
	"errors"
	"math"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// prime mends the priming of each kind of bottle, in 1 L of finished drink, by what the
// batch that follows from it would be served with: after the head-space has taken its part,
// and with the sugar of a flavouring fermented too. It returns the largest change, in g/L.
func (r *recipe) prime(b batch) (change float64, err error) {
	for i := range r.packs {
		p, k := &r.packs[i], b.packed[i]
		if !p.primes() {
			continue
		}
		dissolved, err := r.dissolved(b, *p, k)
		if err != nil {
			return 0, p.refused(err)
		}
		closed, err := r.close(*p, k, dissolved, false)
		if err != nil {
			return 0, p.refused(err)
		}
		served, err := closed.At(p.Temperature)
		if err != nil {
			return 0, err
		}
		was := p.primed
		if p.excess = 0; served.AtLeast { // full of liquid, or above 20 bar
			p.primed, p.wasPrimed, p.excess = 0, 0, math.Inf(1)
		} else {
			p.correct(served.Content.In(units.GramCO2PerLitre))
		}
		if p.primed == 0 && was == 0 && !served.AtLeast {
			p.excess = served.Content.In(units.GramCO2PerLitre) - p.target.In(units.GramCO2PerLitre)
		}
		if moved := 1000 * math.Abs(p.primed-was); moved >= change {
			change, r.restless = moved, i
		}
	}
	return change, nil
}

// primeAhead sets the primer of each bottle as if the drink were water and ethanol of the
// strength asked for, so that the first batch is nearly right; where that fails, prime
// begins with none.
func (r *recipe) primeAhead() {
	ethanol := r.req.Strength.In(units.PercentVolume) / 100 * pureEthanol // kg in a litre; a pack's own differs little
	drink, err := gravity.NewSolution(kilograms(1-ethanol), units.Mass{}, kilograms(ethanol))
	if err != nil {
		return
	}
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return
	}
	dissolved, err := l.ResidualContent(r.air.Pressure(), r.req.Fermenter.Warmest)
	if err != nil {
		return
	}
	for i := range r.packs {
		p := &r.packs[i]
		if !p.primes() {
			continue
		}
		var left units.MassConcentration
		if f := p.taste; f != nil && f.Sugar != nil {
			left = units.GramPerLitre.Of(checked.Number(f.Sugar.In(units.GramPerLitre) * f.Added.In(units.Litre) / f.Sample.In(units.Litre)))
		}
		dose, err := carbonation.PrimingSugar(p.primer, p.target, dissolved, left, p.Volume)
		if err != nil {
			return
		}
		p.primed = kg(dose.Primer.Mass) / p.inPack.gas / p.Volume.In(units.Litre)
	}
}

// leastMove is by how much of itself a primer has to move for what it does to be told from what the batch about it does.
const leastMove = 0.01

// correct mends the primer after a drink that was primed with it would be served with a
// content in g/L: by secants, at first as if all its gas stayed in the drink.
func (p *packRecipe) correct(served float64) {
	if moved := p.primed - p.wasPrimed; p.wasPrimed > 0 && math.Abs(moved) > leastMove*p.primed { // else the batch moved with it
		if slope := (served - p.served) / moved; slope > 0.3*gasOfSugar && slope < 2*gasOfSugar {
			p.slope = slope
		}
	}
	step := (p.target.In(units.GramCO2PerLitre) - served) / p.slope
	p.wasPrimed, p.served = p.primed, served
	p.primed = max(0, p.primed+step)
}

// dissolved returns the CO2 that a packed drink keeps from the ferment of its base.
// The water that dilutes it was boiled and brings none.
func (r *recipe) dissolved(b batch, p packRecipe, k packed) (units.CarbonDioxideContent, error) {
	if p.Content.none {
		return units.CarbonDioxideContent{}, nil
	}
	l, err := carbonation.NewLiquid(b.base)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	c, err := l.ResidualContent(r.air.Pressure(), r.req.Fermenter.Warmest)
	if err != nil {
		return c, err
	}
	litres := k.drink.VolumeAt20().In(units.Litre)
	return units.GramCO2PerLitre.Of(checked.Number(c.In(units.GramCO2PerLitre) * k.base / litres)), nil
}

// close fills one bottle without a batch. The search for the primer begins with it, and a rating is held against it: at worst
// it is what no batch usually comes to, so that no state has it. Nothing else that is printed comes from here; that is
// read off the states of the pack ([maker.fill]). Where yeast is to prime it, the sugar of the flavouring primes with the primer; in a still drink
// it is sugar left. At worst all sugar turns into ethanol and gas, the drink is full of air, the bottle
// does not stretch, and a head-space under gas keeps the pressure of the filling; else all is as the batch usually has it.
func (r *recipe) close(p packRecipe, k packed, dissolved units.CarbonDioxideContent, worst bool) (carbonation.ClosedVessel, error) {
	// The vessel counts its priming as sucrose; the primer's gas is turned into it.
	perLitre := k.primer / p.Volume.In(units.Litre)
	priming := kg(carbonation.CO2From(p.primer.Dose(kilograms(perLitre)))) / kg(carbonation.CO2From(material.Sucrose().Dose(units.Kilogram.Of(1))))
	filling := carbonation.Filling{Temperature: at20, Content: dissolved, Air: units.Percent.Of(100)}
	if t := r.req.Fermenter.Warmest; t.Compare(at20) < 0 { // no warmer than it has been
		filling.Temperature = t
	}
	gas, air := p.inPack.gas, p.inPack.air
	if p.counterPressure() {
		air = 0
	}
	if worst {
		gas, air = 1, 1
	}
	filling.AirRemoved = units.Fraction.Of(checked.Number(1 - air))
	if p.counterPressure() {
		filling.Air, filling.Temperature, filling.Content = units.Share{}, p.filledAt(), p.filling
	}
	if p.primes() {
		priming += r.sugarLeft(p, k) / 1000
	} else {
		filling.SugarLeft = units.GramPerLitre.Of(checked.Number(r.sugarLeft(p, k)))
	}
	filling.Priming = units.GramPerLitre.Of(checked.Number(1000 * gas * priming))
	is, err := at20To(k.drink, p.Size, filling.Temperature)
	if err != nil {
		return carbonation.ClosedVessel{}, err
	}
	filling.Volume = litres(is.In(units.Litre) + p.Size.In(units.Litre)*forward.Swelling(filling.Content).In(units.Fraction))
	vessel := carbonation.Vessel{Capacity: litres(p.Size.In(units.Litre) / (1 - p.HeadSpace.In(units.Fraction))), Rating: p.Rating, StretchPerBar: part(p.Stretch)}
	if worst {
		vessel.StretchPerBar, filling.AtRest = units.Share{}, p.counterPressure()
	}
	closed, err := vessel.Close(k.drink, filling, r.air)
	if err = p.refused(err); err != nil {
		if _, named := errors.AsType[*RequestError](err); !named {
			err = &RequestError{Field: p.field + ".co2", Value: p.Content.String(), Allowed: told(err), Err: err}
		}
	}
	return closed, err
}

// flavourSugar is what the flavouring brings that yeast in a pack can use, in g to a litre of
// the packed drink.
func (r *recipe) flavourSugar(p packRecipe, k packed) float64 {
	f := p.taste
	if f == nil || f.Sugar == nil {
		return 0
	}
	return f.Sugar.In(units.GramPerLitre) * k.flavour / p.Volume.In(units.Litre)
}

// sugarLeft is all that a pack holds that yeast could use, in g to a litre.
func (r *recipe) sugarLeft(p packRecipe, k packed) float64 {
	return r.flavourSugar(p, k) + 1000*k.sugar/p.Volume.In(units.Litre)
}
