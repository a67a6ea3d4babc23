package label

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Nutrition is what 100 mL of a drink hold, at 20 °C.
type Nutrition struct {
	Energy       EnergyValue
	Ethanol      units.Mass
	Carbohydrate units.Mass // all extract but organic acids; polyols are in it, as the law defines it
	Sugars       units.Mass // of these: sucrose, glucose and fructose; other extract counts as none
	Polyols      units.Mass // of these: glycerol
	OrganicAcids units.Mass // beside them: no line on the label, but energy
}

// NutritionOf returns the facts of 100 mL at 20 °C with the energy of EU law. Extract
// given in °P counts as sugars, since it is not told apart: for beer state the sugars
// from an analysis.
//
//   - Source: Regulation (EU) No 1169/2011 annex I ("carbohydrate" includes polyols, "sugars"
//     excludes them; both read) and annex XIV (factors, read).
//   - Range: every solution.
//   - Uncertainty: that of the composition.
func NutritionOf(s gravity.Solution) Nutrition {
	in := in100mL(s)
	g := func(v float64) units.Mass { return units.Gram.Of(checked.Number(v)) }
	return Nutrition{
		Energy: EnergyEU(s), Ethanol: g(in.ethanol), Carbohydrate: g(in.carbohydrate + in.polyol), Sugars: g(in.sugars),
		Polyols: g(in.polyol), OrganicAcids: g(in.acid),
	}
}

// RoundEU returns the facts as an EU label rounds them: energy to whole kJ and kcal;
// carbohydrate, sugars and polyols to 1 g from 10 g up, to 0.1 g below, and to nothing
// up to 0.5 g.
//
//   - Source: European Commission, Guidance document on tolerances for nutrient values
//     declared on a label (2012), table 4 (recalled from memory). It also allows the
//     content to differ from the label by 2 g below 10 g and 20 % from 10 to 40 g.
//   - Range: every [Nutrition].
func (n Nutrition) RoundEU() Nutrition {
	n.Energy.Kilojoules = units.Kilojoule.Of(checked.Number(math.Round(n.Energy.Kilojoules.In(units.Kilojoule))))
	n.Energy.Kilocalories = units.Kilocalorie.Of(checked.Number(math.Round(n.Energy.Kilocalories.In(units.Kilocalorie))))
	for _, m := range []*units.Mass{&n.Carbohydrate, &n.Sugars, &n.Polyols} {
		*m = roundNutrient(*m)
	}
	return n
}

func roundNutrient(m units.Mass) units.Mass {
	g := m.In(units.Gram)
	switch {
	case g <= 0.5:
		g = 0
	case g < 10:
		g = math.Round(10*g) / 10
	default:
		g = math.Round(g)
	}
	return units.Gram.Of(checked.Number(g))
}
