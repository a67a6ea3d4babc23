package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func strengthChapter() Chapter {
	return Chapter{
		Title: "4 Strength",
		Intro: "Strength by mass is what a balance finds, strength by volume is what a label says. The way between them is a density.",
		Problems: []Problem{
			massToVolume(), volumeToMassOnAScale(), apothecaryTable(), proofGallons(), beerWithExtract(),
		},
	}
}

func massToVolume() Problem {
	return Problem{
		Title: "From % mass to % vol",
		Ask:   "A distillate without extract has 4.00 % mass of ethanol. What is it by volume at 20 °C?",
		Given: []string{"strength 4.00 % mass"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, 102nd ed., Concentrative properties of aqueous solutions (read in a public " +
			"transcription of the table): 4 % mass of ethanol has 0.9910 g/mL and 0.860 mol/L; " +
			"0.860 mol/L × 46.069 g/mol / 789.24 g/L = 5.020 % vol."},
		Work: func(w *Working) {
			p := units.PercentMass.Of(4)
			mix := must(gravity.EthanolDensity(p, units.Celsius.Of(20)))
			pure := must(gravity.EthanolDensity(units.PercentMass.Of(100), units.Celsius.Of(20)))
			w.Step("%% vol = %% mass × density of the mixture / density of ethanol = 4 × %.2f / %.2f.",
				mix.In(units.KilogramPerCubicMetre), pure.In(units.KilogramPerCubicMetre))
			v := gravity.ByVolume(p)
			w.Step("That is %s.", v.Text(units.PercentVolume, 4))
			w.Answer("strength", v.In(units.PercentVolume), 2, "% vol", 5.020, 0.006)
		},
	}
}

func volumeToMassOnAScale() Problem {
	return Problem{
		Title: "A litre at 12 % vol",
		Ask:   "How many grams of ethanol are in a litre of 12 % vol, and what share of its mass is that if there is no extract?",
		Given: []string{"12 % vol at 20 °C, no extract"},
		Source: Source{Read, "OIML R 22 (1973), table I: ethanol weighs 789.24 kg/m³ at 20 °C; 0.120 L × 789.24 = 94.71 g (this holds only the way " +
			"through the mass and back). United States Pharmacopeia 29, Alcoholometric table: " +
			"12 % vol is 9.68 % mass at 60 °F, from other measurements."},
		Work: func(w *Working) {
			v := units.PercentVolume.Of(12)
			m := gravity.ByMass(v)
			d := must(gravity.EthanolDensity(m, units.Celsius.Of(20)))
			grams := m.In(units.PercentMass) / 100 * d.In(units.KilogramPerCubicMetre)
			w.Step("12 %% vol is %s; the litre weighs %.2f g.", m.Text(units.PercentMass, 3), d.In(units.KilogramPerCubicMetre))
			w.Step("The product is %.2f g of ethanol.", grams)
			w.Answer("ethanol in a litre", grams, 2, "g", 94.71, 0.01)
			cool, at60 := units.Fahrenheit.Of(60), m
			pure := must(gravity.EthanolDensity(units.PercentMass.Of(100), cool))
			for range 5 {
				at60 = must(units.PercentMass.Try(12 * pure.In(units.KilogramPerCubicMetre) / must(gravity.EthanolDensity(at60, cool)).In(units.KilogramPerCubicMetre)))
			}
			w.Answer("share of the mass, both volumes at 60 °F", at60.In(units.PercentMass), 2, "% mass", 9.68, 0.01)
		},
	}
}

func apothecaryTable() Problem {
	return Problem{
		Title: "The apothecary's table, in air at 60 °F",
		Ask:   "A pharmacopoeia prints specific gravities 60/60 °F in air. What does it have for 5 and 10 % mass of ethanol?",
		Given: []string{"strengths 5 and 10 % mass"},
		Source: Source{Read, "United States Pharmacopeia 29, Alcoholometric table, after Bulletin of the Bureau of Standards 9 (1913) 424: 0.9912 and " +
			"0.9839 at 15.56 °C. (That this column is at 15.56 °C was found by computing it.)"},
		Work: func(w *Working) {
			five := must(gravity.NewSolution(units.Gram.Of(95), units.Mass{}, units.Gram.Of(5)))
			ten := must(gravity.NewSolution(units.Gram.Of(90), units.Mass{}, units.Gram.Of(10)))
			a, b := must(five.SpecificGravity(gravity.At60F, gravity.InAir)), must(ten.SpecificGravity(gravity.At60F, gravity.InAir))
			w.Step("OIML R 22 at 15.56 °C over water at 15.56 °C, both less 1.2 kg/m³ of air: %.5f and %.5f.", a, b)
			w.Step("At 20/20 °C in vacuum they would be %s and %s.", five.Gravity().Text(4), ten.Gravity().Text(4))
			w.Answer("5 % mass", a, 4, "", 0.9912, 0.0001)
			w.Answer("10 % mass", b, 4, "", 0.9839, 0.0001)
		},
	}
}

func proofGallons() Problem {
	return Problem{
		Title: "Proof gallons in a pound",
		Ask: "US gauging tables count spirit in proof gallons: wine gallons at 60 °F times proof over 100. How many are in a pound of pure ethanol, " +
			"weighed in air?",
		Given: []string{"200 proof, 60 °F (15.56 °C)"},
		Source: Source{Read, "27 CFR 30.64, Table 4: 200 proof, 0.30258 proof gallons a pound; 27 CFR 30.41: water, 0.120074 gallons a pound at 60 °F. The " +
			"tables rest on data of 1913 and the litre of that time: 0.013 % and 0.004 % are allowed for it."},
		Work: func(w *Working) {
			sixty := must(units.Parse[units.Temperature]("60 °F"))
			ethanol := must(gravity.DensityInAir(must(gravity.EthanolDensity(units.PercentMass.Of(100), sixty))))
			water := must(gravity.DensityInAir(must(gravity.WaterDensity(sixty))))
			w.Step("In air at 60 °F ethanol weighs %s, water %s.", ethanol.Text(units.PoundPerUSGallon, 5), water.Text(units.PoundPerUSGallon, 5))
			w.Step("A pound is 1/%.5f gallons, and twice as many proof gallons.", ethanol.In(units.PoundPerUSGallon))
			w.Answer("proof gallons in a pound", 2/ethanol.In(units.PoundPerUSGallon), 5, "", 0.30258, 0.00004)
			w.Answer("gallons of water in a pound", 1/water.In(units.PoundPerUSGallon), 6, "", 0.120074, 0.000005)
		},
	}
}

func beerWithExtract() Problem {
	return Problem{
		Title: "A beer is neither syrup nor spirit",
		Ask:   "A beer has 4.22 % mass of ethanol and 5.78 % mass of extract. What is its gravity, and what is its strength by volume?",
		Given: []string{"100 g: 4.22 g ethanol, 5.78 g extract, 90.00 g water"},
		Source: Source{ByHand, "Tabarié: each solute brought to the volume of the beer. 90.00 g water and 4.22 g ethanol: 4.479 % mass, 0.99020 g/mL by " +
			"OIML R 22 (CRC 4 %: 0.9910, 6 %: 0.9878, so 0.9902). " +
			"The beer's volume is 100/d. With d near 1.0130 it is 98.72 mL: ethanol 4.275 g/100 mL = 4.316 % mass in water, 0.99050; extract 5.855 g/100 mL = " +
			"5.743 % mass, 1.02070. " +
			"0.99050 + 1.02070 − 0.99820 = 1.01300 g/mL; over 0.99820 is 1.0148. Strength: 4.22 × 1.01300/0.78924 = 5.416 % vol."},
		Work: func(w *Working) {
			beer := must(gravity.NewSolution(units.Gram.Of(90), units.Gram.Of(5.78), units.Gram.Of(4.22)))
			d := must(beer.Density(units.Celsius.Of(20)))
			w.Step("Tabarié's relation adds what each solute does to the density of water: %s.", d.Text(units.GramPerMillilitre, 5))
			w.Step("Gravity %s, so the hydrometer shows %s though %s of extract are there.", beer.Gravity().Text(4),
				beer.Gravity().Extract().Text(units.DegreePlato, 2), beer.RealExtract().Text(units.DegreePlato, 2))
			u, known := beer.DensityUncertainty()
			w.Step("Standard uncertainty %s, by %s.", u.Text(units.KilogramPerCubicMetre, 2), known)
			w.Answer("gravity", beer.Gravity().SG(), 4, "", 1.0148, 0.0002)
			w.Answer("strength", beer.ByVolume().In(units.PercentVolume), 2, "% vol", 5.416, 0.005)
		},
	}
}
