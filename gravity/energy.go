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
	kJCarbohydrate, kcalCarbohydrate = 17, 4
	kJPolyol, kcalPolyol             = 10, 2.4
)

// EnergyEU returns the energy of 100 mL at 20 °C by the factors of EU law:
// ethanol 29 kJ/g and 7 kcal/g, carbohydrate 17 and 4, polyols (glycerol) 10 and
// 2.4.
//
//   - Source: Regulation (EU) No 1169/2011 annex XIV; kJ and kcal each with their own
//     factors. Check the law in force where you sell.
//   - Range: every solution. All extract but glycerol counts as carbohydrate; beer
//     also holds protein, at the same factor, and the label rounds to 1.
//   - Uncertainty: that of the extract and the strength; 0.1 % vol is 2.3 kJ.
func (s Solution) EnergyEU() LabelEnergy {
	ethanol, carbohydrate, polyol := s.gramsPer100mL()
	return LabelEnergy{
		Kilojoules:   units.Kilojoule.Of(checked.Number(kJEthanol*ethanol + kJCarbohydrate*carbohydrate + kJPolyol*polyol)),
		Kilocalories: units.Kilocalorie.Of(checked.Number(kcalEthanol*ethanol + kcalCarbohydrate*carbohydrate + kcalPolyol*polyol)),
	}
}

func (s Solution) gramsPer100mL() (ethanol, carbohydrate, polyol float64) {
	m := s.total()
	if m == 0 {
		return 0, 0, 0
	}
	g := s.density20() / 10 // the whole: g in 100 mL
	polyol = g * (s.extract[Glycerol] / m)
	return g * (s.ethanol / m), g*(s.sugars()/m) - polyol, polyol
}
