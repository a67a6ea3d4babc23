package main

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
)

// ofAKilogram is in kJ.
func ofAKilogram(h ferment.HeatRate) float64 {
	return must(h.Of(units.Kilogram.Of(1))).In(units.Kilojoule)
}

func warmsByItself() Problem {
	return Problem{
		Title:  "How far a ferment would warm itself",
		Ask:    "If no heat could leave, how much would a liquid warm for each 10 g/L of extract that ferments?",
		Given:  []string{"586.6 kJ for a kilogram of extract (common practice)", "heat capacity of a dilute wash 4.0 kJ/L/K"},
		Source: Source{ByHand, "0.010 × 586.6/4.0 = 1.4665 K. The heats in use run from 563 to 652 kJ/kg, so it is 1.4 to 1.6 K."},
		Work: func(w *Working) {
			for _, h := range ferment.HeatRates() {
				w.Step("%s, %.1f kJ/kg: %s.", h.Name(), ofAKilogram(h), must(h.Rise(units.Gram.Of(10), units.Litre.Of(1))).Text(units.KelvinDifference, 2))
			}
			w.Answer("rise", must(ferment.UsualHeat().Rise(units.Gram.Of(10), units.Litre.Of(1))).In(units.KelvinDifference), 2, "K", 1.4665, 0.005)
		},
	}
}

func coolingOnTheBusiestDay() Problem {
	return Problem{
		Title:  "Cooling on the busiest day",
		Ask:    "4.4 kg of sugar ferment, a third of it on the busiest day. What cooling power holds the temperature?",
		Given:  []string{"4.4 kg of extract, a third in 24 h", "586.6 kJ/kg"},
		Source: Source{ByHand, "4.4/3 × 586.6 = 860.3 kJ in 86,400 s: 9.96 W."},
		Work: func(w *Working) {
			share := ferment.PeakDay()
			day := must(units.Kilogram.Try(4.4 * share.Value.In(units.Fraction)))
			h := ferment.UsualHeat()
			p := must(h.CoolingPower(day, 24*time.Hour))
			w.Step("Heat on that day %s.", must(h.Of(day)).Text(units.Kilojoule, 0))
			w.Step("With the higher of the usual figures it would be %s.", must(ferment.HeatRates()[1].CoolingPower(day, 24*time.Hour)).Text(units.Watt, 0))
			w.Answer("cooling power", p.In(units.Watt), 1, "W", 9.96, 0.1)
		},
	}
}

func heatOfTheReaction() Problem {
	return Problem{
		Title: "The heat of the reaction itself",
		Ask:   "How much heat does the reaction of glucose to ethanol and CO2 gas set free in water?",
		Given: []string{"enthalpies of formation: glucose in water −1262.2, ethanol in water −288.3, CO2 gas −393.51 kJ/mol (recalled from memory)"},
		Source: Source{ByHand, "2 × (−288.3) + 2 × (−393.51) + 1262.2 = −101.42 kJ/mol; /180.156 g/mol = 563.0 kJ/kg. Between pure substances " +
			"(solid glucose, liquid ethanol) it would be 2 × (−277.6) + 2 × (−393.5) + 1273.3 = −68.9 kJ/mol, 382 kJ/kg."},
		Work: func(w *Working) {
			h := ferment.HeatRates()[2]
			w.Step("The %s heat: %s.", h.Name(), h.Evidence())
			w.Step("The usual value is %.2f times that.", ofAKilogram(ferment.UsualHeat())/ofAKilogram(h))
			w.Answer("heat", ofAKilogram(h), 0, "kJ/kg", 563.0, 0.2)
		},
	}
}

func gasOfABatch() Problem {
	return Problem{
		Title: "The gas of a batch",
		Ask:   "4.4 kg of sucrose ferment in a hall at 640 m. How much CO2 is that, and how many litres at 20 °C?",
		Given: []string{"4.4 kg of sucrose, yield of a sugar wash", "20 °C, air of 93.87 kPa at 640 m"},
		Source: Source{ByHand, "Mole for mole with the ethanol: 0.49363 × 44.009/46.069 = 0.47156 g/g, 2.0749 kg = 47.147 mol. RT/p = 8.314463 × " +
			"293.15/93.869 = 25.966 L/mol, less 0.128 (second virial): 25.838 × 47.147 = 1218 L."},
		Work: func(w *Working) {
			hall := must(units.AtAltitude(units.Metre.Of(640)))
			made := gravity.SugarWashYield(gravity.AsSucrose).CO2()
			w.Step("A gram of sugar gives %.5f g of CO2.", made.In(units.Fraction))
			mass, volume, err := carbonation.GivenOff(units.Kilogram.Of(4.4), made, units.Celsius.Of(20), hall)
			must(mass, err)
			w.Step("%s, %s.", mass.Text(units.Kilogram, 4), volume.Text(units.Litre, 1))
			w.Answer("mass", mass.In(units.Kilogram), 3, "kg", 2.0749, 0.0005)
			w.Answer("volume", volume.In(units.Litre), 0, "L", 1218, 1)
			w.Caution(ferment.GasCaution.Text())
		},
	}
}
