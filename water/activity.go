package water

import (
	"math"

	"example.org/zymase/internal/numeric"
)

// debyeHuckel returns A (base e) and B (a kg^½/(Å·mol^½)) of the Debye–Hückel law.
//
//   - Source: A = 1.824829e6·√ρ/(εT)^1.5 and B = 50.2916·√(ρ/(εT)); permittivity and
//     density of water as A. H. Truesdell and B. F. Jones, J. Res. U.S. Geol. Surv. 2
//     (1974) 233 (WATEQ), recalled from memory.
//   - Range: 0 to 100 °C.
//   - Uncertainty: 0.3 % against the IAPWS releases for permittivity and density.
func debyeHuckel(celsius float64, w *warmth) (a, b float64) {
	eps := 2727.586 + 0.6224107*w.t - 466.9151*math.Ln10*w.log - 52000.87*w.inverse
	x := eps * w.t
	root := math.Sqrt(overDensest(celsius) / x)
	return math.Ln10 * 1.824829e6 * root / x, 50.2916 * root
}

// overDensest is the density of water over its greatest, that of 4 °C: the form of
// the same paper.
func overDensest(celsius float64) float64 {
	d := celsius - 3.9863
	return 1 - d*d*(celsius+288.9414)/(508929.2*(celsius+68.12963))
}

// gammas are the activity coefficients of the species that take part in an
// equilibrium.
type gammas struct {
	h, oh, ca, mg, na, k, so4 float64
	one, two, three           float64 // ions without parameters of their own, by charge
	hco3, co3                 float64 // also CaHCO3+, MgOH+, H2PO4-, NaCO3-, NaSO4-, KSO4-, CaPO4-
	hpo4, po4                 float64
	mgHCO3, neutral           float64
}

// at sets the coefficients for an ionic strength.
//
//   - Source: ions with parameters, log γ = -A z² √I/(1 + B a √I) + b I, A. H.
//     Truesdell and B. F. Jones, J. Res. U.S. Geol. Surv. 2 (1974) 233, parameters as
//     the USGS data base of waters has them, partly recalled from memory; others, C. W.
//     Davies, Ion Association (1962), log γ = -A z² (√I/(1+√I) - 0.3 I), recalled from
//     memory; neutral species log γ = 0.1 I.
//   - Range: I up to 0.5 mol/kg.
func (g *gammas) at(strength, a, b float64) {
	r := math.Sqrt(strength)
	ar, br, l := -a*r, b*r, strength*math.Ln10
	g.h = numeric.Exp(ar / (1 + 9*br))
	g.oh = numeric.Exp(ar / (1 + 3.5*br))
	g.k = g.oh * small(0.015*l)
	g.na = numeric.Exp(ar/(1+4.08*br) + 0.082*l)
	five := numeric.Exp(4 * ar / (1 + 5*br))
	g.hpo4 = five
	g.ca = five * small(0.165*l)
	g.so4 = five * small(-0.04*l)
	g.mg = numeric.Exp(4*ar/(1+5.5*br) + 0.20*l)
	g.hco3 = numeric.Exp(ar / (1 + 5.4*br))
	g.co3 = power4(g.hco3)
	g.mgHCO3 = numeric.Exp(ar / (1 + 4*br))
	g.po4 = power4(g.mgHCO3) * power4(g.mgHCO3) * g.mgHCO3
	g.one = numeric.Exp(ar/(1+r) + 0.3*a*strength)
	g.two = power4(g.one)
	g.three = g.two * g.two * g.one
	g.neutral = small(0.1 * l)
}

// small is exp(x) for |x| up to 0.4 to 1e-8, and to 1e-15 below 0.03: the terms b·I.
func small(x float64) float64 {
	const f2, f3, f4, f5, f6, f7 = 1. / 2, 1. / 6, 1. / 24, 1. / 120, 1. / 720, 1. / 5040
	x2 := x * x
	return 1 + x + x2*(f2+x*f3+x2*(f4+x*f5+x2*(f6+x*f7)))
}

func power4(x float64) float64 { x *= x; return x * x }
