package units

// Mass is a mass as weighed, stored in kilograms.
//
// In: Kilogram.Of(4.2), [Unit.Try], Parse[Mass](text). Out: q.In(Kilogram). Methods: [Quantity].
//
// The factors are exact (avoirdupois pound 453.59237 g: NIST Special Publication 811 (2008) appendix B).
type Mass = Quantity[mass, mass]

// Units of [Mass] and [AnhydrousMass].
const (
	// Kilogram (kg): the base unit.
	Kilogram Unit[mass, mass] = massUnits
	// Gram (g): 1/1000 kg.
	Gram Unit[mass, mass] = massUnits + 1
	// Milligram (mg): 1/1000000 kg.
	Milligram Unit[mass, mass] = massUnits + 2
	// Pound (lb): the avoirdupois pound, 453.59237 g.
	Pound Unit[mass, mass] = massUnits + 3
	// Ounce (oz): the avoirdupois ounce, 1/16 lb.
	Ounce Unit[mass, mass] = massUnits + 4

	// KilogramAnhydrous (kg anhydrous): 1000 g of the compound without crystal water.
	KilogramAnhydrous Unit[anhydrousMass, anhydrousMass] = anhydrousMassUnits
	// GramAnhydrous (g anhydrous): 1 g of the compound without crystal water.
	GramAnhydrous Unit[anhydrousMass, anhydrousMass] = anhydrousMassUnits + 1
)

var theMass = &dimension{
	name: "mass", min: 0, max: most, compound: true,
	units: massUnits, table: []unit{
		{symbol: "kg", num: 1, den: 1, names: []string{"kilogram", "kilograms", "kilo", "kilos", "kgs", "KG", "Kg"}},
		{symbol: "g", num: 1, den: 1000, names: []string{"gram", "grams", "gm", "gr.", "G"}},
		{symbol: "mg", num: 1, den: 1000000, names: []string{"milligram", "milligrams"}},
		{symbol: "lb", num: 45359237, den: 100000000, names: []string{"lbs", "lb.", "lbs.", "pound", "pounds", "LB", "#"}},
		{symbol: "oz", num: 45359237, den: 1600000000, names: []string{"oz.", "ounce", "ounces", "OZ"}},
	},
	ambiguous: map[string]string{
		"t":    "say kg (a metric tonne is 1000 kg; US and UK tons differ)",
		"ton":  "say kg or lb (US and UK tons differ)",
		"tsp":  "a teaspoon is a volume; weigh it",
		"tbsp": "a tablespoon is a volume; weigh it",
	},
}

func (mass) describe() *dimension { return theMass }

// AnhydrousMass is the mass of the anhydrous compound in a hydrate, stored in
// kilograms. It is another type than [Mass], so that 100 g of a dihydrate on the scale
// is not taken for 100 g of the salt in it.
//
// In: KilogramAnhydrous.Of(4.2), [Unit.Try], Parse[AnhydrousMass](text). Out: q.In(KilogramAnhydrous). Methods: [Quantity].
type AnhydrousMass = Quantity[anhydrousMass, anhydrousMass]

var theAnhydrousMass = &dimension{
	name: "mass without crystal water", min: 0, max: most,
	units: anhydrousMassUnits, table: []unit{
		{symbol: "kg anhydrous", num: 1, den: 1},
		{symbol: "g anhydrous", num: 1, den: 1000},
	},
	ambiguous: map[string]string{
		"g":  "say \"g anhydrous\": a mass as weighed may hold crystal water",
		"kg": "say \"kg anhydrous\": a mass as weighed may hold crystal water",
	},
}

func (anhydrousMass) describe() *dimension { return theAnhydrousMass }
