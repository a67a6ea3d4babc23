package carbonation_test

import (
	"fmt"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

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
