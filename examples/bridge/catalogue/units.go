package catalogue

import "example.org/zymase/units"

// unitsFunctions are the entries of package units.
func unitsFunctions() []*Function {
	return append(atmospheres(), conversions()...)
}

// atmospheres are the pressures around a gauge.
func atmospheres() []*Function {
	const source = "ISO 2533:1975, Standard atmosphere"
	altitude := takes("altitude", units.Metre, "height above sea level", -500, 11000, 640)
	place := of1(altitude.or(0), units.AtAltitude)
	return []*Function{
		entry("atmosphere_at_altitude", "pressure of the standard atmosphere at a height above sea level", source,
			of1(altitude, units.AtAltitude),
			from(units.Atmosphere.Pressure, "pressure", units.Kilopascal, "pressure of the air")),
		entry("pressure_absolute_from_gauge", "absolute pressure where a gauge shows a pressure at an altitude", source,
			of2(takes("gauge_pressure", units.KilopascalGauge, "what the gauge shows", -100, 20000, 80), place,
				func(g units.GaugePressure, air units.Atmosphere) (units.AbsolutePressure, error) {
					return air.Absolute(g)
				}),
			gives("pressure", units.Kilopascal, "absolute pressure")),
		entry("pressure_gauge_from_absolute", "what a gauge shows at an absolute pressure and an altitude", source,
			of2(takes("pressure", units.Kilopascal, "absolute pressure", 0, 20000, 180), place,
				func(p units.AbsolutePressure, air units.Atmosphere) (units.GaugePressure, error) {
					return air.Gauge(p), nil
				}),
			gives("gauge_pressure", units.KilopascalGauge, "what the gauge shows; negative below the atmosphere")),
	}
}
