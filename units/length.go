package units

// Length is a length, height or altitude, stored in metres. An altitude may be
// negative.
//
// In: Metre.Of(4.2), [Unit.Try], Parse[Length](text). Out: q.In(Metre). Methods: [Quantity].
//
// The inch is 25.4 mm, exact (NIST Special Publication 811 (2008) appendix B).
type Length = Quantity[length, length]

// Units of [Length].
const (
	// Metre (m): the base unit.
	Metre Unit[length, length] = lengthUnits
	// Millimetre (mm): 1/1000 m.
	Millimetre Unit[length, length] = lengthUnits + 1
	// Inch (in): 254/10000 m.
	Inch Unit[length, length] = lengthUnits + 4
)

var theLength = &dimension{
	name: "length", min: -most, max: most, compound: true,
	units: lengthUnits, table: []unit{
		{symbol: "m", num: 1, den: 1, names: []string{"metre", "metres", "meter", "meters"}},
		{symbol: "mm", num: 1, den: 1000, names: []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
		{symbol: "cm", num: 1, den: 100, names: []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
		{symbol: "km", num: 1000, den: 1, names: []string{"kilometre", "kilometres", "kilometer", "kilometers"}},
		{symbol: "in", num: 254, den: 10000, names: []string{"inch", "inches", "″", "\""}},
		{symbol: "ft", num: 3048, den: 10000, names: []string{"foot", "feet", "′", "'"}},
	},
}

func (length) describe() *dimension { return theLength }
