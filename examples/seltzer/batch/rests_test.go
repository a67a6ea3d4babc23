package batch

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A boil that follows what the first world found leaves what one that searches does, in waters of any level and any
// salt within their unknowns, boiled down as far as any rate has it; a water far from it is searched for.
func TestRestsAsSearched(t *testing.T) {
	w := must(FromWater(well(), units.Litre.Of(120)))
	for _, rate := range []float64{2, 5, 60} {
		boil := boiling(15, rate)
		steps := []Step{{Kind: Blend, With: &w, Volume: units.Litre.Of(58)}, {Kind: Treat, What: "gypsum", Mass: units.Gram.Of(12)}, boil}
		shared := append([]Step{}, steps...)
		shared[2].Rests = new(Rests)
		var like, other water.Series
		worst, followed := 0.0, 0
		for _, u := range append([]Unknowns{usual}, Draw(200, Known())...) {
			want, _, err := Walk(nil, steps, State{}, &u, &like)
			if err != nil {
				t.Fatal(err)
			}
			got, _, err := Walk(nil, shared, State{}, &u, &other)
			if err != nil {
				t.Fatal(err)
			}
			worst = max(worst, math.Abs(got[2].Of(Calcium)/want[2].Of(Calcium)-1))
			if got[2] != want[2] {
				followed++
			}
		}
		t.Logf("%g L/h: %.1e at most, %d of 201 followed", rate, worst, followed)
		if worst > 4e-5 || followed < 190 {
			t.Errorf("%g L/h: what stays is %.1e off, %d of 201 followed", rate, worst, followed)
		}
	}
	r := new(Rests)
	far := []Step{{Kind: Treat, What: "gypsum", Mass: units.Gram.Of(12)}, boiling(15, 5)}
	far[1].Rests = r
	var like water.Series
	must2(Walk(nil, far, w, &usual, &like))
	far[0].Mass = units.Gram.Of(40)
	got := must2(Walk(nil, far, w, &usual, &like))
	far[1].Rests = nil
	want := must2(Walk(nil, far, w, &usual, &like))
	near(t, "another water", got[1].Of(Calcium), want[1].Of(Calcium), 1e-9)
}

func must2(s []State, _ Left, err error) []State { return must(s, err) }
