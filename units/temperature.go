package units

// Temperature is a temperature on ITS-90, stored in degrees Celsius; its zero
// value is 0 °C. The difference of two temperatures is a [TemperatureDifference].
//
// In: Celsius.Of(4.2), [Unit.Try], Parse[Temperature](text). Out: q.In(Celsius). Methods: [Quantity].
//
// °C = (°F − 32)·5/9 and K = °C + 273.15, exact (NIST Special Publication 811 (2008) appendix B).
type Temperature = Quantity[temperature, temperatureDifference]

// Units of [Temperature].
var (
	// Celsius (°C): the base unit.
	Celsius = define[temperature, temperatureDifference]("°C", 1, 1,
		"C", "degC", "deg C", "℃", "ºC", "degrees C", "degree Celsius", "degrees Celsius", "celsius")
	// Fahrenheit (°F): °C = (°F − 32)·5/9.
	Fahrenheit = shifted[temperature, temperatureDifference]("°F", 5, 9, -32,
		"F", "degF", "deg F", "℉", "ºF", "degrees F", "degree Fahrenheit", "degrees Fahrenheit", "fahrenheit")
	// Kelvin (K): K = °C + 273.15.
	Kelvin = shifted[temperature, temperatureDifference]("K", 1, 1, -273.15, "kelvin", "kelvins")
)

var theTemperature = &dimension{
	name: "temperature", min: -273.15, max: most,
	ambiguous: map[string]string{
		"°":       "say °C or °F",
		"deg":     "say °C or °F",
		"degrees": "say °C or °F",
		"":        "say °C or °F",
	},
}

func (temperature) describe() *dimension { return theTemperature }
func (temperature) table() []*unit {
	return []*unit{Celsius.u, Fahrenheit.u, Kelvin.u}
}

// TemperatureDifference is a rise or fall of temperature, stored in kelvins: a
// difference of 1 °C is 1 K, of 1 °F is 5/9 K.
//
// In: KelvinDifference.Of(4.2), [Unit.Try], Parse[TemperatureDifference](text). Out: q.In(KelvinDifference). Methods: [Quantity].
type TemperatureDifference = Quantity[temperatureDifference, temperatureDifference]

// Units of [TemperatureDifference].
var (
	// KelvinDifference (K): 1 K, the same size as 1 °C.
	KelvinDifference = define[temperatureDifference, temperatureDifference]("K", 1, 1, "Δ°C", "kelvin", "kelvins", "C°")
	// FahrenheitDifference (Δ°F): 5/9 K.
	FahrenheitDifference = define[temperatureDifference, temperatureDifference]("Δ°F", 5, 9, "F°")
)

var theTemperatureDifference = &dimension{
	name: "temperature difference", min: -most, max: most,
	ambiguous: map[string]string{
		"°C": "a difference is in K or Δ°F; 20 °C is a temperature",
		"°F": "a difference is in K or Δ°F; 68 °F is a temperature",
	},
}

func (temperatureDifference) describe() *dimension { return theTemperatureDifference }
func (temperatureDifference) table() []*unit {
	return []*unit{KelvinDifference.u, FahrenheitDifference.u}
}
