package nutrient

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// The sizes that make sense: a drop to a ship.
const (
	leastVolume = 1e-6 // L
	mostVolume  = 1e9  // L
	mostMass    = 1e12 // g
)

// room is the temperature of strengths and gravities.
var room = units.Celsius.Of(20)

// pureEthanol is the density of ethanol at 20 °C in kg/L, as a [gravity.Solution] has
// it.
var pureEthanol = func() float64 {
	s, _ := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Kilogram.Of(1))
	return 1 / s.VolumeAt20().In(units.Litre)
}()

// share makes a share of a fraction between 0 and 1.
func share(fraction float64) units.Share { return units.Percent.Of(checked.Number(100 * fraction)) }

// mgPerL makes a concentration of mg/L.
func mgPerL(v float64) units.MassConcentration { return units.MilligramPerLitre.Of(checked.Number(v)) }

// grams makes a mass of g.
func grams(v float64) units.Mass { return units.Gram.Of(checked.Number(v)) }

// kilograms makes a mass of kg.
func kilograms(v float64) units.Mass { return units.Kilogram.Of(checked.Number(v)) }
