package sugar

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// GlucoseSyrup returns a glucose (corn) syrup by its solids and its dextrose
// equivalent, the reducing power of the solids against dextrose. Two syrups of one
// equivalent may differ in how they were made, and so in how much of them ferments;
// the spread says so.
//
//   - Source: sugars of acid-converted syrups, % of the solids: at 30, 36, 42, 55 and 64
//     DE glucose 10, 14, 19, 31, 37; maltose 9, 12, 14, 18, 32; maltotriose 10, 11, 12,
//     13, 11 (trade tables, recalled from memory); between them straight lines. 64 DE is
//     made with enzymes. Codex CXS 212-1999: at least 20 DE (read), solids at least 70 %
//     (recalled from memory). At 100 DE all is glucose.
//   - Range: solids 70 to 90 %, 30 to 64 DE; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: a tenth of the sugar. From the definition alone, the share of sugars
//     of one to three units lies between DE and 2.8 DE.
func GlucoseSyrup(solids units.Share, dextroseEquivalent units.Share) (Fermentable, error) {
	return named("sugar.GlucoseSyrup")(material.GlucoseSyrup(solids, dextroseEquivalent))
}

// Juice returns a fruit juice or a must by its degrees Brix and the share of the
// dissolved solids that ferments; the zero share takes 90 %. The sugar counts as glucose
// and fructose in equal parts.
//
//   - Source: common practice, no source: 90 % of the solids of a must ferment, 80 to
//     95 % of fruit juices, the rest being acids, sorbitol and pectin.
//   - Range: 3 to 70 °Bx, share 50 to 100 %; beyond it the error is a
//     [*units.RangeError].
//   - Units: °Bx by mass, from a hydrometer or a refractometer.
//   - Uncertainty: 5 % of the sugar.
func Juice(brix units.Extract, fermentable units.Share) (Fermentable, error) {
	return named("sugar.Juice")(material.Juice(brix, fermentable))
}
