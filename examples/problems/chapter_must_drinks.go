package main

import (
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	juice "example.org/zymase/water/must"
)

// distilledWash is a litre of distilled water at 20 °C.
func distilledWash() water.Profile { return must(water.Distilled(units.Celsius.Of(20))) }

func raspberryAndLime() Problem {
	return Problem{
		Title: "Raspberry and lime want acid",
		Ask: "A dry sparkler of 4.6 % vol (pH 3.60, 1.8 g/L of acidity as citric acid, all of it succinic acid of the yeast) is flavoured with raspberry and " +
			"lime. The trial tasted right at 4.0 g/L. How much citric acid, how much malic in its place, and what become pH, sulfite and sorbate?",
		Given: []string{"acidity to pH 8.2, as citric acid", "0.8 mg/L of molecular SO2"},
		Source: Source{ByHand, "Citric acid counts whole: 4.0 − 1.8 = 2.20 g/L; malic has 67.04 g/Eq for 64.04, 2.30 g/L. 15.3 mmol/L " +
			"of succinic acid with 2.56 mEq/L of " +
			"cations make the 1.8 g/L; beside 11.45 mmol/L of citric acid (pK 3.21, 4.83, 6.45 at 20 °C and 4.6 % vol, Davies) their charge is 2.56 mEq/L and " +
			"1.6 of H+ at pH 2.825; with malic acid (3.53, 5.16) at 2.881. Free SO2 before 0.8 × (1 + 10^(3.60 − 1.81)) = 50.1 mg/L, " +
			"after 0.8 × (1 + 10^1.015) = 9.1."},
		Work: func(w *Working) {
			r := juice.Reading{PH: 3.6, Acidity: units.GramPerLitre.Of(1.8), Titration: water.CitricAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20),
				Strength: units.PercentVolume.Of(4.6)}
			base := must(r.Drink(juice.AcidShares{water.Succinate.At(units.GramPerLitre.Of(1))}))
			aim := juice.ToAcidity(units.GramPerLitre.Of(4), water.CitricAcid.TitratedTo(8.2))
			citric, malic := must(base.WithAcid(water.CitricAcid, aim)), must(base.WithAcid(water.MalicAcid, aim))
			free := func(d juice.Drink) float64 {
				share := must(finish.MolecularSharePractice(d.PH()))
				return must(finish.FreeSulfite(units.MilligramPerLitre.Of(0.8), share)).In(units.MilligramPerLitre)
			}
			w.Step("A drink of sugar holds few salts (%s), so that acid for taste takes its pH far down.", base.StrongIons().Text(units.MilliequivalentPerLitre, 1))
			w.Step("Malic acid: %s, pH %.2f. It tastes longer, and leaves no citric acid to bacteria.", malic.PerLitre.Text(units.GramPerLitre, 2), malic.After.PH())
			w.Step("Of the sorbate %s acts now, %s before.", must(finish.Undissociated(citric.After.PH())).Text(units.Percent, 0),
				must(finish.Undissociated(base.PH())).Text(units.Percent, 0))
			for _, c := range citric.Cautions {
				w.Caution(c.Text())
			}
			w.Answer("citric acid", citric.PerLitre.In(units.GramPerLitre), 2, "g/L", 2.20, 0.02)
			w.Answer("malic acid in its place", malic.PerLitre.In(units.GramPerLitre), 2, "g/L", 2.30, 0.02)
			w.Answer("pH with citric acid", citric.After.PH(), 2, "", 2.825, 0.02)
			w.Answer("free SO2 before", free(base), 1, "mg/L", 50.1, 0.2)
			w.Answer("free SO2 after", free(citric.After), 1, "mg/L", 9.1, 0.5)
		},
	}
}

func honeyHoldsItsAcidBack() Problem {
	return Problem{
		Title: "Honey and its gluconic acid",
		Ask:   "10 g of a usual honey in 75 mL of water show pH 3.91 and 29.12 mEq/kg of acidity, free and as lactone. How much gluconic acid is in a kilogram?",
		Given: []string{"lactone and acid at rest: log K −0.81", "no acid but gluconic"},
		Source: Source{ByHand, "White et al. 1962, 490 honeys: pH 3.91, total acidity 29.12 mEq/kg (as a page quotes it). In 82.0 mL are " +
			"10 g. Free H+ (γ 0.935) is 1.08 mEq/kg, " +
			"2.9 mmol/kg of phosphate take 2.8 mEq: 25.2 are gluconic acid and its lactone, of pK 3.92 (Zubiaur et al. 1998), with the " +
			"lactone (0.155 of the acid) 3.98; at pH 3.91 that is " +
			"0.525 of all: 48.0 mmol/kg of 196.16 g/mol, 9.4 g/kg. Mato et al. 1997 found 3.91 to 11.71 g/kg in 20 honeys of Galicia, 7.37 on the mean (read)."},
		Work: func(w *Working) {
			u := must(juice.FromHoney.Usual())
			b := must(juice.FromHoney.Brings(u.Extract, distilledWash(), juice.Reading{}))
			const kilograms = 0.010 / (0.075 + 0.010/1.42) // in a litre
			gluconic := b.Drink.Water().Ion(water.Gluconate).In(units.GramPerLitre) * 196.155 / 195.147 / kilograms
			w.Step("%s of solids; half of the acid is there as salt, of potassium above all: %s in a litre.", u.Extract.Text(units.GramPerLitre, 0),
				b.Drink.StrongIons().Text(units.MilliequivalentPerLitre, 1))
			w.Step("So little buffers a mead: %s at its pH, where a must of grapes has about 50.", b.Drink.BufferCapacity().Text(units.MilliequivalentPerLitre, 1))
			w.Answer("gluconic acid", gluconic, 1, "g/kg", 9.4, 0.1)
		},
	}
}

func tartarInTheCold() Problem {
	return Problem{
		Title: "Crystals in the cold",
		Ask:   "8.0 g of cream of tartar are dissolved in a litre of hot water, and left at 20 °C with a few crystals. How much comes out?",
		Given: []string{"nothing else is dissolved"},
		Source: Source{Recalled, "Berg & Keefer, Am. J. Enol. Vitic. 9 (1958) 180 (recalled from memory): 4.92 g/L stay dissolved, 8.0 − 4.92 = 3.08 g come out. " +
			"Pages quote 0.57 g in 100 mL, with which it would be 2.3: published solubilities differ by 15 %."},
		Work: func(w *Working) {
			tartar := func(strength units.StrengthByVolume, t units.Temperature, gram units.Mass) float64 {
				p := must(water.Distilled(t))
				p = must(p.AddAcid(water.TartaricAcid, must(units.Millimole.Try(gram.In(units.Milligram)/188.177)), units.Litre.Of(1)))
				p = must(p.Add(units.Litre.Of(1), material.PotassiumBicarbonate().Dose(must(units.Milligram.Try(gram.In(units.Milligram)/188.177*100.114)))))
				return must(must(p.WithEthanol(strength)).CreamOfTartar()).In(units.GramPerLitre)
			}
			w.Step("In 12 %% vol at 2 °C only %.1f g of it would stay.", 8-tartar(units.PercentVolume.Of(12), units.Celsius.Of(2), units.Gram.Of(8)))
			w.Step("In a wine colloids hold it up for months: what is at rest is the most that can come.")
			w.Answer("cream of tartar", tartar(units.StrengthByVolume{}, units.Celsius.Of(20), units.Gram.Of(8)), 1, "g", 3.08, 0.05)
		},
	}
}
