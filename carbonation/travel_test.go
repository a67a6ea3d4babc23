package carbonation

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/zymase/units"
)

// A comparison comes back with the range that it left; what cannot be written says what to write instead.
func TestComparisonInJSON(t *testing.T) {
	for _, was := range []Comparison{
		{Content: units.GramCO2PerLitre.Of(5.4)},
		{Err: &units.RangeError{Func: "carbonation.Method.Content", Quantity: "temperature", Value: 99, Unit: "°C", Min: 0, Max: 20}},
	} {
		was.Method = InWater
		text, err := json.Marshal(was)
		var is Comparison
		if err := errors.Join(err, json.Unmarshal(text, &is)); err != nil {
			t.Fatal(err)
		}
		if is.Method != was.Method || is.Content != was.Content || (is.Err == nil) != (was.Err == nil) || is.Err != nil && is.Err.Error() != was.Err.Error() {
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

// A lethality comes back from its text as it was; no lethality and what is none are refused, a
// long text shortened.
func TestLethalityInText(t *testing.T) {
	other, err := NewLethality(units.KelvinDifference.Of(8))
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		was  Lethality
		text string
	}{{DelVecchio(), "1.393^(T-60)"}, {Handbook(), "10^((T-60)/7)"}, {other, "z 8 K"}} {
		text, err := row.was.MarshalText()
		var is Lethality
		if err := errors.Join(err, is.UnmarshalText(text)); err != nil || string(text) != row.text || is != row.was {
			t.Errorf("%q: %v, want %q (%v)", text, is, row.text, err)
		}
	}
	_, err = Lethality{}.MarshalText()
	if _, is := errors.AsType[*units.StateError](err); !is {
		t.Error(err)
	}
	for _, bad := range []string{"", strings.Repeat("1", 100), "z", "z 8", "z 8 kg", "1.39^(T-60)"} {
		wrong, is := errors.AsType[*units.ParseError](new(Lethality).UnmarshalText([]byte(bad)))
		if !is || len(wrong.Input) > 64 {
			t.Errorf("%q: %v", bad, wrong)
		}
	}
	if _, is := errors.AsType[*units.RangeError](new(Lethality).UnmarshalText([]byte("z 50 K"))); !is {
		t.Error("z 50 K is taken")
	}
}
