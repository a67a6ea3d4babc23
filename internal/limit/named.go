package limit

import "example.org/zymase/units"

// Named gives a refusal the name of the function that the caller wrote, fn, where one
// that it calls refused: a *units.RangeError, a *units.NameError or a *units.StateError.
func Named(fn string, err error) error {
	switch e := err.(type) {
	case *units.RangeError:
		mine := *e
		mine.Func = fn
		return &mine
	case *units.NameError:
		mine := *e
		mine.Func = fn
		return &mine
	case *units.StateError:
		mine := *e
		mine.Func = fn
		return &mine
	}
	return err
}
