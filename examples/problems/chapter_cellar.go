package main

import (
	"math"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
)

func cellarChapter() Chapter {
	return Chapter{
		Title: "20 Kettle, cellar, electrode and cleaning",
		Intro: "What surrounds the ferment: heat and power, air and oxygen, the rest before the cold, a meter that is not a thermometer, " +
			"and the caustics, acids and oxidants that clean.",
		Problems: []Problem{
			kettleEnergy(), oxygenUnderAir(), packageOxygen(), diacetylRest(), freezesInTheGarage(), slopeOfAnElectrode(), bufferMovesByItself(),
			causticByMass(), lyeAndAcid(), bleachMeetsAcid(), peraceticAcid(),
		},
	}
}

// Heats that no function of the library gives: they are of the chapter alone.
const (
	heatOfWater     = 4.18   // kJ/kg/K
	heatOfBoilingUp = 419.17 // kJ/kg: liquid water of 100 °C
	heatOfSteam     = 2256.4 // kJ/kg: of evaporation at 100 °C
)

func kettleEnergy() Problem {
	return Problem{
		Title: "What the kettle asks of the mains",
		Ask: "60 L of water of 15 °C are brought to the boil at sea level, and 4 L (measured at 20 °C) are boiled off within an hour. " +
			"How much energy is each, what power " +
			"holds the boil, and how long does an element of 6 kW take to the boil if 85 % of it reaches the water?",
		Given: []string{"enthalpy of liquid water 62.98 kJ/kg at 15 °C (a saturated steam table, read)",
			"419.17 kJ/kg at 100 °C, evaporation 2256.4 kJ/kg (the same tables, recalled from memory)"},
		Source: Source{Recalled, "60 L × 0.99910 kg/L = 59.946 kg; × (419.17 − 62.98) = 21352 kJ, 5.931 kWh. 4 L × 0.99820 = 3.9928 " +
			"kg; × 2256.4 = 9009 kJ, 2.503 kWh in an hour: 2.503 kW. " +
			"5.931/(6 × 0.85) = 1.163 h, 69.8 min."},
		Work: func(w *Working) {
			kilograms := func(litres, celsius float64) float64 {
				t := must(units.Celsius.Try(celsius))
				return litres * must(gravity.WaterDensity(t)).In(units.KilogramPerCubicMetre) / 1000
			}
			warm := kilograms(60, 15) * (heatOfBoilingUp - 62.98) / 3600
			off := kilograms(4, 20) * heatOfSteam / 3600
			w.Step("To the boil: %.3f kg of water take %.2f kWh. A wash takes less for its sugar, 2 %% less at 5 °P (common practice).", kilograms(60, 15), warm)
			w.Step("Boiled off: %.3f kg take %.2f kWh, more than a third of what brought all of it there.", kilograms(4, 20), off)
			w.Step("What the kettle loses to the room comes on top: a lid and a jacket save more than a shorter boil.")
			w.Answer("to the boil", warm, 2, "kWh", 5.931, 0.005)
			w.Answer("power that boils off 4 L an hour", off, 2, "kW", 2.503, 0.003)
			w.Answer("time to the boil", 60*warm/(6*0.85), 0, "min", 69.8, 0.1)
			w.Caution("Boiling sugar solution burns deeply and boils over. Wiring, breaker and cable are rated by their maker and by local " +
				"codes; let a licensed electrician fit a kettle of some kilowatts.")
		},
	}
}

func oxygenUnderAir() Problem {
	return Problem{
		Title: "How much oxygen air leaves in water",
		Ask:   "Water is splashed until it holds what air gives it. How much oxygen is that at 10 and 20 °C, and at 20 °C on a mountain under 625 mmHg?",
		Given: []string{"moist air of 101.325 kPa; 625 mmHg are 83.326 kPa"},
		Source: Source{secondHand, "EN 25814, saturation table (excerpt of a maker's manual that prints it): 11.3 mg/L at 10 °C, 9.09 " +
			"at 20 °C. Another maker's table: 7.5 mg/L at 20 °C under 625 mmHg. " +
			"The Oxford Companion to Beer (2012), oxygen: 10.9 and 8.9 ppm in water, 8.0 and 6.6 in a wort of 15 °P."},
		Work: func(w *Working) {
			of := func(extract units.Extract, kpa units.AbsolutePressure, t units.Temperature) float64 {
				l := must(carbonation.NewLiquid(must(carbonation.DrinkOf(units.PercentVolume.Of(0), extract))))
				_, oxygen, err := l.Aerated(kpa, t)
				return must(oxygen, err).In(units.MilligramPerLitre)
			}
			none, sea := units.DegreePlato.Of(0), units.Kilopascal.Of(101.325)
			w.Step("A yeast that starts with air finds what its water holds; with pure oxygen it could be up to five times that, and too much.")
			w.Step("By its water alone a wort of 15 °P would hold %.1f mg/L at 20 °C. Measured it is 6.6: sugar drives out more, a quarter in all.",
				of(units.DegreePlato.Of(15), sea, units.Celsius.Of(20)))
			w.Answer("at 10 °C", of(none, sea, units.Celsius.Of(10)), 2, "mg/L", 11.3, 0.15)
			w.Answer("at 20 °C", of(none, sea, units.Celsius.Of(20)), 2, "mg/L", 9.09, 0.1)
			w.Answer("on the mountain", of(none, units.Kilopascal.Of(83.326), units.Celsius.Of(20)), 2, "mg/L", 7.5, 0.1)
		},
	}
}

func packageOxygen() Problem {
	return Problem{
		Title: "Total package oxygen",
		Ask: "A bottle takes 330 mL of a drink with 0.05 mg/L of dissolved oxygen under a head-space of 15 mL at 20 °C and 101.325 kPa, " +
			"whose gas is 0.5 % oxygen. " +
			"How much oxygen is in the pack for each litre of drink, and what share of it would be seen in the drink at rest?",
		Given: []string{"oxygen 31.998 g/mol", "vapour of water 2.339 kPa at 20 °C"},
		Source: Source{ByHand, "Head-space: 101.325 × 0.015 × 0.005/(8.314463 × 293.15) = 0.000003118 mol, 0.0998 mg, on 0.33 L 0.302 " +
			"mg/L; with what is dissolved 0.352 mg/L. " +
			"At rest 1 kPa of oxygen holds 0.43 mg in a litre of water (9.09 mg/L under 0.2095 × 98.99 = 20.74 kPa: 0.4383) and 13.13 mg in a litre of gas: " +
			"0.4383 × 0.33/(0.4383 × 0.33 + 13.13 × 0.015) = 0.423."},
		Work: func(w *Working) {
			const molar = 2 * chemistry.O
			gas := molar * 1000 / (chemistry.Gas * 293.15) // mg in a litre under 1 kPa
			head := 0.005 * chemistry.StandardKPa * 0.015 * gas / 0.33
			air, t := units.Kilopascal.Of(101.325), units.Celsius.Of(20)
			_, oxygen, err := must(carbonation.NewLiquid(must(carbonation.DrinkOf(units.PercentVolume.Of(0), units.DegreePlato.Of(0))))).Aerated(air, t)
			const dry = 101.325 - 2.339
			drink := must(oxygen, err).In(units.MilligramPerLitre) / (0.2095 * dry)
			share := drink * 0.33 / (drink*0.33 + gas*0.015)
			w.Step("The gas brings %.3f mg/L of drink, six times what was dissolved.", head)
			w.Step("A meter in the drink alone sees %.0f %% of it at rest: shake the pack first, or count both.", 100*share)
			w.Answer("total", head+0.05, 3, "mg/L", 0.352, 0.001)
			w.Answer("share in the drink at rest", share, 3, "", 0.423, 0.006)
		},
	}
}

func diacetylRest() Problem {
	return Problem{
		Title: "The rest before the cold",
		Ask: "A sample heated for the test shows what its precursor would still make: 0.60 mg/L of diacetyl at first, 0.35 mg/L after a " +
			"day at 16 °C. When is it at 0.10 mg/L? At 10 °C " +
			"the same beer fell from 0.60 to 0.50 in a day: what activation energy do the two days show? How much diacetyl does a milligram of acetolactic acid make?",
		Given: []string{"the decay of the precursor is of first order, and yeast takes up diacetyl as it forms",
			"acetolactic acid C5H8O4 becomes diacetyl C4H6O2", "readings of a brewer of our own"},
		Source: Source{ByHand, "MEBAK method B-420.21.111 (excerpt): beer tastes of it above 0.10 mg/L, and the test counts the precursors. " +
			"k = ln(0.60/0.35) = 0.5390 a day; ln(0.60/0.10)/0.5390 = 3.324 days from the start. " +
			"At 10 °C ln(0.60/0.50) = 0.1823 a day: 8.314463 × ln(0.5390/0.1823)/(1/283.15 − 1/289.15) = 123.0 kJ/mol. 86.090/132.115 " +
			"= 0.6516 mg. No published activation energy was read."},
		Work: func(w *Working) {
			fast, slow := math.Log(0.60/0.35), math.Log(0.60/0.50)
			energy := chemistry.Gas * math.Log(fast/slow) / (1/283.15 - 1/289.15) / 1000
			w.Step("Half is gone after %.1f days at 16 °C, after %.1f at 10 °C.", math.Ln2/fast, math.Ln2/slow)
			w.Step("Two days alone fix that energy badly: a reading of 0.51 in the place of 0.50 makes it %.0f kJ/mol.",
				chemistry.Gas*math.Log(fast/math.Log(0.60/0.51))/(1/283.15-1/289.15)/1000)
			w.Step("So the rest is warm and on the yeast, and ends by the test, not by the calendar.")
			w.Answer("days at 16 °C", math.Log(0.60/0.10)/fast, 2, "d", 3.324, 0.002)
			w.Answer("activation energy", energy, 0, "kJ/mol", 123.0, 0.2)
			w.Answer("diacetyl of a milligram", must(chemistry.MolarMass("C4H6O2"))/must(chemistry.MolarMass("C5H8O4")), 4, "mg", 0.6516, 0.0001)
		},
	}
}

func freezesInTheGarage() Problem {
	return Problem{
		Title: "Where ice begins",
		Ask:   "At which temperature does ice form in a still drink of 8.47 % vol, in one of 14 % vol, and in a sugar solution of 3.42 °P?",
		Given: []string{"no gas, no salts"},
		Source: Source{Read, "Lange's Handbook of Chemistry, table 5.13: −3.0 °C at 8.47 % vol, −5.0 at 14.0. W. Ramsay, Modern " +
			"Chemistry: 3.42 g of cane sugar in 100 g of solution lower it " +
			"by 0.185 K, −0.185 °C."},
		Work: func(w *Working) {
			at := func(strength units.StrengthByVolume, extract units.Extract) float64 {
				return must(carbonation.FreezingPoint(must(carbonation.DrinkOf(strength, extract)))).In(units.Celsius)
			}
			none, dry := units.PercentVolume.Of(0), units.DegreePlato.Of(0)
			w.Step("Each molecule counts: a gram of ethanol lowers it as much as 7.4 g of sucrose. A drink of 4.6 %% vol and 0.5 °P begins at %.1f °C.",
				at(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0.5)))
			w.Step("What is left liquid is stronger and freezes lower, so that slush grows slowly; 5 g/L of CO2 lower it by another 0.2 K.")
			w.Answer("8.47 % vol", at(units.PercentVolume.Of(8.47), dry), 1, "°C", -3.0, 0.2)
			w.Answer("14 % vol", at(units.PercentVolume.Of(14), dry), 1, "°C", -5.0, 0.2)
			w.Answer("3.42 °P", at(none, units.DegreePlato.Of(3.42)), 3, "°C", -0.185, 0.01)
			w.Caution(carbonation.Freezing.Text())
		},
	}
}
