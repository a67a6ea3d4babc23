package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Hardness returns the total hardness, the calcium and magnesium as CaCO3.
//
//   - Source: hardness by calculation, Standard Methods for the Examination of
//     Water and Wastewater, method 2340 B, recalled from memory: 2.497 Ca +
//     4.118 Mg; the factors here come from the atomic weights 2021.
func (p Profile) Hardness() units.CalciumCarbonate {
	return asCaCO3(2*p.mmol(Calcium) + 2*p.mmol(Magnesium))
}

// CalciumHardness returns the calcium as CaCO3.
func (p Profile) CalciumHardness() units.CalciumCarbonate { return asCaCO3(2 * p.mmol(Calcium)) }

// TemporaryHardness returns the hardness that boiling can throw out, as CaCO3: the
// lesser of calcium hardness and alkalinity, not below zero. Magnesium is not in it: a
// boil drops chalk, and the magnesium stays dissolved. [Profile.BoiledAt] has how much of
// it comes out. Books that divide hardness by alkalinity alone (carbonate hardness, the
// lesser of total hardness and alkalinity) have more wherever magnesium counts.
func (p Profile) TemporaryHardness() units.CalciumCarbonate {
	return asCaCO3(max(0, min(2*p.mmol(Calcium), p.alk)))
}

// ResidualAlkalinity returns the alkalinity less what calcium and magnesium offset
// in a malt mash: RA = alkalinity − Ca/3.5 − Mg/7, all in one equivalent unit. It
// is negative in a hard water of low alkalinity. It says nothing of a mash without
// malt phosphates, such as a sugar wash.
//
//   - Source: P. Kolbach, Monatsschrift für Brauerei 6 (1953) 49-52; coefficients as
//     method MEBAK W-030.01.900 gives them.
//   - Uncertainty: not stated.
func (p Profile) ResidualAlkalinity() units.CalciumCarbonate { return asCaCO3(p.residual()) }

func (p *Profile) residual() float64 {
	return p.alk - 2*p.mmol(Calcium)/kolbachCalcium - 2*p.mmol(Magnesium)/kolbachMagnesium
}

// Kolbach's divisors of the hardness by calcium and by magnesium.
const (
	kolbachCalcium   = 3.5
	kolbachMagnesium = 7.0
)

func asCaCO3(mEq float64) units.CalciumCarbonate {
	return units.MilligramPerLitreCaCO3.Of(checked.Number(mEq * cacO3PerEquivalent))
}
