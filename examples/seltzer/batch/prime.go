package batch

import (
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
)

// prime adds the sugar that is to ferment in the pack.
func (j *job) prime(st *Step) error { return j.dissolve(st) }

// InPack returns what yeast usually makes of sugar in a closed pack, where it does not grow: glycerol and
// acids take their part, so that its gas is 3 % less than Gay-Lussac's equation has, 0.498 g from a gram of sucrose.
//
//   - Source: [ferment.Metabolism.Ferment]. Practice counts as much: a gram of CO2 from 2 g of sugar, a bar
//     at 10 °C from 4 g/L (recalled from memory; the 4 g/L also in an excerpt of a glossary of sparkling wine);
//     24 g/L make 11.8 g/L of CO2 (Liger-Belair, recalled from memory), of which close to 11.5 were measured after
//     disgorging (Liger-Belair and Villaume, J. Agric. Food Chem. 2011, excerpt of the abstract).
//   - Range: hexose 0 to 1e9 kg; otherwise the error is a [*units.RangeError].
//   - Uncertainty: up to 3 % more gas, which is all of the sugar ([carbonation.CO2From]): hold that against a
//     rating. Up to 6 % less where the yeast has the nitrogen to grow.
func InPack(hexose units.Mass) (ferment.Balance, error) {
	u := Usual()
	return metabolism(&u).Ferment(ferment.Substrate{Hexose: hexose})
}
