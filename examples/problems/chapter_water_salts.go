package main

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func crystalWater() Problem {
	return Problem{
		Title: "Calcium chloride, with and without crystal water",
		Ask:   "60 L of pure water shall get 50 mg/L of calcium. How much of the dihydrate is weighed, and how much of the anhydrous salt?",
		Given: []string{"60 L, 50 mg/L Ca wanted", "CaCl2·2H2O or CaCl2"},
		Source: Source{ByHand, "Calcium 3.000 g. Dihydrate 147.008 g/mol: 3.000 × 147.008/40.078 = 11.004 g. Anhydrous 40.078 + 2 × 35.45 = 110.978: " +
			"3.000 × 110.978/40.078 = 8.307 g. Taking one for the other is a third off."},
		Work: func(w *Working) {
			perGram := func(s material.Material) float64 {
				return must(water.Profile{}.Add(units.Litre.Of(1), s.Dose(units.Gram.Of(1)))).Ion(water.Calcium).In(units.MilligramPerLitre)
			}
			hydrate, dry := perGram(material.CalciumChlorideDihydrate()), perGram(material.CalciumChloride())
			w.Step("A gram of the dihydrate holds %.2f mg of calcium, of the anhydrous salt %.2f mg.", hydrate, dry)
			w.Step("11 g of the dihydrate are %s.", material.CalciumChlorideDihydrate().Anhydrous(units.Gram.Of(11)).Text(units.GramAnhydrous, 2))
			w.Answer("dihydrate", 3000/hydrate, 2, "g", 11.004, 0.005)
			w.Answer("anhydrous", 3000/dry, 2, "g", 8.307, 0.005)
		},
	}
}

func softenedWithPure() Problem {
	return Problem{
		Title:  "Softening by dilution",
		Ask:    "40 L of this water are mixed with 20 L of distilled water. What are hardness and alkalinity?",
		Given:  []string{moderateWater, "40 L of it and 20 L of distilled water"},
		Source: Source{ByHand, "Two thirds of everything: 191.017 × 2/3 = 127.345 and 144 × 2/3 = 96.00 mg/L as CaCO3."},
		Work: func(w *Working) {
			p := must(moderate(units.Celsius.Of(20)).Dilute(units.Litre.Of(40), units.Litre.Of(20)))
			w.Step("Ions and alkalinity keep to the share of the water, 40/60 = %.4f.", 40.0/60)
			w.Step("Calcium falls to %s, sulfate to %s.", p.Ion(water.Calcium).Text(units.MilligramPerLitre, 1), p.Ion(water.Sulfate).Text(units.MilligramPerLitre, 1))
			w.Answer("hardness", p.Hardness().In(units.MilligramPerLitreCaCO3), 2, "mg/L as CaCO3", 127.345, 0.01)
			w.Answer("alkalinity", p.Alkalinity().In(units.MilligramPerLitreCaCO3), 2, "mg/L as CaCO3", 96, 0.01)
		},
	}
}

func saltsForATarget() Problem {
	return Problem{
		Title: "The salts for a target",
		Ask: "60 L of pure water shall hold 60 mg/L of sulfate and 50 mg/L of chloride, from gypsum and calcium chloride dihydrate. What is weighed, and " +
			"how much calcium comes with it?",
		Given: []string{"60 L of pure water", "gypsum and calcium chloride dihydrate at hand", "sulfate 60, chloride 50 mg/L"},
		Source: Source{ByHand, "Gypsum: 60 mg/L × 60 L = 3.600 g of sulfate × 172.164/96.056 = 6.452 g. Dihydrate: 3.000 g of chloride × 147.008/70.90 = " +
			"6.220 g. " +
			"Calcium: (6.452/172.164 + 6.220/147.008) × 40.078/60 = 53.29 mg/L."},
		Work: func(w *Working) {
			r := must(water.Request{
				Volume:  units.Litre.Of(60),
				Salts:   []water.Stock{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}},
				Targets: []water.Target{water.Sulfate.Aim(units.MilligramPerLitre.Of(60)), water.Chloride.Aim(units.MilligramPerLitre.Of(50))},
			}.Solve())
			for _, d := range r.Doses {
				w.Step("%s: %s.", d.Material, d.Mass.Text(units.Gram, 3))
			}
			off := "is off the targets by " + r.Deviation.Text(units.MilligramPerLitre, 2)
			if r.Deviation.In(units.MilligramPerLitre) < 0.005 {
				off = "meets both targets"
			}
			w.Step("The water then has a hardness of %s and %s.", r.Water.Hardness().Text(units.GermanDegree, 1), off)
			w.Answer("gypsum", r.Doses[0].Mass.In(units.Gram), 2, "g", 6.452, 0.005)
			w.Answer("calcium chloride dihydrate", r.Doses[1].Mass.In(units.Gram), 2, "g", 6.220, 0.005)
			w.Answer("calcium", r.Water.Ion(water.Calcium).In(units.MilligramPerLitre), 1, "mg/L", 53.29, 0.05)
		},
	}
}

func saltsOnAScale() Problem {
	return Problem{
		Title: "Two salts on a scale of 0.1 g",
		Ask: "60 L of pure water shall hold 60 mg/L of sulfate and 50 mg/L of chloride, from gypsum and calcium chloride dihydrate; 6.452 g and 6.220 g " +
			"would do it exactly. The scale shows 0.1 g. Which doses come nearest, and how far off are they?",
		Given: []string{"60 L of pure water", "gypsum and calcium chloride dihydrate at hand", "sulfate 60, chloride 50 mg/L", "scale to 0.1 g"},
		Source: Source{ByHand, "Gypsum alone brings sulfate and the chloride salt alone chloride, so each dose is rounded: 6.452 to 6.5 g, 6.220 to 6.2 g. " +
			"Sulfate (6.5 − 6.4523) × 557.93/60 = +0.443 mg/L; chloride (6.2 − 6.2204) × 482.29/60 = −0.164. √(0.443² + 0.164²) = 0.473."},
		Work: func(w *Working) {
			r := must(water.Request{
				Volume:  units.Litre.Of(60),
				Salts:   []water.Stock{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}},
				Targets: []water.Target{water.Sulfate.Aim(units.MilligramPerLitre.Of(60)), water.Chloride.Aim(units.MilligramPerLitre.Of(50))},
			}.SolveSteps(must(units.ParseExact[units.Mass]("0.1 g"))))
			if r.Proven {
				w.Step("No other doses on this scale come nearer: that is proven, not only tried.")
			} else {
				w.Step("These doses are the nearest found; that none come nearer is not proven.")
			}
			for _, m := range r.Off {
				w.Step("%s %s, off by %+.3f mg/L.", m.Ion, m.Have.Text(units.MilligramPerLitre, 3), m.Have.Minus(m.Want).In(units.MilligramPerLitre))
			}
			w.Answer("gypsum", r.Masses[0].Quantity().In(units.Gram), 1, "g", 6.5, 0)
			w.Answer("calcium chloride dihydrate", r.Masses[1].Quantity().In(units.Gram), 1, "g", 6.2, 0)
			w.Answer("off in all", r.Deviation.In(units.MilligramPerLitre), 3, "mg/L", 0.473, 0.003)
		},
	}
}

func bicarbonateSalts() Problem {
	return Problem{
		Title: "Alkalinity from a spoon",
		Ask:   "A sugar wash needs 150 mg/L of alkalinity, as CaCO3, in 60 L of pure water. How much potassium bicarbonate, or how much baking soda?",
		Given: []string{"60 L of pure water", "150 mg/L as CaCO3 wanted"},
		Source: Source{ByHand, "150/50.043 = 2.99742 mEq/L × 60 = 179.85 mEq. KHCO3 100.114 g/mol: 18.005 g. NaHCO3 84.006 g/mol: 15.108 g, which brings " +
			"2.99742 × 22.990 = 68.9 mg/L of sodium."},
		Work: func(w *Working) {
			k := material.PotassiumBicarbonate().MolarMass().In(units.GramPerMole) // one bicarbonate in a mole
			na := material.BakingSoda().MolarMass().In(units.GramPerMole)          // one bicarbonate in a mole
			w.Step("A gram of %s brings %.3f mEq, a gram of %s %.3f.", material.PotassiumBicarbonate(), 1000/k, material.BakingSoda(), 1000/na)
			one := must(water.Profile{}.Add(units.Litre.Of(60), material.BakingSoda().Dose(units.Gram.Of(15.108))))
			two := must(water.Profile{}.Add(units.Litre.Of(60), material.PotassiumBicarbonate().Dose(units.Gram.Of(18.005))))
			w.Step("15.108 g of baking soda in 60 L: %s, sodium %s.", one.Alkalinity().Text(units.MilligramPerLitreCaCO3, 2),
				one.Ion(water.Sodium).Text(units.MilligramPerLitre, 1))
			w.Answer("alkalinity from 15.108 g of baking soda", one.Alkalinity().In(units.MilligramPerLitreCaCO3), 1, "mg/L as CaCO3", 150, 0.05)
			w.Answer("alkalinity from 18.005 g of potassium bicarbonate", two.Alkalinity().In(units.MilligramPerLitreCaCO3), 1, "mg/L as CaCO3", 150, 0.05)
			w.Answer("sodium", one.Ion(water.Sodium).In(units.MilligramPerLitre), 1, "mg/L", 68.9, 0.05)
		},
	}
}
