package main

import (
	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
)

func labelChapter() Chapter {
	return Chapter{
		Title: "7 Label facts",
		Intro: "What a label says is arithmetic with a law behind it: each country counts ethanol in another measure, and energy has factors of its own.",
		Problems: []Problem{
			australianCard(), unitsInAPint(), americanDrink(), energyOfWine(), caloriesOfABeer(), mayTheLabelSaySo(),
		},
	}
}

func australianCard() Problem {
	return Problem{
		Title: "Standard drinks on a card",
		Ask:   "How many Australian standard drinks are in 375 mL at 4.8 % vol, in 150 mL at 11.5 % vol and in 750 mL at 13 % vol?",
		Given: []string{"a standard drink has 10 g of ethanol"},
		Source: Source{Read, "Australian Government, standard drinks guide, card std0910: 1.4, 1.4 and 7.7. " +
			"(One row of that card, 330 mL at 5 %, prints 1.2 where its own definition gives 1.30.)"},
		Work: func(w *Working) {
			for _, row := range []struct {
				v     units.Volume
				s     units.StrengthByVolume
				print float64
			}{{units.Millilitre.Of(375), units.PercentVolume.Of(4.8), 1.4}, {units.Millilitre.Of(150), units.PercentVolume.Of(11.5), 1.4},
				{units.Millilitre.Of(750), units.PercentVolume.Of(13), 7.7}} {
				n := must(label.DrinkAU.Count(row.s, row.v))
				name := row.v.Text(units.Millilitre, 0) + " at " + row.s.Text(units.PercentVolume, 1)
				w.Step("%s: %.4f.", name, n)
				w.Answer(name, n, 1, "", row.print, 0.05)
			}
		},
	}
}

func unitsInAPint() Problem {
	return Problem{
		Title:  "Units in a pint",
		Ask:    "How many UK units are in a pint of beer of 5.2 % vol?",
		Given:  []string{"imperial pint, 568.26 mL", "5.2 % vol"},
		Source: Source{ByHand, "UK unit: % vol × mL / 1000 = 5.2 × 568.26 / 1000 = 2.955."},
		Work: func(w *Working) {
			pint := must(units.Litre.Find("imp pt")).Of(1)
			n := must(label.UnitUK.Count(units.PercentVolume.Of(5.2), pint))
			w.Step("Units = %% vol × mL / 1000, as a unit is 10 mL.")
			w.Step("A pint is %s; a unit is 10 mL of ethanol.", pint.Text(units.Millilitre, 2))
			w.Answer("units", n, 3, "", 2.955, 0.0005)
		},
	}
}

func americanDrink() Problem {
	return Problem{
		Title:  "An American can",
		Ask:    "How many US standard drinks are in a can of 12 US fluid ounces at 5 % vol?",
		Given:  []string{"12 US fl oz", "5 % vol"},
		Source: Source{Read, "NIAAA: a US standard drink has 14 g of ethanol, 0.6 US fl oz; 12 × 0.05 = 0.6 fl oz, so 1."},
		Work: func(w *Working) {
			can := units.USFluidOunce.Of(12)
			n := must(label.DrinkUS.Count(units.PercentVolume.Of(5), can))
			w.Step("A standard drink is 14 g of ethanol.")
			w.Step("The can is %s and holds %.2f g of ethanol, %.3f US fl oz.", can.Text(units.Millilitre, 2), n*14, can.In(units.USFluidOunce)*0.05)
			w.Answer("standard drinks", n, 2, "", 1, 0.005)
		},
	}
}

func energyOfWine() Problem {
	return Problem{
		Title: "Energy in two units that are not one",
		Ask:   "What is the energy of 100 mL of a dry drink at 12 % vol by the factors of EU law, in kJ and in kcal?",
		Given: []string{"12 % vol, no extract"},
		Source: Source{ByHand, "Factors read in Regulation (EU) No 1169/2011 annex XIV, ethanol 29 kJ/g and 7 kcal/g: 12 mL × 0.78924 g/mL = 9.4709 g; × " +
			"29 = 274.7 kJ; × 7 = 66.3 kcal. Converting the kJ with 4.184 would give 65.6."},
		Work: func(w *Working) {
			drink := must(finish.Flavouring{Strength: units.PercentVolume.Of(12)}.Liquid(units.Litre.Of(1)))
			e := label.EnergyEU(drink)
			w.Step("Each unit has its own factors: %s, %s.", e.Kilojoules.Text(units.Kilojoule, 2), e.Kilocalories.Text(units.Kilocalorie, 2))
			w.Step("Converted, the kilojoules would be %s.", e.Kilojoules.Text(units.Kilocalorie, 2))
			w.Answer("energy", e.Kilojoules.In(units.Kilojoule), 1, "kJ", 274.7, 0.1)
			w.Answer("energy in its own factors", e.Kilocalories.In(units.Kilocalorie), 1, "kcal", 66.3, 0.1)
		},
	}
}

func caloriesOfABeer() Problem {
	return Problem{
		Title: "Calories of a beer, American style",
		Ask:   "A beer has 4.22 % mass of ethanol and 5.78 % of real extract. How many kilocalories are in 12 US fl oz?",
		Given: []string{"100 g: 4.22 g ethanol, 5.78 g extract", "ash 0.1 % (customary, recalled from memory)"},
		Source: Source{ByHand, "Formula read in The Oxford Companion to Beer (2012), entry calories, after ASBC: 6.9 × 4.22 + 4.0 × (5.78 − 0.1) = " +
			"29.118 + 22.720 = 51.838 kcal in 100 g; " +
			"× 1.0149 (its gravity) = 52.61 in 100 mL; × 3.55 = 186.8."},
		Work: func(w *Working) {
			beer := must(gravity.NewSolution(units.Gram.Of(90), units.Gram.Of(5.78), units.Gram.Of(4.22)))
			e := must(label.EnergyUS(beer, units.Percent.Of(0.1)))
			can := must(units.TryTimes(e, units.USFluidOunce.Of(12).In(units.Millilitre)/100))
			w.Step("In 100 mL %s; EU law would have %s.", e.Text(units.Kilocalorie, 2), label.EnergyEU(beer).Kilocalories.Text(units.Kilocalorie, 0))
			w.Step("A US food label would print %s.", must(label.RoundCaloriesUS(can)).Text(units.Kilocalorie, 0))
			w.Answer("100 mL", e.In(units.Kilocalorie), 1, "kcal", 52.61, 0.05)
			w.Answer("12 US fl oz", can.In(units.Kilocalorie), 0, "kcal", 186.8, 0.3)
		},
	}
}

func mayTheLabelSaySo() Problem {
	return Problem{
		Title: "May the label say so?",
		Ask: "How far may the strength be from the label, before the error of the analysis, of a seltzer of 4.6 % vol, a beer of 5.0, a beer of 7.0 and " +
			"a cider of 6.5, by EU law?",
		Given: []string{"labels 4.6, 5.0, 7.0 and 6.5 % vol"},
		Source: Source{Read, "Regulation (EU) No 1169/2011 annex XII: 0.3 for all other drinks; 0.5 for beer up to 5.5 % vol; 1.0 for beer above it, cider, " +
			"perry and mead. The error of the analysis comes on top of them. Check the law in force."},
		Work: func(w *Working) {
			w.Step("Which drink it is decides: the tolerance is for the kind, and for beer it depends on the strength. What the method of analysis is sure of " +
				"is added to it.")
			w.Step("A drink of 4.56 %% vol is labelled %s.", label.Strength(units.PercentVolume.Of(4.56)).Text(units.PercentVolume, 1))
			for _, row := range []struct {
				name  string
				c     label.Category
				label units.StrengthByVolume
				print float64
			}{{"seltzer", label.EUOther, units.PercentVolume.Of(4.6), 0.3}, {"beer of 5.0", label.EUBeer, units.PercentVolume.Of(5), 0.5},
				{"beer of 7.0", label.EUBeer, units.PercentVolume.Of(7), 1.0}, {"cider", label.EUCider, units.PercentVolume.Of(6.5), 1.0}} {
				w.Answer(row.name, must(row.c.Tolerance(row.label)).In(units.PercentagePoint), 1, "% vol", row.print, 0)
			}
			w.Caution(law.CheckTheLaw.Text())
		},
	}
}
