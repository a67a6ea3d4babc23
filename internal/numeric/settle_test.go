package numeric

import (
	"errors"
	"testing"

	"example.org/zymase/internal/check"
)

func TestSettle(t *testing.T) {
	half := func(x float64) (float64, error) { return (0.5 - x) * 0.9, nil }
	for _, start := range []float64{-1, 0, 0.5, 3} {
		check.Near(t, "half", check.Must(Settle(start, 0, 1, half)), 0.5, 1e-11, "by hand")
	}
	check.Near(t, "the least", check.Must(Settle(3, 0.7, 1, half)), 0.7, 0, "the rest does not fit")
	if _, err := Settle(1, 0, 1, func(float64) (float64, error) { return 1, nil }); !errors.Is(err, ErrNoConvergence) {
		t.Error(err)
	}
	if _, err := Settle(1, 0, 1, func(float64) (float64, error) { return 0, errors.New("no") }); err == nil {
		t.Error("the error is lost")
	}
}

func TestSettleGivesNothingWithAnError(t *testing.T) {
	x, err := Settle(1, 0, 1, func(float64) (float64, error) { return 1, errors.New("no") })
	check.Nothing(t, "settle", x, err)
	x, err = Settle(1, 0, 1, func(float64) (float64, error) { return 1, nil })
	check.Nothing(t, "settle without end", x, err)
	if closeEnough > 1e-11 || closeEnough < 1e-14 {
		t.Error(closeEnough)
	}
}
