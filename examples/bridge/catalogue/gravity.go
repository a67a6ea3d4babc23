package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// gravityFunctions are the entries of package gravity.
func gravityFunctions() []Function {
	var all []Function
	for _, part := range [][]Function{
		gravityDensities(),
		gravityScales(),
		gravityExtracts(),
		gravityReferences(),
		gravityRefraction(),
		gravityFerments(),
		gravityMethods(),
		gravityMeasurements(),
		gravityStrengths(),
		gravityBlends(),
		gravityVolumes(),
		gravityLabels(),
		gravityDrinks(),
	} {
		all = append(all, part...)
	}
	return all
}

const (
	r22     = "OIML R 22 (1973), International alcoholometric tables"
	icumsa  = "ICUMSA SPS-4 (1994), Densimetry and tables"
	tabarie = "OIML R 22 (1973), ICUMSA SPS-4 (1994) and Tabarié's relation"
)

func temperatureInput(of string, min, max float64) Input {
	return in("temperature", units.Celsius, "temperature of the "+of, min, max, 20)
}

func densityOutput(of string) Output {
	return out("density", units.KilogramPerCubicMetre, "density of the "+of+", in vacuum")
}

// waterDensity is an entry for one of the formulas for water.
func waterDensity(name, by, source string, max float64, density func(units.Temperature) (units.Density, error)) Function {
	return Function{
		Name:    name,
		Meaning: "density of air-free water at 1 atm" + by,
		Source:  source,
		Inputs:  []Input{temperatureInput("water", 0, max)},
		Outputs: []Output{densityOutput("water")},
		call: func(in, out []float64) error {
			d, err := density(as(units.Celsius, in[0]))
			out[0] = d.In(units.KilogramPerCubicMetre)
			return err
		},
	}
}

// gravityDensities are densities of liquids of one and two substances.
func gravityDensities() []Function {
	return []Function{
		waterDensity("water_density", "", "Bettin & Spieweck, PTB-Mitteilungen 100 (1990) 195", 100, gravity.WaterDensity),
		waterDensity("water_density_tanaka", ", as metrology recommends", "Tanaka et al., Metrologia 38 (2001) 301, eq. 1", 40, rival.WaterDensityTanaka),
		waterDensity("water_density_kell", ", on the older temperature scale", "Kell, J. Chem. Eng. Data 20 (1975) 97, eq. 16", 150, rival.WaterDensityKell),
		{
			Name:    "ethanol_density",
			Meaning: "density of a mixture of ethanol and water",
			Source:  r22,
			Inputs: []Input{
				in("strength_by_mass", units.PercentMass, "ethanol in the mixture", 0, 100, 40),
				temperatureInput("mixture", -20, 40).or(20),
			},
			Outputs: []Output{densityOutput("mixture")},
			call: func(in, out []float64) error {
				d, err := gravity.EthanolDensity(as(units.PercentMass, in[0]), as(units.Celsius, in[1]))
				out[0] = d.In(units.KilogramPerCubicMetre)
				return err
			},
		},
		{
			Name:    "ethanol_strength",
			Meaning: "strength of a mixture of ethanol and water from its density",
			Source:  r22,
			Inputs: []Input{
				in("density", units.KilogramPerCubicMetre, "density of the mixture, in vacuum", 770, 1000, 935),
				temperatureInput("mixture", -20, 40).or(20),
			},
			Outputs: []Output{
				out("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture"),
				out("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, at 20 °C"),
			},
			call: func(in, out []float64) error {
				w, err := gravity.EthanolStrength(as(units.KilogramPerCubicMetre, in[0]), as(units.Celsius, in[1]))
				out[0], out[1] = w.In(units.PercentMass), gravity.ByVolume(w).In(units.PercentVolume)
				return err
			},
		},
		{
			Name:    "sugar_density",
			Meaning: "density of a solution of one sugar in water",
			Source:  icumsa + "; CRC Handbook, 102nd ed., for glucose and fructose",
			Inputs: []Input{
				choice("sugar", "which sugar", "sucrose", "glucose", "fructose").orOption("sucrose"),
				in("extract", units.DegreePlato, "anhydrous sugar in 100 masses of the solution", 0, 80, 10),
				temperatureInput("solution", 0, 100).or(20),
			},
			Outputs: []Output{densityOutput("solution")},
			call: func(in, out []float64) error {
				d, err := gravity.SugarDensity(gravity.Sugar(in[0]), as(units.DegreePlato, in[1]), as(units.Celsius, in[2]))
				out[0] = d.In(units.KilogramPerCubicMetre)
				return err
			},
		},
		{
			Name:    "sucrose_extract",
			Meaning: "extract of a solution of sucrose in water from its density",
			Source:  icumsa,
			Inputs: []Input{
				in("density", units.KilogramPerCubicMetre, "density of the solution, in vacuum", 958, 1425, 1038),
				temperatureInput("solution", 0, 100).or(20),
			},
			Outputs: []Output{out("extract", units.DegreePlato, "sucrose in 100 masses of the solution")},
			call: func(in, out []float64) error {
				e, err := gravity.SucroseExtract(as(units.KilogramPerCubicMetre, in[0]), as(units.Celsius, in[1]))
				out[0] = e.In(units.DegreePlato)
				return err
			},
		},
	}
}
