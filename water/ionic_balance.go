package water

import (
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Balance compares the cations of a report with its anions.
type Balance struct {
	Cations    units.EquivalentConcentration
	Anions     units.EquivalentConcentration // alkalinity included
	Percent    float64                       // 100·(cations − anions)/(cations + anions)
	Acceptable bool                          // within the standard's limits
	Judgement  string                        // why
}

// IonicBalance returns the sums of the cations and anions in mEq/L and whether
// their difference is within the limits of a good report: 0.2 mEq/L up to 3 mEq/L
// of anions, 2 % up to 10 mEq/L, 5 % above.
//
//   - Source: Standard Methods for the Examination of Water and Wastewater, method
//     1030 E, recalled from memory.
func (p Profile) IonicBalance() Balance {
	cations, anions := p.charges()
	b := Balance{
		Cations: units.MilliequivalentPerLitre.Of(checked.Number(cations)),
		Anions:  units.MilliequivalentPerLitre.Of(checked.Number(anions)),
	}
	if sum := cations + anions; sum > 0 {
		b.Percent = 100 * (cations - anions) / sum
	}
	diff := math.Abs(cations - anions)
	switch {
	case anions <= 3:
		b.Acceptable = diff <= 0.2
		b.Judgement = fmt.Sprintf("difference %.2f mEq/L against 0.2 mEq/L allowed up to 3 mEq/L of anions", diff)
	case anions <= 10:
		b.Acceptable = math.Abs(b.Percent) <= 2
		b.Judgement = fmt.Sprintf("difference %.1f %% against 2 %% allowed from 3 to 10 mEq/L of anions", math.Abs(b.Percent))
	default:
		b.Acceptable = math.Abs(b.Percent) <= 5
		b.Judgement = fmt.Sprintf("difference %.1f %% against 5 %% allowed above 10 mEq/L of anions", math.Abs(b.Percent))
	}
	return b
}

// charges returns the sums of the charges in mEq/L. A negative alkalinity is an
// acid: it counts with the cations.
func (p *Profile) charges() (cations, anions float64) {
	for i := range p.mg {
		z := float64(referenceCharge(Ion(i)))
		if n := p.mmol(Ion(i)) * z; n > 0 {
			cations += n
		} else {
			anions -= n
		}
	}
	if p.alk < 0 {
		return cations - p.alk, anions
	}
	return cations, anions + p.alk
}

// referenceCharge is the charge that alkalinity counts from: H2PO4- for phosphate,
// HSO3- for sulfite, the bare ion for the rest. What the ion carries beyond it
// stands in the alkalinity.
func referenceCharge(i Ion) int {
	switch i {
	case Phosphate, Sulfite:
		return -1
	}
	return ionTable[i].charge
}
