package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

func fermentChapter() Chapter {
	return Chapter{
		Title: "5 Fermentation and yields",
		Intro: "Sugar becomes ethanol, gas and yeast. How much of each is a balance of masses; malt wort and sugar wash differ.",
		Problems: []Problem{
			allOfTheSugar(), ballingComplete(), ballingBeerTest(), ballingBackwards(), ballingTables(), meanOfManyBrews(),
			measuredBeer(), sugarForOnePercent(), dryFloor(), attenuations(),
		},
	}
}

func allOfTheSugar() Problem {
	return Problem{
		Title: "The most that a kilogram can give",
		Ask:   "If every molecule of a kilogram of sucrose became ethanol and CO2, how much of each would there be?",
		Given: []string{"1 kg sucrose in 9 kg water"},
		Source: Source{ByHand, "C12H22O11 + H2O → 4 C2H5OH + 4 CO2: 4 × 46.069/342.297 = 0.53835 and 4 × 44.009/342.297 = 0.51428 g/g, so 538.35 and 514.28 g; " +
			"the sum is 1.05263, the sugar and 18.015/342.297 = 5.263 % of water (CIAAW abridged atomic weights 2021)."},
		Work: func(w *Working) {
			kilo := units.Kilogram.Of(1)
			wash := must(gravity.NewSolution(units.Kilogram.Of(9), kilo, units.Mass{}))
			dry, made, err := wash.Ferment(kilo, gravity.StoichiometricYield(gravity.AsSucrose))
			must(dry, err)
			w.Step("Sucrose takes up water when it is inverted: %s of the 9 kg.", made.Water.Text(units.Gram, 2))
			w.Step("Ethanol %s, CO2 %s.", made.Ethanol.Text(units.Gram, 2), made.CO2.Text(units.Gram, 2))
			w.Step("Liquid left %s; with the gas %s, the mass of sugar and water together.", dry.Mass().Text(units.Kilogram, 5),
				dry.Mass().Plus(made.CO2).Text(units.Kilogram, 5))
			w.Answer("ethanol", made.Ethanol.In(units.Gram), 1, "g", 538.35, 0.05)
			w.Answer("CO2", made.CO2.In(units.Gram), 1, "g", 514.28, 0.05)
		},
	}
}

func ballingComplete() Problem {
	return Problem{
		Title: "Balling's own sum: a wort of 12 %",
		Ask:   "A wort of 12 % extract ferments until nothing is left. What is its strength by mass, and how much gas and yeast came from 100 g of the beer?",
		Given: []string{"original extract 12 °P", "real extract 0"},
		Source: Source{Read, "C. J. N. Balling, Die Gährungschemie, 2nd ed. (1854), worked example of complete attenuation: 6.190 % mass of ethanol; 5.921 " +
			"g CO2 and 0.681 g yeast from the wort of 100 g of beer."},
		Work: func(w *Working) {
			a := must(rival.StrengthBalling(units.DegreePlato.Of(12), units.Extract{}))
			w.Step("A = (p − n)/(2.0665 − 0.010665·p) = %s.", a.Text(units.PercentMass, 4))
			wort := must(gravity.NewSolution(units.Gram.Of(88), units.Gram.Of(12), units.Mass{}))
			beer, made, err := wort.Ferment(units.Gram.Of(12), gravity.BallingYield())
			must(beer, err)
			per := 100 / beer.Mass().In(units.Gram)
			w.Step("By the masses: 100 g of wort leave %s of beer; CO2 %s and yeast %s went.", beer.Mass().Text(units.Gram, 3),
				made.CO2.Text(units.Gram, 3), made.Biomass.Text(units.Gram, 3))
			w.Step("For 100 g of beer all of it times %.5f.", per)
			w.Answer("strength", a.In(units.PercentMass), 3, "% mass", 6.190, 0.001)
			w.Answer("CO2", made.CO2.In(units.Gram)*per, 3, "g", 5.921, 0.002)
			w.Answer("yeast", made.Biomass.In(units.Gram)*per, 3, "g", 0.681, 0.001)
		},
	}
}

func ballingBeerTest() Problem {
	return Problem{
		Title:  "Balling's beer test",
		Ask:    "A beer came from a wort of 11.177 % and has a real extract of 5.550 %. What is its strength by mass?",
		Given:  []string{"original extract 11.177 °P", "real extract 5.550 °P"},
		Source: Source{Read, "C. J. N. Balling, Die Bierbrauerei (1865), worked example of the beer test: 2.888 % mass; its factor b is 0.5134."},
		Work: func(w *Working) {
			p, n := units.DegreePlato.Of(11.177), units.DegreePlato.Of(5.550)
			a := must(rival.StrengthBalling(p, n))
			w.Step("p − n = %.3f.", p.Minus(n).In(units.DegreePlato))
			w.Step("b = 1/(2.0665 − 0.010665·p), so A = b·(p − n) = %s.", a.Text(units.PercentMass, 4))
			w.Answer("strength", a.In(units.PercentMass), 3, "% mass", 2.888, 0.003)
			w.Answer("factor b", a.In(units.PercentMass)/p.Minus(n).In(units.DegreePlato), 4, "", 0.5134, 0.0003)
		},
	}
}

func ballingBackwards() Problem {
	return Problem{
		Title:  "What was the wort?",
		Ask:    "A beer has 2.888 % mass of ethanol and 5.550 % real extract. What was its original extract?",
		Given:  []string{"strength 2.888 % mass", "real extract 5.550 °P"},
		Source: Source{Read, "C. J. N. Balling, Die Bierbrauerei (1865), worked example of the beer test, read backwards: 11.177 %."},
		Work: func(w *Working) {
			p := must(rival.OriginalExtractBalling(units.PercentMass.Of(2.888), units.DegreePlato.Of(5.550)))
			w.Step("p = 100·(2.0665·A + n)/(100 + 1.0665·A) = %s.", p.Text(units.DegreePlato, 4))
			again := must(gravity.BallingYield().OriginalExtract(units.PercentMass.Of(2.888), units.DegreePlato.Of(5.550)))
			w.Step("The balance of masses, without the formula, finds %s.", again.Text(units.DegreePlato, 4))
			w.Answer("original extract", p.In(units.DegreePlato), 3, "°P", 11.177, 0.006)
			w.Answer("by the balance", again.In(units.DegreePlato), 3, "°P", 11.177, 0.008)
		},
	}
}

func ballingTables() Problem {
	return Problem{
		Title: "Balling's tables A and B",
		Ask: "The saccharometer shows 1 % less than the extract that is really there, in a beer from a wort of 12 %. How much extract was used, and what " +
			"is the strength?",
		Given: []string{"original extract 12 °P", "apparent extract 6.690 °P, so that the real one is 7.690"},
		Source: Source{Read, "C. J. N. Balling, Die Gährungschemie (1854/1865), tables A and B for the saccharometric beer test, row 1.000, column 12: " +
			"extract used 4.310 %, ethanol 2.223 % mass."},
		Work: func(w *Working) {
			got := must(rival.AttenuatedBallingTables(units.DegreePlato.Of(12), units.DegreePlato.Of(6.690)))
			used := units.DegreePlato.Of(12).Minus(got.RealExtract)
			apparent := units.DegreePlato.Of(12).Minus(units.DegreePlato.Of(6.690))
			w.Step("The apparent loss of %s is a real one of %s: the attenuation quotient of a wort of 12 %% is %.4f.", apparent.Text(units.DegreePlato, 3),
				used.Text(units.DegreePlato, 3), must(units.Ratio(apparent, used)))
			w.Step("Real extract %s, strength %s.", got.RealExtract.Text(units.DegreePlato, 3), got.ByMass.Text(units.PercentMass, 4))
			w.Answer("extract used", used.In(units.DegreePlato), 3, "°P", 4.310, 0.001)
			w.Answer("strength", got.ByMass.In(units.PercentMass), 3, "% mass", 2.223, 0.002)
		},
	}
}

func meanOfManyBrews() Problem {
	return Problem{
		Title: "The mean of 112 brews",
		Ask:   "A large brewery's 112 brews had on average 14.54 °P before and 2.53 °P (apparent) after. What strength and real extract follow?",
		Given: []string{"original extract 14.54 °P", "apparent extract 2.53 °P"},
		Source: Source{Read, "Cutaia, Reid & Speers, J. Inst. Brew. 115 (2009) 318, table III, data set RPB-II: mean strength 5.14 % mass, mean real " +
			"extract 4.88 °P. " +
			"A regression over 532 brews of five breweries need not pass through the mean of one: 1 % is allowed for that."},
		Work: func(w *Working) {
			original, apparent := units.DegreePlato.Of(14.54), units.DegreePlato.Of(2.53)
			cutaia := must(rival.AttenuatedCutaia(original, apparent))
			w.Step("The regression of Cutaia, Reid & Speers (2009): A = (0.372 + 0.00357·OE)·(OE − AE) = %s, real extract %s.",
				cutaia.ByMass.Text(units.PercentMass, 3), cutaia.RealExtract.Text(units.DegreePlato, 3))
			for _, m := range must(gravity.StrengthMethods(original, apparent)) {
				w.Step("%s: %s, real extract %s.", m.Name, m.ByMass.Text(units.PercentMass, 2), m.RealExtract.Text(units.DegreePlato, 2))
			}
			w.Answer("strength, regression", cutaia.ByMass.In(units.PercentMass), 2, "% mass", 5.14, 0.06)
			w.Answer("real extract, regression", cutaia.RealExtract.In(units.DegreePlato), 2, "°P", 4.88, 0.05)
		},
	}
}
