package nutrient

import (
	"errors"
	"testing"

	"example.org/zymase/units"
)

// Every parser takes what its own String writes, and refuses the rest with a short
// *units.ParseError.
func FuzzParse(f *testing.F) {
	for _, text := range []string{"", "white sugar", "DAP", "medium", "US", "dry", "E 955", "potassium bicarbonate", "dextrose", "\x00\xff", "zinc sulfate"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		again(t, text, ParseFermentable)
		again(t, text, ParseSource)
		again(t, text, ParseDemand)
		again(t, text, ParseJurisdiction)
		again(t, text, ParseYeastForm)
		again(t, text, ParseSweetener)
		again(t, text, ParseBuffer)
	})
}

func again[T interface{ String() string }](t *testing.T, text string, parse func(string) (T, error)) {
	t.Helper()
	v, err := parse(text)
	if err != nil {
		e, ok := errors.AsType[*units.ParseError](err)
		if !ok || len(e.Input) > 64 || e.Reason == "" || e.Want == "" {
			t.Errorf("%q: %#v", text, err)
		}
		return
	}
	w, err := parse(v.String())
	if err != nil || w.String() != v.String() {
		t.Errorf("%q reads as %q, which reads as %v, %v", text, v.String(), w, err)
	}
}
