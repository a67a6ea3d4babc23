package main

import (
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func fermentPHChapter() Chapter {
	return Chapter{
		Title: "16 The pH of the ferment, yeast and heat",
		Intro: "A sugar wash has no buffer: what yeast takes up and gives off decides its pH. It also grows, and it warms.",
		Problems: []Problem{
			protonsFromAmmonium(), pasteursBalance(), whereTheWashEnds(), bufferForAFloor(), alkalinityForPH4(), cellsToPitch(), dryYeastToWeigh(), oldLiquidYeast(),
			yeastFromExtract(), warmsByItself(), coolingOnTheBusiestDay(), heatOfTheReaction(), gasOfABatch(),
		},
	}
}

// softWell is the hall's well water, treated.
func softWell() water.Profile {
	return must(water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(26),
		water.Calcium.At(units.MilligramPerLitre.Of(10)), water.Potassium.At(units.MilligramPerLitre.Of(1))))
}

// hallFerment is the club's ferment, fed with diammonium phosphate.
func hallFerment() ferment.Tank {
	return ferment.Tank{
		Brew:  must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))),
		Water: softWell(), Temperature: units.Celsius.Of(20), Additions: 3,
		Feed: []material.Dose{{Material: material.DiammoniumPhosphate(), Mass: units.Gram.Of(18.8)}},
	}
}

// passedOn prints what yeast took up and made in a litre of the 60 L.
func passedOn(w *Working, end ferment.Point) {
	per := func(m units.Mass, molar float64) float64 { return 1000 * m.In(units.Gram) / molar / 60 }
	b := end.Balance
	w.Step("Yeast takes up %.3f mmol/L of ammonium and sets free %.3f of H+; it makes %.3f of succinic, %.3f of acetic and %.3f of "+
		"lactic acid, and leaves %.2f of phosphate.",
		per(b.Ammonium, 14.007), b.Protons.In(units.Millimole)/60, per(b.Succinic, 118.088), per(b.Acetic, 60.052), per(b.Lactic, 90.078),
		18800/132.056/60-per(b.Phosphorus, 30.974))
}

func protonsFromAmmonium() Problem {
	return Problem{
		Title: "The acid that ammonium leaves",
		Ask:   "Yeast takes up 1 g of nitrogen as ammonium. How much H+ does it set free, and what if it were amino nitrogen?",
		Given: []string{"1 kg of hexose, 1 g of N", "no phosphate or potassium at hand"},
		Source: Source{ByHand, "One H+ for each NH4+ taken up (Castrillo et al., Microbiology 141 (1995) 1567, recalled from memory): " +
			"1000/14.007 = 71.39 mmol. Amino acids set none free."},
		Work: func(w *Working) {
			m := ferment.UsualMetabolism()
			salt := must(m.Ferment(ferment.Substrate{Hexose: units.Kilogram.Of(1), Ammonium: units.Gram.Of(1)}))
			amino := must(m.Ferment(ferment.Substrate{Hexose: units.Kilogram.Of(1), Amino: units.Gram.Of(1)}))
			in, out := salt.Ledgers()
			w.Step("The gram lets %s of yeast grow.", salt.DryYeast.Text(units.Gram, 1))
			w.Step("Charge in %.5f mol, out %.5f mol; carbon in %.4f mol, out %.4f mol: nothing is lost.", in.Charge.In(units.Mole),
				out.Charge.In(units.Mole), in.C.In(units.Mole), out.C.In(units.Mole))
			w.Step("From amino nitrogen: %s of H+.", amino.Protons.Text(units.Millimole, 2))
			w.Answer("H+ from ammonium", salt.Protons.In(units.Millimole), 2, "mmol", 71.39, 0.01)
		},
	}
}

func pasteursBalance() Problem {
	return Problem{
		Title: "Pasteur's balance of 1860",
		Ask:   "100 g of cane sugar, 105.26 g of hexose, ferment with little yeast growing. How much ethanol, gas, glycerol and succinic acid come out?",
		Given: []string{"105.26 g of hexose", "nitrogen for about 1 g of yeast: 64 mg of amino N"},
		Source: Source{Recalled, "L. Pasteur, Ann. Chim. Phys. 58 (1860) 323: 51.11 g of alcohol, 49.42 g of CO2, 3.16 g of glycerol, " +
			"0.67 g of succinic acid, 1.00 g to the yeast. Glycerol and succinic acid went into the library's balance; ethanol and CO2 follow " +
			"from the atoms and are the check. His CO2 was in part calculated: 1.5 % is allowed."},
		Work: func(w *Working) {
			m := ferment.UsualMetabolism()
			// Pasteur found no acetic or lactic acid to speak of.
			m.Acetic, m.Lactic = units.Share{}, units.Share{}
			b := must(m.Ferment(ferment.Substrate{Hexose: units.Gram.Of(105.26), Amino: units.Gram.Of(0.064)}))
			w.Step("Glycerol %s, succinic acid %s, yeast %s.", b.Glycerol.Text(units.Gram, 2), b.Succinic.Text(units.Gram, 2), b.DryYeast.Text(units.Gram, 2))
			w.Step("The electrons left over make the ethanol, the carbon left over the CO2.")
			w.Answer("ethanol", b.Ethanol.In(units.Gram), 1, "g", 51.11, 0.75)
			w.Answer("CO2", b.CO2.In(units.Gram), 1, "g", 49.42, 0.75)
		},
	}
}

func whereTheWashEnds() Problem {
	return Problem{
		Title: "Why it stopped half way",
		Ask:   "The club's wash in soft water, fed with 18.8 g of diammonium phosphate, has no buffer. Where does its pH go?",
		Given: []string{"60 L at 4.6 % vol, white sugar", "water: alkalinity 26 mg/L as CaCO3", "18.8 g of diammonium phosphate"},
		Source: Source{ByHand, "mmol in a litre, what yeast takes up and makes as in the working. Alkalinity at the end: 26/50.043 × 57.4/60 + 2.373 " +
			"(HPO4) − 4.329 (H+) − 2 × 4.173 − 2.578 − 0.859 (acids) = −13.242 mEq/L. " +
			"At pH 2.873, γ 0.94 (Davies): HCO3 0.012, H −1.425, H3PO4 (pK 2.19) 1.94 × 0.162 = −0.313; held of the acids' protons, pK at 4.6 % vol: " +
			"succinic (4.28, 5.71) 1.960 × 4.173 = 8.180, acetic (4.82) 0.988 × 2.578 = 2.548, lactic (3.93) 0.915 × 0.859 = 0.786: together −13.240. " +
			"Sugar washes are reported to fall to pH 2.5 to 3, beer wort only to 4 to 4.5 (question-and-answer thread on acid production in washes against " +
			"wort, read); growth of wine yeast slows sharply between 3.00 and 2.75 (Liu et al., J. Food Sci., read). How much acid a yeast makes has no " +
			"sharper check than that."},
		Work: func(w *Working) {
			c := must(hallFerment().Course(4))
			for _, p := range c.Points {
				w.Step("%s of the sugar used: gravity %s, pH %.2f (%.2f to %.2f).", p.Used.Text(units.Percent, 0), p.Gravity.Text(3), p.PH.Value, p.PH.Low, p.PH.High)
			}
			end := c.Points[len(c.Points)-1]
			passedOn(w, end)
			w.Answer("pH at the end", end.PH.Value, 2, "", 2.873, 0.02)
			w.Caution(c.Cautions[0].Text())
		},
	}
}

func bufferForAFloor() Problem {
	return Problem{
		Title: "The buffer that holds a floor",
		Ask:   "The club's wash in soft water, fed with 18.8 g of diammonium phosphate: how much potassium bicarbonate keeps it from falling below pH 3.5?",
		Given: []string{"60 L at 4.6 % vol, white sugar", "water: alkalinity 26 mg/L as CaCO3", "18.8 g of diammonium phosphate", "floor pH 3.5"},
		Source: Source{ByHand, "mmol in a litre, what yeast takes up and makes as in the working. At pH 3.50, γ 0.935 (Davies): HCO3 0.055, H −0.338, " +
			"H3PO4 (pK 2.19) 1.94 × 0.0433 = −0.084; held of the acids' protons, pK at 4.6 % vol: succinic (4.28, 5.71) 1.848 × 4.173 = 7.713, acetic " +
			"(4.82) 0.952 × 2.578 = 2.453, lactic (3.93) 0.713 × 0.859 = 0.613: alkalinity −11.146 mEq/L. " +
			"Without a base: 26/50.043 × 57.4/60 + 2.373 (HPO4) − 4.735 (H+) − 2 × 4.173 − 2.578 − 0.859 (acids) = −13.648. To bring: 2.502 × 60 " +
			"× 100.114 = 15.03 g. In 57.4 kg of water that is 2.615 meq/L, × 50.04 = 130.9, with the 26 of the water 156.9 mg/L. How much acid a yeast " +
			"makes has no such check: the spread is in the working. Yeast suppliers advise an alkalinity of 100 to 200 mg/L as CaCO3 for a sugar wash and a " +
			"pH above 3.5 to 4.0 (Hard seltzer: intro to the lighter side of brewing; Best practices: hard seltzer fermentation, 2021; read)."},
		Work: func(w *Working) {
			f := hallFerment()
			d := must(f.BufferFor(material.PotassiumBicarbonate(), 3.5))
			w.Step("%s for the usual acids; %s if yeast makes least, %s if most.", d.Mass.Value.Text(units.Gram, 1), d.Mass.Low.Text(units.Gram, 1),
				d.Mass.High.Text(units.Gram, 1))
			f.Buffer = d.Buffer.Dose(d.Mass.Value)
			end := must(f.At(units.Percent.Of(100)))
			w.Step("The water then has an alkalinity of %s and %s of potassium.", d.Water.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0),
				d.Water.Ion(water.Potassium).Text(units.MilligramPerLitre, 0))
			passedOn(w, end)
			w.Answer("potassium bicarbonate", d.Mass.Value.In(units.Gram), 1, "g", 15.03, 0.1)
			w.Answer("alkalinity of the water", d.Water.Alkalinity().In(units.MilligramPerLitreCaCO3), 0, "mg/L as CaCO3", 156.9, 1)
		},
	}
}

func cellsToPitch() Problem {
	return Problem{
		Title: "Cells to pitch",
		Ask:   "60 L of 7.1 °P are pitched at a million cells a millilitre and degree Plato. How many cells is that?",
		Given: []string{"60 L, 7.1 °P", "1 million/mL/°P"},
		Source: Source{ByHand, "60,000 mL × 7.1 × a million = 426 billion. The rate is that of brewing textbooks (Briggs et al. 2004; " +
			"recalled from memory), from 0.5 to 1.5 million."},
		Work: func(w *Working) {
			rate := yeast.UsualRate()
			cells := must(yeast.CellsToPitch(rate.Value, units.DegreePlato.Of(7.1), units.Litre.Of(60)))
			few := must(yeast.CellsToPitch(rate.Low, units.DegreePlato.Of(7.1), units.Litre.Of(60)))
			many := must(yeast.CellsToPitch(rate.High, units.DegreePlato.Of(7.1), units.Litre.Of(60)))
			w.Step("Rate %.1f million cells for each millilitre and degree, times %.0f mL, times 7.1.", rate.Value.In(units.MillionPerMillilitrePlato),
				units.Litre.Of(60).In(units.Millilitre))
			w.Step("From %s to %s by the spread of the rate.", few.Text(units.BillionCells, 0), many.Text(units.BillionCells, 0))
			w.Answer("cells", cells.In(units.BillionCells), 0, "billion", 426, 0.5)
		},
	}
}

func dryYeastToWeigh() Problem {
	return Problem{
		Title:  "Dry yeast, a year old",
		Ask:    "426 billion live cells shall come from dry yeast kept cold for a year. How much is weighed?",
		Given:  []string{"10 billion cells a gram when packed (from 5 to 25)", "4 % lost in a year in the cold"},
		Source: Source{ByHand, "426/(10 × 0.96) = 44.4 g (cells and loss from supplier sheets, recalled from memory; the cold is taken as 4 °C)."},
		Work: func(w *Working) {
			pack := must(yeast.DryPack(units.Cells{}, units.Celsius.Of(4)))
			p := must(pack.Need(units.BillionCells.Of(426), 365*24*time.Hour))
			w.Step("%s of the cells are alive.", p.Viable.Text(units.Percent, 1))
			w.Step("With the most cells in a gram %s would do, with the fewest it takes %s.", p.Mass.Low.Text(units.Gram, 0), p.Mass.High.Text(units.Gram, 0))
			w.Answer("dry yeast", p.Mass.Value.In(units.Gram), 1, "g", 44.4, 0.2)
		},
	}
}

func oldLiquidYeast() Problem {
	return Problem{
		Title: "A pack of liquid yeast, two months old",
		Ask:   "A pack held 100 billion cells and loses 0.7 % of the living each day in the cold. How many are alive after 60 days?",
		Given: []string{"100 billion cells, 60 days, 0.7 % a day", "a batch that wants 426 billion cells"},
		Source: Source{ByHand, "100 × (1 − 0.007)^60 = 65.61; as a steady loss 100 × exp(−0.007 × 60) = 65.70. The rate is common " +
			"practice without a source; strains differ by a factor of two."},
		Work: func(w *Working) {
			pack := must(yeast.LiquidPack(units.Cells{}))
			alive := must(pack.Alive(60 * 24 * time.Hour))
			p := must(pack.Need(units.BillionCells.Of(426), 60*24*time.Hour))
			w.Step("The living die in proportion to what is left: %s after 60 days.", alive.Text(units.BillionCells, 1))
			w.Step("The 426 billion of the batch would take %.1f such packs; better a starter.", p.Packs.Value)
			w.Answer("alive", alive.In(units.BillionCells), 1, "billion", 65.70, 0.1)
		},
	}
}

func yeastFromExtract() Problem {
	return Problem{
		Title: "What a starter grows",
		Ask:   "80 billion cells shall become 200 in a starter of 10 °P without air. How much extract does it take?",
		Given: []string{"120 billion new cells", "20 billion cells in a gram of dry yeast (15 to 25)"},
		Source: Source{ByHand, "120/20 = 6.0 g of dry yeast. Balling, Die Gährungschemie: 5.323 g of dry yeast from 100 g of extract " +
			"(read): 6.0/0.05323 = 112.7 g, in 0.1127/0.10 = 1.127 kg, which is 1.084 L at 1.040 × 0.9982 kg/L."},
		Work: func(w *Working) {
			s := must(yeast.StarterFor(units.BillionCells.Of(80), units.BillionCells.Of(200), units.DegreePlato.Of(10)))
			w.Step("New cells %s, which weigh %s dry.", s.Grown, s.Balance.DryYeast.Text(units.Gram, 2))
			w.Step("%s of extract in %s; the new yeast holds %s of nitrogen, which malt brings and sugar does not.", s.Extract.Text(units.Gram, 1),
				s.Volume.Text(units.Litre, 3), s.Feed.Text(units.Gram, 2))
			w.Answer("extract", s.Extract.In(units.Gram), 1, "g", 112.7, 0.1)
			w.Answer("volume", s.Volume.In(units.Litre), 2, "L", 1.084, 0.005)
		},
	}
}

func alkalinityForPH4() Problem {
	return Problem{
		Title: "The alkalinity that holds pH 4",
		Ask: "60 L are to end at pH 4.00 under their own CO2. The yeast takes up 4 mmol/L of ammonium from diammonium phosphate and " +
			"makes 2 mmol/L of succinic acid. Which alkalinity is that, and how much potassium bicarbonate brings it?",
		Given: []string{"60 L, 20 °C, CO2 of 1 atm", "alkalinity of the water 26 mg/L as CaCO3",
			"2 mmol/L of phosphate, 2 mmol/L of succinic acid, 4 mmol/L of ammonium taken up"},
		Source: Source{ByHand, "Activity coefficients by Davies at 3 mmol/L: 0.942 and 0.788. HCO3: 10^(4 − 1.4069 − 6.3819) × " +
			"0.994/0.942 = 0.172 mmol/L (Plummer and Busenberg 1982). H: 0.1/0.942 = 0.106. H3PO4 (pK 2.12 at 20 °C): 2/(1 + 75.9/0.942) = 0.0245. " +
			"Succinic acid (pK 4.22 and 5.64; NIST database 46, brought to 20 °C): once given up 0.640, twice 0.018 of what is whole, so " +
			"it keeps 1.593 of its 2 protons: 2 × 1.593 = 3.186. Alkalinity 0.172 − 0.106 − 0.0245 − 3.186 = −3.145 mEq/L × 50.043 = −157.4 mg/L. " +
			"Without a base: 26/50.043 + 2 (HPO4) − 4 (ammonium) − 2 × 2 (succinic acid) = −5.480 mEq/L. To bring: 2.335 mEq/L × 100.114 × 60 L = 14.03 g."},
		Work: func(w *Working) {
			v, gas := units.Litre.Of(60), units.StandardAtmosphere.Of(1)
			end := must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(26-6*50.043),
				water.Phosphate.At(units.MilligramPerLitre.Of(2*94.970)), water.Succinate.At(units.MilligramPerLitre.Of(2*116.072))))
			want := must(end.AlkalinityAt(4, gas))
			w.Step("Alkalinity counts the protons that the acids still hold as negative: at pH 4 it is %s, without a base %s.",
				want.Text(units.MilligramPerLitreCaCO3, 0), end.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
			w.Step("Left alone it would end at pH %.2f.", must(end.Under(gas)).PH())
			base := must(end.BaseToAlkalinity(material.PotassiumBicarbonate(), want, v))
			w.Step("A gram of %s brings %.3f mEq; to bring are %s, %s of it.", material.PotassiumBicarbonate(),
				1000/material.PotassiumBicarbonate().MolarMass().In(units.GramPerMole),
				want.Minus(end.Alkalinity()).Text(units.MilligramPerLitreCaCO3, 0), base.Text(units.Gram, 2))
			with := must(end.Add(v, material.PotassiumBicarbonate().Dose(base)))
			w.Answer("alkalinity at pH 4", want.In(units.MilligramPerLitreCaCO3), 1, "mg/L as CaCO3", -157.4, 1)
			w.Answer("potassium bicarbonate", base.In(units.Gram), 1, "g", 14.03, 0.1)
			w.Answer("pH with it", must(with.Under(gas)).PH(), 2, "", 4.00, 0.01)
		},
	}
}
