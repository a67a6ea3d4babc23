package batch

import (
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Component is something that a liquid holds.
type Component uint8

// Components. Those of a weak acid stand for it in whatever form the pH gives it.
const (
	Water Component = iota
	Ethanol
	Sucrose // and every other sugar of two units
	Glucose
	Fructose
	Dextrin // extract that the yeast leaves, and other matter without a name of its own
	Glycerol
	Calcium
	Magnesium
	Sodium
	Potassium
	Ammonium
	Iron
	Manganese
	Zinc
	Copper
	Chloride
	Sulfate
	Nitrate
	Nitrite
	Fluoride
	Phosphate // H2PO4-
	Lactate
	Acetate
	Citrate
	Malate
	Tartrate
	Succinate
	Sulfite // HSO3-
	Sorbate
	Gluconate
	Glutamate // C5H8NO4-: with the amino acids and peptides that it stands in for
	Proton    // H+ over the forms that alkalinity counts from: below zero where there is alkalinity
	Unnamed   // the charge of ions that no report names, as protons that do not react
	CarbonDioxide
	Nitrogen // and argon
	Oxygen
	Amino // amino acids that yeast takes up, as alanine
	Urea
	YeastMatter     // yeast without its nitrogen, phosphorus and potassium
	YeastNitrogen   // in yeast, as NH3
	YeastPhosphorus // in yeast, as H3PO4
	YeastPotassium  // in yeast, in the place of a proton
	componentCount
)

// Element is what is neither made nor lost: an element, or charge.
type Element uint8

// Elements.
const (
	C Element = iota
	H
	N
	O
	F
	Na
	Mg
	P
	S
	Cl
	K
	Ca
	Mn
	Fe
	Cu
	Zn
	Charge
	elementCount
)

var symbols = [elementCount]string{"C", "H", "N", "O", "F", "Na", "Mg", "P", "S", "Cl", "K", "Ca", "Mn", "Fe", "Cu", "Zn", "charge"}

// String returns the symbol, or "charge".
func (e Element) String() string {
	if e >= elementCount {
		return "unknown element"
	}
	return symbols[e]
}

type atoms [elementCount]float64

// components are what a mole of each is made of.
var components = [componentCount]struct {
	name string
	of   atoms
}{
	Water:         {"water", atoms{H: 2, O: 1}},
	Ethanol:       {"ethanol", atoms{C: 2, H: 6, O: 1}},
	Sucrose:       {"sucrose", atoms{C: 12, H: 22, O: 11}},
	Glucose:       {"glucose", atoms{C: 6, H: 12, O: 6}},
	Fructose:      {"fructose", atoms{C: 6, H: 12, O: 6}},
	Dextrin:       {"dextrin", atoms{C: 6, H: 10, O: 5}},
	Glycerol:      {"glycerol", atoms{C: 3, H: 8, O: 3}},
	Calcium:       {"calcium", atoms{Ca: 1, Charge: 2}},
	Magnesium:     {"magnesium", atoms{Mg: 1, Charge: 2}},
	Sodium:        {"sodium", atoms{Na: 1, Charge: 1}},
	Potassium:     {"potassium", atoms{K: 1, Charge: 1}},
	Ammonium:      {"ammonium", atoms{N: 1, H: 4, Charge: 1}},
	Iron:          {"iron", atoms{Fe: 1, Charge: 2}},
	Manganese:     {"manganese", atoms{Mn: 1, Charge: 2}},
	Zinc:          {"zinc", atoms{Zn: 1, Charge: 2}},
	Copper:        {"copper", atoms{Cu: 1, Charge: 2}},
	Chloride:      {"chloride", atoms{Cl: 1, Charge: -1}},
	Sulfate:       {"sulfate", atoms{S: 1, O: 4, Charge: -2}},
	Nitrate:       {"nitrate", atoms{N: 1, O: 3, Charge: -1}},
	Nitrite:       {"nitrite", atoms{N: 1, O: 2, Charge: -1}},
	Fluoride:      {"fluoride", atoms{F: 1, Charge: -1}},
	Phosphate:     {"phosphate", atoms{H: 2, P: 1, O: 4, Charge: -1}},
	Lactate:       {"lactate", atoms{C: 3, H: 5, O: 3, Charge: -1}},
	Acetate:       {"acetate", atoms{C: 2, H: 3, O: 2, Charge: -1}},
	Citrate:       {"citrate", atoms{C: 6, H: 5, O: 7, Charge: -3}},
	Malate:        {"malate", atoms{C: 4, H: 4, O: 5, Charge: -2}},
	Tartrate:      {"tartrate", atoms{C: 4, H: 4, O: 6, Charge: -2}},
	Succinate:     {"succinate", atoms{C: 4, H: 4, O: 4, Charge: -2}},
	Sulfite:       {"sulfite", atoms{H: 1, S: 1, O: 3, Charge: -1}},
	Sorbate:       {"sorbate", atoms{C: 6, H: 7, O: 2, Charge: -1}},
	Gluconate:     {"gluconate", atoms{C: 6, H: 11, O: 7, Charge: -1}},
	Glutamate:     {"glutamate", atoms{C: 5, H: 8, N: 1, O: 4, Charge: -1}},
	Proton:        {"proton", atoms{H: 1, Charge: 1}},
	Unnamed:       {"unnamed charge", atoms{H: 1, Charge: 1}},
	CarbonDioxide: {"carbon dioxide", atoms{C: 1, O: 2}},
	Nitrogen:      {"nitrogen", atoms{N: 2}},
	Oxygen:        {"oxygen", atoms{O: 2}},
	Amino:         {"amino acids", atoms{C: 3, H: 7, N: 1, O: 2}},
	Urea:          {"urea", atoms{C: 1, H: 4, N: 2, O: 1}},

	// CH1.2O0.5: with 0.2 NH3 the average biomass CH1.8O0.5N0.2 (Roels, Energetics and Kinetics
	// in Biotechnology (1983); recalled from memory), as package nutrient has it.
	YeastMatter:     {"yeast matter", atoms{C: 1, H: 1.2, O: 0.5}},
	YeastNitrogen:   {"nitrogen in yeast", atoms{N: 1, H: 3}},
	YeastPhosphorus: {"phosphorus in yeast", atoms{H: 3, P: 1, O: 4}},
	YeastPotassium:  {"potassium in yeast", atoms{K: 1, H: -1}},
}

// Components returns every component in the order of the constants.
func Components() []Component {
	all := make([]Component, componentCount)
	for i := range all {
		all[i] = Component(i)
	}
	return all
}

// String returns the name, "ethanol".
func (c Component) String() string {
	if c >= componentCount {
		return "unknown component"
	}
	return components[c].name
}

// Of returns how many moles of an element, or of charge, a mole of the component holds.
func (c Component) Of(e Element) float64 {
	if c >= componentCount || e >= elementCount {
		return 0
	}
	return components[c].of[e]
}

// MolarMass returns g/mol: that of the atoms.
//
//   - Source: abridged atomic weights 2021, Pure Appl. Chem. 94 (2022) 573.
func (c Component) MolarMass() float64 {
	if c >= componentCount {
		return 0
	}
	return molar[c]
}

var weights = func() (w [elementCount]float64) {
	for e := range Charge {
		w[e] = chemistry.MustMass(symbols[e])
	}
	return w
}()

var molar = func() (m [componentCount]float64) {
	for c := range components {
		for e, n := range components[c].of {
			m[c] += n * weights[e]
		}
	}
	return m
}()

// Amounts is so many moles of each component.
type Amounts [componentCount]float64

// Mass returns the mass of all together.
func (a *Amounts) Mass() units.Mass { return grams(a.grams()) }

func (a *Amounts) grams() (g float64) {
	for c, n := range a {
		g += n * molar[c]
	}
	return g
}

// Element returns the moles of an element, or of charge.
func (a *Amounts) Element(e Element) (n float64) {
	if e >= elementCount {
		return 0
	}
	for c, x := range a {
		n += x * components[c].of[e]
	}
	return n
}

// plus adds k times b.
func (a *Amounts) plus(b *Amounts, k float64) {
	for c, n := range b {
		a[c] += k * n
	}
}

// ions are the components that package water counts.
var ions = [...]struct {
	c   Component
	ion water.Ion
}{
	{Calcium, water.Calcium}, {Magnesium, water.Magnesium}, {Sodium, water.Sodium}, {Potassium, water.Potassium},
	{Ammonium, water.Ammonium}, {Iron, water.Iron}, {Manganese, water.Manganese}, {Zinc, water.Zinc}, {Copper, water.Copper},
	{Chloride, water.Chloride}, {Sulfate, water.Sulfate}, {Nitrate, water.Nitrate}, {Nitrite, water.Nitrite},
	{Fluoride, water.Fluoride}, {Phosphate, water.Phosphate}, {Sulfite, water.Sulfite}, {Sorbate, water.Sorbate},
	{Lactate, water.Lactate}, {Acetate, water.Acetate}, {Citrate, water.Citrate}, {Malate, water.Malate},
	{Tartrate, water.Tartrate}, {Succinate, water.Succinate}, {Gluconate, water.Gluconate}, {Glutamate, water.Glutamate},
}

// firstAcid is where the organic acids of a drink begin in ions: package gravity has them as extract.
const firstAcid = 17

// component is the one that an ion of package water is counted as.
func component(i water.Ion) (Component, bool) {
	for _, x := range ions {
		if x.ion == i {
			return x.c, true
		}
	}
	return 0, false
}
