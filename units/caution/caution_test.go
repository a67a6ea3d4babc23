package caution_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

const (
	cylinder caution.Caution = "cylinder: Chain the cylinder upright."
	over     caution.Caution = "over_rating: %.1f bar is above the rating: do not fill it so."
)

func TestWhatIsNoCaution(t *testing.T) {
	was := cylinder
	for _, text := range []string{"", "cylinder", "cylinder: ", ": Chain it.", "Chain it upright.", "Cylinder: Chain it.", "a b: Chain it."} {
		_, err := caution.Caution(text).MarshalText()
		if _, ok := errors.AsType[*units.ParseError](err); !ok {
			t.Errorf("%q is written: %v", text, err)
		}
		if err := was.UnmarshalText([]byte(text)); err == nil || was != cylinder {
			t.Errorf("%q is read: %v", text, err)
		}
	}
}

// A list that grows does not write into one made from the same start.
func TestListsAreApart(t *testing.T) {
	start := make(caution.List, 0, 8).With(cylinder)
	a, b := start.With(over), start.With("other: Another.")
	if !a.Has(over) || b.Has(over) || len(a.With(cylinder, over)) != 2 || !slices.Equal(start.WithIf(false, over), start) || !start.WithIf(true, over).Has(over) {
		t.Error(a, b, start)
	}
}

func Example() {
	found := caution.List{}.With(over.With(7.25), cylinder)
	fmt.Println(found.Has(over), found)
	text, err := json.Marshal(found)
	fmt.Println(string(text), err)
	var back caution.List
	fmt.Println(json.Unmarshal(text, &back), back[0].Code(), "|", back[0])
	// Output:
	// true over_rating, cylinder
	// ["over_rating: 7.2 bar is above the rating: do not fill it so.","cylinder: Chain the cylinder upright."] <nil>
	// <nil> over_rating | 7.2 bar is above the rating: do not fill it so.
}
