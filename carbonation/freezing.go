package carbonation

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// FreezingPoint returns the temperature at which ice begins to form in a drink. Ice
// takes a twelfth more room than its water: it bursts a bottle, and drives the gas into
// what is still liquid.
//
//   - Source: Raoult's law and the heat of melting of ice: ΔT = −R·T0²/ΔH·ln x, x the
//     mole fraction of water, ΔH 6007 J/mol (333.4 kJ/kg, IAPWS; recalled from memory),
//     T0 273.15 K.
//   - Range: drinks of [NewLiquid]; beyond it the error is a [*units.RangeError].
//   - Units: °C.
//   - Uncertainty: 0.2 K for ethanol and for sugar up to 10 % mass of either, 0.4 K
//     beyond. CO2 lowers it by another 0.04 K for each g/L; salts and acids lower it too.
//     They are left out, so that the drink may stay liquid a little longer. A drink at
//     rest can cool several kelvins below it, then freeze at a knock.
func FreezingPoint(s gravity.Solution) (units.Temperature, error) {
	l, err := NewLiquid(s)
	return units.Celsius.Of(checked.Number(l.freezes)), limit.Named("carbonation.FreezingPoint", err)
}

// freezesAt is in °C, from amounts in mol.
func freezesAt(water, ethanol, sugar float64) float64 {
	const melting = 6007 // J/mol
	return -chemistry.Gas * chemistry.ZeroCelsius * chemistry.ZeroCelsius / melting * math.Log1p((ethanol+sugar)/water)
}
