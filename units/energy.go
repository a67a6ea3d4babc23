package units

// Energy is an energy or heat, stored in kilojoules.
//
// In: Kilojoule.Of(4.2), [Unit.Try], Parse[Energy](text). Out: q.In(Kilojoule). Methods: [Quantity].
//
// The kilocalorie is the thermochemical one, 4.184 kJ (NIST Special Publication 811 (2008) appendix B).
type Energy = Quantity[energy, energy]

// Units of [Energy] and [Power].
const (
	// Kilojoule (kJ): the base unit.
	Kilojoule Unit[energy, energy] = energyUnits
	// Kilocalorie (kcal): 4.184 kJ.
	Kilocalorie Unit[energy, energy] = energyUnits + 3

	// Watt (W): the base unit.
	Watt Unit[power, power] = powerUnits
)

var theEnergy = &dimension{
	name: "energy", min: -most, max: most,
	units: energyUnits, table: []unit{
		{symbol: "kJ", num: 1, den: 1, names: []string{"kj", "kilojoule", "kilojoules"}},
		{symbol: "J", num: 1, den: 1000, names: []string{"joule", "joules"}},
		{symbol: "MJ", num: 1000, den: 1, names: []string{"megajoule", "megajoules"}},
		{symbol: "kcal", num: 4184, den: 1000, names: []string{"kilocalorie", "kilocalories"}},
		{symbol: "kWh", num: 3600, den: 1, names: []string{"kilowatt hour", "kilowatt hours"}},
	},
	ambiguous: map[string]string{
		"cal":      "say kcal or kJ: a food \"Calorie\" is 1 kcal",
		"Cal":      "say kcal or kJ: a food \"Calorie\" is 1 kcal",
		"calories": "say kcal or kJ: a food \"Calorie\" is 1 kcal",
	},
}

func (energy) describe() *dimension { return theEnergy }

// Power is a rate of heat or work, stored in watts.
//
// In: Watt.Of(4.2), [Unit.Try], Parse[Power](text). Out: q.In(Watt). Methods: [Quantity].
type Power = Quantity[power, power]

var thePower = &dimension{
	name: "power", min: -most, max: most,
	units: powerUnits, table: []unit{
		{symbol: "W", num: 1, den: 1, names: []string{"watt", "watts"}},
		{symbol: "kW", num: 1000, den: 1, names: []string{"kilowatt", "kilowatts"}},
	},
	ambiguous: map[string]string{
		"hp": "say W or kW",
	},
}

func (power) describe() *dimension { return thePower }
