package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

func densityChapter() Chapter {
	return Chapter{
		Title: "2 Densities",
		Intro: "A hydrometer floats on a density. So the course begins with water, then what is dissolved in it.",
		Problems: []Problem{
			waterAtFifteen(), waterForMetrology(), pureEthanol(), tenPercentEthanol(), strengthFromDensity(),
			sucroseTwentyPercent(), glucoseIsLighter(), roomThatSugarTakes(),
		},
	}
}

func waterAtFifteen() Problem {
	return Problem{
		Title: "Water of 15 °C",
		Ask:   "What is the density of water at 15 °C and at 4 °C, where it is densest?",
		Given: []string{"air-free water at 101.325 kPa"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, 53rd ed. (1972), p. F-4: 999.099 and 999.973 kg/m³. The tolerance is the uncertainty " +
			"that Bettin & Spieweck state."},
		Work: func(w *Working) {
			warm := must(gravity.WaterDensity(units.Celsius.Of(15)))
			cold := must(gravity.WaterDensity(units.Celsius.Of(4)))
			w.Step("Bettin & Spieweck 1990: a quotient of polynomials in the temperature.")
			w.Step("At 15 °C %s, at 4 °C %s.", warm.Text(units.KilogramPerCubicMetre, 4), cold.Text(units.KilogramPerCubicMetre, 4))
			w.Answer("at 15 °C", warm.In(units.KilogramPerCubicMetre), 3, "kg/m³", 999.099, 0.006)
			w.Answer("at 4 °C", cold.In(units.KilogramPerCubicMetre), 3, "kg/m³", 999.973, 0.006)
		},
	}
}

func waterForMetrology() Problem {
	return Problem{
		Title:  "Two formulas for one water",
		Ask:    "Two published formulas give the density of water at 25 °C. How far are they from the standard of the steam tables, and from each other?",
		Given:  []string{"25 °C, 0.1 MPa"},
		Source: Source{Read, "IAPWS SR6-08, Liquid water at 0.1 MPa, table 8 (as the tests of the Python library iapws carry it): 997.047013 kg/m³ at 298.15 K."},
		Work: func(w *Working) {
			tanaka := must(rival.WaterDensityTanaka(units.Celsius.Of(25)))
			bettin := must(gravity.WaterDensity(units.Celsius.Of(25)))
			w.Step("Tanaka et al. 2001, the recommendation for metrology: %s.", tanaka.Text(units.KilogramPerCubicMetre, 4))
			w.Step("Bettin & Spieweck 1990, the water of the sugar tables: %s.", bettin.Text(units.KilogramPerCubicMetre, 4))
			w.Step("They differ by %s: nothing to a hydrometer, but a mixture must take one water throughout.",
				tanaka.Minus(bettin).Text(units.KilogramPerCubicMetre, 4))
			w.Answer("Tanaka", tanaka.In(units.KilogramPerCubicMetre), 3, "kg/m³", 997.047013, 0.001)
			w.Answer("Bettin & Spieweck", bettin.In(units.KilogramPerCubicMetre), 3, "kg/m³", 997.047013, 0.006)
		},
	}
}

func pureEthanol() Problem {
	return Problem{
		Title: "Pure ethanol, cold and warm",
		Ask:   "What does a litre of pure ethanol weigh at 5, 20 and 40 °C?",
		Given: []string{"strength 100 % mass"},
		Source: Source{secondHand, "801.99, 789.24 and 771.93 kg/m³ in a general data set of compounds that names no source. " +
			"That they are OIML R 22, International alcoholometric tables (1973), table I, column 100 %, is recalled from memory."},
		Work: func(w *Working) {
			all := units.PercentMass.Of(100)
			for _, row := range []struct {
				t     units.Temperature
				print float64
			}{{units.Celsius.Of(5), 801.99}, {units.Celsius.Of(20), 789.24}, {units.Celsius.Of(40), 771.93}} {
				d := must(gravity.EthanolDensity(all, row.t))
				w.Step("At %s: %s.", row.t.Text(units.Celsius, 0), d.Text(units.KilogramPerCubicMetre, 4))
				w.Answer("at "+row.t.Text(units.Celsius, 0), d.In(units.KilogramPerCubicMetre), 2, "kg/m³", row.print, 0.005)
			}
		},
	}
}

func tenPercentEthanol() Problem {
	return Problem{
		Title: "Ten grams of ethanol in a hundred",
		Ask:   "What is the density of a mixture of 10 g ethanol and 90 g water at 20 °C?",
		Given: []string{"strength 10 % mass, 20 °C"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, 102nd ed., Concentrative properties of aqueous solutions (read in a public " +
			"transcription of the table): 0.9819 g/mL. The table rests on other measurements than OIML R 22; the two agree within 0.25 kg/m³."},
		Work: func(w *Working) {
			d := must(gravity.EthanolDensity(units.PercentMass.Of(10), units.Celsius.Of(20)))
			sum := 100 / (10/must(gravity.EthanolDensity(units.PercentMass.Of(100), units.Celsius.Of(20))).In(units.GramPerMillilitre) +
				90/must(gravity.WaterDensity(units.Celsius.Of(20))).In(units.GramPerMillilitre))
			w.Step("If the volumes simply added, the density would be %.4f g/mL.", sum)
			w.Step("OIML R 22 has %s: the mixture shrinks by %.1f %%.", d.Text(units.GramPerMillilitre, 5), 100*(1-sum/d.In(units.GramPerMillilitre)))
			w.Answer("density", d.In(units.GramPerMillilitre), 4, "g/mL", 0.9819, 0.00025)
		},
	}
}

func strengthFromDensity() Problem {
	return Problem{
		Title: "How strong is it? The density shows",
		Ask:   "A mixture of ethanol and water weighs 924.72 kg/m³ at 20 °C and 932.26 kg/m³ at 10 °C. What is its strength by mass?",
		Given: []string{"density in vacuum 924.72 kg/m³ at 20 °C", "932.26 kg/m³ at 10 °C"},
		Source: Source{secondHand, "A reprinted table of densities by weight has both densities at 45 % mass. That it is Osborne, McKelvy & Bearce, " +
			"Bulletin of the Bureau of Standards 9 (1913) 327, is recalled from memory. OIML R 22 lies up to 0.12 kg/m³ from these data, which is 0.06 % mass."},
		Work: func(w *Working) {
			warm := must(gravity.EthanolStrength(units.KilogramPerCubicMetre.Of(924.72), units.Celsius.Of(20)))
			cold := must(gravity.EthanolStrength(units.KilogramPerCubicMetre.Of(932.26), units.Celsius.Of(10)))
			w.Step("The formula of OIML R 22 is solved for the strength: %s at 20 °C, %s at 10 °C.",
				warm.Text(units.PercentMass, 3), cold.Text(units.PercentMass, 3))
			w.Step("That is %s.", gravity.ByVolume(warm).Text(units.PercentVolume, 2))
			w.Answer("from 20 °C", warm.In(units.PercentMass), 2, "% mass", 45, 0.06)
			w.Answer("from 10 °C", cold.In(units.PercentMass), 2, "% mass", 45, 0.06)
		},
	}
}

func sucroseTwentyPercent() Problem {
	return Problem{
		Title: "A syrup of 20 %",
		Ask:   "What is the specific gravity 20/20 °C of 20 g sugar in 100 g of solution?",
		Given: []string{"extract 20 % mass"},
		Source: Source{secondHand, "1.08287; 10 % is 1.03998: check values in a collection of engineering data, which gives them as Bates et al., NBS " +
			"Circular 440 (1942), table 109; the circular itself was not seen. ICUMSA SPS-4 lies 0.00005 higher at 20 %."},
		Work: func(w *Working) {
			d := must(gravity.SucroseDensity(units.DegreePlato.Of(20), units.Celsius.Of(20)))
			w.Step("ICUMSA SPS-4 (1994): %s; water %s.", d.Text(units.KilogramPerCubicMetre, 3),
				must(gravity.WaterDensity(units.Celsius.Of(20))).Text(units.KilogramPerCubicMetre, 3))
			twenty := must(gravity.FromExtract(units.DegreePlato.Of(20)))
			ten := must(gravity.FromExtract(units.DegreePlato.Of(10)))
			w.Step("The quotient is %s. Half of the sugar gives %s, a little less than half of the excess.", twenty.Text(5), ten.Text(5))
			w.Answer("20 %", twenty.SG(), 5, "", 1.08287, 0.00006)
			w.Answer("10 %", ten.SG(), 5, "", 1.03998, 0.00002)
		},
	}
}

func glucoseIsLighter() Problem {
	return Problem{
		Title: "Dextrose floats the hydrometer less",
		Ask:   "A wash of 10 % dextrose and one of 10 % table sugar: what does each weigh, and how far apart are their gravities?",
		Given: []string{"10 % mass of anhydrous sugar, 20 °C"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, 102nd ed., Concentrative properties of aqueous solutions (read in a public " +
			"transcription of the table): glucose 1.0375 g/mL, sucrose 1.0381 g/mL."},
		Work: func(w *Working) {
			ten, at20 := units.DegreePlato.Of(10), units.Celsius.Of(20)
			glucose := must(gravity.AsGlucose.Density(ten, at20))
			sucrose := must(gravity.AsSucrose.Density(ten, at20))
			w.Step("Glucose %s, sucrose %s.", glucose.Text(units.KilogramPerCubicMetre, 2), sucrose.Text(units.KilogramPerCubicMetre, 2))
			apart := must(gravity.FromDensity(sucrose)).SG() - must(gravity.FromDensity(glucose)).SG()
			w.Step("In gravity they are %.4f apart: a scale in °Bx is for table sugar.", apart)
			w.Answer("glucose", glucose.In(units.GramPerMillilitre), 4, "g/mL", 1.0375, 0.00006)
			w.Answer("sucrose", sucrose.In(units.GramPerMillilitre), 4, "g/mL", 1.0381, 0.00006)
		},
	}
}

func roomThatSugarTakes() Problem {
	return Problem{
		Title: "The room that sugar takes",
		Ask:   "A kilogram of sugar is dissolved in 9 kg of water. By how much does the volume grow?",
		Given: []string{"1 kg sucrose, 9 kg water, 20 °C"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, Concentrative properties of aqueous solutions (as M. T. Flanagan's scientific library " +
			"carries the table), sucrose 10 %: 1038.1 kg/m³; water 998.2. 10/1.0381 = 9.6330 L, less 9/0.9982 = 9.0162 L, is 0.617 L."},
		Work: func(w *Working) {
			water := must(gravity.NewSolution(units.Kilogram.Of(9), units.Mass{}, units.Mass{}))
			syrup := must(water.AddSugar(units.Kilogram.Of(1)))
			before, after := water.VolumeAt20(), syrup.VolumeAt20()
			w.Step("Masses add, volumes do not: 9 kg of water are %s, 10 kg of syrup %s.",
				before.Text(units.Litre, 4), after.Text(units.Litre, 4))
			grown := after.Minus(before)
			w.Step("The difference is %s for the kilogram.", grown.Text(units.Litre, 4))
			w.Answer("growth", grown.In(units.Litre), 3, "L", 0.617, 0.001)
		},
	}
}
