package units_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"example.org/zymase/units"
)

// A name from outside may be of any length and hold anything; the message stays short
// and is text.
func TestNameErrorIsShort(t *testing.T) {
	e := &units.NameError{Func: "f", What: "law", Name: strings.Repeat("\xff", 5000)}
	if s := e.Error(); len(s) > 120 || !utf8.ValidString(s) || strings.Contains(s, "one of") {
		t.Errorf("%q", s)
	}
}

// One choice is a choice.
func TestNameErrorOfOne(t *testing.T) {
	e := &units.NameError{Func: "f", What: "law", Name: "x", Choices: []string{"EU"}}
	if got, want := e.Error(), `f: unknown law "x"; one of EU`; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func ExampleNameError() {
	var how units.Rounding
	err := json.Unmarshal([]byte(`"upward"`), &how)
	if e, ok := errors.AsType[*units.NameError](err); ok {
		fmt.Println(e.Name, "is none of", e.Choices)
	}
	fmt.Println(err)
	// Output:
	// upward is none of [nearest up down]
	// units.Rounding.UnmarshalText: unknown rounding "upward"; one of nearest, up, down
}

func ExampleStateError() {
	err := error(&units.StateError{
		Func: "water.Profile.AcidToPH", What: "profile",
		Why: "has no temperature: make it with NewProfile",
	})
	fmt.Println(err)
	// Output: water.Profile.AcidToPH: this profile has no temperature: make it with NewProfile
}
