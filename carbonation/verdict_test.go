package carbonation_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// A verdict written reads back as the same.
func TestVerdictText(t *testing.T) {
	for v := carbonation.Unrated; v <= carbonation.MayFreeze; v++ {
		text, err := v.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		var got carbonation.Verdict
		if err := got.UnmarshalText(text); err != nil || got != v {
			t.Errorf("%q: got %v, %v", text, got, err)
		}
	}
	var got carbonation.Verdict
	for text, quoted := range map[string]int{"safe": 4, strings.Repeat("x", 64): 64, strings.Repeat("x", 65): 64} {
		e, isParse := errors.AsType[*units.ParseError](got.UnmarshalText([]byte(text)))
		if !isParse || len(e.Input) != quoted {
			t.Errorf("%s: %v", text, e)
		}
	}
}
