package catalogue

import (
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// nutrientFunctions are the entries of package nutrient.
func nutrientFunctions() []Function {
	var all []Function
	for _, part := range [][]Function{
		nutrientSugar(),
		nutrientFeed(),
		nutrientNitrogen(),
		nutrientPH(),
		nutrientYeast(),
		nutrientForecast(),
		nutrientPractice(),
		nutrientAfter(),
		nutrientStabilise(),
	} {
		all = append(all, part...)
	}
	return all
}

// fermentables are the choices of fermentableInput, in their order.
var fermentables = sugar.Fermentables()

func fermentableInput() Input {
	return choice("fermentable", "what ferments", wordsOf(fermentables)...).orOption("white sugar")
}

const yieldSource = "OIML R 22, ICUMSA SPS-4; French order of 3 May 1996 art. 2 and Balling for the yield"

// nutrientSugar are fermentables and sugar for a strength.
func nutrientSugar() []Function {
	brewOutputs := func() []Output {
		return []Output{
			out("water", units.Kilogram, "water to add"),
			pure("original_gravity", "", "specific gravity 20/20 °C before the yeast"),
			out("original_extract", units.DegreePlato, "extract before the yeast"),
			pure("final_gravity", "", "specific gravity 20/20 °C at the end"),
			out("carbon_dioxide", units.Gram, "CO2 given off"),
		}
	}
	give := func(b sugar.Brew, out []float64) {
		start := b.Start.Gravity()
		out[0], out[1], out[2] = b.Water.In(units.Kilogram), start.SG(), start.Extract().In(units.DegreePlato)
		out[3], out[4] = b.Finish.Gravity().SG(), b.Made.CO2.In(units.Gram)
	}
	attenuation := func() Input {
		return in("attenuation", units.Percent, "part of the fermentable sugar that the yeast uses", 1, 100, 100).or(100)
	}
	return []Function{
		{
			Name:    "sugar_for_strength",
			heavy:   true,
			Meaning: "mass of a fermentable and of water for a finished volume at 20 °C of a strength",
			Source:  yieldSource,
			Inputs: []Input{
				in("strength", units.PercentVolume, "strength wanted", 0.01, 20, 4.6),
				in("volume", units.Litre, "volume when it has fermented, at 20 °C", 0.001, 1e7, 60),
				fermentableInput(), attenuation(),
			},
			Outputs: append([]Output{out("mass", units.Kilogram, "fermentable to weigh")}, brewOutputs()...),
			call: func(in, out []float64) error {
				w := sugar.Wash{
					Fermentable: fermentables[int(in[2])], Attenuation: as(units.Percent, in[3]),
					Basis: sugar.Finished(as(units.Litre, in[1])),
				}
				b, err := w.For(as(units.PercentVolume, in[0]))
				if err == nil {
					out[0] = b.Fermentable.In(units.Kilogram)
					give(b, out[1:])
				}
				return err
			},
		},
		{
			Name:    "strength_from_sugar",
			heavy:   true,
			Meaning: "strength that a mass of a fermentable gives a finished volume at 20 °C",
			Source:  yieldSource,
			Inputs: []Input{
				in("mass", units.Kilogram, "fermentable weighed", 0, 1e7, 4.4),
				in("volume", units.Litre, "volume when it has fermented, at 20 °C", 0.001, 1e7, 60),
				fermentableInput(), attenuation(),
			},
			Outputs: append([]Output{out("strength", units.PercentVolume, "strength at the end")}, brewOutputs()...),
			call: func(in, out []float64) error {
				w := sugar.Wash{
					Fermentable: fermentables[int(in[2])], Attenuation: as(units.Percent, in[3]),
					Basis: sugar.Finished(as(units.Litre, in[1])),
				}
				b, err := w.From(as(units.Kilogram, in[0]))
				if err == nil {
					out[0] = b.Finish.ByVolume().In(units.PercentVolume)
					give(b, out[1:])
				}
				return err
			},
		},
		{
			Name:    "fermentable_composition",
			Meaning: "what a fermentable is made of, and the most it can give",
			Source:  "Codex CXS 212-1999, 2001/111/EC, USDA Bulletin 1261 and others by fermentable; Gay-Lussac",
			Inputs: []Input{
				fermentableInput(),
				in("mass", units.Kilogram, "mass weighed", 0, 1e6, 1).or(1),
			},
			Outputs: []Output{
				out("solids", units.Percent, "dry substance"),
				out("crystal_water", units.Percent, "water bound in crystals"),
				out("fermentability", units.Percent, "part of the solids that yeast uses"),
				out("inversion_gain", units.Percent, "gain of that sugar by inversion"),
				out("ethanol_limit", units.Kilogram, "ethanol by Gay-Lussac, more than any yeast makes"),
				out("co2_limit", units.Kilogram, "CO2 with it"),
			},
			call: func(in, out []float64) error {
				f := sugar.Of(fermentables[int(in[0])])
				p, err := f.Of(as(units.Kilogram, in[1]))
				out[0], out[1] = f.Solids().In(units.Percent), f.CrystalWater().In(units.Percent)
				out[2], out[3] = f.Fermentability().In(units.Percent), f.InversionGain().In(units.Percent)
				out[4], out[5] = p.GayLussac.In(units.Kilogram), p.CO2.In(units.Kilogram)
				return err
			},
		},
		{
			Name:    "glucose_syrup_composition",
			heavy:   true,
			Meaning: "what a glucose syrup holds by its dextrose equivalent",
			Source:  "trade tables of glucose syrups (recalled from memory)",
			Inputs: []Input{
				in("dextrose_equivalent", units.Percent, "reducing power of the solids against dextrose", 30, 64, 42),
				in("solids", units.Percent, "dry substance", 70, 90, 80).or(80),
			},
			Outputs: []Output{
				out("fermentability", units.Percent, "part of the solids that yeast uses"),
				out("sugar", units.Percent, "of the syrup, that yeast uses"),
			},
			call: func(in, out []float64) error {
				f, err := material.GlucoseSyrup(as(units.Percent, in[1]), as(units.Percent, in[0]))
				out[0] = sugar.Of(f).Fermentability().In(units.Percent)
				out[1] = out[0] * in[1] / 100
				return err
			},
		},
		{
			Name:    "strong_base",
			heavy:   true,
			Meaning: "sugar for a strong base and the water that lets it down later",
			Source:  yieldSource,
			Inputs: []Input{
				in("base_strength", units.PercentVolume, "strength of the base", 0.2, 20, 9),
				in("strength", units.PercentVolume, "strength wanted", 0.1, 20, 4.6),
				in("volume", units.Litre, "volume wanted, at 20 °C", 0.001, 1e7, 60),
				fermentableInput(),
			},
			Outputs: []Output{
				out("fermentable_mass", units.Kilogram, "fermentable for the base"),
				out("base_water_mass", units.Kilogram, "water in the base"),
				out("water_mass", units.Kilogram, "water that lets it down"),
			},
			call: func(in, out []float64) error {
				w := sugar.Wash{Fermentable: fermentables[int(in[3])], Attenuation: units.Percent.Of(100)}
				b, d, err := finish.StrongBrew(w, as(units.PercentVolume, in[0]), as(units.PercentVolume, in[1]), as(units.Litre, in[2]))
				out[0], out[1], out[2] = b.Fermentable.In(units.Kilogram), b.Water.In(units.Kilogram), d.Water.In(units.Kilogram)
				return err
			},
		},
		{
			Name:    "fermentation_balance",
			Meaning: "what yeast makes of sugar when every atom is accounted for",
			Source:  "elemental and electron balance (Roels 1983, recalled from memory); Pasteur 1860 for glycerol and succinic acid",
			Inputs: []Input{
				in("hexose", units.Gram, "sugar used, counted after inversion", 0.001, 1e9, 1000),
				in("ammonium_nitrogen", units.Gram, "nitrogen at hand as ammonium", 0, 1e8, 1).or(0),
				in("amino_nitrogen", units.Gram, "nitrogen at hand in amino acids", 0, 1e8, 0).or(0),
			},
			Outputs: []Output{
				out("ethanol", units.Gram, "ethanol made"),
				out("co2", units.Gram, "CO2 given off"),
				out("glycerol", units.Gram, "glycerol made"),
				out("dry_yeast", units.Gram, "new yeast, dry"),
				out("protons", units.Millimole, "H+ set free by what the yeast takes up"),
			},
			call: func(in, out []float64) error {
				b, err := ferment.UsualMetabolism().Ferment(ferment.Substrate{
					Hexose: as(units.Gram, in[0]), Ammonium: as(units.Gram, in[1]), Amino: as(units.Gram, in[2]),
				})
				out[0], out[1], out[2] = b.Ethanol.In(units.Gram), b.CO2.In(units.Gram), b.Glycerol.In(units.Gram)
				out[3], out[4] = b.DryYeast.In(units.Gram), b.Protons.In(units.Millimole)
				return err
			},
		},
	}
}
