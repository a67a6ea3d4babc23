package plan

import "example.org/zymase/units"

// EndName returns what the gravity of a finished ferment is called, and what the batch is then: "dry floor" and
// "dry", or "planned end" and "at the planned end" where the yeast is to leave sugar.
func (r Request) EndName() (floor, is string) {
	if a := r.Yeast.Attenuation; a != nil && a.In(units.Percent) < 100 {
		return "planned end", "at the planned end"
	}
	return "dry floor", "dry"
}

func (m *maker) floorName() string {
	name, _ := m.req.EndName()
	return name
}
