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
	partGluconate
	partGlutamate
	partCount

	metalsEnd  = partCO3 // metals are from 1 to below it, anions from it
	metalCount = int(metalsEnd) - 1
	anionCount = int(partCount - metalsEnd)
)

// partTable says which ion of a profile a component is, and how many protons it holds
// in the form that alkalinity counts from, and how many ethanol leaves as they are.
var partTable = [partCount]struct {
	ion        Ion
	zero, firm int
}{
	partCa: {ion: Calcium}, partMg: {ion: Magnesium}, partNa: {ion: Sodium}, partK: {ion: Potassium}, partNH4: {ion: Ammonium},
	partCO3: {ion: Carbonate, zero: 2}, partSO4: {ion: Sulfate}, partPO4: {ion: Phosphate, zero: 2},
	partLactate: {ion: Lactate}, partAcetate: {ion: Acetate}, partCitrate: {ion: Citrate}, partMalate: {ion: Malate},
	partTartrate: {ion: Tartrate}, partSuccinate: {ion: Succinate}, partSulfite: {ion: Sulfite, zero: 1}, partSorbate: {ion: Sorbate},
	partGluconate: {ion: Gluconate}, partGlutamate: {ion: Glutamate, zero: 1, firm: 1}, // its amino group
}

// charge returns the charge of the bare component.
func (c component) charge() int {
	if c == nothing {
		return 0
	}
	return ionTable[partTable[c].ion].charge
}
