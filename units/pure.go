package units

// PureNumber is a number without a unit: a specific gravity, a pH, a ratio. It is
// there so that such a number can be [Measured].
//
// In: One.Of(1.048), [Unit.Try], Parse[PureNumber](text). Out: q.In(One). Methods: [Quantity].
type PureNumber = Quantity[pureNumber, pureNumber]

// Units of [PureNumber].
var (
	// One: the number itself; its symbol is empty.
	One = define[pureNumber, pureNumber]("", 1, 1)
)

var thePureNumber = &dimension{name: "pure number", min: -most, max: most}

func (pureNumber) describe() *dimension { return thePureNumber }
func (pureNumber) table() []*unit {
	return []*unit{One.u}
}
