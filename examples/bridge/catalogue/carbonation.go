package catalogue

import (
	"slices"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// carbonationFunctions are the entries of package carbonation.
func carbonationFunctions() []*Function {
	all := slices.Concat(
		carbonationContent(),
		carbonationMethods(),
		carbonationGas(),
		carbonationPacks(),
		carbonationLimits(),
		carbonationFerment(),
		carbonationService(),
		carbonationSafety(),
	)
	for i, f := range all {
		_, warns := f.Output(cautionName)
		all[i].heavy = f.heavy || warns // its list is made for each call
	}
	return all
}

const henryDrink = "Plummer & Busenberg 1982, Span & Wagner 1996; Henry's law in the water of the drink"

// takesDrink is a drink by its label.
func takesDrink() arg[gravity.Solution] {
	return of2(
		takes("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6).or(0),
		takes("extract", units.DegreePlato, "real extract of the drink", 0, 30, 0.5).or(0),
		carbonation.DrinkOf)
}

func takesLiquid() arg[carbonation.Liquid] { return of1(takesDrink(), carbonation.NewLiquid) }

// takesPlace is the air of a place by its altitude.
func takesPlace() arg[units.Atmosphere] {
	return of1(takes("altitude", units.Metre, "height above sea level", -500, 5000, 640).or(0), units.AtAltitude)
}

// takesVolumes is a content of CO2 in volumes of real gas.
func takesVolumes(name, meaning string, min, max, example float64) arg[units.CarbonDioxideContent] {
	return of1(takes(name, units.VolumesCO2, meaning, min, max, example), sure(carbonation.RealVolume.Content))
}

func takesDefinition() arg[carbonation.VolumeDefinition] {
	return picksBy("definition", "what one volume weighs", upTo(carbonation.IdealVolume), "real gas", "ideal gas").orOption("real gas")
}

// A reading is a pressure at a place.
type reading struct {
	pressure units.AbsolutePressure
	air      units.Atmosphere
}

// gauge is what a gauge shows there.
func (r reading) gauge() units.GaugePressure { return r.air.Gauge(r.pressure) }

// settings are the outputs of a pressure to be set.
func settings() []result[reading] {
	return []result[reading]{
		from(reading.gauge, "gauge_pressure", units.KilopascalGauge, "what to set on the gauge"),
		from(func(r reading) units.AbsolutePressure { return r.pressure }, "pressure", units.Kilopascal, "absolute pressure"),
	}
}

// contentAt is what a liquid holds where a gauge shows a pressure.
func contentAt(t units.Temperature, g units.GaugePressure, l carbonation.Liquid, air units.Atmosphere) (units.CarbonDioxideContent, error) {
	p, err := air.Absolute(g)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return l.Content(p, t)
}

// carbonationContent are content, pressure and temperature of a drink at rest.
func carbonationContent() []*Function {
	temperature := takes("temperature", units.Celsius, "temperature of the drink", -2, 90, 4)
	gauge := takes("gauge_pressure", units.KilopascalGauge, "what the gauge shows", -60, 1900, 120)
	content := takes("content", units.GramCO2PerLitre, "CO2 wanted in a litre of the drink at 20 °C", 0, 80, 5.7)
	pressure := func(t units.Temperature, c units.CarbonDioxideContent, l carbonation.Liquid, air units.Atmosphere) (reading, error) {
		p, err := l.Pressure(c, t)
		return reading{p, air}, err
	}
	return []*Function{
		entry("co2_content", "CO2 that a drink holds at rest at a temperature and an absolute pressure", henryDrink,
			of3(temperature, takes("pressure", units.Kilopascal, "absolute pressure of gas and vapours", 0.5, 2000, 220), takesLiquid(),
				func(t units.Temperature, p units.AbsolutePressure, l carbonation.Liquid) (units.CarbonDioxideContent, error) {
					return l.Content(p, t)
				}),
			gives("content", units.GramCO2PerLitre, "CO2 in a litre of the drink at 20 °C"),
			from(carbonation.RealVolume.Volumes, "volumes", units.VolumesCO2, "the same in volumes of real gas, 1.977 g/L")),
		entry("co2_content_volumes", "CO2 that a drink holds at rest at a temperature and a gauge pressure", henryDrink,
			of4(temperature, gauge, takesLiquid(), takesPlace(), contentAt),
			from(carbonation.RealVolume.Volumes, "volumes", units.VolumesCO2, "CO2 in volumes of real gas, 1.977 g/L"),
			gives("content", units.GramCO2PerLitre, "the same in g in a litre of the drink at 20 °C")),
		rated("gauge_pressure", entry("co2_pressure", "pressure at which a drink holds a CO2 content in volumes", henryDrink,
			of5(temperature, takes("volumes", units.VolumesCO2, "CO2 wanted", 0, 40, 2.9), takesLiquid(), takesPlace(), takesDefinition(),
				func(t units.Temperature, v units.CarbonDioxideVolumes, l carbonation.Liquid, air units.Atmosphere, d carbonation.VolumeDefinition) (reading, error) {
					return pressure(t, d.Content(v), l, air)
				}),
			settings()...)),
		rated("gauge_pressure", entry("co2_pressure_from_content", "pressure at which a drink holds a CO2 content in g/L", henryDrink,
			of4(temperature, content, takesLiquid(), takesPlace(), pressure),
			settings()...)),
		entry("co2_temperature", "temperature at which a drink holds a CO2 content at a gauge pressure", henryDrink,
			of4(content, gauge, takesLiquid(), takesPlace(),
				func(c units.CarbonDioxideContent, g units.GaugePressure, l carbonation.Liquid, air units.Atmosphere) (units.Temperature, error) {
					p, err := air.Absolute(g)
					if err != nil {
						return units.Temperature{}, err
					}
					return l.Temperature(c, p)
				}),
			gives("temperature", units.Celsius, "temperature of the drink")),
		entry("co2_grams_from_volumes", "CO2 in g/L from volumes", "IUPAC-NIST SRD 106 (real gas); definition (ideal gas)",
			of2(takes("volumes", units.VolumesCO2, "volumes of CO2", 0, 100, 2.9), takesDefinition(),
				func(v units.CarbonDioxideVolumes, d carbonation.VolumeDefinition) (units.CarbonDioxideContent, error) {
					return d.Content(v), nil
				}),
			gives("content", units.GramCO2PerLitre, "CO2 in a litre")),
	}
}
