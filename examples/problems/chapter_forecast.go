package main

import (
	"math"
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

func forecastChapter() Chapter {
	return Chapter{
		Title: "17 When will it be done?",
		Intro: "A plan alone dates a ferment to a factor of two either way. Readings narrow that: a third of them cut the error by a third.",
		Problems: []Problem{
			cellsDouble(), warmerByTheTable(), warmerLevelsOff(), mustOnPaper(), wortByReadings(), lagerByReadings(), wortThatStopped(), gasOfAnHour(),
		},
	}
}

const fosters = "Foster et al., Front. Microbiol. 13 (2022) 747546, supplementary fig. S1, read in another work"

// wort is the all-malt wort of 12 °P that three ale strains fermented.
func wort() kinetics.Start {
	return kinetics.Start{Sugar: units.GramPerLitre.Of(82.24), Nitrogen: units.MilligramPerLitre.Of(200), Yeast: units.GramPerLitre.Of(0.48)}
}

func paceAt(s kinetics.Start, t units.Temperature) *kinetics.Pace {
	return must(kinetics.NewPace(s, kinetics.Hold{Temperature: t}))
}

func afterHours(h float64) time.Duration { return time.Duration(h * float64(time.Hour)) }

func used(s units.Share) float64 { return s.In(units.Fraction) }

func cellsDouble() Problem {
	return Problem{
		Title: "How fast cells grow in the cold",
		Ask:   "How fast do the cells of a must of 280 g/L with plenty of nitrogen grow at 11 °C?",
		Given: []string{"280 g/L of sugar, 250 mg/L of nitrogen, 0.01 g/L of yeast", "11 °C"},
		Source: Source{secondHand, "Coleman, Fish & Block, Appl. Environ. Microbiol. 73 (2007) 5875: an initial growth rate of about " +
			"0.05/h at 11 °C stands in the text."},
		Work: func(w *Working) {
			p := paceAt(kinetics.Start{Sugar: units.GramPerLitre.Of(280), Nitrogen: units.MilligramPerLitre.Of(250), Yeast: units.GramPerLitre.Of(0.01)},
				units.Celsius.Of(11))
			a, b, c := used(p.Used(afterHours(10))), used(p.Used(afterHours(20))), used(p.Used(afterHours(30)))
			w.Step("While they grow, the sugar used goes as exp(µt) − 1: after 10, 20 and 30 h %.3g, %.3g and %.3g %%.", 100*a, 100*b, 100*c)
			mu := math.Log((c-b)/(b-a)) / 10
			w.Step("They double in %.1f h.", math.Ln2/mu)
			w.Answer("growth rate", mu, 3, "/h", 0.05, 0.005)
		},
	}
}

// days95 is when the wort has used 95 % of its sugar.
func days95(t units.Temperature) float64 {
	return must(paceAt(wort(), t).When(units.Percent.Of(95))).Hours() / 24
}

// ratioOfDays is how many times as long it takes at one temperature as at another.
func ratioOfDays(slow, fast units.Temperature) float64 { return days95(slow) / days95(fast) }

func warmerByTheTable() Problem {
	return Problem{
		Title:  "Seven degrees warmer",
		Ask:    "How many times as long does a wort of 12 °P take at 15 °C as at 22 °C?",
		Given:  []string{"an ale strain, 15 and 22 °C"},
		Source: Source{secondHand, fosters + ": days to 1.010 go by 49.5 kJ/mol. exp(49.5/0.008314 × (1/288.15 − 1/295.15)) = 1.63."},
		Work: func(w *Working) {
			w.Step("Days to 95 %% of its sugar: %.1f at 15 °C, %.1f at 22 °C.", days95(units.Celsius.Of(15)), days95(units.Celsius.Of(22)))
			w.Step("The model's own slope is 55 kJ/mol (49 to 63 by its authors' error).")
			w.Answer("ratio of days", ratioOfDays(units.Celsius.Of(15), units.Celsius.Of(22)), 2, "", 1.63, 0.12)
		},
	}
}

func warmerLevelsOff() Problem {
	return Problem{
		Title:  "Eight degrees more do less",
		Ask:    "And at 22 °C as at 30 °C?",
		Given:  []string{"the same wort, 22 and 30 °C"},
		Source: Source{secondHand, fosters + ": 17.9 kJ/mol above 22 °C. exp(17.9/0.008314 × (1/295.15 − 1/303.15)) = 1.21."},
		Work: func(w *Working) {
			w.Step("Days to 95 %% of its sugar: %.1f at 22 °C, %.1f at 30 °C.", days95(units.Celsius.Of(22)), days95(units.Celsius.Of(30)))
			w.Step("One constant activation energy fails above 22 °C: strains level off, and each in its own way.")
			w.Answer("ratio of days", ratioOfDays(units.Celsius.Of(22), units.Celsius.Of(30)), 2, "", 1.21, 0.05)
		},
	}
}

func mustOnPaper() Problem {
	return Problem{
		Title: "A must, from the plan alone",
		Ask:   "A synthetic must of 240 g/L with 300 mg/L of nitrogen at 28 °C: when is it dry?",
		Given: []string{"240 g/L, 300 mg/L, 28 °C", "a million cells a millilitre, 0.04 g/L"},
		Source: Source{secondHand, "Varela, Pizarro & Agosin, Appl. Environ. Microbiol. 70 (2004) 3392, table 1: 170 ± 12 h to dryness, " +
			"which is not defined there: ln 170 = 5.136. A plan is known to a factor of two, 0.69."},
		Work: func(w *Working) {
			f := kinetics.NewForecast(paceAt(kinetics.Start{Sugar: units.GramPerLitre.Of(240), Nitrogen: units.MilligramPerLitre.Of(300),
				Yeast: units.GramPerLitre.Of(0.04)}, units.Celsius.Of(28))).Fit()
			t := must(f.When(units.Percent.Of(99)))
			w.Step("Nine in ten between %.0f and %.0f h, half between %.0f and %.0f h.", t.Low90.Hours(), t.High90.Hours(), t.Low50.Hours(), t.High50.Hours())
			w.Step("The middle is %.0f h.", t.Median.Hours())
			w.Answer("middle, as the logarithm of the hours", math.Log(t.Median.Hours()), 2, "", 5.136, 0.4)
		},
	}
}

// learnt is the forecast of a wort from printed gravities.
func learnt(p *kinetics.Pace, original, end float64, readings [][2]float64) *kinetics.Fit {
	f := kinetics.NewForecast(p)
	for _, r := range readings {
		share := must(units.Fraction.Try(math.Max((original-r[1])/(original-end), 0)))
		must(0, f.Add(afterHours(r[0]), share, units.Percent.Of(2)))
	}
	return f.Fit()
}

func wortByReadings() Problem {
	return Problem{
		Title:  "The fifth day of a wort, from its first three",
		Ask:    "A wort at 15 °C read 1.0429, and 1.0395, 1.0321 and 1.0238 after one, two and three days. What will it read after five?",
		Given:  []string{"the end of the same wort, 1.0064", "15 °C"},
		Source: Source{secondHand, fosters + ": 1.0116 after 120 h."},
		Work: func(w *Working) {
			const original, end = 1.0429, 1.0064
			f := learnt(paceAt(wort(), units.Celsius.Of(15)), original, end, [][2]float64{{24, 1.0395}, {48, 1.0321}, {72, 1.0238}})
			b := f.Used(afterHours(120))
			at := func(s units.Share) float64 { return original - used(s)*(original-end) }
			w.Step("Nine in ten between %.4f and %.4f.", at(b.High90), at(b.Low90))
			w.Step("It is dry after %.1f days.", must(f.When(units.Percent.Of(99))).Median.Hours()/24)
			w.Answer("after five days", at(b.Median), 4, "", 1.0116, 0.002)
		},
	}
}

func lagerByReadings() Problem {
	return Problem{
		Title: "A lager's fifth day, from its first two",
		Ask:   "An industrial lager of 14.1 °P that starts at 10 °C has used 15.0 % of what it will after a day, and 44.9 % after two. And after five?",
		Given: []string{"130 g/L of extract, 8 in 10 of it fermentable: 105 g/L", "10 °C at the start"},
		Source: Source{secondHand, "Reid et al., Fermentation 7 (2021) 13, table 2, data set 5 (19 trials, 228 points; the logistic of " +
			"ASBC Yeast-14): 98.8 % of its end on the fifth day."},
		Work: func(w *Working) {
			s := kinetics.Start{Sugar: units.GramPerLitre.Of(105), Nitrogen: units.MilligramPerLitre.Of(200), Yeast: units.GramPerLitre.Of(0.6)}
			p := paceAt(s, units.Celsius.Of(10))
			w.Step("By the plan alone %s.", p.Used(afterHours(120)).Text(units.Percent, 0))
			f := kinetics.NewForecast(p)
			must(0, f.Add(afterHours(24), units.Percent.Of(15), units.Percent.Of(2)))
			must(0, f.Add(afterHours(48), units.Percent.Of(44.9), units.Percent.Of(2)))
			b := f.Fit().Used(afterHours(120))
			w.Step("By two readings nine in ten between %s and %s: it ran far ahead of a plan at 10 °C, and the forecast stays careful.",
				b.Low90.Text(units.Percent, 0), b.High90.Text(units.Percent, 0))
			w.Answer("used after five days", b.Median.In(units.Percent), 0, "%", 98.8, 12)
		},
	}
}

func wortThatStopped() Problem {
	return Problem{
		Title:  "A wort that stopped",
		Ask:    "At 42 °C a wort of 1.0448 read 1.0374, 1.0355, 1.0352 and 1.0350 after one to four days. Has it stopped, and since when?",
		Given:  []string{"the end of the same wort at 30 °C, 1.0064", "a model that ends at 35 °C"},
		Source: Source{secondHand, fosters + ": 1.0349 on the fifth day, the last of the series."},
		Work: func(w *Working) {
			const original, end = 1.0448, 1.0064
			f := kinetics.NewForecast(paceAt(wort(), units.Celsius.Of(35)))
			for i, g := range []float64{1.0374, 1.0355, 1.0352, 1.0350} {
				must(0, f.Add(afterHours(24*float64(i+1)), must(units.Fraction.Try((original-g)/(original-end))), units.Percent.Of(2)))
				since, stopped := f.Stalled()
				if !stopped {
					w.Step("After %d d: not called stopped.", i+1)
				} else {
					w.Step("After %d d: stopped since %.0f h.", i+1, since.Hours())
				}
			}
			b := f.Fit().Used(afterHours(120))
			w.Step("Chance that it stays below nine tenths: %s.", f.Fit().Stops(units.Percent.Of(90)).Text(units.Percent, 0))
			w.Answer("gravity on the fifth day", original-used(b.Median)*(original-end), 4, "", 1.0349, 0.002)
		},
	}
}

func gasOfAnHour() Problem {
	return Problem{
		Title: "Gas and heat of an hour",
		Ask: "A must of 200 g/L at 24 °C had lost 29.4 g/L after 21 h and 77.4 g/L after 45 h. How much CO2 does the hour half way " +
			"between give, and the fastest?",
		Given:  []string{"0.4716 g of CO2 from a gram of sugar, 94.3 g/L in all", "425 mg/L of nitrogen, a million cells a millilitre"},
		Source: Source{secondHand, "Leale et al. 2023, synthetic must MS425, the mean of four rounds: (77.4 − 29.4)/24 = 2.0 g/L in each hour between, as a mean."},
		Work: func(w *Working) {
			const gas = 94.3 // g/L
			f := kinetics.NewForecast(paceAt(kinetics.Start{Sugar: units.GramPerLitre.Of(200), Nitrogen: units.MilligramPerLitre.Of(425),
				Yeast: units.GramPerLitre.Of(0.04)}, units.Celsius.Of(24)))
			must(0, f.Add(afterHours(21), must(units.Fraction.Try(29.4/gas)), units.Percent.Of(3)))
			must(0, f.Add(afterHours(45), must(units.Fraction.Try(77.4/gas)), units.Percent.Of(3)))
			when, share := f.Fit().Fastest()
			w.Step("Fastest after %.0f h by the model's shape: %.1f g/L.", when.Median.Hours(), gas*used(share.High90))
			heat := must(ferment.UsualHeat().CoolingPower(must(units.Gram.Try(200*used(share.Median))), time.Hour))
			w.Step("A litre of it gives %s then: what cooling has to take.", heat.Text(units.Watt, 1))
			w.Answer("CO2 in the hour half way", gas*used(f.Fit().InAnHour(afterHours(33)).Median), 1, "g/L", 2.0, 0.3)
			w.Caution(ferment.GasCaution.Text())
		},
	}
}
