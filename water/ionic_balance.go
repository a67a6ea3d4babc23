package water

import (
	"math"
	"strconv"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// IonBalance compares the cations of a report with its anions.
type IonBalance struct {
	Cations    units.EquivalentConcentration
	Anions     units.EquivalentConcentration // alkalinity included
	Acceptable bool                          // within the standard's limits
	Judgement  string                        // why, in a line
}

// IonicBalance returns the sums of the cations and anions in mEq/L and whether
// their difference is within the limits of a good report: 0.2 mEq/L up to 3 mEq/L
// of anions, 2 % up to 10 mEq/L, 5 % above.
//
//   - Source: Standard Methods for the Examination of Water and Wastewater, method
//     1030 E, recalled from memory.
func (p Profile) IonicBalance() IonBalance {
	cations, anions := p.charges()
	b := IonBalance{
		Cations: units.MilliequivalentPerLitre.Of(checked.Number(cations)),
		Anions:  units.MilliequivalentPerLitre.Of(checked.Number(anions)),
	}
	most, _ := b.allowed()
	b.Acceptable = b.off() <= most
	b.Judgement = b.judge()
	return b
}

// Difference returns (cations − anions)/(cations + anions), the error of the report; below
// zero where anions are more, 0 for pure water.
func (b IonBalance) Difference() units.Share {
	cations, anions := b.Cations.In(units.MilliequivalentPerLitre), b.Anions.In(units.MilliequivalentPerLitre)
	if cations+anions <= 0 {
		return units.Share{}
	}
	return units.Percent.Of(checked.Number(100 * (cations - anions) / (cations + anions)))
}

// allowed returns the most that the sums may differ, and in which unit.
func (b *IonBalance) allowed() (most float64, unit string) {
	switch anions := b.Anions.In(units.MilliequivalentPerLitre); {
	case anions <= 3:
		return 0.2, "mEq/L"
	case anions <= 10:
		return 2, "%"
	}
	return 5, "%"
}

func (b *IonBalance) off() float64 {
	if _, unit := b.allowed(); unit == "%" {
		return math.Abs(b.Difference().In(units.Percent))
	}
	return math.Abs(b.Cations.In(units.MilliequivalentPerLitre) - b.Anions.In(units.MilliequivalentPerLitre))
}

// judge says why the balance is acceptable or not, in a line.
func (b *IonBalance) judge() string {
	most, unit := b.allowed()
	return "cations and anions differ by " + strconv.FormatFloat(b.off(), 'f', 2, 64) + " " + unit + "; " +
		strconv.FormatFloat(most, 'f', 1, 64) + " " + unit + " is allowed at this content"
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
