package main

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/pipe"
	"example.org/zymase/units"
)

func serviceChapter() Chapter {
	return Chapter{
		Title: "13 Heat treatment, lines, cylinders and rooms",
		Intro: "Gas is bought by weight, spent by volume and dangerous by the room.",
		Problems: []Problem{
			pasteurisationUnits(), unitsOverALog(), peakOverALog(), frictionInAPipe(), lengthOfLine(), fillAndVent(), flushingAKeg(),
			kegsFromACylinder(), chargeInACellar(), workplaceLimit(), airingTheCellar(),
		},
	}
}

func pasteurisationUnits() Problem {
	return Problem{
		Title: "Pasteurisation units",
		Ask:   "How many units do 10 minutes at 62 °C give, by the two forms in use?",
		Given: []string{"10 min at 62 °C"},
		Source: Source{ByHand, "Del Vecchio, Dayharsh & Baselt, Proc. Am. Soc. Brew. Chem. (1951) 45: 1.393^(62−60) = 1.940449 a minute, 19.40 units. " +
			"Handbooks: 10^(2/7) = 1.930698, 19.31 units."},
		Work: func(w *Working) {
			at := func(l carbonation.Lethality, t units.Temperature) float64 { return must(l.Rate(t)).In(units.PU) }
			old, new := at(carbonation.DelVecchio(), units.Celsius.Of(62)), at(carbonation.Handbook(), units.Celsius.Of(62))
			w.Step("%s: %.4f a minute; %s: %.4f.", carbonation.DelVecchio(), old, carbonation.Handbook(), new)
			hotOld, hotNew := at(carbonation.DelVecchio(), units.Celsius.Of(72)), at(carbonation.Handbook(), units.Celsius.Of(72))
			w.Step("At 72 °C they are %.1f and %.1f: %.0f %% apart.", hotOld, hotNew, 100*(hotOld/hotNew-1))
			w.Answer("form of 1951", 10*old, 2, "PU", 19.40, 0.005)
			w.Answer("handbooks", 10*new, 2, "PU", 19.31, 0.005)
		},
	}
}

func unitsOverALog() Problem {
	return Problem{
		Title: "Units over a whole bath",
		Ask:   "A bottle warms from 20 to 60 °C in 20 minutes, stays for 15 and cools to 20 °C in 20. How many units does it get?",
		Given: []string{"log: 0 min 20 °C, 20 min 60 °C, 35 min 60 °C, 55 min 20 °C", "10^((T − 60)/7)"},
		Source: Source{ByHand, "Holding 15 × 1 = 15. Each ramp is 2 K a minute: the integral of 10^((T − 60)/7) is (7/ln 10)/2 × (1 − 10^(−40/7)) = " +
			"3.0401/2 = 1.520. Together 18.04."},
		Work: func(w *Working) {
			log := []carbonation.LoggedTemperature{{At: 0, Temperature: units.Celsius.Of(20)}, {At: 20 * time.Minute, Temperature: units.Celsius.Of(60)},
				{At: 35 * time.Minute, Temperature: units.Celsius.Of(60)}, {At: 55 * time.Minute, Temperature: units.Celsius.Of(20)}}
			p := must(carbonation.Handbook().Pasteurise(log, nil))
			w.Step("On a straight leg the rate goes from r1 to r2: (r2 − r1)·Δt/ln(r2/r1). At 20 °C it is %.7f a minute, at 60 °C %.0f.",
				must(carbonation.Handbook().Rate(units.Celsius.Of(20))).In(units.PU), must(carbonation.Handbook().Rate(units.Celsius.Of(60))).In(units.PU))
			w.Step("Warming %.3f, holding %.3f, cooling %.3f.", p.Warming.In(units.PU), p.Holding.In(units.PU), p.Cooling.In(units.PU))
			w.Answer("units", p.Units.In(units.PU), 2, "PU", 18.04, 0.005)
			w.Cautioned(p.Cautions)
		},
	}
}

func frictionInAPipe() Problem {
	return Problem{
		Title: "Friction in a pipe",
		Ask:   "What is Darcy's friction factor at a Reynolds number of 1000, and of 100,000 in a smooth pipe and in one with a roughness of a thousandth?",
		Given: []string{"Re 1000; Re 100,000; roughness 0 and 0.001 of the diameter"},
		Source: Source{ByHand, "Laminar 64/1000 = 0.0640. Colebrook's equation 1/√f = −2·log(ε/3.7 + 2.51/(Re·√f)), iterated: smooth 0.01799 " +
			"(1/√f = 7.455 = 2·log(100000 × 0.13413/2.51)), rough 0.02217 (6.716 = −2·log(0.00027027 + 0.00016857)). " +
			"Haaland's form, which the library takes, is within 1.5 % of it."},
		Work: func(w *Working) {
			laminar := must(pipe.FrictionFactor(1000, 0))
			smooth := must(pipe.FrictionFactor(1e5, 0))
			rough := must(pipe.FrictionFactor(1e5, 0.001))
			w.Step("Below Re 2300 the flow is laminar, 64/Re; above it Haaland's form stands for Colebrook's, without iteration.")
			w.Step("Haaland: 1/√f = −1.8·log((ε/3.7)^1.11 + 6.9/Re).")
			w.Answer("laminar", laminar, 4, "", 0.0640, 0.00005)
			w.Answer("turbulent, smooth", smooth, 4, "", 0.01799, 0.00027)
			w.Answer("turbulent, rough", rough, 4, "", 0.02217, 0.00033)
		},
	}
}

func lengthOfLine() Problem {
	return Problem{
		Title: "How long is the line?",
		Ask:   "Water of 20 °C shall flow at a US gallon a minute through a smooth line of 3/16 in from 1.0 bar, level with the tap. How long is the line?",
		Given: []string{"bore 3/16 in, smooth", "3.785 L/min", "1.0 bar (gauge)"},
		Source: Source{ByHand, "Bore 4.7625 mm, area 17.814 mm²; speed 63.09 mL a second over it = 3.5416 m/s. Re = 998.2 × 3.5416 × 0.0047625/0.001002 " +
			"= 16803. Haaland: 1/√f = 1.8·log(16803/6.9) = 6.0957, f = 0.02691. " +
			"Velocity head 998.2 × 3.5416²/2 = 6260 Pa; friction 0.02691/0.0047625 × 6260 = 35.37 kPa/m. (100 − 6.26)/35.37 = 2.650 m."},
		Work: func(w *Working) {
			water := must(gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Mass{}))
			line := carbonation.Line{Bore: must(units.Inch.Try(3.0 / 16))}
			at := must(line.Balance(water, units.Celsius.Of(20), units.BarGauge.Of(1), must(units.LitrePerMinute.Find("US gal/min")).Of(1)))
			w.Step("Speed %s, Reynolds number %.0f, viscosity %s.", at.Speed.Text(units.MetrePerSecond, 3), at.Reynolds,
				must(carbonation.Viscosity(water, units.Celsius.Of(20))).Text(units.MillipascalSecond, 4))
			w.Step("Fittings and the drink's own speed take %s, each metre %s (%.2f psi a foot).", at.Fittings.Text(units.KilopascalGauge, 2),
				at.PerMetre.Text(units.KilopascalGauge, 2),
				at.PerMetre.In(units.PSIGauge)*must(units.Metre.Find("ft")).Of(1).In(units.Metre))
			w.Step("The trade counts %.1f psi a foot for it, at any flow.",
				must(carbonation.PracticeResistance(line.Bore)).In(units.PSIGauge)*must(units.Metre.Find("ft")).Of(1).In(units.Metre))
			w.Step("That is twice the friction of a smooth line: a figure of practice, whose flow and wall no source states. Cut the line long, try it, shorten it.")
			w.Answer("length", at.Length.In(units.Metre), 2, "m", 2.650, 0.01)
		},
	}
}

func fillAndVent() Problem {
	return Problem{
		Title:  "Five times filled and vented",
		Ask:    "A keg full of air is filled to 2.0 bar with CO2 and vented, five times, at sea level. How much of the air is left, and how much oxygen?",
		Given:  []string{"19 L, 20 °C", "2.0 bar (gauge), 5 rounds, 101.325 kPa"},
		Source: Source{ByHand, "(101.325/301.325)^5 = 0.336265^5 = 0.0042995, 0.430 %. Oxygen 0.209476 × 0.0042995 = 901 ppm."},
		Work: func(w *Working) {
			p := must(carbonation.FillAndVent(units.Litre.Of(19), units.Celsius.Of(20), units.BarGauge.Of(2), 5, units.Atmosphere{}))
			one := must(carbonation.FillAndVent(units.Litre.Of(19), units.Celsius.Of(20), units.BarGauge.Of(2), 1, units.Atmosphere{}))
			w.Step("One round leaves %s of the air; five spend %s of CO2.", one.Air.Text(units.Percent, 1), p.Gas.Text(units.Gram, 0))
			w.Step("To come below 100 ppm it takes %d rounds.", must(carbonation.RoundsFor(units.PartPerMillion.Of(100), units.BarGauge.Of(2), units.Atmosphere{})))
			w.Answer("air left", p.Air.In(units.Percent), 3, "%", 0.430, 0.0005)
			w.Answer("oxygen", p.Oxygen.In(units.PartPerMillion), 0, "ppm", 901, 1)
			w.Cautioned(p.Cautions)
		},
	}
}

func flushingAKeg() Problem {
	return Problem{
		Title:  "Flushing with a stream",
		Ask:    "CO2 flows through a keg, well mixed, until three times its volume went in. How much of the air is left?",
		Given:  []string{"19 L, 20 °C, three volumes"},
		Source: Source{ByHand, "exp(−3) = 4.979 %. Gas: 3 × 19 L × 1.839 g/L = 104.8 g."},
		Work: func(w *Working) {
			p := must(carbonation.Flush(units.Litre.Of(19), units.Celsius.Of(20), 3, units.Atmosphere{}))
			w.Step("Well mixed, each volume of gas leaves 1/e of the air: exp(−V). Without any mixing one volume would do.")
			w.Step("Oxygen %.0f ppm; CO2 spent %s.", p.Oxygen.In(units.PartPerMillion), p.Gas.Text(units.Gram, 1))
			w.Answer("air left", p.Air.In(units.Percent), 3, "%", 4.979, 0.0005)
			w.Answer("gas", p.Gas.In(units.Gram), 1, "g", 104.8, 0.1)
			w.Cautioned(p.Cautions)
		},
	}
}

func kegsFromACylinder() Problem {
	return Problem{
		Title: "How many kegs from a cylinder?",
		Ask:   "A charge of 2.268 kg (5 lb) serves kegs of 19 L with 18.5 L of drink, which take up 4.27 g/L and are pushed out at 4 °C under 1.0 bar. How many?",
		Given: []string{"keg 19 L, drink 18.5 L", "uptake 4.27 g/L", "serving 1.0 bar (gauge) at 4 °C, sea level"},
		Source: Source{ByHand, "Uptake 18.5 × 4.27 = 79.0 g. The empty keg holds 19 L of gas at 2.013 bar and 4 °C: 201,325 Pa × 0.019/(8.314463 × " +
			"277.15) = 1.6600 mol, 73.1 g ideal; divided by Z = 0.987: 74.0 g. Together 153 g: 2268/153 = 14.8, so 14 whole kegs."},
		Work: func(w *Working) {
			k := carbonation.KegService{Volume: units.Litre.Of(19), Drink: units.Litre.Of(18.5), Temperature: units.Celsius.Of(4),
				Serving: units.BarGauge.Of(1), Carbonate: units.GramCO2PerLitre.Of(4.27)}
			use := must(k.Kegs(units.Gram.Of(2268), units.Atmosphere{}))
			w.Step("For each keg: carbonating %s, serving %s.", use.Carbonate.Text(units.Gram, 1), use.Serve.Text(units.Gram, 1))
			w.Step("After the last whole keg %s are left.", use.Left.Text(units.Gram, 0))
			w.Answer("each keg", use.Each.In(units.Gram), 0, "g", 153, 0.7)
			w.Answer("kegs", float64(use.Kegs), 0, "", 14, 0)
			w.Cautioned(use.Cautions)
		},
	}
}

func chargeInACellar() Problem {
	return Problem{
		Title: "A cylinder lets go in the cellar",
		Ask:   "A cylinder's whole charge of 2.268 kg (5 lb) escapes into a closed room of 30 m³ at 20 °C. What is in the air?",
		Given: []string{"2.268 kg, 30 m³, 20 °C, sea level"},
		Source: Source{ByHand, "2.268 × 0.5437 = 1.2331 m³ of gas in 30 m³: 4.110 %, in place of as much air; with what is left of the 420 ppm that were " +
			"there, 420 × 0.9589 = 403, 41,505 ppm. Above 40,000 ppm life is in immediate danger (NIOSH 1994, read)."},
		Work: func(w *Working) {
			r := must(carbonation.Released(units.Kilogram.Of(2.268), units.CubicMetre.Of(30), units.Celsius.Of(20), units.PartPerMillion.Of(420), units.Atmosphere{}))
			w.Step("A kilogram fills %s at this temperature.",
				must(carbonation.Released(units.Kilogram.Of(1), units.CubicMetre.Of(30), units.Celsius.Of(20), units.PartPerMillion.Of(420),
					units.Atmosphere{})).Gas.Text(units.CubicMetre, 4))
			w.Step("%s of gas, mixed into the room; oxygen falls to %s.", r.Gas.Text(units.CubicMetre, 3), r.Oxygen.Text(units.Percent, 1))
			w.Answer("CO2", r.Level.In(units.PartPerMillion), 0, "ppm", 41505, 5)
			w.Cautioned(r.Cautions)
		},
	}
}

func workplaceLimit() Problem {
	return Problem{
		Title: "The limit at work, in two units",
		Ask:   "The US limit at work is 5000 ppm of CO2 over 8 hours. How many milligrams is that in a cubic metre, at 25 °C and 1 atm?",
		Given: []string{"5000 ppm by volume, 25 °C, 101.325 kPa"},
		Source: Source{Read, "29 CFR 1910.1000, table Z-1 (2015 edition), prints both: 5000 ppm and 9000 mg/m³. The printed figure has one digit or two; " +
			"100 is allowed."},
		Work: func(w *Working) {
			d := must(carbonation.GasDensity(units.StandardAtmosphere.Of(1), units.Celsius.Of(25)))
			w.Step("CO2 weighs %s; 5000 millionths of it are %.0f mg/m³.", d.Text(units.KilogramPerCubicMetre, 4), 5000*d.In(units.KilogramPerCubicMetre))
			for _, l := range carbonation.ExposureLimits() {
				w.Step("%s: %.0f ppm (%s; %s).", l.Name, l.Level.In(units.PartPerMillion), l.Source.Source, l.Source.Grade)
			}
			w.Answer("limit", 5000*d.In(units.KilogramPerCubicMetre), 0, "mg/m³", 9000, 100)
			w.Caution(carbonation.Asphyxiation.Text())
		},
	}
}

func airingTheCellar() Problem {
	return Problem{
		Title: "Airing a fermentation room",
		Ask:   "At its peak a ferment gives off 50 g of CO2 an hour in a room of 30 m³. How much fresh air keeps the room at 5000 ppm?",
		Given: []string{"50 g/h, 30 m³, 20 °C, sea level", "fresh air with 420 ppm"},
		Source: Source{ByHand, "50 g/h × 0.5437 L/g = 27.19 L/h. 0.02719 m³/h / (4580/1,000,000) = 5.936 m³/h, 0.198 air changes an hour. Without fresh " +
			"air 30 × 0.00458/0.02719 = 5.05 h."},
		Work: func(w *Working) {
			v := must(carbonation.Ventilate(units.Gram.Of(50), units.CubicMetre.Of(30), units.Celsius.Of(20), units.PartPerMillion.Of(5000),
				units.PartPerMillion.Of(420), units.Atmosphere{}))
			w.Step("The gas comes at %s.", v.Gas.Text(units.LitrePerHour, 2))
			w.Step("Closed up, the limit is reached after %.1f h and danger of life after %.0f h.", v.Reached.Hours(), v.Dangerous.Hours())
			w.Answer("fresh air", v.FreshAir.In(units.CubicMetrePerHour), 2, "m³/h", 5.936, 0.01)
			w.Answer("air changes", v.AirChanges.In(units.PerHour), 3, "an hour", 0.198, 0.0005)
			w.Cautioned(v.Cautions)
		},
	}
}

func peakOverALog() Problem {
	return Problem{
		Title: "The pressure in the bath",
		Ask: "A logger in a bottle of the sparkler (4.6 % vol), 330 mL with 5.5 g/L in 345 mL, goes through the bath. How many units does it get, and " +
			"what is the highest pressure?",
		Given: []string{"log: 0 min 20 °C, 15 min 55 °C, 25 min 62 °C, 40 min 62 °C, 55 min 25 °C", "10^((T − 60)/7)", "330 mL at 18 °C, bottle 345 " +
			"mL, drink free of air, head-space purged, maker's rating 10 bar (taken for this problem), sea level"},
		Source: Source{ByHand, "Rates 0.000001931, 0.19307, 1.93070 and 0.00001 a minute at 20, 55, 62 and 25 °C. Legs (r2 − r1)·Δt/ln(r2/r1): 0.19307 " +
			"× 15/11.513 = 0.252; 1.73763 × 10/2.3026 = 7.546; 1.93070 × 15 = 28.961; 1.93069 × 15/12.171 = 2.379. Together 39.14. " +
			"CO2 in all 0.330 × 5.5 + 0.015 × 1.84 = 1.843 g. At 62 °C the drink fills 335.8 mL (974.8 kg/m³, OIML R 22 continued from 40 °C) and 9.2 mL " +
			"are free. Solubility 10^−1.7972 (Plummer and Busenberg 1982) × 44.009 × 0.9553 = 0.671 g/(L·atm), with fugacity and pressure 0.647. " +
			"p·(0.330 × 0.647 + 0.0092 × 44.009/(0.082057 × 335.15 × 0.973)) = 1.843, p = 8.06 atm; vapours 0.25; less 1: 7.31 atm = 7.4 bar."},
		Work: func(w *Working) {
			s, _ := sparkler()
			bottle := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(10)}
			pack := must(bottle.Close(s, carbonation.Filling{Volume: units.Millilitre.Of(330), Temperature: units.Celsius.Of(18),
				Content: units.GramCO2PerLitre.Of(5.5), AirRemoved: units.Percent.Of(100)}, units.Atmosphere{}))
			log := []carbonation.LoggedTemperature{{At: 0, Temperature: units.Celsius.Of(20)}, {At: 15 * time.Minute, Temperature: units.Celsius.Of(55)},
				{At: 25 * time.Minute, Temperature: units.Celsius.Of(62)},
				{At: 40 * time.Minute, Temperature: units.Celsius.Of(62)}, {At: 55 * time.Minute, Temperature: units.Celsius.Of(25)}}
			p := must(carbonation.Handbook().Pasteurise(log, &pack))
			w.Step("Warming %.3f, holding %.3f, cooling %.3f.", p.Warming.In(units.PU), p.Holding.In(units.PU), p.Cooling.In(units.PU))
			w.Step("At %s: CO2 %s, vapours %s, head-space %s, %s.", p.Highest.Text(units.Celsius, 0), p.Peak.CO2.Text(units.Bar, 2),
				p.Peak.Vapours.Text(units.Bar, 2), p.Peak.Headspace.Text(units.Millilitre, 1), p.Peak.Verdict)
			w.Answer("units", p.Units.In(units.PU), 2, "PU", 39.14, 0.005)
			w.Answer("highest gauge", p.Peak.Gauge.In(units.BarGauge), 1, "bar", 7.4, 0.2)
			w.Cautioned(p.Cautions)
		},
	}
}
