package units

// Cells is a number of live yeast cells, stored in billions (1e9).
//
// In: BillionCells.Of(200), [Unit.Try], Parse[Cells](text). Out: q.In(BillionCells). Methods: [Quantity].
type Cells = Quantity[cells, cells]

var theCells = &dimension{
	name: "number of cells", min: 0, max: most,
	units: cellsUnits, table: []unit{
		{symbol: "billion cells", num: 1, den: 1},
	},
}

func (cells) describe() *dimension { return theCells }

// PitchRate is live yeast cells in a volume of a start liquid for each degree Plato of it,
// stored in million cells a millilitre and degree.
//
// In: MillionPerMillilitrePlato.Of(0.75), [Unit.Try], Parse[PitchRate](text). Out: q.In(MillionPerMillilitrePlato). Methods: [Quantity].
type PitchRate = Quantity[pitchRate, pitchRate]

var thePitchRate = &dimension{
	name: "pitch rate", min: 0, max: most,
	units: pitchRateUnits, table: []unit{
		{symbol: "million cells/mL/°P", num: 1, den: 1},
	},
}

func (pitchRate) describe() *dimension { return thePitchRate }
