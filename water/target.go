package water

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

var inf = math.Inf(1)

// Stock is a salt at hand.
type Stock struct {
	Salt material.Material
	Most units.Mass // what there is of it; zero means enough
}

// Target is what an ion should come to: a value (Low equals High), or anything
// between two. Bicarbonate stands for the alkalinity.
type Target struct {
	Ion       Ion
	Low, High units.MassConcentration
	Weight    float64 // how much a mg/L off counts; zero means 1
}

// Aim returns the target c for the ion.
func (i Ion) Aim(c units.MassConcentration) Target { return Target{Ion: i, Low: c, High: c} }

// Between returns the target of anything from low to high for the ion.
func (i Ion) Between(low, high units.MassConcentration) Target {
	return Target{Ion: i, Low: low, High: high}
}

// Bound is a condition that the treated water has to meet, whatever the targets
// are. It comes from [Ion.AtMost], [Ion.AtLeast], [HardnessBetween],
// [ResidualAlkalinityBetween] or [SulfateToChloride].
type Bound struct {
	name  string
	coeff [ionCount]float64 // by mg/L of each ion, the alkalinity as bicarbonate
	low   float64           // -Inf where open
	high  float64           // +Inf where open
	unit  string
}

// Name says what the limit holds, "sodium".
func (l Bound) Name() string { return l.name }

// AtMost keeps the ion at or below c.
func (i Ion) AtMost(c units.MassConcentration) Bound {
	return single(i, -inf, c.In(units.MilligramPerLitre))
}

// AtLeast keeps the ion at or above c.
func (i Ion) AtLeast(c units.MassConcentration) Bound {
	return single(i, c.In(units.MilligramPerLitre), inf)
}

func single(i Ion, low, high float64) Bound {
	l := Bound{name: i.Name(), low: low, high: high, unit: "mg/L"}
	if i >= 0 && i < ionCount {
		l.coeff[i] = 1
	} else {
		l.low = math.NaN() // refused by the solver
	}
	return l
}

// HardnessBetween keeps the hardness, [Profile.Hardness], from low to high.
func HardnessBetween(low, high units.CalciumCarbonate) Bound {
	l := Bound{name: "hardness", unit: "mg/L as CaCO3",
		low: low.In(units.MilligramPerLitreCaCO3), high: high.In(units.MilligramPerLitreCaCO3)}
	l.coeff[Calcium] = 2 * cacO3PerEquivalent / Calcium.facts().mass
	l.coeff[Magnesium] = 2 * cacO3PerEquivalent / Magnesium.facts().mass
	return l
}

// ResidualAlkalinityBetween keeps [Profile.ResidualAlkalinity] from low to high.
func ResidualAlkalinityBetween(low, high units.CalciumCarbonate) Bound {
	l := Bound{name: "residual alkalinity", unit: "mg/L as CaCO3",
		low: low.In(units.MilligramPerLitreCaCO3), high: high.In(units.MilligramPerLitreCaCO3)}
	l.coeff[Bicarbonate] = cacO3PerEquivalent / Bicarbonate.facts().mass
	l.coeff[Calcium] = -2 * cacO3PerEquivalent / Calcium.facts().mass / kolbachCalcium
	l.coeff[Magnesium] = -2 * cacO3PerEquivalent / Magnesium.facts().mass / kolbachMagnesium
	return l
}

// SulfateToChloride keeps the ratio of sulfate to chloride, both in mg/L, from low
// to high. It is two limits, one for each side.
func SulfateToChloride(low, high float64) []Bound {
	under := Bound{name: "sulfate to chloride at least", low: 0, high: inf, unit: "mg/L"}
	under.coeff[Sulfate], under.coeff[Chloride] = 1, -low
	over := Bound{name: "sulfate to chloride at most", low: -inf, high: 0, unit: "mg/L"}
	over.coeff[Sulfate], over.coeff[Chloride] = 1, -high
	return []Bound{under, over}
}

func (l *Bound) check(fn string) error {
	for _, c := range l.coeff {
		if err := limit.Check(fn, "factor in "+l.name, c, "", -mostFactor, mostFactor, "a limit that can be held"); err != nil {
			return err
		}
	}
	if err := limit.Check(fn, l.name, l.low, l.unit, -inf, mostIon, "a limit that can be held"); err != nil {
		return err
	}
	return limit.Check(fn, l.name, l.high, l.unit, l.low, inf, "a limit that can be held, low before high")
}

const mostFactor = 1e6

// of returns the functional for contents given as a function of the ion.
func (l *Bound) of(content func(Ion) float64) float64 {
	var sum float64
	for i, c := range l.coeff {
		if c != 0 {
			sum += c * content(Ion(i))
		}
	}
	return sum
}
