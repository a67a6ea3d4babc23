package gravity

import (
	"cmp"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Gravity is the true specific gravity of a liquid: its density at 20 °C over
// that of water at 20 °C, in vacuum. The zero value is water, 1.000. Values
// compare with ==.
//
// It lies between 0.790 (pure ethanol is 0.7907) and 1.4147 (80 °P).
type Gravity struct{ excess float64 } // over water

const (
	lowestGravity = 0.790
	sourceScale   = "pure ethanol to 80 °P"
)

var highestGravity = syrup20.density(mostSucrose/100) / syrup20[0]

// one makes a Gravity from a number that is inside the limits. The excess is
// rounded so that 1 + excess is exact: the text then reads back as the same value.
func one(sg float64) Gravity { return Gravity{sg - 1} }

// FromSG returns the gravity sg (20/20 °C, in vacuum).
//
//   - Range: 0.790 to 1.4147; beyond it the error is a [*units.RangeError]. A
//     reading in points (1048) is out of range.
func FromSG(sg float64) (Gravity, error) {
	if err := limit.Check("gravity.FromSG", "specific gravity", sg, "", lowestGravity, highestGravity, sourceScale); err != nil {
		return Gravity{}, err
	}
	return one(sg), nil
}

// FromExtract returns the gravity of an apparent or original extract: the inverse
// of [Gravity.Extract].
//
//   - Source: ICUMSA SPS-4 (1994) at 20 °C.
//   - Range: −65.56 °P (0.790) to 80 °P; beyond it the error is a
//     [*units.RangeError].
func FromExtract(e units.Extract) (Gravity, error) {
	b := e.In(units.DegreePlato)
	if err := limit.Check("gravity.FromExtract", "extract", b, "°P", leastPlato, mostSucrose, sourceScale); err != nil {
		return Gravity{}, err
	}
	return one(syrup20.density(b/100) / syrup20[0]), nil
}

var leastPlato = 100 * syrup20.fraction(lowestGravity*syrup20[0])

// FromDensity returns the gravity of a liquid whose density at 20 °C is d.
//
//   - Range: 788.6 to 1412.2 kg/m³; beyond it the error is a [*units.RangeError].
func FromDensity(d units.Density) (Gravity, error) {
	rho := d.In(units.KilogramPerCubicMetre)
	if err := limit.Check("gravity.FromDensity", "density", rho, "kg/m³", lowestGravity*syrup20[0], highestGravity*syrup20[0], sourceScale); err != nil {
		return Gravity{}, err
	}
	return one(clamp(rho/syrup20[0], lowestGravity, highestGravity)), nil
}

// SG returns the specific gravity 20/20 °C in vacuum: 1.048.
func (g Gravity) SG() float64 { return 1 + g.excess }

// Points returns the excess over water in thousandths: 48 for 1.048. It is
// negative below 1.000.
func (g Gravity) Points() float64 { return 1000 * g.excess }

// Extract returns the apparent extract: grams of sucrose in 100 g of the sucrose
// solution of this gravity.
//
//   - Source: ICUMSA SPS-4 (1994) at 20 °C, solved for the mass fraction.
//   - Below 1.000 the same polynomial is continued to negative fractions, so that
//     value and slope join at zero without a step. It is a convention, as no such
//     solution exists; brewers' tables do the same (Cutaia et al., J. Inst. Brew. 115
//     (2009) 318 report −0.42 °P). It rises all the way from pure ethanol, −65.3 °P.
//   - Range: every Gravity.
//   - Uncertainty: 0.025 °P for 0.1 kg/m³.
func (g Gravity) Extract() units.Extract {
	return plato(100 * syrup20.fraction((1+g.excess)*syrup20[0]))
}

// Density returns the density at 20 °C, in vacuum.
func (g Gravity) Density() units.Density { return kgPerM3((1 + g.excess) * syrup20[0]) }

// Compare returns -1, 0 or +1 as g is less than, equal to or more than o.
func (g Gravity) Compare(o Gravity) int { return cmp.Compare(g.excess, o.excess) }
