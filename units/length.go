package units

// Length is a length, height or altitude, stored in metres. An altitude may be
// negative.
//
// In: Metre.Of(4.2), [Unit.Try], Parse[Length](text). Out: q.In(Metre). Methods: [Quantity].
//
// The inch is 25.4 mm, exact (NIST Special Publication 811 (2008) appendix B).
type Length = Quantity[length, length]

// Units of [Length].
var (
	// Metre (m): the base unit.
	Metre = define[length, length]("m", 1, 1, "metre", "metres", "meter", "meters")
	// Millimetre (mm): 1/1000 m.
	Millimetre = define[length, length]("mm", 1, 1000, "millimetre", "millimetres", "millimeter", "millimeters")
	// centimetre (cm): 1/100 m.
	centimetre = other("cm", 1, 100, "centimetre", "centimetres", "centimeter", "centimeters")
	// kilometre (km): 1000 m.
	kilometre = other("km", 1000, 1, "kilometre", "kilometres", "kilometer", "kilometers")
	// Inch (in): 254/10000 m.
	Inch = define[length, length]("in", 254, 10000, "inch", "inches", "″", "\"")
	// foot (ft): 3048/10000 m.
	foot = other("ft", 3048, 10000, "foot", "feet", "′", "'")
)

var theLength = &dimension{
	name: "length", min: -most, max: most, compound: true,
}

func (length) describe() *dimension { return theLength }
func (length) table() []*unit {
	return []*unit{Metre.u, Millimetre.u, centimetre, kilometre, Inch.u, foot}
}
