package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Request is what [Request.Solve] is asked.
type Request struct {
	Water   Profile
	Volume  units.Volume
	Salts   []Stock // what is at hand
	Targets []Target
	Limits  []Bound // what has to hold whatever the targets are
}

// Recipe is the answer to a [Request].
type Recipe struct {
	Doses     []material.Dose         // in the order of the salts at hand, those above zero
	Water     Profile                 // the water after them, pH unknown where it was
	Off       []Miss                  // how far each target is missed, in the order of the targets
	Deviation units.MassConcentration // root of the sum of weight·(what it is off)²
}

// Miss says how far a target is missed: Have.Minus(Want), below zero where there is too little.
type Miss struct {
	Ion  Ion
	Have units.MassConcentration
	Want units.MassConcentration // the nearest that the target asks for; Have itself inside a range
}

// off is in mg/L.
func (m Miss) off() float64 { return m.Have.Minus(m.Want).In(units.MilligramPerLitre) }

// Solve returns the doses of the salts at hand that bring the water nearest to the
// targets, in continuous masses. Nearest means the least sum of weight·(mg/L off)², where
// anything inside a range is not off at all. Where several sets of doses reach the same
// optimum, the one with the fewest salts is taken, then the one of least mass. The result
// depends on nothing but the request.
//
// Errors are a [*units.RangeError] for a volume that is not positive, more than 16 salts,
// targets or limits, one named twice, a weight that is not positive or a range upside down,
// and an [*UnreachableError] where no doses meet the limits.
//
//   - Source: a convex quadratic program, solved by complementary pivots (C. E.
//     Lemke, Management Science 11 (1965) 681).
func (r Request) Solve() (Recipe, error) {
	s, err := r.solved("water.Request.Solve")
	if err != nil {
		return Recipe{}, err
	}
	out, err := r.recipe(s.doses())
	return out, limit.Named("water.Request.Solve", err)
}

func milligrams(perLitre float64) units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(perLitre))
}

func (r *Request) recipe(doses []material.Dose) (Recipe, error) {
	after, err := r.Water.Add(r.Volume, doses...)
	if err != nil {
		return Recipe{}, err
	}
	out := Recipe{Doses: doses, Water: after}
	var sum float64
	for _, t := range r.Targets {
		v := max(0, after.ion(t.Ion))
		m := Miss{t.Ion, milligrams(v), milligrams(min(max(v, t.Low.In(units.MilligramPerLitre)), t.High.In(units.MilligramPerLitre)))}
		sum += orOne(t.Weight) * m.off() * m.off()
		out.Off = append(out.Off, m)
	}
	out.Deviation = milligrams(math.Sqrt(sum))
	return out, nil
}
