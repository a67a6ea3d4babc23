package limit

import "example.org/zymase/units"

// Named gives a refusal the name of the function that the caller wrote, fn, where one
// that it calls refused.
func Named(fn string, err error) error {
	if r, ok := err.(*units.RangeError); ok && r.Func != fn {
		mine := *r
		mine.Func = fn
		return &mine
	}
	return err
}
