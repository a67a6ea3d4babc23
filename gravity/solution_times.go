package gravity

import "example.org/zymase/internal/limit"

// Times returns k times as much of the liquid: a recipe for another volume. The
// error is a [*units.RangeError] if k is not from 0 to 1e6 or the result is above
// 1e12 kg of anything.
func (s Solution) Times(k float64) (Solution, error) {
	const fn = "gravity.Solution.Times"
	if err := limit.Check(fn, "factor", k, "", 0, 1e6, "a limit of the function"); err != nil {
		return Solution{}, err
	}
	if err := limit.Check(fn, "mass", s.total()*k, "kg", 0, mostMass, "a mass"); err != nil {
		return Solution{}, err
	}
	return s.scaled(k), nil
}
