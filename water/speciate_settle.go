package water

import (
	"math"

	"example.org/zymase/internal/numeric"
)

// settle solves the mass balances at the pH and the coefficients.
//
// With the free metals left out, y = ln of the free anions
// is where the convex function
//
//	Σ own·exp(y) - Σ total·y + Σ metal·ln(own + Σ pair·exp(y))
//
// is least. A step d of Newton times 1/(1+|d|) lowers it from anywhere: along a step
// the third derivative is at most 2|d| times the second, so that the fall is at least
// half of what the slope promises.
//
//   - Source: Newton's method, damped, for functions of bounded third derivative: Y.
//     Nesterov and A. Nemirovskii, Interior-Point Polynomial Algorithms in Convex
//     Programming (1994) chapter 2; the bound for this function is derived here.
func (s *solution) settle(way int) {
	var p problem
	var at [partCount]int // where an anion stands among those sought; -1 where it is not
	for j := partCO3; j < partCount; j++ {
		at[j] = -1
		if j == partCO3 && way != byCarbon {
			continue
		}
		if s.total[j] == 0 {
			s.free[j] = 0
			continue
		}
		at[j] = p.n
		p.total[p.n], p.own[p.n] = s.total[j], 1
		p.n++
	}
	for i := range p.bonds {
		p.bonds[i] = bond{total: s.total[partCa+component(i)], own: 1}
	}
	if way == byGas {
		s.free[partCO3] = s.gasCO3()
	}
	for _, a := range s.anions[:s.anionLives] {
		k := at[a]
		if component(a) == nothing {
			k = -1
		}
		for _, r := range s.madeOf(component(a)) {
			n, metal := s.of(Species(r)), plan.facts[r].metal
			switch {
			case k >= 0 && metal == uint8(nothing):
				p.own[k] += n
			case k >= 0:
				p.bonds[metal-1].pair[k] += n
			case metal != uint8(nothing): // no anion, or a given carbonate: the metals' own
				p.bonds[metal-1].own += n * s.free[a]
			}
		}
	}
	var free [anionCount]float64
	free = p.oneRound(&free)
	for range mostRounds { // 15 were enough for a million waters; totals near 1e-305 lack digits
		d := p.newton(&free)
		far := 0.0
		for _, x := range d {
			far = max(far, math.Abs(x))
		}
		for j := range p.n {
			free[j] *= numeric.Exp(d[j] / (1 + far))
		}
		if far < negligible { // what is left is the square of it
			break
		}
	}
	for j := partCO3; j < partCount; j++ {
		if k := at[j]; k >= 0 {
			s.free[j] = free[k]
		}
	}
	for i := range p.bonds {
		s.free[partCa+component(i)] = p.bonds[i].free(&free, p.n)
	}
}

// problem is the set of balances: the anions sought with their own forms for each free
// one, and the metals with what binds them.
type problem struct {
	bonds      [metalCount]bond
	total, own [anionCount]float64
	n          int // anions
}

// bond is a metal with its pairs: its total, its forms for each free metal that need
// no anion, and its pairs for each free metal and anion.
type bond struct {
	total, own float64
	pair       [anionCount]float64
}

// free returns the free metal beside the first n free anions.
func (b *bond) free(anions *[anionCount]float64, n int) float64 {
	sum := b.own
	for j := range n {
		sum += b.pair[j] * anions[j]
	}
	return b.total / sum
}

// oneRound returns the anions that the metals beside the given ones leave free.
func (p *problem) oneRound(free *[anionCount]float64) (next [anionCount]float64) {
	sum := p.own
	for i := range p.bonds {
		m := p.bonds[i].free(free, p.n)
		for j := range p.n {
			sum[j] += p.bonds[i].pair[j] * m
		}
	}
	for j := range p.n {
		next[j] = p.total[j] / sum[j]
	}
	return next
}

// newton returns the step of Newton in the logarithms of the first n free anions, each
// balance as a share of its total.
func (p *problem) newton(free *[anionCount]float64) (step [anionCount]float64) {
	var h [anionCount][anionCount]float64
	n, own, total := p.n, &p.own, &p.total
	for j := range n {
		if free[j] == 0 { // no such anion, no step
			h[j][j] = own[j]
			continue
		}
		h[j][j] = own[j] * free[j] / total[j]
		step[j] = 1 - h[j][j]
		for i := range p.bonds {
			b := &p.bonds[i]
			m := b.free(free, n)
			if m == 0 {
				continue
			}
			share := m / b.total
			bound := b.pair[j] * free[j] / total[j] * m
			step[j] -= bound
			rest := b.own // of the metal, for each free one
			for k := range n {
				if k != j {
					pairs := b.pair[k] * free[k]
					rest += pairs
					h[j][k] -= bound * pairs * share
				}
			}
			h[j][j] += bound * rest * share
		}
	}
	// Gauss and Jordan: h is positive definite but for the scale of its rows, so that
	// its pivots need no search.
	for j := range n {
		for k := range n {
			if f := h[k][j] / h[j][j]; k != j {
				for l := range n {
					h[k][l] -= f * h[j][l]
				}
				step[k] -= f * step[j]
			}
		}
	}
	for j := range n {
		step[j] /= h[j][j]
	}
	return step
}
