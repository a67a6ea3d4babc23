package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// Bottles are a number of bottles of one size.
type Bottles struct {
	Fill  units.Volume // of drink in each
	Count int
}

// A BottleDose is the primer for each bottle of one size.
type BottleDose struct {
	Bottles Bottles
	Each    units.ExactMass            // as weighed
	Content units.CarbonDioxideContent // that it brings
}

// Spread is a priming divided over bottles of several sizes.
type Spread struct {
	Doses []BottleDose
	Total units.ExactMass // of all the doses
	// Batch is the mass to weigh when the sugar is mixed into the whole volume
	// instead: the same bottles at the exact content.
	Batch    units.ExactMass
	Volume   units.Volume // that the bottles take
	Cautions caution.List
}

// Spread divides a priming over bottles, each dose and the batch rounded down to a
// step of the scale, so that no bottle passes the content asked for.
//
//   - Source: proportion to the filled volume.
//   - Range: 1 to 100 sizes, 1 to 1,000,000 bottles of a size, each above 1 mL; a step
//     above zero; otherwise the error is a [*units.RangeError].
//   - Units: the step has a unit of mass; doses come in it.
//   - Uncertainty: half a step of each dose. Where that is above 5 % of it the result
//     carries the caution uneven_spread.
func (p Priming) Spread(bottles []Bottles, step units.ExactMass) (Spread, error) {
	const fn = "carbonation.Priming.Spread"
	if err := limit.Check(fn, "number of sizes", float64(len(bottles)), "", 1, 100, "bottles to fill"); err != nil {
		return Spread{}, err
	}
	s := Spread{Cautions: p.Cautions}
	var perLitre, gas float64 // g of primer; g of CO2 from a gram of it
	if made := p.FromPrimer.In(units.GramCO2PerLitre); made > 0 {
		g, err := gasOf(fn, p.Primer.Material)
		if err != nil {
			return Spread{}, err
		}
		perLitre, gas = made/g, g
	}
	before := p.Final.In(units.GramCO2PerLitre) - p.FromPrimer.In(units.GramCO2PerLitre)
	var litres float64
	for _, b := range bottles {
		v := b.Fill.In(units.Litre)
		if err := limit.Check(fn, "filled volume", v, "L", 1e-3, 1e5, "bottles to fill"); err != nil {
			return Spread{}, err
		}
		if err := limit.Check(fn, "number of bottles", float64(b.Count), "", 1, 1e6, "bottles to fill"); err != nil {
			return Spread{}, err
		}
		each, err := units.Gram.Of(checked.Number(perLitre*v)).Round(step, units.Down)
		if err != nil {
			return Spread{}, limit.Named(fn, err)
		}
		mass := each.Quantity().In(units.Gram)
		s.Doses = append(s.Doses, BottleDose{Bottles: b, Each: each, Content: grams(before + gas*mass/v)})
		half := step.Quantity().In(units.Gram) / 2
		s.Cautions = cautions(s.Cautions...).with(unevenSpread, perLitre > 0 && half > coarse*perLitre*v).list()
		n := float64(b.Count)
		litres += n * v
		all, err := units.Gram.Of(checked.Number(n*mass)).Round(step, units.Nearest)
		if err == nil && len(s.Doses) > 1 {
			all, err = s.Total.Plus(all)
		}
		if err != nil {
			return Spread{}, limit.Named(fn, err)
		}
		s.Total = all
	}
	var err error
	s.Volume = units.Litre.Of(checked.Number(litres))
	s.Batch, err = units.Gram.Of(checked.Number(perLitre*litres)).Round(step, units.Down)
	if err != nil {
		return Spread{}, limit.Named(fn, err)
	}
	return s, nil
}

// coarse is the part of a dose that half a step of the scale may be.
const coarse = 0.05
