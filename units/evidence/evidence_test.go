package evidence_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

func TestEvidenceTravels(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		was := evidence.Evidence{
			Source: rapid.SampledFrom([]string{"", "Codex CXS 212-1999", "Balling (1865); Holzner", "read", "a (b) c", "chosen (read",
				"x (read); y", "; z", " (read)"}).Draw(t, "source"),
			Grade: evidence.Grade(rapid.IntRange(0, 5).Draw(t, "grade")),
			Note:  rapid.SampledFrom([]string{"", "white sugar only", "another has 5 (computed)", "; ", "(read)"}).Draw(t, "note"),
		}
		text, err := was.MarshalText()
		if err != nil {
			if _, ok := errors.AsType[*units.ParseError](err); !ok || was.Source == "" || was.Source[0] == 'C' || was.Source[0] == 'B' {
				t.Fatalf("%+v is not written: %v", was, err)
			}
			return
		}
		var is evidence.Evidence
		if err := is.UnmarshalText(text); err != nil || is != was {
			t.Fatalf("%s comes back as %+v, %v", text, is, err)
		}
	})
}

func TestNoGradeNoEvidence(t *testing.T) {
	was := evidence.Evidence{Source: "a", Grade: evidence.Read}
	for _, text := range []string{"", "Codex CXS 212-1999", "Codex (seen)", "(read)", "Codex (read), sugar", "Codex (read); "} {
		e := was
		if err := e.UnmarshalText([]byte(text)); err == nil || e != was {
			t.Errorf("%q: %+v %v", text, e, err)
		}
	}
	for _, e := range []any{evidence.Grade(6), evidence.Evidence{Source: "a", Grade: 6}} {
		if _, err := json.Marshal(e); err == nil {
			t.Errorf("%v is written", e)
		} else if _, ok := errors.AsType[*units.NameError](err); !ok {
			t.Error(err)
		}
	}
	var g evidence.Grade
	if err := g.UnmarshalText([]byte("computed")); err != nil || g != evidence.Computed {
		t.Error(g, err)
	}
}

func Example() {
	e := evidence.Evidence{Source: "Codex CXS 212-1999", Grade: evidence.Read, Note: "white sugar only"}
	text, err := json.Marshal(e)
	fmt.Println(string(text), err)
	var back evidence.Evidence
	err = json.Unmarshal(text, &back)
	fmt.Println(back == e, err, evidence.Evidence{})
	fmt.Println(evidence.Recalled < evidence.Read)
	// Output:
	// "Codex CXS 212-1999 (read); white sugar only" <nil>
	// true <nil> common practice, no source
	// true
}

// A source may be one letter.
func TestShortSource(t *testing.T) {
	var e evidence.Evidence
	if err := e.UnmarshalText([]byte("a (read)")); err != nil || e != (evidence.Evidence{Source: "a", Grade: evidence.Read}) {
		t.Errorf("%+v, %v", e, err)
	}
}

// The first grade of a text is its grade, whatever its note says of another.
func TestFirstGradeCounts(t *testing.T) {
	for g := range evidence.Grade(6) {
		for other := range evidence.Grade(6) {
			was := evidence.Evidence{Grade: g, Note: fmt.Sprintf("another has 5 (%v)", other)}
			var is evidence.Evidence
			if text, err := was.MarshalText(); err != nil || is.UnmarshalText(text) != nil || is != was {
				t.Errorf("%s comes back as %+v, %v", text, is, err)
			}
		}
	}
}
