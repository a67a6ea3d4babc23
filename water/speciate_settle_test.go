package water

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Near the solution, a step of Newton leaves the square of what was off; and settle
// meets each balance to rounding, whatever binds what.
func TestNewtonStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		power := func(name string, low, high float64) float64 {
			return math.Pow(10, rapid.Float64Range(low, high).Draw(t, name))
		}
		var bonds [5]bond
		for i := range bonds {
			bonds[i] = bond{power("metal", -6, 0), 1 + power("own", -6, 1), [3]float64{power("with sulfate", -1, 6), power("with phosphate", -1, 6), power("with carbonate", -1, 6)}}
		}
		n := rapid.IntRange(1, 3).Draw(t, "anions")
		var free, total, own [3]float64
		for j := range n {
			free[j], own[j] = power("free", -9, 0), 1+power("own", -6, 6)
		}
		// The total that has this solution.
		for j := range n {
			total[j] = own[j] * free[j]
			for i := range bonds {
				total[j] += bonds[i].pair[j] * free[j] * bonds[i].free(&free, n)
			}
		}
		off := [3]float64{1e-4, -2e-4, 3e-4}
		near3 := free
		for j := range n {
			near3[j] *= math.Exp(off[j])
		}
		step := newton(&bonds, &total, &own, &near3, n)
		for j := range n {
			near(t, "step", step[j], -off[j], 1e-6)
		}
	})
}
