package must

import (
	"slices"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// AcidShares are the weak acids of a drink in their proportions, by mass of their anions; only the
// proportions count: Acids{water.Tartrate.At(one), water.Malate.At(one)}.
type AcidShares []water.Content

const mostPart = 1e6 // of anything: proportions

// shares returns the mmol of each weak acid in a mmol of all.
func (a AcidShares) shares(fn string) (of [len(weak)]float64, err error) {
	var sum float64
	for _, c := range a {
		v := c.Concentration.In(units.MilligramPerLitre)
		if err := limit.Check(fn, c.Ion.Name()+" among the acids", v, "mg/L", 0, mostPart, source); err != nil {
			return of, err
		}
		k := slices.IndexFunc(weak[:], func(w weakAnion) bool { return w.ion == c.Ion })
		if k < 0 {
			err := &units.NameError{Func: fn, What: "weak acid", Name: c.Ion.Name()}
			for _, w := range weak {
				err.Choices = append(err.Choices, w.ion.Name())
			}
			return of, err
		}
		of[k] += v / c.Ion.MolarMass().In(units.GramPerMole)
		sum += v / c.Ion.MolarMass().In(units.GramPerMole)
	}
	if err := limit.Check(fn, "acids together", sum, "mmol/L", 1e-6, mostPart, source); err != nil {
		return of, err
	}
	for k := range of {
		of[k] /= sum
	}
	return of, nil
}
