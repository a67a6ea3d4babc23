package batch

import (
	"example.org/zymase/carbonation"
)

// chill cools a drink, open or in its pack, no colder than where ice begins.
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
	return j.temper(st, ice.In(celsius), j.s.t.In(celsius), "from where ice begins to as warm as it is")
}
