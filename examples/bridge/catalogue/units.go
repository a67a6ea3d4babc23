package catalogue

import "example.org/zymase/units"

// unitsFunctions are the entries of package units.
func unitsFunctions() []Function {
	return append(atmospheres(), conversions()...)
}

// atmospheres are the pressures around a gauge.
func atmospheres() []Function {
	return []Function{
		{
			Name:    "atmosphere_at_altitude",
			Meaning: "pressure of the standard atmosphere at a height above sea level",
			Source:  "ISO 2533:1975, Standard atmosphere",
			Inputs: []Input{
				in("altitude", units.Metre, "height above sea level", -500, 11000, 640),
			},
			Outputs: []Output{
				out("pressure", units.Kilopascal, "pressure of the air"),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[0]))
				out[0] = air.Pressure().In(units.Kilopascal)
				return err
			},
		},
		{
			Name:    "pressure_absolute_from_gauge",
			Meaning: "absolute pressure where a gauge shows a pressure at an altitude",
			Source:  "ISO 2533:1975, Standard atmosphere",
			Inputs: []Input{
				in("gauge_pressure", units.KilopascalGauge, "what the gauge shows", -100, 20000, 80),
				in("altitude", units.Metre, "height above sea level", -500, 11000, 640).or(0),
			},
			Outputs: []Output{
				out("pressure", units.Kilopascal, "absolute pressure"),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[1]))
				if err != nil {
					return err
				}
				p, err := air.Absolute(as(units.KilopascalGauge, in[0]))
				out[0] = p.In(units.Kilopascal)
				return err
			},
		},
		{
			Name:    "pressure_gauge_from_absolute",
			Meaning: "what a gauge shows at an absolute pressure and an altitude",
			Source:  "ISO 2533:1975, Standard atmosphere",
			Inputs: []Input{
				in("pressure", units.Kilopascal, "absolute pressure", 0, 20000, 180),
				in("altitude", units.Metre, "height above sea level", -500, 11000, 640).or(0),
			},
			Outputs: []Output{
				out("gauge_pressure", units.KilopascalGauge, "what the gauge shows; negative below the atmosphere"),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[1]))
				out[0] = air.Gauge(as(units.Kilopascal, in[0])).In(units.KilopascalGauge)
				return err
			},
		},
	}
}
