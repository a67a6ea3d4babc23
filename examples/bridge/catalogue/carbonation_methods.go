package catalogue

import (
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

// atSeaLevel is the gauge pressure of an absolute one.
func atSeaLevel(in, out []float64) (float64, bits) {
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
		}, func(in, out []float64) (float64, bits) { return out[0], 0 }),
		entry("co2_european_content", "CO2 in beer after the exponential form of European practice", "European brewing practice, exponential form",
			of2(takes("temperature", units.Celsius, "temperature of the beer", -1, 25, 4), takes("pressure", units.Kilopascal, "absolute pressure", 50, 500, 200), dioxide.EuropeanBeerContent),
			gives("content", units.GramCO2PerLitre, "CO2 in the beer")),
		rated(entry("co2_european_pressure", "absolute pressure for a CO2 content of beer after the exponential form of European practice", "European brewing practice, exponential form",
			of2(takes("temperature", units.Celsius, "temperature of the beer", -1, 25, 4), takes("content", units.GramCO2PerLitre, "CO2 wanted", 0.5, 20, 5), dioxide.EuropeanBeerPressure),
			gives("pressure", units.Kilopascal, "absolute pressure")), atSeaLevel),
		entry("co2_wine_content", "CO2 in sparkling wine from its pressure at 20 °C", "Regulation (EEC) 2676/90 (in force until 2009), carbon dioxide",
			of3(takes("pressure", units.Kilopascal, "absolute pressure at 20 °C", 50, 1000, 450), takes("strength", units.PercentVolume, "ethanol of the wine", 0, 20, 12), takes("sugar", units.GramPerLitre, "sugar of the wine", 0, 200, 8), dioxide.WineContent),
			gives("content", units.GramCO2PerLitre, "CO2 in the wine")),
		rated(entry("co2_wine_pressure", "absolute pressure of a sparkling wine at 20 °C from its CO2", "Regulation (EEC) 2676/90 (in force until 2009), carbon dioxide",
			of3(takes("content", units.GramCO2PerLitre, "CO2 in the wine", 0.3, 20, 8), takes("strength", units.PercentVolume, "ethanol of the wine", 0, 20, 12), takes("sugar", units.GramPerLitre, "sugar of the wine", 0, 200, 8), dioxide.WinePressure),
			gives("pressure", units.Kilopascal, "absolute pressure at 20 °C")), atSeaLevel),
		entry("co2_henry_weiss", "CO2 that a kilogram of water or sea water takes up at a fugacity of 1 atm", "Weiss, Marine Chemistry 2 (1974) 203",
			of2(takes("temperature", units.Celsius, "temperature of the water", -1, 40, 20), takes("salinity", units.Percent, "sea salt by mass", 0, 4, 0).or(0), dioxide.HenryWeiss),
			givesNumber("henry", "mol/(kg·atm)", "CO2 in a kilogram of the solution")),
		entry("co2_henry", "CO2 that a kilogram of water takes up at a fugacity of 1 atm", "Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011",
			of1(takes("temperature", units.Celsius, "temperature of the water", -2, 90, 20), dioxide.HenryPlummerBusenberg),
			givesNumber("henry", "mol/(kg·atm)", "CO2 in a kilogram of the water")),
		entry("co2_mole_fraction", "mole fraction of CO2 in pure water under a partial pressure of CO2", "Plummer & Busenberg 1982",
			of2(takes("temperature", units.Celsius, "temperature of the water", -2, 90, 20), takes("pressure", units.Kilopascal, "partial pressure of the CO2", 0, 2000, 101.325), dioxide.MoleFraction),
			givesNumber("mole_fraction", "", "mole fraction of CO2")),
		entry("co2_mole_fraction_carroll", "mole fraction of CO2 in pure water as the CRC Handbook tabulates it", "Carroll, Slupsky & Mather, J. Phys. Chem. Ref. Data 20 (1991) 1201",
			of2(takes("temperature", units.Celsius, "temperature of the water", 0, 100, 20), takes("pressure", units.Kilopascal, "partial pressure of the CO2", 0, 1000, 100), dioxide.MoleFractionCarroll),
			givesNumber("mole_fraction", "", "mole fraction of CO2")),
	}
}
