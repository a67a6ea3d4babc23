package carbonation

import (
	"strings"
	"testing"
)

// Every caution has a code of its own and a sentence.
func TestCautions(t *testing.T) {
	seen := map[string]bool{}
	for c := range cautionCount {
		if c.String() == "" || seen[c.String()] || strings.ContainsAny(c.String(), " ,") {
			t.Errorf("caution %d: code %q", c, c)
		}
		seen[c.String()] = true
		if !strings.HasSuffix(c.Text(), ".") {
			t.Errorf("%v: %q is no sentence", c, c.Text())
		}
		if text, err := c.MarshalText(); err != nil || string(text) != c.String() {
			t.Errorf("%v: %s, %v", c, text, err)
		}
	}
	if Caution(200).String() != "unknown" || Caution(200).Text() != "" || Cautions(1<<31).Has(200) {
		t.Error("an unknown caution")
	}
	set := cautions(PressureVessel, OverRatingCaution)
	if text, _ := set.MarshalText(); string(text) != "over_rating, pressure_vessel" {
		t.Errorf("%s", text)
	}
	if !set.Has(PressureVessel) || set.Has(NoRating) || set.with(NoRating, false) != set || !set.with(NoRating, true).Has(NoRating) {
		t.Error("set")
	}
	if len(Cautions(0).List()) != 0 || len(set.List()) != 2 {
		t.Error("list")
	}
}

func TestVerdictText(t *testing.T) {
	for v := Unrated; v <= MayFreeze; v++ {
		if text, err := v.MarshalText(); err != nil || len(text) < 5 || strings.Contains(string(text), "safe") || string(text) == "unknown" {
			t.Errorf("%d: %s, %v", v, text, err)
		}
	}
	if Verdict(-1).String() != "unknown" || Verdict(9).String() != "unknown" {
		t.Error("an unknown verdict")
	}
}
