package catalogue

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ofPoints(x float64) float64 { return 1 + x/1000 }

// gravityInput is a specific gravity; "12 °P" and "48 points" do as well.
func gravityInput(name, meaning string, min, max, example float64) *Input {
	return number(name, "", meaning+", 20/20 °C", min, max, example).
		alias("°P", func(x float64) float64 {
			g, err := gravity.FromExtract(as(units.DegreePlato, x))
			if err != nil {
				return math.NaN()
			}
			return g.SG()
		}).
		alias("points", ofPoints)
}

func takesGravity(name, meaning string, min, max, example float64) arg[gravity.Gravity] {
	return reads(gravityInput(name, meaning, min, max, example), gravity.FromSG)
}

func references() arg[gravity.Reference] {
	return picksBy("reference", "what the scale of the hydrometer stands for", upTo(gravity.Reference(4)),
		"20/20 °C", "60/60 °F", "20/4 °C", "15/15 °C", "17.5/17.5 °C").orOption("20/20 °C")
}

// gravityScales are between the scales of a hydrometer.
func gravityScales() []*Function {
	const (
		scale = icumsa + ", at 20 °C, continued below zero"
		glass = tabarie + "; ISO 1768:1975 for the glass"
	)
	type dissolved = pair[units.MassConcentration, units.Extract]
	solution := temperatureOf("solution", 0, 100).or(20)
	points := numberFrom(gravity.Gravity.Points, "points", "", "excess over water in thousandths")
	density := from(gravity.Gravity.Density, "density", units.KilogramPerCubicMetre, "density at 20 °C, in vacuum")
	gravity20 := numberFrom(gravity.Gravity.SG, "gravity", "", "specific gravity 20/20 °C, in vacuum")
	return []*Function{
		entry("plato_from_sg", "apparent extract of a specific gravity; below zero in a dry sugar wash", scale,
			takesGravity("gravity", "specific gravity", 0.79, 1.4147, 1.048),
			from(gravity.Gravity.Extract, "extract", units.DegreePlato, "sucrose in 100 masses of the solution of that gravity"), points, density),
		entry("sg_from_plato", "specific gravity 20/20 °C of an extract", scale,
			of1(takes("extract", units.DegreePlato, "original or apparent extract", -65, 80, 12), gravity.FromExtract),
			gravity20, points, density),
		entry("hydrometer_correct", "specific gravity 20/20 °C from what a hydrometer shows at a temperature", glass,
			of4(readsNumber(number("reading", "", "what the hydrometer shows", 0.9, 1.3, 1.046).alias("points", ofPoints)),
				temperatureOf("sample", 0, 100), references(),
				takes("strength", units.PercentVolume, "ethanol of the sample, a guess within 1 % vol", 0, 23, 4.6).or(0),
				func(reading float64, t units.Temperature, r gravity.Reference, s units.StrengthByVolume) (gravity.Gravity, error) {
					return gravity.Hydrometer{Reference: r}.Correct(reading, s, t)
				}),
			gravity20, from(gravity.Gravity.Extract, "extract", units.DegreePlato, "apparent extract")),
		entry("hydrometer_reading", "what a hydrometer shows in a liquid of ethanol, extract and water", glass,
			of4(takes("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the liquid", 0, 100, 3.7),
				takes("real_extract", units.DegreePlato, "extract in 100 masses of the liquid", 0, 80, 0.5).or(0),
				temperatureOf("liquid", 0, 100).or(20), references(),
				func(strength units.StrengthByMass, extract units.Extract, t units.Temperature, r gravity.Reference) (float64, error) {
					e, x := strength.In(units.PercentMass), extract.In(units.DegreePlato)
					s, err := gravity.NewSolution(as(units.Kilogram, max(0, 100-e-x)), as(units.Kilogram, x), as(units.Kilogram, e))
					if err != nil {
						return 0, err
					}
					return gravity.Hydrometer{Reference: r}.Reading(s, t)
				}),
			givesNumber("reading", "", "specific gravity on the scale of the hydrometer")),
		entry("extract_concentration", "grams of sucrose in a litre of a solution of an extract", icumsa,
			of2(takes("extract", units.DegreePlato, "sucrose in 100 masses of the solution", 0, 80, 12), solution, gravity.ExtractConcentration),
			gives("concentration", units.GramPerLitre, "sucrose in a litre at that temperature")),
		entry("extract_from_concentration", "extract of a solution that holds grams of sucrose in a litre", icumsa,
			of2(takes("concentration", units.GramPerLitre, "sucrose in a litre at that temperature", 0, 1130, 120), solution, gravity.ExtractFromConcentration),
			gives("extract", units.DegreePlato, "sucrose in 100 masses of the solution")),
		entry("concentration_from_sg", "grams of extract in a litre from a specific gravity, at the temperature of its reference", icumsa,
			of2(takesNumber("reading", "", "specific gravity for that reference", 1, 1.41, 1.046), references(),
				func(reading float64, r gravity.Reference) (dissolved, error) {
					g, err := gravity.FromReference(reading, r, gravity.InVacuum)
					if err != nil {
						return dissolved{}, err
					}
					at, _, err := r.Temperatures()
					if err != nil {
						return dissolved{}, err
					}
					c, err := gravity.ExtractConcentration(g.Extract(), at)
					return dissolved{c, g.Extract()}, err
				}),
			from(func(d dissolved) units.MassConcentration { return d.a }, "concentration", units.GramPerLitre, "extract in a litre at that temperature"),
			from(func(d dissolved) units.Extract { return d.b }, "extract", units.DegreePlato, "extract in 100 masses")),
		entry("strength_by_volume", "strength by volume of a mixture of ethanol and water from that by mass", r22,
			takes("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture", 0, 100, 33.3),
			from(gravity.ByVolume, "strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, at 20 °C")),
		entry("strength_by_mass", "strength by mass of a mixture of ethanol and water from that by volume", r22,
			takes("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, at 20 °C", 0, 100, 40),
			from(gravity.ByMass, "strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture")),
	}
}
