package plan

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
)

// grown parts what the yield leaves beside ethanol, gas and glycerol into the yeast that the
// nitrogen carries and the rest. The yield of the plan is a measured one, with what a ferment
// loses and makes besides; the balance of atoms counts neither, so that it has more ethanol:
// both stand in the plan, as the truth lies between.
func (m *maker) grown(left float64) error {
	b := &m.plan.Balance
	if m.unforeseen() != "" { // its nitrogen is not known
		b.Out = append(b.Out, Line{"yeast grown, dry, and losses", kilograms(left)})
		return nil
	}
	end, err := m.course.At(units.Percent.Of(100))
	if err != nil {
		return err
	}
	yeast := min(kg(end.Balance.DryYeast), left)
	b.Out = append(b.Out, Line{"yeast grown, dry, by its nitrogen", kilograms(yeast)}, Line{"other products, and losses", kilograms(left - yeast)})
	most := ferment.UsualMetabolism()
	b.YeastLow = kilograms(yeast * most.LeanNitrogen.In(units.Fraction) / most.FullNitrogen.In(units.Fraction))
	more := kg(end.Balance.Ethanol) / kg(m.batch.base.Ethanol())
	b.ByAtoms = units.PercentVolume.Of(checked.Number(more * m.batch.strength))
	return nil
}
