package amount

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// The sizes that make sense: a drop to a ship.
const (
	LeastVolume = 1e-6 // L
	MostVolume  = 1e9  // L
	MostMass    = 1e12 // g
)

// Room is the temperature of strengths and gravities.
var Room = units.Celsius.Of(20)

// PureEthanol is the density of ethanol at 20 °C in kg/L, as a [gravity.Solution] has
// it.
var PureEthanol = func() float64 {
	s, _ := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Kilogram.Of(1))
	return 1 / s.VolumeAt20().In(units.Litre)
}()

// Share makes a share of a fraction between 0 and 1.
func Share(fraction float64) units.Share { return units.Percent.Of(checked.Number(100 * fraction)) }

// MgPerL makes a concentration of mg/L.
func MgPerL(v float64) units.MassConcentration { return units.MilligramPerLitre.Of(checked.Number(v)) }

// Grams makes a mass of g.
func Grams(v float64) units.Mass { return units.Gram.Of(checked.Number(v)) }

// Kilograms makes a mass of kg.
func Kilograms(v float64) units.Mass { return units.Kilogram.Of(checked.Number(v)) }
