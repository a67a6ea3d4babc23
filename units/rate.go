package units

// Rate is how often something happens in a time, or what part of a gap closes in it, stored
// an hour.
//
// In: PerHour.Of(0.0125), [Unit.Try], Parse[Rate](text). Out: q.In(PerHour). Methods: [Quantity].
type Rate = Quantity[rate, rate]

var theRate = &dimension{
	name: "rate", min: 0, max: most,
	units: rateUnits, table: []unit{
		{symbol: "per hour", num: 1, den: 1, names: []string{"/h", "an hour"}},
	},
}

func (rate) describe() *dimension { return theRate }

// PasteurisationUnits are the killing that heat has done, stored in PU: one is what a minute
// at 60 °C does.
//
// In: PU.Of(15), [Unit.Try], Parse[PasteurisationUnits](text). Out: q.In(PU). Methods: [Quantity].
type PasteurisationUnits = Quantity[pasteurisationUnits, pasteurisationUnits]

var thePasteurisationUnits = &dimension{
	name: "number of pasteurisation units", min: 0, max: most,
	units: pasteurisationUnitsUnits, table: []unit{
		{symbol: "PU", num: 1, den: 1},
	},
}

func (pasteurisationUnits) describe() *dimension { return thePasteurisationUnits }
