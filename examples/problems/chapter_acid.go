package main

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func acidChapter() Chapter {
	return Chapter{
		Title: "9 Acid, alkalinity and pH",
		Intro: "A pH is what is left when every charge and every carbon atom is accounted for.",
		Problems: []Problem{
			gasWaterPH(), rainWaterPH(), pressureOfCO2InTap(), acidToAPH(), gypsumSolubility(), calciteUnderGas(), halfNeutralised(), deacidify(),
			acidFromTheBottle(), acidAgainstAlkalinity(), twoConventions(), acidityFactors(), threeBases(), lyeInSoftWater(), limeWater(),
		},
	}
}

func gasWaterPH() Problem {
	return Problem{
		Title: "The pH of soda water",
		Ask:   "Pure water stands under CO2 at 1 atm and 25 °C. What is its pH?",
		Given: []string{"pure water, 25 °C, CO2 at 101.325 kPa"},
		Source: Source{ByHand, "Constants read in Plummer & Busenberg (1982) for 25 °C: pKH 1.468, pK1 6.352. Fugacity 0.995 atm (second virial −123 " +
			"cm³/mol). CO2 = 0.995 × 10^−1.468 = 0.03387 mol/kg; " +
			"the charges of H+ and HCO3− are equal and so are their activities: a(H)² = 10^−6.352 × 0.03387 = 1.506 × 10^−8, pH = 3.911."},
		Work: func(w *Working) {
			e := must(must(water.NewProfile(units.Celsius.Of(25), units.CalciumCarbonate{})).Under(units.StandardAtmosphere.Of(1)))
			w.Step("The fugacity of the gas sets the dissolved CO2; electroneutrality asks for as much HCO3− as H+.")
			w.Step("Dissolved CO2 %s; the HCO3− that balances H+ is only %s.", e.Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 2),
				e.Of(water.BicarbonateFree).Text(units.MillimolePerLitre, 4))
			w.Answer("pH", e.PH(), 3, "", 3.911, 0.005)
		},
	}
}

func rainWaterPH() Problem {
	return Problem{
		Title: "The pH of rain",
		Ask:   "What is the pH of pure water that has stood in open air at 25 °C?",
		Given: []string{"pure water, 25 °C", "air with 420 µmol of CO2 a mole (mean of 2023, recalled from memory)"},
		Source: Source{ByHand, "Constants read in Plummer & Busenberg (1982) for 25 °C: pKH 1.468, pK1 6.352. 420 millionths of an atm: CO2 = 0.000420 × " +
			"10^−1.468 = 0.00001430 mol/kg; HCO3− balances H+, so a(H)² = 10^−6.352 × 0.00001430 = 6.36 × 10^−12; pH = 5.598."},
		Work: func(w *Working) {
			e := must(must(water.NewProfile(units.Celsius.Of(25), units.CalciumCarbonate{})).InAir())
			w.Step("The air presses with %s of CO2.", e.CO2Pressure().Text(units.Kilopascal, 4))
			w.Step("Dissolved CO2 %s: in proportion to the pressure, but the acidity goes with its root.",
				e.Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 4))
			w.Answer("pH", e.PH(), 2, "", 5.598, 0.01)
		},
	}
}

func pressureOfCO2InTap() Problem {
	return Problem{
		Title: "How much CO2 is in the tap water?",
		Ask:   "This water shows pH 7.50 at 20 °C. How much inorganic carbon does it hold, and which CO2 pressure would keep it as it is?",
		Given: []string{moderateWater, "pH 7.50 at 20 °C"},
		Source: Source{Computed, "USGS PHREEQC 3, data base phreeqc.dat: inorganic carbon 3.0706 mmol/kg of water, log(pCO2/atm) −2.2928, which is 0.5164 " +
			"kPa. A litre holds 0.9982 kg of water: 3.0651 mmol/L."},
		Work: func(w *Working) {
			p := must(moderate(units.Celsius.Of(20)).WithPH(7.5))
			e := must(p.Equilibrium())
			w.Step("Alkalinity and pH leave one content of carbon: %s, of which CO2 %s.", e.InorganicCarbon().Text(units.MillimolePerLitre, 4),
				e.Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 4))
			w.Step("Open air has %s, so this water gives off CO2 and its pH rises.", must(p.InAir()).CO2Pressure().Text(units.Kilopascal, 4))
			if index := e.SaturationIndex(water.Calcite); math.Abs(index) < 0.05 {
				w.Step("It is just saturated with calcite: chalk neither drops out nor dissolves.")
			} else {
				w.Step("Its calcite saturation index is %.1f.", index)
			}
			w.Answer("inorganic carbon", e.InorganicCarbon().In(units.MillimolePerLitre), 3, "mmol/L", 3.0651, 0.01)
			w.Answer("CO2 pressure", e.CO2Pressure().In(units.Kilopascal), 3, "kPa", 0.5164, 0.01)
		},
	}
}

func acidToAPH() Problem {
	return Problem{
		Title: "Acid to pH 5.4",
		Ask:   "How much phosphoric, lactic or hydrochloric acid brings a litre of this water to pH 5.4 in a closed vessel, and how much if the CO2 is stirred out?",
		Given: []string{moderateWater, "pH 7.50 at 20 °C", "target pH 5.4"},
		Source: Source{Computed, "USGS PHREEQC 3, data base phreeqc.dat, mmol of pure acid to a kilogram of water: phosphoric 2.5061, lactic (pK 3.86) " +
			"2.6409, hydrochloric 2.5730 closed; " +
			"hydrochloric 2.8854 with the CO2 lost to 10^−3.4 atm. A litre holds 0.9982 kg: 2.5016, 2.6361, 2.5684 and 2.8802 mmol. The tolerance is 1 %."},
		Work: func(w *Working) {
			p := must(moderate(units.Celsius.Of(20)).WithPH(7.5))
			litre := units.Litre.Of(1)
			dose := func(a water.Acid, gas water.CO2Loss) float64 {
				d := must(p.AcidToPH(a, 5.4, litre, gas))
				return d.Concentration.In(units.MillimolePerLitre)
			}
			w.Step("Inorganic carbon now %s; an acid turns HCO3− into CO2.", must(p.Equilibrium()).InorganicCarbon().Text(units.MillimolePerLitre, 3))
			w.Step("The alkalinity is %s. Closed, some of it stays as HCO3− at pH 5.4; open, nearly all must go.",
				p.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
			w.Answer("phosphoric, closed", dose(water.PhosphoricAcid, water.CO2Loss{}), 2, "mmol/L", 2.5016, 0.025)
			w.Answer("lactic, closed", dose(water.LacticAcid, water.CO2Loss{}), 2, "mmol/L", 2.6361, 0.026)
			w.Answer("hydrochloric, closed", dose(water.HydrochloricAcid, water.CO2Loss{}), 2, "mmol/L", 2.5684, 0.026)
			w.Answer("hydrochloric, open", dose(water.HydrochloricAcid, water.CO2LostTo(water.AirCO2(units.Atmosphere{}))), 2, "mmol/L", 2.8802, 0.029)
			w.Caution(water.AcidCautions().Texts()...)
		},
	}
}

func gypsumSolubility() Problem {
	return Problem{
		Title: "How much gypsum dissolves",
		Ask:   "How much gypsum does a kilogram of pure water dissolve at 25 °C, and at 0.5 °C?",
		Given: []string{"pure water, 25 °C and 0.5 °C, under air"},
		Source: Source{Read, "Marshall & Slusher, J. Phys. Chem. 70 (1966), gypsum in pure water (as the US Geological Survey carries it in the test data " +
			"of PHREEQC 3): 0.0151 and 0.0128 mol/kg, 2.60 and 2.20 g/kg. Data bases of geochemistry differ by up to 5 % here; 3 % is allowed."},
		Work: func(w *Working) {
			for _, row := range []struct {
				t             units.Temperature
				print, within float64
			}{{units.Celsius.Of(25), 0.0151, 0.00045}, {units.Celsius.Of(0.5), 0.0128, 0.00038}} {
				d := must(must(water.NewProfile(row.t, units.CalciumCarbonate{})).AtRestWith(water.GypsumMineral, water.CO2LostTo(water.AirCO2(units.Atmosphere{}))))
				// A litre at 20 °C is 0.9982 kg of water.
				mol := d.Amount.In(units.MillimolePerLitre) / 0.9982 / 1000
				w.Step("%s: %.2f g/kg; of the calcium %s are paired with sulfate.", row.t.Text(units.Celsius, 1), mol*material.Gypsum().MolarMass().In(units.GramPerMole),
					d.Equilibrium.Of(must(water.ParseSpecies("CaSO4"))).Text(units.MillimolePerLitre, 2))
				w.Answer("at "+row.t.Text(units.Celsius, 1), mol, 4, "mol/kg", row.print, row.within)
			}
		},
	}
}

func calciteUnderGas() Problem {
	return Problem{
		Title: "Chalk needs CO2",
		Ask:   "How much chalk dissolves in a kilogram of water at 25 °C under 1 bar of CO2?",
		Given: []string{"pure water, 25 °C, CO2 at 1 bar, calcite"},
		Source: Source{Read, "Literature points of calcite at about 1 bar CO2 collected by the US Geological Survey in the test data of PHREEQC 3: 0.00917 " +
			"mol/kg at 25 °C. The points scatter by 5 % (0.00862 at 24 °C) and two geochemical data bases differ by as much " +
			"(0.0089 and 0.0093), so 10 % is allowed."},
		Work: func(w *Working) {
			d := must(must(water.NewProfile(units.Celsius.Of(25), units.CalciumCarbonate{})).AtRestWith(water.Calcite, water.CO2LostTo(units.Bar.Of(1))))
			mol := d.Amount.In(units.MillimolePerLitre) / 0.9982 / 1000
			w.Step("At equilibrium %.5f mol have dissolved in a kilogram, %.2f g; the pH is %.2f.", mol, mol*material.Chalk().MolarMass().In(units.GramPerMole),
				d.Equilibrium.PH())
			w.Step("Whoever doses it as a salt is warned: “%s.”", water.DoseWarnings(units.Litre.Of(60), material.Chalk().Dose(units.Gram.Of(6)))[0])
			w.Answer("solubility", mol, 4, "mol/kg", 0.00917, 0.00092)
		},
	}
}

func halfNeutralised() Problem {
	return Problem{
		Title: "An acid half neutralised",
		Ask:   "A drink holds 20 mmol/L of lactic acid, half of it neutralised with sodium. What is its pH at 25 °C?",
		Given: []string{"lactate 20 mmol/L in all", "sodium 10 mmol/L"},
		Source: Source{ByHand, "pK 3.86 (compilation of organic acids). Half neutralised: pH = pK + log(γ·A/HA). Ionic strength 0.0102, γ = 0.90 " +
			"(Davies), a(H) about 0.00014, H+ 0.16 mmol/L: A = 10.16, HA = 9.84. " +
			"pH = 3.86 + log(0.90 × 10.16/9.84) = 3.86 − 0.046 + 0.014 = 3.83. Buffer: 2.3026 × (20 × 0.508 × 0.492 + 0.16) = 11.9 mEq/L."},
		Work: func(w *Working) {
			wash := water.Totals{StrongIons: units.MilliequivalentPerLitre.Of(10), Lactate: units.MillimolePerLitre.Of(20)}
			ph := must(wash.Equilibrium(units.Celsius.Of(25))).PH()
			buffer := must(wash.Equilibrium(units.Celsius.Of(25))).BufferCapacity()
			w.Step("Electroneutrality: Na+ and H+ against lactate, whose share is set by the pH.")
			w.Step("Here the buffer is at its strongest: %s of base for a unit of pH.", buffer.Text(units.MilliequivalentPerLitre, 1))
			w.Answer("pH", ph, 2, "", 3.83, 0.02)
			w.Answer("buffer", buffer.In(units.MilliequivalentPerLitre), 1, "mEq/L", 11.9, 0.4)
		},
	}
}

func deacidify() Problem {
	return Problem{
		Title: "Potassium bicarbonate against tartaric acid",
		Ask:   "How much potassium bicarbonate takes away 1 g/L of titratable acidity counted as tartaric acid, if nothing drops out?",
		Given: []string{"titratable acidity 1 g/L as tartaric acid"},
		Source: Source{ByHand, "Tartaric acid 150.086 g/mol has two protons, 75.043 g an equivalent; KHCO3 100.114 g/mol has one: 100.114/75.043 = 1.334 " +
			"g/L. (Wine practice takes 0.9 g/L, as some potassium drops out with tartrate.)"},
		Work: func(w *Working) {
			tartaric := must(chemistry.MolarMass("C4H6O6")) / 2
			salt := material.PotassiumBicarbonate().MolarMass().In(units.GramPerMole)
			w.Step("Half a mole of tartaric acid, one of H+, weighs %.3f g; a mole of %s, which takes one H+, %.3f g.", tartaric, material.PotassiumBicarbonate(), salt)
			w.Step("It brings %.0f mg/L of potassium.", salt/tartaric*must(chemistry.MolarMass("K"))/salt*1000)
			w.Answer("potassium bicarbonate", salt/tartaric, 3, "g/L", 1.334, 0.0005)
		},
	}
}
