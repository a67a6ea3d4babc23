package rival_test

import (
	"errors"
	"math"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

var (
	celsius, plato, massPct = check.Celsius, check.Plato, check.PercentMass
	near                    = check.Within
)

type tester = check.T

func refused(t tester, what string, err error, quantity string) {
	t.Helper()
	check.OutOfRange(t, what, err, quantity)
}

// edges reports a refusal that states another range.
func edges(t tester, err error, quantity string, least, most float64) {
	t.Helper()
	refused(t, quantity, err, quantity)
	if e, ok := errors.AsType[*units.RangeError](err); ok && (math.Abs(e.Min-least) > 1e-9 || math.Abs(e.Max-most) > 1e-9) {
		t.Errorf("%v: want %v to %v", err, least, most)
	}
}

func ok[V any](t tester) func(V, error) V { return check.OK[V](t) }
