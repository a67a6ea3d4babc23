// Package pipe holds the friction of flow in a round pipe.
package pipe

import (
	"math"

	"example.org/zymase/internal/limit"
)

// FrictionFactor returns Darcy's friction factor of a pipe. Between laminar and
// turbulent flow, where either may be, it takes the greater.
//
//   - Source: laminar 64/Re (Poiseuille); turbulent S. E. Haaland, J. Fluids Eng. 105
//     (1983) 89: 1/√f = −1.8·log((ε/3.7)^1.11 + 6.9/Re).
//   - Range: Re 1 to 1e8, roughness 0 to 0.05 of the diameter; beyond it the error is
//     a [*units.RangeError].
//   - Units: pure numbers.
//   - Uncertainty: 1.5 % of Colebrook's equation (source); 30 % between Re 2300 and
//     4000.
func FrictionFactor(reynolds, roughness float64) (f float64, err error) {
	const fn, source = "pipe.FrictionFactor", "Haaland 1983"
	if err := limit.Check(fn, "Reynolds number", reynolds, "", 1, 1e8, source); err != nil {
		return f, err
	}
	if err := limit.Check(fn, "relative roughness", roughness, "", 0, 0.05, source); err != nil {
		return f, err
	}
	return Friction(reynolds, roughness), nil
}

// LaminarBelow is the Reynolds number below which flow is laminar.
const LaminarBelow = 2300

// Friction is [FrictionFactor] inside its range.
func Friction(re, roughness float64) float64 {
	laminar := 64 / re
	if re < LaminarBelow {
		return laminar
	}
	s := -1.8 * math.Log10(math.Pow(roughness/3.7, 1.11)+6.9/re)
	return math.Max(laminar, 1/(s*s))
}
