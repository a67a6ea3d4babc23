package material

import "example.org/zymase/internal/chemistry"

// MolarMass returns the molar mass of a chemical formula in g/mol:
// "CaSO4.2H2O", "(NH4)2HPO4", "CaCl2·2H2O". Charges are left out of the formula.
//
// A text longer than 64 bytes, an element outside H, C, N, O, F, Na, Mg, P, S, Cl,
// K, Ca, Mn, Fe, Cu, Zn, or a formula that does not parse gives a [*units.ParseError].
//
//   - Source: abridged atomic weights 2021, Pure Appl. Chem. 94 (2022) 573.
//   - Uncertainty: below 0.02 g/mol for the salts of the trade, mostly from
//     sulfur and zinc.
func MolarMass(formula string) (float64, error) { return chemistry.MolarMass(formula) }
