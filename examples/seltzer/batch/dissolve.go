package batch

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// dissolve adds a fermentable. One that no density covers is refused. Salts that it holds beyond what is usual of it are
// potassium above all; they stand as charge without a name, so that they count for the pH alone.
func (j *job) dissolve(st *Step) error {
	if err := limit.Check(do, "salts that a fermentable may hold more or less", st.Salts, "mol/kg", 0, 10, aStep); err != nil {
		return err
	}
	if err := j.add(st, asSugar); err != nil {
		return err
	}
	if salts := j.u.Wash * st.Salts * st.Mass.In(units.Kilogram); salts != 0 {
		j.bring(Proton, -salts)
		j.bring(Unnamed, salts)
	}
	_, err := j.s.Solution()
	return err
}
