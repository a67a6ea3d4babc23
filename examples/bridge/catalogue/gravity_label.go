package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// labelled is a drink of strength, real extract, and glycerol and organic acid a litre.
func labelled(in []float64) (gravity.Solution, error) {
	s, err := carbonation.DrinkOf(as(units.PercentVolume, in[0]), as(units.DegreePlato, in[1]))
	if err != nil {
		return s, err
	}
	litre, err := s.Times(1 / s.VolumeAt20().In(units.Litre))
	if err != nil {
		return s, err
	}
	for i, k := range []gravity.Sugar{gravity.AsGlycerol, gravity.AsOrganicAcid} {
		if litre, err = litre.AddExtract(k, as(units.Gram, in[2+i])); err != nil {
			return s, err
		}
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

// gravityLabels are what a label states.
func gravityLabels() []Function {
	const eu = "Regulation (EU) No 1169/2011"
	var categories []string
	for c := gravity.EUBeer; c <= gravity.USWine; c++ {
		categories = append(categories, c.String())
	}
	return []Function{
		{
			Name:    "energy_eu",
			Meaning: "energy of 100 mL of a drink as an EU label states it, kJ and kcal each by its own factors; check the law in force",
			Source:  eu + " annexes I and XIV",
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
				in("real_extract", units.DegreePlato, "extract in the drink, counted as sugar", 0, 30, 0.5).or(0),
				in("glycerol", units.GramPerLitre, "glycerol beside it; a dry sugar wash has about 0.5 for each % vol", 0, 50, 2.3).or(0),
				in("organic_acid", units.GramPerLitre, "organic acids beside it; a dry sugar wash has about 0.1 for each % vol", 0, 30, 0.5).or(0),
			},
			Outputs: []Output{
				out("kilojoules", units.Kilojoule, "energy of 100 mL"),
				out("kilocalories", units.Kilocalorie, "energy of 100 mL, by its own factors"),
				out("ethanol", units.Gram, "ethanol in 100 mL"),
				out("carbohydrate", units.Gram, "carbohydrate in 100 mL, with polyols such as glycerol, as the law counts it"),
				out("polyols", units.Gram, "of which polyols"),
			},
			call: func(in, out []float64) error {
				s, err := labelled(in)
				if err != nil {
					return err
				}
				n := s.Nutrition()
				out[0], out[1] = n.Energy.Kilojoules.In(units.Kilojoule), n.Energy.Kilocalories.In(units.Kilocalorie)
				out[2], out[3], out[4] = n.Ethanol.In(units.Gram), n.Carbohydrate.In(units.Gram), n.Polyols.In(units.Gram)
				return nil
			},
		},
		{
			Name:    "nutrition_label_eu",
			Meaning: "nutrition of 100 mL of a drink, rounded as an EU label states it; check the law in force",
			Source:  eu + " annexes I and XIV; Guidance on tolerances (2012) table 4, recalled from memory",
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
				in("real_extract", units.DegreePlato, "extract in the drink, counted as sugar", 0, 30, 3).or(0),
				in("glycerol", units.GramPerLitre, "glycerol beside it; a dry sugar wash has about 0.5 for each % vol", 0, 50, 2.3).or(0),
				in("organic_acid", units.GramPerLitre, "organic acids beside it; a dry sugar wash has about 0.1 for each % vol", 0, 30, 0.5).or(0),
			},
			Outputs: []Output{
				out("kilojoules", units.Kilojoule, "energy of 100 mL, whole"),
				out("kilocalories", units.Kilocalorie, "energy of 100 mL, by its own factors, whole"),
				out("carbohydrate", units.Gram, "carbohydrate in 100 mL, polyols in it: to 0.1 g below 10 g, nothing up to 0.5 g"),
				out("sugars", units.Gram, "of which sugars, rounded the same way"),
				out("polyols", units.Gram, "of which polyols, rounded the same way"),
			},
			call: func(in, out []float64) error {
				s, err := labelled(in)
				if err != nil {
					return err
				}
				n := s.Nutrition().RoundEU()
				out[0], out[1] = n.Energy.Kilojoules.In(units.Kilojoule), n.Energy.Kilocalories.In(units.Kilocalorie)
				out[2], out[3], out[4] = n.Carbohydrate.In(units.Gram), n.Sugars.In(units.Gram), n.Polyols.In(units.Gram)
				return nil
			},
		},
		{
			Name:    "energy_us",
			Meaning: "energy of a serving of beer as American analysts calculate it",
			Source:  "The Oxford Companion to Beer (2012), calories, after ASBC",
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
				in("real_extract", units.DegreePlato, "extract in the drink, without the ethanol; glycerol and acids count in it", 0, 30, 4).or(0),
				in("ash", units.Percent, "ash, by mass; customary for beer is 0.1, for a sugar wash 0", 0, 1, 0.1).or(0),
				in("serving", units.Millilitre, "volume of the serving", 1, 10000, 355).or(355),
			},
			Outputs: []Output{
				out("kilocalories", units.Kilocalorie, "energy of the serving"),
				out("on_label", units.Kilocalorie, "the same, rounded as 21 CFR 101.9(c)(1) does"),
			},
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[0]), as(units.DegreePlato, in[1]))
				if err != nil {
					return err
				}
				e, err := s.EnergyUS(as(units.Percent, in[2]))
				if err != nil {
					return err
				}
				out[0] = e.In(units.Kilocalorie) * in[3] / 100
				r, err := gravity.RoundCaloriesUS(as(units.Kilocalorie, out[0]))
				out[1] = r.In(units.Kilocalorie)
				return err
			},
		},
		{
			Name:    "label_tolerance",
			Meaning: "how far the strength may be from the label; check the law in force",
			Source: eu + " annex XII (2011), before the error of the analysis; 27 CFR 7.65 (2022; none below 0.5 % vol), for spirits 19.356 (since 4 May " +
				"2020), for wine 4.36; a seltzer of sugar is no US malt beverage (TTB Ruling 2008-3)",
			Inputs: []Input{
				choice("category", "kind of drink, with its law", categories...),
				in("strength", units.PercentVolume, "strength on the label", 0, 100, 4.6),
			},
			Outputs: []Output{
				out("tolerance", units.PercentVolume, "more or less than the label"),
				out("on_label", units.PercentVolume, "the strength as a label states it, to one decimal"),
			},
			call: func(in, out []float64) error {
				v := as(units.PercentVolume, in[1])
				t, err := gravity.LabelTolerance(gravity.Category(in[0]), v)
				out[0], out[1] = t.In(units.PercentagePoint), gravity.LabelStrength(v).In(units.PercentVolume)
				return err
			},
		},
	}
}
