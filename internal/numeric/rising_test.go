package numeric

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestRising(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root := rapid.Float64Range(0, 100).Draw(t, "root")
		last := math.NaN()
		x, err := Rising(func(x float64) (float64, error) { last = x; return x*x - root*root, nil }, rapid.Float64Range(0.01, 200).Draw(t, "start"), 1.5, 100, 1e-9)
		if err != nil || math.Abs(x-root) > 1e-7 || x != last {
			t.Errorf("%v, %v after %v", x, err, last)
		}
	})
}

func TestRisingEnds(t *testing.T) {
	if x, err := Rising(func(x float64) (float64, error) { return x + 1, nil }, 1, 2, 10, 1e-9); x != 0 || err != nil {
		t.Error(x, err)
	}
	if x, err := Rising(func(x float64) (float64, error) { return x - 11, nil }, 1, 2, 10, 1e-9); x != 10 || !errors.Is(err, ErrBracket) {
		t.Error(x, err)
	}
	broken := errors.New("broken")
	for _, at := range []int{1, 2, 3, 5, 9} { // the call that fails
		n := 0
		_, err := Rising(func(x float64) (float64, error) {
			if n++; n >= at {
				return 0, broken
			}
			return x*x*x - 7, nil
		}, 1, 2, 10, 1e-12)
		if !errors.Is(err, broken) {
			t.Errorf("call %d: %v", at, err)
		}
	}
}
