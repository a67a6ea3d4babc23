package main

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// still is water as a drink, for sums by hand.
func still() carbonation.Liquid {
	return must(carbonation.NewLiquid(must(carbonation.DrinkOf(units.StrengthByVolume{}, units.Extract{}))))
}

func burstOfPressure() Problem {
	return Problem{
		Title: "A burst, and when to stop it",
		Ask: "Water of 5 °C with 1.6 g/L shall come to 5.0 g/L under 30 psi. The keg closes 1.25 % of the remaining gap each hour. When is the pressure " +
			"set back, and to what?",
		Given: []string{"pure water, 5 °C, 1.6 g/L, sea level", "30 psi gauge, target 5.0 g/L", "rate 0.0125 an hour"},
		Source: Source{ByHand, "Henry 10^−1.1921 mol/(kg·atm) (Plummer & Busenberg 1982) × 44.009 × 0.9982 = 2.8227 g/(L·atm). 30 psi are 206.84 + " +
			"101.33 = 308.17 kPa, less 0.87 of vapour 3.0328 atm; fugacity coefficient 0.9810 (second virial −144.21 cm³/mol), " +
			"pressure on the dissolved gas (32.3 cm³/mol) 0.9971: 8.373 g/L at rest. ln((8.373 − 1.6)/(8.373 − 5.0))/0.0125 = 0.6971/0.0125 = 55.77 h. " +
			"For 5.0 g/L: 5.0/2.8227/0.9887/0.9989 = 1.7936 atm = 181.74 kPa, with the vapour less 101.33: 81.3 kPa gauge."},
		Work: func(w *Working) {
			rate := units.PerHour.Of(0.0125)
			b := must(still().PlanBurst(units.GramCO2PerLitre.Of(1.6), units.GramCO2PerLitre.Of(5), units.PSIGauge.Of(30),
				units.GaugePressure{}, rate, units.Celsius.Of(5), units.Atmosphere{}))
			w.Step("An hour late it has %s; forgotten, %s.", b.HourLate.Text(units.GramCO2PerLitre, 2), b.Forgotten.Text(units.GramCO2PerLitre, 2))
			w.Step("At the target's own pressure it would near 5.0 g/L for weeks and never be there.")
			w.Answer("stop after", b.Stop.Hours(), 1, "h", 55.77, 0.1)
			w.Answer("then set", b.Then.In(units.KilopascalGauge), 1, "kPa", 81.3, 0.2)
			w.Answer("forgotten, it comes to", b.Forgotten.In(units.GramCO2PerLitre), 2, "g/L", 8.373, 0.01)
			w.Cautioned(b.Cautions)
		},
	}
}

func twoKegsOneRegulator() Problem {
	return Problem{
		Title: "Two kegs on one regulator",
		Ask: "Two kegs of water with 1.6 g/L stand at 5 °C under the pressure that holds 5.0 g/L. One is rocked now and then (2 % an hour) and wants " +
			"only 4.0 g/L. What do they hold after a week, and when should that one have come off?",
		Given: []string{"both 1.6 g/L at the start, 5.0 g/L at rest", "rates 0.0125 and 0.02 an hour", "targets 5.0 and 4.0 g/L"},
		Source: Source{ByHand, "First order, 168 h: 5 − 3.4·e^(−0.0125 × 168) = 5 − 3.4 × 0.12246 = 4.584 g/L; 5 − 3.4·e^(−0.02 × 168) = 5 " +
			"− 3.4 × 0.03474 = 4.882 g/L. " +
			"It passes 4.0 after ln(3.4/1.0)/0.02 = 61.19 h."},
		Work: func(w *Working) {
			l, cold, rest := still(), units.Celsius.Of(5), units.GramCO2PerLitre.Of(5)
			air := units.Atmosphere{}
			set := air.Gauge(must(l.Pressure(rest, cold)))
			keg := func(rate units.Rate, target units.CarbonDioxideContent) carbonation.Keg {
				return carbonation.Keg{Liquid: l, Temperature: cold, Content: units.GramCO2PerLitre.Of(1.6), Target: target,
					Rate: rate}
			}
			after := must(carbonation.OnRegulator([]carbonation.Keg{keg(units.PerHour.Of(0.0125), rest),
				keg(units.PerHour.Of(0.02), units.GramCO2PerLitre.Of(4))}, set, 7*24*time.Hour, air))
			w.Step("The regulator stands at %s; the second keg would hold its own target at %s.", set.Text(units.BarGauge, 2), after[1].Needs.Text(units.BarGauge, 2))
			w.Step("One pressure holds one content: after the week the second is %s over what it wants.",
				after[1].Content.Minus(units.GramCO2PerLitre.Of(4)).Text(units.GramCO2PerLitre, 2))
			w.Answer("left alone, after a week", after[0].Content.In(units.GramCO2PerLitre), 3, "g/L", 4.584, 0.001)
			w.Answer("rocked, after a week", after[1].Content.In(units.GramCO2PerLitre), 3, "g/L", 4.882, 0.001)
			w.Answer("rocked, at its target after", after[1].Reaches.Hours(), 2, "h", 61.19, 0.01)
			w.Cautioned(after[1].Cautions)
		},
	}
}
