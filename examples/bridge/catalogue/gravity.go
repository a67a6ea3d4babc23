package catalogue

import (
	"slices"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// gravityFunctions are the entries of package gravity.
func gravityFunctions() []*Function {
	return slices.Concat(
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
	)
}

const (
	r22     = "OIML R 22 (1973), International alcoholometric tables"
	icumsa  = "ICUMSA SPS-4 (1994), Densimetry and tables"
	tabarie = "OIML R 22 (1973), ICUMSA SPS-4 (1994) and Tabarié's relation"
)

func temperatureOf(what string, min, max float64) arg[units.Temperature] {
	return takes("temperature", units.Celsius, "temperature of the "+what, min, max, 20)
}

func densityOf(what string) result[units.Density] {
	return gives("density", units.KilogramPerCubicMetre, "density of the "+what+", in vacuum")
}

// sugars are the choices of an input that asks for one.
func sugarChoice(meaning string) arg[gravity.Sugar] {
	return picksBy("sugar", meaning, []gravity.Sugar{gravity.AsSucrose, gravity.AsGlucose, gravity.AsFructose}, "sucrose", "glucose",
		"fructose").orOption("sucrose")
}

// waterDensity is an entry for one of the formulas for water.
func waterDensity(name, by, source string, max float64, density func(units.Temperature) (units.Density, error)) *Function {
	return entry(name, "density of air-free water at 1 atm"+by, source,
		of1(temperatureOf("water", 0, max), density),
		densityOf("water"))
}

// gravityDensities are densities of liquids of one and two substances.
func gravityDensities() []*Function {
	mixture, solution := temperatureOf("mixture", -20, 40).or(20), temperatureOf("solution", 0, 100).or(20)
	return []*Function{
		waterDensity("water_density", "", "Bettin & Spieweck, PTB-Mitteilungen 100 (1990) 195", 100, gravity.WaterDensity),
		waterDensity("water_density_tanaka", ", as metrology recommends", "Tanaka et al., Metrologia 38 (2001) 301, eq. 1", 40, rival.WaterDensityTanaka),
		waterDensity("water_density_kell", ", on the older temperature scale", "Kell, J. Chem. Eng. Data 20 (1975) 97, eq. 16", 150, rival.WaterDensityKell),
		entry("ethanol_density", "density of a mixture of ethanol and water", r22,
			of2(takes("strength_by_mass", units.PercentMass, "ethanol in the mixture", 0, 100, 40), mixture, gravity.EthanolDensity),
			densityOf("mixture")),
		entry("ethanol_strength", "strength of a mixture of ethanol and water from its density", r22,
			of2(takes("density", units.KilogramPerCubicMetre, "density of the mixture, in vacuum", 770, 1000, 935), mixture, gravity.EthanolStrength),
			gives("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture"),
			from(gravity.ByVolume, "strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, at 20 °C")),
		entry("sugar_density", "density of a solution of one sugar in water", icumsa+"; CRC Handbook, 102nd ed., for glucose and fructose",
			of3(sugarChoice("which sugar"), takes("extract", units.DegreePlato, "anhydrous sugar in 100 masses of the solution", 0, 80, 10), solution,
				gravity.Sugar.Density),
			densityOf("solution")),
		entry("sucrose_extract", "extract of a solution of sucrose in water from its density", icumsa,
			of2(takes("density", units.KilogramPerCubicMetre, "density of the solution, in vacuum", 958, 1425, 1038), solution, gravity.SucroseExtract),
			gives("extract", units.DegreePlato, "sucrose in 100 masses of the solution")),
	}
}
