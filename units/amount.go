package units

// Amount is an amount of substance, stored in moles.
//
// In: Mole.Of(4.2), [Unit.Try], Parse[Amount](text). Out: q.In(Mole). Methods: [Quantity].
type Amount = Quantity[amount, amount]

// Units of [Amount] and [MolarMass].
const (
	// Mole (mol): the base unit.
	Mole Unit[amount, amount] = amountUnits
	// Millimole (mmol): 1/1000 mol.
	Millimole Unit[amount, amount] = amountUnits + 1

	// GramPerMole (g/mol): the base unit.
	GramPerMole Unit[molarMass, molarMass] = molarMassUnits
)

var theAmount = &dimension{
	name: "amount of substance", min: 0, max: most,
	units: amountUnits, table: []unit{
		{symbol: "mol", num: 1, den: 1, names: []string{"mole", "moles"}},
		{symbol: "mmol", num: 1, den: 1000, names: []string{"millimole", "millimoles"}},
	},
}

func (amount) describe() *dimension { return theAmount }

// MolarMass is what a mole of a substance weighs, stored in g/mol.
//
// In: GramPerMole.Of(44.009), [Unit.Try], Parse[MolarMass](text). Out: q.In(GramPerMole). Methods: [Quantity].
type MolarMass = Quantity[molarMass, molarMass]

var theMolarMass = &dimension{
	name: "molar mass", min: 0, max: most,
	units: molarMassUnits, table: []unit{
		{symbol: "g/mol", num: 1, den: 1},
	},
}

func (molarMass) describe() *dimension { return theMolarMass }
