package catalogue

import (
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
)

const moreThanAsked = ", with no limit of law looked up"

// nutrientStabilise are sulfite, sorbate and sweeteners.
func nutrientStabilise() []*Function {
	const practice = "1/(1 + 10^(pH - 1.81)), the pK of wine practice"
	type sorbate = evidence.Figure[units.MassConcentration]
	ph := func(meaning string, min, max float64) arg[float64] {
		return takesNumber("ph", "", meaning, min, max, 3.3)
	}
	molecular := gives("share", units.Percent, "molecular part of the free SO2")
	metabisulfites := []material.Material{material.PotassiumMetabisulfite(), material.SodiumMetabisulfite()}
	return []*Function{
		entry("so2_molecular_share", "part of the free SO2 that is molecular, as wine makers reckon it", practice,
			of1(ph("pH of the drink", 2.5, 5), finish.MolecularSharePractice), molecular),
		entry("so2_molecular_share_oiv", "part of the free SO2 that is molecular, by strength and temperature",
			"OIV-MA-AS323-04C, Sulfur dioxide (molecular method), table 1",
			of3(ph("pH of the drink", 2.5, 5), takes("strength", units.PercentVolume, "ethanol of the drink", 0, 15, 4.6),
				takes("temperature", units.Celsius, "temperature of the drink", 20, 40, 20).or(20), finish.MolecularShareOIV), molecular),
		entry("so2_free_for_molecular", "free SO2 that holds so much molecular SO2", practice,
			of2(takes("molecular", units.MilligramPerLitre, "molecular SO2 wanted", 0, 3, 0.8), of1(ph("pH of the drink", 2.5, 4.6), finish.MolecularSharePractice),
				finish.FreeSulfite),
			gives("free", units.MilligramPerLitre, "free SO2")),
		heavy(entry("sulfite_dose", "metabisulfite that brings the free SO2 from what is there to what is wanted"+moreThanAsked,
			"molar masses from CIAAW atomic weights 2021",
			of4(picks("salt", "which salt", metabisulfites), takes("wanted", units.MilligramPerLitre, "free SO2 wanted", 0, 500, 30),
				takes("free", units.MilligramPerLitre, "free SO2 that is there", 0, 500, 0).or(0), takes("volume", units.Litre, "of the drink", 0.001, 1e9, 60),
				func(salt material.Material, wanted, free units.MassConcentration, v units.Volume) (finish.SulfiteDose, error) {
					return finish.SulfiteFor(salt, wanted, free, free, v, law.EU)
				}),
			from(func(d finish.SulfiteDose) units.Mass { return d.Mass }, "mass", units.Gram, "salt to weigh"))),
		entry("sorbic_acid_undissociated", "part of the sorbic acid that acts on yeast at a pH", "1/(1 + 10^(pH - 4.76))",
			of1(ph("pH of the drink", 2, 8), finish.Undissociated),
			gives("share", units.Percent, "undissociated part")),
		entry("sorbate_for_wine", "potassium sorbate that keeps a wine below pH 3.5 from fermenting again; no table covers drinks below 10 % vol",
			"How to add potassium sorbate, table by strength",
			of2(takes("strength", units.PercentVolume, "ethanol of the wine", 10, 14, 11), ph("pH of the wine", 2.8, 3.5),
				func(s units.StrengthByVolume, ph float64) (sorbate, error) { return finish.SorbateByStrength(ph, s) }),
			from(func(s sorbate) units.MassConcentration { return s.Value }, "sorbate", units.MilligramPerLitre, "potassium sorbate")),
		heavy(entry("sweetener_for_sucrose", "sweetener that sweetens as much as sucrose does"+moreThanAsked,
			"relative sweetness by mass, as package nutrient cites it for each",
			of2(picks("sweetener", "which sweetener", finish.Sweeteners()), takes("sucrose", units.GramPerLitre, "sucrose that it stands for", 0.1, 200, 20),
				func(s finish.Sweetener, sucrose units.MassConcentration) (finish.Sweetening, error) {
					return finish.SweetenLike(s, sucrose, units.Litre.Of(1), law.EU)
				}),
			band(func(s finish.Sweetening) evidence.Figure[units.MassConcentration] { return s.Concentration }, units.MilligramPerLitre,
				[2]string{"concentration", "sweetener in a litre"}, [2]string{"least", "the same by the greatest sweetness that is published"},
				[2]string{"most", "the same by the least sweetness that is published"})...)),
	}
}
