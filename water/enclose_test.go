package water

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// From 0 to 2 down to the last bit below 0.5, 2^-54, are 55 halvings; one more is what
// the source allows (n0), and two are for the ends. Nothing takes more, a step and a
// flat root included.
func TestEnclosed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root := rapid.Float64Range(0.5, 1).Draw(t, "root")
		slope := rapid.Float64Range(1e-9, 1e9).Draw(t, "slope")
		for name, f := range map[string]func(x float64) float64{
			"step":     func(x float64) float64 { return math.Copysign(1, x-root) },
			"steep":    func(x float64) float64 { return math.Expm1(100 * (x - root)) },
			"line":     func(x float64) float64 { return slope * (x - root) },
			"flat":     func(x float64) float64 { return math.Pow(x-root, 9) },
			"one side": func(x float64) float64 { return math.Max(x-root, -1e-9) },
		} {
			n := 0
			x := enclosed(func(x float64) float64 { n++; return f(x) }, 0, 2)
			if math.Abs(x-root) > 0x1p-52 && name != "flat" || math.Abs(x-root) > 1e-2 {
				t.Errorf("%s: %v, want %v", name, x, root)
			}
			if n > 58 {
				t.Errorf("%s: %d values", name, n)
			}
		}
	})
	if x := enclosed(func(x float64) float64 { return x - 2 }, 0, 2); x != 2 {
		t.Errorf("a root at the end: %v", x)
	}
}
