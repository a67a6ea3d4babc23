package units

// DynamicViscosity is what a liquid sets against being sheared, stored in mPa·s.
//
// In: MillipascalSecond.Of(1.002), [Unit.Try], Parse[DynamicViscosity](text). Out: q.In(MillipascalSecond). Methods: [Quantity].
type DynamicViscosity = Quantity[dynamicViscosity, dynamicViscosity]

var theDynamicViscosity = &dimension{
	name: "dynamic viscosity", min: 0, max: most,
	units: dynamicViscosityUnits, table: []unit{
		{symbol: "mPa·s", num: 1, den: 1, names: []string{"mPa s", "cP"}},
	},
}

func (dynamicViscosity) describe() *dimension { return theDynamicViscosity }

// Speed is a length in a time, stored in m/s.
//
// In: MetrePerSecond.Of(0.5), [Unit.Try], Parse[Speed](text). Out: q.In(MetrePerSecond). Methods: [Quantity].
type Speed = Quantity[speed, speed]

var theSpeed = &dimension{
	name: "speed", min: 0, max: most,
	units: speedUnits, table: []unit{
		{symbol: "m/s", num: 1, den: 1},
	},
}

func (speed) describe() *dimension { return theSpeed }
