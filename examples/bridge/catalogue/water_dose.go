package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// conventions are those of titratable acidity, in the order of the choice.
var conventions = []water.Titration{
	water.TartaricAcid.TitratedTo(7), water.SulfuricAcid.TitratedTo(7), water.TartaricAcid.TitratedTo(8.2),
	water.LacticAcid.TitratedTo(8.2), water.MalicAcid.TitratedTo(8.2), water.CitricAcid.TitratedTo(8.2),
}

func takesConvention() arg[water.Titration] {
	return picksBy("convention", "end point and the acid it is stated as", conventions, "pH 7.0 as tartaric (OIV)", "pH 7.0 as sulfuric (France)",
		"pH 8.2 as tartaric (US wine)", "pH 8.2 as lactic (US beer)", "pH 8.2 as malic (US cider)", "pH 8.2 as citric (soft drinks)")
}

// takesBase is a salt that brings alkalinity.
func takesBase() arg[material.Material] {
	var of []material.Material
	for _, s := range water.Salts() {
		if !s.Composition().Alkalinity.IsZero() {
			of = append(of, s)
		}
	}
	return picksBy("base", "the base, as weighed", of, namesOf(of)...)
}

// waterDoses are acidities by titration, and doses of bases.
func waterDoses() []*Function {
	type dose = water.BaseDose
	volume := takes("volume", units.Litre, "the water", 0.001, 1e6, 60)
	alkalinity := func(name, meaning string, least, example float64) arg[units.CalciumCarbonate] {
		return takes(name, units.MilligramPerLitreCaCO3, meaning, least, 5000, example)
	}
	return []*Function{
		entry("titratable_acidity", "Titratable acidity of a water with an acid in it, its CO2 driven out, by a convention",
			"OIV-MA-AS313-01 (pH 7.0) and AOAC 962.12 (pH 8.2), recalled from memory; "+equilibria,
			of5(takesAcid(), takes("amount", units.MillimolePerLitre, "pure acid in the water", 0, 1000, 40),
				alkalinity("alkalinity", "alkalinity of the water", 0, 0).or(0), waterTemperature(), takesConvention(),
				func(a water.Acid, n units.MolarConcentration, alk units.CalciumCarbonate, t units.Temperature, by water.Titration) (units.MassConcentration, error) {
					p, err := water.NewProfile(t, alk)
					if err != nil {
						return units.MassConcentration{}, err
					}
					if p, err = p.AddAcid(a, as(units.Millimole, n.In(units.MillimolePerLitre)), units.Litre.Of(1)); err != nil {
						return units.MassConcentration{}, err
					}
					return p.TitratableAcidity(by)
				}),
			gives("acidity", units.GramPerLitre, "the titratable acidity")),
		entry("water_base_to_alkalinity", "Mass of a base that raises the alkalinity of a volume of water", "stoichiometry; "+atomicWeights,
			of4(alkalinity("alkalinity", "alkalinity of the water", -5000, 25), takesBase(), alkalinity("target", "alkalinity wanted", -5000, 75), volume,
				func(alk units.CalciumCarbonate, base material.Material, target units.CalciumCarbonate, v units.Volume) (units.Mass, error) {
					p, err := water.NewProfile(units.Celsius.Of(20), alk)
					if err != nil {
						return units.Mass{}, err
					}
					return p.BaseToAlkalinity(base, target, v)
				}),
			gives("mass", units.Gram, "the base")),
		heavy(entry("water_base_to_ph", "Mass of a base that raises the pH of a closed water; lime, soda ash and lye burn: the maker's safety sheet comes first",
			equilibria,
			of4(takesKnownPH(), takesBase(), takesNumber("target_ph", "", "pH wanted", 2, 12.5, 8), volume, water.Profile.BaseToPH),
			from(func(d dose) units.Mass { return d.Dose.Mass }, "mass", units.Gram, "the base"),
			from(func(d dose) units.CalciumCarbonate { return d.Water.Alkalinity() }, "alkalinity_after", units.MilligramPerLitreCaCO3,
				"alkalinity of the water after it"))),
	}
}
