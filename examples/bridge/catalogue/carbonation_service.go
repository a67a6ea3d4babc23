package catalogue

import (
	"slices"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/pipe"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// tooMuch is where a content passes the one wanted: common practice, no source.
const tooMuch = 1.05

// carbonationService are heat, time to carbonate and serving.
func carbonationService() []*Function {
	return slices.Concat(heatTreatment(), approach(), pouring(), ofDrinkAndPipe())
}

// A leg is a stretch of a log: minutes, and the temperature at its end.
type leg struct {
	minutes float64
	end     units.Temperature
}

// threeLegs pasteurises along a log that warms, holds and cools.
func threeLegs(start units.Temperature, warming, held leg, cooling leg, form carbonation.Lethality) (carbonation.Pasteurisation, error) {
	at := func(minutes float64) time.Duration { return time.Duration(minutes * float64(time.Minute)) }
	log := [...]carbonation.LoggedTemperature{
		{At: 0, Temperature: start},
		{At: at(warming.minutes), Temperature: warming.end},
		{At: at(warming.minutes + held.minutes), Temperature: held.end},
		{At: at(warming.minutes + held.minutes + cooling.minutes), Temperature: cooling.end},
	}
	return form.Pasteurise(log[:], nil)
}

// heatTreatment are pasteurisation.
func heatTreatment() []*Function {
	type units60 = carbonation.Pasteurisation
	minutes := func(name, meaning string, example float64) arg[float64] {
		return takesNumber(name, "min", meaning, 0.001, 10000, example)
	}
	celsius := func(name, meaning string, example float64) arg[units.Temperature] {
		return takes(name, units.Celsius, meaning, 0, 90, example)
	}
	forms := []carbonation.Lethality{carbonation.Handbook(), carbonation.DelVecchio()}
	return []*Function{
		entry("pasteurisation_units", "pasteurisation units of a log that warms, holds and cools along straight lines",
			"10^((T-60)/7): handbooks; 1.393^(T-60): Del Vecchio, Dayharsh & Baselt 1951",
			of7(celsius("start", "temperature at the start", 15), minutes("warming", "time of warming", 20), celsius("held", "temperature that is held", 60),
				minutes("holding", "time of holding", 15), celsius("end", "temperature at the end", 25), minutes("cooling", "time of cooling", 20),
				picksBy("form", "rate against temperature", forms, "10^((T-60)/7)", "1.393^(T-60)").orOption("10^((T-60)/7)"),
				func(start units.Temperature, warming float64, held units.Temperature, holding float64, end units.Temperature, cooling float64,
					f carbonation.Lethality) (units60, error) {
					return threeLegs(start, leg{warming, held}, leg{holding, held}, leg{cooling, end}, f)
				}),
			from(func(p units60) units.PasteurisationUnits { return p.Units }, "units", units.PU, "all legs together"),
			from(func(p units60) units.PasteurisationUnits { return p.Holding }, "while_holding", units.PU, "of the holding alone"),
			says(func(p units60) caution.List { return p.Cautions })),
	}
}

// approach are how a keg takes up gas.
func approach() []*Function {
	const firstOrder = "first-order approach dC/dt = k·(C∞ − C)"
	type wait = pair[time.Duration, caution.List]
	content := func(name, meaning string, most, example float64) arg[units.CarbonDioxideContent] {
		return takes(name, units.GramCO2PerLitre, meaning, 0, most, example)
	}
	return []*Function{
		entry("carbonation_rate", "rate at which a keg takes up gas, from two readings of its content", firstOrder,
			of4(content("first", "content at the first reading", 30, 1.5), content("second", "content at the second reading", 30, 2.4),
				content("at_rest", "content at rest at the pressure set", 30, 5.7), takesTime("apart", "h", "time between the readings", 0.001, 10000, 24),
				carbonation.RateFromReadings),
			numberFrom(func(k units.Rate) float64 { return k.In(units.PerHour) }, "rate", "1/h", "share of the way to rest in an hour")),
		entry("time_to_carbonate", "time that a keg takes from one content to another on its way to that at rest", firstOrder,
			of4(content("from", "content now", 30, 1.5), content("to", "content wanted", 30, 5.5), content("at_rest", "content at rest at the pressure set", 80, 5.7),
				reads(number("rate", "1/h", "see carbonation_rate; 0.0125 for a keg left alone in the cold", 1e-5, 1000, 0.0125).or(0.0125),
					units.PerHour.Try),
				func(now, to, rest units.CarbonDioxideContent, k units.Rate) (wait, error) {
					d, err := carbonation.Keg{Content: now, Target: to, Rate: k}.Until(rest)
					passes := rest.In(units.GramCO2PerLitre) > tooMuch*to.In(units.GramCO2PerLitre)
					return wait{d, caution.List{carbonation.PressureVessel}.WithIf(passes, carbonation.Overshoot)}, err
				}),
			numberFrom(func(w wait) float64 { return w.a.Hours() }, "time", "h", "a burst of pressure is set back after it"),
			says(func(w wait) caution.List { return w.b })),
	}
}

// takesLine is a serving line but for its length.
func takesLine() arg[carbonation.Line] {
	return of4(takes("bore", units.Millimetre, "inside diameter of the line", 1, 50, 5),
		takes("rise", units.Metre, "tap over the middle of the keg", -30, 30, 0.6),
		takesNumber("losses", "", "loss coefficients of couplers, shank and tap together", 0, 10000, 3).or(3),
		takes("roughness", units.Millimetre, "of the wall; 0.0015 of drawn plastic", 0, 0.05, 0.0015).or(0.0015),
		func(bore, rise units.Length, losses float64, roughness units.Length) (carbonation.Line, error) {
			return carbonation.Line{Bore: bore, Rise: rise, Losses: losses, Roughness: roughness}, nil
		})
}

// pouring are blends of gas and serving lines.
func pouring() []*Function {
	const source = "Darcy & Weisbach; Haaland, J. Fluids Eng. 105 (1983) 89"
	type state = carbonation.LineState
	temperature := takes("temperature", units.Celsius, "temperature of the drink", -2, 40, 4)
	keg := takes("gauge_pressure", units.KilopascalGauge, "pressure of the keg", 0, 1000, 110)
	warnings := says(func(s state) caution.List { return s.Cautions })
	return []*Function{
		rated("gauge_pressure", entry("mixed_gas_pressure", "pressure of a blend of CO2 and nitrogen that keeps a CO2 content", "Dalton's law; "+henryDrink,
			of5(temperature, takes("content", units.GramCO2PerLitre, "CO2 of the drink", 0, 15, 5),
				takes("co2", units.Percent, "CO2 in the blend by volume", 5, 100, 70),
				takesLiquid(), takesPlace(),
				func(t units.Temperature, c units.CarbonDioxideContent, co2 units.Share, l carbonation.Liquid, air units.Atmosphere) (reading, error) {
					p, err := l.MixedGasPressure(c, co2, t)
					return reading{p, air}, err
				}),
			settings()...), carbonation.Asphyxiation, carbonation.Cylinder),
		entry("serving_line_length", "length of line that gives a flow from a keg pressure", source,
			of5(temperature, keg, takes("flow", units.LitrePerMinute, "flow out of the tap", 0.05, 100, 2.5), takesLine(), takesDrink(),
				func(t units.Temperature, p units.GaugePressure, flow units.VolumeFlow, l carbonation.Line, s gravity.Solution) (state, error) {
					return l.Balance(s, t, p, flow)
				}),
			from(func(s state) units.Length { return s.Length }, "length", units.Metre, "of the line"),
			numberFrom(func(s state) float64 { return s.PerMetre.In(units.KilopascalGauge) }, "friction", "kPa/m", "of the line at this flow"),
			from(func(s state) units.Speed { return s.Speed }, "speed", units.MetrePerSecond, "in the line"), warnings),
		entry("serving_line_flow", "flow out of a line of a length from a keg pressure", source,
			of5(temperature, keg, takes("length", units.Metre, "of the line", 0, 1000, 3), takesLine(), takesDrink(),
				func(t units.Temperature, p units.GaugePressure, length units.Length, l carbonation.Line, s gravity.Solution) (state, error) {
					return l.FlowOf(s, t, p, length)
				}),
			from(func(s state) units.VolumeFlow { return s.Flow }, "flow", units.LitrePerMinute, "out of the tap"),
			numberFrom(func(s state) float64 { return s.Reynolds }, "reynolds", "", "laminar below 2300, either from 2000 to 4000"), warnings),
	}
}

// ofDrinkAndPipe are properties of a drink and of a pipe.
func ofDrinkAndPipe() []*Function {
	type air = pair[units.MassConcentration, units.MassConcentration]
	return []*Function{
		entry("drink_viscosity", "viscosity of a drink",
			"Kestin, Sokolov & Wakeham, J. Phys. Chem. Ref. Data 7 (1978) 941; fits to Bingham & Jackson 1918 for ethanol and to the CRC Handbook for extract",
			of2(takes("temperature", units.Celsius, "temperature of the drink; up to 80 °C with ethanol or extract", -2, 90, 4), takesDrink(),
				func(t units.Temperature, s gravity.Solution) (units.DynamicViscosity, error) {
					return carbonation.Viscosity(s, t)
				}),
			gives("viscosity", units.MillipascalSecond, "dynamic viscosity")),
		entry("air_in_drink", "oxygen and nitrogen that a drink holds at rest with moist air; an extract of 15 °P holds a fifth less "+
			"oxygen than is given here", "IAPWS G7-04",
			of3(takes("temperature", units.Celsius, "temperature of the drink", -2, 90, 10),
				takes("pressure", units.Kilopascal, "pressure of the air", 1, 400, 101.325).or(101.325), takesLiquid(),
				func(t units.Temperature, p units.AbsolutePressure, l carbonation.Liquid) (air, error) {
					nitrogen, oxygen, err := l.Aerated(p, t)
					return air{oxygen, nitrogen}, err
				}),
			from(func(a air) units.MassConcentration { return a.a }, "oxygen", units.MilligramPerLitre, "of the drink at 20 °C"),
			from(func(a air) units.MassConcentration { return a.b }, "nitrogen", units.MilligramPerLitre, "and argon")),
		entry("freezing_point", "temperature at which ice begins to form in a drink; ice bursts bottles, and CO2 lowers it by another 0.04 K for each g/L",
			"Raoult's law and the heat of melting of ice",
			of1(takesDrink(), carbonation.FreezingPoint),
			gives("temperature", units.Celsius, "at which ice begins to form"),
			says(func(units.Temperature) caution.List { return caution.List{carbonation.Freezing} })),
		entry("friction_factor", "Darcy's friction factor of a pipe", "64/Re; Haaland, J. Fluids Eng. 105 (1983) 89",
			of2(takesNumber("reynolds", "", "Reynolds number", 1, 1e8, 1e4), takesNumber("roughness", "", "roughness of the wall over the diameter", 0, 0.05, 0).or(0),
				pipe.FrictionFactor),
			givesNumber("friction_factor", "", "Darcy's, four times Fanning's")),
	}
}
