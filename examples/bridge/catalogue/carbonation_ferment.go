package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// carbonationFerment are what a fermenter does to the gas, and priming with wort.
func carbonationFerment() []Function {
	return []Function{
		{
			Name:    "spunding_pressure",
			Meaning: "setting of the relief valve under which a ferment carbonates the drink, and what must be left to ferment",
			Source:  henryDrink,
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the ferment", -2, 40, 18),
				in("volumes", units.VolumesCO2, "CO2 wanted, real gas", 0.5, 10, 2.5),
				in("drink", units.Litre, "volume of the drink", 0.01, 1e6, 40),
				in("headspace", units.Litre, "room over it", 0, 1e6, 10),
				number("co2_yield", "g/g", "CO2 from a gram of extract: 0.46 of wort or sugar wash", 0.3, 0.52, 0.46).or(0.46),
				strengthInput(), extractInput(), altitudeInput(), ratingInput(),
			},
			Outputs: []Output{
				out("gauge_pressure", units.KilopascalGauge, "setting of the valve; the fermenter must be rated for it"),
				out("extract_left", units.GramPerLitre, "to ferment when the valve is closed"),
				verdictOutput(), cautionOutput(),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[5], in[6])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[7]))
				if err != nil {
					return err
				}
				y, err := gravity.NewYield(units.Kilogram.Of(1), gravity.Fermented{Ethanol: units.Kilogram.Of(0.48), CO2: as(units.Kilogram, in[4]), Biomass: as(units.Kilogram, 0.52-in[4])})
				if err != nil {
					return err
				}
				s, err := carbonation.Spund(l, as(units.Celsius, in[0]), carbonation.RealVolume.Content(as(units.VolumesCO2, in[1])),
					carbonation.Fermenter{Drink: as(units.Litre, in[2]), Headspace: as(units.Litre, in[3]), Rating: as(units.KilopascalGauge, in[8])}, y, air)
				out[0], out[1] = s.Valve.In(units.KilopascalGauge), s.Extract.In(units.GramPerLitre)
				out[2], out[3] = float64(s.Verdict), float64(set(s.Cautions...))
				return err
			},
		},
		{
			Name:    "cold_crash_air",
			Meaning: "air that a fermenter under an open airlock draws in when it is cooled",
			Source:  henryDrink + "; conservation of CO2",
			Inputs: []Input{
				in("warm", units.Celsius, "temperature before", -2, 40, 20),
				in("cold", units.Celsius, "temperature after", -2, 40, 2),
				in("drink", units.Litre, "volume of the drink", 0.01, 1e6, 60),
				in("headspace", units.Litre, "room over it", 0.01, 1e6, 12),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{
				out("at_once", units.Litre, "air drawn in before the liquid takes up CO2"),
				out("at_rest", units.Litre, "air drawn in once it has"),
				out("oxygen", units.MilligramPerLitre, "of the drink, if all of it went in"),
				out("co2_to_fill", units.Gram, "CO2 that keeps the air out"),
				cautionOutput(),
			},
			heavy: true,
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[4]), as(units.DegreePlato, in[5]))
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[6]))
				if err != nil {
					return err
				}
				r, err := carbonation.Crash(s, as(units.Celsius, in[0]), as(units.Celsius, in[1]),
					carbonation.Fermenter{Drink: as(units.Litre, in[2]), Headspace: as(units.Litre, in[3])}, air)
				out[0], out[1] = r.AtOnce.In(units.Litre), r.AtRest.In(units.Litre)
				out[2], out[3] = r.OxygenPerLitre.In(units.MilligramPerLitre), r.CO2ToFill.In(units.Gram)
				out[4] = float64(set(r.Cautions...))
				return err
			},
		},
		{
			Name:    "priming_wort",
			Meaning: "wort or juice kept back that brings a drink to a CO2 content in the bottle",
			Source:  "gas balance; Gay-Lussac's equation; ICUMSA SPS-4 for the extract",
			Inputs: []Input{
				in("volumes", units.VolumesCO2, "CO2 wanted, real gas", 0, 7.5, 2.5),
				in("dissolved", units.GramCO2PerLitre, "CO2 that the drink holds", 0, 15, 1.6),
				in("volume", units.Litre, "drink to be primed", 0.001, 1e6, 20),
				number("gravity", "", "specific gravity 20/20 °C of the wort or juice", 1.002, 1.4, 1.048),
				in("fermentable", units.Percent, "fermentable share of its extract", 1, 100, 75),
				in("sugar_left", units.GramPerLitre, "fermentable sugar still in the drink", 0, 30, 0).or(0),
			},
			Outputs: []Output{
				out("wort", units.Litre, "to add to all of the drink"),
				out("mixed", units.Litre, "both together"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				g, err := gravity.FromSG(in[3])
				if err != nil {
					return err
				}
				p, err := carbonation.PrimeWithWort(g, as(units.Percent, in[4]), carbonation.RealVolume.Content(as(units.VolumesCO2, in[0])), as(units.GramCO2PerLitre, in[1]), as(units.GramPerLitre, in[5]), as(units.Litre, in[2]))
				out[0], out[1], out[2] = p.Volume.In(units.Litre), p.Mixed.In(units.Litre), float64(set(p.Cautions...))
				return err
			},
		},
		{
			Name:    "co2_given_off",
			Meaning: "CO2 that a ferment sets free",
			Source:  virialSource,
			Inputs: []Input{
				in("extract", units.Kilogram, "extract that is used", 0, 1e6, 5),
				number("co2_yield", "g/g", "CO2 from a gram of extract", 0.3, 0.52, 0.46).or(0.46),
				in("temperature", units.Celsius, "temperature of the gas", 0, 40, 20),
				altitudeInput(),
			},
			Outputs: []Output{
				out("mass", units.Kilogram, "of CO2"),
				out("gas", units.CubicMetre, "its volume at the pressure of the air"),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[3]))
				if err != nil {
					return err
				}
				m, v, err := carbonation.GivenOff(as(units.Kilogram, in[0]), in[1], as(units.Celsius, in[2]), air)
				out[0], out[1] = m.In(units.Kilogram), v.In(units.CubicMetre)
				return err
			},
		},
	}
}
