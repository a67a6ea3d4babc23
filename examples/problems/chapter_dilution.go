package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
)

func dilutionChapter() Chapter {
	return Chapter{
		Title: "6 Dilution, blends and boiling",
		Intro: "Masses add, volumes do not. Whoever mixes by volume is off by what the mixture shrinks.",
		Problems: []Problem{
			fiftyAndFifty(), lettingDown(), twoBatches(), spiritSyrupWater(), boilingDown(), madeUpToTheMark(),
		},
	}
}

func fiftyAndFifty() Problem {
	return Problem{
		Title: "Fifty volumes of ethanol are not half",
		Ask:   "50 volumes of ethanol shall become 100 volumes of 50 % vol (100 proof) at 60 °F. How many volumes of water does it take?",
		Given: []string{"all volumes at 60 °F", "100, 112 and 191 proof, which are 50, 56 and 95.5 % vol at 60 °F"},
		Source: Source{Read, "US gauging manual, former 27 CFR 186.66 (table 6): 53.73, 47.75 and 5.59 volumes of water. " +
			"The table rests on data of 1913; OIML R 22 lies 0.01 volumes higher."},
		Work: func(w *Working) {
			sixty := must(units.Parse[units.Temperature]("60 °F"))
			pure := must(gravity.EthanolDensity(units.PercentMass.Of(100), sixty)).In(units.GramPerMillilitre)
			water := must(gravity.WaterDensity(sixty)).In(units.GramPerMillilitre)
			for _, row := range []struct {
				proof string
				ml    float64 // of ethanol in 100 mL
				print float64
			}{{"100 proof", 50, 53.73}, {"112 proof", 56, 47.75}, {"191 proof", 95.5, 5.59}} {
				ethanol := row.ml * pure
				mix := strengthAt60F(row.ml, sixty)
				mass := 100 * must(gravity.EthanolDensity(mix, sixty)).In(units.GramPerMillilitre)
				need := (mass - ethanol) / water
				w.Step("%s: 100 mL weigh %.3f g, of which %.3f g (%s) are ethanol; the rest is %.3f mL of water. The mixture shrinks by %.2f mL.",
					row.proof, mass, ethanol, mix.Text(units.PercentMass, 3), need, row.ml+need-100)
				w.Answer("water for "+row.proof, need, 2, "volumes", row.print, 0.011)
			}
		},
	}
}

// strengthAt60F returns the strength by mass of the mixture that holds so many mL of
// ethanol in 100 mL, both at 60 °F. OIML defines % vol at 20 °C, so it is solved for.
func strengthAt60F(ml float64, sixty units.Temperature) units.StrengthByMass {
	pure := must(gravity.EthanolDensity(units.PercentMass.Of(100), sixty)).In(units.GramPerMillilitre)
	p := must(numeric.Root(func(p float64) float64 {
		mix := must(gravity.EthanolDensity(must(units.PercentMass.Try(p)), sixty))
		return p*mix.In(units.GramPerMillilitre)/pure - ml
	}, 0, 100, 1e-9))
	return must(units.PercentMass.Try(p))
}

func lettingDown() Problem {
	return Problem{
		Title: "Diluting a strong base",
		Ask:   "A dry base of 9.0 % vol, 30 L of it, is diluted to 4.6 % vol. How much water, and what volume comes out?",
		Given: []string{"30 L at 20 °C, 9.0 % vol, no extract", "target 4.6 % vol"},
		Source: Source{ByHand, "Ethanol 30 × 9.0 × 7.8924 = 2130.9 g. At 4.6 % vol a litre holds 36.305 g, so 58.69 L come out. " +
			"9 % vol is 7.204 % mass: 0.98593 g/mL between the rows of 6 and 8 % of the CRC Handbook, so the base weighs 29.578 kg; 4.6 % vol is 3.661 % mass, " +
			"0.99159 g/mL, 58.196 kg. The difference is 28.62 kg of water; by volumes alone it would be 28.69 L."},
		Work: func(w *Working) {
			litre := must(finish.Flavouring{Strength: units.PercentVolume.Of(9)}.Liquid(units.Litre.Of(30)))
			w.Step("The base weighs %s and holds %s of ethanol.", litre.Mass().Text(units.Kilogram, 3), litre.Ethanol().Text(units.Gram, 1))
			got := must(finish.Dilute(litre, gravity.Solution{}, units.PercentVolume.Of(4.6)))
			v := got.Liquid.VolumeAt20()
			w.Step("%s of water make %s, which weigh %s.", got.Water.Text(units.Kilogram, 3), v.Text(units.Litre, 2), got.Liquid.Mass().Text(units.Kilogram, 3))
			w.Answer("water", got.Water.In(units.Kilogram), 2, "kg", 28.62, 0.02)
			w.Answer("finished", v.In(units.Litre), 2, "L", 58.69, 0.02)
		},
	}
}

func twoBatches() Problem {
	return Problem{
		Title: "Blending two batches",
		Ask:   "20 kg of cider with 6 % mass of ethanol and 10 kg of juice with 12 % of sugar are blended. What are the strength and the extract?",
		Given: []string{"20 kg: 6 % mass ethanol, no extract", "10 kg: 12 % mass sugar"},
		Source: Source{ByHand, "Ethanol 1.2 kg of 30 is 4.000 % mass; sugar 1.2 kg of 30 is 4.000 % mass. Tabarié: in 99.36 mL of 100 g of the blend stand " +
			"4.026 g/100 mL of each; sugar alone would be 3.967 % mass, gravity 1.0156 (NBS C440), ethanol alone 4.062 % mass, gravity 0.9927 (CRC); sum less " +
			"one 1.0083."},
		Work: func(w *Working) {
			cider := must(gravity.NewSolution(units.Kilogram.Of(18.8), units.Mass{}, units.Kilogram.Of(1.2)))
			juice := must(gravity.NewSolution(units.Kilogram.Of(8.8), units.Kilogram.Of(1.2), units.Mass{}))
			blend := must(cider.Plus(juice))
			parts := cider.VolumeAt20().Plus(juice.VolumeAt20())
			w.Step("The parts have %s and %s by gravity.", cider.Gravity().Text(4), juice.Gravity().Text(4))
			w.Step("Volumes: %s before, %s after.", parts.Text(units.Litre, 3), blend.VolumeAt20().Text(units.Litre, 3))
			w.Step("Strength by volume: %s.", blend.ByVolume().Text(units.PercentVolume, 2))
			w.Answer("strength", blend.ByMass().In(units.PercentMass), 3, "% mass", 4, 0.0005)
			w.Answer("extract", blend.RealExtract().In(units.DegreePlato), 3, "% mass", 4, 0.0005)
			w.Answer("gravity", blend.Gravity().SG(), 4, "", 1.0083, 0.0001)
		},
	}
}

func spiritSyrupWater() Problem {
	return Problem{
		Title: "Spirit, syrup and water",
		Ask:   "10 L of 5 % vol with 4 % of extract are made of a spirit of 40 % vol, a syrup of 60 °P and water. How much of each?",
		Given: []string{"spirit 40 % vol", "syrup 60 °P", "10 L, 5 % vol, real extract 4 % mass"},
		Source: Source{ByHand, "Ethanol 10 × 5 × 7.8924 = 394.6 g; a spirit of 40 % vol is 33.30 % mass: 1.185 kg. Gravity by Tabarié: ethanol 3.98 % " +
			"mass 0.9928, extract 3.97 % 1.0156, sum less one 1.0084: 10 L weigh 10.066 kg. " +
			"Extract 0.4026 kg, /0.60 = 0.671 kg of syrup. Water 10.066 − 1.185 − 0.671 = 8.210 kg."},
		Work: func(w *Working) {
			spirit := must(finish.Flavouring{Strength: units.PercentVolume.Of(40)}.Liquid(units.Litre.Of(1)))
			syrup := must(gravity.NewSolution(units.Kilogram.Of(0.4), units.Kilogram.Of(0.6), units.Mass{}))
			water := must(gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Mass{}))
			parts, blend, err := gravity.BlendToStrengthAndExtract(spirit, syrup, water, units.PercentVolume.Of(5), units.DegreePlato.Of(4), units.Litre.Of(10))
			must(blend, err)
			sum := parts[0].Volume.Plus(parts[1].Volume).Plus(parts[2].Volume)
			w.Step("A litre of the blend holds %.2f g of ethanol; the blend weighs %s, of which 4 %% is extract.",
				10*blend.ByMass().In(units.PercentMass)*blend.Gravity().Density().In(units.GramPerMillilitre), blend.Mass().Text(units.Kilogram, 3))
			w.Step("Gravity %s. The parts measure %s before they are mixed.", blend.Gravity().Text(4), sum.Text(units.Litre, 3))
			w.Answer("spirit", parts[0].Mass.In(units.Kilogram), 3, "kg", 1.185, 0.001)
			w.Answer("syrup", parts[1].Mass.In(units.Kilogram), 3, "kg", 0.671, 0.001)
			w.Answer("water", parts[2].Mass.In(units.Kilogram), 3, "kg", 8.210, 0.003)
		},
	}
}

func boilingDown() Problem {
	return Problem{
		Title: "Boiling a wort down",
		Ask:   "60 kg of a wort of 9 °P lose 8 kg of water in the boil. What is its extract, and by how much did the volume at 20 °C shrink?",
		Given: []string{"60 kg at 9 °P", "8 kg of water boiled off"},
		Source: Source{ByHand, "Extract 5.4 kg of 52 is 10.385 °P. NBS Circular 440 table 114 has 1.0359 for 9 °Bx and, between 10 and 11, 1.04163 for " +
			"10.385: 60/(1.0359·0.9982) = 58.02 L, 52/(1.0416·0.9982) = 50.01 L, difference 8.01 L: that of the water."},
		Work: func(w *Working) {
			wort := must(gravity.NewSolution(units.Kilogram.Of(54.6), units.Kilogram.Of(5.4), units.Mass{}))
			thick := must(wort.BoilOff(units.Kilogram.Of(8)))
			shrunk := wort.VolumeAt20().Minus(thick.VolumeAt20())
			w.Step("Gravity %s before, %s after.", wort.Gravity().Text(4), thick.Gravity().Text(4))
			w.Step("In the hot kettle, at 98 °C, it stands at %s.", must(thick.Volume(units.Celsius.Of(98))).Text(units.Litre, 2))
			w.Answer("extract", thick.RealExtract().In(units.DegreePlato), 3, "°P", 10.385, 0.0005)
			w.Answer("shrunk by", shrunk.In(units.Litre), 2, "L", 8.01, 0.02)
		},
	}
}

func madeUpToTheMark() Problem {
	return Problem{
		Title: "Made up to the mark",
		Ask:   "6 kg of sugar are dissolved in 14 kg of water, and the syrup is made up to 60 L at 20 °C. How much water does that take, and what is the gravity?",
		Given: []string{"6 kg of sucrose in 14 kg of water", "60 L at 20 °C"},
		Source: Source{ByHand, "6 kg in 60 L is 100 g/L. NBS Circular 440 table 114 in vacuum: 9 °Bx 1.0359, 10 °Bx 1.0400. With 9.646 °Bx the gravity " +
			"is 1.0359 + 0.646 × 0.0041 = 1.0385, a litre weighs 1.0385 × 998.2 = 1036.7 g, and 100/1036.7 is 9.646 %. " +
			"60 L weigh 62.20 kg, of which 20 kg are there: 42.20 kg of water."},
		Work: func(w *Working) {
			syrup := must(gravity.NewSolution(units.Kilogram.Of(14), units.Kilogram.Of(6), units.Mass{}))
			wash, added, err := syrup.MakeUpTo(units.Litre.Of(60), units.Celsius.Of(20))
			must(wash, err)
			w.Step("The syrup has %s and fills %s.", syrup.RealExtract().Text(units.DegreePlato, 1), syrup.VolumeAt20().Text(units.Litre, 2))
			w.Step("Made up it weighs %s and has %s.", wash.Mass().Text(units.Kilogram, 2), wash.RealExtract().Text(units.DegreePlato, 2))
			w.Answer("water to add", added.In(units.Kilogram), 2, "kg", 42.20, 0.01)
			w.Answer("gravity", wash.Gravity().SG(), 4, "", 1.0385, 0.0001)
		},
	}
}
