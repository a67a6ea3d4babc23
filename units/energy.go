package units

// Energy is an energy or heat, stored in kilojoules.
//
// In: Kilojoule.Of(4.2), [Unit.Try], Parse[Energy](text). Out: q.In(Kilojoule). Methods: [Quantity].
//
// The kilocalorie is the thermochemical one, 4.184 kJ (NIST Special Publication 811 (2008) appendix B).
type Energy = Quantity[energy, energy]

// Units of [Energy].
var (
	// Kilojoule (kJ): the base unit.
	Kilojoule = define[energy, energy]("kJ", 1, 1, "kj", "kilojoule", "kilojoules")
	// joule (J): 1/1000 kJ.
	joule = other("J", 1, 1000, "joule", "joules")
	// megajoule (MJ): 1000 kJ.
	megajoule = other("MJ", 1000, 1, "megajoule", "megajoules")
	// Kilocalorie (kcal): 4.184 kJ.
	Kilocalorie = define[energy, energy]("kcal", 4184, 1000, "kilocalorie", "kilocalories")
	// kilowattHour (kWh): 3600 kJ.
	kilowattHour = other("kWh", 3600, 1, "kilowatt hour", "kilowatt hours")
)

var theEnergy = &dimension{
	name: "energy", min: -most, max: most,
	ambiguous: map[string]string{
		"cal":      "say kcal or kJ: a food \"Calorie\" is 1 kcal",
		"Cal":      "say kcal or kJ: a food \"Calorie\" is 1 kcal",
		"calories": "say kcal or kJ: a food \"Calorie\" is 1 kcal",
	},
}

func (energy) describe() *dimension { return theEnergy }
func (energy) table() []*unit {
	return []*unit{Kilojoule.u, joule, megajoule, Kilocalorie.u, kilowattHour}
}

// Power is a rate of heat or work, stored in watts.
//
// In: Watt.Of(4.2), [Unit.Try], Parse[Power](text). Out: q.In(Watt). Methods: [Quantity].
type Power = Quantity[power, power]

// Units of [Power].
var (
	// Watt (W): the base unit.
	Watt = define[power, power]("W", 1, 1, "watt", "watts")
	// kilowatt (kW): 1000 W.
	kilowatt = other("kW", 1000, 1, "kilowatt", "kilowatts")
)

var thePower = &dimension{
	name: "power", min: -most, max: most,
	ambiguous: map[string]string{
		"hp": "say W or kW",
	},
}

func (power) describe() *dimension { return thePower }
func (power) table() []*unit {
	return []*unit{Watt.u, kilowatt}
}
