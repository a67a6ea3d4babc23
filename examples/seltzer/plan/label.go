package plan

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// label is what the label says of the whole batch.
func (m *maker) label() error {
	mean, err := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Mass{})
	if err != nil {
		return err
	}
	for _, k := range m.batch.packed {
		if mean, err = mean.Plus(k.drink); err != nil {
			return err
		}
	}
	l := LabelPlan{Law: m.req.Label.Law, Serving: m.req.Label.Serving, Tolerance: units.PercentVolume.Of(labelTolerance)}
	l.Strength = units.PercentVolume.Of(checked.Number(math.Round(10*m.batch.strength) / 10))
	l.Within = true
	for _, k := range m.batch.packed {
		off := math.Abs(k.drink.ByVolume().In(units.PercentVolume) - l.Strength.In(units.PercentVolume))
		l.Within = l.Within && off <= l.Tolerance.In(units.PercentVolume)
	}
	if !l.Within {
		m.caution("The packs differ in strength by more than the label may: label them apart.")
	}
	e := mean.EnergyEU()
	l.Kilojoules, l.Kilocalories = e.Kilojoules, e.Kilocalories
	if l.Law == "US" { // one figure there, by its own factors
		if l.Kilocalories, err = mean.EnergyUS(units.Share{}); err != nil {
			return err
		}
		l.Kilojoules = l.Kilocalories
	}
	l.PerServing = units.Kilocalorie.Of(checked.Number(l.Kilocalories.In(units.Kilocalorie) * l.Serving.In(units.Millilitre) / 100))
	v := mean.VolumeAt20()
	sugars := kg(mean.Extract()) - kg(mean.ExtractOf(gravity.Glycerol))
	l.Carbohydrate = units.GramPerLitre.Of(checked.Number(1000 * sugars / v.In(units.Litre)))
	for _, d := range []struct {
		into *float64
		kind gravity.StandardDrink
	}{{&l.DrinksUS, gravity.DrinkUS}, {&l.UnitsUK, gravity.UnitUK}, {&l.DrinksAU, gravity.DrinkAU}} {
		if *d.into, err = gravity.StandardDrinks(l.Serving, mean.ByVolume(), d.kind); err != nil {
			return err
		}
	}
	m.plan.Label = l
	return nil
}
