package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// carbonationFunctions are the entries of package carbonation.
func carbonationFunctions() []Function {
	var all []Function
	for _, part := range [][]Function{
		carbonationContent(),
		carbonationMethods(),
		carbonationGas(),
		carbonationPacks(),
		carbonationFerment(),
		carbonationService(),
		carbonationSafety(),
	} {
		all = append(all, part...)
	}
	for i, f := range all {
		for _, o := range f.Outputs {
			all[i].heavy = all[i].heavy || o.Name == cautionName // its list is made for each call
		}
	}
	return all
}

const henryDrink = "Plummer & Busenberg 1982, Span & Wagner 1996; Henry's law in the water of the drink"

// The drink by its label, as the functions below take it.
func strengthInput() Input {
	return in("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6).or(0)
}

func extractInput() Input {
	return in("extract", units.DegreePlato, "real extract of the drink", 0, 30, 0.5).or(0)
}

func altitudeInput() Input {
	return in("altitude", units.Metre, "height above sea level", -500, 5000, 640).or(0)
}

func liquidOf(strength, extract float64) (carbonation.Liquid, error) {
	s, err := carbonation.DrinkOf(as(units.PercentVolume, strength), as(units.DegreePlato, extract))
	if err != nil {
		return carbonation.Liquid{}, err
	}
	return carbonation.NewLiquid(s)
}

// carbonationContent are content, pressure and temperature of a drink at rest.
func carbonationContent() []Function {
	return []Function{
		{
			Name:    "co2_content",
			Meaning: "CO2 that a drink holds at rest at a temperature and an absolute pressure",
			Source:  henryDrink,
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the drink", -2, 90, 4),
				in("pressure", units.Kilopascal, "absolute pressure of gas and vapours", 0.5, 2000, 220),
				strengthInput(), extractInput(),
			},
			Outputs: []Output{
				out("content", units.GramCO2PerLitre, "CO2 in a litre of the drink at 20 °C"),
				out("volumes", units.VolumesCO2, "the same in volumes of real gas, 1.977 g/L"),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[2], in[3])
				if err != nil {
					return err
				}
				c, err := l.Content(as(units.Celsius, in[0]), as(units.Kilopascal, in[1]))
				out[0], out[1] = c.In(units.GramCO2PerLitre), carbonation.RealVolume.Volumes(c).In(units.VolumesCO2)
				return err
			},
		},
		{
			Name:    "co2_content_volumes",
			Meaning: "CO2 that a drink holds at rest at a temperature and a gauge pressure",
			Source:  henryDrink,
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the drink", -2, 90, 4),
				in("gauge_pressure", units.KilopascalGauge, "what the gauge shows", -60, 1900, 120),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{
				out("volumes", units.VolumesCO2, "CO2 in volumes of real gas, 1.977 g/L"),
				out("content", units.GramCO2PerLitre, "the same in g in a litre of the drink at 20 °C"),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[2], in[3])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[4]))
				if err != nil {
					return err
				}
				p, err := air.Absolute(as(units.KilopascalGauge, in[1]))
				if err != nil {
					return err
				}
				c, err := l.Content(as(units.Celsius, in[0]), p)
				out[0], out[1] = carbonation.RealVolume.Volumes(c).In(units.VolumesCO2), c.In(units.GramCO2PerLitre)
				return err
			},
		},
		rated(Function{
			Name:    "co2_pressure",
			Meaning: "pressure at which a drink holds a CO2 content in volumes",
			Source:  henryDrink,
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the drink", -2, 90, 4),
				in("volumes", units.VolumesCO2, "CO2 wanted", 0, 40, 2.9),
				strengthInput(), extractInput(), altitudeInput(),
				choice("definition", "what one volume weighs", "real gas", "ideal gas").orOption("real gas"),
			},
			Outputs: []Output{
				out("gauge_pressure", units.KilopascalGauge, "what to set on the gauge"),
				out("pressure", units.Kilopascal, "absolute pressure"),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[2], in[3])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[4]))
				if err != nil {
					return err
				}
				c := carbonation.VolumeDefinition(in[5]).Content(as(units.VolumesCO2, in[1]))
				p, err := l.Pressure(as(units.Celsius, in[0]), c)
				out[0], out[1] = air.Gauge(p).In(units.KilopascalGauge), p.In(units.Kilopascal)
				return err
			},
		}, func(in, out []float64) (float64, bits) {
			return out[0], ice(in[0], in[2], in[3])
		}),
		rated(Function{
			Name:    "co2_pressure_from_content",
			Meaning: "pressure at which a drink holds a CO2 content in g/L",
			Source:  henryDrink,
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the drink", -2, 90, 4),
				in("content", units.GramCO2PerLitre, "CO2 wanted in a litre of the drink at 20 °C", 0, 80, 5.7),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{
				out("gauge_pressure", units.KilopascalGauge, "what to set on the gauge"),
				out("pressure", units.Kilopascal, "absolute pressure"),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[2], in[3])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[4]))
				if err != nil {
					return err
				}
				p, err := l.Pressure(as(units.Celsius, in[0]), as(units.GramCO2PerLitre, in[1]))
				out[0], out[1] = air.Gauge(p).In(units.KilopascalGauge), p.In(units.Kilopascal)
				return err
			},
		}, func(in, out []float64) (float64, bits) {
			return out[0], ice(in[0], in[2], in[3])
		}),
		{
			Name:    "co2_temperature",
			Meaning: "temperature at which a drink holds a CO2 content at a gauge pressure",
			Source:  henryDrink,
			Inputs: []Input{
				in("content", units.GramCO2PerLitre, "CO2 wanted in a litre of the drink at 20 °C", 0, 80, 5.7),
				in("gauge_pressure", units.KilopascalGauge, "what the gauge shows", -60, 1900, 120),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{out("temperature", units.Celsius, "temperature of the drink")},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[2], in[3])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[4]))
				if err != nil {
					return err
				}
				p, err := air.Absolute(as(units.KilopascalGauge, in[1]))
				if err != nil {
					return err
				}
				t, err := l.Temperature(as(units.GramCO2PerLitre, in[0]), p)
				out[0] = t.In(units.Celsius)
				return err
			},
		},
		{
			Name:    "co2_grams_from_volumes",
			Meaning: "CO2 in g/L from volumes",
			Source:  "IUPAC-NIST SRD 106 (real gas); definition (ideal gas)",
			Inputs: []Input{
				in("volumes", units.VolumesCO2, "volumes of CO2", 0, 100, 2.9),
				choice("definition", "what one volume weighs", "real gas", "ideal gas").orOption("real gas"),
			},
			Outputs: []Output{out("content", units.GramCO2PerLitre, "CO2 in a litre")},
			call: func(in, out []float64) error {
				out[0] = carbonation.VolumeDefinition(in[1]).Content(as(units.VolumesCO2, in[0])).In(units.GramCO2PerLitre)
				return nil
			},
		},
	}
}
