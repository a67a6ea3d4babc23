package water

import (
	"math"

	"example.org/zymase/internal/numeric"
)

// settle solves the mass balances at the pH and the coefficients.
//
// With the free metals left out, y = ln of the free sulfate, phosphate and carbonate
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
	c := &s.c
	total := [3]float64{s.so4, s.po4, s.carbon}
	own := [3]float64{1 + c.hso4, 1 + c.hp[0] + c.hp[1] + c.hp[2], 1 + c.hco3 + c.co2}
	bonds := [5]bond{
		{s.ca, 1 + c.caOH, [3]float64{c.caSO4 + c.caHSO4, c.caP[0] + c.caP[1] + c.caP[2], c.caHCO3 + c.caCO3}},
		{s.mg, 1 + c.mgOH, [3]float64{c.mgSO4, c.mgP[0] + c.mgP[1] + c.mgP[2], c.mgHCO3 + c.mgCO3}},
		{s.na, 1, [3]float64{c.naSO4, c.naP, c.naHCO3 + c.naCO3}},
		{s.kk, 1, [3]float64{c.kSO4, c.kP}},
		{s.nh4, 1 + c.nh3, [3]float64{c.nh4SO4}},
	}
	n := len(total)
	if way == byGas {
		s.co3 = s.gasCO3()
	}
	if way != byCarbon { // the free carbonate is given: its pairs are the metals' own
		n--
		for i := range bonds {
			bonds[i].own += bonds[i].pair[n] * s.co3
		}
	}
	var free [3]float64
	free = oneRound(&bonds, &total, &own, &free, n)
	for range mostRounds { // 15 were enough for a million waters; totals near 1e-305 lack digits
		d := newton(&bonds, &total, &own, &free, n)
		far := max(math.Abs(d[0]), math.Abs(d[1]), math.Abs(d[2]))
		for j := range n {
			free[j] *= numeric.Exp(d[j] / (1 + far))
		}
		if far < trifle { // what is left is the square of it
			break
		}
	}
	s.fso4, s.fpo4 = free[0], free[1]
	if way == byCarbon {
		s.co3 = free[2]
	}
	s.fca, s.fmg, s.fna = bonds[0].free(&free, n), bonds[1].free(&free, n), bonds[2].free(&free, n)
	s.fk, s.fnh4 = bonds[3].free(&free, n), bonds[4].free(&free, n)
}

// bond is a metal with its pairs: its total, its forms for each free metal that need
// no anion, and its pairs for each free metal and anion.
type bond struct {
	total, own float64
	pair       [3]float64
}

// free returns the free metal beside the first n free anions.
func (b *bond) free(anions *[3]float64, n int) float64 {
	sum := b.own
	for j := range n {
		sum += b.pair[j] * anions[j]
	}
	return b.total / sum
}

// oneRound returns the anions that the metals beside the given ones leave free.
func oneRound(bonds *[5]bond, total, own, free *[3]float64, n int) (next [3]float64) {
	sum := *own
	for i := range bonds {
		m := bonds[i].free(free, n)
		for j := range n {
			sum[j] += bonds[i].pair[j] * m
		}
	}
	for j := range n {
		next[j] = total[j] / sum[j]
	}
	return next
}

// newton returns the step of Newton in the logarithms of the first n free anions, each
// balance as a share of its total.
func newton(bonds *[5]bond, total, own, free *[3]float64, n int) (step [3]float64) {
	var h [3][3]float64
	for j := range n {
		if free[j] == 0 { // no such anion, no step
			h[j][j] = own[j]
			continue
		}
		h[j][j] = own[j] * free[j] / total[j]
		step[j] = 1 - h[j][j]
		for i := range bonds {
			b := &bonds[i]
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
