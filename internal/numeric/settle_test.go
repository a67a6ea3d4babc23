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
}

// What is missing may be 1e-12 of the size: 0.98e-12 of it is, 1.02e-12 is not, as the comment of Settle has it.
func TestSettleIsNearEnough(t *testing.T) {
	for _, size := range []float64{1, 50} {
		short := func(part float64) error {
			_, err := Settle(0, -1, size, func(float64) (float64, error) { return part * size, nil })
			return err
		}
		if err := short(0.98e-12); err != nil {
			t.Error(size, err)
		}
		if err := short(1.02e-12); !errors.Is(err, ErrNoConvergence) {
			t.Error(size, err)
		}
	}
}

// Where each step leaves a share s of the error, the error at the nth try is s^(n−1). At 60 tries 1e-12 is met where
// s ≤ 10^(−12/59) = 0.6261; 61 tries would do to 10^(−12/60) = 0.6310 and 59 to 10^(−12/58) = 0.6210: by hand, a
// geometric series.
func TestSettleTriesSixtyTimes(t *testing.T) {
	leaves := func(s float64) (float64, error) {
		left := 1.0
		return Settle(0, -1, 1, func(float64) (float64, error) { d := left; left *= s; return d, nil })
	}
	if _, err := leaves(0.6255); err != nil {
		t.Error(err)
	}
	if _, err := leaves(0.6265); !errors.Is(err, ErrNoConvergence) {
		t.Error(err)
	}
}
