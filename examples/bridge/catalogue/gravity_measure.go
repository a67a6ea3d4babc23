package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// gravityMeasurements are what comes of a reading.
func gravityMeasurements() []Function {
	return []Function{
		{
			Name:    "density_from_pycnometer",
			Meaning: "density of a liquid from three weighings of one flask",
			Source:  "ratio of two weights in air of 1.2 kg/m³ (OIML D 28); Bettin & Spieweck 1990",
			Inputs: []Input{
				in("empty", units.Gram, "the dry flask", 0, 1e5, 30),
				in("with_water", units.Gram, "the flask full of water", 1, 1e5, 79.87),
				in("with_liquid", units.Gram, "the flask full of the liquid, at the same temperature", 1, 1e5, 80.3),
				temperatureInput("flask", 0, 100).or(20),
			},
			Outputs: []Output{densityOutput("liquid")},
			call: func(in, out []float64) error {
				d, err := gravity.Pycnometer(as(units.Gram, in[0]), as(units.Gram, in[1]), as(units.Gram, in[2]), as(units.Celsius, in[3]))
				out[0] = d.In(units.KilogramPerCubicMetre)
				return err
			},
		},
		{
			Name:    "sg_from_density",
			Meaning: "specific gravity 20/20 °C from a density taken at another temperature",
			Source:  tabarie,
			Inputs: []Input{
				in("density", units.KilogramPerCubicMetre, "density of the liquid, in vacuum", 950, 1300, 1040),
				temperatureInput("liquid", 0, 100).or(20),
				in("strength", units.PercentVolume, "ethanol of the liquid, a guess within 1 % vol", 0, 23, 0).or(0),
			},
			Outputs: []Output{
				pure("gravity", "", "specific gravity 20/20 °C, in vacuum"),
				out("extract", units.DegreePlato, "apparent extract"),
			},
			call: func(in, out []float64) error {
				g, err := gravity.FromDensityAt(as(units.KilogramPerCubicMetre, in[0]), as(units.PercentVolume, in[2]), as(units.Celsius, in[1]))
				out[0], out[1] = g.SG(), g.Extract().In(units.DegreePlato)
				return err
			},
		},
		{
			Name:    "strength_from_boiling_off",
			Meaning: "strength from the gravity before and after the ethanol is boiled off and the volume made up",
			Source:  tabarie,
			Inputs: []Input{
				gravityInput("gravity_before", "specific gravity as it is", 0.9, 1.2, 1.0),
				gravityInput("gravity_after", "specific gravity after boiling, made up with water", 0.99, 1.3, 1.0065),
			},
			Outputs: []Output{out("strength", units.PercentVolume, "ethanol by volume")},
			call: func(in, out []float64) error {
				a, err := gravity.FromSG(in[0])
				if err != nil {
					return err
				}
				b, err := gravity.FromSG(in[1])
				if err != nil {
					return err
				}
				v, err := gravity.SpiritIndication(a, b)
				out[0] = v.In(units.PercentVolume)
				return err
			},
		},
		{
			Name:    "strength_from_distillate",
			Meaning: "strength of a sample from its distillate",
			Source:  r22,
			Inputs: []Input{
				in("sample", units.Millilitre, "volume of the sample, at 20 °C", 1, 1e6, 100),
				in("distillate", units.Millilitre, "volume of the distillate made up with water, at 20 °C", 1, 1e6, 100),
				in("density", units.KilogramPerCubicMetre, "density of the distillate, in vacuum", 780, 1000, 991.5),
				temperatureInput("distillate, for its density", -20, 40).or(20),
			},
			Outputs: []Output{out("strength", units.PercentVolume, "ethanol of the sample by volume")},
			call: func(in, out []float64) error {
				v, err := gravity.DistillateStrength(as(units.Millilitre, in[0]), as(units.Millilitre, in[1]), as(units.KilogramPerCubicMetre, in[2]), as(units.Celsius, in[3]))
				out[0] = v.In(units.PercentVolume)
				return err
			},
		},
		{
			Name:    "wash_progress",
			Meaning: "what sugar is left in a wash by its gravity now, and what gas that would make; bottle only at the dry end",
			Source:  tabarie + "; Balling 1865 or the balance of a sugar wash",
			Inputs: []Input{
				in("original_extract", units.DegreePlato, "extract before the ferment, as a hydrometer has it, without minerals", 0.5, 40, 7.5),
				gravityInput("gravity", "specific gravity now", 0.96, 1.18, 1.0),
				choice("yield", "what the extract was, and so what it turns into", "malt wort", "sucrose wash", "glucose wash", "fructose wash").orOption("sucrose wash"),
				in("minerals", units.GramPerLitre, "salts, nutrient and buffer beside the extract; in most sugar washes 0.3 to 0.8", 0, 20, 0.5).or(0),
			},
			Outputs: []Output{
				pure("dry_gravity", "", "specific gravity 20/20 °C when all of it is used, with the minerals"),
				out("used", units.Percent, "part of the extract that is used"),
				out("left", units.GramPerLitre, "extract that is left, in a litre"),
				out("carbon_dioxide", units.GramCO2PerLitre, "the most CO2 that it can still make, in a litre"),
				out("strength", units.PercentVolume, "strength now"),
				pure("dry_gravity_uncertainty", "", "standard uncertainty of dry_gravity, k = 1: yield, what yeast leaves, minerals, formulas; a hydrometer adds its own"),
			},
			call: func(in, out []float64) error {
				y, minerals, original := yieldOf(in[2]), as(units.GramPerLitre, in[3]), as(units.DegreePlato, in[0])
				start, err := gravity.FromOriginalAndApparent(original, original, y)
				if err != nil {
					return err
				}
				wort := start.Wort()
				floor, err := gravity.MeasuredFloor(wort, y, yieldSpread(in[2]), minerals, minerals)
				if err != nil {
					return err
				}
				dry, _, err := wort.Dry(y)
				if err != nil {
					return err
				}
				out[0] = floor.Value().In(units.One)
				out[5] = floor.Uncertainty().In(units.One)
				g, err := gravity.FromSG(in[1] - (out[0] - dry.Gravity().SG())) // without the minerals
				if err != nil {
					return err
				}
				p, err := wort.At(g, y)
				if err != nil {
					return err
				}
				out[1] = p.Part.In(units.Percent)
				out[2] = p.Left.In(units.Gram) / p.Liquid.VolumeAt20().In(units.Litre)
				out[3], out[4] = p.CO2Content.In(units.GramCO2PerLitre), p.Liquid.ByVolume().In(units.PercentVolume)
				return nil
			},
		},
		{
			Name:    "strength_uncertainty",
			Meaning: "strength from two gravities with its standard uncertainty",
			Source:  "JCGM 100:2008, GUM; " + tabarie,
			Inputs: []Input{
				gravityInput("original_gravity", "specific gravity before the ferment", 1, 1.2, 1.048),
				gravityInput("gravity", "specific gravity now", 0.97, 1.12, 1.01),
				number("uncertainty", "", "standard uncertainty of each gravity", 1e-6, 0.02, 0.001).or(0.001),
				choice("yield", "what the extract was, and so what it turns into", "malt wort", "sucrose wash", "glucose wash", "fructose wash").orOption("malt wort"),
			},
			Outputs: []Output{
				out("strength", units.PercentVolume, "ethanol by volume"),
				pure("strength_uncertainty", "% vol", "its standard uncertainty, k = 1; the yield counts with 1 % for malt, 3 % for a wash"),
			},
			heavy: true,
			call: func(in, out []float64) error {
				u := units.One.Of(checkedNumber(in[2]))
				og, err := units.Measure(units.One.Of(checkedNumber(in[0])), u)
				if err != nil {
					return err
				}
				fg, err := units.Measure(units.One.Of(checkedNumber(in[1])), u)
				if err != nil {
					return err
				}
				v, err := gravity.StrengthByHydrometer(og, fg, yieldOf(in[3]), yieldSpread(in[3]), 0)
				if err != nil {
					return err
				}
				out[0], out[1] = v.Value().In(units.PercentVolume), v.Uncertainty().In(units.PercentagePoint)
				return nil
			},
		},
	}
}
