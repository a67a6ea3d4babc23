package units

// Amount is an amount of substance, stored in moles.
//
// In: Mole.Of(4.2), [Unit.Try], Parse[Amount](text). Out: q.In(Mole). Methods: [Quantity].
type Amount = Quantity[amount, amount]

// Units of [Amount].
var (
	// Mole (mol): the base unit.
	Mole = define[amount, amount]("mol", 1, 1, "mole", "moles")
	// Millimole (mmol): 1/1000 mol.
	Millimole = define[amount, amount]("mmol", 1, 1000, "millimole", "millimoles")
)

var theAmount = &dimension{
	name: "amount of substance", min: 0, max: most,
}

func (amount) describe() *dimension { return theAmount }
func (amount) table() []*unit {
	return []*unit{Mole.u, Millimole.u}
}
