// Package material answers: what does a gram of this bring?
//
// A [Material] is anything that is weighed out in brewing: a salt for the water, an acid as
// it is sold, a sugar or syrup, what feeds the yeast, a buffer, a sulfite. It knows its name in the
// trade, its formula or the composition on its label, and where that is from.
//
//	gypsum := material.Gypsum()
//	fmt.Println(gypsum.Composition().Calcium)      // share of calcium, of the mass as weighed
//	dose := gypsum.Dose(units.Gram.Of(6))          // which, and how much
//	m, err := material.Find("Epsom salts")         // by any of its names, or its formula
//
// One's own comes from its label, [ByLabel]. What water, yeast or the law makes of a
// material stands in the packages above: water, carbonation, nutrient.
//
// # Conventions
//
// Shares are of the mass as weighed, crystal water included. Nitrogen, phosphorus and the
// metals count as the element; sulfate, chloride and the other anions as the ion; thiamine
// as its hydrochloride. Formulas are worked out from the atomic weights: see [Material.MolarMass].
//
// All values are immutable and safe for concurrent use. [Find] knows every material by its
// names and [All] lists them; those that programs name have a function each, so that no
// program can put another in their place.
package material
