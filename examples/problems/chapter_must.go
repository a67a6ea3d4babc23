package main

import (
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/mash"
	juice "example.org/zymase/water/must"
)

func mustChapter() Chapter {
	return Chapter{
		Title: "19 Mash and must",
		Intro: "A malt, an apple and a grape bring their own acids and the salts of them: what was measured says how much of each, and what a dose then does.",
		Problems: []Problem{
			twoMaltsMeet(), mashByCalcium(), acidForTheMash(), ethanolMovesPK(), bufferOfTartaric(), wineByAnalysis(), appleByAcidity(),
			bacteriaTakeTheSharpness(), tartarTakesTheRest(), sharpAndBland(), sulfiteAfterAcid(),
			raspberryAndLime(), honeyHoldsItsAcidBack(), tartarInTheCold(),
		},
	}
}

// measuredMalt is a malt of which both figures were measured.
func measuredMalt(kg units.Mass, ph, buffer float64) mash.Malt {
	mmol := func(x float64) units.Amount { return must(units.Millimole.Try(x)) }
	return mash.Malt{Name: "malt", Mass: kg, PH: evidence.Figure[float64]{Value: ph, Low: ph - 0.03, High: ph + 0.03},
		BufferPerKilogram: evidence.Figure[units.Amount]{Value: mmol(buffer), Low: mmol(buffer - 3), High: mmol(buffer + 3)}}
}

func twoMaltsMeet() Problem {
	return Problem{
		Title: "Where two malts meet",
		Ask: "Four parts of a pale malt and one of a caramel malt are mashed in distilled water, and again in a water of 100 mg/L alkalinity as CaCO3 (no " +
			"calcium), 3 L to the kilogram. Which pH?",
		Given: []string{"pale malt: pH 5.70 in distilled water, 30 mEq/(kg pH)", "caramel malt: pH 4.50, 60 mEq/(kg pH)"},
		Source: Source{ByHand, "Buffering 4 × 30 + 1 × 60 = 180 mEq/pH; (120 × 5.70 + 60 × 4.50)/180 = 5.30. The water brings 100/50.04 = 2.00 mEq/L × " +
			"15 L = 30.0 mEq, " +
			"its CO2 driven out: 30.0/180 = 0.167 higher, 5.467."},
		Work: func(w *Working) {
			m := mash.Mash{Malts: []mash.Malt{measuredMalt(units.Kilogram.Of(4), 5.7, 30), measuredMalt(units.Kilogram.Of(1), 4.5, 60)}, Volume: units.Litre.Of(15)}
			m.Water = must(water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}))
			plain := must(m.PH())
			w.Step("Each malt gives or takes protons, by its buffering, until all are at one pH.")
			w.Answer("in distilled water", plain.Value, 2, "", 5.30, 0.01)
			m.Water = must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(100)))
			hard := must(m.PH())
			w.Step("The alkalinity takes protons from both. With malts measured to 0.03 in pH and 3 mEq/(kg pH) the band is still %.2f to %.2f.", hard.Low, hard.High)
			w.Answer("with alkalinity", hard.Value, 2, "", 5.467, 0.01)
		},
	}
}

func mashByCalcium() Problem {
	return Problem{
		Title: "What calcium does to a mash",
		Ask:   "A pale malt mashes at pH 5.74 in liquor without calcium. What does the balance of protons say with 100, 200 and 300 mg/L of it?",
		Given: []string{"no alkalinity", "taken, as neither was read: 3 L to the kilogram, buffering 30 mEq/(kg pH)", "1 equivalent of acid from 3.5 of " +
			"calcium (Kolbach 1953, found in wort)"},
		Source: Source{Read, "Taylor, MBAA Technical Quarterly (1990), after Briggs, as a web page quotes it (third hand): pH 5.74, 5.48, 5.39 and 5.28 at " +
			"0, 100, 200 and 300 mg/L. " +
			"Kolbach's divisor must be changed for a mash, Barth & Zaman (2015) found; so 0.15 is allowed."},
		Work: func(w *Working) {
			for _, r := range []struct {
				name  string
				at    units.MassConcentration
				print float64
			}{{"at 100 mg/L", units.MilligramPerLitre.Of(100), 5.48}, {"at 200 mg/L", units.MilligramPerLitre.Of(200), 5.39},
				{"at 300 mg/L", units.MilligramPerLitre.Of(300), 5.28}} {
				m := mash.Mash{Malts: []mash.Malt{measuredMalt(units.Kilogram.Of(1), 5.74, 30)}, Volume: units.Litre.Of(3)}
				m.Water = must(water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}, water.Calcium.At(r.at)))
				e := must(m.PH())
				w.Step("%s: band %.2f to %.2f.", r.name, e.Low, e.High)
				w.Answer(r.name, e.Value, 2, "", r.print, 0.15)
			}
		},
	}
}

func acidForTheMash() Problem {
	return Problem{
		Title: "Lactic acid for a mash",
		Ask:   "How much pure lactic acid brings a kilogram of malt, mashed in 3 L of distilled water, from pH 5.70 to 5.40?",
		Given: []string{"malt: pH 5.70 in distilled water, 30 mEq/(kg pH)"},
		Source: Source{ByHand, "30 × 0.30 = 9.00 mEq. Lactic acid of pK 3.86 (3.83 at this strength, as a meter reads) has given up its proton at pH 5.40 " +
			"but for 1 part in 38: 9.00 × 1.027 = 9.24 mmol of 90.08 g/mol, 0.832 g. " +
			"Kolbach is quoted with 290 mg for 0.1 pH, which would be 0.87 g."},
		Work: func(w *Working) {
			m := mash.Mash{Malts: []mash.Malt{measuredMalt(units.Kilogram.Of(1), 5.7, 30)}, Volume: units.Litre.Of(3)}
			m.Water = must(water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}))
			d := must(m.WithAcid(water.LacticAcid, 5.4))
			w.Step("The water has nothing to say: all of the acid goes to the malt.")
			w.Step("With the malt as well known as it was measured: %s to %s.", d.Low.Text(units.Gram, 2), d.High.Text(units.Gram, 2))
			for _, c := range d.Cautions {
				w.Caution(c.Text())
			}
			w.Answer("lactic acid", d.Mass.In(units.Gram), 3, "g", 0.832, 0.01)
		},
	}
}

func ethanolMovesPK() Problem {
	return Problem{
		Title: "A ferment raises the pK",
		Ask:   "By how much does the pK of lactic acid, and the pH of a drink with it, rise with 12 % vol of ethanol?",
		Given: []string{"12 % vol"},
		Source: Source{Read, "E. Prenesti et al., Sci. World J. 2012, 249041, table 4: lactic acid 3.70 to 3.87 in 0.05 mol/L of KCl and 3.66 to 3.83 in " +
			"0.1, 0.17 both; succinic acid 0.15 to 0.21."},
		Work: func(w *Working) {
			w.Step("Water with ethanol holds ions less willingly: an acid keeps its proton.")
			w.Step("Where all acids move alike, the pH moves with them, salts and acids the same.")
			w.Answer("rise of the pH", must(water.PKShift(units.PercentVolume.Of(12))), 2, "", 0.17, 0.02)
		},
	}
}

func bufferOfTartaric() Problem {
	return Problem{
		Title: "How stiff an acid is",
		Ask: "40 mmol/L of tartaric acid, and of tartaric and citric acid, 20 of each, are half neutralised with lye of 0.1 mol/L: 20 mmol. How much base " +
			"does one more pH take?",
		Given: []string{"25 °C, no ethanol", "taken, as it was not read: the lye is 0.1 mol/L, so that a litre becomes 1.2 L"},
		Source: Source{Read, "C. Dartiguenave et al., Am. J. Enol. Vitic. 51 (2000) 352, as tables 1.4 and 1.6 of Handbook of Enology 2 print it: tartaric " +
			"acid 0.71 x + 0.29 mEq/L, at 40 mmol/L 28.69; " +
			"with citric acid 23.5, where the sum of the two would be 26.3: mixtures measure lower, the authors found. 10 % is allowed."},
		Work: func(w *Working) {
			capacity := func(of ...water.Acid) juice.Drink {
				p := must(water.Distilled(units.Celsius.Of(25)))
				litres := units.Litre.Of(1.2)
				for range 2 / len(of) {
					for _, a := range of {
						p = must(p.AddAcid(a, units.Millimole.Of(20), litres))
					}
				}
				p = must(p.Add(litres, material.SodiumHydroxide().Dose(units.Gram.Of(0.79994)))) // 20 mmol
				return must(juice.New(p, units.StrengthByVolume{}))
			}
			one, two := capacity(water.TartaricAcid), capacity(water.TartaricAcid, water.CitricAcid)
			w.Step("Half neutralised, tartaric acid shows pH %.2f, the mixture %.2f.", one.PH(), two.PH())
			w.Step("A curve is flattest, and the buffer stiffest, at a pK; tartaric acid has two that lie close.")
			w.Answer("tartaric acid", one.BufferCapacity().In(units.MilliequivalentPerLitre), 1, "mEq/L", 28.69, 2.87)
			w.Answer("tartaric with citric acid", two.BufferCapacity().In(units.MilliequivalentPerLitre), 1, "mEq/L", 23.5, 2.35)
		},
	}
}

func wineByAnalysis() Problem {
	return Problem{
		Title: "The pH of a wine from its analysis",
		Ask:   "This wine's analysis lacks sulfate. Which pH follows with none, with 300 and with 550 mg/L of it?",
		Given: []string{"14.37 % vol, 1.59 g/L of tartaric and 1.95 g/L of malic acid, titratable acidity 74.9 mEq/L to pH 7.0", "potassium 985, calcium " +
			"47, magnesium 113, phosphate 580, chloride 49 mg/L"},
		Source: Source{Read, "A Barolo among the Piedmont wines of chemometrics text books: pH 3.43. Over 89 of them the bias is 0.14, 0.02 and −0.11 " +
			"with 0, 300 and 550 mg/L, and one wine is known to no better than 0.2."},
		Work: func(w *Working) {
			mg := func(i water.Ion, c units.MassConcentration) water.Content { return i.At(c) }
			for _, r := range []struct {
				name    string
				sulfate units.MassConcentration
			}{{"no sulfate", units.MassConcentration{}}, {"300 mg/L", units.MilligramPerLitre.Of(300)}, {"550 mg/L", units.MilligramPerLitre.Of(550)}} {
				a := juice.Analysis{
					Ions: []water.Content{
						// The anion weighs 148.07 of tartaric acid's 150.09 g/mol, 132.07 of malic acid's 134.09.
						mg(water.Tartrate, units.GramPerLitre.Of(1.59*148.07/150.09)), mg(water.Malate, units.GramPerLitre.Of(1.95*132.07/134.09)),
						mg(water.Potassium, units.MilligramPerLitre.Of(985)), mg(water.Calcium, units.MilligramPerLitre.Of(47)),
						mg(water.Magnesium, units.MilligramPerLitre.Of(113)),
						mg(water.Phosphate, units.MilligramPerLitre.Of(580)), mg(water.Chloride, units.MilligramPerLitre.Of(49)), mg(water.Sulfate, r.sulfate),
					},
					Acidity:   units.MilligramPerLitre.Of(74.9 * 75.043), // as tartaric acid
					Titration: water.TartaricAcid.TitratedTo(7), Temperature: units.Celsius.Of(20), Strength: units.PercentVolume.Of(14.37),
				}
				wine := must(a.Drink(juice.AcidShares{water.Lactate.At(units.GramPerLitre.Of(1))}))
				w.Step("%s: %s of the acids are there as salts; acid without a name counts as lactic.", r.name, wine.StrongIons().Text(units.MilliequivalentPerLitre, 0))
				w.Answer("pH, "+r.name, wine.PH(), 2, "", 3.43, 0.2)
			}
		},
	}
}

func appleByAcidity() Problem {
	return Problem{
		Title: "A juice of which only the acidity is known",
		Ask:   "The juice of Sweet Coppin is titrated to 1.7 g/L as malic acid. What is its pH?",
		Given: []string{"1.7 g/L as malic acid, taken to pH 8.2"},
		Source: Source{Read, "Goverd et al., as a review page cites them: pH 4.03. Of 55 measured cider apples 54 lie within 0.3 of such a guess; this one " +
			"does not, and 0.45 is allowed."},
		Work: func(w *Working) {
			e := must(juice.FromApple.FromAcidity(units.GramPerLitre.Of(1.7), water.MalicAcid.TitratedTo(8.2)))
			w.Step("An apple brings malic acid, and as much potassium as the mean of apples: %s of its acid is there as salt.",
				e.Drink.StrongIons().Text(units.MilliequivalentPerLitre, 0))
			w.Step("The band is %.1f to %.1f, and this juice lies below it: it holds less potassium than most. From the acidity alone nobody can tell; a pH "+
				"meter can.", e.Low, e.High)
			w.Answer("pH", e.PH, 2, "", 4.03, 0.45)
		},
	}
}

// cider is a juice after its ferment, its acid still sharp.
func cider() juice.Drink {
	r := juice.Reading{PH: 3.4, Acidity: units.GramPerLitre.Of(6), Titration: water.MalicAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20),
		Strength: units.PercentVolume.Of(6)}
	return must(r.Drink(juice.FromApple.Acids()))
}

// acidityOf is the titratable acidity of a drink.
func acidityOf(d juice.Drink, t water.Titration) units.MassConcentration { return must(d.Acidity(t)) }

func bacteriaTakeTheSharpness() Problem {
	return Problem{
		Title: "Bacteria take the sharpness",
		Ask:   "A cider of pH 3.4 and 6.0 g/L of acidity as malic acid, at 6 % vol, goes through malic to lactic by half. What is its acidity then?",
		Given: []string{"all its acid is malic", "acidity to pH 8.2"},
		Source: Source{ByHand, "6.0 g/L at 67.04 g/Eq is 89.5 mEq/L that lye still finds. At pH 3.4 and 6 % vol malic acid (pK 3.46 and 5.09; ethanol " +
			"counts 0.085, activity coefficients are 0.86 and 0.55) has given up 0.47 of its two protons and has 1.53 left: " +
			"89.5 less 0.6 mEq/L of free H+ is 58.2 mmol/L. Half of it, 29.1 mmol, becomes lactic acid, with one proton less each: 89.5 − 29.1 = 60.4 mEq/L, " +
			"4.05 g/L."},
		Work: func(w *Working) {
			before := cider()
			after := must(before.Malolactic(units.Percent.Of(50)))
			w.Step("Salts: %s. They stay, and less acid stands against them.", before.StrongIons().Text(units.MilliequivalentPerLitre, 1))
			w.Step("The pH goes from %.2f to %.2f: watch the sulfite.", before.PH(), after.PH())
			w.Answer("acidity as malic acid", acidityOf(after, water.MalicAcid.TitratedTo(8.2)).In(units.GramPerLitre), 2, "g/L", 4.05, 0.03)
		},
	}
}

func tartarTakesTheRest() Problem {
	return Problem{
		Title: "Why 0.9 g of bicarbonate does for 1.33 g",
		Ask:   "A wine gets 0.9 g/L of potassium bicarbonate, and its acidity ends up 1.0 g/L lower, as tartaric acid. How much cream of tartar has settled?",
		Given: []string{"wine of 11 % vol, pH 3.1, 9.0 g/L as tartaric acid to pH 8.2, half tartaric and half malic"},
		Source: Source{ByHand, "The rule of 0.9 g/L for 1 g/L was read in a book on wine (2007). 0.9/100.114 is 8.99 mEq/L; 1.0 g/L as tartaric is " +
			"1000/75.043 = 13.33 mEq/L. Each mmol of cream of tartar, 188.18 mg, takes one proton: 4.34 mmol, 0.816 g/L."},
		Work: func(w *Working) {
			r := juice.Reading{PH: 3.1, Acidity: units.GramPerLitre.Of(9), Titration: water.TartaricAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20),
				Strength: units.PercentVolume.Of(11)}
			wine := must(r.Drink(juice.FromGrape.Acids()))
			dosed := must(wine.AddSalt(material.PotassiumBicarbonate(), units.GramPerLitre.Of(0.9)))
			w.Step("The bicarbonate alone: pH %.2f to %.2f, acidity %s to %s.", wine.PH(), dosed.PH(),
				acidityOf(wine, water.TartaricAcid.TitratedTo(8.2)).Text(units.GramPerLitre, 2),
				acidityOf(dosed, water.TartaricAcid.TitratedTo(8.2)).Text(units.GramPerLitre, 2))
			low, high := 0.0, 2.0 // g/L
			for range 40 {
				mid := (low + high) / 2
				if acidityOf(must(dosed.Settled(must(units.GramPerLitre.Try(mid)))), water.TartaricAcid.TitratedTo(8.2)).In(units.GramPerLitre) > 8 {
					low = mid
				} else {
					high = mid
				}
			}
			settled := must(dosed.Settled(must(units.GramPerLitre.Try(low))))
			w.Step("When %.2f g/L has settled the acidity is %s, and the pH %.2f.", low,
				acidityOf(settled, water.TartaricAcid.TitratedTo(8.2)).Text(units.GramPerLitre, 2), settled.PH())
			w.Caution(juice.Settles.Text(), juice.Law.Text())
			w.Answer("cream of tartar", low, 3, "g/L", 0.816, 0.01)
		},
	}
}

func sharpAndBland() Problem {
	return Problem{
		Title:  "Sharp juice into bland",
		Ask:    "A bland juice (pH 3.9, 3.0 g/L as malic acid) is to come to 5.0 g/L with a sharp one (pH 3.1, 11.0 g/L). How much of the sharp one?",
		Given:  []string{"apple juices, acidity to pH 8.2"},
		Source: Source{ByHand, "What lye finds adds up: (5.0 − 3.0)/(11.0 − 3.0) = 25 % of the blend."},
		Work: func(w *Working) {
			of := func(ph float64, acidity units.MassConcentration) juice.Drink {
				r := juice.Reading{PH: ph, Acidity: acidity, Titration: water.MalicAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20)}
				return must(r.Drink(juice.FromApple.Acids()))
			}
			bland, sharp := of(3.9, units.GramPerLitre.Of(3)), of(3.1, units.GramPerLitre.Of(11))
			t := must(bland.WithDrink(sharp, juice.ToAcidity(units.GramPerLitre.Of(5), water.MalicAcid.TitratedTo(8.2))))
			w.Step("Acidity goes by the share; the pH does not: %.2f, where a quarter of the way would be 3.70.", t.After.PH())
			byPH := must(bland.WithDrink(sharp, juice.ToPH(3.5)))
			w.Step("For pH 3.5 it would be %s.", byPH.Share.Text(units.Percent, 0))
			w.Answer("the sharp juice", t.Share.In(units.Percent), 1, "%", 25, 0.2)
		},
	}
}

func sulfiteAfterAcid() Problem {
	return Problem{
		Title: "Acid does half of the sulfite's work",
		Ask: "A wine of 10 % vol, pH 3.60 and 5.5 g/L as tartaric acid gets tartaric acid down to pH 3.20. How much, and which part of its free SO2 is " +
			"then molecular, at 20 °C?",
		Given:  []string{"half tartaric, half malic acid; acidity to pH 7.0 (OIV)"},
		Source: Source{Read, "OIV-MA-AS323-04C, table 1: pKT 1.997 at 10 % vol and 20 °C, 1/(1 + 10^(3.2 − 1.997)) = 5.8966 %."},
		Work: func(w *Working) {
			r := juice.Reading{PH: 3.6, Acidity: units.GramPerLitre.Of(5.5), Titration: water.TartaricAcid.TitratedTo(7), Temperature: units.Celsius.Of(20),
				Strength: units.PercentVolume.Of(10)}
			wine := must(r.Drink(juice.FromGrape.Acids()))
			t := must(wine.WithAcid(water.TartaricAcid, juice.ToPH(3.2)))
			w.Step("It takes %s of tartaric acid, if none of it settles; the acidity goes to %s.", t.PerLitre.Text(units.GramPerLitre, 1),
				acidityOf(t.After, water.TartaricAcid.TitratedTo(7)).Text(units.GramPerLitre, 1))
			share := func(d juice.Drink) units.Share {
				return must(finish.MolecularShareOIV(d.PH(), d.Strength(), units.Celsius.Of(20)))
			}
			w.Step("Before, %s of the free SO2 was molecular: as much effect now needs that much less sulfite.", share(wine).Text(units.Percent, 1))
			for _, c := range t.Cautions {
				w.Caution(c.Text())
			}
			w.Answer("molecular part", share(t.After).In(units.Percent), 2, "%", 5.8966, 0.01)
		},
	}
}
