package rival

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func plato(v float64) units.Extract { return units.DegreePlato.Of(checked.Number(v)) }
func percentMass(v float64) units.StrengthByMass {
	return units.PercentMass.Of(checked.Number(v))
}
func kgPerM3(v float64) units.Density { return units.KilogramPerCubicMetre.Of(checked.Number(v)) }
