package plan

import (
	"math"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
)

// prime sets the priming of each kind of bottle, in 1 L of finished drink. It is called
// again with the batch that follows from it, and aims at the content in the drink when
// it is served, after the head-space has taken its part.
// It returns the largest change, in g/L.
func (r *recipe) prime(b batch) (change float64, err error) {
	for i := range r.packs {
		p, k := &r.packs[i], b.packed[i]
		if !p.primes() {
			continue
		}
		dissolved, err := r.dissolved(b, k)
		if err != nil {
			return 0, err
		}
		with, err := primer(p.primer)
		if err != nil {
			return 0, err
		}
		if p.primed > 0 {
			closed, err := r.close(*p, k, dissolved)
			if err != nil {
				return 0, err
			}
			served, err := closed.At(p.Temperature)
			if err != nil {
				return 0, err
			}
			change = math.Max(change, 1000*p.correct(served.Content.In(units.GramCO2PerLitre)))
			if p.primed > 0 {
				continue
			}
			// It has more gas than asked for without a primer: what follows tells so.
		}
		dose, err := carbonation.PrimingSugar(p.target, dissolved, p.Volume, r.flavourSugar(), with)
		if err != nil {
			return 0, &RequestError{Field: p.field + ".co2", Value: p.Content.String(), Allowed: reason(err), Err: err}
		}
		was := p.primed
		p.primed = kg(dose.Sugar) / p.Volume.In(units.Litre)
		change = math.Max(change, 1000*math.Abs(p.primed-was))
	}
	return change, nil
}

// primeAhead sets the primer of each bottle as if the drink were water and ethanol of the
// strength asked for, so that the first batch is nearly right; where that fails, prime
// begins with none.
func (r *recipe) primeAhead() {
	ethanol := r.req.Strength.In(units.PercentVolume) / 100 * pureEthanol // kg in a litre
	drink, err := gravity.NewSolution(kilograms(1-ethanol), units.Mass{}, kilograms(ethanol))
	if err != nil {
		return
	}
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return
	}
	dissolved, err := carbonation.ResidualContent(l, r.req.Fermenter.Warmest, r.air.Pressure())
	if err != nil {
		return
	}
	for i := range r.packs {
		p := &r.packs[i]
		if !p.primes() {
			continue
		}
		with, err := primer(p.primer)
		if err != nil {
			return
		}
		dose, err := carbonation.PrimingSugar(p.target, dissolved, p.Volume, r.flavourSugar(), with)
		if err != nil {
			return
		}
		p.primed = kg(dose.Sugar) / p.Volume.In(units.Litre)
	}
}

// correct mends the primer after a drink that was primed with it would be served with a
// content in g/L: by secants, at first as if all its gas stayed in the drink. It returns
// the change, in kg/L.
func (p *packRecipe) correct(served float64) float64 {
	if slope := (served - p.served) / (p.primed - p.wasPrimed); p.wasPrimed > 0 && slope > 0.3*gasOfSugar && slope < 2*gasOfSugar {
		p.slope = slope
	}
	step := (p.target.In(units.GramCO2PerLitre) - served) / p.slope
	p.wasPrimed, p.served = p.primed, served
	p.primed = max(0, p.primed+step)
	return math.Abs(step)
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
	litres := k.drink.VolumeAt20().In(units.Litre)
	return units.GramCO2PerLitre.Of(checked.Number(c.In(units.GramCO2PerLitre) * k.base / litres)), nil
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

// primer returns a fermentable as carbonation counts it: by the hexose in it.
func primer(f nutrient.Fermentable) (carbonation.Primer, error) {
	parts, err := f.Of(units.Kilogram.Of(1))
	if err != nil {
		return carbonation.Primer{}, err
	}
	return carbonation.NewPrimer(f.Name(), units.Fraction.Of(checked.Number(kg(parts.AsHexose))))
}
