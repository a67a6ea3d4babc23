package carbonation

import (
	"encoding/json"
	"errors"
	"testing"

	"example.org/zymase/units"
)

// A comparison comes back with the range that it left; what cannot be written says what to write instead.
func TestComparisonInJSON(t *testing.T) {
	for _, was := range []Comparison{
		{Difference: 1.5},
		{Err: &units.RangeError{Func: "carbonation.Method.Content", Quantity: "temperature", Value: 99, Unit: "°C", Min: 0, Max: 20}},
	} {
		was.Method = InWater
		text, err := json.Marshal(was)
		var is Comparison
		if err := errors.Join(err, json.Unmarshal(text, &is)); err != nil {
			t.Fatal(err)
		}
		if is.Method != was.Method || is.Difference != was.Difference || (is.Err == nil) != (was.Err == nil) || is.Err != nil && is.Err.Error() != was.Err.Error() {
			t.Errorf("%+v, want %+v", is, was)
		}
	}
	for _, bad := range []any{Comparison{Method: InWater, Err: errors.New("another")}, Liquid{}, ClosedVessel{}} {
		_, err := json.Marshal(bad)
		if _, is := errors.AsType[*units.StateError](err); !is {
			t.Errorf("%T: %v", bad, err)
		}
	}
	if err := json.Unmarshal([]byte(`[]`), new(Comparison)); err == nil {
		t.Error("a list is taken for a comparison")
	}
}
