package check

import (
	"encoding/json"
	"errors"
	"math"
	"reflect"
	"testing"

	"example.org/zymase/units"
)

// Near fails unless got is within tol of want; source says where want is printed.
func Near(t *testing.T, what string, got, want, tol float64, source string) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.10g, want %.10g ± %g (%s)", what, got, want, tol, source)
	}
}

// Refused fails unless err is a *units.RangeError about a quantity, with these
// limits.
func Refused(t *testing.T, err error, quantity string, min, max float64) {
	t.Helper()
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok {
		t.Errorf("%s: got %v, want a RangeError", quantity, err)
		return
	}
	if e.Quantity != quantity || e.Min != min || e.Max != max || e.Func == "" || e.Source == "" {
		t.Errorf("got %q, want %s from %g to %g", e.Error(), quantity, min, max)
	}
}

// Must returns v, or panics where there is an error.
func Must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// Mass reads a mass as typed on a scale.
func Mass(t *testing.T, text string) units.ExactMass {
	t.Helper()
	x, err := units.ParseExact[units.Mass](text)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// Nothing fails unless there is an error and the value beside it is zero.
func Nothing[T comparable](t *testing.T, what string, v T, err error) {
	t.Helper()
	var zero T
	if err == nil || v != zero {
		t.Errorf("%s: got %v, %v; want nothing and an error", what, v, err)
	}
}

// Again checks that a parser takes what its own String writes, and refuses the rest with a
// short *units.ParseError.
func Again[T interface{ String() string }](t *testing.T, text string, parse func(string) (T, error)) {
	t.Helper()
	v, err := parse(text)
	if err != nil {
		e, ok := errors.AsType[*units.ParseError](err)
		if !ok || len(e.Input) > 64 || e.Reason == "" || e.Want == "" {
			t.Errorf("%q: %#v", text, err)
		}
		return
	}
	w, err := parse(v.String())
	if err != nil || w.String() != v.String() {
		t.Errorf("%q reads as %q, which reads as %v, %v", text, v.String(), w, err)
	}
}

// Travels fails unless JSON brings a value back as it was.
func Travels[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Errorf("%+v is not written: %v", v, err)
		return
	}
	var back T
	if err := json.Unmarshal(text, &back); err != nil || !reflect.DeepEqual(back, v) {
		t.Errorf("%s comes back as %+v, %v", text, back, err)
	}
}
