package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
)

// A verdict written reads back as the same.
func TestVerdictText(t *testing.T) {
	for v := carbonation.Unrated; v <= carbonation.BeyondComputed; v++ {
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
	if err := got.UnmarshalText([]byte("safe")); err == nil {
		t.Error("safe: no error")
	}
}
