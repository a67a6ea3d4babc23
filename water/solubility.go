package water

import (
	"strings"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

var mgPerLitre = units.MilligramPerLitre

// SolubilityWarnings says which minerals a water can drop in time from the state of
// the equilibrium, the largest first to mind: gypsum slow and clear, chalk as scale
// or haze. An empty result means that none is above saturation.
//
//   - Source: saturation indices, [Equilibrium.SaturationIndex]. Calcite up to an
//     index of about 0.5 often stays dissolved for days: common practice, no source.
func (e Equilibrium) SolubilityWarnings() caution.List {
	var out caution.List
	for m := range mineralCount {
		if m == AragoniteForm {
			continue // calcite is less soluble
		}
		if si := e.SaturationIndex(m); si > 0 {
			out = out.With(about(m.String(), canDropOut, m, si))
		}
	}
	return out
}

// DoseWarnings says which of the salts will not dissolve by themselves.
//
//   - Source: chalk needs CO2 or acid, 13 mg/L without and about 0.9 g/L under 1 atm of
//     CO2 at 25 °C (literature points collected by the U.S. Geological Survey); gypsum
//     2.6 g/L at 25 °C (W. L. Marshall and R. Slusher, J. Phys. Chem. 70 (1966) 4015).
func DoseWarnings(volume units.Volume, doses ...material.Dose) caution.List {
	var out caution.List
	l := volume.In(units.Litre)
	for _, d := range doses {
		g := d.Mass.In(units.Gram)
		switch d.Material {
		case material.Chalk(), shelf.Material("magnesium carbonate"):
			if l > 0 && g/l > chalkClosed {
				out = out.With(about(d.Material.Name(), hardlyDissolves, d.Material))
			}
		case material.Gypsum(), shelf.Material("calcium sulfate anhydrous"):
			if l > 0 && g/l > gypsumShare*gypsumSoluble {
				out = out.With(about(d.Material.Name(), dissolvesSlowly, d.Material, gypsumSoluble))
			}
		}
		if d.Material.Caustic() {
			out = out.With(material.Burns)
		}
	}
	return out
}

const (
	chalkClosed   = 0.013 // g/L
	gypsumSoluble = 2.6   // g/L
	gypsumShare   = 0.5
)

const (
	canDropOut      caution.Caution = "can_drop_out: %s can drop out (saturation index %+.2f)"
	hardlyDissolves caution.Caution = "hardly_dissolves: %s hardly dissolves in water: 0.013 g/L, and more only with CO2 or acid"
	dissolvesSlowly caution.Caution = "dissolves_slowly: %s dissolves slowly and up to about %.1f g/L: stir it into cold water"
)

// about is a caution of one stuff among several, each with a code of its own: "can_drop_out_calcite".
func about(name string, c caution.Caution, figures ...any) caution.Caution {
	c = c.With(figures...)
	return caution.Caution(c.Code() + "_" + strings.ReplaceAll(name, " ", "_") + ": " + c.Text())
}
