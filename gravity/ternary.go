package gravity

import (
	"math"

	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// Water, extract and ethanol together: Tabarié's relation. Each solute is brought
// to the volume of the liquid by itself, and the changes of density add:
//
//	ρ = ρ(ethanol in water) + ρ(extract in water) − ρ(water)
//
//   - Source: Tabarié (1830) as MEBAK gives it for the densitometer: "SG of the beer
//     = SG of the alcohol solution + SG of the extract solution − 1, each brought to
//     the volume of the beer".
//   - Range: within the 95 % band of 153 measured solutions below 5 % sucrose and
//     18 % ethanol by mass (Hackbarth, J. Am. Soc. Brew. Chem. 69 (2011) 39); there
//     the standard error is below 0.06 kg/m³ (ibid. 67 (2009) 146).

// What is known about the density of a liquid with both ethanol and extract.
const (
	binary    = iota // no extract or no ethanol, so that the formula of two holds
	published        // where Tabarié's relation was found to hold
	extended         // no measured values are at hand; rival ways to combine the formulas differ by 0.5 kg/m³ at 18 % ethanol, 5 kg/m³ at the far corner
	outside          // no relation known; such a solution is not made
)

var mixtures = [...]evidence.Evidence{
	binary: {Source: "OIML R 22 (1975) and ICUMSA SPS-4 (1994)", Grade: evidence.Read, Note: "water with ethanol or extract alone"},
	published: {Source: "Tabarié (1830), tried by Hackbarth, J. Am. Soc. Brew. Chem. 69 (2011) 39", Grade: evidence.Read,
		Note: "up to 5 % extract and 18 % ethanol by mass"},
	extended: {Source: "Tabarié (1830)", Grade: evidence.Computed, Note: "beyond the mixtures that were measured, up to 65 % of solutes"},
}

const (
	tabarieExtract = 0.05 // Hackbarth 2011
	tabarieEthanol = 0.18 // Hackbarth 2011
	mostSolute     = 0.65 // Hackbarth 2009
	mostProduct    = 0.06 // where rival combinations differ by 0.5 %
	trace          = 0.01 // so little of one that the other may be anything
	nearBlend      = 2e-4 // kg/m³: what such a step of Newton leaves is below 1e-11, 2e-4 of its square
	leastApparent  = -0.1 // a strength that was guessed too high leaves less than no extract
)

// region places mass fractions of ethanol and extract.
func region(e, x float64) int {
	switch {
	case e == 0 || x == 0:
		return binary
	case x <= tabarieExtract && e <= tabarieEthanol:
		return published
	case min(e, x) <= trace, e+x <= mostSolute && e*x <= mostProduct:
		return extended
	}
	return outside
}

// blend solves Tabarié's relation for the density of a liquid with mass fractions
// e of ethanol and x of extract. Three unknowns: the density, and the mass
// fractions u and b of the two solutions that hold the ethanol and the extract of
// the same volume. Newton's method on all three; it meets in three or four steps.
func blend(m *mixture, s *syrup, e, x float64) float64 {
	rho, _, _ := blendParts(m, s, e, x)
	return rho
}

// blendParts returns the density and the two mass fractions.
func blendParts(m *mixture, s *syrup, e, x float64) (rho, u, b float64) {
	if e == 0 {
		return s.density(x), 0, x
	}
	scale := s[0] / m[0] // R 22 on the water of SPS-4
	if x == 0 {
		return scale * m.density(e), e, 0
	}
	u, b = e, x
	rho = scale*m.density(u) + s.density(b) - s[0]
	for range mostSteps {
		a, da := scale*m.density(u), scale*m.slope(u)
		d, dd := s.density(b), s.slope(b)
		ra, rb, r := u*a-e*rho, b*d-x*rho, a+d-s[0]-rho
		ia, ib := 1/(a+u*da), 1/(d+b*dd)
		ra, rb, ea, xb := ra*ia, rb*ib, e*ia, x*ib
		step := (r - da*ra - dd*rb) / (1 - da*ea - dd*xb)
		rho += step
		u = clamp(u+ea*step-ra, 0, 1)
		b = clamp(b+xb*step-rb, leastApparent, 1)
		if math.Abs(step) < nearBlend {
			break
		}
	}
	return scale*m.density(u) + s.density(b) - s[0], u, b
}

// sameWater is the rival of Tabarié's relation: each solute with all the water of
// the liquid, the volumes added. The distance between the two is a measure of what
// is not known.
func sameWater(m *mixture, s *syrup, w, e, x float64) float64 {
	scale := s[0] / m[0]
	v := (w+e)/(scale*m.density(e/(w+e))) + (w+x)/s.density(x/(w+x)) - w/s[0]
	return 1 / v
}

// DensityUncertainty returns the standard uncertainty of the density at 20 °C that
// comes from the formulas, and where they are known to hold: for water with ethanol or
// extract alone, in the mixtures that were measured (up to 5 % extract and 18 % ethanol by
// mass), or beyond them (up to 65 % of solutes, the product of their fractions up to 0.06).
//
//   - Source: 0.03 kg/m³ for the formulas of two (a third of the spread between the
//     published tables); for three, 0.06 kg/m³ (standard error in Hackbarth 2009) and
//     the distance between Tabarié's relation and the sum of volumes in the same
//     water, added in squares.
//   - Range: every solution.
func (s Solution) DensityUncertainty() (units.Density, evidence.Evidence) {
	e, x := s.fractions()
	r := region(e, x)
	u := 0.03
	if r != binary {
		y := s.syrupAt20()
		d := blend(&mixture20, &y, e, x) - sameWater(&mixture20, &y, s.water/s.total(), e, x)
		u = math.Sqrt(u*u + 0.06*0.06 + d*d)
	}
	return kgPerM3(u), mixtures[r]
}
