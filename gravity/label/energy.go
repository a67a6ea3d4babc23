package label

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// EnergyValue is the energy of 100 mL as an EU label states it. Each has its own
// factors in law; one is not converted into the other.
type EnergyValue struct {
	Kilojoules   units.Energy
	Kilocalories units.Energy
}

// Factors of Regulation (EU) 1169/2011 annex XIV, per gram.
const (
	kJEthanol, kcalEthanol           = 29, 7
	kJCarbohydrate, kcalCarbohydrate = 17, 4 // except polyols
	kJPolyol, kcalPolyol             = 10, 2.4
	kJOrganicAcid, kcalOrganicAcid   = 13, 3
)

// EnergyEU returns the energy of 100 mL at 20 °C by the factors of EU law:
// ethanol 29 kJ/g and 7 kcal/g, carbohydrate 17 and 4, polyols (glycerol) 10 and
// 2.4, organic acids 13 and 3.
//
//   - Source: Regulation (EU) No 1169/2011 annex XIV; kJ and kcal each with their own
//     factors. Check the law in force where you sell.
//   - Range: every solution. All extract but glycerol and organic acids counts as
//     carbohydrate; beer also holds protein, at the same factor, and the label rounds to 1.
//   - Uncertainty: that of the extract and the strength; 0.1 % vol is 2.3 kJ. What the yeast
//     left of the sugar is good to a third of itself, which is 2 kJ at 12 % vol.
func EnergyEU(s gravity.Solution) EnergyValue {
	g := in100mL(s)
	return EnergyValue{
		Kilojoules:   units.Kilojoule.Of(checked.Number(kJEthanol*g.ethanol + kJCarbohydrate*g.carbohydrate + kJPolyol*g.polyol + kJOrganicAcid*g.acid)),
		Kilocalories: units.Kilocalorie.Of(checked.Number(kcalEthanol*g.ethanol + kcalCarbohydrate*g.carbohydrate + kcalPolyol*g.polyol + kcalOrganicAcid*g.acid)),
	}
}

// grams are what 100 mL hold at 20 °C; each only once.
type grams struct{ ethanol, carbohydrate, sugars, polyol, acid float64 }

func in100mL(s gravity.Solution) grams {
	whole := s.Mass().In(units.Kilogram)
	if whole == 0 {
		return grams{}
	}
	g := s.Gravity().Density().In(units.KilogramPerCubicMetre) / 10
	of := func(m units.Mass) float64 { return g * (m.In(units.Kilogram) / whole) }
	polyol, acid := of(s.ExtractOf(gravity.AsGlycerol)), of(s.ExtractOf(gravity.AsOrganicAcid))
	return grams{
		ethanol: of(s.Ethanol()), carbohydrate: max(0, of(s.Extract())-polyol-acid),
		sugars: of(s.Fermentable()), polyol: polyol, acid: acid,
	}
}

// EnergyUS returns the energy of 100 mL of beer at 20 °C as American analysts
// calculate it.
//
//   - Source: kcal/100 g = 6.9·A + 4.0·(RE − ash), A % mass of ethanol, RE % mass of real
//     extract; times the specific gravity for 100 mL (The Oxford Companion to Beer (2012),
//     "calories", after ASBC; method Beer-33 recalled from memory).
//   - Range: ash from 0 to the real extract and at most 1 % mass, 0.1 is customary for
//     beer (recalled from memory) and nothing for a sugar wash; otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: that of the composition. A drink may hold up to 20 % more than its label
//     states (TTB Procedure 2020-1 of 28 September 2020; read). Real extract counts whole,
//     glycerol and acids with it, as carbohydrate by difference does.
func EnergyUS(s gravity.Solution, ash units.Share) (units.Energy, error) {
	e, x := s.ByMass().In(units.PercentMass), s.RealExtract().In(units.DegreePlato)
	a := ash.In(units.Percent)
	if err := limit.Check("label.EnergyUS", "ash", a, "% mass", 0, min(1, x), "beer"); err != nil {
		return units.Energy{}, err
	}
	kcal := (6.9*e + 4.0*(x-a)) * s.Gravity().SG()
	return units.Kilocalorie.Of(checked.Number(kcal)), nil
}

// RoundCaloriesUS rounds kilocalories of a serving as US food law does: below 5 to
// 0, to the nearest 5 up to 50, to the nearest 10 above.
//
//   - Source: 21 CFR 101.9(c)(1) (read second hand).
//   - Range: 0 to 1e6 kcal; otherwise the error is a [*units.RangeError].
func RoundCaloriesUS(e units.Energy) (units.Energy, error) {
	kcal := e.In(units.Kilocalorie)
	if err := limit.Check("label.RoundCaloriesUS", "energy", kcal, "kcal", 0, 1e6, "a serving"); err != nil {
		return units.Energy{}, err
	}
	switch {
	case kcal < 5:
		kcal = 0
	case kcal <= 50:
		kcal = 5 * math.Round(kcal/5)
	default:
		kcal = 10 * math.Round(kcal/10)
	}
	return units.Kilocalorie.Of(checked.Number(kcal)), nil
}
