package carbonation_test

import (
	"errors"
	"fmt"
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

// A relief valve of 3 bar: what is over it, at it, unknown, or below the atmosphere.
func TestRated(t *testing.T) {
	for _, row := range []struct {
		set, rating float64
		verdict     carbonation.Verdict
		cautions    string
	}{
		{2, 3, carbonation.WithinRating, "pressure_vessel"},
		{3, 3, carbonation.WithinRating, "pressure_vessel"},
		{3.001, 3, carbonation.OverRating, "over_rating, pressure_vessel"},
		{2, 0, carbonation.Unrated, "no_rating, pressure_vessel"},
		{-0.1, 3, carbonation.WithinRating, "pressure_vessel, below_atmosphere"},
		{0, 3, carbonation.WithinRating, "pressure_vessel"},
	} {
		v, c := carbonation.Rated(barGauge(row.set), barGauge(row.rating))
		if v != row.verdict || c.String() != row.cautions {
			t.Errorf("%g of %g bar: %v, %v", row.set, row.rating, v, c)
		}
	}
}

// 2.5 bar for a keg rated at 2.
func ExampleRated() {
	v, cautions := carbonation.Rated(units.BarGauge.Of(2.5), units.BarGauge.Of(2))
	fmt.Println(v)
	fmt.Println(cautions)
	// Output:
	// over the rating given
	// over_rating, pressure_vessel
}
