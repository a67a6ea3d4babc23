package units_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
)

// The mean and the standard deviation of a simulation are those of the values that f
// gave: the sum over n, and the squares from the mean over n − 1 (JCGM 100:2008
// eq. 3 and 4), added up here in two passes.
func TestSimulateMoments(t *testing.T) {
	a := measure(t, 5, 0.5)
	var got []float64
	m, failed, err := units.Simulate(func(x units.Trial) (units.PureNumber, error) {
		got = append(got, units.At(x, &a).In(units.One))
		return units.At(x, &a), nil
	}, 100, 7, &a)
	if err != nil || failed != 0 || len(got) != 100 {
		t.Fatal(failed, err, len(got))
	}
	mean, squares := 0.0, 0.0
	for _, y := range got {
		mean += y / 100
	}
	for _, y := range got {
		squares += (y - mean) * (y - mean)
	}
	close(t, "mean", m.Value().In(units.One), mean, 1e-13)
	close(t, "standard deviation", m.Uncertainty().In(units.One), math.Sqrt(squares/99), 1e-13)
}

// Half of the draws may fail: a wall 0.2 u above the value lets 58 % of a normal
// distribution through, one 0.2 u below it 42 %.
func TestSimulateFailures(t *testing.T) {
	a := measure(t, 0, 1)
	wall := errors.New("wall")
	for _, c := range []struct {
		at     float64
		passes bool
	}{{0.2, true}, {-0.2, false}} {
		_, failed, err := units.Simulate(func(x units.Trial) (units.PureNumber, error) {
			if units.At(x, &a).In(units.One) > c.at {
				return units.PureNumber{}, wall
			}
			return number(1), nil
		}, 2000, 3, &a)
		if c.passes != (err == nil) || !c.passes && !errors.Is(err, wall) {
			t.Errorf("a wall at %v: %d failed, %v", c.at, failed, err)
		}
	}
	if _, failed, err := units.Simulate(func(units.Trial) (units.PureNumber, error) { return number(1), nil }, 99, 1, &a); err == nil || failed != 0 {
		t.Error(failed, err)
	}
}

// An input that is nil is zero, known exactly.
func TestPropagateNil(t *testing.T) {
	var none *measuredNumber
	b := measure(t, 3, 1)
	m, err := units.Propagate(func(x units.Trial) (units.PureNumber, error) {
		return units.At(x, none).Plus(units.At(x, &b)), nil
	}, none, &b)
	if err != nil || m != b {
		t.Error(m, err)
	}
}

// Two inputs that cancel in full, whichever is named first.
func TestCorrelationIsMutual(t *testing.T) {
	a, b := measure(t, 1, 0.5), measure(t, 2, 0.5)
	difference := func(x units.Trial) (units.PureNumber, error) { return units.At(x, &a).Minus(units.At(x, &b)), nil }
	for _, with := range []units.Correlation{{A: &a, B: &b, R: 1}, {A: &b, B: &a, R: 1}} {
		m, err := units.Propagate(difference, with, &a, &b)
		if err != nil {
			t.Fatal(err)
		}
		close(t, "difference", m.Uncertainty().In(units.One), 0, 1e-12)
	}
}

// Each part of the budget is a number, the root of their squares is too large a one.
func TestPropagateTooUncertain(t *testing.T) {
	a, b := measure(t, 0, 1), measure(t, 0, 1)
	_, err := units.Propagate(func(x units.Trial) (units.PureNumber, error) {
		return number(0.9e18 * (units.At(x, &a).In(units.One) + units.At(x, &b).In(units.One))), nil
	}, &a, &b)
	isRange(t, err, "pure number", 0, 1e15)
}

// Random sampling takes independent inputs, a hundred at most; a budget does not care for correlations.
func TestSimulateRefuses(t *testing.T) {
	a, _ := units.Measure(units.Gram.Of(100), units.Gram.Of(1))
	b, _ := units.Measure(units.Gram.Of(50), units.Gram.Of(2))
	sum := func(x units.Trial) (units.Mass, error) { return units.At(x, &a).Plus(units.At(x, &b)), nil }
	with := units.Correlation{A: &a, B: &b, R: 1}
	m, _, err := units.Simulate(sum, 100, 1, &a, with, &b)
	if e, is := errors.AsType[*units.StateError](err); !is || e.Func != "units.Simulate" || m != (units.MeasuredMass{}) {
		t.Error(m, err)
	}
	many := make([]units.Input, 101)
	for i := range many {
		many[i] = &a
	}
	if _, _, err := units.Simulate(sum, 100, 1, many...); err == nil || !strings.Contains(err.Error(), "number of inputs 101") {
		t.Error(err)
	}
	parts, err := units.Budget(sum, &a, with, &b)
	if err != nil || len(parts) != 2 || math.Abs(parts[0].In(units.Gram)-1) > 1e-9 || math.Abs(parts[1].In(units.Gram)-2) > 1e-9 {
		t.Error(parts, err)
	}
}
