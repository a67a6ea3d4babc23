package units

// PureNumber is a number without a unit: a specific gravity, a pH, a ratio. It is
// there so that such a number can be [Measured].
//
// In: One.Of(1.048), [Unit.Try], Parse[PureNumber](text). Out: q.In(One). Methods: [Quantity].
type PureNumber = Quantity[pureNumber, pureNumber]

// Units that are the only one of their quantity: of [PureNumber], [Rate], [PasteurisationUnits], [Cells], [PitchRate],
// [DynamicViscosity] and [Speed].
const (
	// One: the number itself; its symbol is empty.
	One Unit[pureNumber, pureNumber] = pureNumberUnits

	// PerHour (per hour): the base unit.
	PerHour Unit[rate, rate] = rateUnits

	// PU: the base unit, what a minute at 60 °C does.
	PU Unit[pasteurisationUnits, pasteurisationUnits] = pasteurisationUnitsUnits

	// BillionCells (billion cells): the base unit.
	BillionCells Unit[cells, cells] = cellsUnits

	// MillionPerMillilitrePlato (million cells/mL/°P): the base unit.
	MillionPerMillilitrePlato Unit[pitchRate, pitchRate] = pitchRateUnits

	// MillipascalSecond (mPa·s): the base unit, which is a centipoise.
	MillipascalSecond Unit[dynamicViscosity, dynamicViscosity] = dynamicViscosityUnits

	// MetrePerSecond (m/s): the base unit.
	MetrePerSecond Unit[speed, speed] = speedUnits
)

var thePureNumber = &dimension{
	name: "pure number", min: -most, max: most,
	units: pureNumberUnits, table: []unit{
		{symbol: "", num: 1, den: 1},
	},
}

func (pureNumber) describe() *dimension { return thePureNumber }
