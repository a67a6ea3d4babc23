package water

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

var mgPerLitre = units.MilligramPerLitre

// SolubilityWarnings says which minerals a water can drop in time from the state of
// the equilibrium, the largest first to mind: gypsum slow and clear, chalk as scale
// or haze. An empty result means that none is above saturation.
//
//   - Source: saturation indices, [Equilibrium.SaturationIndex]. Calcite up to an
//     index of about 0.5 often stays dissolved for days: common practice, no source.
func (e Equilibrium) SolubilityWarnings() []string {
	var out []string
	for m := range mineralCount {
		if m == AragoniteForm {
			continue // calcite is less soluble
		}
		if si := e.SaturationIndex(m); si > 0 {
			out = append(out, fmt.Sprintf("%s can drop out (saturation index %+.2f)", m, si))
		}
	}
	return out
}

// DoseWarnings says which of the salts will not dissolve by themselves.
//
//   - Source: chalk needs CO2 or acid, 13 mg/L without and about 0.9 g/L under 1 atm of
//     CO2 at 25 °C (literature points collected by the U.S. Geological Survey); gypsum
//     2.6 g/L at 25 °C (W. L. Marshall and R. Slusher, J. Phys. Chem. 70 (1966) 4015).
func DoseWarnings(volume units.Volume, doses ...material.Dose) []string {
	var out []string
	l := volume.In(units.Litre)
	for _, d := range doses {
		g := d.Mass.In(units.Gram)
		switch d.Material {
		case material.Chalk(), material.MagnesiumCarbonate():
			if l > 0 && g/l > chalkClosed {
				out = append(out, d.Material.Name()+" hardly dissolves in water: 0.013 g/L, and more only with CO2 or acid")
			}
		case material.Gypsum(), material.CalciumSulfate():
			if l > 0 && g/l > gypsumShare*gypsumSoluble {
				out = append(out, fmt.Sprintf("%s dissolves slowly and up to about %.1f g/L: stir it into cold water", d.Material.Name(), gypsumSoluble))
			}
		}
		if d.Material.Caustic() {
			out = append(out, CausticCaution())
		}
	}
	return out
}

const (
	chalkClosed   = 0.013 // g/L
	gypsumSoluble = 2.6   // g/L
	gypsumShare   = 0.5
)
