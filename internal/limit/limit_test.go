package limit_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

func TestCheck(t *testing.T) {
	check := func(v float64) error {
		return limit.Check("gravity.WaterDensity", "temperature", v, "°C", 0, 40, "Tanaka et al. 2001")
	}
	for _, v := range []float64{0, 20, 40} {
		if err := check(v); err != nil {
			t.Errorf("%v: %v", v, err)
		}
	}
	for _, v := range []float64{-1e-9, 40.000001, math.NaN(), math.Inf(1), math.Inf(-1)} {
		e, ok := errors.AsType[*units.RangeError](check(v))
		if !ok {
			t.Errorf("%v: no RangeError", v)
			continue
		}
		same := e.Value == v || math.IsNaN(v) && math.IsNaN(e.Value)
		if !same || e.Func != "gravity.WaterDensity" || e.Quantity != "temperature" || e.Unit != "°C" || e.Min != 0 || e.Max != 40 ||
			e.Source != "Tanaka et al. 2001" {
			t.Errorf("%v: %+v", v, e)
		}
	}
	const want = "gravity.WaterDensity: temperature 41.5 °C outside 0 °C to 40 °C (Tanaka et al. 2001)"
	if got := check(41.5).Error(); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

func TestCheckDoesNotAllocate(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() { _ = limit.Check("f", "q", 1, "u", 0, 2, "s") }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

// A refusal names what the caller wrote; another error stays as it is.
func TestNamed(t *testing.T) {
	other := errors.New("other")
	if limit.Named("f", nil) != nil || limit.Named("f", other) != other {
		t.Error("an error of another kind is changed")
	}
	inner := &units.NameError{Func: "inner", What: "sugar", Name: "x"}
	for want, err := range map[string]error{
		"outer: q 3 outside 0 to 1":    &units.RangeError{Func: "inner", Quantity: "q", Value: 3, Max: 1},
		`outer: unknown sugar "x"`:     inner,
		"outer: this profile is empty": &units.StateError{Func: "inner", What: "profile", Why: "is empty"},
	} {
		if got := limit.Named("outer", err); got.Error() != want {
			t.Errorf("%v, want %s", got, want)
		}
	}
	if inner.Func != "inner" {
		t.Error("the error itself is changed")
	}
}

// A refusal repeats 64 bytes of what it was given.
func TestUnknownIsCut(t *testing.T) {
	e, ok := errors.AsType[*units.ParseError](limit.Unknown(strings.Repeat("x", 100), "way", "this, that"))
	if !ok || len(e.Input) != 64 || e.Want != "way" || e.Reason != "say one of: this, that" {
		t.Errorf("%+v", e)
	}
}
