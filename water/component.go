package water

// component is what a species is made of besides protons: nothing, a metal (or ammonium) or
// an anion.
type component uint8

// Components, metals first.
const (
	nothing component = iota
	partCa
	partMg
	partNa
	partK
	partNH4
	partCO3
	partSO4
	partPO4
	partLactate
	partAcetate
	partCitrate
	partMalate
	partTartrate
	partSuccinate
	partSulfite
	partSorbate
	partCount

	metalsEnd  = partCO3 // metals are from 1 to below it, anions from it
	metalCount = int(metalsEnd) - 1
	anionCount = int(partCount - metalsEnd)
)

// partTable says which ion of a profile a component is, and how many protons it holds
// in the form that alkalinity counts from.
var partTable = [partCount]struct {
	ion  Ion
	zero int
}{
	partCa: {Calcium, 0}, partMg: {Magnesium, 0}, partNa: {Sodium, 0}, partK: {Potassium, 0}, partNH4: {Ammonium, 0},
	partCO3: {Carbonate, 2}, partSO4: {Sulfate, 0}, partPO4: {Phosphate, 2},
	partLactate: {Lactate, 0}, partAcetate: {Acetate, 0}, partCitrate: {Citrate, 0}, partMalate: {Malate, 0},
	partTartrate: {Tartrate, 0}, partSuccinate: {Succinate, 0}, partSulfite: {Sulfite, 1}, partSorbate: {Sorbate, 0},
}

// charge returns the charge of the bare component.
func (c component) charge() int {
	if c == nothing {
		return 0
	}
	return ionTable[partTable[c].ion].charge
}
