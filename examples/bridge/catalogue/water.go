package catalogue

import (
	"slices"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// waterFunctions are the entries of package water.
func waterFunctions() []*Function {
	return slices.Concat(
		waterSalts(),
		waterReport(),
		waterEquilibria(),
		waterTreatment(),
		waterDoses(),
		waterSolve(),
		mashFunctions(),
		juiceFunctions(),
		juiceTreatments(),
		mustFunctions(),
	)
}

const (
	atomicWeights = "Standard atomic weights 2021, abridged (Prohaska et al., Pure Appl. Chem. 94 (2022) 573)"
	equilibria    = "Plummer & Busenberg 1982, Truesdell & Jones 1974, Davies 1962; electroneutrality and mass balances"
)

func takesSalt() arg[material.Material] {
	return picks("salt", "the salt as weighed, with its crystal water", water.Salts())
}

func takesAcid() arg[water.Acid] { return picks("acid_kind", "the acid", water.Acids()) }

var mainIons = [...]water.Ion{water.Calcium, water.Magnesium, water.Sodium, water.Potassium, water.Chloride, water.Sulfate}

// contents are those of the main ions.
type contents [len(mainIons)]units.MassConcentration

// takesIons are the main ions of a water.
func takesIons() arg[contents] {
	a := arg[contents]{new(inputs)}
	for i, example := range [...]float64{60, 10, 20, 3, 30, 50} {
		name := mainIons[i].Name()
		a.made.all = append(a.made.all, in(name, units.MilligramPerLitre, name+" of the water", 0, 5000, example).or(0))
	}
	a.made.of = func(in []float64) (c contents, err error) {
		for i := range c {
			c[i] = as(units.MilligramPerLitre, in[i])
		}
		return c, nil
	}
	return a
}

// at is a water of these ions at a temperature.
func (c contents) at(t units.Temperature, alkalinity units.CalciumCarbonate) (water.Profile, error) {
	var of [len(mainIons)]water.Content
	for i, ion := range mainIons {
		of[i] = ion.At(c[i])
	}
	return water.NewProfile(t, alkalinity, of[:]...)
}

// A given is a water of which the temperature is still to come.
type given struct {
	ions       contents
	alkalinity units.CalciumCarbonate
}

func takesGiven() arg[given] {
	return of2(takesIons(), takes("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity of the water", -5000, 5000, 144).or(0),
		func(c contents, a units.CalciumCarbonate) (given, error) { return given{c, a}, nil })
}

func (g given) at(t units.Temperature) (water.Profile, error) { return g.ions.at(t, g.alkalinity) }

// takesWater is a water at 20 °C.
func takesWater() arg[water.Profile] {
	return of1(takesGiven(), func(g given) (water.Profile, error) { return g.at(units.Celsius.Of(20)) })
}

func waterTemperature() arg[units.Temperature] {
	return takes("temperature", units.Celsius, "temperature of the water", 0, 90, 20).or(20)
}

// takesKnownPH is a water of known pH.
func takesKnownPH() arg[water.Profile] {
	return of3(takesGiven(), takesNumber("ph", "", "pH of the water at its temperature", 2, 12, 7.5), waterTemperature(),
		func(g given, ph float64, t units.Temperature) (water.Profile, error) {
			p, err := g.at(t)
			if err != nil {
				return p, err
			}
			return p.WithPH(ph)
		})
}

// ionsOf are the outputs of what is in a water.
func ionsOf(what string) []result[water.Profile] {
	var list []result[water.Profile]
	for _, ion := range mainIons {
		list = append(list, from(func(p water.Profile) units.MassConcentration { return p.Ion(ion) }, ion.Name(), units.MilligramPerLitre, ion.Name()+" "+what))
	}
	return append(list, from(water.Profile.Alkalinity, "alkalinity", units.MilligramPerLitreCaCO3, "alkalinity "+what))
}

func waterSalts() []*Function {
	return []*Function{
		entry("salt_molar_mass", "Mass of a mole of a salt, crystal water included", atomicWeights,
			takesSalt(), from(material.Material.MolarMass, "molar_mass", units.GramPerMole, "mass of a mole")),
		entry("salt_ions", "Ions and alkalinity that a mass of a salt brings to a volume of water", atomicWeights,
			of3(takesSalt(), takes("mass", units.Gram, "the salt as weighed", 0, 1e6, 6), takes("volume", units.Litre, "the water it is dissolved in", 0.001, 1e6, 60),
				func(s material.Material, m units.Mass, v units.Volume) (water.Profile, error) {
					return water.Profile{}.Add(v, s.Dose(m))
				}),
			ionsOf("added")...),
	}
}

func waterReport() []*Function {
	type balanced = water.Profile
	return []*Function{
		heavy(entry("water_hardness", "Hardness, residual alkalinity and balance of the ions of a water",
			"Standard Methods 2340 B and 1030 E (recalled from memory); Kolbach, Monatsschrift für Brauerei 6 (1953) 49",
			takesWater(),
			from(balanced.Hardness, "hardness", units.MilligramPerLitreCaCO3, "total hardness"),
			from(balanced.ResidualAlkalinity, "residual_alkalinity", units.MilligramPerLitreCaCO3, "alkalinity left after calcium and magnesium in a malt mash"),
			from(func(p balanced) units.EquivalentConcentration { return p.IonicBalance().Cations }, "cations", units.MilliequivalentPerLitre, "sum of the cations"),
			from(func(p balanced) units.EquivalentConcentration { return p.IonicBalance().Anions }, "anions", units.MilliequivalentPerLitre,
				"sum of the anions with the alkalinity"),
			from(func(p balanced) units.Share { return p.IonicBalance().Difference() }, "balance", units.Percent, "100 times the difference over the sum"))),
	}
}

// kilogramsPerLitre is the water in a litre at 20 °C, as package water has it.
const kilogramsPerLitre = 0.998203

// inAKilogram is a content of a water in mmol/kg.
func inAKilogram[T any](get func(T) units.MolarConcentration, name, meaning string) result[T] {
	return numberFrom(func(v T) float64 { return get(v).In(units.MillimolePerLitre) / kilogramsPerLitre }, name, "mmol/kg", meaning)
}

// takesCO2 is a partial pressure of CO2.
func takesCO2(meaning string, most, example float64) arg[units.AbsolutePressure] {
	return takes("co2_pressure", units.Kilopascal, meaning, 0, most, example)
}

// takesLoss is what becomes of the CO2 that an acid sets free.
func takesLoss() arg[water.CO2Loss] {
	return of2(picksBy("co2", "what becomes of the CO2 set free", []bool{false, true}, "kept", "lost"),
		takesCO2("pressure that lost CO2 is in balance with", 1000, 0.0426).or(0.0426),
		func(lost bool, p units.AbsolutePressure) (water.CO2Loss, error) {
			if !lost {
				return water.CO2Loss{}, nil
			}
			return water.CO2LostTo(p), nil
		})
}

func waterEquilibria() []*Function {
	type equilibrium = water.Equilibrium
	const under = "partial pressure of CO2"
	free := func(s water.Species, name, meaning string) result[equilibrium] {
		return inAKilogram(func(e equilibrium) units.MolarConcentration { return e.Of(s) }, name, meaning)
	}
	index := func(m water.Mineral, name string) result[equilibrium] {
		return numberFrom(func(e equilibrium) float64 { return e.SaturationIndex(m) }, "saturation_"+name, "", "saturation index of "+name)
	}
	carbon := inAKilogram(equilibrium.InorganicCarbon, "inorganic_carbon", "all inorganic carbon")
	return []*Function{
		heavy(entry("water_speciation", "Dissolved forms of the carbonate, saturation and CO2 pressure of a water of known pH", equilibria,
			of1(takesKnownPH(), water.Profile.Equilibrium),
			numberFrom(func(e equilibrium) float64 { return e.IonicStrength().In(units.MolePerLitre) / kilogramsPerLitre }, "ionic_strength", "mol/kg",
				"half the sum of m z²"), carbon,
			free(water.CarbonDioxide, "carbon_dioxide", "dissolved CO2"), free(water.BicarbonateFree, "bicarbonate", "free HCO3-"),
			free(water.CarbonateFree, "carbonate", "free CO3-2"),
			from(equilibrium.CO2Pressure, "co2_pressure", units.Kilopascal, "CO2 pressure in balance with the water"),
			index(water.Calcite, "calcite"), index(water.GypsumMineral, "gypsum"))),
		entry("water_ph_under_co2", "pH of a water in balance with CO2 of a partial pressure; that of air is 0.0426 kPa", equilibria,
			of3(takesGiven(), takesCO2(under, 1000, 0.0426).or(0.0426), waterTemperature(),
				func(g given, co2 units.AbsolutePressure, t units.Temperature) (equilibrium, error) {
					p, err := g.at(t)
					if err != nil {
						return equilibrium{}, err
					}
					return p.Under(co2)
				}),
			numberFrom(equilibrium.PH, "ph", "", "pH at rest"), carbon),
		entry("alkalinity_at_ph", "Alkalinity with which the ions of a water come to a pH under CO2; that of air is 0.0426 kPa", equilibria,
			of4(takesIons(), takesNumber("ph", "", "pH wanted", 1, 13, 4), takesCO2(under, 1000, 101.325).or(0.0426), waterTemperature(),
				func(c contents, ph float64, co2 units.AbsolutePressure, t units.Temperature) (units.CalciumCarbonate, error) {
					p, err := c.at(t, units.CalciumCarbonate{}) // the water's own alkalinity is not asked
					if err != nil {
						return units.CalciumCarbonate{}, err
					}
					return p.AlkalinityAt(ph, co2)
				}),
			gives("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity at that pH")),
		entry("water_acid_to_ph", "Acid that brings a water of known pH to a lower one, CO2 kept or lost", equilibria,
			of4(takesKnownPH(), takesAcid(), takesNumber("target_ph", "", "pH wanted", 2, 12, 5.4), takesLoss(),
				func(p water.Profile, a water.Acid, ph float64, loss water.CO2Loss) (units.MolarConcentration, error) {
					c, _, err := p.AcidPerLitre(a, ph, loss)
					return c, err
				}),
			inAKilogram(itself[units.MolarConcentration], "acid", "pure acid for each kilogram of water"),
			gives("acid_per_litre", units.MillimolePerLitre, "pure acid for each litre")),
	}
}
