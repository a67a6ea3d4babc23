package sugar_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
)

// A basis comes back as what it was; one that is none, half or two is refused and changes nothing.
func TestBasisInJSON(t *testing.T) {
	for text, was := range map[string]sugar.Basis{
		`{"finished":"60 L"}`: sugar.Finished(units.Litre.Of(60)), `{"water":"5 kg"}`: sugar.WaterAtHand(units.Kilogram.Of(5)),
		`{"kettle":"70 L","temperature":"95 °C"}`: sugar.Kettle(units.Litre.Of(70), units.Celsius.Of(95)),
	} {
		got, err := json.Marshal(was)
		var is sugar.Basis
		if err = errors.Join(err, json.Unmarshal(got, &is)); err != nil || string(got) != text || is != was {
			t.Errorf("%s, want %s: %v", got, text, err)
		}
	}
	if _, err := json.Marshal(sugar.Basis{}); err == nil {
		t.Error("a basis that is none is written")
	}
	is := sugar.Finished(units.Litre.Of(60))
	for _, text := range []string{`{}`, `[]`, `{"kettle":"5 L"}`, `{"finished":"5 L","water":"3 kg"}`, `{"temperature":"5 °C"}`} {
		if err := json.Unmarshal([]byte(text), &is); err == nil || is != sugar.Finished(units.Litre.Of(60)) {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// An error repeats 64 bytes of what it could not read, no more.
func TestLongBasisIsCut(t *testing.T) {
	err := new(sugar.Basis).UnmarshalJSON([]byte(`{` + strings.Repeat(" ", 100) + `}`))
	if e, ok := errors.AsType[*units.ParseError](err); !ok || len(e.Input) != 64 {
		t.Errorf("%v", err)
	}
}
