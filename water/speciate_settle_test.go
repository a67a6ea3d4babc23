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
		var p problem
		for i := range p.bonds {
			p.bonds[i] = bond{total: power("metal", -6, 0), own: 1 + power("own", -6, 1)}
			for j := range p.bonds[i].pair {
				p.bonds[i].pair[j] = power("pair", -1, 6)
			}
		}
		p.n = rapid.IntRange(1, anionCount).Draw(t, "anions")
		var free, off [anionCount]float64
		for j := range p.n {
			free[j], p.own[j] = power("free", -9, 0), 1+power("own", -6, 6)
			off[j] = rapid.Float64Range(-3e-4, 3e-4).Draw(t, "off")
		}
		// The total that has this solution.
		for j := range p.n {
			p.total[j] = p.own[j] * free[j]
			for i := range p.bonds {
				p.total[j] += p.bonds[i].pair[j] * free[j] * p.bonds[i].free(&free, p.n)
			}
		}
		beside := free
		for j := range p.n {
			beside[j] *= math.Exp(off[j])
		}
		step := p.newton(&beside)
		for j := range p.n {
			near(t, "step", step[j], -off[j], 1e-6)
		}
	})
}
