package catalogue

import (
	"strings"

	"example.org/zymase/units"
)

const exactUnits = "NIST Special Publication 811 (2008) appendix B; NIST Handbook 44 (2024) appendix C"

// to is an output of a conversion, which says what it means.
func to[D, E units.Dimension](name string, unit units.Unit[D, E]) result[units.Quantity[D, E]] {
	return gives(name, unit, "")
}

// named is the unit of a dimension that is found by its text only.
func named[D, E units.Dimension](of units.Unit[D, E], text string) units.Unit[D, E] {
	unit, err := of.Find(text)
	if err != nil {
		panic(err) // a text in this file
	}
	return unit
}

// conversion is a function from a quantity to numbers of it in several units.
// The input takes any unit of its dimension, so it converts each into each.
func conversion[D, E units.Dimension](
	quantity string, from units.Unit[D, E], min, max, example float64, source string, to ...result[units.Quantity[D, E]],
) *Function {
	words := strings.ReplaceAll(quantity, "_", " ")
	for _, r := range to {
		r.shown.Meaning = words + " in " + r.shown.Unit
	}
	return entry("convert_"+quantity, "the same "+words+" in other units", source,
		takes(quantity, from, words+" to convert, in any unit", min, max, example), to...)
}

// conversions are between the units of package units.
func conversions() []*Function {
	const huge = 1e12
	return []*Function{
		conversion("temperature", units.Celsius, -273.15, 1e6, 20, exactUnits,
			to("celsius", units.Celsius), to("fahrenheit", units.Fahrenheit), to("kelvin", units.Kelvin)),
		conversion("temperature_difference", units.KelvinDifference, -1e6, 1e6, 5, exactUnits,
			to("kelvins", units.KelvinDifference), to("fahrenheit_degrees", units.FahrenheitDifference)),
		conversion("mass", units.Kilogram, 0, huge, 6, exactUnits,
			to("kilograms", units.Kilogram), to("grams", units.Gram), to("milligrams", units.Milligram),
			to("pounds", units.Pound), to("ounces", units.Ounce)),
		conversion("volume", units.Litre, 0, huge, 60, exactUnits,
			to("litres", units.Litre), to("millilitres", units.Millilitre), to("hectolitres", units.Hectolitre), to("cubic_metres", units.CubicMetre),
			to("us_gallons", units.USGallon), to("us_quarts", named(units.Litre, "US qt")), to("us_pints", named(units.Litre, "US pt")),
			to("us_fluid_ounces", units.USFluidOunce), to("us_barrels", units.USBarrel),
			to("imperial_gallons", units.ImperialGallon), to("imperial_quarts", named(units.Litre, "imp qt")),
			to("imperial_pints", named(units.Litre, "imp pt")), to("imperial_fluid_ounces", named(units.Litre, "imp fl oz"))),
		conversion("volume_flow", units.LitrePerMinute, 0, huge, 2, exactUnits,
			to("litres_per_minute", units.LitrePerMinute), to("litres_per_hour", units.LitrePerHour), to("cubic_metres_per_hour", units.CubicMetrePerHour),
			to("us_gallons_per_minute", named(units.LitrePerMinute, "US gal/min")), to("us_gallons_per_hour", named(units.LitrePerMinute, "US gal/h"))),
		conversion("length", units.Metre, -huge, huge, 640, exactUnits,
			to("metres", units.Metre), to("millimetres", units.Millimetre), to("centimetres", named(units.Metre, "cm")), to("kilometres", named(units.Metre, "km")),
			to("inches", units.Inch), to("feet", named(units.Metre, "ft"))),
		conversion("pressure", units.Kilopascal, 0, huge, 101.325, exactUnits,
			to("kilopascals", units.Kilopascal), to("bars", units.Bar), to("millibars", units.Millibar),
			to("psi", units.PSI), to("atmospheres", units.StandardAtmosphere)),
		conversion("gauge_pressure", units.KilopascalGauge, -huge, huge, 80, exactUnits,
			to("kilopascals", units.KilopascalGauge), to("bars", units.BarGauge), to("millibars", named(units.KilopascalGauge, "mbar gauge")),
			to("psi", units.PSIGauge), to("atmospheres", named(units.KilopascalGauge, "atm gauge"))),
		conversion("density", units.KilogramPerCubicMetre, 0, huge, 998.2, exactUnits,
			to("kilograms_per_cubic_metre", units.KilogramPerCubicMetre), to("grams_per_millilitre", units.GramPerMillilitre),
			to("pounds_per_us_gallon", units.PoundPerUSGallon)),
		conversion("concentration", units.MilligramPerLitre, 0, huge, 150, exactUnits,
			to("milligrams_per_litre", units.MilligramPerLitre), to("grams_per_litre", units.GramPerLitre),
			to("grams_per_hectolitre", units.GramPerHectolitre), to("micrograms_per_litre", named(units.MilligramPerLitre, "µg/L")),
			to("ounces_per_us_gallon", named(units.MilligramPerLitre, "oz/US gal")), to("pounds_per_1000_us_gallons", units.PoundPerThousandUSGallons)),
		conversion("hardness", units.MilligramPerLitreCaCO3, -huge, huge, 100, exactUnits+"; CIAAW abridged atomic weights 2021",
			to("milligrams_per_litre_as_calcium_carbonate", units.MilligramPerLitreCaCO3), to("german_degrees", units.GermanDegree),
			to("french_degrees", units.FrenchDegree), to("english_degrees", units.EnglishDegree),
			to("grains_per_us_gallon", named(units.MilligramPerLitreCaCO3, "gr/US gal"))),
		conversion("energy", units.Kilojoule, -huge, huge, 100, exactUnits,
			to("kilojoules", units.Kilojoule), to("megajoules", named(units.Kilojoule, "MJ")), to("kilocalories", units.Kilocalorie),
			to("kilowatt_hours", named(units.Kilojoule, "kWh"))),
		conversion("conductivity", units.MicrosiemensPerCentimetre, 0, huge, 500, exactUnits,
			to("microsiemens_per_centimetre", units.MicrosiemensPerCentimetre), to("millisiemens_per_centimetre", named(units.MicrosiemensPerCentimetre, "mS/cm")),
			to("millisiemens_per_metre", named(units.MicrosiemensPerCentimetre, "mS/m"))),
	}
}
