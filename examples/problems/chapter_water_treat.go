package main

import (
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func reportAsPrinted() Problem {
	return Problem{
		Title: "A report in its own units",
		Ask: "A laboratory prints calcium 2.0 mmol/L, nitrate 5.0 mg/L as N, sulfate 20 mg/L as S, and an acid capacity of 3.0 mmol/L to pH 4.3. What is " +
			"that in mg/L?",
		Given: []string{"Ca 2.0 mmol/L, NO3 5.0 mg/L as N, SO4 20 mg/L as S", "acid capacity to pH 4.3: 3.0 mmol/L"},
		Source: Source{ByHand, "Ca 2.0 × 40.078 = 80.16 mg/L. NO3 5.0 × 62.004/14.007 = 22.13 mg/L. SO4 20 × 96.056/32.06 = 59.92 mg/L. " +
			"At pH 4.3 the sample itself took 10^−4.3 = 0.0501 mmol/L: (3.0 − 0.0501) × 50.043 = 147.6 mg/L as CaCO3."},
		Work: func(w *Working) {
			r := water.Report{Temperature: units.Celsius.Of(12), Endpoint: 4.3, Alkalinity: 3, AlkalinityAs: water.AsMillimoles,
				Readings: []water.ReportLine{{Ion: water.Calcium, Value: 2, As: water.AsMillimoles}, {Ion: water.Nitrate, Value: 5, As: water.AsNitrogen},
					{Ion: water.Sulfate, Value: 20, As: water.AsSulfur}}}
			p, notes, err := r.Profile()
			must(p, err)
			w.Step("Hardness %s, residual alkalinity %s.", p.Hardness().Text(units.MilligramPerLitreCaCO3, 0),
				p.ResidualAlkalinity().Text(units.MilligramPerLitreCaCO3, 0))
			for _, n := range notes {
				w.Step("Note: %s.", n)
			}
			w.Answer("calcium", p.Ion(water.Calcium).In(units.MilligramPerLitre), 2, "mg/L", 80.16, 0.005)
			w.Answer("nitrate", p.Ion(water.Nitrate).In(units.MilligramPerLitre), 2, "mg/L", 22.13, 0.005)
			w.Answer("sulfate", p.Ion(water.Sulfate).In(units.MilligramPerLitre), 2, "mg/L", 59.92, 0.005)
			w.Answer("alkalinity", p.Alkalinity().In(units.MilligramPerLitreCaCO3), 1, "mg/L as CaCO3", 147.6, 0.3)
		},
	}
}

func boiledHardWater() Problem {
	return Problem{
		Title: "Boiling a hard water",
		Ask:   "A water of calcium bicarbonate, 300 mg/L as CaCO3 of hardness and alkalinity, is boiled long enough. What is left, and how much scale comes out?",
		Given: []string{"calcium 120.13 mg/L, alkalinity 300 mg/L as CaCO3", "calcite at rest with the CO2 of air at 90 °C"},
		Source: Source{Computed, "By a program of its own with the constants of Plummer & Busenberg (1982) at 90 °C (pKH 1.9427, pK1 6.3781, pK2 10.1350, " +
			"calcite 9.1217) and activities by Davies: alkalinity 21.0 mg/L as CaCO3, calcium 8.43 mg/L, scale 279.0 mg/L. " +
			"It leaves out the ion pair CaCO3, about 0.8 mg/L, so 1.2 is allowed."},
		Work: func(w *Working) {
			p := must(water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(300), water.Calcium.At(units.MilligramPerLitre.Of(120.13))))
			d := must(p.Boiled())
			after := d.Equilibrium.Water()
			w.Step("CO2 goes with the steam, the pH rises to %.2f and calcite drops out: %s.", d.Equilibrium.PH(), d.Mass.Text(units.MilligramPerLitre, 0))
			w.Step("Softer by %s: nearly all of the temporary hardness.", p.Hardness().Minus(after.Hardness()).Text(units.MilligramPerLitreCaCO3, 0))
			w.Answer("alkalinity left", after.Alkalinity().In(units.MilligramPerLitreCaCO3), 1, "mg/L as CaCO3", 21.0, 1.2)
			w.Answer("calcium left", after.Ion(water.Calcium).In(units.MilligramPerLitre), 1, "mg/L", 8.43, 0.5)
			w.Answer("scale", d.Mass.In(units.MilligramPerLitre), 0, "mg/L", 279.0, 1.2)
		},
	}
}

func throughTheMembrane() Problem {
	return Problem{
		Title: "What a membrane lets through",
		Ask:   "Reverse osmosis holds back 95 % of the ions of this water. What does the permeate hold, and why is it more acid than the feed?",
		Given: []string{moderateWater, "pH 7.50 at 20 °C", "95 % held back (common practice, no source)"},
		Source: Source{ByHand, "A twentieth of each: calcium 60/20 = 3.0 mg/L, alkalinity 144/20 = 7.2 mg/L as CaCO3. All of the CO2 passes, 0.199 mmol/L " +
			"by PHREEQC for the feed; with a twentieth of the HCO3− the pH falls by log 20 = 1.30 and activities add 0.03: 7.50 − 1.30 + 0.03 = 6.23."},
		Work: func(w *Working) {
			feed := must(moderate(units.Celsius.Of(20)).WithPH(7.5))
			p := must(feed.Permeate(units.Percent.Of(95)))
			ph, _ := p.PH()
			w.Step("CO2 before %s, after %s.", must(feed.Equilibrium()).Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 3),
				must(p.Equilibrium()).Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 3))
			w.Step("In open air it would come to pH %.1f.", must(p.InAir()).PH())
			w.Answer("calcium", p.Ion(water.Calcium).In(units.MilligramPerLitre), 1, "mg/L", 3.0, 0.05)
			w.Answer("alkalinity", p.Alkalinity().In(units.MilligramPerLitreCaCO3), 1, "mg/L as CaCO3", 7.2, 0.05)
			w.Answer("pH", ph, 2, "", 6.23, 0.03)
		},
	}
}

func againstChlorine() Problem {
	return Problem{
		Title: "Against chlorine in the tap water",
		Ask:   "60 L of tap water hold 1.0 mg/L of free chlorine, counted as Cl2. How much sodium metabisulfite takes it out, and how much potassium metabisulfite?",
		Given: []string{"60 L, free chlorine 1.0 mg/L as Cl2"},
		Source: Source{ByHand, "Cl2 70.90 g/mol: 60 mg are 0.84626 mmol; each takes one HSO3−, and a mole of metabisulfite makes two. Na2S2O5 190.095 " +
			"g/mol: 0.84626/2 × 190.095 = 80.43 mg (1.34 mg for a milligram). K2S2O5 222.311: 94.07 mg. " +
			"A tenth more is usual in the field: 88.48 mg."},
		Work: func(w *Working) {
			v, left := units.Litre.Of(60), water.FreeChlorine(units.MilligramPerLitre.Of(1), water.AsCl2)
			na := must(water.Profile{}.Dechlorinate(material.SodiumMetabisulfite(), left, v))
			k := must(water.Profile{}.Dechlorinate(material.PotassiumMetabisulfite(), left, v))
			w.Step("It leaves chloride %s and sulfate %s, and takes %s of alkalinity.", na.Water.Ion(water.Chloride).Text(units.MilligramPerLitre, 2),
				na.Water.Ion(water.Sulfate).Text(units.MilligramPerLitre, 2),
				units.CalciumCarbonate{}.Minus(na.Water.Alkalinity()).Text(units.MilligramPerLitreCaCO3, 2))
			w.Step("A milligram of chlorine takes %.2f mg of it.", na.Least.In(units.Milligram)/60)
			w.Answer("sodium metabisulfite", na.Least.In(units.Milligram), 1, "mg", 80.43, 0.01)
			w.Answer("potassium metabisulfite", k.Least.In(units.Milligram), 1, "mg", 94.07, 0.01)
			w.Answer("sodium metabisulfite with a tenth more", na.Dose.In(units.Milligram), 1, "mg", 88.48, 0.02)
			w.Caution(na.Cautions.Texts()...)
		},
	}
}

func nitrateTwice() Problem {
	return Problem{
		Title: "One limit for nitrate, two numbers",
		Ask:   "A well shows 45 mg/L of nitrate. Is it above the limit of the United States, and of the European Union?",
		Given: []string{"nitrate 45 mg/L as NO3"},
		Source: Source{Read, "40 CFR 141.62: nitrate 10 mg/L as N. Directive 98/83/EC annex I part B (1998; replaced in 2023 by Directive (EU) 2020/2184, " +
			"which keeps it, recalled from memory): nitrate 50 mg/L as NO3. 45 × 14.007/62.004 = 10.17 mg/L as N."},
		Work: func(w *Working) {
			p := must(water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(100), water.Nitrate.At(units.MilligramPerLitre.Of(45))))
			for _, f := range p.CheckDrinking() {
				w.Step("Found: %s.", f)
			}
			limit := func(a water.Authority, substance string) float64 {
				for _, l := range water.DrinkingLimits() {
					if l.Authority == a && l.Substance == substance {
						return l.Most.In(units.MilligramPerLitre)
					}
				}
				return 0
			}
			nitrogen := must(chemistry.MolarMass("N")) / must(chemistry.MolarMass("NO3"))
			w.Answer("the well as nitrogen", p.Ion(water.Nitrate).In(units.MilligramPerLitre)*nitrogen, 2, "mg/L as N", 10.17, 0.005)
			w.Answer("limit of the United States", limit(water.USRegulation, "nitrate as N"), 0, "mg/L as N", 10, 0)
			w.Answer("limit of the European Union", limit(water.EUDirective, "nitrate"), 0, "mg/L as NO3", 50, 0)
			w.Caution("Limits change: check the law in force where you are.")
		},
	}
}

func sodiumAtMost() Problem {
	return Problem{
		Title: "When sodium is limited",
		Ask:   "A litre of pure water shall have 100 mg/L of chloride, from table salt alone, with sodium at most 40 mg/L. How much salt, and what is missing?",
		Given: []string{"1 L of pure water, table salt only", "chloride 100 mg/L wanted, sodium 40 mg/L at most"},
		Source: Source{ByHand, "Sodium 40 mg/L is 40/22.990 = 1.73989 mmol, so salt 1.73989 × 58.440 = 101.68 mg and chloride 1.73989 × 35.45 = 61.68 " +
			"mg/L: 38.32 mg/L too little. " +
			"Each mg of sodium more brings 35.45/22.990 = 1.5420 mg of chloride; the sum of squares falls by 2 × 38.32 × 1.5420 = 118.18 for it."},
		Work: func(w *Working) {
			ex := must(water.Request{Volume: units.Litre.Of(1), Salts: []water.Stock{{Salt: material.TableSalt()}},
				Targets: []water.Target{water.Chloride.Aim(units.MilligramPerLitre.Of(100))},
				Limits:  []water.Bound{water.Sodium.AtMost(units.MilligramPerLitre.Of(40))}}.Explain())
			for _, r := range ex.Reasons {
				w.Step("%s.", r)
			}
			for _, b := range ex.Binding {
				w.Step("What binds: %s.", b.Name)
				w.Answer("fall of the sum of squares for 1 "+b.Unit+" more of it", b.Cost, 1, "(mg/L)²", 118.18, 0.06)
			}
			w.Answer("table salt", ex.Recipe.Doses[0].Mass.In(units.Milligram), 1, "mg", 101.68, 0.01)
			w.Answer("chloride missing", ex.Recipe.Deviation.In(units.MilligramPerLitre), 2, "mg/L", 38.32, 0.01)
		},
	}
}

func conductivityOfIons() Problem {
	return Problem{
		Title: "What a conductivity meter shows",
		Ask:   "What is the conductivity of this water, from its ions, at 25 and at 20 °C? A meter shows 600 µS/cm at 25 °C: does it fit the report?",
		Given: []string{moderateWater + ", pH 7.5", "measured 600 µS/cm at 25 °C"},
		Source: Source{Computed, "PHREEQC 3 of the U.S. Geological Survey, data base phreeqc.dat: 499.0 µS/cm at 25 °C, 445.5 at 20 °C; 5 % is allowed. " +
			"By hand the limiting conductivities (CRC Handbook, recalled from memory) give more, as the ions hinder each other: " +
			"2.994 × 59.5 + 0.823 × 53.0 + 0.870 × 50.1 + 0.077 × 73.5 + 0.846 × 76.3 + 1.041 × 80.0 + 2.878 × 44.5 = 547. Measured over computed: " +
			"600/499.0 = 1.20."},
		Work: func(w *Working) {
			at := must(must(moderate(units.Celsius.Of(25)).WithPH(7.5)).Equilibrium())
			k := at.Conductivity()
			salted := must(must(must(moderate(units.Celsius.Of(25)).WithPH(7.5)).Add(units.Litre.Of(1),
				material.TableSalt().Dose(units.Milligram.Of(50)))).Equilibrium())
			w.Step("Each ion carries its charge at its own speed; at an ionic strength of %s they slow each other down.", at.IonicStrength().Text(units.MolePerLitre, 4))
			more := salted.Conductivity().Minus(k)
			w.Step("50 mg/L of table salt would add %s: the %s that are too many are about as much.", more.Text(units.MicrosiemensPerCentimetre, 0),
				units.MicrosiemensPerCentimetre.Of(600).Minus(k).Text(units.MicrosiemensPerCentimetre, 0))
			r := water.Report{Temperature: units.Celsius.Of(25), Alkalinity: 144, AlkalinityAs: water.AsCaCO3, PH: 7.5,
				Conductivity: units.MicrosiemensPerCentimetre.Of(600)}
			for _, i := range []water.Ion{water.Calcium, water.Magnesium, water.Sodium, water.Potassium, water.Chloride, water.Sulfate} {
				r.Readings = append(r.Readings, water.ReportLine{Ion: i, Value: moderate(units.Celsius.Of(25)).Ion(i).In(units.MilligramPerLitre), As: water.AsIon})
			}
			_, notes, err := r.Profile()
			must(r, err)
			for _, n := range notes {
				w.Step("Beside the report the %s. A meter counts ions, not which they are.", n)
			}
			w.Answer("at 25 °C", k.In(units.MicrosiemensPerCentimetre), 0, "µS/cm", 499.0, 25)
			w.Answer("at 20 °C", at.ConductivityAt20().In(units.MicrosiemensPerCentimetre), 0, "µS/cm", 445.5, 22)
			w.Answer("measured over computed", 600/k.In(units.MicrosiemensPerCentimetre), 2, "", 1.20, 0.06)
		},
	}
}
