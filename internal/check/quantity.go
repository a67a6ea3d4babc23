package check

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Quantities of numbers known at run time, unchecked: what a test asks to be refused too.

func Celsius(v float64) units.Temperature                 { return of(units.Celsius, v) }
func Kilopascal(v float64) units.AbsolutePressure         { return of(units.Kilopascal, v) }
func Bar(v float64) units.AbsolutePressure                { return of(units.Bar, v) }
func BarGauge(v float64) units.GaugePressure              { return of(units.BarGauge, v) }
func Litre(v float64) units.Volume                        { return of(units.Litre, v) }
func Kilogram(v float64) units.Mass                       { return of(units.Kilogram, v) }
func Metre(v float64) units.Length                        { return of(units.Metre, v) }
func Percent(v float64) units.Share                       { return of(units.Percent, v) }
func PPM(v float64) units.Share                           { return of(units.PartPerMillion, v) }
func One(v float64) units.PureNumber                      { return of(units.One, v) }
func Plato(v float64) units.Extract                       { return of(units.DegreePlato, v) }
func PercentMass(v float64) units.StrengthByMass          { return of(units.PercentMass, v) }
func PercentVolume(v float64) units.StrengthByVolume      { return of(units.PercentVolume, v) }
func KilogramPerCubicMetre(v float64) units.Density       { return of(units.KilogramPerCubicMetre, v) }
func MilligramPerLitre(v float64) units.MassConcentration { return of(units.MilligramPerLitre, v) }
func GramPerLitre(v float64) units.MassConcentration      { return of(units.GramPerLitre, v) }
func GramCO2(v float64) units.CarbonDioxideContent        { return of(units.GramCO2PerLitre, v) }
func VolumesCO2(v float64) units.CarbonDioxideVolumes     { return of(units.VolumesCO2, v) }
func Kilocalorie(v float64) units.Energy                  { return of(units.Kilocalorie, v) }

func of[D, E units.Dimension](u units.Unit[D, E], v float64) units.Quantity[D, E] {
	return u.Of(checked.Number(v))
}
