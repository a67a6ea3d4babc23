package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/units"
)

// labelled is a litre of a drink with glycerol and organic acid.
func labelled(strength units.StrengthByVolume, extract units.Extract, glycerol, acid units.MassConcentration) (gravity.Solution, error) {
	s, err := carbonation.DrinkOf(strength, extract)
	if err != nil {
		return s, err
	}
	litre, err := s.Times(1 / s.VolumeAt20().In(units.Litre))
	if err != nil {
		return s, err
	}
	if litre, err = litre.AddExtract(gravity.AsGlycerol, as(units.Gram, glycerol.In(units.GramPerLitre))); err != nil {
		return s, err
	}
	if litre, err = litre.AddExtract(gravity.AsOrganicAcid, as(units.Gram, acid.In(units.GramPerLitre))); err != nil {
		return s, err
	}
	for range 4 { // as much water makes room for them
		over := 1000 * (litre.VolumeAt20().In(units.Litre) - 1)
		if litre, err = litre.BoilOff(as(units.Gram, max(0, over))); err != nil {
			return s, err
		}
		if litre, err = litre.AddWater(as(units.Gram, max(0, -over))); err != nil {
			return s, err
		}
	}
	return litre, nil
}

// nutritionOf is an entry for the nutrition of 100 mL; energy says how it is stated.
func nutritionOf(name, meaning, source string, extract float64, of func(gravity.Solution) label.Nutrition, energy string,
	outputs ...result[label.Nutrition]) *Function {
	drink := of4(
		takes("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
		takes("real_extract", units.DegreePlato, "extract in the drink, counted as sugar", 0, 30, extract).or(0),
		takes("glycerol", units.GramPerLitre, "glycerol beside it; a dry sugar wash has about 0.5 for each % vol", 0, 50, 2.3).or(0),
		takes("organic_acid", units.GramPerLitre, "organic acids beside it; a dry sugar wash has about 0.1 for each % vol", 0, 30, 0.5).or(0),
		labelled)
	return entry(name, meaning, source, of1(drink, sure(of)), append([]result[label.Nutrition]{
		from(func(n label.Nutrition) units.Energy { return n.Energy.Kilojoules }, "kilojoules", units.Kilojoule, "energy of 100 mL"+energy),
		from(func(n label.Nutrition) units.Energy { return n.Energy.Kilocalories }, "kilocalories", units.Kilocalorie,
			"energy of 100 mL, by its own factors"+energy),
	}, outputs...)...)
}

// gravityLabels are what a label states.
func gravityLabels() []*Function {
	type (
		nutrition = label.Nutrition
		calories  = pair[float64, units.Energy] // kcal, and as stated
		tolerance = pair[units.PercentagePoints, units.StrengthByVolume]
	)
	const eu = "Regulation (EU) No 1169/2011"
	carbohydrate := func(n nutrition) units.Mass { return n.Carbohydrate }
	polyols := func(n nutrition) units.Mass { return n.Polyols }
	return []*Function{
		nutritionOf("energy_eu", "energy of 100 mL of a drink as an EU label states it, kJ and kcal each by its own factors; check the law in force",
			eu+" annexes I and XIV", 0.5, label.NutritionOf, "",
			from(func(n nutrition) units.Mass { return n.Ethanol }, "ethanol", units.Gram, "ethanol in 100 mL"),
			from(carbohydrate, "carbohydrate", units.Gram, "carbohydrate in 100 mL, with polyols such as glycerol, as the law counts it"),
			from(polyols, "polyols", units.Gram, "of which polyols")),
		nutritionOf("nutrition_label_eu", "nutrition of 100 mL of a drink, rounded as an EU label states it; check the law in force",
			eu+" annexes I and XIV; Guidance on tolerances (2012) table 4, recalled from memory", 3,
			func(s gravity.Solution) nutrition { return label.NutritionOf(s).RoundEU() }, ", whole",
			from(carbohydrate, "carbohydrate", units.Gram, "carbohydrate in 100 mL, polyols in it: to 0.1 g below 10 g, nothing up to 0.5 g"),
			from(func(n nutrition) units.Mass { return n.Sugars }, "sugars", units.Gram, "of which sugars, rounded the same way"),
			from(polyols, "polyols", units.Gram, "of which polyols, rounded the same way")),
		entry("energy_us", "energy of a serving of beer as American analysts calculate it", "The Oxford Companion to Beer (2012), calories, after ASBC",
			of4(takes("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
				takes("real_extract", units.DegreePlato, "extract in the drink, without the ethanol; glycerol and acids count in it", 0, 30, 4).or(0),
				takes("ash", units.Percent, "ash, by mass; customary for beer is 0.1, for a sugar wash 0", 0, 1, 0.1).or(0),
				takes("serving", units.Millilitre, "volume of the serving", 1, 10000, 355).or(355),
				func(v units.StrengthByVolume, x units.Extract, ash units.Share, serving units.Volume) (calories, error) {
					s, err := carbonation.DrinkOf(v, x)
					if err != nil {
						return calories{}, err
					}
					e, err := label.EnergyUS(s, ash)
					if err != nil {
						return calories{}, err
					}
					kcal := e.In(units.Kilocalorie) * serving.In(units.Millilitre) / 100
					label, err := label.RoundCaloriesUS(as(units.Kilocalorie, kcal))
					return calories{kcal, label}, err
				}),
			stated(func(c calories) float64 { return c.a }, "kilocalories", units.Kilocalorie, "energy of the serving"),
			from(func(c calories) units.Energy { return c.b }, "on_label", units.Kilocalorie, "the same, rounded as 21 CFR 101.9(c)(1) does")),
		entry("label_tolerance", "how far the strength may be from the label; check the law in force",
			eu+" annex XII (2011), before the error of the analysis; 27 CFR 7.65 (2022; none below 0.5 % vol), for spirits 19.356 (since 4 May "+
				"2020), for wine 4.36; a seltzer of sugar is no US malt beverage (TTB Ruling 2008-3)",
			of2(picks("category", "kind of drink, with its law", upTo(label.USWine)), takes("strength", units.PercentVolume, "strength on the label", 0, 100, 4.6),
				func(c label.Category, v units.StrengthByVolume) (tolerance, error) {
					t, err := c.Tolerance(v)
					return tolerance{t, label.Strength(v)}, err
				}),
			from(func(t tolerance) units.StrengthByVolume {
				return as(units.PercentVolume, t.a.In(units.PercentagePoint))
			},
				"tolerance", units.PercentVolume, "more or less than the label"),
			from(func(t tolerance) units.StrengthByVolume { return t.b }, "on_label", units.PercentVolume, "the strength as a label states it, to one decimal")),
	}
}
