package finish

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
)

// otherDrinks goes with every dose that is compared with limits for wine, cider or beer.
const otherDrinks = "The limits known here are for the drinks they name; none was read for a drink from a sugar wash, so passing none of them proves nothing for it."

// limited is the limits of a law for a substance, those that a concentration is above, and
// the sentence that says so.
func limited(fn string, j law.Jurisdiction, s law.Substance, what string, c units.MassConcentration) (all, passed []law.Limit, said []string, err error) {
	all, err = law.Limits(j, s)
	if passed = law.Passed(all, c); len(passed) > 0 {
		said = []string{"The " + what + " is above a limit of the law asked: " + passed[0].String() + "."}
	}
	return all, passed, said, limit.Named(fn, err)
}
