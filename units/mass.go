package units

// Mass is a mass as weighed, stored in kilograms.
//
// In: Kilogram.Of(4.2), [Unit.Try], Parse[Mass](text). Out: q.In(Kilogram). Methods: [Quantity].
//
// The factors are exact (avoirdupois pound 453.59237 g: NIST Special Publication 811 (2008) appendix B).
type Mass = Quantity[mass, mass]

// Units of [Mass].
var (
	// Kilogram (kg): the base unit.
	Kilogram = define[mass, mass]("kg", 1, 1, "kilogram", "kilograms", "kilo", "kilos", "kgs", "KG", "Kg")
	// Gram (g): 1/1000 kg.
	Gram = define[mass, mass]("g", 1, 1000, "gram", "grams", "gm", "gr.", "G")
	// Milligram (mg): 1/1000000 kg.
	Milligram = define[mass, mass]("mg", 1, 1000000, "milligram", "milligrams")
	// Pound (lb): the avoirdupois pound, 453.59237 g.
	Pound = define[mass, mass]("lb", 45359237, 100000000, "lbs", "lb.", "lbs.", "pound", "pounds", "LB", "#")
	// Ounce (oz): the avoirdupois ounce, 1/16 lb.
	Ounce = define[mass, mass]("oz", 45359237, 1600000000, "oz.", "ounce", "ounces", "OZ")
)

var theMass = &dimension{
	name: "mass", min: 0, max: most, compound: true,
	ambiguous: map[string]string{
		"t":    "say kg (a metric tonne is 1000 kg; US and UK tons differ)",
		"ton":  "say kg or lb (US and UK tons differ)",
		"tsp":  "a teaspoon is a volume; weigh it",
		"tbsp": "a tablespoon is a volume; weigh it",
	},
}

func (mass) describe() *dimension { return theMass }
func (mass) table() []*unit {
	return []*unit{Kilogram.u, Gram.u, Milligram.u, Pound.u, Ounce.u}
}

// AnhydrousMass is the mass of the anhydrous compound in a hydrate, stored in
// kilograms. It is another type than [Mass], so that 100 g of a dihydrate on the scale
// is not taken for 100 g of the salt in it.
//
// In: KilogramAnhydrous.Of(4.2), [Unit.Try], Parse[AnhydrousMass](text). Out: q.In(KilogramAnhydrous). Methods: [Quantity].
type AnhydrousMass = Quantity[anhydrousMass, anhydrousMass]

// Units of [AnhydrousMass].
var (
	// KilogramAnhydrous (kg anhydrous): 1000 g of the compound without crystal water.
	KilogramAnhydrous = define[anhydrousMass, anhydrousMass]("kg anhydrous", 1, 1)
	// GramAnhydrous (g anhydrous): 1 g of the compound without crystal water.
	GramAnhydrous = define[anhydrousMass, anhydrousMass]("g anhydrous", 1, 1000)
)

var theAnhydrousMass = &dimension{
	name: "mass without crystal water", min: 0, max: most,
	ambiguous: map[string]string{
		"g":  "say \"g anhydrous\": a mass as weighed may hold crystal water",
		"kg": "say \"kg anhydrous\": a mass as weighed may hold crystal water",
	},
}

func (anhydrousMass) describe() *dimension { return theAnhydrousMass }
func (anhydrousMass) table() []*unit {
	return []*unit{KilogramAnhydrous.u, GramAnhydrous.u}
}
