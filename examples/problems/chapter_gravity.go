package main

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

func gravityChapter() Chapter {
	return Chapter{
		Title: "3 Gravity scales and extract",
		Intro: "One density has many names: specific gravity, points, °P, °Bx, °Bé. Each stands for two temperatures, and some for weighing in air.",
		Problems: []Problem{
			brixInAir(), gramsInALitre(), readInAWarmJar(), belowOne(), fourRoadsToPlato(), indexOfSyrup(), warmRefractometer(),
		},
	}
}

func brixInAir() Problem {
	return Problem{
		Title: "A table made by weighing in air",
		Ask:   "The old table of Brix gives specific gravities 20/20 °C in air. What does it print for 10 and 14 °Bx?",
		Given: []string{"10 °Bx and 14 °Bx"},
		Source: Source{Read, "GNU units 2.22 (A. Mariano, 2022), definitions of units, which carry NBS Circular 440 (Bates et al., 1942), table 114, row by " +
			"row: 1.04003 and 1.05683. The circular itself was not seen. ICUMSA SPS-4 lies up to 0.00003 higher here."},
		Work: func(w *Working) {
			for _, row := range []struct {
				bx    units.Extract
				print float64
			}{{units.DegreePlato.Of(10), 1.04003}, {units.DegreePlato.Of(14), 1.05683}} {
				g := must(gravity.FromExtract(row.bx))
				air := must(g.As(gravity.At20, gravity.InAir))
				w.Step("%s: %s in vacuum, %.5f in air, where both liquid and water lose 1.2 kg/m³.", row.bx.Text(units.DegreePlato, 0), g.Text(5), air)
				w.Answer(row.bx.Text(units.DegreePlato, 0)+" in air", air, 5, "", row.print, 0.00004)
			}
		},
	}
}

func gramsInALitre() Problem {
	return Problem{
		Title: "From a gravity at 15 °C to grams in a litre",
		Ask:   "An old German table goes by the specific gravity 15/15 °C. How much extract is in a litre at 1.0100 and at 1.0170?",
		Given: []string{"specific gravity 15/15 °C 1.0100 and 1.0170"},
		Source: Source{Read, "German official table of the Kaiserliche Normal-Eichungs-Kommission, as table XIX in König, handbook of food analysis: 2.58 " +
			"and 4.39 g/100 mL, so 25.8 and 43.9 g/L. Half a digit of each column is 0.11 g/L."},
		Work: func(w *Working) {
			for _, row := range []struct{ sg, print float64 }{{1.0100, 25.8}, {1.0170, 43.9}} {
				g := must(gravity.FromReference(row.sg, gravity.At15, gravity.InVacuum))
				c := must(gravity.ExtractConcentration(g.Extract(), units.Celsius.Of(15)))
				w.Step("%.4f at 15/15 °C is %s at 20/20 °C, %s, and at 15 °C a litre of it holds %s.", row.sg, g.Text(5),
					g.Extract().Text(units.DegreePlato, 3), c.Text(units.GramPerLitre, 2))
				w.Answer(fmt.Sprintf("extract at %.4f", row.sg), c.In(units.GramPerLitre), 1, "g/L", row.print, 0.11)
			}
		},
	}
}

func readInAWarmJar() Problem {
	return Problem{
		Title: "The hydrometer in a warm wash",
		Ask:   "The wash for the village hall is still at 30 °C and the hydrometer, made for 20/20 °C, shows 1.0360. What will it show at 20 °C?",
		Given: []string{"reading 1.0360 at 30 °C", "no alcohol yet", "glass grows by 25 millionths a kelvin"},
		Source: Source{ByHand, "From 20 to 30 °C water falls by 998.203 − 995.650 = 2.553 kg/m³ and, by the temperature terms of ICUMSA SPS-4 with 9.7 " +
			"% of sugar, " +
			"another 0.1·(46.27·0.097 + 7.17·0.0094) − 0.01·59.8·0.097 + 0.001·47·0.097 = 0.40: together 2.95. " +
			"Glass: 1.036 × 0.000025 × 10 = 0.00026 the other way. 2.95/998.2 − 0.00026 = 0.00270. 1.0360 + 0.0027 = 1.0387."},
		Work: func(w *Working) {
			h := gravity.Hydrometer{Reference: gravity.At20}
			g := must(h.Correct(1.0360, units.StrengthByVolume{}, units.Celsius.Of(30)))
			w.Step("The liquid is lighter because it is warm; the float is a little larger too. Solved for the extract: %s.",
				g.Extract().Text(units.DegreePlato, 2))
			w.Step("At 20 °C that is %s, %.4f above the reading.", g.Text(4), g.SG()-1.0360)
			w.Answer("gravity 20/20 °C", g.SG(), 4, "", 1.0387, 0.0001)
		},
	}
}

func belowOne() Problem {
	return Problem{
		Title: "A reading below water",
		Ask:   "Nothing but 4 g of ethanol in 100 g: what is the gravity, and what apparent extract does a saccharometer show?",
		Given: []string{"4 % mass of ethanol, no extract, 20 °C"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, 102nd ed., Concentrative properties of aqueous solutions (read in a public " +
			"transcription of the table): ethanol 4 % has 0.9910 g/mL, so 0.9910/0.99820 = 0.9928. " +
			"Near zero a degree Plato is 3.852 kg/m³ (first coefficient of ICUMSA SPS-4): (991.0 − 998.2)/3.852 = −1.87 °P."},
		Work: func(w *Working) {
			s := must(gravity.NewSolution(units.Gram.Of(96), units.Mass{}, units.Gram.Of(4)))
			g := s.Gravity()
			w.Step("The gravity is %s: ethanol is lighter than water, and no sugar holds against it.", g.Text(5))
			w.Step("The scale of sugar, continued below zero with the same polynomial, reads %s.", g.Extract().Text(units.DegreePlato, 2))
			w.Answer("gravity", g.SG(), 4, "", 0.9928, 0.00025)
			w.Answer("apparent extract", g.Extract().In(units.DegreePlato), 2, "°P", -1.87, 0.07)
		},
	}
}

func fourRoadsToPlato() Problem {
	return Problem{
		Title: "Rival formulas from gravity to extract",
		Ask:   "Published formulas turn 1.048 into degrees Plato. How far are they apart?",
		Given: []string{"specific gravity 1.048 at 20/20 °C"},
		Source: Source{ByHand, "Lincoln's quadratic: (463 − 205·1.048)·0.048 = 248.16·0.048 = 11.912 °P. The table that all stand for: NBS Circular " +
			"440 table 114 prints 1.04837 in air for 12 °Bx, 1.04418 for 11, so 1.048 + 0.00006 lies at 11 + 0.00388/0.00419 = 11.926 °Bx."},
		Work: func(w *Working) {
			g := must(gravity.FromSG(1.048))
			for _, m := range g.ScaleMethods() {
				w.Step("%s: %s.", m.Name, m.Extract.Text(units.DegreePlato, 3))
			}
			w.Answer("default, ICUMSA SPS-4", g.Extract().In(units.DegreePlato), 2, "°P", 11.926, 0.01)
			w.Answer("Lincoln", must(rival.PlatoLincoln(1.048)).In(units.DegreePlato), 3, "°P", 11.912, 0.001)
		},
	}
}

func indexOfSyrup() Problem {
	return Problem{
		Title: "What the refractometer sees",
		Ask:   "What is the refractive index of syrups of 10, 20 and 50 °Bx, and which scale value belongs to 1.36384?",
		Given: []string{"20 °C, 589 nm"},
		Source: Source{secondHand, "10 °Bx 1.34782, 20 °Bx 1.36384, 50 °Bx 1.42009: check values in a collection of engineering data, which gives them " +
			"as ICUMSA 1974; the table itself was not seen."},
		Work: func(w *Working) {
			for _, row := range []struct {
				bx    units.Extract
				print float64
			}{{units.DegreePlato.Of(10), 1.34782}, {units.DegreePlato.Of(20), 1.36384}, {units.DegreePlato.Of(50), 1.42009}} {
				n := must(gravity.RefractiveIndex(row.bx))
				w.Step("%s: %.5f.", row.bx.Text(units.DegreePlato, 0), n)
				w.Answer("index at "+row.bx.Text(units.DegreePlato, 0), n, 5, "", row.print, 0.00003)
			}
			w.Answer("scale at 1.36384", must(gravity.BrixFromIndex(1.36384)).In(units.DegreePlato), 2, "°Bx", 20, 0.02)
		},
	}
}

func warmRefractometer() Problem {
	return Problem{
		Title: "A refractometer without compensation",
		Ask: "An uncompensated refractometer set for 20 °C shows 12.0 °Bx in must of 25 °C, and 15.0 °Bx in must of 15 °C. How much do the two " +
			"musts really hold?",
		Given: []string{"reading 12.0 °Bx at 25 °C", "reading 15.0 °Bx at 15 °C"},
		Source: Source{Read, "International temperature correction table of 1936 as the CRC Handbook prints it (and M. T. Flanagan's scientific library " +
			"carries it): +0.32 at 25 °C both for 10 and 15 %; −0.31 at 15 °C for 15 %. OIV-MA-AS2-02 table I: −0.33 at 15 °C for 15 %. 12.0 + 0.32 = " +
			"12.32; 15.0 − 0.31 = 14.69 or 15.0 − 0.33 = 14.67."},
		Work: func(w *Working) {
			warm, cold := units.DegreePlato.Of(12), units.DegreePlato.Of(15)
			a := must(gravity.RefractometerCorrection(warm, units.Celsius.Of(25)))
			b := must(gravity.RefractometerCorrection(cold, units.Celsius.Of(15)))
			c := must(rival.RefractometerCorrectionOIV(cold, units.Celsius.Of(15)))
			w.Step("A warm syrup bends light less, so the reading is too low: the correction is added, and taken off below 20 °C. Between the printed columns " +
				"it is interpolated.")
			w.Step("At 25 °C add %s; at 15 °C take off %.2f by one table, %.2f by the other.", a.Text(units.DegreePlato, 2),
				-b.In(units.DegreePlato), -c.In(units.DegreePlato))
			w.Answer("must of 25 °C", warm.Plus(a).In(units.DegreePlato), 2, "°Bx", 12.32, 0.005)
			w.Answer("must of 15 °C, CRC", cold.Plus(b).In(units.DegreePlato), 2, "°Bx", 14.69, 0.005)
			w.Answer("must of 15 °C, OIV", cold.Plus(c).In(units.DegreePlato), 2, "°Bx", 14.67, 0.005)
		},
	}
}
