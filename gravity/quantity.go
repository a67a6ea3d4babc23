package gravity

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// The numbers that go in here are computed inside the range of a formula.

func kilograms(v float64) units.Mass { return units.Kilogram.Of(checked.Number(v)) }
func litres(v float64) units.Volume  { return units.Litre.Of(checked.Number(v)) }
func plato(v float64) units.Extract  { return units.DegreePlato.Of(checked.Number(v)) }
func percentMass(v float64) units.StrengthByMass {
	return units.PercentMass.Of(checked.Number(v))
}
func percentVolume(v float64) units.StrengthByVolume {
	return units.PercentVolume.Of(checked.Number(v))
}
func kgPerM3(v float64) units.Density { return units.KilogramPerCubicMetre.Of(checked.Number(v)) }

func celsius(v float64) units.Temperature { return units.Celsius.Of(checked.Number(v)) }

func gramsPerLitre(v float64) units.MassConcentration {
	return units.GramPerLitre.Of(checked.Number(v))
}

func number(v float64) units.PureNumber { return units.One.Of(checked.Number(v)) }

func percent(v float64) units.Share { return units.Percent.Of(checked.Number(v)) }

func gramsCO2PerLitre(v float64) units.CarbonDioxideContent {
	return units.GramCO2PerLitre.Of(checked.Number(v))
}
