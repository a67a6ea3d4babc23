package rival

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// An Attenuated is what a published method makes of two extracts. How sure it is shows
// in how far the methods lie apart.
type Attenuated struct {
	RealExtract units.Extract
	ByMass      units.StrengthByMass
}

// wortAndBeer checks the two extracts of a method for malt.
func wortAndBeer(fn string, original, apparent units.Extract, least, most float64, source string) (p, m float64, err error) {
	p, m = original.In(units.DegreePlato), apparent.In(units.DegreePlato)
	if err := limit.Check(fn, "original extract", p, "°P", least, most, source); err != nil {
		return p, m, err
	}
	return p, m, limit.Check(fn, "apparent extract", m, "°P", -2, p, source)
}

// AttenuatedBallingTables is the way of Balling's own tables: the attenuation
// quotient grows with the original extract.
//
//   - Source: C. J. N. Balling, Die Gährungschemie (1854/1865), tables A and B: p − n =
//     (n − m)/(q − 1) with q − 1 = 0.2290 at 9 °P to 0.2360 at 16; A by
//     [StrengthBalling]'s relation, as printed b = 100/(206.65 − 1.0665·p).
//   - Range: original 9 to 16 °P, apparent −2 °P to the original; beyond it the error
//     is a [*units.RangeError].
func AttenuatedBallingTables(original, apparent units.Extract) (Attenuated, error) {
	p, m, err := wortAndBeer("rival.AttenuatedBallingTables", original, apparent, 9, 16, "Balling 1865, tables A and B")
	if err != nil {
		return Attenuated{}, err
	}
	q := 1 + 0.2290 + 0.0010*(p-9)
	used := (p - m) / q // p − n
	return Attenuated{plato(p - used), percentMass(used * 100 / (206.65 - 1.0665*p))}, nil
}

// AttenuatedHandbook is the way of handbooks with one constant for all beers.
//
//   - Source: de Clerck and later handbooks (recalled from memory): RE = 0.1808·OE +
//     0.8192·AE; A by Balling's relation.
//   - Range: original 4 to 25 °P (stated nowhere), apparent −2 °P to the original, and
//     not so low that the real extract falls below zero; beyond it the error is a
//     [*units.RangeError].
func AttenuatedHandbook(original, apparent units.Extract) (Attenuated, error) {
	return attenuatedBy("rival.AttenuatedHandbook", original, apparent, 0.8192, "handbook constant")
}

// AttenuatedMEBAK is the same with the constant of the European analysts.
//
//   - Source: MEBAK B-590.80.530: OE − RE = 0.81·(OE − AE); A by Balling's relation.
//   - Range: as [AttenuatedHandbook].
func AttenuatedMEBAK(original, apparent units.Extract) (Attenuated, error) {
	return attenuatedBy("rival.AttenuatedMEBAK", original, apparent, 0.81, "MEBAK B-590.80.530")
}

func attenuatedBy(fn string, original, apparent units.Extract, constant float64, source string) (Attenuated, error) {
	p, m, err := wortAndBeer(fn, original, apparent, 4, 25, source)
	if err != nil {
		return Attenuated{}, err
	}
	used := constant * (p - m)
	if used > p { // below 8 to 9 °P the constant leaves less than none
		return Attenuated{}, limit.Check(fn, "apparent extract", m, "°P", p-p/constant, p, source+", all extract used")
	}
	return balled(p, used), nil
}

// balled applies Balling's relation to the extract used.
func balled(p, used float64) Attenuated {
	return Attenuated{plato(p - used), percentMass(used / (ballingExtract - ballingLoss/100*p))}
}

// AttenuatedCutaia is the regression over 532 measured brews.
//
//   - Source: Cutaia, Reid & Speers, J. Inst. Brew. 115 (2009) 318, table VI: A =
//     (0.372 + 0.00357·OE)·(OE − AE), and OE − RE = (0.814 − 0.000862·OE)·(OE − AE).
//   - Misprint: the copy seen has + in the second. The quotient of the paper's own
//     two regressions for A, and the means of its table III, need −; with + the real
//     extract is 0.26 °P too low.
//   - Range: original 9.4 to 18.1 °P, the span of the data; apparent −2 °P to the
//     original. Beyond it the error is a [*units.RangeError].
func AttenuatedCutaia(original, apparent units.Extract) (Attenuated, error) {
	p, m, err := wortAndBeer("rival.AttenuatedCutaia", original, apparent, 9.4, 18.1, "Cutaia et al. 2009 table III")
	if err != nil {
		return Attenuated{}, err
	}
	return Attenuated{plato(p - (0.814-8.62e-4*p)*(p-m)), percentMass((0.372 + 0.00357*p) * (p - m))}, nil
}

// AttenuatedDoemens is the older regression that the same paper prints.
//
//   - Source: Pawlowski/Doemens as printed in Cutaia et al. 2009 table VI: A = (0.395 +
//     0.0021·OE)·(OE − AE), and OE − RE = (0.820 − 0.00066·OE)·(OE − AE).
//   - Range: as [AttenuatedCutaia].
func AttenuatedDoemens(original, apparent units.Extract) (Attenuated, error) {
	p, m, err := wortAndBeer("rival.AttenuatedDoemens", original, apparent, 9.4, 18.1, "Cutaia et al. 2009 table VI")
	if err != nil {
		return Attenuated{}, err
	}
	return Attenuated{plato(p - (0.820-6.6e-4*p)*(p-m)), percentMass((0.395 + 0.0021*p) * (p - m))}, nil
}

// StrengthCutaiaReal is the regression from original and real extract.
//
//   - Source: Cutaia, Reid & Speers 2009 table VI: A = (0.459 + 0.00469·OE)·(OE − RE).
//   - Range: original 9.4 to 18.1 °P, real extract 0 to the original; beyond it the
//     error is a [*units.RangeError].
func StrengthCutaiaReal(original, real units.Extract) (units.StrengthByMass, error) {
	const fn, source = "rival.StrengthCutaiaReal", "Cutaia et al. 2009 table III"
	p, n := original.In(units.DegreePlato), real.In(units.DegreePlato)
	if err := limit.Check(fn, "original extract", p, "°P", 9.4, 18.1, source); err != nil {
		return units.StrengthByMass{}, err
	}
	if err := limit.Check(fn, "real extract", n, "°P", 0, p, source); err != nil {
		return units.StrengthByMass{}, err
	}
	return percentMass((0.459 + 0.00469*p) * (p - n)), nil
}
