package main

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

func kegChapter() Chapter {
	return Chapter{
		Title: "11 CO2 in the drink: gauge, cold and altitude",
		Intro: "How much gas a drink holds depends on its temperature and the absolute pressure over it; the gauge also knows where it stands.",
		Problems: []Problem{
			printedBeerChart(), europeanChart(), lagerAndChampagne(), sparklingWine(), regulatorForTheKeg(), howColdMustItBe(),
			blendOfGases(), stillWineLimit(), kegInTheCold(), burstOfPressure(), twoKegsOneRegulator(),
		},
	}
}

// sparkler is the club's drink: 4.6 % vol, dry.
func sparkler() (gravity.Solution, carbonation.Liquid) {
	s := must(carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{}))
	return s, must(carbonation.NewLiquid(s))
}

func printedBeerChart() Problem {
	return Problem{
		Title: "The chart on the brewery's wall",
		Ask: "How many volumes does beer hold at 38 °F under 12 psi, at 36 °F under 9 psi and at 45 °F under 12 psi, and which pressure gives 2.57 " +
			"volumes at 38 °F?",
		Given: []string{"gauge at sea level"},
		Source: Source{Read, "BrewingTechniques 2 (1994) no. 1, table I, Guideline for degrees of carbonation: 2.57 (38 °F, 12 psi), 2.38 and 2.26 " +
			"volumes. The printed columns step unevenly; the fit is within 0.04 of all 292 points."},
		Work: func(w *Working) {
			for _, row := range []struct {
				t     units.Temperature
				p     units.GaugePressure
				print float64
			}{{units.Fahrenheit.Of(38), units.PSIGauge.Of(12), 2.57}, {units.Fahrenheit.Of(36), units.PSIGauge.Of(9), 2.38},
				{units.Fahrenheit.Of(45), units.PSIGauge.Of(12), 2.26}} {
				v := must(dioxide.BeerChartVolumes(row.t, must(units.Atmosphere{}.Absolute(row.p))))
				name := row.t.Text(units.Fahrenheit, 0) + ", " + row.p.Text(units.PSIGauge, 0)
				w.Step("%s is %s and %s: %s.", name, row.t.Text(units.Celsius, 1), row.p.Text(units.BarGauge, 2), v.Text(units.VolumesCO2, 3))
				w.Answer(name, v.In(units.VolumesCO2), 2, "volumes", row.print, 0.04)
			}
			p := must(dioxide.BeerChartPressure(units.Fahrenheit.Of(38), units.VolumesCO2.Of(2.57)))
			w.Answer("pressure for 2.57 volumes", units.Atmosphere{}.Gauge(p).In(units.PSIGauge), 1, "psi", 12, 0.4)
		},
	}
}

func europeanChart() Problem {
	return Problem{
		Title: "The chart in grams",
		Ask:   "A European chart goes by gauge pressure in bar. What does beer hold at 10 °C under 1.0 bar, and at 5 °C under 0.5 bar?",
		Given: []string{"gauge 1.0 bar at 10 °C; 0.5 bar at 5 °C; sea level, 1.013 bar"},
		Source: Source{Practice, "One-page chart of CO2 in beer in g/L, 0.1 bar steps, seen on a site for sharing documents; neither author nor origin is " +
			"stated: 4.5 and 4.0 g/L. (The exponential form behind the function is recalled from memory; it reproduces the chart.)"},
		Work: func(w *Working) {
			a := must(dioxide.EuropeanBeerContent(units.Celsius.Of(10), units.Bar.Of(2.013)))
			b := must(dioxide.EuropeanBeerContent(units.Celsius.Of(5), units.Bar.Of(1.513)))
			w.Step("%s and %s.", a.Text(units.GramCO2PerLitre, 3), b.Text(units.GramCO2PerLitre, 3))
			w.Step("In volumes: %s and %s.", carbonation.RealVolume.Volumes(a).Text(units.VolumesCO2, 2), carbonation.RealVolume.Volumes(b).Text(units.VolumesCO2, 2))
			w.Answer("10 °C, 1.0 bar", a.In(units.GramCO2PerLitre), 1, "g/L", 4.5, 0.05)
			w.Answer("5 °C, 0.5 bar", b.In(units.GramCO2PerLitre), 1, "g/L", 4.0, 0.05)
		},
	}
}

func lagerAndChampagne() Problem {
	return Problem{
		Title: "A lager and a champagne, measured",
		Ask:   "How much CO2 do a lager at 6 °C and a champagne at 10 °C hold under a bar of CO2?",
		Given: []string{"lager, taken as 5 % vol and 4 °P, 6 °C", "champagne, taken as 12.5 % vol and 1 °P, 10 °C", "1 bar of CO2 and the vapours"},
		Source: Source{Read, "G. Liger-Belair and others on CO2 in beer and champagne (PMC8047704), table 1: Henry constants of about 2.4 and 2.1 g/(L·bar). " +
			"Two digits and an approximately sign: 4 % is allowed."},
		Work: func(w *Working) {
			lager := must(carbonation.NewLiquid(must(carbonation.DrinkOf(units.PercentVolume.Of(5), units.DegreePlato.Of(4)))))
			wine := must(carbonation.NewLiquid(must(carbonation.DrinkOf(units.PercentVolume.Of(12.5), units.DegreePlato.Of(1)))))
			a := must(lager.Content(units.Kilopascal.Of(100.9), units.Celsius.Of(6)))
			b := must(wine.Content(units.Kilopascal.Of(101.2), units.Celsius.Of(10)))
			w.Step("CO2 dissolves in the water of the drink; ethanol and extract take its place.")
			w.Step("Lager %s, champagne %s; pure water would hold %s and %s.", a.Text(units.GramCO2PerLitre, 3), b.Text(units.GramCO2PerLitre, 3),
				must(carbonation.Liquid{}.Content(units.Kilopascal.Of(100.9), units.Celsius.Of(6))).Text(units.GramCO2PerLitre, 2),
				must(carbonation.Liquid{}.Content(units.Kilopascal.Of(101.2), units.Celsius.Of(10))).Text(units.GramCO2PerLitre, 2))
			w.Answer("lager", a.In(units.GramCO2PerLitre), 1, "g/L", 2.4, 0.1)
			w.Answer("champagne", b.In(units.GramCO2PerLitre), 1, "g/L", 2.1, 0.084)
		},
	}
}

func sparklingWine() Problem {
	return Problem{
		Title: "Sparkling wine before the law",
		Ask: "A sparkling wine of 12 % vol with 20 g/L of sugar shows 3.0 bar absolute at 20 °C. How much CO2 is that by the method of analysis that EU " +
			"law had from 1990 to 2009?",
		Given: []string{"3.0 bar absolute at 20 °C", "12 % vol, 20 g/L sugar"},
		Source: Source{ByHand, "Formula read in Regulation (EEC) 2676/90 (in force until 2009): 0.00001951 × 300,000 × (0.86 − 0.01 × 12) × (1 − " +
			"0.00144 × 20) = 5.853 × 0.74 × 0.9712 = 4.2065 g/L."},
		Work: func(w *Working) {
			c := must(dioxide.WineContent(units.Bar.Of(3), units.PercentVolume.Of(12), units.GramPerLitre.Of(20)))
			w.Step("%s, %s.", c.Text(units.GramCO2PerLitre, 4), carbonation.RealVolume.Volumes(c).Text(units.VolumesCO2, 2))
			back := must(dioxide.WinePressure(c, units.PercentVolume.Of(12), units.GramPerLitre.Of(20)))
			w.Step("The other way round it needs %s again.", back.Text(units.Bar, 3))
			w.Answer("content", c.In(units.GramCO2PerLitre), 4, "g/L", 4.2065, 0.00006)
		},
	}
}

func regulatorForTheKeg() Problem {
	return Problem{
		Title: "What to set on the regulator",
		Ask:   "The sparkler of 4.6 % vol shall hold 5.7 g/L of CO2 at 4 °C. Which pressure does it need, and what does the gauge show in the hall at 640 m?",
		Given: []string{"4.6 % vol, dry", "5.7 g/L, 4 °C", "640 m"},
		Source: Source{ByHand, "Weiss 1974 table III, 4 °C: 0.06649 mol/(kg·atm) × 44.009 = 2.926 g/(kg·atm). A litre of the drink holds 955.3 g of " +
			"water: 2.795 g/(L·atm). 5.7/2.795 = 2.039 atm of fugacity; " +
			"coefficient 0.987 (B −145.4 cm³/mol): 2.066 atm = 209.3 kPa; vapours 0.8 + 0.1, and 0.3 for the pressure on the liquid: 210.5 kPa. Less 93.87 " +
			"kPa of air: 116.7 kPa = 16.9 psi."},
		Work: func(w *Working) {
			_, drink := sparkler()
			c := units.GramCO2PerLitre.Of(5.7)
			p := must(drink.Pressure(c, units.Celsius.Of(4)))
			hall := must(units.AtAltitude(units.Metre.Of(640)))
			w.Step("%s are %s.", c.Text(units.GramCO2PerLitre, 1), carbonation.RealVolume.Volumes(c).Text(units.VolumesCO2, 2))
			w.Step("The drink needs %s over it.", p.Text(units.Kilopascal, 1))
			w.Step("At sea level the gauge would show %s, in the hall %s: the same drink.", units.Atmosphere{}.Gauge(p).Text(units.PSIGauge, 1),
				hall.Gauge(p).Text(units.PSIGauge, 1))
			w.Answer("absolute", p.In(units.Kilopascal), 1, "kPa", 210.5, 1.5)
			w.Answer("gauge in the hall", hall.Gauge(p).In(units.PSIGauge), 1, "psi", 16.9, 0.2)
			w.Caution(carbonation.PressureVessel.Text())
		},
	}
}

func howColdMustItBe() Problem {
	return Problem{
		Title: "How cold must the keg be?",
		Ask:   "A regulator is fixed at 1.0 bar (gauge) at sea level. At which temperature does water hold 5.0 g/L under it?",
		Given: []string{"pure water, 5.0 g/L", "2.01325 bar absolute"},
		Source: Source{ByHand, "2.01325 bar less 0.009 of vapour is 1.978 atm; coefficient 0.988: 1.954 atm. A litre (1 kg) of water then needs " +
			"5.0/44.009/1.954 = 0.05814 mol/(kg·atm). " +
			"Weiss 1974 table III: 6 °C 0.06177, 8 °C 0.05752; straight between them 7.7 °C."},
		Work: func(w *Working) {
			p := must(units.Atmosphere{}.Absolute(units.BarGauge.Of(1)))
			t := must(carbonation.Liquid{}.Temperature(units.GramCO2PerLitre.Of(5), p))
			w.Step("Over the water stand %s, of which the water's own vapour takes %s at 5 °C.", p.Text(units.Kilopascal, 2),
				must(carbonation.WaterVapourPressure(units.Celsius.Of(5))).Text(units.Kilopascal, 2))
			w.Step("At 5 °C it would hold %s, at 10 °C %s; solved for the temperature: %s.",
				must(carbonation.Liquid{}.Content(p, units.Celsius.Of(5))).Text(units.GramCO2PerLitre, 2),
				must(carbonation.Liquid{}.Content(p, units.Celsius.Of(10))).Text(units.GramCO2PerLitre, 2), t.Text(units.Celsius, 2))
			w.Answer("temperature", t.In(units.Celsius), 1, "°C", 7.7, 0.2)
		},
	}
}

func blendOfGases() Problem {
	return Problem{
		Title: "A long line on mixed gas",
		Ask:   "A dry drink of 4.6 % vol needs 2.10 bar absolute under pure CO2 at 4 °C. Which pressure of a blend of 60 % CO2 and 40 % nitrogen keeps its gas?",
		Given: []string{"4.6 % vol, dry, 5.7 g/L of CO2 at 4 °C", "60 % CO2 by volume"},
		Source: Source{ByHand, "Dalton: under pure CO2 the drink takes 210.5 kPa (from the table of Weiss 1974), of which 0.9 are vapours. The CO2 must " +
			"press with 210.5 − 0.9 = 209.6 kPa, so the dry blend with 209.6/0.60 = 349.3 kPa and 0.9 kPa of vapours: 350.2 kPa."},
		Work: func(w *Working) {
			_, drink := sparkler()
			c := units.GramCO2PerLitre.Of(5.7)
			pure := must(drink.Pressure(c, units.Celsius.Of(4)))
			blend := must(drink.MixedGasPressure(c, units.Percent.Of(60), units.Celsius.Of(4)))
			w.Step("Pure CO2 %s, the blend %s.", pure.Text(units.Kilopascal, 1), blend.Text(units.Kilopascal, 1))
			share := must(drink.BlendFor(c, blend, units.Celsius.Of(4)))
			w.Step("The other way round, that pressure asks for %s of CO2.", share.Text(units.Percent, 1))
			w.Answer("blend", blend.In(units.Kilopascal), 0, "kPa", 350.2, 2.5)
		},
	}
}

func stillWineLimit() Problem {
	return Problem{
		Title:  "Where still wine ends",
		Ask:    "US law taxes a wine as still up to 0.392 g of CO2 in 100 mL. How many volumes is that?",
		Given:  []string{"0.392 g/100 mL"},
		Source: Source{ByHand, "Limit read in 27 CFR 24.245 (2015 edition). 3.92 g/L / 1.9770 g/L = 1.983 volumes (real gas); / 1.9635 = 1.996 (ideal)."},
		Work: func(w *Working) {
			limit := must(units.Parse[units.CarbonDioxideContent]("0.392 g/100 mL"))
			w.Step("0.392 g/100 mL is %s.", limit.Text(units.GramCO2PerLitre, 2))
			for _, l := range carbonation.ContentLimits() {
				if l.Most.In(units.GramCO2PerLitre) == limit.In(units.GramCO2PerLitre) {
					w.Step("%s: at most %s (%s; %s). Check the law in force.", l.Drink, l.Most.Text(units.GramCO2PerLitre, 2), l.Law.Source, l.Law.Grade)
				}
			}
			w.Answer("real gas", carbonation.RealVolume.Volumes(limit).In(units.VolumesCO2), 3, "volumes", 1.983, 0.0005)
			w.Answer("ideal gas", carbonation.IdealVolume.Volumes(limit).In(units.VolumesCO2), 3, "volumes", 1.996, 0.0005)
		},
	}
}

func kegInTheCold() Problem {
	return Problem{
		Title: "How long until it sparkles?",
		Ask:   "A keg held 1.5 g/L; two days later 3.0 g/L; at rest it would hold 6.0. How fast is it, and when does it reach 5.5 g/L?",
		Given: []string{"1.5 g/L at the start, 3.0 after 48 h", "6.0 g/L at rest"},
		Source: Source{ByHand, "First order: k = ln((6 − 1.5)/(6 − 3))/48 h = 0.405465/48 = 0.0084472 1/h, 0.84472 % an hour. From 1.5 to 5.5: " +
			"ln(4.5/0.5)/k = 2.197225/0.0084472 = 260.1 h. " +
			"A straight line would have promised it after 128 h."},
		Work: func(w *Working) {
			start, then, rest := units.GramCO2PerLitre.Of(1.5), units.GramCO2PerLitre.Of(3), units.GramCO2PerLitre.Of(6)
			rate := must(carbonation.RateFromReadings(start, then, rest, 48*time.Hour))
			keg := carbonation.Keg{Content: start, Target: units.GramCO2PerLitre.Of(5.5), Rate: rate}
			t := must(keg.Until(rest))
			w.Step("The rate is %.5f of the distance an hour.", rate.In(units.PerHour))
			w.Step("After a week it holds %s.", must(keg.After(rest, 7*24*time.Hour)).Text(units.GramCO2PerLitre, 2))
			w.Answer("rate", 100*rate.In(units.PerHour), 4, "% an hour", 0.84472, 0.00005)
			w.Answer("time to 5.5 g/L", t.Hours(), 1, "h", 260.1, 0.1)
		},
	}
}
