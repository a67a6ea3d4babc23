package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// takesYield is the CO2 of a gram of extract.
func takesYield(more string) arg[float64] {
	return takesNumber("co2_yield", "g/g", "CO2 from a gram of extract"+more, 0.3, 0.52, 0.46).or(0.46)
}

// takesTank is a fermenter with its drink; least is the least room over it.
func takesTank(drink, headspace, least float64) arg[carbonation.Fermenter] {
	return of2(takes("drink", units.Litre, "volume of the drink", 0.01, 1e6, drink), takes("headspace", units.Litre, "room over it", least, 1e6, headspace),
		func(v, room units.Volume) (carbonation.Fermenter, error) {
			return carbonation.Fermenter{Drink: v, Headspace: room}, nil
		})
}

// yieldOfCO2 is the yield of a ferment by its CO2.
func yieldOfCO2(gram float64) (gravity.Yield, error) {
	return gravity.NewYield(units.Kilogram.Of(1), gravity.Fermented{
		Ethanol: units.Kilogram.Of(0.48), CO2: as(units.Kilogram, gram), Biomass: as(units.Kilogram, 0.52-gram),
	})
}

// carbonationFerment are what a fermenter does to the gas, and priming with wort.
func carbonationFerment() []*Function {
	type (
		spunding = carbonation.Spunding
		crash    = carbonation.ColdCrash
		wort     = carbonation.WortPriming
		gas      = pair[units.Mass, units.Volume]
	)
	return []*Function{
		entry("spunding_pressure", "setting of the relief valve under which a ferment carbonates the drink, and what must be left to ferment", henryDrink,
			of7(takes("temperature", units.Celsius, "temperature of the ferment", -2, 40, 18), takesVolumes("volumes", "CO2 wanted, real gas", 0.5, 10, 2.5),
				takesTank(40, 10, 0), of1(takesYield(": 0.46 of wort or sugar wash"), yieldOfCO2), takesLiquid(), takesPlace(), takesRating(),
				func(t units.Temperature, c units.CarbonDioxideContent, f carbonation.Fermenter, y gravity.Yield, l carbonation.Liquid, air units.Atmosphere,
					rating units.GaugePressure) (spunding, error) {
					f.Rating = rating
					return l.Spund(c, f, y, t, air)
				}),
			from(func(s spunding) units.GaugePressure { return s.Valve }, "gauge_pressure", units.KilopascalGauge,
				"setting of the valve; the fermenter must be rated for it"),
			from(func(s spunding) units.MassConcentration { return s.Extract }, "extract_left", units.GramPerLitre, "to ferment when the valve is closed"),
			judges(func(s spunding) carbonation.Verdict { return s.Verdict }), says(func(s spunding) caution.List { return s.Cautions })),
		entry("cold_crash_air", "air that a fermenter under an open airlock draws in when it is cooled", henryDrink+"; conservation of CO2",
			of5(takes("warm", units.Celsius, "temperature before", -2, 40, 20), takes("cold", units.Celsius, "temperature after", -2, 40, 2),
				takesTank(60, 12, 0.01), takesDrink(), takesPlace(),
				func(warm, cold units.Temperature, f carbonation.Fermenter, s gravity.Solution, air units.Atmosphere) (crash, error) {
					return f.Crash(s, warm, cold, air)
				}),
			from(func(c crash) units.Volume { return c.AtOnce }, "at_once", units.Litre, "air drawn in before the liquid takes up CO2"),
			from(func(c crash) units.Volume { return c.AtRest }, "at_rest", units.Litre, "air drawn in once it has"),
			from(func(c crash) units.MassConcentration { return c.OxygenPerLitre }, "oxygen", units.MilligramPerLitre, "of the drink, if all of it went in"),
			from(func(c crash) units.Mass { return c.CO2ToFill }, "co2_to_fill", units.Gram, "CO2 that keeps the air out"),
			says(func(c crash) caution.List { return c.Cautions })),
		entry("priming_wort", "wort or juice kept back that brings a drink to a CO2 content in the bottle",
			"gas balance; Gay-Lussac's equation; ICUMSA SPS-4 for the extract",
			of6(takesVolumes("volumes", "CO2 wanted, real gas", 0, 7.5, 2.5), takes("dissolved", units.GramCO2PerLitre, "CO2 that the drink holds", 0, 15, 1.6),
				takes("volume", units.Litre, "drink to be primed", 0.001, 1e6, 20),
				reads(number("gravity", "", "specific gravity 20/20 °C of the wort or juice", 1.002, 1.4, 1.048), gravity.FromSG),
				takes("fermentable", units.Percent, "fermentable share of its extract", 1, 100, 75),
				takes("sugar_left", units.GramPerLitre, "fermentable sugar still in the drink", 0, 30, 0).or(0),
				func(wanted, have units.CarbonDioxideContent, v units.Volume, g gravity.Gravity, share units.Share, left units.MassConcentration) (wort, error) {
					return carbonation.PrimeWithWort(g, share, wanted, have, left, v)
				}),
			from(func(w wort) units.Volume { return w.Volume }, "wort", units.Litre, "to add to all of the drink"),
			from(func(w wort) units.Volume { return w.Mixed }, "mixed", units.Litre, "both together"),
			says(func(w wort) caution.List { return w.Cautions })),
		entry("co2_given_off", "CO2 that a ferment sets free", virialSource,
			of4(takes("extract", units.Kilogram, "extract that is used", 0, 1e6, 5), takesYield(""),
				takes("temperature", units.Celsius, "temperature of the gas", 0, 40, 20), takesPlace(),
				func(m units.Mass, y float64, t units.Temperature, air units.Atmosphere) (gas, error) {
					co2, v, err := carbonation.GivenOff(m, as(units.Fraction, y), t, air)
					return gas{co2, v}, err
				}),
			from(func(g gas) units.Mass { return g.a }, "mass", units.Kilogram, "of CO2"),
			from(func(g gas) units.Volume { return g.b }, "gas", units.CubicMetre, "its volume at the pressure of the air")),
	}
}
