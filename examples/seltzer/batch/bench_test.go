package batch

import (
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// BenchmarkMathExp is what ratios are to.
func BenchmarkMathExp(b *testing.B) {
	x, sum := 0.0, 0.0
	for b.Loop() {
		x += 1e-3
		if x > 1 {
			x = -1
		}
		sum += math.Exp(x)
	}
	_ = sum
}

// BenchmarkWalk is a whole batch, from the water to a keg.
func BenchmarkWalk(b *testing.B) {
	w := must(FromWater(well(), units.Litre.Of(60)))
	steps := brew(&w)
	room := make([]State, 0, len(steps))
	var like water.Series
	for b.Loop() {
		if _, _, err := Walk(room, steps, State{}, &usual, &like); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkBoil is the dearest step of it.
func BenchmarkBoil(b *testing.B) {
	j := job{u: &usual, like: new(water.Series)}
	w, st := wash(), boiling(15, 5)
	for b.Loop() {
		j.s = w
		if err := j.boil(&st); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFerment(b *testing.B) {
	j := job{u: &usual, like: new(water.Series)}
	w, st := wash(), Step{Kind: Ferment, Share: per(100)}
	for b.Loop() {
		j.s = w
		if err := j.ferment(&st); err != nil {
			b.Fatal(err)
		}
	}
}
