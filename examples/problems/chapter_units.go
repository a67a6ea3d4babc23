package main

import (
	"strings"

	"example.org/zymase/units"
)

func unitsChapter() Chapter {
	return Chapter{
		Title: "1 Units and text",
		Intro: "A number is nothing without its unit, and some units have one name for two sizes.",
		Problems: []Problem{
			twoGallons(), poundsInThousandGallons(), airAtThousandMetres(), gaugeInTheHall(), sugarInSevenParts(),
		},
	}
}

func twoGallons() Problem {
	return Problem{
		Title: "Two gallons of one name",
		Ask:   "A recipe says “5 gal”. How many litres are that in the US, and how many in an old British book?",
		Given: []string{"5 gal, without a country"},
		Source: Source{Read, "GNU units 2.22 (A. Mariano, 2022), definitions of units, after NIST Handbook 44 appendix C: the US gallon is " +
			"231 cubic inches, 3.785 411 784 L; the imperial gallon is 4.546 09 L. 5 × 3.785 411 784 = 18.927; 5 × 4.546 09 = 22.730."},
		Work: func(w *Working) {
			_, err := units.Parse[units.Volume]("5 gal")
			w.Step("The text as it stands is refused: %v.", err)
			us := must(units.Parse[units.Volume]("5 US gal"))
			imp := must(units.Parse[units.Volume]("5 imp gal"))
			w.Step("5 US gal = %s; 5 imp gal = %s.", us.Text(units.Litre, 4), imp.Text(units.Litre, 4))
			w.Step("The imperial gallon is larger by a factor of %.4f.", must(units.Ratio(imp, us)))
			w.Answer("US", us.In(units.Litre), 3, "L", 18.927, 0.0005)
			w.Answer("imperial", imp.In(units.Litre), 3, "L", 22.730, 0.0005)
		},
	}
}

func poundsInThousandGallons() Problem {
	return Problem{
		Title: "A limit in pounds in a thousand gallons",
		Ask:   "US wine law allows so many pounds of yeast food in 1000 US gallons. How much is that in g/L?",
		Given: []string{"ammonium phosphate: 8 lb/1000 US gal", "yeast cell walls: 3 lb/1000 US gal", "fumaric acid: 25 lb/1000 US gal"},
		Source: Source{Read, "27 CFR 24.246, Materials authorized for the treatment of wine and juice (2015 edition), prints both: " +
			"0.96, 0.36 and 3.0 g/L. T.D. TTB-185 amended the section in 2022; only the conversion is checked here."},
		Work: func(w *Working) {
			w.Step("1 lb = 453.59237 g and 1 US gal = 3.785411784 L, so 1 lb/1000 US gal = %s.",
				units.PoundPerThousandUSGallons.Of(1).Text(units.GramPerLitre, 6))
			phosphate := must(units.Parse[units.MassConcentration]("8 lb/1000 US gal"))
			walls := must(units.Parse[units.MassConcentration]("3 lb/1000 US gal"))
			acid := must(units.Parse[units.MassConcentration]("25 lb/1000 US gal"))
			w.Step("Times 8, 3 and 25: %s, %s, %s.", phosphate.Text(units.GramPerLitre, 4),
				walls.Text(units.GramPerLitre, 4), acid.Text(units.GramPerLitre, 4))
			w.Answer("ammonium phosphate", phosphate.In(units.GramPerLitre), 2, "g/L", 0.96, 0.005)
			w.Answer("yeast cell walls", walls.In(units.GramPerLitre), 2, "g/L", 0.36, 0.005)
			w.Answer("fumaric acid", acid.In(units.GramPerLitre), 1, "g/L", 3.0, 0.05)
		},
	}
}

func airAtThousandMetres() Problem {
	return Problem{
		Title: "The air at 500 m and at 1000 m",
		Ask:   "What is the pressure of the standard atmosphere at these heights, on which every gauge stands?",
		Given: []string{"heights of 500 m and 1000 m above sea level"},
		Source: Source{Read, "ASHRAE Handbook, Fundamentals, chapter Psychrometrics, table 1, Standard atmospheric data (rows as the tests of the library " +
			"PsychroLib carry them): " +
			"95.461 and 89.875 kPa."},
		Work: func(w *Working) {
			low := must(units.AtAltitude(units.Metre.Of(500))).Pressure()
			high := must(units.AtAltitude(units.Metre.Of(1000))).Pressure()
			w.Step("p = 101.325·(1 − 0.0065·H/288.15)^5.25588 kPa (ISO 2533:1975).")
			w.Step("At 500 m %s, at 1000 m %s.", low.Text(units.Kilopascal, 3), high.Text(units.Kilopascal, 3))
			w.Step("Each of these 500 m takes about %s.",
				low.Minus(high).Text(units.PSI, 2))
			w.Answer("at 500 m", low.In(units.Kilopascal), 3, "kPa", 95.461, 0.001)
			w.Answer("at 1000 m", high.In(units.Kilopascal), 3, "kPa", 89.875, 0.001)
		},
	}
}

func gaugeInTheHall() Problem {
	return Problem{
		Title: "From gauge to absolute",
		Ask:   "The regulator of the village hall shows 12 psi. What is the absolute pressure, on which the gas in the drink depends?",
		Given: []string{"gauge 12 psi", "the hall stands at 640 m"},
		Source: Source{ByHand, "12 psi × 6.894757 kPa/psi = 82.737 kPa. 0.0065·640/288.15 = 0.014437; 1 − 0.014437 = 0.985563; " +
			"ln = −0.0145422; × 5.25588 = −0.0764320; exp = 0.926416; × 101.325 = 93.869 kPa. Sum 176.61 kPa."},
		Work: func(w *Working) {
			hall := must(units.AtAltitude(units.Metre.Of(640)))
			shown := must(units.Parse[units.GaugePressure]("12 psi"))
			p := must(hall.Absolute(shown))
			w.Step("12 psi on the gauge are %s.", shown.Text(units.KilopascalGauge, 3))
			w.Step("The air at 640 m presses with %s.", hall.Pressure().Text(units.Kilopascal, 3))
			w.Step("Together %s. At sea level the same gauge would mean %s.", p.Text(units.Kilopascal, 3),
				must(units.Atmosphere{}.Absolute(shown)).Text(units.Kilopascal, 3))
			w.Answer("absolute", p.In(units.Kilopascal), 2, "kPa", 176.61, 0.01)
		},
	}
}

func sugarInSevenParts() Problem {
	return Problem{
		Title: "Seven parts that add up",
		Ask:   "100.3 g of priming sugar go into seven bottles, weighed to 0.1 g. What goes into each, so that nothing is left over?",
		Given: []string{"100.3 g of sugar", "7 bottles", "scale to 0.1 g"},
		Source: Source{ByHand, "1003 steps of 0.1 g over 7: 7 × 143 = 1001, so two parts have 144 steps and five have 143. 2 × 14.4 + 5 × 14.3 = 28.8 + " +
			"71.5 = 100.3."},
		Work: func(w *Working) {
			sugar := must(units.ParseExact[units.Mass]("100.3 g"))
			step := must(units.ParseExact[units.Mass]("0.1 g"))
			parts := must(sugar.Split(7, step))
			sum := parts[0]
			for _, p := range parts[1:] {
				sum = must(sum.Plus(p))
			}
			var words []string
			for _, p := range parts {
				words = append(words, p.String())
			}
			w.Step("The parts in whole steps of the scale: %s.", strings.Join(words, ", "))
			w.Step("Their sum is %s, to the last digit.", sum)
			w.Answer("the first two, each", parts[1].Quantity().In(units.Gram), 1, "g", 14.4, 0)
			w.Answer("the other five, each", parts[2].Quantity().In(units.Gram), 1, "g", 14.3, 0)
			w.Answer("sum", sum.Quantity().In(units.Gram), 1, "g", 100.3, 0)
		},
	}
}
