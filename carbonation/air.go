package carbonation

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/numeric"
)

// Air is two gases here: nitrogen, and oxygen together with the 0.93 % of argon, which
// dissolves as oxygen does within a tenth (US Standard Atmosphere 1976, table 3:
// nitrogen 78.084 %).
const nitrogenShare = 0.78084

// airHeld is what a kilogram of water holds at equilibrium of nitrogen and of oxygen, each for
// 1 kPa of itself, in mol; T in K, u = 1/T.
//
//   - Source: IAPWS G7-04, Guideline on the Henry's Constant (2004), eq. 3 and table 2:
//     ln(kH/p*) = A/Tr + B·τ^0.355/Tr + C·Tr^−0.41·e^τ. The guideline itself was not
//     seen: the constants are read in three public programs that agree, and give
//     ln(kH/GPa) = 2.1716 and 1.5024 at 300 K, the check values of its table 5 as
//     recalled from memory.
//   - Range: 1 to 363 °C for oxygen, 5 to 363 °C for nitrogen (source), here −2 to 90 °C.
//   - Uncertainty: 2.5 % against R. F. Weiss, Deep-Sea Research 17 (1970) 721, from 0 to
//     40 °C; 3.7 % (source, one standard deviation over its range).
func airHeld(T, u float64) (nitrogen, oxygen float64) {
	const criticalT = 647.096 // K
	const perKilogram = 1000 / chemistry.Water
	tr := T * (1 / criticalT)
	tau := 1 - tr
	x, y := math.Pow(tau, 0.355), math.Pow(tr, -0.41)*math.Exp(tau)
	n := (-9.67578+4.72162*x)/tr + 11.70585*y
	o := (-9.44833+4.43822*x)/tr + 11.42005*y
	p := logWater(T, u)
	return perKilogram / criticalWater * numeric.Exp(-n-p), perKilogram / criticalWater * numeric.Exp(-o-p)
}

// airAbove is the pressure in kPa of amounts of nitrogen and oxygen in mol, in a
// head-space that takes gas mol of a gas for each kPa, over a drink that takes nl and ol.
func airAbove(nitrogen, oxygen, gas, nl, ol float64) float64 {
	if nitrogen+oxygen == 0 {
		return 0
	}
	return nitrogen/(gas+nl) + oxygen/(gas+ol)
}

// water is the mass of water in a litre of the drink at 20 °C, in kg.
func (l Liquid) water() float64 { return waterAt20 - l.dry }
