package gravity

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const (
	sourceIndex = "CRC Handbook, 102nd ed."
	waterIndex  = 1.33299 // ICUMSA 1974, 589.3 nm, 20 °C
)

// A bend is what a solute does to the refractive index, as a polynomial in the mass
// fraction b: b·(c0 + c1·b + …).
type bend [5]float64

func (c *bend) at(b float64) float64 {
	return b * (c[0] + b*(c[1]+b*(c[2]+b*(c[3]+b*c[4]))))
}

func (c *bend) slope(b float64) float64 {
	return c[0] + b*(2*c[1]+b*(3*c[2]+b*(4*c[3]+b*5*c[4])))
}

var (
	// Least squares over the four anchors of ICUMSA 1974 (10, 20, 50 and 70 % mass, met
	// within 0.000003) and the 59 rows of the CRC Handbook (within 0.00006).
	bendSucrose = bend{0.14251, 0.057768, -0.001565, 0.038154, -0.025087}
	// Least squares over the rows of the CRC Handbook to 40 % mass, within 0.00007.
	bendEthanol = bend{0.054000, 0.156522, -0.442663, 0.272343}
	// Differences from this sucrose, least squares: glucose within 0.00011, fructose within
	// 0.00007 of the rows of the CRC Handbook; glycerol recalled from memory (1.3448 at 10 %).
	bendSugars = [kinds]bend{
		AsGlucose:  {0.000251, -0.010037, 0.0037412},
		AsFructose: {-0.0013438, -0.0049908},
		AsGlycerol: {-0.030}, AsOrganicAcid: {-0.030},
	}
)

// RefractiveIndex returns the refractive index of a sucrose solution at 20 °C and
// 589 nm.
//
//   - Source: curve through ICUMSA 1974 (5 decimals) and the CRC Handbook of Chemistry
//     and Physics, "Concentrative properties of aqueous solutions" (4 decimals).
//   - Range: 0 to 80 % mass; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.00003, which is 0.02 °Bx.
func RefractiveIndex(e units.Extract) (float64, error) {
	b := e.In(units.DegreePlato)
	if err := limit.Check("gravity.RefractiveIndex", "extract", b, "°Bx", 0, mostSucrose, sourceIndex); err != nil {
		return 0, err
	}
	return waterIndex + bendSucrose.at(b/100), nil
}

// BrixFromIndex returns the degrees Brix of a refractive index at 20 °C: the inverse
// of [RefractiveIndex], with its source and uncertainty.
//
//   - Range: 1.33299 to 1.4907 (0 to 80 °Bx); beyond it the error is a
//     [*units.RangeError].
func BrixFromIndex(n float64) (units.Extract, error) {
	if err := limit.Check("gravity.BrixFromIndex", "refractive index", n, "", waterIndex, waterIndex+bendSucrose.at(mostSucrose/100), sourceIndex); err != nil {
		return units.Extract{}, err
	}
	return plato(brixOf(n)), nil
}

func brixOf(n float64) float64 {
	b := (n - waterIndex) / bendSucrose[0] // a start; the steps below do not depend on it
	for range mostSteps {
		step := (waterIndex + bendSucrose.at(b) - n) / bendSucrose.slope(b)
		b -= step
		if math.Abs(step) < nearly {
			break
		}
	}
	return 100 * b
}

// RefractiveIndex returns the refractive index of the liquid at 20 °C.
//
//   - Source: curves through the CRC Handbook (sugars, ethanol), added as Tabarié adds
//     densities: each solute brought to the volume of the liquid. That the effects add
//     is an assumption; no measured values of the three together are at hand.
//   - Range: up to 40 % mass of ethanol; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.0001 for one solute; taken as 0.0002 (0.14 °Bx) for both.
func (s Solution) RefractiveIndex() (float64, error) { return s.indexOf(1) }

// indexOf is the index where extract bends light by so many times what it does as sugar.
func (s *Solution) indexOf(factor float64) (float64, error) {
	e, x := s.fractions()
	if err := limit.Check("gravity.Solution.RefractiveIndex", "strength", 100*e, "% mass", 0, 40, sourceIndex); err != nil {
		return 0, err
	}
	y := s.syrupAt20()
	_, u, b := blendParts(&mixture20, &y, e, x)
	extract := bendSucrose.at(b)
	if sum := s.sugars(); sum > 0 {
		for k, m := range s.extract {
			extract += m / sum * bendSugars[k].at(b)
		}
	}
	return waterIndex + bendEthanol.at(u) + factor*extract, nil
}

// RefractometerBrix returns what a refractometer with a Brix scale shows in the
// liquid at 20 °C: more than the extract, if there is ethanol. Extract counts as the sugars
// it is made of; what malt gives shows more, see [WortFactor]. Source, range and
// uncertainty are those of [Solution.RefractiveIndex].
func (s Solution) RefractometerBrix() (units.Extract, error) {
	b, err := s.shows(1)
	return plato(b), limit.Named("gravity.Solution.RefractometerBrix", err)
}

// shows is the reading in °Bx with a wort factor.
func (s *Solution) shows(factor float64) (float64, error) {
	n, err := s.indexOf(factor)
	if err != nil {
		return 0, err
	}
	return brixOf(n), nil
}
