package numeric

import (
	"math"
	"testing"
)

func TestExpIsMathExp(t *testing.T) {
	for x := -20.0; x < 20; x += 1.0 / 257 {
		got, want := Exp(x), math.Exp(x)
		if math.Abs(got/want-1) > 5e-16 {
			t.Fatalf("Exp(%g) = %v, math.Exp %v", x, got, want)
		}
	}
	for _, x := range []float64{-690, -300, 300, 690} {
		if got, want := Exp(x), math.Exp(x); math.Abs(got/want-1) > 1e-15 {
			t.Errorf("Exp(%g) = %v, math.Exp %v", x, got, want)
		}
	}
}
