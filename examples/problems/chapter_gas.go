package main

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

func gasChapter() Chapter {
	return Chapter{
		Title: "10 CO2: the gas, and in water",
		Intro: "CO2 is not quite an ideal gas, and what dissolves goes with its fugacity. All physics is in absolute pressure.",
		Problems: []Problem{
			whatAVolumeWeighs(), roomOfAKilogram(), secondVirialAtRoom(), henryTable(), seaWater(), handbookMoleFraction(), bunsenAtTwenty(),
			cylinderGauge(), boilingInTheHall(),
		},
	}
}

func whatAVolumeWeighs() Problem {
	return Problem{
		Title: "What a volume of CO2 weighs",
		Ask:   "A volume of CO2 is a litre of gas at 0 °C and 1 atm in a litre of drink. How many grams is it, as a real and as an ideal gas?",
		Given: []string{"0 °C, 101.325 kPa, 44.009 g/mol"},
		Source: Source{Read, "IUPAC-NIST Solubility Database, Standard Reference Database 106, CO2 in water, page 62_31: molar volume 22.2605 L/mol, so " +
			"44.009/22.2605 = 1.9770 g/L; ideal 44.009/22.41397 = 1.9635. " +
			"Regulation (EEC) 2676/90 (in force until 2009) has 1.951 g and 0.987 L for the same gas, 1.9767 g/L."},
		Work: func(w *Working) {
			one := units.VolumesCO2.Of(1)
			real := carbonation.RealVolume.Content(one).In(units.GramCO2PerLitre)
			ideal := carbonation.IdealVolume.Content(one).In(units.GramCO2PerLitre)
			d := must(carbonation.GasDensity(units.StandardAtmosphere.Of(1), units.Celsius.Of(0)))
			w.Step("Real %.4f, ideal %.4f g/L: %.1f %% apart, so say which.", real, ideal, 100*(real/ideal-1))
			w.Step("The equation of state finds %s.", d.Text(units.KilogramPerCubicMetre, 4))
			w.Answer("real", real, 4, "g/L", 1.9770, 0.0001)
			w.Answer("ideal", ideal, 4, "g/L", 1.9635, 0.0001)
			w.Answer("equation of state", d.In(units.KilogramPerCubicMetre), 3, "g/L", 1.9767, 0.001)
		},
	}
}

func roomOfAKilogram() Problem {
	return Problem{
		Title: "The room a kilogram of gas takes",
		Ask:   "How many cubic metres does a kilogram of CO2 fill at 20 °C and 1 atm?",
		Given: []string{"1 kg, 20 °C, 101.325 kPa"},
		Source: Source{ByHand, "1000/44.009 = 22.7226 mol; RT/p = 8.314463 × 293.15/101.325 = 24.0551 L/mol; 546.59 L. Real gas: less 22.7226 × 0.1279 = " +
			"2.91 L for the second virial coefficient of −127.9 cm³/mol: 543.7 L, 0.5437 m³."},
		Work: func(w *Working) {
			d := must(carbonation.GasDensity(units.StandardAtmosphere.Of(1), units.Celsius.Of(20)))
			w.Step("Second virial coefficient %.1f cm³/mol: the gas is a little denser than an ideal one.", must(dioxide.SecondVirial(units.Celsius.Of(20))))
			w.Step("Density %s, so a kilogram fills %.4f m³.", d.Text(units.KilogramPerCubicMetre, 4), 1/d.In(units.KilogramPerCubicMetre))
			w.Answer("volume", 1/d.In(units.KilogramPerCubicMetre), 4, "m³", 0.5437, 0.0001)
		},
	}
}

func secondVirialAtRoom() Problem {
	return Problem{
		Title: "How far from ideal?",
		Ask:   "What are the second virial coefficient of CO2 at 25 °C and its fugacity coefficient at 3 bar and 20 °C?",
		Given: []string{"25 °C; 20 °C and 300 kPa absolute"},
		Source: Source{ByHand, "Form of the tables of Kaye & Laby (as in the reference tables of a chemistry text), 137.6 − 87.7·exp(325.7/T) cm³/mol: " +
			"at 298.15 K 137.6 − 87.7 × 2.98162 = −123.9. Fugacity coefficient by that form at 20 °C, B −128.8: exp(−128.8 × 0.3/(8.314463 × " +
			"293.15)) = 0.98427."},
		Work: func(w *Working) {
			b := must(dioxide.SecondVirial(units.Celsius.Of(25)))
			phi := must(dioxide.FugacityCoefficient(units.Celsius.Of(20), units.Bar.Of(3)))
			w.Step("Span & Wagner 1996: B = %.2f cm³/mol at 25 °C.", b)
			w.Step("At 20 °C and 3 bar the gas acts with %.2f %% of its pressure.", 100*phi)
			w.Answer("second virial coefficient", b, 1, "cm³/mol", -123.9, 1.5)
			w.Answer("fugacity coefficient", phi, 4, "", 0.98427, 0.0005)
		},
	}
}

func henryTable() Problem {
	return Problem{
		Title: "Henry's law for the brewer's cellar",
		Ask:   "How much CO2 does a kilogram of water take up at a fugacity of 1 atm, at 4 °C and at 20 °C?",
		Given: []string{"fresh water, 4 °C and 20 °C"},
		Source: Source{Read, "R. F. Weiss, Marine Chemistry 2 (1974) 203, table III (whole, as the library PyCO2SYS carries it), salinity 0, printed in " +
			"hundredths as 6.649 and 3.916: 0.06649 and 0.03916 mol/(kg·atm)."},
		Work: func(w *Working) {
			cold := must(dioxide.HenryWeiss(units.Celsius.Of(4), units.Share{}))
			warm := must(dioxide.HenryWeiss(units.Celsius.Of(20), units.Share{}))
			w.Step("At 4 °C %.5f mol/(kg·atm), at 20 °C %.5f: the cold takes up %.2f times as much.", cold, warm, cold/warm)
			w.Step("The smooth formula behind the drinks (Plummer & Busenberg 1982) has %.5f and %.5f.",
				must(dioxide.HenryPlummerBusenberg(units.Celsius.Of(4))), must(dioxide.HenryPlummerBusenberg(units.Celsius.Of(20))))
			w.Answer("at 4 °C", cold, 5, "mol/(kg·atm)", 0.06649, 0.000005)
			w.Answer("at 20 °C", warm, 5, "mol/(kg·atm)", 0.03916, 0.000005)
		},
	}
}

func seaWater() Problem {
	return Problem{
		Title: "Salt drives gas out",
		Ask:   "How much CO2 does sea water of 35 ‰ take up at 0 °C and at 5 °C, and how much less is that than fresh water?",
		Given: []string{"salinity 3.5 %, 0 °C and 5 °C"},
		Source: Source{Read, "R. F. Weiss, Marine Chemistry 2 (1974) 203, table III (whole, as the library PyCO2SYS carries it), printed in hundredths as " +
			"6.287 and 5.213: 0.06287 and 0.05213 mol/(kg·atm); fresh water at 0 °C 0.07758."},
		Work: func(w *Working) {
			salt := units.Percent.Of(3.5)
			a := must(dioxide.HenryWeiss(units.Celsius.Of(0), salt))
			b := must(dioxide.HenryWeiss(units.Celsius.Of(5), salt))
			fresh := must(dioxide.HenryWeiss(units.Celsius.Of(0), units.Share{}))
			w.Step("ln K0 = A1 + A2·(100/T) + A3·ln(T/100) + S·(B1 + B2·(T/100) + B3·(T/100)²), eq. 12; fresh water %.5f mol/(kg·atm) at 0 °C.", fresh)
			w.Step("Sea water takes up %.1f %% less than fresh water at 0 °C; a brewing water has a thirtieth of its salt, which is nothing.", 100*(1-a/fresh))
			w.Answer("at 0 °C", a, 5, "mol/(kg·atm)", 0.06287, 0.000006)
			w.Answer("at 5 °C", b, 5, "mol/(kg·atm)", 0.05213, 0.000006)
		},
	}
}

func handbookMoleFraction() Problem {
	return Problem{
		Title:  "The handbook's mole fraction",
		Ask:    "What is the mole fraction of CO2 in water at 25 °C under 100 kPa of CO2, and at 10 °C?",
		Given:  []string{"CO2 at 100 kPa, 25 °C and 10 °C"},
		Source: Source{Read, "CRC Handbook of Chemistry and Physics, p. 8-90, solubility of carbon dioxide in water (accuracy 2 %): 0.614 and 0.950 thousandths."},
		Work: func(w *Working) {
			a := must(dioxide.MoleFractionCarroll(units.Celsius.Of(25), units.Kilopascal.Of(100)))
			b := must(dioxide.MoleFractionCarroll(units.Celsius.Of(10), units.Kilopascal.Of(100)))
			w.Step("Carroll, Slupsky & Mather 1991, the relation behind that table: %.7f and %.7f.", a, b)
			w.Step("Plummer & Busenberg: %.7f and %.7f.", must(dioxide.MoleFraction(units.Celsius.Of(25), units.Kilopascal.Of(100))),
				must(dioxide.MoleFraction(units.Celsius.Of(10), units.Kilopascal.Of(100))))
			w.Answer("at 25 °C", 1000*a, 3, "thousandths", 0.614, 0.002)
			w.Answer("at 10 °C", 1000*b, 3, "thousandths", 0.950, 0.002)
		},
	}
}

func bunsenAtTwenty() Problem {
	return Problem{
		Title: "Volumes in water, measured",
		Ask:   "How many volumes of CO2 does pure water hold at rest under 1 atm of CO2 at 20 °C and at 5 °C?",
		Given: []string{"CO2 at 1 atm (beside the water's own vapour), 20 °C and 5 °C"},
		Source: Source{Read, "Murray & Riley 1971, in IUPAC-NIST Standard Reference Database 106, page 62_54: Bunsen coefficients 0.8652 and 1.4199. " +
			"Bunsen counts a litre of gas as an ideal one at 0 °C and takes the litre of water at its temperature: the tolerance is 1.2 %, the scatter of " +
			"measurements and correlations."},
		Work: func(w *Working) {
			pure := carbonation.Liquid{}
			for _, row := range []struct {
				t             units.Temperature
				print, within float64
			}{{units.Celsius.Of(20), 0.8652, 0.010}, {units.Celsius.Of(5), 1.4199, 0.017}} {
				vapour := must(carbonation.WaterVapourPressure(row.t))
				p := units.StandardAtmosphere.Of(1).Plus(vapour)
				c := must(pure.Content(p, row.t))
				w.Step("At %s with %s of vapour: %s.", row.t.Text(units.Celsius, 0), vapour.Text(units.Kilopascal, 3), c.Text(units.GramCO2PerLitre, 4))
				w.Answer("at "+row.t.Text(units.Celsius, 0), carbonation.RealVolume.Volumes(c).In(units.VolumesCO2), 3, "volumes", row.print, row.within)
			}
		},
	}
}

func cylinderGauge() Problem {
	return Problem{
		Title: "What the cylinder's gauge shows",
		Ask:   "A cylinder with liquid CO2 in it: what is its pressure at the triple point, at 20 °C in the hall, and at the critical point?",
		Given: []string{"−56.558 °C, 20 °C, 30.9782 °C", "the hall at 640 m"},
		Source: Source{Read, "R. Span & W. Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509: triple point 216.592 K and 517.964 kPa, critical point 304.1282 " +
			"K and 7377.3 kPa."},
		Work: func(w *Working) {
			triple := must(carbonation.SaturationPressure(units.Celsius.Of(-56.558)))
			critical := must(carbonation.SaturationPressure(units.Celsius.Of(30.9782)))
			hall := must(units.AtAltitude(units.Metre.Of(640)))
			state := must(carbonation.CylinderAt(units.Celsius.Of(20), hall))
			w.Step("Liquid and gas together have one pressure for each temperature, from %s to %s between the two points.", triple.Text(units.Bar, 2),
				critical.Text(units.Bar, 2))
			w.Step("At 20 °C the gauge shows %s, full or nearly empty: weigh the cylinder.", state.Gauge.Text(units.BarGauge, 1))
			w.Answer("triple point", triple.In(units.Kilopascal), 2, "kPa", 517.964, 0.02)
			w.Answer("critical point", critical.In(units.Kilopascal), 1, "kPa", 7377.3, 0.15)
			w.Cautioned(state.Cautions)
		},
	}
}

func boilingInTheHall() Problem {
	return Problem{
		Title: "Where the kettle boils",
		Ask:   "At what temperature does water boil at sea level, and in the hall at 640 m?",
		Given: []string{"101.325 kPa; 640 m"},
		Source: Source{Recalled, "IAPWS: water boils at 99.974 °C under 101.325 kPa; 90 °C has 70.182 kPa, so near 100 °C a kelvin is 3.6 kPa: 101.325 " +
			"− 93.869 = 7.456 kPa, at 3.55 kPa/K 2.1 K lower, 97.87 °C."},
		Work: func(w *Working) {
			sea := must(carbonation.BoilingPoint(units.StandardAtmosphere.Of(1)))
			hall := must(carbonation.BoilingPoint(must(units.AtAltitude(units.Metre.Of(640))).Pressure()))
			w.Step("The air of the hall presses with %s.", must(units.AtAltitude(units.Metre.Of(640))).Pressure().Text(units.Kilopascal, 3))
			w.Step("The vapour pressure of water is solved for the pressure of the air: %s and %s.", sea.Text(units.Celsius, 3), hall.Text(units.Celsius, 2))
			w.Answer("at sea level", sea.In(units.Celsius), 2, "°C", 99.974, 0.01)
			w.Answer("in the hall", hall.In(units.Celsius), 1, "°C", 97.87, 0.1)
		},
	}
}
