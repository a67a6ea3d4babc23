package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Request is what [Solve] is asked.
type Request struct {
	Water   Profile
	Volume  units.Volume
	Salts   []Stock // what is at hand
	Targets []Target
	Limits  []Bound // what has to hold whatever the targets are
}

// Recipe is the answer to a [Request].
type Recipe struct {
	Doses     []material.Dose // in the order of the salts at hand, those above zero
	Water     Profile         // the water after them, pH unknown where it was
	Off       []Miss          // what each target is off, in the order of the targets
	Deviation float64         // √(sum of weight·(mg/L off)²)
}

// Miss says how far a target is missed.
type Miss struct {
	Ion  Ion
	Have units.MassConcentration
	Off  float64 // mg/L above (positive) or below the target; 0 inside a range
}

// Solve returns the doses of the salts at hand that bring the water nearest to the
// targets, in continuous masses: see [Salter.Solve], whose errors it returns too.
func Solve(r Request) (Recipe, error) {
	s, err := NewSalter(r.Salts, r.Targets, r.Limits...)
	if err != nil {
		return Recipe{}, limit.Named("water.Solve", err)
	}
	if err := s.solve("water.Solve", r.Water, r.Volume); err != nil {
		return Recipe{}, err
	}
	out, err := r.recipe(s.AppendDoses(nil))
	return out, limit.Named("water.Solve", err)
}

func (r *Request) recipe(doses []material.Dose) (Recipe, error) {
	after, err := r.Water.Add(r.Volume, doses...)
	if err != nil {
		return Recipe{}, err
	}
	out := Recipe{Doses: doses, Water: after}
	var sum float64
	for _, t := range r.Targets {
		v := after.ion(t.Ion)
		low, high := t.Low.In(units.MilligramPerLitre), t.High.In(units.MilligramPerLitre)
		off := max(0, v-high) + min(0, v-low)
		sum += orOne(t.Weight) * off * off
		out.Off = append(out.Off, Miss{t.Ion, units.MilligramPerLitre.Of(checked.Number(max(0, v))), off})
	}
	out.Deviation = math.Sqrt(sum)
	return out, nil
}
