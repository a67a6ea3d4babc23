package ferment

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units/caution"
	"example.org/zymase/water"
)

// Course is a ferment from its start to its end.
type Course struct {
	Points   []Point // the first before the yeast works, at equilibrium with air
	Cautions caution.List
}

// Course returns the ferment in so many equal steps of sugar used.
//
//   - Source: as [Tank.At].
//   - Range: 1 to 200 steps; otherwise as [Tank.At].
//   - Uncertainty: as [Tank.At].
func (f Tank) Course(steps int) (Course, error) {
	const fn = "ferment.Tank.Course"
	if err := limit.Check(fn, "steps", float64(steps), "", 1, 200, "a limit of the function"); err != nil {
		return Course{}, err
	}
	c, err := f.checked(fn)
	if err != nil {
		return Course{}, limit.Named(fn, err)
	}
	c.like = new(water.Series)
	out := Course{Points: make([]Point, 0, steps+1)}
	for i := range steps + 1 {
		p, err := c.at(float64(i) / float64(steps))
		if err != nil {
			return Course{}, limit.Named(fn, err)
		}
		out.Points = append(out.Points, p)
	}
	out.Cautions = c.cautions(out.Points[0].PH.Value, lowest(out.Points), out.Points[steps].Nitrogen)
	return out, nil
}
