package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WithEthanol returns the water as a drink of that strength, of unknown pH: ethanol makes
// weak acids weaker, and so the pH higher. What ions and alkalinity are a litre stays.
//
// The error is a [*units.RangeError] outside 0 to 12 % vol.
//
//   - Source: E. Prenesti et al., Sci. World J. 2012, 249041, table 4 (read), at 25 °C and
//     ionic strengths of 0.05 and 0.1 mol/L: from 0 to 12 % vol lactic acid's pKa rises from
//     3.70 to 3.87, and the two decimal logarithms that sum up how succinate takes up protons
//     from 5.319 to 5.49 and from 9.347 to 9.68. A straight line between, at every temperature.
//   - Uncertainty: 0.02 in those. For all other acids no effect was read and none is counted:
//     acetic, citric, malic and tartaric acid, phosphate, sulfite, CO2. The first four would
//     become weaker by about as much.
func (p Profile) WithEthanol(strength units.StrengthByVolume) (Profile, error) {
	v := strength.In(units.PercentVolume)
	if err := checkEthanol("water.Profile.WithEthanol", v); err != nil {
		return Profile{}, err
	}
	p.ethanol, p.ph, p.carbon = v, 0, 0
	return p, nil
}

// Ethanol returns the strength that [Profile.WithEthanol] gave.
func (p Profile) Ethanol() units.StrengthByVolume {
	return units.PercentVolume.Of(checked.Number(p.ethanol))
}

func checkEthanol(fn string, strength float64) error {
	return limit.Check(fn, "strength", strength, "% vol", 0, mostEthanol, "Prenesti et al. 2012")
}

const mostEthanol = 12 // % vol

// byEthanol is by how much log K rises for each % vol, see [Profile.WithEthanol]. A metal
// takes up H(succinate)- as in water.
var byEthanol = [speciesCount]float64{
	lacticH:      (3.87 - 3.70) / mostEthanol,
	succinicH:    (5.49 - 5.319) / mostEthanol,
	succinicH2:   (9.68 - 9.347) / mostEthanol,
	caHSuccinate: (5.49 - 5.319) / mostEthanol,
	mgHSuccinate: (5.49 - 5.319) / mostEthanol,
}
