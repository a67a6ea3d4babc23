package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WithEthanol returns the water as a drink of that strength, of unknown pH: ethanol makes
// weak acids weaker, and so the pH higher. What ions and alkalinity are a litre stays.
//
// Every step of every weak acid moves alike, by 0.17 in pK at 12 % vol: phosphoric, sulfurous and
// the organic ones. Ammonium and amino groups, which give off a proton without making charge, stay, and
// so does carbonic acid.
//
// The error is a [*units.RangeError] outside 0 to 16 % vol.
//
//   - Source: E. Prenesti et al., Sci. World J. 2012, 249041, table 4 (read), at 25 °C and
//     ionic strengths of 0.05 and 0.1 mol/L: from 0 to 12 % vol lactic acid's pKa rises from
//     3.70 to 3.87, and the two decimal logarithms that sum up how succinate takes up protons
//     from 5.319 to 5.49 and from 9.347 to 9.68. A straight line between, at every temperature.
//   - Range: from 12 to 16 % vol the line is continued.
//   - Uncertainty: 0.02 at 12 % vol for these two. That other acids move as they do is taken: of
//     sulfurous acid 0.24 was read (OIV-MA-AS323-04C), of the others nothing; with them left as in water the pH of 89
//     wines by their analysis, with a usual sulfate, is a tenth too low; with all of them moved it is right to 0.02 on the mean.
func (p Profile) WithEthanol(strength units.StrengthByVolume) (Profile, error) {
	v := strength.In(units.PercentVolume)
	if err := checkEthanol("water.Profile.WithEthanol", v); err != nil {
		return Profile{}, err
	}
	p.ethanol, p.ph, p.carbon = v, 0, 0
	return p, nil
}

// PKShift returns by how much ethanol raises the pK of the weak acids of a drink, and the pH of
// one whose acids and salts stay the same. Source, range, uncertainty: [Profile.WithEthanol]; above 16 % vol the
// error is a [*units.RangeError].
func PKShift(strength units.StrengthByVolume) (float64, error) {
	v := strength.In(units.PercentVolume)
	if err := checkEthanol("water.PKShift", v); err != nil {
		return 0, err
	}
	return pKPerPercent * v, nil
}

// Ethanol returns the strength that [Profile.WithEthanol] gave.
func (p Profile) Ethanol() units.StrengthByVolume {
	return units.PercentVolume.Of(checked.Number(p.ethanol))
}

func checkEthanol(fn string, strength float64) error {
	return limit.Check(fn, "strength", strength, "% vol", 0, mostEthanol, "Prenesti et al. 2012, continued from 12 to 16 % vol")
}

const (
	mostEthanol  = 16        // % vol
	pKPerPercent = 0.17 / 12 // for each % vol
)

// byEthanol is by how much log K rises for each % vol: for each proton that a weak acid takes up, see
// [Profile.WithEthanol]. A metal takes up an anion with a proton as in water.
var byEthanol = func() (rise [speciesCount]float64) {
	for sp := range speciesTable {
		r := &speciesTable[sp]
		if r.anion < partPO4 { // nothing, carbonate, sulfate
			continue
		}
		rise[sp] = pKPerPercent * float64(max(0, r.protons-partTable[r.anion].firm))
	}
	return rise
}()
