package plan

import (
	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// nutrition is what the label of a drink says of 100 mL, the contents by the litre.
type nutrition struct {
	kJ, kcal                             units.Energy
	carbohydrate, sugars, polyols, acids units.MassConcentration
}

// sweetened is so much, in kg as weighed, of a sweetener in a drink.
type sweetened struct {
	with sweetness
	kilo float64
}

// polyol is what a gram counts by EU law (Regulation (EU) 1169/2011, annex XIV, read) and by 21 CFR 101.9(c)(1)(i)(F) (all but
// erythritol's read second hand, that recalled from memory).
type polyol struct {
	is               bool
	kJ, kcal, kcalUS float64
}

var polyols = map[string]polyol{
	"erythritol": {true, 0, 0, 0}, "xylitol": {true, 10, 2.4, 2.4}, "sorbitol": {true, 10, 2.4, 2.6}, "mannitol": {true, 10, 2.4, 1.6},
	"maltitol": {true, 10, 2.4, 2.1}, "isomalt": {true, 10, 2.4, 2}, "lactitol": {true, 10, 2.4, 2},
}

// What a gram of carbohydrate counts, by both laws.
const kJCarbohydrate, kcalCarbohydrate = 17, 4

// nutrients are those of a drink, with the sweeteners that yeast leaves: a [gravity.Solution] knows them as dextrin.
func nutrients(law string, drink gravity.Solution, sweet ...sweetened) (n nutrition, err error) {
	of, e := label.NutritionOf(drink), label.EnergyEU(drink)
	if n.kJ, n.kcal = e.Kilojoules, e.Kilocalories; law == "US" { // one figure there, by its own factors
		if n.kcal, err = label.EnergyUS(drink, units.Share{}); err != nil {
			return n, err
		}
		n.kJ = n.kcal
	}
	litres := drink.VolumeAt20().In(units.Litre)
	sugars, polyols := 10*of.Sugars.In(units.Gram), 10*of.Polyols.In(units.Gram) // g/L
	for _, s := range sweet {
		grams := 1000 * s.kilo * s.with.solids() / litres
		if s.with.lactose {
			sugars += grams
		}
		c := s.with.counts
		if !c.is {
			continue
		}
		polyols += grams
		kcal := c.kcal
		if law == "US" {
			kcal = c.kcalUS
		}
		n.kcal = units.Kilocalorie.Of(checked.Number(n.kcal.In(units.Kilocalorie) - (kcalCarbohydrate-kcal)*grams/10))
		if n.kJ = units.Kilojoule.Of(checked.Number(n.kJ.In(units.Kilojoule) - (kJCarbohydrate-c.kJ)*grams/10)); law == "US" {
			n.kJ = n.kcal
		}
	}
	gramsInLitre := func(x float64) units.MassConcentration { return units.GramPerLitre.Of(checked.Number(x)) }
	n.sugars, n.polyols = gramsInLitre(sugars), gramsInLitre(polyols)
	n.carbohydrate, n.acids = gramsInLitre(10*of.Carbohydrate.In(units.Gram)), gramsInLitre(10*of.OrganicAcids.In(units.Gram))
	if law == "US" { // by difference: what is not water, alcohol, ash or protein
		n.carbohydrate = gramsInLitre(1000 * kg(drink.Extract()) / litres)
	}
	return n, nil
}

// solids is the part of a sweetener, as weighed, that is not water.
func (s sweetness) solids() float64 {
	if s.of.IsZero() {
		return 0
	}
	return s.of.Composition().UnfermentedSolids.In(units.Fraction)
}
