package units_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/zymase/units"
)

// Weighted mean and deviations by hand: 4.6 ± 0.1, 4.8 ± 0.2 and 5.4 ± 0.2 have
// weights 100, 25, 25; the mean is 4.76667 and its uncertainty 1/√150.
func TestCrossCheck(t *testing.T) {
	a, b, c := measure(t, 4.6, 0.1), measure(t, 4.8, 0.2), measure(t, 5.4, 0.2)
	mean, deviations, err := units.CrossCheck(a, b, c)
	if err != nil {
		t.Fatal(err)
	}
	close(t, "mean", mean.Value().In(units.One), (460+120+135)/150.0, 1e-12)
	close(t, "u", mean.Uncertainty().In(units.One), 1/math.Sqrt(150), 1e-12)
	others := []float64{(120 + 135) / 50.0, (460 + 135) / 125.0, (460 + 120) / 125.0}
	weights := []float64{50, 125, 125}
	values, us := []float64{4.6, 4.8, 5.4}, []float64{0.1, 0.2, 0.2}
	for i, got := range deviations {
		want := (values[i] - others[i]) / math.Sqrt(us[i]*us[i]+1/weights[i])
		close(t, "deviation", got, want, 1e-12)
	}
	// a value much surer than the others
	sure := measure(t, 4.6, 1e-11)
	if _, v, err := units.CrossCheck(sure, b); err != nil || math.Abs(v[0]+1) > 1e-9 || math.Abs(v[1]-1) > 1e-9 {
		t.Error(v, err)
	}
}

func repeat[T any](x T, n int) []T { return slices.Repeat([]T{x}, n) }

func TestCrossCheckRefuses(t *testing.T) {
	a := measure(t, 4.6, 0.1)
	_, _, err := units.CrossCheck(a)
	isRange(t, err, "number of values", 2, 100)
	many := repeat(a, 101)
	if _, _, err := units.CrossCheck(many[:100]...); err != nil {
		t.Error(err)
	}
	_, _, err = units.CrossCheck(many...)
	isRange(t, err, "number of values", 2, 100)
	// 1e-12 of the value and 1e-100 base units are the least uncertainty that counts
	for _, c := range []struct {
		v, u  float64
		least float64 // zero where u is taken
	}{{4.6, 0, 4.6e-12}, {1, 0.98e-12, 1e-12}, {1, 1.02e-12, 0}, {-1, 0.98e-12, 1e-12}, {-1, 1.02e-12, 0}, {0, 0.98e-100, 1e-100}, {0, 1.02e-100, 0}} {
		_, _, err := units.CrossCheck(a, measure(t, c.v, c.u))
		if c.least == 0 {
			if err != nil {
				t.Errorf("%v ± %v: %v", c.v, c.u, err)
			}
			continue
		}
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != "pure number" || math.Abs(e.Min/c.least-1) > 1e-11 || e.Max != 1e15 {
			t.Errorf("%v ± %v: %v, want %v at least", c.v, c.u, err, c.least)
		}
	}
}
