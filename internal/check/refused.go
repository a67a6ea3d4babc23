package check

import (
	"errors"
	"math"

	"example.org/zymase/units"
)

// T is a *testing.T or a *rapid.T.
type T interface {
	Helper()
	Errorf(format string, args ...any)
	Fatal(args ...any)
}

// Within fails unless got is within tol of what is printed.
func Within(t T, what string, got, printed, tol float64) {
	t.Helper()
	if !(math.Abs(got-printed) <= tol) {
		t.Errorf("%s: got %.12g, printed %.12g, difference %.2g, tolerance %.2g", what, got, printed, got-printed, tol)
	}
}

// WithinShare is [Within] with a tolerance relative to what is printed.
func WithinShare(t T, what string, got, printed, tol float64) {
	t.Helper()
	Within(t, what, got, printed, tol*math.Abs(printed))
}

// OutOfRange fails unless err is a *units.RangeError about the quantity, and returns it.
func OutOfRange(t T, what string, err error, quantity string) (e *units.RangeError) {
	t.Helper()
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok {
		t.Errorf("%s: error %v, want a RangeError", what, err)
		return &units.RangeError{}
	}
	if e.Quantity != quantity {
		t.Errorf("%s: about %q (%v), want %q", what, e.Quantity, err, quantity)
	}
	if e.Func == "" || e.Source == "" {
		t.Errorf("%s: %+v names no function or source", what, e)
	}
	return e
}

// Limits are what doc comments state, by function and quantity: "dioxide.WineContent: sugar".
// A limit of NaN goes with the other inputs.
type Limits map[string]struct{ Min, Max float64 }

// OutOfRange is [OutOfRange], with the limits of the list.
func (l Limits) OutOfRange(t T, what string, err error, quantity string) {
	t.Helper()
	e := OutOfRange(t, what, err, quantity)
	if e.Func == "" {
		return
	}
	if of, known := l[e.Func+": "+e.Quantity]; !known {
		t.Errorf("%s: %q: {%v, %v} is not in the list of limits", what, e.Func+": "+e.Quantity, e.Min, e.Max)
	} else if apart(e.Min, of.Min) || apart(e.Max, of.Max) {
		t.Errorf("%s: %v, want %v to %v", what, err, of.Min, of.Max)
	}
	if e.Value >= e.Min && e.Value <= e.Max {
		t.Errorf("%s: %v lies inside", what, err)
	}
}

// apart reports whether a limit is not the wanted one; a wanted NaN is any.
func apart(got, want float64) bool {
	return got != want && !(math.Abs(got-want) <= 1e-13*math.Abs(want)) && !math.IsNaN(want)
}

// Unknown fails unless err is a *units.NameError about what is named, with its choices.
func Unknown(t T, err error, what string) {
	t.Helper()
	if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != what || e.Func == "" || len(e.Choices) == 0 {
		t.Errorf("error %v, want a NameError about a %s", err, what)
	}
}

// OK returns what was called for, or ends the test: check.OK[units.Mass](t)(call()).
func OK[V any](t T) func(V, error) V {
	return func(v V, err error) V {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}
