package catalogue

import (
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

// carbonationMethods are the published ways by name.
func carbonationMethods() []*Function {
	const (
		chart    = "fit to the printed beer chart"
		european = "European brewing practice, exponential form"
		wine     = "Regulation (EEC) 2676/90 (in force until 2009), carbon dioxide"
	)
	sea := units.Atmosphere{}
	water := takes("temperature", units.Celsius, "temperature of the water", -2, 90, 20)
	beer := func(coldest, warmest float64) arg[units.Temperature] {
		return takes("temperature", units.Celsius, "temperature of the beer", coldest, warmest, 4)
	}
	strength := takes("strength", units.PercentVolume, "ethanol of the wine", 0, 20, 12)
	sugar := takes("sugar", units.GramPerLitre, "sugar of the wine", 0, 200, 8)
	over := func(most, example float64) arg[units.AbsolutePressure] {
		return takes("pressure", units.Kilopascal, "partial pressure of the CO2", 0, most, example)
	}
	fraction := givesNumber("mole_fraction", "", "mole fraction of CO2")
	return []*Function{
		entry("co2_beer_chart_volumes", "CO2 in beer after the printed chart, at sea level", chart,
			of2(beer(-1.2, 15.6), takes("gauge_pressure", units.KilopascalGauge, "what the gauge shows at sea level", -20, 300, 80),
				func(t units.Temperature, g units.GaugePressure) (units.CarbonDioxideVolumes, error) {
					p, err := sea.Absolute(g)
					if err != nil {
						return units.CarbonDioxideVolumes{}, err
					}
					return dioxide.BeerChartVolumes(t, p)
				}),
			gives("volumes", units.VolumesCO2, "CO2 in the beer")),
		rated("gauge_pressure", entry("co2_beer_chart_pressure", "pressure for a CO2 content of beer after the printed chart, at sea level", chart,
			of2(beer(-1.2, 15.6), takes("volumes", units.VolumesCO2, "CO2 wanted", 1.5, 4, 2.5), dioxide.BeerChartPressure),
			from(sea.Gauge, "gauge_pressure", units.KilopascalGauge, "what to set on a gauge at sea level"))),
		entry("co2_european_content", "CO2 in beer after the exponential form of European practice", european,
			of2(beer(-1, 25), takes("pressure", units.Kilopascal, "absolute pressure", 50, 500, 200), dioxide.EuropeanBeerContent),
			gives("content", units.GramCO2PerLitre, "CO2 in the beer")),
		rated("pressure", entry("co2_european_pressure", "absolute pressure for a CO2 content of beer after the exponential form of European practice", european,
			of2(beer(-1, 25), takes("content", units.GramCO2PerLitre, "CO2 wanted", 0.5, 20, 5), dioxide.EuropeanBeerPressure),
			gives("pressure", units.Kilopascal, "absolute pressure"))),
		entry("co2_wine_content", "CO2 in sparkling wine from its pressure at 20 °C", wine,
			of3(takes("pressure", units.Kilopascal, "absolute pressure at 20 °C", 50, 1000, 450), strength, sugar, dioxide.WineContent),
			gives("content", units.GramCO2PerLitre, "CO2 in the wine")),
		rated("pressure", entry("co2_wine_pressure", "absolute pressure of a sparkling wine at 20 °C from its CO2", wine,
			of3(takes("content", units.GramCO2PerLitre, "CO2 in the wine", 0.3, 20, 8), strength, sugar, dioxide.WinePressure),
			gives("pressure", units.Kilopascal, "absolute pressure at 20 °C"))),
		entry("co2_henry_weiss", "CO2 that a kilogram of water or sea water takes up at a fugacity of 1 atm", "Weiss, Marine Chemistry 2 (1974) 203",
			of2(takes("temperature", units.Celsius, "temperature of the water", -1, 40, 20), takes("salinity", units.Percent, "sea salt by mass", 0, 4, 0).or(0),
				dioxide.HenryWeiss),
			givesNumber("henry", "mol/(kg·atm)", "CO2 in a kilogram of the solution")),
		entry("co2_henry", "CO2 that a kilogram of water takes up at a fugacity of 1 atm", "Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011",
			of1(water, dioxide.HenryPlummerBusenberg),
			givesNumber("henry", "mol/(kg·atm)", "CO2 in a kilogram of the water")),
		entry("co2_mole_fraction", "mole fraction of CO2 in pure water under a partial pressure of CO2", "Plummer & Busenberg 1982",
			of2(water, over(2000, 101.325), dioxide.MoleFraction), fraction),
		entry("co2_mole_fraction_carroll", "mole fraction of CO2 in pure water as the CRC Handbook tabulates it",
			"Carroll, Slupsky & Mather, J. Phys. Chem. Ref. Data 20 (1991) 1201",
			of2(takes("temperature", units.Celsius, "temperature of the water", 0, 100, 20), over(1000, 100), dioxide.MoleFractionCarroll), fraction),
	}
}
