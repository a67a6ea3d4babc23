package catalogue

import (
	"slices"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/pipe"
	"example.org/zymase/units"
)

// tooMuch is where a content passes the one wanted: common practice, no source.
const tooMuch = 1.05

// carbonationService are heat, time to carbonate and serving.
func carbonationService() []Function {
	return slices.Concat(heatTreatment(), approach(), pouring(), ofDrinkAndPipe())
}

// heatTreatment are pasteurisation.
func heatTreatment() []Function {
	return []Function{
		{
			Name:    "pasteurisation_units",
			Meaning: "pasteurisation units of a log that warms, holds and cools along straight lines",
			Source:  "10^((T-60)/7): handbooks; 1.393^(T-60): Del Vecchio, Dayharsh & Baselt 1951",
			Inputs: []Input{
				in("start", units.Celsius, "temperature at the start", 0, 90, 15),
				number("warming", "min", "time of warming", 0.001, 10000, 20),
				in("held", units.Celsius, "temperature that is held", 0, 90, 60),
				number("holding", "min", "time of holding", 0.001, 10000, 15),
				in("end", units.Celsius, "temperature at the end", 0, 90, 25),
				number("cooling", "min", "time of cooling", 0.001, 10000, 20),
				choice("form", "rate against temperature", "10^((T-60)/7)", "1.393^(T-60)").orOption("10^((T-60)/7)"),
			},
			Outputs: []Output{
				pure("units", "PU", "all legs together"),
				pure("while_holding", "PU", "of the holding alone"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				at := func(minutes float64) time.Duration { return time.Duration(minutes * float64(time.Minute)) }
				log := [...]carbonation.LoggedTemperature{
					{At: 0, Temperature: as(units.Celsius, in[0])},
					{At: at(in[1]), Temperature: as(units.Celsius, in[2])},
					{At: at(in[1] + in[3]), Temperature: as(units.Celsius, in[2])},
					{At: at(in[1] + in[3] + in[5]), Temperature: as(units.Celsius, in[4])},
				}
				form := carbonation.Handbook()
				if in[6] == 1 {
					form = carbonation.DelVecchio()
				}
				p, err := form.Pasteurise(log[:], nil)
				out[0], out[1], out[2] = p.Units, p.Holding, float64(set(p.Cautions...))
				return err
			},
		},
	}
}

// approach are how a keg takes up gas.
func approach() []Function {
	return []Function{
		{
			Name:    "carbonation_rate",
			Meaning: "rate at which a keg takes up gas, from two readings of its content",
			Source:  "first-order approach dC/dt = k·(C∞ − C)",
			Inputs: []Input{
				in("first", units.GramCO2PerLitre, "content at the first reading", 0, 30, 1.5),
				in("second", units.GramCO2PerLitre, "content at the second reading", 0, 30, 2.4),
				in("at_rest", units.GramCO2PerLitre, "content at rest at the pressure set", 0, 30, 5.7),
				span("apart", "h", "time between the readings", 0.001, 10000, 24),
			},
			Outputs: []Output{pure("rate", "1/h", "share of the way to rest in an hour")},
			call: func(in, out []float64) error {
				k, err := carbonation.RateFromReadings(as(units.GramCO2PerLitre, in[0]), as(units.GramCO2PerLitre, in[1]), as(units.GramCO2PerLitre, in[2]), hours(in[3]))
				out[0] = k.PerHour()
				return err
			},
		},
		{
			Name:    "time_to_carbonate",
			Meaning: "time that a keg takes from one content to another on its way to that at rest",
			Source:  "first-order approach dC/dt = k·(C∞ − C)",
			Inputs: []Input{
				in("from", units.GramCO2PerLitre, "content now", 0, 30, 1.5),
				in("to", units.GramCO2PerLitre, "content wanted", 0, 30, 5.5),
				in("at_rest", units.GramCO2PerLitre, "content at rest at the pressure set", 0, 80, 5.7),
				number("rate", "1/h", "see carbonation_rate; 0.0125 for a keg left alone in the cold", 1e-5, 1000, 0.0125).or(0.0125),
			},
			Outputs: []Output{pure("time", "h", "a burst of pressure is set back after it"), cautionOutput()},
			call: func(in, out []float64) error {
				k, err := carbonation.NewCarbonationRate(in[3])
				if err != nil {
					return err
				}
				d, err := k.Until(as(units.GramCO2PerLitre, in[0]), as(units.GramCO2PerLitre, in[1]), as(units.GramCO2PerLitre, in[2]))
				out[0] = d.Hours()
				out[1] = float64(set(carbonation.PressureVessel) | also(carbonation.Overshoot, in[2] > tooMuch*in[1]))
				return err
			},
		},
	}
}

// pouring are blends of gas and serving lines.
func pouring() []Function {
	temperature := in("temperature", units.Celsius, "temperature of the drink", -2, 40, 4)
	return []Function{
		rated(Function{
			Name:    "mixed_gas_pressure",
			Meaning: "pressure of a blend of CO2 and nitrogen that keeps a CO2 content",
			Source:  "Dalton's law; " + henryDrink,
			Inputs: []Input{
				temperature,
				in("content", units.GramCO2PerLitre, "CO2 of the drink", 0, 15, 5),
				in("co2", units.Percent, "CO2 in the blend by volume", 5, 100, 70),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{
				out("gauge_pressure", units.KilopascalGauge, "what to set on the gauge"),
				out("pressure", units.Kilopascal, "absolute pressure"),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[3], in[4])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[5]))
				if err != nil {
					return err
				}
				p, err := carbonation.MixedGasPressure(l, as(units.GramCO2PerLitre, in[1]), as(units.Percent, in[2]), as(units.Celsius, in[0]))
				out[0], out[1] = air.Gauge(p).In(units.KilopascalGauge), p.In(units.Kilopascal)
				return err
			},
		}, func(in, out []float64) (float64, bits) {
			return out[0], set(carbonation.Asphyxiation, carbonation.Cylinder) | ice(in[0], in[3], in[4])
		}),
		{
			Name:    "serving_line_length",
			Meaning: "length of line that gives a flow from a keg pressure",
			Source:  "Darcy & Weisbach; Haaland, J. Fluids Eng. 105 (1983) 89",
			Inputs: []Input{
				temperature,
				in("gauge_pressure", units.KilopascalGauge, "pressure of the keg", 0, 1000, 110),
				in("flow", units.LitrePerMinute, "flow out of the tap", 0.05, 100, 2.5),
				in("bore", units.Millimetre, "inside diameter of the line", 1, 50, 5),
				in("rise", units.Metre, "tap over the middle of the keg", -30, 30, 0.6),
				number("losses", "", "loss coefficients of couplers, shank and tap together", 0, 10000, 3).or(3),
				in("roughness", units.Millimetre, "of the wall; 0.0015 of drawn plastic", 0, 0.05, 0.0015).or(0.0015),
				strengthInput(), extractInput(),
			},
			Outputs: []Output{
				out("length", units.Metre, "of the line"),
				pure("friction", "kPa/m", "of the line at this flow"),
				pure("speed", "m/s", "in the line"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[7]), as(units.DegreePlato, in[8]))
				if err != nil {
					return err
				}
				b, err := lineOf(in[3:7]).Balance(s, as(units.Celsius, in[0]), as(units.KilopascalGauge, in[1]), as(units.LitrePerMinute, in[2]))
				out[0], out[1], out[2], out[3] = b.Length.In(units.Metre), b.PerMetre.In(units.KilopascalGauge), b.Speed, float64(set(b.Cautions...))
				return err
			},
		},
		{
			Name:    "serving_line_flow",
			Meaning: "flow out of a line of a length from a keg pressure",
			Source:  "Darcy & Weisbach; Haaland, J. Fluids Eng. 105 (1983) 89",
			Inputs: []Input{
				temperature,
				in("gauge_pressure", units.KilopascalGauge, "pressure of the keg", 0, 1000, 110),
				in("length", units.Metre, "of the line", 0, 1000, 3),
				in("bore", units.Millimetre, "inside diameter of the line", 1, 50, 5),
				in("rise", units.Metre, "tap over the middle of the keg", -30, 30, 0.6),
				number("losses", "", "loss coefficients of couplers, shank and tap together", 0, 10000, 3).or(3),
				in("roughness", units.Millimetre, "of the wall; 0.0015 of drawn plastic", 0, 0.05, 0.0015).or(0.0015),
				strengthInput(), extractInput(),
			},
			Outputs: []Output{
				out("flow", units.LitrePerMinute, "out of the tap"),
				pure("reynolds", "", "laminar below 2300, either from 2000 to 4000"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[7]), as(units.DegreePlato, in[8]))
				if err != nil {
					return err
				}
				b, err := lineOf(in[3:7]).FlowOf(s, as(units.Celsius, in[0]), as(units.KilopascalGauge, in[1]), as(units.Metre, in[2]))
				out[0], out[1], out[2] = b.Flow.In(units.LitrePerMinute), b.Reynolds, float64(set(b.Cautions...))
				return err
			},
		},
	}
}

// ofDrinkAndPipe are properties of a drink and of a pipe.
func ofDrinkAndPipe() []Function {
	return []Function{
		{
			Name:    "drink_viscosity",
			Meaning: "viscosity of a drink",
			Source:  "Kestin, Sokolov & Wakeham, J. Phys. Chem. Ref. Data 7 (1978) 941; fits to Bingham & Jackson 1918 for ethanol and to the CRC Handbook for extract",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the drink; up to 80 °C with ethanol or extract", -2, 90, 4),
				strengthInput(), extractInput(),
			},
			Outputs: []Output{pure("viscosity", "mPa·s", "dynamic viscosity")},
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[1]), as(units.DegreePlato, in[2]))
				if err != nil {
					return err
				}
				mu, err := carbonation.Viscosity(s, as(units.Celsius, in[0]))
				out[0] = mu
				return err
			},
		},
		{
			Name:    "freezing_point",
			Meaning: "temperature at which ice begins to form in a drink; ice bursts bottles, and CO2 lowers it by another 0.04 K for each g/L",
			Source:  "Raoult's law and the heat of melting of ice",
			Inputs:  []Input{strengthInput(), extractInput()},
			Outputs: []Output{out("temperature", units.Celsius, "at which ice begins to form"), cautionOutput()},
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[0]), as(units.DegreePlato, in[1]))
				if err != nil {
					return err
				}
				t, err := carbonation.FreezingPoint(s)
				out[0], out[1] = t.In(units.Celsius), float64(set(carbonation.Freezing))
				return err
			},
		},
		entry("friction_factor", "Darcy's friction factor of a pipe", "64/Re; Haaland, J. Fluids Eng. 105 (1983) 89",
			of2(takesNumber("reynolds", "", "Reynolds number", 1, 1e8, 1e4), takesNumber("roughness", "", "roughness of the wall over the diameter", 0, 0.05, 0).or(0), pipe.FrictionFactor),
			givesNumber("friction_factor", "", "Darcy's, four times Fanning's")),
	}
}

// lineOf takes bore, rise, losses and roughness.
func lineOf(in []float64) carbonation.Line {
	return carbonation.Line{
		Bore: as(units.Millimetre, in[0]), Rise: as(units.Metre, in[1]), Losses: in[2], Roughness: as(units.Millimetre, in[3]),
	}
}
