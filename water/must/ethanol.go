package must

import "example.org/zymase/units"

const (
	ethanolSource = "Prenesti et al. 2012, continued from 12 to 16 % vol"

	shiftPerPercent = 0.17 / 12
)

// PHShift returns by how much ethanol raises the pH of a drink whose acids and salts stay
// the same: as much as it raises the pK of its acids, of which it is taken that all move
// alike.
//
// The error is a [*units.RangeError] above 16 % vol.
//
//   - Source: E. Prenesti et al., Sci. World J. 2012, 249041, table 4 (read): from 0 to 12 %
//     vol lactic acid 3.70 to 3.87 and 3.66 to 3.83 (in 0.05 and 0.1 mol/L of KCl), succinic
//     5.319 to 5.49 and 5.24 to 5.39, and its first step 4.028 to 4.19 and 3.99 to 4.20.
//   - Range: 0 to 16 % vol; from 12 on the line is continued.
//   - Uncertainty: 0.02 at 12 % vol for these acids; that tartaric, malic and citric acid
//     move as they do is taken, not read: [water.Profile.WithEthanol] counts lactic and succinic
//     acid alone, up to 12 % vol.
func PHShift(strength units.StrengthByVolume) (float64, error) {
	s := strength.In(units.PercentVolume)
	if err := checkStrength("must.PHShift", s); err != nil {
		return 0, err
	}
	return shift(s), nil
}

func shift(percent float64) float64 { return shiftPerPercent * percent }
