package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

// atSeaLevel is the gauge pressure of an absolute one.
func atSeaLevel(in, out []float64) (float64, carbonation.Cautions) {
	return units.Atmosphere{}.Gauge(as(units.Kilopascal, out[0])).In(units.KilopascalGauge), 0
}

// carbonationMethods are the published ways by name.
func carbonationMethods() []Function {
	sea := units.Atmosphere{}
	return []Function{
		{
			Name:    "co2_beer_chart_volumes",
			Meaning: "CO2 in beer after the printed chart, at sea level",
			Source:  "fit to the printed beer chart",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the beer", -1.2, 15.6, 4),
				in("gauge_pressure", units.KilopascalGauge, "what the gauge shows at sea level", -20, 300, 80),
			},
			Outputs: []Output{out("volumes", units.VolumesCO2, "CO2 in the beer")},
			call: func(in, out []float64) error {
				p, err := sea.Absolute(as(units.KilopascalGauge, in[1]))
				if err != nil {
					return err
				}
				v, err := dioxide.BeerChartVolumes(as(units.Celsius, in[0]), p)
				out[0] = v.In(units.VolumesCO2)
				return err
			},
		},
		rated(Function{
			Name:    "co2_beer_chart_pressure",
			Meaning: "pressure for a CO2 content of beer after the printed chart, at sea level",
			Source:  "fit to the printed beer chart",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the beer", -1.2, 15.6, 4),
				in("volumes", units.VolumesCO2, "CO2 wanted", 1.5, 4, 2.5),
			},
			Outputs: []Output{out("gauge_pressure", units.KilopascalGauge, "what to set on a gauge at sea level")},
			call: func(in, out []float64) error {
				p, err := dioxide.BeerChartPressure(as(units.Celsius, in[0]), as(units.VolumesCO2, in[1]))
				out[0] = sea.Gauge(p).In(units.KilopascalGauge)
				return err
			},
		}, func(in, out []float64) (float64, carbonation.Cautions) { return out[0], 0 }),
		{
			Name:    "co2_european_content",
			Meaning: "CO2 in beer after the exponential form of European practice",
			Source:  "European brewing practice, exponential form",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the beer", -1, 25, 4),
				in("pressure", units.Kilopascal, "absolute pressure", 50, 500, 200),
			},
			Outputs: []Output{out("content", units.GramCO2PerLitre, "CO2 in the beer")},
			call: func(in, out []float64) error {
				c, err := dioxide.EuropeanBeerContent(as(units.Celsius, in[0]), as(units.Kilopascal, in[1]))
				out[0] = c.In(units.GramCO2PerLitre)
				return err
			},
		},
		rated(Function{
			Name:    "co2_european_pressure",
			Meaning: "absolute pressure for a CO2 content of beer after the exponential form of European practice",
			Source:  "European brewing practice, exponential form",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the beer", -1, 25, 4),
				in("content", units.GramCO2PerLitre, "CO2 wanted", 0.5, 20, 5),
			},
			Outputs: []Output{out("pressure", units.Kilopascal, "absolute pressure")},
			call: func(in, out []float64) error {
				p, err := dioxide.EuropeanBeerPressure(as(units.Celsius, in[0]), as(units.GramCO2PerLitre, in[1]))
				out[0] = p.In(units.Kilopascal)
				return err
			},
		}, atSeaLevel),
		{
			Name:    "co2_wine_content",
			Meaning: "CO2 in sparkling wine from its pressure at 20 °C",
			Source:  "Regulation (EEC) 2676/90 (in force until 2009), carbon dioxide",
			Inputs: []Input{
				in("pressure", units.Kilopascal, "absolute pressure at 20 °C", 50, 1000, 450),
				in("strength", units.PercentVolume, "ethanol of the wine", 0, 20, 12),
				in("sugar", units.GramPerLitre, "sugar of the wine", 0, 200, 8),
			},
			Outputs: []Output{out("content", units.GramCO2PerLitre, "CO2 in the wine")},
			call: func(in, out []float64) error {
				c, err := dioxide.WineContent(as(units.Kilopascal, in[0]), as(units.PercentVolume, in[1]), as(units.GramPerLitre, in[2]))
				out[0] = c.In(units.GramCO2PerLitre)
				return err
			},
		},
		rated(Function{
			Name:    "co2_wine_pressure",
			Meaning: "absolute pressure of a sparkling wine at 20 °C from its CO2",
			Source:  "Regulation (EEC) 2676/90 (in force until 2009), carbon dioxide",
			Inputs: []Input{
				in("content", units.GramCO2PerLitre, "CO2 in the wine", 0.3, 20, 8),
				in("strength", units.PercentVolume, "ethanol of the wine", 0, 20, 12),
				in("sugar", units.GramPerLitre, "sugar of the wine", 0, 200, 8),
			},
			Outputs: []Output{out("pressure", units.Kilopascal, "absolute pressure at 20 °C")},
			call: func(in, out []float64) error {
				p, err := dioxide.WinePressure(as(units.GramCO2PerLitre, in[0]), as(units.PercentVolume, in[1]), as(units.GramPerLitre, in[2]))
				out[0] = p.In(units.Kilopascal)
				return err
			},
		}, atSeaLevel),
		{
			Name:    "co2_henry_weiss",
			Meaning: "CO2 that a kilogram of water or sea water takes up at a fugacity of 1 atm",
			Source:  "Weiss, Marine Chemistry 2 (1974) 203",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the water", -1, 40, 20),
				in("salinity", units.Percent, "sea salt by mass", 0, 4, 0).or(0),
			},
			Outputs: []Output{pure("henry", "mol/(kg·atm)", "CO2 in a kilogram of the solution")},
			call: func(in, out []float64) error {
				k, err := dioxide.HenryWeiss(as(units.Celsius, in[0]), as(units.Percent, in[1]))
				out[0] = k
				return err
			},
		},
		{
			Name:    "co2_henry",
			Meaning: "CO2 that a kilogram of water takes up at a fugacity of 1 atm",
			Source:  "Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the water", -2, 90, 20),
			},
			Outputs: []Output{pure("henry", "mol/(kg·atm)", "CO2 in a kilogram of the water")},
			call: func(in, out []float64) error {
				k, err := dioxide.HenryPlummerBusenberg(as(units.Celsius, in[0]))
				out[0] = k
				return err
			},
		},
		{
			Name:    "co2_mole_fraction",
			Meaning: "mole fraction of CO2 in pure water under a partial pressure of CO2",
			Source:  "Plummer & Busenberg 1982",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the water", -2, 90, 20),
				in("pressure", units.Kilopascal, "partial pressure of the CO2", 0, 2000, 101.325),
			},
			Outputs: []Output{pure("mole_fraction", "", "mole fraction of CO2")},
			call: func(in, out []float64) error {
				x, err := dioxide.MoleFraction(as(units.Celsius, in[0]), as(units.Kilopascal, in[1]))
				out[0] = x
				return err
			},
		},
		{
			Name:    "co2_mole_fraction_carroll",
			Meaning: "mole fraction of CO2 in pure water as the CRC Handbook tabulates it",
			Source:  "Carroll, Slupsky & Mather, J. Phys. Chem. Ref. Data 20 (1991) 1201",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the water", 0, 100, 20),
				in("pressure", units.Kilopascal, "partial pressure of the CO2", 0, 1000, 100),
			},
			Outputs: []Output{pure("mole_fraction", "", "mole fraction of CO2")},
			call: func(in, out []float64) error {
				x, err := dioxide.MoleFractionCarroll(as(units.Celsius, in[0]), as(units.Kilopascal, in[1]))
				out[0] = x
				return err
			},
		},
	}
}
