package catalogue

import (
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

const moreThanAsked = ", with no limit of law looked up"

// nutrientStabilise are sulfite, sorbate and sweeteners.
func nutrientStabilise() []Function {
	sweeteners := finish.Sweeteners()
	ph := number("ph", "", "pH of the drink", 2.5, 5, 3.3)
	return []Function{
		{
			Name:    "so2_molecular_share",
			Meaning: "part of the free SO2 that is molecular, as wine makers reckon it",
			Source:  "1/(1 + 10^(pH - 1.81)), the pK of wine practice",
			Inputs:  []Input{ph},
			Outputs: []Output{
				out("share", units.Percent, "molecular part of the free SO2"),
			},
			call: func(in, out []float64) error {
				s, err := finish.MolecularSharePractice(in[0])
				out[0] = s.In(units.Percent)
				return err
			},
		},
		{
			Name:    "so2_molecular_share_oiv",
			Meaning: "part of the free SO2 that is molecular, by strength and temperature",
			Source:  "OIV-MA-AS323-04C, Sulfur dioxide (molecular method), table 1",
			Inputs: []Input{
				ph,
				in("strength", units.PercentVolume, "ethanol of the drink", 0, 15, 4.6),
				in("temperature", units.Celsius, "temperature of the drink", 20, 40, 20).or(20),
			},
			Outputs: []Output{out("share", units.Percent, "molecular part of the free SO2")},
			call: func(in, out []float64) error {
				s, err := finish.MolecularShareOIV(in[0], as(units.PercentVolume, in[1]), as(units.Celsius, in[2]))
				out[0] = s.In(units.Percent)
				return err
			},
		},
		{
			Name:    "so2_free_for_molecular",
			Meaning: "free SO2 that holds so much molecular SO2",
			Source:  "1/(1 + 10^(pH - 1.81)), the pK of wine practice",
			Inputs: []Input{
				in("molecular", units.MilligramPerLitre, "molecular SO2 wanted", 0, 3, 0.8),
				number("ph", "", "pH of the drink", 2.5, 4.6, 3.3),
			},
			Outputs: []Output{out("free", units.MilligramPerLitre, "free SO2")},
			call: func(in, out []float64) error {
				s, err := finish.MolecularSharePractice(in[1])
				if err != nil {
					return err
				}
				free, err := finish.FreeSulfite(as(units.MilligramPerLitre, in[0]), s)
				out[0] = free.In(units.MilligramPerLitre)
				return err
			},
		},
		{
			Name:    "sulfite_dose",
			Meaning: "metabisulfite that brings the free SO2 from what is there to what is wanted" + moreThanAsked,
			Source:  "molar masses from CIAAW atomic weights 2021",
			Inputs: []Input{
				choice("salt", "which salt", wordsOf(metabisulfites)...),
				in("wanted", units.MilligramPerLitre, "free SO2 wanted", 0, 500, 30),
				in("free", units.MilligramPerLitre, "free SO2 that is there", 0, 500, 0).or(0),
				in("volume", units.Litre, "of the drink", 0.001, 1e9, 60),
			},
			Outputs: []Output{out("mass", units.Gram, "salt to weigh")},
			heavy:   true,
			call: func(in, out []float64) error {
				d, err := finish.SulfiteFor(metabisulfites[int(in[0])], as(units.MilligramPerLitre, in[1]), as(units.MilligramPerLitre, in[2]), as(units.MilligramPerLitre, in[2]), as(units.Litre, in[3]), law.EU)
				out[0] = d.Mass.In(units.Gram)
				return err
			},
		},
		entry("sorbic_acid_undissociated", "part of the sorbic acid that acts on yeast at a pH", "1/(1 + 10^(pH - 4.76))",
			of1(takesNumber("ph", "", "pH of the drink", 2, 8, 3.3), finish.Undissociated),
			gives("share", units.Percent, "undissociated part")),
		{
			Name:    "sorbate_for_wine",
			Meaning: "potassium sorbate that keeps a wine below pH 3.5 from fermenting again; no table covers drinks below 10 % vol",
			Source:  "How to add potassium sorbate, table by strength",
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol of the wine", 10, 14, 11),
				number("ph", "", "pH of the wine", 2.8, 3.5, 3.3),
			},
			Outputs: []Output{out("sorbate", units.MilligramPerLitre, "potassium sorbate")},
			call: func(in, out []float64) error {
				s, err := finish.SorbateByStrength(in[1], as(units.PercentVolume, in[0]))
				out[0] = s.Value.In(units.MilligramPerLitre)
				return err
			},
		},
		{
			Name:    "sweetener_for_sucrose",
			Meaning: "sweetener that sweetens as much as sucrose does" + moreThanAsked,
			Source:  "relative sweetness by mass, as package nutrient cites it for each",
			Inputs: []Input{
				choice("sweetener", "which sweetener", wordsOf(sweeteners)...),
				in("sucrose", units.GramPerLitre, "sucrose that it stands for", 0.1, 200, 20),
			},
			Outputs: []Output{
				out("concentration", units.MilligramPerLitre, "sweetener in a litre"),
				out("least", units.MilligramPerLitre, "the same by the greatest sweetness that is published"),
				out("most", units.MilligramPerLitre, "the same by the least sweetness that is published"),
			},
			heavy: true,
			call: func(in, out []float64) error {
				s, err := finish.SweetenLike(sweeteners[int(in[0])], as(units.GramPerLitre, in[1]), units.Litre.Of(1), law.EU)
				c := s.Concentration
				out[0], out[1], out[2] = c.Value.In(units.MilligramPerLitre), c.Low.In(units.MilligramPerLitre), c.High.In(units.MilligramPerLitre)
				return err
			},
		},
	}
}

var metabisulfites = []material.Material{material.PotassiumMetabisulfite(), material.SodiumMetabisulfite()}
