package units

// PureNumber is a number without a unit: a specific gravity, a pH, a ratio. It is
// there so that such a number can be [Measured].
//
// In: One.Of(1.048), [Unit.Try], Parse[PureNumber](text). Out: q.In(One). Methods: [Quantity].
type PureNumber = Quantity[pureNumber, pureNumber]

// Units of [PureNumber].
const (
	// One: the number itself; its symbol is empty.
	One Unit[pureNumber, pureNumber] = pureNumberUnits
)

var thePureNumber = &dimension{
	name: "pure number", min: -most, max: most,
	units: pureNumberUnits, table: []unit{
		{symbol: "", num: 1, den: 1},
	},
}

func (pureNumber) describe() *dimension { return thePureNumber }
