package catalogue

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// gravityInput is a specific gravity; "12 °P" and "48 points" do as well.
func gravityInput(name, meaning string, min, max, example float64) Input {
	return number(name, "", meaning+", 20/20 °C", min, max, example).
		alias("°P", func(x float64) float64 {
			g, err := gravity.FromExtract(as(units.DegreePlato, x))
			if err != nil {
				return math.NaN()
			}
			return g.SG()
		}).
		alias("points", func(x float64) float64 { return 1 + x/1000 })
}

func references() Input {
	return choice("reference", "what the scale of the hydrometer stands for", "20/20 °C", "60/60 °F", "20/4 °C", "15/15 °C", "17.5/17.5 °C").orOption("20/20 °C")
}

// gravityScales are between the scales of a hydrometer.
func gravityScales() []Function {
	const scale = icumsa + ", at 20 °C, continued below zero"
	return []Function{
		{
			Name:    "plato_from_sg",
			Meaning: "apparent extract of a specific gravity; below zero in a dry sugar wash",
			Source:  scale,
			Inputs:  []Input{gravityInput("gravity", "specific gravity", 0.79, 1.4147, 1.048)},
			Outputs: []Output{
				out("extract", units.DegreePlato, "sucrose in 100 masses of the solution of that gravity"),
				pure("points", "", "excess over water in thousandths"),
				out("density", units.KilogramPerCubicMetre, "density at 20 °C, in vacuum"),
			},
			call: func(in, out []float64) error {
				g, err := gravity.FromSG(in[0])
				if err != nil {
					return err
				}
				out[0], out[1], out[2] = g.Extract().In(units.DegreePlato), g.Points(), g.Density().In(units.KilogramPerCubicMetre)
				return nil
			},
		},
		{
			Name:    "sg_from_plato",
			Meaning: "specific gravity 20/20 °C of an extract",
			Source:  scale,
			Inputs:  []Input{in("extract", units.DegreePlato, "original or apparent extract", -65, 80, 12)},
			Outputs: []Output{
				pure("gravity", "", "specific gravity 20/20 °C, in vacuum"),
				pure("points", "", "excess over water in thousandths"),
				out("density", units.KilogramPerCubicMetre, "density at 20 °C, in vacuum"),
			},
			call: func(in, out []float64) error {
				g, err := gravity.FromExtract(as(units.DegreePlato, in[0]))
				if err != nil {
					return err
				}
				out[0], out[1], out[2] = g.SG(), g.Points(), g.Density().In(units.KilogramPerCubicMetre)
				return nil
			},
		},
		{
			Name:    "hydrometer_correct",
			Meaning: "specific gravity 20/20 °C from what a hydrometer shows at a temperature",
			Source:  tabarie + "; ISO 1768:1975 for the glass",
			Inputs: []Input{
				number("reading", "", "what the hydrometer shows", 0.9, 1.3, 1.046).alias("points", func(x float64) float64 { return 1 + x/1000 }),
				temperatureInput("sample", 0, 100),
				references(),
				in("strength", units.PercentVolume, "ethanol of the sample, a guess within 1 % vol", 0, 23, 4.6).or(0),
			},
			Outputs: []Output{
				pure("gravity", "", "specific gravity 20/20 °C, in vacuum"),
				out("extract", units.DegreePlato, "apparent extract"),
			},
			call: func(in, out []float64) error {
				h := gravity.Hydrometer{Reference: gravity.Reference(in[2])}
				g, err := h.Correct(in[0], as(units.PercentVolume, in[3]), as(units.Celsius, in[1]))
				if err != nil {
					return err
				}
				out[0], out[1] = g.SG(), g.Extract().In(units.DegreePlato)
				return nil
			},
		},
		{
			Name:    "hydrometer_reading",
			Meaning: "what a hydrometer shows in a liquid of ethanol, extract and water",
			Source:  tabarie + "; ISO 1768:1975 for the glass",
			Inputs: []Input{
				in("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the liquid", 0, 100, 3.7),
				in("real_extract", units.DegreePlato, "extract in 100 masses of the liquid", 0, 80, 0.5).or(0),
				temperatureInput("liquid", 0, 100).or(20),
				references(),
			},
			Outputs: []Output{pure("reading", "", "specific gravity on the scale of the hydrometer")},
			call: func(in, out []float64) error {
				s, err := gravity.NewSolution(as(units.Kilogram, max(0, 100-in[0]-in[1])), as(units.Kilogram, in[1]), as(units.Kilogram, in[0]))
				if err != nil {
					return err
				}
				out[0], err = gravity.Hydrometer{Reference: gravity.Reference(in[3])}.Reading(s, as(units.Celsius, in[2]))
				return err
			},
		},
		{
			Name:    "extract_concentration",
			Meaning: "grams of sucrose in a litre of a solution of an extract",
			Source:  icumsa,
			Inputs: []Input{
				in("extract", units.DegreePlato, "sucrose in 100 masses of the solution", 0, 80, 12),
				temperatureInput("solution", 0, 100).or(20),
			},
			Outputs: []Output{out("concentration", units.GramPerLitre, "sucrose in a litre at that temperature")},
			call: func(in, out []float64) error {
				c, err := gravity.ExtractConcentration(as(units.DegreePlato, in[0]), as(units.Celsius, in[1]))
				out[0] = c.In(units.GramPerLitre)
				return err
			},
		},
		{
			Name:    "extract_from_concentration",
			Meaning: "extract of a solution that holds grams of sucrose in a litre",
			Source:  icumsa,
			Inputs: []Input{
				in("concentration", units.GramPerLitre, "sucrose in a litre at that temperature", 0, 1130, 120),
				temperatureInput("solution", 0, 100).or(20),
			},
			Outputs: []Output{out("extract", units.DegreePlato, "sucrose in 100 masses of the solution")},
			call: func(in, out []float64) error {
				e, err := gravity.ExtractFromConcentration(as(units.GramPerLitre, in[0]), as(units.Celsius, in[1]))
				out[0] = e.In(units.DegreePlato)
				return err
			},
		},
		{
			Name:    "concentration_from_sg",
			Meaning: "grams of extract in a litre from a specific gravity, at the temperature of its reference",
			Source:  icumsa,
			Inputs:  []Input{number("reading", "", "specific gravity for that reference", 1, 1.41, 1.046), references()},
			Outputs: []Output{
				out("concentration", units.GramPerLitre, "extract in a litre at that temperature"),
				out("extract", units.DegreePlato, "extract in 100 masses"),
			},
			call: func(in, out []float64) error {
				r := gravity.Reference(in[1])
				g, err := gravity.FromReference(in[0], r, gravity.InVacuum)
				if err != nil {
					return err
				}
				at, _, err := r.Temperatures()
				if err != nil {
					return err
				}
				c, err := gravity.ExtractConcentration(g.Extract(), at)
				out[0], out[1] = c.In(units.GramPerLitre), g.Extract().In(units.DegreePlato)
				return err
			},
		},
		{
			Name:    "strength_by_volume",
			Meaning: "strength by volume of a mixture of ethanol and water from that by mass",
			Source:  r22,
			Inputs:  []Input{in("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture", 0, 100, 33.3)},
			Outputs: []Output{out("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, at 20 °C")},
			call: func(in, out []float64) error {
				out[0] = gravity.ByVolume(as(units.PercentMass, in[0])).In(units.PercentVolume)
				return nil
			},
		},
		{
			Name:    "strength_by_mass",
			Meaning: "strength by mass of a mixture of ethanol and water from that by volume",
			Source:  r22,
			Inputs:  []Input{in("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, at 20 °C", 0, 100, 40)},
			Outputs: []Output{out("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture")},
			call: func(in, out []float64) error {
				out[0] = gravity.ByMass(as(units.PercentVolume, in[0])).In(units.PercentMass)
				return nil
			},
		},
	}
}
