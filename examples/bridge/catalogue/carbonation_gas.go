package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

const virialSource = "Span & Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509"

// carbonationGas are CO2 gas, liquid CO2 and the vapours.
func carbonationGas() []Function {
	temperature := in("temperature", units.Celsius, "temperature of the gas", -10, 100, 20)
	pressure := in("pressure", units.Kilopascal, "absolute pressure of the CO2", 0, 2000, 300)
	return []Function{
		{
			Name:    "co2_second_virial",
			Meaning: "second virial coefficient of CO2",
			Source:  virialSource,
			Inputs:  []Input{temperature},
			Outputs: []Output{pure("second_virial", "cm³/mol", "negative: the gas is denser than an ideal one")},
			call: func(in, out []float64) error {
				b, err := dioxide.SecondVirial(as(units.Celsius, in[0]))
				out[0] = b
				return err
			},
		},
		{
			Name:    "co2_fugacity_coefficient",
			Meaning: "fugacity of CO2 gas over its pressure",
			Source:  virialSource,
			Inputs:  []Input{temperature, pressure},
			Outputs: []Output{pure("fugacity_coefficient", "", "below 1")},
			call: func(in, out []float64) error {
				phi, err := dioxide.FugacityCoefficient(as(units.Celsius, in[0]), as(units.Kilopascal, in[1]))
				out[0] = phi
				return err
			},
		},
		{
			Name:    "co2_gas_density",
			Meaning: "density of CO2 gas",
			Source:  virialSource,
			Inputs:  []Input{temperature, pressure},
			Outputs: []Output{out("density", units.KilogramPerCubicMetre, "density of the gas, g/L")},
			call: func(in, out []float64) error {
				d, err := carbonation.GasDensity(as(units.Celsius, in[0]), as(units.Kilopascal, in[1]))
				out[0] = d.In(units.KilogramPerCubicMetre)
				return err
			},
		},
		{
			Name:    "co2_saturation_pressure",
			Meaning: "pressure in a cylinder that still has liquid CO2 in it",
			Source:  virialSource + ", eq. 3.13",
			Inputs:  []Input{in("temperature", units.Celsius, "temperature of the cylinder", -56.558, 30.9782, 20)},
			Outputs: []Output{out("pressure", units.Kilopascal, "absolute pressure")},
			call: func(in, out []float64) error {
				p, err := carbonation.SaturationPressure(as(units.Celsius, in[0]))
				out[0] = p.In(units.Kilopascal)
				return err
			},
		},
		{
			Name:    "water_vapour_pressure",
			Meaning: "pressure of water vapour over water",
			Source:  "Wagner & Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783",
			Inputs:  []Input{in("temperature", units.Celsius, "temperature of the water", -2, 90, 20)},
			Outputs: []Output{out("pressure", units.Kilopascal, "absolute pressure")},
			call: func(in, out []float64) error {
				p, err := carbonation.WaterVapourPressure(as(units.Celsius, in[0]))
				out[0] = p.In(units.Kilopascal)
				return err
			},
		},
		{
			Name:    "ethanol_vapour_pressure",
			Meaning: "pressure of ethanol vapour over pure ethanol",
			Source:  "Kretschmer & Wiebe, J. Am. Chem. Soc. 71 (1949) 1793",
			Inputs:  []Input{in("temperature", units.Celsius, "temperature of the ethanol", -2, 90, 20)},
			Outputs: []Output{out("pressure", units.Kilopascal, "absolute pressure")},
			call: func(in, out []float64) error {
				p, err := carbonation.EthanolVapourPressure(as(units.Celsius, in[0]))
				out[0] = p.In(units.Kilopascal)
				return err
			},
		},
	}
}
