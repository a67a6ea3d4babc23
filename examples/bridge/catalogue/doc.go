// Package catalogue answers: which computations can a spreadsheet call, by what
// name, with which units?
//
//	f, err := catalogue.Find("atmosphere_at_altitude")
//	in, out := []float64{640}, make([]float64, 1)
//	err = f.Call(in, out) // out[0] is 93.87 kPa absolute
//
// [All] lists the functions in a fixed order. Their names, inputs, outputs,
// units and order are a contract with the sheets that people keep: a golden
// file holds them.
//
// # Numbers and units
//
// [Function.Call] takes and gives bare numbers in the stated units ([Input.Unit],
// [Output.Unit]). What stands around it turns text into such numbers:
//
//   - [Input.Parse] reads what a person types: "12.5 °C", "55 °F", a bare number
//     in the stated unit, the name of a choice.
//   - [Input.ParseCell] reads what a spreadsheet sends: the same, but a single
//     comma is always a decimal mark.
//   - [Input.Conversion] serves a whole column headed "temperature (°F)": the
//     unit is looked up once, then each number is converted without allocation.
//   - [Output.Conversion] gives a result in another unit than the stated one.
//
// Unit "" is a pure number: a pH, a specific gravity, the index of a choice.
//
// # Cautions
//
// A function whose number can hurt someone gives a text beside it, the caution; one whose
// number is a pressure takes the maker's rating, if it is known, and gives a verdict too.
// Call gives a number for a text as well, so that a column costs no words until it is
// written: [Output.Text] turns it into them. [Function.OnlyNumber] is what a question
// means that names no output, so that a caution added to a function changes no sheet.
//
// # How to add a function
//
// Each package of the library has a file here (gravity.go, water.go …, or
// several named after it, gravity_scales.go) with one function that returns its
// entries; [All] joins them. An entry is:
//
//	entry("ethanol_density", "density of a mixture of ethanol and water", "OIML R 22 (1973)",
//		of2(takes("strength_by_mass", units.PercentMass, "ethanol in the mixture", 0, 100, 40),
//			takes("temperature", units.Celsius, "temperature of the mixture", -20, 40, 20).or(20),
//			gravity.EthanolDensity),
//		gives("density", units.KilogramPerCubicMetre, "density in vacuum")),
//
// The numbers after the meaning of an argument are the least and the greatest value allowed
// and an example, which the index page of the bridge shows; or gives it a default. Unit and
// limits stand there only: when the function runs, its arguments are quantities inside them,
// a choice is one of its values. A result that is not finite is refused after it. A call
// allocates nothing when it succeeds, unless the entry is heavy; the examples together must
// compute. The kinds of argument:
//
//   - takes: a quantity with a unit of package units; takesStated: its number in the unit;
//   - takesNumber: a pure number, or one in a unit that package units does not have;
//   - takesTime: a time, "h" or another unit of [units.ParseDuration];
//   - picks, picksBy: one of several values, by the word that each prints or by words given;
//   - reads: what a function makes of one [Input], so that number("gravity", "", …).alias("°P",
//     platoToSG) can be a gravity;
//   - of1 to of8: what a function makes of arguments, which may be such themselves: takesDrink
//     is a drink by its strength and extract, takesPlace the air at an altitude.
//
// The inputs come in the order of the arguments. A result shows itself (gives, givesNumber), or
// a quantity of it (from), a number of it (numberFrom), a number worked out in a unit (stated), a
// figure with its ends (band), its cautions (says, saysAlways), its verdict (judges).
//
// Names are trade words in lower case with underscores. An output that says yes
// or no is 1 or 0, and its Meaning says so.
//
// Each entry either gives a caution or stands with a reason in the list of caution_test.go.
// Where the result of the library carries cautions, the entry gives them (says);
// where it always says the same, the words stand in caution.go; where a person sets the
// pressure, rated wraps the entry. Afterwards run
//
//	go test ./examples/bridge/catalogue -update
//
// and read the change of testdata/catalogue.golden as a reader of the contract.
package catalogue
