package main

import (
	"example.org/zymase/gravity/label"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

func stabiliseChapter() Chapter {
	return Chapter{
		Title: "18 Stabilising, sweetening and flavour",
		Intro: "What keeps yeast from starting again acts in one form only, and the pH decides how much of it there is. Every figure has a limit in law.",
		Problems: []Problem{
			molecularSulfite(), sulfiteInWine(), metabisulfiteForABatch(), sorbateForWine(), sorbateThatActs(), sweetWithoutSugar(), sugarThatWakes(),
			souredToTaste(), flavourByTrial(), finingsByTrial(),
		},
	}
}

func molecularSulfite() Problem {
	return Problem{
		Title: "Molecular SO2 by the cellar's rule",
		Ask:   "How much of the free SO2 is molecular at pH 3.5, and how much free SO2 gives 0.8 mg/L of it?",
		Given: []string{"pH 3.5, pK 1.81", "0.8 mg/L molecular"},
		Source: Source{ByHand, "1/(1 + 10^(3.5 − 1.81)) = 1/49.978 = 2.0009 %; 0.8/0.020009 = 39.98 mg/L. (pK 1.81 at 20 °C in water: common practice, " +
			"no source.)"},
		Work: func(w *Working) {
			share := must(finish.MolecularSharePractice(3.5))
			free := must(finish.FreeSulfite(units.MilligramPerLitre.Of(0.8), share))
			w.Step("The share is 1/(1 + 10^(pH − pK)): %s.", share.Text(units.Percent, 3))
			w.Step("At pH 3.2 it would be %s.", must(finish.MolecularSharePractice(3.2)).Text(units.Percent, 2))
			w.Answer("molecular", share.In(units.Percent), 3, "%", 2.0009, 0.0005)
			w.Answer("free SO2", free.In(units.MilligramPerLitre), 2, "mg/L", 39.98, 0.01)
		},
	}
}

func sulfiteInWine() Problem {
	return Problem{
		Title: "Molecular SO2 by the table of the OIV",
		Ask:   "A wine of 10 % vol has pH 3.2. How much of its free SO2 is molecular at 20 °C, and what is the constant at 7.5 % vol and 25 °C?",
		Given: []string{"10 % vol, pH 3.2, 20 °C; 7.5 % vol, 25 °C"},
		Source: Source{Read, "OIV-MA-AS323-04C, Sulfur dioxide (molecular method), table 1: pKT 1.997 at 10 % vol and 20 °C, 2.098 at 5 and 2.198 at 10 % " +
			"vol and 25 °C. 1/(1 + 10^(3.2 − 1.997)) = 5.897 %; half way 2.148."},
		Work: func(w *Working) {
			share := must(finish.MolecularShareOIV(3.2, units.PercentVolume.Of(10), units.Celsius.Of(20)))
			pk := must(finish.SulfurDioxidePK(units.PercentVolume.Of(7.5), units.Celsius.Of(25)))
			w.Step("pK at 10 %% vol and 20 °C: %.3f; ethanol raises it.", must(finish.SulfurDioxidePK(units.PercentVolume.Of(10), units.Celsius.Of(20))))
			w.Step("The cellar's rule (pK 1.81 whatever the strength) has %s: it asks for a larger dose.",
				must(finish.MolecularSharePractice(3.2)).Text(units.Percent, 2))
			w.Answer("molecular", share.In(units.Percent), 3, "%", 5.897, 0.002)
			w.Answer("pK at 7.5 % vol", pk, 3, "", 2.148, 0.0005)
		},
	}
}

func metabisulfiteForABatch() Problem {
	return Problem{
		Title:  "Metabisulfite for a batch",
		Ask:    "60 L that hold no SO2 shall get 30 mg/L. How much fresh potassium metabisulfite is that?",
		Given:  []string{"60 L, 30 mg/L", "K2S2O5"},
		Source: Source{ByHand, "2 × 64.058/222.31 = 57.63 % SO2: 1.800 g / 0.5763 = 3.123 g."},
		Work: func(w *Working) {
			d := must(finish.SulfiteFor(material.PotassiumMetabisulfite(), units.MilligramPerLitre.Of(30), units.MassConcentration{},
				units.MassConcentration{}, units.Litre.Of(60), law.US))
			w.Step("The salt is %s SO2 when fresh.", material.PotassiumMetabisulfite().Composition().SulfurDioxide.Text(units.Percent, 2))
			w.Step("The law's figure is for wine: %s. For a drink from a sugar wash none was read.", d.Limits[0])
			w.Answer("salt", d.Mass.In(units.Gram), 2, "g", 3.123, 0.005)
			w.Caution(d.Cautions.Texts()...)
		},
	}
}

func sorbateForWine() Problem {
	return Problem{
		Title: "Sorbate by strength",
		Ask: "How much potassium sorbate keeps a wine of 12 % vol, and one of 10.5 % vol, from fermenting again, and what does the table say of a drink " +
			"of 4.6 % vol?",
		Given: []string{"12 % vol and 10.5 % vol, pH 3.3"},
		Source: Source{Practice, "A table that home winemakers pass on (How to add potassium sorbate, a home-wine article; no measurement behind it was " +
			"found): 200, 170, 130, 100 and 70 mg/L at 10, 11, 12, 13 and 14 % vol below pH 3.5; half way between 10 and 11 it is 185."},
		Work: func(w *Working) {
			a := must(finish.SorbateByStrength(3.3, units.PercentVolume.Of(12)))
			b := must(finish.SorbateByStrength(3.3, units.PercentVolume.Of(10.5)))
			w.Step("At 12 %% vol from %s to %s by other tables.", a.Low.Text(units.MilligramPerLitre, 0), a.High.Text(units.MilligramPerLitre, 0))
			if _, err := finish.SorbateByStrength(3.3, units.PercentVolume.Of(4.6)); err != nil {
				w.Step("At 4.6 %% vol there is no answer: the table runs from 10 to 14 %% vol, and no published one covers a weaker drink.")
			}
			w.Answer("12 % vol", a.Value.In(units.MilligramPerLitre), 0, "mg/L", 130, 0.5)
			w.Answer("10.5 % vol", b.Value.In(units.MilligramPerLitre), 0, "mg/L", 185, 0.5)
			w.Caution(finish.SorbateCaution.Text())
		},
	}
}

func sorbateThatActs() Problem {
	return Problem{
		Title:  "How much of the sorbate acts",
		Ask:    "200 mg/L of potassium sorbate in 20 L at pH 3.4: how much sorbic acid is that, and how much of it is in the form that acts?",
		Given:  []string{"20 L, 200 mg/L, pH 3.4", "pK 4.76 (recalled from memory)"},
		Source: Source{ByHand, "112.128/150.218 = 74.64 %: 149.3 mg/L. 1/(1 + 10^(3.4 − 4.76)) = 95.82 %: 143.0 mg/L. Dose 4.00 g."},
		Work: func(w *Working) {
			d := must(finish.SorbateFor(units.MilligramPerLitre.Of(200), 3.4, units.Litre.Of(20), law.US))
			w.Step("At pH 4.5 only %s of it would act.", must(finish.Undissociated(4.5)).Text(units.Percent, 0))
			w.Step("The law's figure is for wine: %s. For a drink from a sugar wash none was read.", d.Limits[0])
			w.Answer("dose", d.Mass.In(units.Gram), 2, "g", 4, 0.0005)
			w.Answer("sorbic acid", d.SorbicAcid.In(units.MilligramPerLitre), 1, "mg/L", 149.3, 0.1)
			w.Answer("of it acting", d.Undissociated.In(units.MilligramPerLitre), 1, "mg/L", 143.0, 0.1)
			w.Caution(d.Cautions.Texts()...)
		},
	}
}

func sweetWithoutSugar() Problem {
	return Problem{
		Title: "Sweet as 20 g/L of sugar",
		Ask:   "How much sucralose sweetens 60 L as 20 g/L of sugar would, and is it under the limit of a cider?",
		Given: []string{"60 L, as sweet as 20 g/L", "sucralose, 550 to 750 times as sweet"},
		Source: Source{ByHand, "Middle of the spread 650 (Public Health Nutr. 26 (2022) 952, table 2: 550 to 750, read): 20,000/650 = 30.77 mg/L, 1.846 g. " +
			"Limit for cider and perry 50 mg/L (Regulation (EC) 1333/2008 annex II, list of 2011, recalled from memory)."},
		Work: func(w *Working) {
			s := must(finish.ParseSweetener("sucralose"))
			d := must(finish.SweetenLike(s, units.GramPerLitre.Of(20), units.Litre.Of(60), law.EU))
			w.Step("From %s to %s by the spread of its sweetness; yeast leaves it.", d.Concentration.Low.Text(units.MilligramPerLitre, 0),
				d.Concentration.High.Text(units.MilligramPerLitre, 0))
			l := must(law.EU.Limits(must(law.ParseSubstance("sucralose")), law.CiderAndPerry))[0]
			w.Step("%s. %s.", l, map[bool]string{true: "The spread of its sweetness stays under it",
				false: "The spread of its sweetness passes it"}[l.Allows(d.Concentration.High)])
			w.Answer("concentration", d.Concentration.Value.In(units.MilligramPerLitre), 2, "mg/L", 30.77, 0.01)
			w.Answer("for 60 L", d.Mass.In(units.Gram), 3, "g", 1.846, 0.001)
			w.Caution(law.CheckTheLaw.Text())
		},
	}
}

func sugarThatWakes() Problem {
	return Problem{
		Title: "Sugar in the bottle that could referment",
		Ask:   "A dry drink of 4.6 % vol is sweetened to 20 g/L of sucrose. How much CO2 would that make if yeast started again?",
		Given: []string{"20 g/L of sucrose in the sweetened drink"},
		Source: Source{ByHand, "20 × 0.51428 = 10.29 g/L, 5.2 volumes on top of what the bottle holds: a warning takes all of it as gas and ethanol. (By " +
			"the yield of a sugar wash, with yeast that grows, 20 × 0.47156 = 9.4.)"},
		Work: func(w *Working) {
			s, _ := sparkler()
			batch := must(s.Times(60))
			d := must(finish.SweetenWith(material.WhiteSugar(), units.GramPerLitre.Of(20), batch))
			w.Step("Sugar takes room: the strength falls to %s.", d.Strength.Text(units.PercentVolume, 2))
			w.Step("Without the gas: %s of energy in 100 mL.", label.EnergyEU(d.Liquid).Kilojoules.Text(units.Kilojoule, 0))
			w.Answer("CO2 if it ferments", d.IfItFerments.In(units.GramCO2PerLitre), 2, "g/L", 10.29, 0.01)
			w.Caution(d.Cautions.Texts()...)
		},
	}
}
