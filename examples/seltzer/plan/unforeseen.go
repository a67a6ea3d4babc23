package plan

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// unforeseen tells why the pH of the ferment is not foreseen; it is empty where it is. The
// charge balance knows the acids that yeast makes and the water, and those of an apple, a grape, honey and
// malt; of another fruit it must be told.
func (r *recipe) unforeseen() string {
	if !r.brings.some || r.brings.known {
		return ""
	}
	name := r.fermentable.Name()
	return "The pH of a wash of " + name + " is not foreseen: which acids and minerals it brings is not known. Name the fruit (apple " +
		"juice, grape juice), or measure pH and titratable acidity and give them with its acids (must.pH, must.titratable_acidity, " +
		"must.acids). Measure it with a meter, before pitching and in the ferment."
}

// amino is the nitrogen of the amino acids that the wash brings.
func (m *maker) amino() units.Mass {
	return units.Gram.Of(checked.Number(m.brings.amino * m.batch.share * kg(m.batch.wash.Mass())))
}
