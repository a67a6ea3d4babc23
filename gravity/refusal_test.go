package gravity_test

import (
	"errors"
	"math"
	"reflect"

	"example.org/zymase/units"
)

// An outcome is what a call came to: its error, and whether a value stands beside it.
type outcome struct {
	err    error
	beside bool
}

func of[T any](v T, err error) outcome { return outcome{err, there(v)} }

func of2[T, U any](v T, w U, err error) outcome { return outcome{err, there(v) || there(w)} }

func of3[T, U, V any](v T, w U, x V, err error) outcome {
	return outcome{err, there(v) || there(w) || there(x)}
}

func there[T any](v T) bool { return !reflect.ValueOf(&v).Elem().IsZero() }

// A refusal is a call that must be refused: about which quantity, of what value, outside
// which range.
type refusal struct {
	outcome
	quantity           string
	value, least, most float64
}

// refusals tells that each call is refused with the range that the documentation of the
// function states, and returns nothing beside the error.
func refusals(t tester, calls []refusal) {
	t.Helper()
	for i, c := range calls {
		edges(t, c.err, c.quantity, c.value, c.least, c.most)
		if c.beside {
			t.Errorf("call %d: a value beside %v", i+1, c.err)
		}
	}
}

// edges tells that the error is about a quantity, states its range as the
// documentation of the function does and repeats the value that was given.
func edges(t tester, err error, quantity string, value, least, most float64) {
	t.Helper()
	refused(t, quantity, err, quantity)
	if e, ok := errors.AsType[*units.RangeError](err); ok {
		same := func(what string, got, want float64) {
			if !(math.Abs(got-want) <= 1e-9*math.Max(1, math.Abs(want))) {
				t.Errorf("%s: %s %.12g, documented %.12g", e.Func, what, got, want)
			}
		}
		same("value", e.Value, value)
		same("least", e.Min, least)
		same("most", e.Max, most)
	}
}

func rangeError(t tester, err error) *units.RangeError {
	t.Helper()
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok {
		t.Errorf("error %v, want a RangeError", err)
		return nil
	}
	return e
}
