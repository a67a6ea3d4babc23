package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// gravityExtracts are extract and strength before and after the ferment.
func gravityExtracts() []Function {
	const balling = "C. J. N. Balling, Die Gährungschemie (1865)"
	return []Function{
		entry("original_extract", "original extract of a malt beer from its strength and real extract", balling,
			of2(takes("strength_by_mass", units.PercentMass, "ethanol in the beer", 0, 20, 3.8), takes("real_extract", units.DegreePlato, "extract left in the beer, without the ethanol", 0, 40, 4.5), rival.OriginalExtractBalling),
			gives("original_extract", units.DegreePlato, "extract of the wort")),
		entry("strength_from_extracts", "strength of a malt beer from its original and real extract", balling,
			of2(takes("original_extract", units.DegreePlato, "extract of the wort", 0, 40, 12), takes("real_extract", units.DegreePlato, "extract left in the beer, without the ethanol", 0, 40, 4.5), rival.StrengthBalling),
			gives("strength_by_mass", units.PercentMass, "ethanol in the beer")),
		entry("real_extract", "real extract of a malt beer from its original extract and strength", balling,
			of2(takes("original_extract", units.DegreePlato, "extract of the wort", 0, 40, 12), takes("strength_by_mass", units.PercentMass, "ethanol in the beer", 0, 20, 3.8), rival.RealExtractBalling),
			gives("real_extract", units.DegreePlato, "extract left in the beer, without the ethanol")),
	}
}

// gravityDrinks are a wash and a drink as a whole.
func gravityDrinks() []Function {
	sugar := choice("sugar", "which sugar; dextrose as the anhydrous sugar", "sucrose", "glucose", "fructose").orOption("sucrose")
	return []Function{
		{
			Name:    "wash_from_sugar",
			Meaning: "gravity, volume and dry end of a wash of sugar and water",
			Source:  tabarie + "; French order of 3 May 1996 art. 2 for the yield",
			Inputs: []Input{
				in("sugar_mass", units.Kilogram, "sugar in the wash", 0, 1e6, 4.5),
				in("water_mass", units.Kilogram, "water in the wash", 0.001, 1e6, 55),
				sugar,
				temperatureInput("wash, for its volume", 0, 100).or(20),
			},
			Outputs: []Output{
				pure("gravity", "", "specific gravity 20/20 °C of the wash"),
				out("extract", units.DegreePlato, "extract that a hydrometer shows in the wash"),
				out("volume", units.Litre, "volume of the wash at its temperature"),
				pure("dry_gravity", "", "specific gravity 20/20 °C when all sugar is used"),
				out("dry_extract", units.DegreePlato, "apparent extract when all sugar is used; below zero"),
				out("strength", units.PercentVolume, "strength when all sugar is used"),
				out("carbon_dioxide", units.Gram, "CO2 given off"),
			},
			call: func(in, out []float64) error {
				s, err := gravity.NewSolution(as(units.Kilogram, in[1]), units.Mass{}, units.Mass{})
				if err != nil {
					return err
				}
				kind := gravity.Sugar(in[2])
				if s, err = s.AddExtract(kind, as(units.Kilogram, in[0])); err != nil {
					return err
				}
				v, err := s.Volume(as(units.Celsius, in[3]))
				if err != nil {
					return err
				}
				dry, made, err := s.Dry(gravity.SugarWashYield(kind))
				if err != nil {
					return err
				}
				out[0], out[1], out[2] = s.Gravity().SG(), s.Gravity().Extract().In(units.DegreePlato), v.In(units.Litre)
				out[3], out[4] = dry.Gravity().SG(), dry.Gravity().Extract().In(units.DegreePlato)
				out[5], out[6] = dry.ByVolume().In(units.PercentVolume), made.CO2.In(units.Gram)
				return nil
			},
		},
		{
			Name:    "drink_gravity",
			Meaning: "what a hydrometer shows in a drink of a strength and a real extract",
			Source:  tabarie,
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
				in("real_extract", units.DegreePlato, "extract in the drink, without the ethanol", 0, 30, 0.5).or(0),
				temperatureInput("drink, for its density", 0, 40).or(20),
			},
			Outputs: []Output{
				pure("gravity", "", "specific gravity 20/20 °C"),
				out("apparent_extract", units.DegreePlato, "extract that a hydrometer shows"),
				densityOutput("drink at its temperature"),
				out("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the drink"),
			},
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[0]), as(units.DegreePlato, in[1]))
				if err != nil {
					return err
				}
				d, err := s.Density(as(units.Celsius, in[2]))
				if err != nil {
					return err
				}
				out[0], out[1] = s.Gravity().SG(), s.Gravity().Extract().In(units.DegreePlato)
				out[2], out[3] = d.In(units.KilogramPerCubicMetre), s.ByMass().In(units.PercentMass)
				return nil
			},
		},
		{
			Name:    "standard_drinks",
			Meaning: "standard drinks in a volume of a strength",
			Source:  "NIAAA (14 g); UK unit (10 mL); Food Standards Code 1.1.2 of Australia and New Zealand (10 g)",
			Inputs: []Input{
				in("volume", units.Litre, "volume of the drink at 20 °C", 0, 1e6, 0.33),
				in("strength", units.PercentVolume, "ethanol of the drink", 0, 100, 4.6),
				choice("country", "whose measure", "us", "uk", "au"),
			},
			Outputs: []Output{
				pure("drinks", "", "number of standard drinks or units"),
				pure("on_label", "", "the number as a label states it: one decimal below 10, whole from there"),
			},
			call: func(in, out []float64) error {
				n, err := gravity.StandardDrinks(gravity.StandardDrink(in[2]), as(units.PercentVolume, in[1]), as(units.Litre, in[0]))
				if err != nil {
					return err
				}
				out[0] = n
				out[1], err = gravity.LabelDrinks(n)
				return err
			},
		},
	}
}
