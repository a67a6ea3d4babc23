package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
)

var sweeteners = nutrient.Sweeteners()

// nutrientAfter are what is done when the ferment is over.
func nutrientAfter() []Function {
	var sweet []string
	for _, s := range sweeteners {
		sweet = append(sweet, s.Name())
	}
	return []Function{
		{
			Name:    "flavour_for_batch",
			heavy:   true,
			Meaning: "flavouring for a batch by a bench trial, and what it does to the strength",
			Source:  "proportion; masses by OIML R 22; legal share 27 CFR 25.15(b) and 7.5",
			Inputs: []Input{
				in("sample", units.Millilitre, "drink in the trial", 0.1, 1e6, 200),
				in("added", units.Millilitre, "flavouring in the trial", 0.0001, 1e5, 0.6),
				in("volume", units.Litre, "of the batch", 0.001, 1e7, 60),
				in("strength", units.PercentVolume, "of the batch", 0, 20, 4.6),
				in("flavour_strength", units.PercentVolume, "of the flavouring", 0, 100, 40).or(0),
			},
			Outputs: []Output{
				out("flavouring", units.Millilitre, "to add to the batch"),
				out("strength_after", units.PercentVolume, "of the batch with it"),
				out("alcohol_share", units.Percent, "of its alcohol that the flavouring brings"),
			},
			call: func(in, out []float64) error {
				base, err := nutrient.Flavouring{Strength: as(units.PercentVolume, in[3])}.Liquid(as(units.Litre, in[2]))
				if err != nil {
					return err
				}
				f, err := nutrient.Trial{Sample: as(units.Millilitre, in[0]), Added: as(units.Millilitre, in[1])}.
					Scale(base, nutrient.Flavouring{Strength: as(units.PercentVolume, in[4])})
				out[0], out[1], out[2] = f.Flavouring.In(units.Millilitre), f.After.In(units.PercentVolume), f.AlcoholShare.In(units.Percent)
				return err
			},
		},
		{
			Name:    "dilution_water",
			heavy:   true,
			Meaning: "water that lets a dry drink down to a strength",
			Source:  "OIML R 22",
			Inputs: []Input{
				in("volume", units.Litre, "of the drink at 20 °C", 0.001, 1e7, 30),
				in("strength", units.PercentVolume, "of the drink", 0.2, 60, 9),
				in("wanted", units.PercentVolume, "strength wanted", 0.1, 60, 4.6),
			},
			Outputs: []Output{
				out("water", units.Kilogram, "water to add"),
				out("volume_after", units.Litre, "of the drink with it, at 20 °C"),
			},
			call: func(in, out []float64) error {
				base, err := nutrient.Flavouring{Strength: as(units.PercentVolume, in[1])}.Liquid(as(units.Litre, in[0]))
				if err != nil {
					return err
				}
				d, err := nutrient.Dilute(base, gravity.Solution{}, as(units.PercentVolume, in[2]))
				if err != nil {
					return err
				}
				v, err := d.Liquid.Volume(units.Celsius.Of(20))
				out[0], out[1] = d.Water.In(units.Kilogram), v.In(units.Litre)
				return err
			},
		},
		{
			Name:    "sweetener_dose",
			heavy:   true,
			Meaning: "sweetener that sweetens as so much sugar would",
			Source:  "BMC Medicine 9 (2011) 123; Public Health Nutr. 26 (2022) 952; Appl. Microbiol. Biotechnol. 102 (2018) 587; Nutrients 13 (2021) 279",
			Inputs: []Input{
				choice("sweetener", "what sweetens", sweet...),
				in("sucrose", units.GramPerLitre, "sugar that it stands for", 0.1, 200, 20),
			},
			Outputs: []Output{
				out("dose", units.MilligramPerLitre, "in the middle of the published sweetness"),
				out("least", units.MilligramPerLitre, "by the greatest published sweetness"),
				out("most", units.MilligramPerLitre, "by the least published sweetness"),
				pure("sweetness_low", "", "least published sweetness, sucrose 1"),
				pure("sweetness_high", "", "greatest published sweetness, sucrose 1"),
			},
			call: func(in, out []float64) error {
				s := sweeteners[int(in[0])]
				d, err := nutrient.SweetenLike(s, as(units.GramPerLitre, in[1]), units.Litre.Of(1), nutrient.EU)
				f := d.Concentration
				out[0], out[1], out[2] = f.Value.In(units.MilligramPerLitre), f.Low.In(units.MilligramPerLitre), f.High.In(units.MilligramPerLitre)
				out[3], out[4] = s.Sweetness().Low, s.Sweetness().High
				return err
			},
		},
		{
			Name:    "so2_pk",
			Meaning: "dissociation constant of SO2 in water and ethanol, as pK",
			Source:  "OIV-MA-AS323-04C table 1",
			Inputs: []Input{
				in("strength", units.PercentVolume, "of the drink", 0, 15, 10),
				in("temperature", units.Celsius, "of the drink", 20, 40, 20),
			},
			Outputs: []Output{pure("pk", "", "thermodynamic pK")},
			call: func(in, out []float64) error {
				pK, err := nutrient.SulfurDioxidePK(as(units.PercentVolume, in[0]), as(units.Celsius, in[1]))
				out[0] = pK
				return err
			},
		},
		{
			Name:    "so2_free_for_molecular",
			Meaning: "free SO2 that holds a molecular SO2, by the constant of wine practice",
			Source:  "pK 1.81 of wine practice (common practice, no source)",
			Inputs: []Input{
				number("ph", "", "pH of the drink", 2.5, 5, 3.4),
				in("molecular", units.MilligramPerLitre, "molecular SO2 wanted", 0, 5, 0.8).or(0.8),
			},
			Outputs: []Output{
				out("free", units.MilligramPerLitre, "free SO2"),
				out("share", units.Fraction, "of the free SO2 that is molecular"),
			},
			call: func(in, out []float64) error {
				s, err := nutrient.MolecularSharePractice(in[0])
				if err != nil {
					return err
				}
				f, err := nutrient.FreeSulfite(as(units.MilligramPerLitre, in[1]), s)
				out[0], out[1] = f.In(units.MilligramPerLitre), s.In(units.Fraction)
				return err
			},
		},
		{
			Name:    "sorbate_for_strength",
			heavy:   true,
			Meaning: "potassium sorbate that keeps a wine from fermenting again; no table covers drinks below 10 % vol",
			Source:  "How to add potassium sorbate; a home-wine book for the spread",
			Inputs: []Input{
				in("strength", units.PercentVolume, "of the wine", 10, 14, 12),
				number("ph", "", "pH of the wine", 2.8, 3.5, 3.3).or(3.3),
			},
			Outputs: []Output{
				out("sorbate", units.MilligramPerLitre, "potassium sorbate"),
				out("low", units.MilligramPerLitre, "low end of the spread"),
				out("high", units.MilligramPerLitre, "high end of the spread"),
			},
			call: func(in, out []float64) error {
				f, err := nutrient.SorbateByStrength(as(units.PercentVolume, in[0]), in[1])
				out[0], out[1], out[2] = f.Value.In(units.MilligramPerLitre), f.Low.In(units.MilligramPerLitre), f.High.In(units.MilligramPerLitre)
				return err
			},
		},
		{
			Name:    "sorbic_acid",
			Meaning: "sorbic acid that potassium sorbate brings, and the part of it that acts at a pH",
			Source:  "stoichiometry; pK 4.76 (recalled from memory)",
			Inputs: []Input{
				in("sorbate", units.MilligramPerLitre, "potassium sorbate", 0, 2000, 200),
				number("ph", "", "pH of the drink", 2, 8, 3.4),
			},
			Outputs: []Output{
				out("acid", units.MilligramPerLitre, "sorbic acid"),
				out("undissociated", units.MilligramPerLitre, "the part of it that acts on yeast"),
			},
			call: func(in, out []float64) error {
				s, err := nutrient.Undissociated(in[1])
				out[0] = in[0] * nutrient.SorbicAcidShare().In(units.Percent) / 100
				out[1] = out[0] * s.In(units.Percent) / 100
				return err
			},
		},
	}
}
