package rival_test

import (
	"errors"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func celsius(v float64) units.Temperature    { return units.Celsius.Of(checked.Number(v)) }
func plato(v float64) units.Extract          { return units.DegreePlato.Of(checked.Number(v)) }
func massPct(v float64) units.StrengthByMass { return units.PercentMass.Of(checked.Number(v)) }

// A tester is a *testing.T or a *rapid.T.
type tester interface {
	Helper()
	Errorf(format string, args ...any)
	Fatal(args ...any)
}

// near reports a value that is off the printed one by more than tol.
func near(t tester, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.10g, printed %.10g, difference %.2g, tolerance %.2g", what, got, want, got-want, tol)
	}
}

// refused reports a call that did not return a RangeError about the quantity.
func refused(t tester, what string, err error, quantity string) {
	t.Helper()
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != quantity || e.Func == "" || e.Source == "" {
		t.Errorf("%s: error %v, want a RangeError about %s", what, err, quantity)
	}
}

// edges reports a refusal that states another range.
func edges(t tester, err error, quantity string, least, most float64) {
	t.Helper()
	refused(t, quantity, err, quantity)
	if e, ok := errors.AsType[*units.RangeError](err); ok && (math.Abs(e.Min-least) > 1e-9 || math.Abs(e.Max-most) > 1e-9) {
		t.Errorf("%v: want %v to %v", err, least, most)
	}
}

func ok[T any](t tester) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}
