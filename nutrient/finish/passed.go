package finish

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// otherDrinks goes with every dose that is compared with limits for wine, cider or beer.
const otherDrinks caution.Caution = "other_drinks: The limits known here are for the drinks they name; none was read for a drink from a sugar wash, so " +
	"passing none of them proves nothing for it."

// overLimit names the first limit that is passed.
const overLimit caution.Caution = "over_limit: The %s is above a limit of the law asked: %s."

// checkTheLaw is the sentence of [law.CheckTheLaw], for cautions that end with it.
const checkTheLaw = "Laws change and differ by drink: check the law in force before you rely on a limit."

// limited is the limits of a law for a substance, those that a concentration is above, and
// the sentence that says so.
func limited(fn string, j law.Jurisdiction, s law.Substance, what string, c units.MassConcentration) (all, passed []law.Limit, said caution.List, err error) {
	all, err = j.Limits(s)
	if passed = law.Passed(all, c); len(passed) > 0 {
		said = caution.List{overLimit.With(what, passed[0])}
	}
	return all, passed, said, limit.Named(fn, err)
}
