package units

// Temperature is a temperature on ITS-90, stored in degrees Celsius; its zero
// value is 0 °C. The difference of two temperatures is a [TemperatureDifference].
//
// In: Celsius.Of(4.2), [Unit.Try], Parse[Temperature](text). Out: q.In(Celsius). Methods: [Quantity].
//
// °C = (°F − 32)·5/9 and K = °C + 273.15, exact (NIST Special Publication 811 (2008) appendix B).
type Temperature = Quantity[temperature, temperatureDifference]

// Units of [Temperature] and [TemperatureDifference].
const (
	// Celsius (°C): the base unit.
	Celsius Unit[temperature, temperatureDifference] = temperatureUnits
	// Fahrenheit (°F): °C = (°F − 32)·5/9.
	Fahrenheit Unit[temperature, temperatureDifference] = temperatureUnits + 1
	// Kelvin (K): K = °C + 273.15.
	Kelvin Unit[temperature, temperatureDifference] = temperatureUnits + 2

	// KelvinDifference (K): 1 K, the same size as 1 °C.
	KelvinDifference Unit[temperatureDifference, temperatureDifference] = temperatureDifferenceUnits
	// FahrenheitDifference (Δ°F): 5/9 K.
	FahrenheitDifference Unit[temperatureDifference, temperatureDifference] = temperatureDifferenceUnits + 1
)

var theTemperature = &dimension{
	name: "temperature", min: -273.15, max: most,
	units: temperatureUnits, table: []unit{
		{symbol: "°C", num: 1, den: 1, names: []string{"C", "degC", "deg C", "℃", "ºC", "degrees C", "degree Celsius", "degrees Celsius", "celsius"}},
		{symbol: "°F", num: 5, den: 9, offset: -32, names: []string{"F", "degF", "deg F", "℉", "ºF", "degrees F", "degree Fahrenheit",
			"degrees Fahrenheit", "fahrenheit"}},
		{symbol: "K", num: 1, den: 1, offset: -273.15, names: []string{"kelvin", "kelvins"}},
	},
	ambiguous: because([]string{"say °C or °F", "°", "deg", "degrees", ""}),
}

func (temperature) describe() *dimension { return theTemperature }

// TemperatureDifference is a rise or fall of temperature, stored in kelvins: a
// difference of 1 °C is 1 K, of 1 °F is 5/9 K.
//
// In: KelvinDifference.Of(4.2), [Unit.Try], Parse[TemperatureDifference](text). Out: q.In(KelvinDifference). Methods: [Quantity].
type TemperatureDifference = Quantity[temperatureDifference, temperatureDifference]

var theTemperatureDifference = &dimension{
	name: "temperature difference", min: -most, max: most,
	units: temperatureDifferenceUnits, table: []unit{
		{symbol: "K", num: 1, den: 1, names: []string{"Δ°C", "kelvin", "kelvins", "C°"}},
		{symbol: "Δ°F", num: 5, den: 9, names: []string{"F°"}},
	},
	ambiguous: map[string]string{
		"°C": "a difference is in K or Δ°F; 20 °C is a temperature",
		"°F": "a difference is in K or Δ°F; 68 °F is a temperature",
	},
}

func (temperatureDifference) describe() *dimension { return theTemperatureDifference }
