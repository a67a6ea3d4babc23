package main

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/units"
)

func uncertaintyChapter() Chapter {
	return Chapter{
		Title: "21 Measuring, and how sure one is",
		Intro: "A reading is a value with an uncertainty. That of a result follows from those of its readings, and shows which instrument to improve.",
		Problems: []Problem{
			aScaleIsRead(), threeWeighings(), distilled(), boiledOff(), strengthWithDoubt(), doubtsInSquares(), twoWitnesses(),
			scaleUnderTheFermenter(), whatAReadingHides(),
		},
	}
}

func aScaleIsRead() Problem {
	return Problem{
		Title:  "A reading on a scale",
		Ask:    "A display shows steps of 1. What is the standard uncertainty of a reading, and what is it for a hydrometer stated within ± 0.001?",
		Given:  []string{"step 1", "limit ± 0.001"},
		Source: Source{Recalled, "JCGM 100:2008 (GUM) F.2.2.1: u = 0.29 of the step. 4.3.7: a/√3 for a limit ± a, 0.001/1.73205 is 0.57735 thousandths."},
		Work: func(w *Working) {
			step := must(units.ReadTo(units.One.Of(20), units.One.Of(1)))
			stated := must(units.Limited(units.One.Of(1.048), units.One.Of(0.001)))
			w.Step("Anywhere within half a step with the same chance: 1/√12.")
			w.Step("The hydrometer: %s.", stated.Text(units.One, 4, 2))
			w.Answer("of a step", step.Uncertainty().In(units.One), 2, "", 0.29, 0.005)
			w.Answer("of the hydrometer", 1000*stated.Uncertainty().In(units.One), 4, "thousandths", 0.57735, 0.0001)
		},
	}
}

func threeWeighings() Problem {
	return Problem{
		Title: "A density from three weighings",
		Ask:   "A flask weighs 30.000 g dry, 79.822 g full of water and 81.815 g full of wort, both at 20 °C. What is the density of the wort?",
		Given: []string{"weighed in air at 20 °C"},
		Source: Source{ByHand, "Ratio of the weights (81.815 − 30.000)/(79.822 − 30.000) = 51.815/49.822 = 1.040002. Air of 1.2 kg/m³: 1.040002 × " +
			"(998.203 − 1.2) + 1.2 = 1038.085 kg/m³. " +
			"That is the gravity 1.03995; NBS Circular 440 has 1.04003 in air for 10 °Bx."},
		Work: func(w *Working) {
			d := must(gravity.Pycnometer(units.Gram.Of(30.000), units.Gram.Of(79.822), units.Gram.Of(81.815), units.Celsius.Of(20)))
			g := must(gravity.FromDensity(d))
			w.Step("Density in vacuum %s.", d.Text(units.KilogramPerCubicMetre, 3))
			w.Step("Gravity %s, %s.", g.Text(5), g.Extract().Text(units.DegreePlato, 2))
			w.Answer("density", d.In(units.KilogramPerCubicMetre), 2, "kg/m³", 1038.085, 0.01)
		},
	}
}

func distilled() Problem {
	return Problem{
		Title: "Strength by distillation",
		Ask:   "100 mL of a beer are distilled and made up to 100 mL; the distillate weighs 991.00 kg/m³ at 20 °C. What is the strength?",
		Given: []string{"sample and distillate 100 mL", "991.00 kg/m³ at 20 °C"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, 102nd ed. (read in a public transcription of the table): 991.0 kg/m³ is 4 % mass of " +
			"ethanol and 0.860 mol/L, 0.860 × 46.069/7.8924 = 5.020 % vol. " +
			"The table is printed to 0.1 kg/m³ (0.07 % vol) and rests on other data than OIML R 22."},
		Work: func(w *Working) {
			s := must(gravity.DistillateStrength(units.Millilitre.Of(100), units.Millilitre.Of(100), units.KilogramPerCubicMetre.Of(991.00), units.Celsius.Of(20)))
			m := must(gravity.EthanolStrength(units.KilogramPerCubicMetre.Of(991.00), units.Celsius.Of(20)))
			w.Step("The distillate has %s.", m.Text(units.PercentMass, 3))
			w.Step("It fills as much as the sample did, so its strength is the beer's: %s.", s.Text(units.PercentVolume, 3))
			w.Answer("strength", s.In(units.PercentVolume), 2, "% vol", 5.020, 0.08)
		},
	}
}

func boiledOff() Problem {
	return Problem{
		Title: "Strength by boiling off",
		Ask:   "A drink reads 1.0060; with its ethanol boiled off and water in its place it reads 1.0132. What was its strength?",
		Given: []string{"gravity 1.0060 before, 1.0132 after, at 20 °C and the same volume"},
		Source: Source{Read, "Tabarié: 1.0060 − 1.0132 + 1 = 0.9928. CRC Handbook of Chemistry and Physics, 102nd ed. (read in a public transcription of " +
			"the table): 0.9928 × 0.99820 = 0.99101 g/mL is 4 % mass of ethanol (0.9910), 5.020 % vol. " +
			"The table is printed to 0.0001 g/mL, which is 0.07 % vol."},
		Work: func(w *Working) {
			before, after := must(gravity.FromSG(1.0060)), must(gravity.FromSG(1.0132))
			w.Step("The ethanol took %.1f points from the gravity.", after.Points()-before.Points())
			s := must(gravity.SpiritIndication(before, after))
			w.Step("An error of 0.0002 in one reading is %.2f %% vol.",
				must(gravity.SpiritIndication(before, must(gravity.FromSG(1.0134)))).In(units.PercentVolume)-s.In(units.PercentVolume))
			w.Answer("strength", s.In(units.PercentVolume), 2, "% vol", 5.020, 0.08)
		},
	}
}

func strengthWithDoubt() Problem {
	return Problem{
		Title: "A strength from two readings, with its uncertainty",
		Ask:   "A sugar wash fell from 1.0282 to 0.9960, each known within a standard uncertainty of 0.0006. What is the strength, and how sure is it?",
		Given: []string{"1.0282 and 0.9960, u = 0.0006 each, independent", "yield of a sugar wash, known within 3 %"},
		Source: Source{ByHand, "4.415 kg of sugar in 57.42 kg of water start at 1.0282 and end dry at 0.9940 with 4.60 % vol, so 34.2 thousandths of " +
			"gravity are 4.60 % vol, 0.1345 each. 1.0282 − 0.9960 = 32.2 thousandths: 4.33 % vol. " +
			"Two readings: 0.6 × 0.1345 × √2 = 0.114 % vol. The yield comes on top."},
		Work: func(w *Working) {
			u := units.One.Of(0.0006)
			original := must(units.Measure(units.One.Of(1.0282), u))
			final := must(units.Measure(units.One.Of(0.9960), u))
			y := gravity.SugarWashYield(gravity.AsSucrose)
			both := must(gravity.StrengthByHydrometer(original, final, y, units.Percent.Of(3), 0))
			readings := must(gravity.StrengthByHydrometer(original, final, y, units.Share{}, 0))
			shared := must(gravity.StrengthByHydrometer(original, final, y, units.Share{}, 1))
			w.Step("From the readings alone %s, with the yield %s.", readings.Text(units.PercentVolume, 2, 1), both.Text(units.PercentVolume, 2, 1))
			w.Step("If the fault is one hydrometer's and the same in both readings, most of it drops out: %s.", shared.Text(units.PercentVolume, 3, 1))
			label := must(label.EUOther.Tolerance(both.Value()))
			w.Step("EU law allows ± %.1f %% vol on such a label; at k = 2 the uncertainty is %.2f %% vol. Capability %.1f, where 1 is just enough.",
				label.In(units.PercentagePoint),
				must(both.Expanded(2)).In(units.PercentagePoint), must(both.Capability(label)))
			w.Answer("strength", both.Value().In(units.PercentVolume), 2, "% vol", 4.33, 0.02)
			w.Answer("uncertainty from the readings", readings.Uncertainty().In(units.PercentagePoint), 3, "% vol", 0.114, 0.006)
		},
	}
}

func doubtsInSquares() Problem {
	return Problem{
		Title: "Uncertainties add in squares",
		Ask:   "Sugar of 4415 ± 10 g and water of 57.42 ± 0.05 kg (standard uncertainties) make a wash. How sure is its extract?",
		Given: []string{"sugar 4.415 kg, u = 0.010 kg", "water 57.42 kg, u = 0.05 kg"},
		Source: Source{ByHand, "x = 100·s/(s + w) = 7.140 °P. dx/ds = 100·w/(s + w)² = 1.5018 °P/kg, dx/dw = −100·s/(s + w)² = −0.11547. " +
			"√((1.5018 × 0.010)² + (0.11547 × 0.05)²) = √(0.015018² + 0.005774²) = 0.01609 °P."},
		Work: func(w *Working) {
			sugar := must(units.Measure(units.Kilogram.Of(4.415), units.Kilogram.Of(0.010)))
			water := must(units.Measure(units.Kilogram.Of(57.42), units.Kilogram.Of(0.05)))
			extract := func(x units.Trial) (units.Extract, error) {
				s, err := gravity.NewSolution(units.At(x, &water), units.At(x, &sugar), units.Mass{})
				return s.RealExtract(), err
			}
			got := must(units.Propagate(extract, &sugar, &water))
			parts := must(units.Budget(extract, &sugar, &water))
			drawn, failed, err := units.Simulate(extract, 20000, 1, &sugar, &water)
			must(drawn, err)
			w.Step("The uncertainty of the sugar moves it by %.4f °P, that of the water by %.4f °P: a better scale for the sugar first.",
				math.Abs(parts[0].In(units.DegreePlato)), math.Abs(parts[1].In(units.DegreePlato)))
			if failed > 0 {
				w.Step("%d of the random draws had no result.", failed)
			}
			w.Step("20,000 random draws agree: %s.", drawn.Uncertainty().Text(units.DegreePlato, 4))
			w.Answer("extract", got.Value().In(units.DegreePlato), 3, "°P", 7.140, 0.0005)
			w.Answer("standard uncertainty", got.Uncertainty().In(units.DegreePlato), 5, "°P", 0.01609, 0.00002)
		},
	}
}

func twoWitnesses() Problem {
	return Problem{
		Title: "Two witnesses for one strength",
		Ask:   "The hydrometer says 4.60 % vol with an uncertainty of 0.15, the distillation 4.80 with 0.10. Do they agree, and what is the best value?",
		Given: []string{"4.60, u = 0.15; 4.80, u = 0.10 (standard uncertainties)"},
		Source: Source{ByHand, "Weights 1/0.0225 = 44.444 and 1/0.0100 = 100: (44.444 × 4.60 + 100 × 4.80)/144.444 = 4.7385; u = 1/√144.444 = 0.08321. " +
			"They are 0.20 apart with an uncertainty of √(0.0225 + 0.0100) = 0.1803, which is 1.1 of it: they agree."},
		Work: func(w *Working) {
			mean, deviations, err := units.CrossCheck(
				must(units.Measure(units.PercentVolume.Of(4.60), units.PercentagePoint.Of(0.15))),
				must(units.Measure(units.PercentVolume.Of(4.80), units.PercentagePoint.Of(0.10))))
			must(mean, err)
			for i, method := range []string{"hydrometer", "distillation"} {
				off, agree, side := math.Abs(deviations[i]), "they agree", "above"
				if off > 2 {
					agree = "they do not agree"
				}
				if deviations[i] < 0 {
					side = "below"
				}
				w.Step("The %s is %.2f standard uncertainties %s the other: %s.", method, off, side, agree)
			}
			w.Answer("best value", mean.Value().In(units.PercentVolume), 3, "% vol", 4.7385, 0.0005)
			w.Answer("its uncertainty", mean.Uncertainty().In(units.PercentagePoint), 4, "% vol", 0.08321, 0.00005)
		},
	}
}

func scaleUnderTheFermenter() Problem {
	return Problem{
		Title: "A scale under the fermenter",
		Ask:   "A wash of 4.5 kg of sugar in 55.5 kg of water has lost 1.50 kg. How strong is it, if 1.4 g/L of CO2 are still dissolved?",
		Given: []string{"4.5 kg sucrose, 55.5 kg water", "lost 1.50 kg; 1.4 g/L still in the liquid"},
		Source: Source{ByHand, "CO2 in all 1.50 + 58.4 × 0.0014 = 1.582 kg; with it go 1.582 × 46.069/44.009 = 1.656 kg of ethanol. The liquid without " +
			"its gas weighs 60 − 1.582 − yeast 0.165 = 58.25 kg: 2.843 % mass. " +
			"3.35 kg of sugar are used: 1.15 kg left (1.97 %, + 0.0077) and 0.13 kg of glycerol and acids (0.22 %, which weighs less in the gravity, + " +
			"0.0005): 0.9949 + 0.0082 = 1.0031; 2.843 × 1.0031 × 0.9982/0.78924 = 3.61 % vol."},
		Work: func(w *Working) {
			wash := must(gravity.NewSolution(units.Kilogram.Of(55.5), units.Kilogram.Of(4.5), units.Mass{}))
			now, made, err := wash.FermentByWeight(units.Kilogram.Of(1.5), units.GramCO2PerLitre.Of(1.4), gravity.SugarWashYield(gravity.AsSucrose))
			must(now, err)
			w.Step("CO2 in all %s, ethanol %s.", made.CO2.Text(units.Kilogram, 3), made.Ethanol.Text(units.Kilogram, 3))
			w.Step("The hydrometer should show %s; %s of sugar are left.", now.Gravity().Text(4), now.ExtractOf(gravity.AsSucrose).Text(units.Kilogram, 2))
			w.Answer("ethanol", made.Ethanol.In(units.Kilogram), 3, "kg", 1.656, 0.002)
			w.Answer("strength", now.ByVolume().In(units.PercentVolume), 2, "% vol", 3.61, 0.02)
		},
	}
}

func whatAReadingHides() Problem {
	return Problem{
		Title: "What a reading near the floor may hide",
		Ask:   "The club's wash reads 0.9950 where its floor is 0.9940. How much sugar is left, and how much gas would it make in the bottle?",
		Given: []string{"4.415 kg of sugar in 57.42 kg of water", "reading 0.9950 at 20 °C, without gas"},
		Source: Source{ByHand, "From start to floor the gravity falls by 0.0342 for 4.415 kg in 60 L: 73.6 g/L, so 2.15 g/L for a thousandth; × 0.51428 " +
			"(all of it gas and ethanol, as a warning takes it) = 1.11 g/L of CO2, half a volume."},
		Work: func(w *Working) {
			wash := must(gravity.NewSolution(units.Kilogram.Of(57.42), units.Kilogram.Of(4.4124), units.Mass{}))
			y := gravity.SugarWashYield(gravity.AsSucrose)
			p := must(wash.At(must(gravity.FromSG(0.9950)), y))
			left := p.Left.In(units.Gram) / p.Liquid.VolumeAt20().In(units.Litre)
			w.Step("The floor is %s; %s of the sugar is used.", p.Floor.Text(4), p.Part.Text(units.Percent, 1))
			sure := must(wash.AtWorst(must(units.Measure(units.One.Of(0.9950), units.One.Of(0.0006))), y, 2))
			w.Step("With an uncertainty of 0.0006 (k = 2) it may be up to %s.", sure.CO2Content.Text(units.GramCO2PerLitre, 1))
			w.Answer("sugar left", left, 1, "g/L", 2.15, 0.1)
			w.Answer("CO2 that it would make", p.CO2Content.In(units.GramCO2PerLitre), 2, "g/L", 1.11, 0.05)
			w.Caution(p.Cautions()[0].Text())
		},
	}
}
