package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func measuredBeer() Problem {
	return Problem{
		Title: "Thirty-four beers that were distilled",
		Ask: "34 American beers and ales had on average 1.05931 before and 1.01597 after the ferment (both 15.6/15.6 °C). Which strength do the readings " +
			"foretell, and what did the still find?",
		Given: []string{"means of 34 samples: 1.05931 and 1.01597 at 15.6/15.6 °C"},
		Source: Source{Read, "Tolman & Riley, A study of American beers and ales, USDA Bulletin 493 (1917), tables I to IV, 34 samples: on average 4.431 g " +
			"of ethanol in 100 mL by distillation, over 0.79389 g/mL (15.6 °C) 5.58 % vol. " +
			"One beer scatters by 0.13 % vol about Balling's balance, the mean of 34 by 0.02; the spread of malt, yeast and hydrometers of the time comes on " +
			"top. The check finds a yield that is wrong by a fiftieth."},
		Work: func(w *Working) {
			wort := must(gravity.FromReference(1.05931, gravity.At60F, gravity.InVacuum))
			beer := must(gravity.FromReference(1.01597, gravity.At60F, gravity.InVacuum))
			w.Step("At 20/20 °C the wort has %s (%s), the beer %s (%s apparent).", wort.Text(4), wort.Extract().Text(units.DegreePlato, 2),
				beer.Text(4), beer.Extract().Text(units.DegreePlato, 2))
			f := must(gravity.FromOriginalAndApparent(wort.Extract(), beer.Extract(), gravity.BallingYield()))
			w.Step("With Balling's yield: real extract %s, strength %s.", f.RealExtract().Text(units.DegreePlato, 2), f.ByMass().Text(units.PercentMass, 2))
			w.Answer("strength", f.ByVolume().In(units.PercentVolume), 2, "% vol", 5.58, 0.12)
		},
	}
}

func sugarForOnePercent() Problem {
	return Problem{
		Title: "The wine law's figure: 16.83 g for 1 % vol",
		Ask:   "How much hexose in a litre of wine gives 1 % vol, how much does 10 % vol take, and how much table sugar?",
		Given: []string{"yield of a sugar wash"},
		Source: Source{Read, "French order of 3 May 1996, art. 2: 16.83 g of sugar in a litre give 1 % vol. Ten times as much is 168.3 g; of sucrose " +
			"342.297/360.312 of it, 15.99 g."},
		Work: func(w *Working) {
			glucose, sucrose := gravity.SugarWashYield(gravity.AsGlucose), gravity.SugarWashYield(gravity.AsSucrose)
			litre := must(gravity.EthanolDensity(units.PercentMass.Of(100), units.Celsius.Of(20))).In(units.KilogramPerCubicMetre)
			w.Step("1 %% vol of a litre is 10 mL of ethanol, %.4f g.", litre/100)
			w.Step("A gram of hexose gives %.5f g of it, a gram of sucrose %.5f g.", glucose.Ethanol().In(units.Fraction), sucrose.Ethanol().In(units.Fraction))
			w.Answer("hexose for 1 % vol", litre/100/glucose.Ethanol().In(units.Fraction), 2, "g/L", 16.83, 0.005)
			w.Answer("hexose for 10 % vol", litre/10/glucose.Ethanol().In(units.Fraction), 1, "g/L", 168.3, 0.05)
			w.Answer("sucrose for 1 % vol", litre/100/sucrose.Ethanol().In(units.Fraction), 2, "g/L", 15.99, 0.005)
		},
	}
}

func dryFloor() Problem {
	return Problem{
		Title: "The floor of the hydrometer",
		Ask:   "4.5 kg of sugar in 55 kg of water ferment dry. At which gravity is it really done?",
		Given: []string{"4.5 kg sucrose, 55 kg water"},
		Source: Source{ByHand, "4.5 kg of sucrose are 4.737 kg of hexose: × 0.46895 = 2.221 kg of ethanol, × 44.009/46.069 = 2.122 kg of gas; 3.64 % = " +
			"0.172 kg glycerol and acids, yeast 0.221 kg. 57.16 kg are left: 3.886 % mass. " +
			"CRC Handbook: 4 % has 0.9910 g/mL, water 0.9982, straight between them 0.9912, a gravity of 0.9930; 0.30 % of glycerol and acids + 0.0007: " +
			"0.9937. Brewers say 0.990 to 0.996 (common practice, no source)."},
		Work: func(w *Working) {
			wash := must(gravity.NewSolution(units.Kilogram.Of(55), units.Kilogram.Of(4.5), units.Mass{}))
			dry, made, err := wash.Dry(gravity.SugarWashYield(gravity.AsSucrose))
			must(dry, err)
			w.Step("It starts at %s, %s.", wash.Gravity().Text(4), wash.Gravity().Extract().Text(units.DegreePlato, 2))
			w.Step("Ethanol %s, gas %s, yeast %s, glycerol and acids %s.", made.Ethanol.Text(units.Kilogram, 3), made.CO2.Text(units.Kilogram, 3),
				made.Biomass.Text(units.Kilogram, 3), made.Residue.Text(units.Kilogram, 3))
			w.Step("The dry liquid: %s, %s, %s apparent.", dry.Gravity().Text(4), dry.ByVolume().Text(units.PercentVolume, 2),
				dry.Gravity().Extract().Text(units.DegreePlato, 2))
			w.Step("A reading of 1.000 is not dry: about %.0f g of sugar are still in a litre.", sugarAtOne(wash))
			w.Answer("dry gravity", dry.Gravity().SG(), 4, "", 0.9937, 0.0003)
		},
	}
}

// sugarAtOne returns the sugar in a litre of the wash when the hydrometer shows 1.000.
func sugarAtOne(wash gravity.Solution) float64 {
	f := must(gravity.FromOriginalAndApparent(wash.Gravity().Extract(), units.Extract{}, gravity.SugarWashYield(gravity.AsSucrose)))
	return f.Liquid().Concentration(gravity.AsSucrose).In(units.GramPerLitre)
}

func attenuations() Problem {
	return Problem{
		Title: "Three attenuations of one beer",
		Ask: "A beer had 12 °P, its real extract is 4 °P after fermentation. What does the hydrometer show, and what are the apparent and real " +
			"attenuation and the real degree of fermentation?",
		Given: []string{"original extract 12 °P, real extract 4 °P"},
		Source: Source{ByHand, "Real attenuation (12 − 4)/12 = 66.67 %. Real degree of fermentation: 66.67/(1 − 0.005161·4) = 66.67/0.979356 = 68.07 %. " +
			"Apparent, by Tabarié: A = 8/(2.0665 − 0.128) = 4.127 % mass; in 99.37 mL of the beer that is 4.153 g/100 mL of ethanol, 4.192 % mass, gravity " +
			"0.9925 (CRC), and 4.025 g/100 mL of extract, 3.967 %, " +
			"gravity 1.0156 (NBS C440); sum less one 1.0081 is 2.07 °P; (12 − 2.07)/12 = 82.8 %."},
		Work: func(w *Working) {
			f := must(gravity.FromOriginalAndReal(units.DegreePlato.Of(12), units.DegreePlato.Of(4), gravity.BallingYield()))
			w.Step("Strength %s; the hydrometer shows %s.", f.ByVolume().Text(units.PercentVolume, 2), f.ApparentExtract().Text(units.DegreePlato, 2))
			w.Step("Yeast has used %.2f %% of the extract by mass.", f.Fermented().In(units.Percent))
			w.Answer("apparent extract", f.ApparentExtract().In(units.DegreePlato), 2, "°P", 2.07, 0.02)
			w.Answer("apparent attenuation", f.ApparentAttenuation().In(units.Percent), 1, "%", 82.8, 0.15)
			w.Answer("real attenuation", f.RealAttenuation().In(units.Percent), 2, "%", 66.67, 0.01)
			w.Answer("real degree of fermentation", f.RealDegreeOfFermentation().In(units.Percent), 2, "%", 68.07, 0.01)
		},
	}
}
