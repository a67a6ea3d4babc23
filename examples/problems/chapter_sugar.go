package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

func sugarChapter() Chapter {
	return Chapter{
		Title: "14 Sugar for a strength",
		Intro: "What is weighed is not what ferments: crystals hold water, honey holds more, and sucrose takes some up.",
		Problems: []Problem{
			sugarForTheHall(), dextroseInstead(), honeyForMead(), grainToSpirit(), juiceToCider(), strongerThenWeaker(), priceOfAlcohol(),
		},
	}
}

func sugarForTheHall() Problem {
	return Problem{
		Title: "Sugar for 60 L at 4.6 % vol",
		Ask:   "How much white sugar do 60 L of 4.6 % vol take, fermented dry, and where do the hydrometer's readings start and end?",
		Given: []string{"60 L of finished drink at 20 °C", "4.6 % vol", "white sugar, 99.94 % dry"},
		Source: Source{ByHand, "Ethanol 60 × 4.6 × 7.89239 = 2178.3 g. French order of 3 May 1996: 16.83 g of hexose for 1 % vol, which is 0.46895 g/g, " +
			"and 0.49363 g from a gram of sucrose: 2178.3/0.49363 = 4412.8 g, /0.9994 = 4415 g, 4.415 kg. " +
			"CO2 and yeast go, about 2.3 kg; the liquid weighs about 59.5 kg, so the start is 4.413 kg of sugar in 61.8 kg, 7.14 °P, 1.0283 (NBS C440: 7 °Bx " +
			"1.02773, 8 °Bx 1.03180 in air). The gravity of the finish is about that of 3.66 % mass of ethanol, 0.9933, and 0.17 kg of glycerol, 0.0007: " +
			"0.9940."},
		Work: func(w *Working) {
			b := must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
			w.Step("%s of sugar in %s of water.", b.Fermentable.Text(units.Kilogram, 3), b.Water.Text(units.Kilogram, 2))
			w.Step("The start fills %s and reads %s; dry it fills %s and reads %s.", b.Start.VolumeAt20().Text(units.Litre, 2), b.Start.Gravity().Text(4),
				b.Finish.VolumeAt20().Text(units.Litre, 2), b.Finish.Gravity().Text(4))
			w.Step("CO2 set free %s, new yeast %s.", b.Made.CO2.Text(units.Kilogram, 3), b.Made.Biomass.Text(units.Kilogram, 3))
			w.Answer("white sugar", b.Fermentable.In(units.Kilogram), 3, "kg", 4.415, 0.001)
			w.Answer("start", b.Start.Gravity().SG(), 4, "", 1.0283, 0.0002)
			w.Answer("finish", b.Finish.Gravity().SG(), 4, "", 0.9940, 0.0002)
		},
	}
}

func dextroseInstead() Problem {
	return Problem{
		Title:  "Dextrose for 60 L at 4.6 % vol",
		Ask:    "How much dextrose monohydrate do 60 L of 4.6 % vol take, fermented dry?",
		Given:  []string{"60 L of finished drink at 20 °C, 4.6 % vol", "C6H12O6·H2O, 9.09 % crystal water"},
		Source: Source{ByHand, "60 × 4.6 × 7.89239 = 2178.3 g of ethanol / 0.46895 = 4645.1 g of anhydrous glucose; × 198.171/180.156 = 5110 g, 5.110 kg."},
		Work: func(w *Working) {
			f := material.DextroseMonohydrate()
			b := must(sugar.ForStrength(f, units.PercentVolume.Of(4.6), units.Litre.Of(60)))
			p := must(sugar.Of(f).Of(b.Fermentable))
			w.Step("%s, of which %s are crystal water and %s sugar.", b.Fermentable.Text(units.Kilogram, 3), p.Water.Text(units.Kilogram, 3),
				p.Sugar.Text(units.Kilogram, 3))
			w.Step("It starts at %s, lower than table sugar would for so much ethanol.", b.Start.Gravity().Text(4))
			w.Answer("dextrose monohydrate", b.Fermentable.In(units.Kilogram), 3, "kg", 5.110, 0.001)
		},
	}
}

func honeyForMead() Problem {
	return Problem{
		Title: "A kilogram of honey",
		Ask:   "What is in a kilogram of honey of average composition, how much of its solids ferments, and how much ethanol could it give at the most?",
		Given: []string{"1 kg of honey"},
		Source: Source{Read, "White et al., USDA Technical Bulletin 1261 (1962), mean of 490 samples: water 17.2, fructose 38.2, glucose 31.3, sucrose 1.3, " +
			"maltose and the like 7.3 %. " +
			"A kilogram: 172 g of water, 781 g of sugars. Ethanol at the most: 695 × 0.51144 + 86 × 0.53835 = 401.7 g."},
		Work: func(w *Working) {
			f := material.Honey()
			p := must(sugar.Of(f).Of(units.Kilogram.Of(1)))
			w.Step("Water %s, sugar that yeast takes up %s, other solids %s.", p.Water.Text(units.Gram, 1), p.Sugar.Text(units.Gram, 1), p.Residue.Text(units.Gram, 1))
			w.Step("%s of the solids ferment; known within %s (one standard uncertainty).", sugar.Of(f).Fermentability().Text(units.Percent, 1),
				f.Spread().Text(units.Percent, 1))
			mead := must(sugar.ForStrength(f, units.PercentVolume.Of(12), units.Litre.Of(20)))
			w.Step("20 L of mead at 12 %% vol take %s of it.", mead.Fermentable.Text(units.Kilogram, 2))
			w.Answer("water", p.Water.In(units.Gram), 0, "g", 172, 0.5)
			w.Answer("sugar", p.Sugar.In(units.Gram), 0, "g", 781, 0.5)
			w.Answer("ethanol at the most", p.GayLussac.In(units.Gram), 1, "g", 401.7, 0.2)
		},
	}
}

func grainToSpirit() Problem {
	return Problem{
		Title: "Balling's table of raw materials",
		Ask:   "100 parts of wheat give at the most 70 of extract, rye 65, rice 74. How much ethanol is that, and how much do 100 parts of grape sugar give?",
		Given: []string{"extract 70, 65, 74; sugar 100"},
		Source: Source{Read, "C. J. N. Balling, Die Gährungschemie (1854/1865) p. 370: 33.87, 31.45, 35.80 and, for sugar, 51.11 parts by weight. (His " +
			"atomic weights were rounder: 0.05 is allowed for the sugar.)"},
		Work: func(w *Working) {
			malt := gravity.BallingYield().Ethanol().In(units.Fraction)
			w.Step("Of 100 parts of wort extract %.3f become ethanol; the rest is gas and yeast.", 100*malt)
			w.Step("Of 100 parts of hexose, without yeast, %.2f.", 100*gravity.StoichiometricYield(gravity.AsGlucose).Ethanol().In(units.Fraction))
			w.Answer("wheat", 70*malt, 2, "parts", 33.87, 0.006)
			w.Answer("rye", 65*malt, 2, "parts", 31.45, 0.006)
			w.Answer("rice", 74*malt, 2, "parts", 35.80, 0.02)
			w.Answer("sugar", 100*gravity.StoichiometricYield(gravity.AsGlucose).Ethanol().In(units.Fraction), 2, "parts", 51.11, 0.05)
		},
	}
}

func juiceToCider() Problem {
	return Problem{
		Title: "What a juice becomes",
		Ask:   "Apple juice of 12 °Bx, of whose solids 90 % ferment, is fermented without any water. What strength does the cider have?",
		Given: []string{"20 kg of juice, 12 °Bx, 90 % fermentable"},
		Source: Source{ByHand, "20 kg hold 2.160 kg of sugar: × 0.46895 = 1012.9 g of ethanol. CO2 goes with it, mole for mole: × 44.009/46.069 = 967.6 " +
			"g; 3.64 % = 78.6 g stay as glycerol and acids, the rest, 100.9 g, is yeast. " +
			"18.932 kg are left: 5.350 % mass. Gravity: ethanol 0.9906 (CRC), 1.27 % of solids + 0.0049, 0.42 % of glycerol + 0.0010: 0.9965. 5.350 × 0.9965 " +
			"× 0.9982/0.78924 = 6.743 % vol."},
		Work: func(w *Working) {
			f := must(material.Juice(units.DegreePlato.Of(12), units.Percent.Of(90)))
			parts := must(sugar.Of(f).Of(units.Kilogram.Of(20)))
			w.Step("Sugar %s, other solids %s.", parts.Sugar.Text(units.Kilogram, 3), parts.Residue.Text(units.Kilogram, 3))
			juice := must(sugar.Of(f).AddTo(gravity.Solution{}, units.Kilogram.Of(20)))
			cider, made, err := juice.Dry(sugar.Of(f).Yield())
			must(cider, err)
			w.Step("It starts at %s and ends at %s with %s of ethanol; %s of CO2 went.", juice.Gravity().Text(4), cider.Gravity().Text(4),
				made.Ethanol.Text(units.Gram, 1), made.CO2.Text(units.Kilogram, 3))
			w.Answer("ethanol", made.Ethanol.In(units.Gram), 0, "g", 1012.9, 1)
			w.Answer("strength", cider.ByVolume().In(units.PercentVolume), 2, "% vol", 6.743, 0.01)
		},
	}
}

func strongerThenWeaker() Problem {
	return Problem{
		Title: "A small fermenter for a large batch",
		Ask:   "60 L of 4.6 % vol are brewed as a strong base of 9 % vol and diluted when it is done. How much base, and how much water?",
		Given: []string{"base 9 % vol, dry", "60 L at 4.6 % vol"},
		Source: Source{ByHand, "60 × 4.6/9 = 30.67 L of base. It is dry but for glycerol, so that it weighs about 30.67 × 0.9874 = 30.28 kg; the finished " +
			"60 L weigh 59.53 kg. Difference 29.25 kg of water."},
		Work: func(w *Working) {
			wash := sugar.Wash{Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100)}
			base, let, err := finish.StrongBrew(wash, units.PercentVolume.Of(9), units.PercentVolume.Of(4.6), units.Litre.Of(60))
			must(base, err)
			v := base.Finish.VolumeAt20()
			w.Step("%s of sugar for %s of base of %s.", base.Fermentable.Text(units.Kilogram, 3), v.Text(units.Litre, 2),
				base.Finish.ByVolume().Text(units.PercentVolume, 2))
			w.Step("%s of water bring it to %s, %s.", let.Water.Text(units.Kilogram, 2), let.Liquid.VolumeAt20().Text(units.Litre, 2),
				let.Liquid.ByVolume().Text(units.PercentVolume, 2))
			w.Answer("base", v.In(units.Litre), 2, "L", 30.67, 0.01)
			w.Answer("water", let.Water.In(units.Kilogram), 1, "kg", 29.25, 0.1)
		},
	}
}

func priceOfAlcohol() Problem {
	return Problem{
		Title:  "What a gram of ethanol costs",
		Ask:    "White sugar costs 1.35 for a kilogram, dextrose monohydrate 2.40. What does a gram of ethanol from each cost?",
		Given:  []string{"prices invented, in any currency", "packs of 1 kg"},
		Source: Source{ByHand, "A thousand grams of ethanol: 1000 × 1.35/(999.4 × 0.49363) = 2.736; 1000 × 2.40/(1000 × 0.90909 × 0.46895) = 5.630."},
		Work: func(w *Working) {
			kilo := must(units.ParseExact[units.Mass]("1 kg"))
			a := must(sugar.CostPerGramEthanol(material.WhiteSugar(), decimal.RequireFromString("1.35"), kilo))
			b := must(sugar.CostPerGramEthanol(material.DextroseMonohydrate(), decimal.RequireFromString("2.40"), kilo))
			w.Step("A kilogram of white sugar gives %.1f g of ethanol, of dextrose monohydrate %.1f g.",
				1000*sugar.Of(material.WhiteSugar()).Solids().In(units.Fraction)*sugar.Of(material.WhiteSugar()).Yield().Ethanol().In(units.Fraction),
				1000*sugar.Of(material.DextroseMonohydrate()).Solids().In(units.Fraction)*sugar.Of(material.DextroseMonohydrate()).Yield().Ethanol().In(units.Fraction))
			w.Step("A gram of ethanol costs %s from white sugar and %s from dextrose monohydrate.", a, b)
			w.Answer("white sugar, a thousand grams", 1000*a.InexactFloat64(), 3, "", 2.736, 0.001)
			w.Answer("dextrose monohydrate, a thousand grams", 1000*b.InexactFloat64(), 3, "", 5.630, 0.001)
		},
	}
}
