package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

const virialSource = "Span & Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509"

// carbonationGas are CO2 gas, liquid CO2 and the vapours.
func carbonationGas() []*Function {
	temperature := takes("temperature", units.Celsius, "temperature of the gas", -10, 100, 20)
	pressure := takes("pressure", units.Kilopascal, "absolute pressure of the CO2", 0, 2000, 300)
	over := func(name, meaning, source, what string, coldest, warmest float64, f func(units.Temperature) (units.AbsolutePressure, error)) *Function {
		return entry(name, meaning, source,
			of1(takes("temperature", units.Celsius, "temperature of the "+what, coldest, warmest, 20), f),
			gives("pressure", units.Kilopascal, "absolute pressure"))
	}
	return []*Function{
		entry("co2_second_virial", "second virial coefficient of CO2", virialSource,
			of1(temperature, dioxide.SecondVirial),
			givesNumber("second_virial", "cm³/mol", "negative: the gas is denser than an ideal one")),
		entry("co2_fugacity_coefficient", "fugacity of CO2 gas over its pressure", virialSource,
			of2(temperature, pressure, dioxide.FugacityCoefficient),
			givesNumber("fugacity_coefficient", "", "below 1")),
		entry("co2_gas_density", "density of CO2 gas", virialSource,
			of2(temperature, pressure, func(t units.Temperature, p units.AbsolutePressure) (units.Density, error) {
				return carbonation.GasDensity(p, t)
			}),
			gives("density", units.KilogramPerCubicMetre, "density of the gas, g/L")),
		over("co2_saturation_pressure", "pressure in a cylinder that still has liquid CO2 in it", virialSource+", eq. 3.13",
			"cylinder", -56.558, 30.9782, carbonation.SaturationPressure),
		over("water_vapour_pressure", "pressure of water vapour over water", "Wagner & Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783",
			"water", -2, 90, carbonation.WaterVapourPressure),
		over("ethanol_vapour_pressure", "pressure of ethanol vapour over pure ethanol", "Kretschmer & Wiebe, J. Am. Chem. Soc. 71 (1949) 1793",
			"ethanol", -2, 90, carbonation.EthanolVapourPressure),
	}
}
