package carbonation

import (
	"encoding/json"
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// Every caution has a code of its own and a sentence.
func TestCautions(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range Cautions() {
		if seen[c.Code()] || !strings.HasSuffix(c.Text(), ".") {
			t.Errorf("%q", c)
		}
		seen[c.Code()] = true
		text, err := c.MarshalText()
		var back caution.Caution
		if again := back.UnmarshalText(text); err != nil || again != nil || back != c {
			t.Errorf("%v: %s, %v, %v", c, text, err, again)
		}
	}
	if len(seen) != len(gravest) || len(gravest) > 32 {
		t.Errorf("%d cautions", len(seen))
	}
	s := cautions(PressureVessel, OverRatingCaution, "of_another_package: It is not ours.")
	if got := s.list(); !slices.Equal(got, caution.List{OverRatingCaution, PressureVessel}) {
		t.Errorf("the gravest first: %v", got)
	}
	if s.with(noRating, false) != s || !s.with(noRating, true).list().Has(noRating) || cautions().list() != nil {
		t.Error("set")
	}
}

// The hot spread of CO2's solubility is said where a pack is hot.
func TestHotSpreadIsSaid(t *testing.T) {
	if text := HotVessel.Text(); !strings.Contains(text, "3 % at 60 °C") || !strings.Contains(text, "5 % at 90 °C") {
		t.Error(text)
	}
}

// Every choice is read back from its text; what is none of them is refused both ways.
func TestChoicesTravel(t *testing.T) {
	for v := Unrated; v <= MayFreeze; v++ {
		text, err := v.MarshalText()
		var back Verdict
		if again := back.UnmarshalText(text); err != nil || again != nil || back != v || len(text) < 5 || strings.Contains(string(text), "safe") {
			t.Errorf("%d: %s, %v, %v", v, text, err, again)
		}
	}
	for _, d := range []VolumeDefinition{RealVolume, IdealVolume} {
		text, err := d.MarshalText()
		var back VolumeDefinition
		if again := back.UnmarshalText(text); err != nil || again != nil || back != d {
			t.Errorf("%d: %s, %v, %v", d, text, err, again)
		}
	}
	var v Verdict
	var d VolumeDefinition
	_, a := Verdict(-1).MarshalText()
	_, b := json.Marshal(VolumeDefinition(2))
	for _, err := range []error{a, b, v.UnmarshalText([]byte("safe")), d.UnmarshalText([]byte("a volume"))} {
		if _, ok := errors.AsType[*units.NameError](err); !ok {
			t.Error(err)
		}
	}
}
