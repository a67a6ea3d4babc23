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
//	{
//		Name:    "ethanol_density",
//		Meaning: "density of a mixture of ethanol and water",
//		Source:  "OIML R 22 (1973)",
//		Inputs: []Input{
//			in("strength", units.PercentMass, "ethanol in the mixture", 0, 100, 40),
//			in("temperature", units.Celsius, "temperature of the mixture", -20, 40, 20).or(20),
//		},
//		Outputs: []Output{out("density", units.KilogramPerCubicMetre, "density in vacuum")},
//		call: func(in, out []float64) error {
//			d, err := gravity.EthanolDensity(as(units.PercentMass, in[0]), as(units.Celsius, in[1]))
//			if err == nil {
//				out[0] = d.In(units.KilogramPerCubicMetre)
//			}
//			return err
//		},
//	},
//
// The numbers after the meaning are the least and the greatest value allowed and
// an example, which the index page of the bridge shows; or gives an input a
// default. When call runs, each input is finite and inside its limits, a choice
// is a whole index: so [as] turns it into a quantity without a check. A result
// that is not finite is refused after it. A call allocates nothing when it
// succeeds, unless the entry says heavy: true; the examples together must
// compute. The kinds of input:
//
//   - in: a quantity with a unit of package units;
//   - number: a pure number, or one in a unit that package units does not have,
//     with other ways to write it: number("gravity", "", …).alias("°P", platoToSG);
//   - count: a whole number;
//   - span: a time, "h" or another unit of [units.ParseDuration];
//   - choice: one of several words; the number is its index.
//
// Names are trade words in lower case with underscores. An output that says yes
// or no is 1 or 0, and its Meaning says so.
//
// Each entry either gives a caution or stands with a reason in the list of caution_test.go.
// Where the result of the library carries cautions, the entry gives them (cautionOutput);
// where it always says the same, the words stand in caution.go; where a person sets the
// pressure, rated wraps the entry. Afterwards run
//
//	go test ./examples/bridge/catalogue -update
//
// and read the change of testdata/catalogue.golden as a reader of the contract.
package catalogue
