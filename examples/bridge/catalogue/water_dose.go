package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// conventions are those of titratable acidity, in the order of the choice.
var conventions = [...]water.Titration{
	water.TitrationOIV, water.TitrationFrance, water.TitrationUS,
	water.TitrationBeerUS, water.TitrationCiderUS, water.TitrationSoftDrink,
}

func conventionChoice() Input {
	return choice("convention", "end point and the acid it is stated as", "pH 7.0 as tartaric (OIV)", "pH 7.0 as sulfuric (France)",
		"pH 8.2 as tartaric (US wine)", "pH 8.2 as lactic (US beer)", "pH 8.2 as malic (US cider)", "pH 8.2 as citric (soft drinks)")
}

// bases are the salts that bring alkalinity.
func bases() (names []string, of []material.Material) {
	for _, s := range salts {
		if !s.Composition().Alkalinity.IsZero() {
			names, of = append(names, s.Name()), append(of, s)
		}
	}
	return names, of
}

// waterDoses are acidities by titration, and doses of bases.
func waterDoses() []Function {
	names, baseOf := bases()
	baseChoice := choice("base", "the base, as weighed", names...)
	return []Function{
		{
			Name:    "titratable_acidity",
			Meaning: "Titratable acidity of a water with an acid in it, its CO2 driven out, by a convention",
			Source:  "OIV-MA-AS313-01 (pH 7.0) and AOAC 962.12 (pH 8.2), recalled from memory; " + equilibria,
			Inputs: []Input{
				acidChoice(), in("amount", units.MillimolePerLitre, "pure acid in the water", 0, 1000, 40),
				in("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity of the water", 0, 5000, 0).or(0), waterTemperature(),
				conventionChoice(),
			},
			Outputs: []Output{out("acidity", units.GramPerLitre, "the titratable acidity")},
			call: func(in, out []float64) error {
				p, err := water.NewProfile(as(units.Celsius, in[3]), as(units.MilligramPerLitreCaCO3, in[2]))
				if err != nil {
					return err
				}
				if p, err = p.AddAcid(water.Acid(in[0]), as(units.Millimole, in[1]), units.Litre.Of(1)); err != nil {
					return err
				}
				ta, err := p.TitratableAcidity(conventions[int(in[4])])
				out[0] = ta.In(units.GramPerLitre)
				return err
			},
		},
		{
			Name:    "water_base_to_alkalinity",
			Meaning: "Mass of a base that raises the alkalinity of a volume of water",
			Source:  "stoichiometry; " + atomicWeights,
			Inputs: []Input{
				in("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity of the water", -5000, 5000, 25), baseChoice,
				in("target", units.MilligramPerLitreCaCO3, "alkalinity wanted", -5000, 5000, 75), in("volume", units.Litre, "the water", 0.001, 1e6, 60),
			},
			Outputs: []Output{out("mass", units.Gram, "the base")},
			call: func(in, out []float64) error {
				p, err := water.NewProfile(as(units.Celsius, 20), as(units.MilligramPerLitreCaCO3, in[0]))
				if err != nil {
					return err
				}
				m, err := p.BaseToAlkalinity(baseOf[int(in[1])], as(units.MilligramPerLitreCaCO3, in[2]), as(units.Litre, in[3]))
				out[0] = m.In(units.Gram)
				return err
			},
		},
		{
			Name:    "water_base_to_ph",
			Meaning: "Mass of a base that raises the pH of a closed water; lime, soda ash and lye burn: the maker's safety sheet comes first",
			Source:  equilibria,
			Inputs: append(waterOfKnownPH(),
				baseChoice, number("target_ph", "", "pH wanted", 2, 12.5, 8), in("volume", units.Litre, "the water", 0.001, 1e6, 60)),
			Outputs: []Output{
				out("mass", units.Gram, "the base"),
				out("alkalinity_after", units.MilligramPerLitreCaCO3, "alkalinity of the water after it"),
			},
			call: func(in, out []float64) error {
				p, err := knownPH(in)
				if err != nil {
					return err
				}
				d, err := p.BaseToPH(baseOf[int(in[9])], in[10], as(units.Litre, in[11]))
				out[0], out[1] = d.Dose.Mass.In(units.Gram), d.Water.Alkalinity().In(units.MilligramPerLitreCaCO3)
				return err
			},
			heavy: true,
		},
	}
}
