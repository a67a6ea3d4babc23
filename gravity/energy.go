package gravity

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// LabelEnergy is the energy of 100 mL as a label states it. Each has its own
// factors in law; one is not converted into the other.
type LabelEnergy struct {
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
func (s Solution) EnergyEU() LabelEnergy {
	g := s.gramsPer100mL()
	return LabelEnergy{
		Kilojoules:   units.Kilojoule.Of(checked.Number(kJEthanol*g.ethanol + kJCarbohydrate*g.carbohydrate + kJPolyol*g.polyol + kJOrganicAcid*g.acid)),
		Kilocalories: units.Kilocalorie.Of(checked.Number(kcalEthanol*g.ethanol + kcalCarbohydrate*g.carbohydrate + kcalPolyol*g.polyol + kcalOrganicAcid*g.acid)),
	}
}

// grams are what 100 mL hold at 20 °C; each only once.
type grams struct{ ethanol, carbohydrate, sugars, polyol, acid float64 }

func (s *Solution) gramsPer100mL() grams {
	m := s.total()
	if m == 0 {
		return grams{}
	}
	g := s.density20() / 10 // the whole: g in 100 mL
	polyol, acid := g*(s.extract[AsGlycerol]/m), g*(s.extract[AsOrganicAcid]/m)
	return grams{
		ethanol: g * (s.ethanol / m), carbohydrate: max(0, g*(s.sugars()/m)-polyol-acid),
		sugars: g * (s.fermentable() / m), polyol: polyol, acid: acid,
	}
}
