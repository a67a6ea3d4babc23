package main

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func waterChapter() Chapter {
	return Chapter{
		Title: "8 Water: ions, hardness, salts",
		Intro: "A water report is a list of ions. Hardness and alkalinity are counted in calcium carbonate, salts bring ions by their molar mass.",
		Problems: []Problem{
			frenchAndGermanDegrees(), hardnessByCalculation(), kolbach(), doesTheReportBalance(), gramOfGypsum(), crystalWater(),
			softenedWithPure(), saltsForATarget(), saltsOnAScale(), bicarbonateSalts(), sodiumAtMost(),
			reportAsPrinted(), conductivityOfIons(), throughTheMembrane(), boiledHardWater(), againstChlorine(), nitrateTwice(),
		},
	}
}

// moderate is a made-up water: W1 of the checks with the geochemistry program.
func moderate(t units.Temperature) water.Profile {
	return must(water.NewProfile(t, units.MilligramPerLitreCaCO3.Of(144),
		water.Calcium.At(units.MilligramPerLitre.Of(60)), water.Magnesium.At(units.MilligramPerLitre.Of(10)),
		water.Sodium.At(units.MilligramPerLitre.Of(20)), water.Potassium.At(units.MilligramPerLitre.Of(3)),
		water.Chloride.At(units.MilligramPerLitre.Of(30)), water.Sulfate.At(units.MilligramPerLitre.Of(50))))
}

const moderateWater = "Ca 60, Mg 10, Na 20, K 3, Cl 30, SO4 50 mg/L, alkalinity 144 mg/L as CaCO3"

func frenchAndGermanDegrees() Problem {
	return Problem{
		Title:  "French and German degrees",
		Ask:    "A utility states one French degree as 4 mg/L of calcium. How many German degrees, and how many milliequivalents, is that?",
		Given:  []string{"calcium 4 mg/L"},
		Source: Source{Read, "Vivaqua, the water utility of Brussels, page on the hardness of water: 1 °fH is 4 mg/L Ca, 0.56 °dH, 0.2 mEq/L, 2.43 mg/L Mg."},
		Work: func(w *Working) {
			ca := must(water.NewProfile(units.Celsius.Of(12), units.CalciumCarbonate{}, water.Calcium.At(units.MilligramPerLitre.Of(4))))
			mg := must(water.NewProfile(units.Celsius.Of(12), units.CalciumCarbonate{}, water.Magnesium.At(units.MilligramPerLitre.Of(2.43))))
			w.Step("4 mg/L of calcium are %s.", ca.Hardness().Text(units.MilligramPerLitreCaCO3, 3))
			w.Step("2.43 mg/L of magnesium count as much: %s.", mg.Hardness().Text(units.MilligramPerLitreCaCO3, 3))
			w.Answer("in French degrees", ca.Hardness().In(units.FrenchDegree), 2, "°fH", 1, 0.005)
			w.Answer("in German degrees", ca.Hardness().In(units.GermanDegree), 2, "°dH", 0.56, 0.005)
			w.Answer("charge", ca.IonicBalance().Cations.In(units.MilliequivalentPerLitre), 2, "mEq/L", 0.2, 0.005)
			w.Answer("magnesium", mg.Hardness().In(units.FrenchDegree), 2, "°fH", 1, 0.005)
		},
	}
}

func hardnessByCalculation() Problem {
	return Problem{
		Title: "Hardness from the report",
		Ask:   "What is the total hardness of this water, and how much of it can boiling throw out?",
		Given: []string{moderateWater},
		Source: Source{ByHand, "Ca 60/40.078 = 1.49708 mmol/L, Mg 10/24.305 = 0.41144, together 1.90852 × 100.086 = 191.02 mg/L as CaCO3 (Standard Methods " +
			"2340 B prints the factors 2.497 and 4.118: 149.82 + 41.18 = 191.00; recalled from memory). Temporary hardness is the lesser of the calcium " +
			"hardness, 149.84, and the alkalinity, 144."},
		Work: func(w *Working) {
			p := moderate(units.Celsius.Of(20))
			w.Step("Calcium alone: %s; with magnesium %s.", p.CalciumHardness().Text(units.MilligramPerLitreCaCO3, 2),
				p.Hardness().Text(units.MilligramPerLitreCaCO3, 2))
			w.Step("That is %s, or %s.", p.Hardness().Text(units.GermanDegree, 1), p.Hardness().Text(must(units.MilligramPerLitreCaCO3.Find("gr/US gal")), 1))
			w.Answer("hardness", p.Hardness().In(units.MilligramPerLitreCaCO3), 2, "mg/L as CaCO3", 191.02, 0.01)
			w.Answer("temporary hardness", p.TemporaryHardness().In(units.MilligramPerLitreCaCO3), 0, "mg/L as CaCO3", 144, 0.0005)
		},
	}
}

func kolbach() Problem {
	return Problem{
		Title: "Kolbach's residual alkalinity",
		Ask:   "What is the residual alkalinity of this water, which decides the pH of a malt mash?",
		Given: []string{moderateWater},
		Source: Source{ByHand, "Kolbach, Monatsschrift für Brauerei 6 (1953) 49 (form as in MEBAK W-030.01.900): alkalinity − Ca/3.5 − Mg/7, all as CaCO3. " +
			"Ca 1.49708 × 100.086 = 149.84, /3.5 = 42.81; Mg 0.41144 × 100.086 = 41.18, /7 = 5.88; 144 − 42.81 − 5.88 = 95.31."},
		Work: func(w *Working) {
			p := moderate(units.Celsius.Of(20))
			w.Step("Alkalinity %s less what the hardness offsets.", p.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
			w.Step("In German degrees it is %s.", p.ResidualAlkalinity().Text(units.GermanDegree, 2))
			w.Answer("residual alkalinity", p.ResidualAlkalinity().In(units.MilligramPerLitreCaCO3), 2, "mg/L as CaCO3", 95.31, 0.01)
		},
	}
}

func doesTheReportBalance() Problem {
	return Problem{
		Title: "Does the report balance?",
		Ask:   "Every water is neutral. Do the cations of this report match its anions?",
		Given: []string{moderateWater},
		Source: Source{ByHand, "Ca 2 × 1.49708 + Mg 2 × 0.41144 + Na 20/22.990 + K 3/39.098 = 2.99416 + 0.82287 + 0.86994 + 0.07673 = 4.7637 mEq/L. Cl " +
			"30/35.45 + SO4 2 × 50/96.06 + 144/50.043 = 0.84626 + 1.04102 + 2.87753 = 4.7648."},
		Work: func(w *Working) {
			b := moderate(units.Celsius.Of(20)).IonicBalance()
			w.Step("Cations %s, anions %s.", b.Cations.Text(units.MilliequivalentPerLitre, 4), b.Anions.Text(units.MilliequivalentPerLitre, 4))
			w.Step("The verdict: %s.", b.Judgement)
			w.Answer("cations", b.Cations.In(units.MilliequivalentPerLitre), 3, "mEq/L", 4.7637, 0.0005)
			w.Answer("anions", b.Anions.In(units.MilliequivalentPerLitre), 3, "mEq/L", 4.7648, 0.0005)
		},
	}
}

func gramOfGypsum() Problem {
	return Problem{
		Title: "A gram of gypsum in a litre",
		Ask:   "How much calcium and sulfate does a gram of gypsum bring?",
		Given: []string{"CaSO4·2H2O"},
		Source: Source{ByHand, "Molar masses (CIAAW abridged atomic weights 2021): 40.078 + 96.056 + 36.030 = 172.164 g/mol. 40.078/172.164 = 232.79 mg/g; " +
			"96.056/172.164 = 557.93 mg/g."},
		Work: func(w *Working) {
			w.Step("A mole of gypsum weighs %.3f g.", material.Gypsum().MolarMass().In(units.GramPerMole))
			pure := water.Profile{}
			p := must(pure.Add(units.Litre.Of(1), material.Gypsum().Dose(units.Gram.Of(1))))
			w.Step("In a litre of pure water: hardness %s.", p.Hardness().Text(units.MilligramPerLitreCaCO3, 1))
			w.Answer("calcium", p.Ion(water.Calcium).In(units.MilligramPerLitre), 1, "mg/L", 232.79, 0.05)
			w.Answer("sulfate", p.Ion(water.Sulfate).In(units.MilligramPerLitre), 1, "mg/L", 557.93, 0.1)
		},
	}
}
