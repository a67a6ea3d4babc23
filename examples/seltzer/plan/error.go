package plan

import (
	"errors"
	"fmt"

	"example.org/zymase/units"
)

// RequestError says which field of a request cannot be, what stands there and
// what is allowed. Nothing is planned from such a request.
type RequestError struct {
	Field   string // its path: "kettle.capacity"
	Value   string // as given
	Allowed string // what may stand there, or why this may not
	Err     error  // the error under it, if any: a *units.RangeError, a *units.ParseError
}

// Error is one line: "kettle.capacity: 50 L: the boil starts at 66.2 L".
func (e *RequestError) Error() string {
	return fmt.Sprintf("%s: %s: %s", e.Field, e.Value, e.Allowed)
}

// Unwrap returns the error under it.
func (e *RequestError) Unwrap() error { return e.Err }

// reason is the part of an error that the field and value do not say already.
func reason(err error) string {
	if p, ok := errors.AsType[*units.ParseError](err); ok {
		return p.Reason
	}
	if r, ok := errors.AsType[*units.RangeError](err); ok {
		return fmt.Sprintf("%s from %g to %g %s", r.Quantity, r.Min, r.Max, r.Unit)
	}
	return err.Error()
}
