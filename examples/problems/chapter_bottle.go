package main

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

func bottleChapter() Chapter {
	return Chapter{
		Title: "12 Priming and closed vessels",
		Intro: "Sugar in a closed vessel is pressure. What is dissolved already counts, what may still ferment counts, and heat counts most.",
		Problems: []Problem{
			alreadyDissolved(), sugarForTheBottles(), twoBottleSizes(), threePrimers(), primingWithJuice(), bottleInTheSun(), filledToTheBrim(),
			underAValve(), coldCrash(),
		},
	}
}

func alreadyDissolved() Problem {
	return Problem{
		Title: "What is dissolved already",
		Ask:   "The sparkler fermented in the hall at up to 21 °C under an airlock. How much CO2 does it still hold when it is bottled cold?",
		Given: []string{"4.6 % vol, dry", "warmest 21 °C, air of 93.87 kPa"},
		Source: Source{ByHand, "Weiss 1974 table III: 20 °C 0.03916, 22 °C 0.03699, so 0.03805 mol/(kg·atm) at 21 °C; × 44.009 × 0.9553 kg of water " +
			"in a litre = 1.600 g/(L·atm). " +
			"93.87 less 2.5 of vapours is 91.4 kPa = 0.902 atm; coefficient 0.995: 1.436 g/L."},
		Work: func(w *Working) {
			_, drink := sparkler()
			hall := must(units.AtAltitude(units.Metre.Of(640)))
			c := must(drink.ResidualContent(hall.Pressure(), units.Celsius.Of(21)))
			wrong := must(drink.ResidualContent(hall.Pressure(), units.Celsius.Of(4)))
			w.Step("The warmest temperature since gas last came off counts: %s.", c.Text(units.GramCO2PerLitre, 3))
			w.Step("Taken at 4 °C it would be %s, and the bottles would come out flat.", wrong.Text(units.GramCO2PerLitre, 2))
			w.Answer("dissolved", c.In(units.GramCO2PerLitre), 2, "g/L", 1.436, 0.015)
		},
	}
}

func sugarForTheBottles() Problem {
	return Problem{
		Title: "Sugar for twenty litres of bottles",
		Ask:   "20 L that hold 1.43 g/L shall come to 5.73 g/L. How much sugar, and how much less if 2 g/L of sugar are still in the drink?",
		Given: []string{"20 L, 1.43 g/L dissolved", "target 5.73 g/L", "sucrose"},
		Source: Source{ByHand, "(5.73 − 1.43) × 20 = 86.0 g of CO2 / 0.51428 = 167.2 g. The 2 g/L still there make 1.029 g/L: (4.30 − 1.02857) × " +
			"20/0.51428 = 127.2 g, which is 40 g less."},
		Work: func(w *Working) {
			want, have, v := units.GramCO2PerLitre.Of(5.73), units.GramCO2PerLitre.Of(1.43), units.Litre.Of(20)
			dry := must(carbonation.PrimingSugar(material.Sucrose(), want, have, units.MassConcentration{}, v))
			sweet := must(carbonation.PrimingSugar(material.Sucrose(), want, have, units.GramPerLitre.Of(2), v))
			w.Step("A gram of sucrose makes %s of CO2. The primer is to bring %s.",
				carbonation.CO2From(material.Sucrose().Dose(units.Gram.Of(1))).Text(units.Gram, 5), dry.FromPrimer.Text(units.GramCO2PerLitre, 2))
			w.Step("With 2 g/L left, that sugar brings %s by itself.", sweet.FromSugar.Text(units.GramCO2PerLitre, 3))
			w.Answer("sugar, dry drink", dry.Primer.Mass.In(units.Gram), 1, "g", 167.2, 0.1)
			w.Answer("sugar, 2 g/L left", sweet.Primer.Mass.In(units.Gram), 1, "g", 127.2, 0.1)
			w.Cautioned(sweet.Cautions)
		},
	}
}

func threePrimers() Problem {
	return Problem{
		Title:  "Three primers, one fizz",
		Ask:    "How much CO2 do 100 g of table sugar, of dextrose monohydrate and of anhydrous dextrose make?",
		Given:  []string{"100 g of each, as weighed"},
		Source: Source{ByHand, "4 × 44.009/342.297 = 51.428 g; 2 × 44.009/198.171 = 44.415 g; 2 × 44.009/180.156 = 48.856 g."},
		Work: func(w *Working) {
			hundred := units.Gram.Of(100)
			s := carbonation.CO2From(material.Sucrose().Dose(hundred)).In(units.Gram)
			d := carbonation.CO2From(material.DextroseMonohydrate().Dose(hundred)).In(units.Gram)
			w.Step("Crystal water makes no gas: the monohydrate gives %.1f %% of what table sugar gives.", 100*d/s)
			w.Step("100 g of table sugar are replaced by %.1f g of dextrose monohydrate.", 100*s/d)
			w.Answer("table sugar", s, 2, "g", 51.428, 0.005)
			w.Answer("dextrose monohydrate", d, 2, "g", 44.415, 0.005)
			w.Answer("anhydrous dextrose", carbonation.CO2From(material.DextroseAnhydrous().Dose(hundred)).In(units.Gram), 2, "g", 48.856, 0.005)
		},
	}
}

func primingWithJuice() Problem {
	return Problem{
		Title: "Priming a cider with its own juice",
		Ask:   "20 L of cider with 1.70 g/L of CO2 shall come to 5.00 g/L with juice of 1.050 kept back, of whose extract 92 % ferments. How much juice?",
		Given: []string{"20 L, 1.70 g/L", "juice 1.050, 92 %", "target 5.00 g/L"},
		Source: Source{ByHand, "1.050 is 12.39 °P (NBS C440 table 114: 12 °Bx 1.04837, 13 °Bx 1.05259 in air), 0.1239 × 1.0481 kg/L = 129.8 g/L; its " +
			"sugar is counted as glucose and fructose: × 0.92 × 0.48856 = 58.34 g of CO2 from a litre. " +
			"20 × 1.70 + x × 58.34 = (20 + x) × 5.00, so x = 66.0/53.34 = 1.237 L."},
		Work: func(w *Working) {
			p := must(carbonation.PrimeWithWort(must(gravity.FromSG(1.050)), units.Percent.Of(87.4), units.GramCO2PerLitre.Of(5),
				units.GramCO2PerLitre.Of(1.7), units.MassConcentration{}, units.Litre.Of(20)))
			w.Step("Glucose and fructose make 0.48856 g of CO2 a gram, sucrose 0.51428: 92 %% of such sugar counts as 87.4 %% of sucrose.")
			w.Step("A litre of the juice makes %s.", p.Made.Text(units.GramCO2PerLitre, 2))
			w.Step("The juice adds volume too: %s together, at %s.", p.Mixed.Text(units.Litre, 2), p.Final.Text(units.GramCO2PerLitre, 2))
			w.Answer("juice", p.Volume.In(units.Litre), 3, "L", 1.237, 0.002)
		},
	}
}

func bottleInTheSun() Problem {
	return Problem{
		Title: "A bottle in the sun",
		Ask:   "330 mL of the sparkler (4.6 % vol) with 5.5 g/L were closed at 18 °C in a bottle of 345 mL, with air in the neck. What is the pressure at 40 °C?",
		Given: []string{"330 mL at 18 °C, 5.5 g/L, bottle 345 mL", "air in the head-space, the drink full of air too (so that what is in the neck stays " +
			"there), sea level", "maker's rating 10 bar (taken for this problem)"},
		Source: Source{ByHand, "CO2 in all 0.330 × 5.5 = 1.815 g. By OIML R 22 the liquid falls from 992.0 to 985.4 kg/m³ up to 40 °C: 332.2 mL, and the " +
			"head-space is 12.8 mL. Solubility: 10^−1.6249 × 44.009 × 0.9553 = 0.997 g/(L·atm) of fugacity, coefficient 0.977: 0.974. " +
			"p·(0.330 × 0.974 + 0.0128 × 44.009/(0.082057 × 313.15)) = 1.815, p = 5.29 atm. Air (1 − 0.02) × 15/12.8 × 313/291 = 1.24 atm, vapours " +
			"0.08. Sum 6.61 atm, less 1: 5.61 atm = 5.7 bar."},
		Work: func(w *Working) {
			s, _ := sparkler()
			bottle := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(10)}
			closed := must(bottle.Close(s, carbonation.Filling{Volume: units.Millilitre.Of(330), Temperature: units.Celsius.Of(18),
				Content: units.GramCO2PerLitre.Of(5.5), Air: units.Percent.Of(100)}, units.Atmosphere{}))
			for _, t := range []units.Temperature{units.Celsius.Of(4), units.Celsius.Of(18), units.Celsius.Of(40)} {
				at := must(closed.At(t))
				w.Step("%s: %s (CO2 %s, air %s), head-space %s, %s.", t.Text(units.Celsius, 0), at.Gauge.Text(units.BarGauge, 2), at.CO2.Text(units.Bar, 2),
					at.Air.Text(units.Bar, 2), at.Headspace.Text(units.Millilitre, 1), at.Verdict)
			}
			hot := must(closed.At(units.Celsius.Of(40)))
			w.Step("The figure is good to about 5 %% of the absolute pressure, %.2f bar. A bottle rated 6 bar would be within its rating by %.2f bar, less "+
				"than that: not safe to rely on.",
				0.05*must(units.Atmosphere{}.Absolute(hot.Gauge)).In(units.Bar), 6-hot.Gauge.In(units.BarGauge))
			w.Answer("gauge at 40 °C", hot.Gauge.In(units.BarGauge), 1, "bar", 5.7, 0.25)
			w.Cautioned(hot.Cautions)
		},
	}
}

func underAValve() Problem {
	return Problem{
		Title: "Closing the fermenter under a valve",
		Ask: "40 L of the sparkler ferment at 18 °C with 10 L of room above. To come to 4.0 g/L, where is the valve set and how much sugar must be left " +
			"when it is closed?",
		Given: []string{"40 L of 4.6 % vol, 10 L of room, 18 °C", "target 4.0 g/L", "maker's rating 2 bar (taken for this problem)", "sea level"},
		Source: Source{ByHand, "Weiss 1974 table III, 18 °C: 0.04155 × 44.009 × 0.9553 = 1.747 g/(L·atm). 4.0/1.747 = 2.290 atm of fugacity, " +
			"coefficient 0.988 at that pressure: 2.318 atm, vapours 0.02: 2.34 atm, so 1.34 atm = 1.36 bar on the valve. " +
			"At the air's pressure the drink holds 0.98 × 0.995 × 1.747 = 1.70 g/L. To take up: 40 × 2.30 = 92 g and 10 × 1.34 × 1.85 = 25 g in the room; " +
			"117/0.4716 = 248 g of sugar, 6.2 g/L."},
		Work: func(w *Working) {
			_, drink := sparkler()
			f := carbonation.Fermenter{Drink: units.Litre.Of(40), Headspace: units.Litre.Of(10), Rating: units.BarGauge.Of(2)}
			s := must(drink.Spund(units.GramCO2PerLitre.Of(4), f, gravity.SugarWashYield(gravity.AsSucrose), units.Celsius.Of(18), units.Atmosphere{}))
			w.Step("The valve has to hold %s; that takes %s of CO2 for drink and room, at %.4f g from a gram of sugar.", s.Pressure.Text(units.Bar, 3),
				s.CO2.Text(units.Gram, 1), gravity.SugarWashYield(gravity.AsSucrose).CO2().In(units.Fraction))
			w.Step("With the rating of 2 bar: %s.", s.Verdict)
			w.Answer("valve", s.Valve.In(units.BarGauge), 2, "bar", 1.36, 0.03)
			w.Answer("sugar left", s.Extract.In(units.GramPerLitre), 1, "g/L", 6.2, 0.15)
			w.Cautioned(s.Cautions)
		},
	}
}

func coldCrash() Problem {
	return Problem{
		Title: "Air drawn in by the cold",
		Ask:   "60 L under an open airlock, with 12 L of CO2 above, are cooled from 20 to 2 °C. How much air comes in at once?",
		Given: []string{"60 L of 4.6 % vol at 20 °C", "12 L of CO2 at the pressure of the air"},
		Source: Source{ByHand, "Dry gas at 20 °C: 101.3 − 2.4 = 98.9 kPa; at 2 °C it fills 12 × 275.15/293.15 × 98.9/100.6 × 0.999 (real gas) = " +
			"11.06 L. The drink shrinks by 60 × (1 − 991.6/993.4) = 0.11 L (OIML R 22). 12.11 − 11.06 = 1.05 L. At equilibrium the cold drink takes up " +
			"more of the gas, and more air follows."},
		Work: func(w *Working) {
			s, _ := sparkler()
			r := must(carbonation.Fermenter{Drink: units.Litre.Of(60), Headspace: units.Litre.Of(12)}.Crash(s, units.Celsius.Of(20),
				units.Celsius.Of(2), units.Atmosphere{}))
			w.Step("At once %s; once the cold drink has taken up gas from the room above, %s.", r.AtOnce.Text(units.Litre, 2), r.AtRest.Text(units.Litre, 1))
			w.Step("That air brings %s of oxygen to the drink; %s of CO2 let in from a regulator keep it out.",
				r.OxygenPerLitre.Text(units.MilligramPerLitre, 0), r.CO2ToFill.Text(units.Gram, 0))
			w.Answer("air at once", r.AtOnce.In(units.Litre), 2, "L", 1.05, 0.06)
			w.Cautioned(r.Cautions)
		},
	}
}

func twoBottleSizes() Problem {
	return Problem{
		Title: "One batch, two bottle sizes",
		Ask: "20 L of a drink with 1.43 g/L of CO2 go into 40 bottles of 330 mL and 9 of 750 mL, each primed with table sugar by itself, on a scale of " +
			"0.1 g, to come to 5.73 g/L. What is weighed, and what do the bottles come to?",
		Given: []string{"20 L, 1.43 g/L dissolved, target 5.73 g/L", "40 × 330 mL and 9 × 750 mL, scale to 0.1 g"},
		Source: Source{ByHand, "(5.73 − 1.43)/0.51428 = 8.3612 g/L. 0.330 × 8.3612 = 2.759, down to 2.7 g; 0.750 × 8.3612 = 6.271, down to 6.2 g. 40 × " +
			"2.7 + 9 × 6.2 = 163.8 g. " +
			"Small bottles 1.43 + 2.7 × 0.51428/0.330 = 5.638 g/L, large ones 1.43 + 6.2 × 0.51428/0.750 = 5.681 g/L. They hold 19.95 L: 166.8 g when all is " +
			"mixed in."},
		Work: func(w *Working) {
			want, have := units.GramCO2PerLitre.Of(5.73), units.GramCO2PerLitre.Of(1.43)
			p := must(carbonation.PrimingSugar(material.Sucrose(), want, have, units.MassConcentration{}, units.Litre.Of(20)))
			s := must(p.Spread([]carbonation.Bottles{{Fill: units.Millilitre.Of(330), Count: 40}, {Fill: units.Millilitre.Of(750), Count: 9}},
				must(units.ParseExact[units.Mass]("0.1 g"))))
			for _, d := range s.Doses {
				w.Step("%d × %s: %s each.", d.Bottles.Count, d.Bottles.Fill.Text(units.Millilitre, 0), d.Each)
			}
			w.Step("Doses are rounded down, so that no bottle passes the target. Mixed into the %s that are filled it would be %s, and every bottle alike.",
				s.Volume.Text(units.Litre, 2), s.Batch)
			small, large := s.Doses[0], s.Doses[1]
			w.Answer("for 330 mL", small.Each.Quantity().In(units.Gram), 1, "g", 2.7, 0)
			w.Answer("for 750 mL", large.Each.Quantity().In(units.Gram), 1, "g", 6.2, 0)
			w.Answer("in all", s.Total.Quantity().In(units.Gram), 1, "g", 163.8, 0)
			w.Answer("content, 330 mL", small.Content.In(units.GramCO2PerLitre), 3, "g/L", 5.638, 0.001)
			w.Answer("content, 750 mL", large.Content.In(units.GramCO2PerLitre), 3, "g/L", 5.681, 0.001)
			w.Answer("mixed in", s.Batch.Quantity().In(units.Gram), 1, "g", 166.8, 0)
			w.Cautioned(s.Cautions)
		},
	}
}

func filledToTheBrim() Problem {
	return Problem{
		Title: "Filled to the brim, then warmed",
		Ask: "A bottle of 345 mL is filled cold, at 2 °C, with 343 mL of the sparkler (4.6 % vol) and closed. What happens on a day of 40 °C, and how " +
			"much head-space would it have needed?",
		Given: []string{"345 mL brim-full, rigid; 5.5 g/L of CO2, drink free of air, head-space purged", "filled at 2 °C, warmed to 40 °C",
			"maker's rating 10 bar (taken for this problem)"},
		Source: Source{ByHand, "OIML R 22 at 4.6 % vol: 993.4 kg/m³ at 2 °C, 985.4 at 40 °C. The drink grows by 993.4/985.4 − 1 = 0.812 %: 343 mL come " +
			"to 345.8 mL, more than the bottle holds. At most 345 × 985.4/993.4 = 342.2 mL fit. " +
			"With 4 % left free, 331.2 mL, it comes to 333.9 mL, and 11.1 mL are left."},
		Work: func(w *Working) {
			s, _ := sparkler()
			cold, hot := units.Celsius.Of(2), units.Celsius.Of(40)
			bottle := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(10)}
			closed := func(fill units.Volume) carbonation.ClosedVessel {
				return must(bottle.Close(s, carbonation.Filling{Volume: fill, Temperature: cold, Content: units.GramCO2PerLitre.Of(5.5),
					AirRemoved: units.Percent.Of(100)}, units.Atmosphere{}))
			}
			over := closed(units.Millilitre.Of(343))
			locked := must(over.At(hot))
			w.Step("343 mL: %s at 40 °C; the rating is passed at %s already.", locked.Verdict, must(over.WarmestWithin()).Text(units.Celsius, 0))
			for _, fill := range []units.Volume{units.Millilitre.Of(341.55), units.Millilitre.Of(338.1), units.Millilitre.Of(331.2)} {
				at := must(closed(fill).At(hot))
				w.Step("%s: %s, head-space %s, %s.", fill.Text(units.Millilitre, 1), at.Gauge.Text(units.BarGauge, 1), at.Headspace.Text(units.Millilitre, 1), at.Verdict)
			}
			grown := must(s.Volume(hot)).In(units.Litre)/must(s.Volume(cold)).In(units.Litre) - 1
			w.Answer("the drink grows by", 100*grown, 2, "%", 0.812, 0.015)
			w.Answer("most that fits at 40 °C", 345/(1+grown), 1, "mL", 342.2, 0.1)
			w.Answer("head-space at 40 °C of 331.2 mL", must(closed(units.Millilitre.Of(331.2)).At(hot)).Headspace.In(units.Millilitre), 1, "mL", 11.1, 0.1)
			w.Cautioned(locked.Cautions)
		},
	}
}
