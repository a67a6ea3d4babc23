package batch

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// dissolve adds a fermentable. One that no density covers is refused. What yeast leaves of its sugar stands
// as dextrin of the same mass ([Unknowns.Left]). Salts that it holds beyond what is usual of it are
// potassium above all; they stand as charge without a name, so that they count for the pH alone.
func (j *job) dissolve(st *Step) error {
	if err := limit.Check(do, "salts that a fermentable may hold more or less", st.Salts, "mol/kg", 0, 10, aStep); err != nil {
		return err
	}
	was := j.s.amount
	if err := j.add(st, asSugar); err != nil {
		return err
	}
	if part := j.u.Left / 100; part != 0 && st.Kind == Dissolve {
		for _, c := range [...]Component{Sucrose, Glucose, Fructose} {
			left := part * (j.s.amount[c] - was[c])
			j.bring(c, -left)
			j.bring(Dextrin, left*molar[c]/molar[Dextrin])
		}
	}
	if salts := j.u.Wash * st.Salts * st.Mass.In(units.Kilogram); salts != 0 {
		j.bring(Proton, -salts)
		j.bring(Unnamed, salts)
	}
	_, err := j.s.Solution()
	return err
}
