package water

import (
	"math"
)

// debyeHuckel returns A (base e) and B (a kg^½/(Å·mol^½)) of the Debye–Hückel law.
//
//   - Source: A = 1.82483e6·√ρ/(εT)^1.5 and B = 50.2905·√(ρ/(εT)); permittivity and
//     density of water as A. H. Truesdell and B. F. Jones, J. Res. U.S. Geol. Surv. 2
//     (1974) 233 (WATEQ): read in the source text of PHREEQC 2.
//   - Range: 0 to 100 °C.
//   - Uncertainty: 0.3 % against the IAPWS releases for permittivity and density.
func debyeHuckel(celsius float64, w *warmth) (a, b float64) {
	eps := 2727.586 + 0.6224107*w.t - 466.9151*math.Ln10*w.log - 52000.87*w.inverse
	x := eps * w.t
	root := math.Sqrt(overDensest(celsius) / x)
	return math.Ln10 * 1.82483e6 * root / x, 50.2905 * root
}

// overDensest is the density of water over its greatest, that of 4 °C: the form of
// the same paper.
func overDensest(celsius float64) float64 {
	d := celsius - 3.9863
	return 1 - d*d*(celsius+288.9414)/(508929.2*(celsius+68.12963))
}

// activity is the law of a species' activity coefficient.
type activity struct {
	size float64 // Å; inDavies and uncharged are no sizes
	b    float64 // kg/mol
}

const (
	uncharged = 0
	inDavies  = -1
)

func jones(size, b float64) activity { return activity{size, b} }
func davies() activity               { return activity{size: inDavies} }
func neutral(b float64) activity     { return activity{uncharged, b} }

// coefficients are the activity coefficients that differ, by gammaOf, with their inverses.
type coefficients struct{ of, over [mostGammas]float64 }

const (
	mostGammas = 32 // powers of two
	mostSizes  = 16
	gammaUnity = 0 // the coefficient of what is not there
)

// gammaKind is a coefficient: γ(1) of a size to the power z², times 10^(b·I).
type gammaKind struct {
	size, z int // size in gammaTable.sizes
	b       float64
}

// gammaTable are the coefficients that the species need; gammaOf says which is whose.
var gammaTable, gammaOf = gammasOf(&speciesTable)

type gammaPlan struct {
	sizes          [mostSizes]float64
	kinds          [mostGammas]gammaKind
	nSizes, nKinds int
}

func gammasOf(table *[speciesCount]speciesRow) (plan gammaPlan, of [speciesCount]uint8) {
	place(plan.kinds[:], &plan.nKinds, gammaKind{}) // gammaUnity
	for sp := range table {
		r := &table[sp]
		kind := gammaKind{z: max(r.charge(), -r.charge()), b: r.activity.b}
		if kind.z > 0 {
			kind.size = place(plan.sizes[:], &plan.nSizes, r.activity.size)
		}
		of[sp] = uint8(place(plan.kinds[:], &plan.nKinds, kind))
	}
	return plan, of
}

// place returns where x stands in the first n of a list, put there if it did not.
func place[T comparable](list []T, n *int, x T) int {
	for i := range *n {
		if list[i] == x {
			return i
		}
	}
	list[*n] = x
	*n++
	return *n - 1
}

// at sets the coefficients for an ionic strength.
//
//   - Source: ions with a size, log γ = -A z² √I/(1 + B a √I) + b I, A. H. Truesdell and
//     B. F. Jones, J. Res. U.S. Geol. Surv. 2 (1974) 233, parameters as the USGS data
//     bases of waters have them (read); others, C. W. Davies, Ion Association (1962),
//     log γ = -A z² (√I/(1+√I) - 0.3 I), recalled from memory; neutral species
//     log γ = b I.
//   - Range: I up to 0.5 mol/kg.
func (g *coefficients) at(strength, a, b float64) {
	r := math.Sqrt(strength)
	ar, br, l := -a*r, b*r, strength*math.Ln10
	davies := ar/(1+r) + 0.3*a*strength
	var one, over [mostSizes]float64 // of a size at a charge of one, and its inverse
	for i, size := range gammaTable.sizes[:gammaTable.nSizes] {
		x, below := ar, 1+size*br
		if size == inDavies {
			x, below = davies, 1
		}
		one[i%mostSizes], over[i%mostSizes] = bothExp(x, below)
	}
	for i := range gammaTable.nKinds {
		k := &gammaTable.kinds[i%mostGammas]
		v, u := 1.0, 1.0
		if k.z > 0 {
			v, u = one[k.size%mostSizes], over[k.size%mostSizes]
		}
		switch k.z {
		case 2:
			v, u = power4(v), power4(u)
		case 3:
			v, u = power4(v*v)*v, power4(u*u)*u
		}
		if k.b != 0 {
			up, down := bothSmall(k.b * l)
			v, u = v*up, u*down
		}
		g.of[i%mostGammas], g.over[i%mostGammas] = v, u
	}
}

// bothExp is exp(x/y) and exp(-x/y) for |x/y| up to 0.8, to 1e-14, with one division.
//
//   - Source: the diagonal approximant of H. Padé, Ann. Sci. Éc. Norm. Supér. 9 (1892) 3, of order six.
func bothExp(x, y float64) (up, down float64) {
	x2, y2 := x*x, y*y
	x4 := x2 * x2
	even := ((665280*y2+75600*x2)*y2+840*x4)*y2 + x4*x2
	odd := x * y * ((332640*y2+10080*x2)*y2 + 42*x4)
	up, down = even+odd, even-odd
	over := 1 / (up * down)
	return up * up * over, down * down * over
}

// bothSmall is exp(x) and exp(-x) for |x| up to 0.4 to 1e-8, and to 1e-15 below 0.03: the
// terms b·I.
func bothSmall(x float64) (up, down float64) {
	const f2, f3, f4, f5, f6, f7 = 1. / 2, 1. / 6, 1. / 24, 1. / 120, 1. / 720, 1. / 5040
	x2 := x * x
	even := 1 + x2*(f2+x2*(f4+x2*f6))
	odd := x * (1 + x2*(f3+x2*(f5+x2*f7)))
	return even + odd, even - odd
}

func power4(x float64) float64 { x *= x; return x * x }
