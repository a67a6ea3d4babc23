package batch

import (
	"example.org/zymase/carbonation"
)

// chill cools a drink, open or in its pack, to −2 °C or where ice begins, if that is colder: no formula of a pack goes
// further, and a drink that is left alone cools so far below its ice (common practice, no source; [State.Pack] cautions).
//
//   - Source: [carbonation.FreezingPoint].
func (j *job) chill(st *Step) error {
	drink, err := j.s.Solution()
	if err != nil {
		return err
	}
	ice, err := carbonation.FreezingPoint(drink)
	if err != nil {
		return err
	}
	return j.temper(st, min(-2, ice.In(celsius)), j.s.t.In(celsius), "from where ice begins to as warm as it is")
}
