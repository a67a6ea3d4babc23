package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// waterFunctions are the entries of package water.
func waterFunctions() []Function {
	var all []Function
	for _, part := range [][]Function{
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
	} {
		all = append(all, part...)
	}
	return all
}

const (
	atomicWeights = "Standard atomic weights 2021, abridged (Prohaska et al., Pure Appl. Chem. 94 (2022) 573)"
	equilibria    = "Plummer & Busenberg 1982, Truesdell & Jones 1974, Davies 1962; electroneutrality and mass balances"
)

// salts is made once: a call reads it.
var salts = water.Salts()

func saltChoice() Input {
	return choice("salt", "the salt as weighed, with its crystal water", wordsOf(salts)...)
}

func acidChoice() Input {
	return choice("acid_kind", "the acid", wordsOf(water.Acids())...)
}

// waterIons are the inputs that describe a water, in the order that profileOf reads.
func waterIons(zero bool) []Input {
	list := []Input{
		in("calcium", units.MilligramPerLitre, "calcium of the water", 0, 5000, 60),
		in("magnesium", units.MilligramPerLitre, "magnesium of the water", 0, 5000, 10),
		in("sodium", units.MilligramPerLitre, "sodium of the water", 0, 5000, 20),
		in("potassium", units.MilligramPerLitre, "potassium of the water", 0, 5000, 3),
		in("chloride", units.MilligramPerLitre, "chloride of the water", 0, 5000, 30),
		in("sulfate", units.MilligramPerLitre, "sulfate of the water", 0, 5000, 50),
		in("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity of the water", -5000, 5000, 144),
	}
	if zero {
		for i := range list {
			list[i] = list[i].or(0)
		}
	}
	return list
}

// givenAlkalinity is the place of the alkalinity among them; the ions stand before it.
const givenAlkalinity = 6

func waterTemperature() Input {
	return in("temperature", units.Celsius, "temperature of the water", 0, 90, 20).or(20)
}

func profileOf(in []float64, celsius float64) (water.Profile, error) {
	mg := func(v float64) units.MassConcentration { return as(units.MilligramPerLitre, v) }
	return water.NewProfile(as(units.Celsius, celsius), as(units.MilligramPerLitreCaCO3, in[givenAlkalinity]),
		water.Calcium.At(mg(in[0])), water.Magnesium.At(mg(in[1])), water.Sodium.At(mg(in[2])),
		water.Potassium.At(mg(in[3])), water.Chloride.At(mg(in[4])), water.Sulfate.At(mg(in[5])))
}

// waterOfKnownPH is the inputs of such a water; knownPH reads it from them.
func waterOfKnownPH() []Input {
	return append(waterIons(true), number("ph", "", "pH of the water at its temperature", 2, 12, 7.5), waterTemperature())
}

func knownPH(in []float64) (water.Profile, error) {
	p, err := profileOf(in, in[8])
	if err != nil {
		return p, err
	}
	return p.WithPH(in[7])
}

var mainIons = [...]water.Ion{water.Calcium, water.Magnesium, water.Sodium, water.Potassium, water.Chloride, water.Sulfate}

func waterSalts() []Function {
	return []Function{
		{
			Name:    "salt_molar_mass",
			Meaning: "Mass of a mole of a salt, crystal water included",
			Source:  atomicWeights,
			Inputs:  []Input{saltChoice()},
			Outputs: []Output{pure("molar_mass", "g/mol", "mass of a mole")},
			call: func(in, out []float64) error {
				out[0] = salts[int(in[0])].MolarMass()
				return nil
			},
		},
		{
			Name:    "salt_ions",
			Meaning: "Ions and alkalinity that a mass of a salt brings to a volume of water",
			Source:  atomicWeights,
			Inputs: []Input{
				saltChoice(),
				in("mass", units.Gram, "the salt as weighed", 0, 1e6, 6),
				in("volume", units.Litre, "the water it is dissolved in", 0.001, 1e6, 60),
			},
			Outputs: []Output{
				out("calcium", units.MilligramPerLitre, "calcium added"),
				out("magnesium", units.MilligramPerLitre, "magnesium added"),
				out("sodium", units.MilligramPerLitre, "sodium added"),
				out("potassium", units.MilligramPerLitre, "potassium added"),
				out("chloride", units.MilligramPerLitre, "chloride added"),
				out("sulfate", units.MilligramPerLitre, "sulfate added"),
				out("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity added"),
			},
			call: func(in, out []float64) error {
				p, err := water.Profile{}.Add(as(units.Litre, in[2]), salts[int(in[0])].Dose(as(units.Gram, in[1])))
				for i, ion := range mainIons {
					out[i] = p.Ion(ion).In(units.MilligramPerLitre)
				}
				out[6] = p.Alkalinity().In(units.MilligramPerLitreCaCO3)
				return err
			},
		},
	}
}

func waterReport() []Function {
	return []Function{
		{
			Name:    "water_hardness",
			Meaning: "Hardness, residual alkalinity and balance of the ions of a water",
			Source:  "Standard Methods 2340 B and 1030 E (recalled from memory); Kolbach, Monatsschrift für Brauerei 6 (1953) 49",
			Inputs:  waterIons(true),
			Outputs: []Output{
				out("hardness", units.MilligramPerLitreCaCO3, "total hardness"),
				out("residual_alkalinity", units.MilligramPerLitreCaCO3, "alkalinity left after calcium and magnesium in a malt mash"),
				out("cations", units.MilliequivalentPerLitre, "sum of the cations"),
				out("anions", units.MilliequivalentPerLitre, "sum of the anions with the alkalinity"),
				pure("balance", "%", "100 times the difference over the sum"),
			},
			call: func(in, out []float64) error {
				p, err := profileOf(in, 20)
				if err != nil {
					return err
				}
				b := p.IonicBalance()
				out[0] = p.Hardness().In(units.MilligramPerLitreCaCO3)
				out[1] = p.ResidualAlkalinity().In(units.MilligramPerLitreCaCO3)
				out[2], out[3] = b.Cations.In(units.MilliequivalentPerLitre), b.Anions.In(units.MilliequivalentPerLitre)
				out[4] = b.Percent
				return nil
			},
			heavy: true,
		},
	}
}

func waterEquilibria() []Function {
	return []Function{
		{
			Name:    "water_speciation",
			Meaning: "Dissolved forms of the carbonate, saturation and CO2 pressure of a water of known pH",
			Source:  equilibria,
			Inputs:  waterOfKnownPH(),
			Outputs: []Output{
				pure("ionic_strength", "mol/kg", "half the sum of m z²"),
				pure("inorganic_carbon", "mmol/kg", "all inorganic carbon"),
				pure("carbon_dioxide", "mmol/kg", "dissolved CO2"),
				pure("bicarbonate", "mmol/kg", "free HCO3-"),
				pure("carbonate", "mmol/kg", "free CO3-2"),
				out("co2_pressure", units.Kilopascal, "CO2 pressure in balance with the water"),
				pure("saturation_calcite", "", "saturation index of calcite"),
				pure("saturation_gypsum", "", "saturation index of gypsum"),
			},
			call: func(in, out []float64) error {
				p, err := knownPH(in)
				if err != nil {
					return err
				}
				e, err := p.Equilibrium()
				if err != nil {
					return err
				}
				out[0] = e.IonicStrength()
				out[1] = e.InorganicCarbon().In(units.MillimolePerLitre) / kilogramsPerLitre
				for i, s := range []water.Species{water.CarbonDioxide, water.BicarbonateFree, water.CarbonateFree} {
					out[2+i] = e.Of(s).In(units.MillimolePerLitre) / kilogramsPerLitre
				}
				out[5] = e.CO2Pressure().In(units.Kilopascal)
				out[6], out[7] = e.SaturationIndex(water.Calcite), e.SaturationIndex(water.GypsumMineral)
				return nil
			},
			heavy: true,
		},
		{
			Name:    "water_ph_under_co2",
			Meaning: "pH of a water in balance with CO2 of a partial pressure; that of air is 0.0426 kPa",
			Source:  equilibria,
			Inputs: append(waterIons(true),
				in("co2_pressure", units.Kilopascal, "partial pressure of CO2", 0, 1000, 0.0426).or(0.0426), waterTemperature()),
			Outputs: []Output{
				pure("ph", "", "pH at rest"),
				pure("inorganic_carbon", "mmol/kg", "all inorganic carbon"),
			},
			call: func(in, out []float64) error {
				p, err := profileOf(in, in[8])
				if err != nil {
					return err
				}
				e, err := p.Under(as(units.Kilopascal, in[7]))
				if err != nil {
					return err
				}
				out[0] = e.PH()
				out[1] = e.InorganicCarbon().In(units.MillimolePerLitre) / kilogramsPerLitre
				return nil
			},
		},
		{
			Name:    "alkalinity_at_ph",
			Meaning: "Alkalinity with which the ions of a water come to a pH under CO2; that of air is 0.0426 kPa",
			Source:  equilibria,
			Inputs: append(waterIons(true)[:givenAlkalinity],
				number("ph", "", "pH wanted", 1, 13, 4),
				in("co2_pressure", units.Kilopascal, "partial pressure of CO2", 0, 1000, 101.325).or(0.0426), waterTemperature()),
			Outputs: []Output{out("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity at that pH")},
			call: func(in, out []float64) error {
				var given [givenAlkalinity + 1]float64 // the ions; the water's own alkalinity is not asked
				copy(given[:givenAlkalinity], in)
				p, err := profileOf(given[:], in[8])
				if err != nil {
					return err
				}
				a, err := p.AlkalinityAt(in[6], as(units.Kilopascal, in[7]))
				out[0] = a.In(units.MilligramPerLitreCaCO3)
				return err
			},
		},
		{
			Name:    "water_acid_to_ph",
			Meaning: "Acid that brings a water of known pH to a lower one, CO2 kept or lost",
			Source:  equilibria,
			Inputs: append(waterOfKnownPH(),
				acidChoice(), number("target_ph", "", "pH wanted", 2, 12, 5.4),
				choice("co2", "what becomes of the CO2 set free", "kept", "lost"),
				in("co2_pressure", units.Kilopascal, "pressure that lost CO2 is in balance with", 0, 1000, 0.0426).or(0.0426)),
			Outputs: []Output{
				pure("acid", "mmol/kg", "pure acid for each kilogram of water"),
				out("acid_per_litre", units.MillimolePerLitre, "pure acid for each litre"),
			},
			call: func(in, out []float64) error {
				p, err := knownPH(in)
				if err != nil {
					return err
				}
				loss := water.CO2Kept
				if in[11] == 1 {
					loss = water.CO2LostTo(as(units.Kilopascal, in[12]))
				}
				c, _, err := p.AcidPerLitre(water.Acid(in[9]), in[10], loss)
				out[1] = c.In(units.MillimolePerLitre)
				out[0] = out[1] / kilogramsPerLitre
				return err
			},
		},
	}
}

// kilogramsPerLitre is the water in a litre at 20 °C, as package water has it.
const kilogramsPerLitre = 0.998203
