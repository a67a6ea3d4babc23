package water

import (
	"fmt"
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Binding is a limit or a stock that holds the optimum back.
type Binding struct {
	Name string  // "sodium at most 20 mg/L", "stock of gypsum"
	Cost float64 // how much the square of the deviation falls for each unit that it gives way, at first, (mg/L)² by the unit
	Unit string  // of the unit that gives way
}

// Worth says what a salt at hand is worth.
type Worth struct {
	Salt    material.Material
	Used    bool
	Without units.MassConcentration // the deviation, were the salt not at hand; zero if it is needed
	Needed  bool                    // without it the limits could not be met
}

// Explanation says why a recipe is as it is.
type Explanation struct {
	Recipe  Recipe
	Binding []Binding
	Worth   []Worth // in the order of the salts at hand
	Reasons []string
}

// Explain solves the request as [Request.Solve] does and says which limits bind, what each
// salt is worth, and why a target is missed.
func (r Request) Explain() (Explanation, error) {
	s, err := r.solved("water.Request.Explain")
	if err != nil {
		return Explanation{}, err
	}
	out := Explanation{Binding: s.binding()}
	if out.Recipe, err = r.recipe(s.doses()); err != nil {
		return Explanation{}, limit.Named("water.Request.Explain", err)
	}
	for j, stock := range r.Salts {
		w := Worth{Salt: stock.Salt, Used: s.x[j] > 0, Without: out.Recipe.Deviation}
		if w.Used {
			w.Without, w.Needed = r.without(j)
		}
		out.Worth = append(out.Worth, w)
	}
	for i, m := range out.Recipe.Off {
		if math.Abs(m.off()) > negligible {
			out.Reasons = append(out.Reasons, r.reason(m, r.Targets[i].High, len(out.Binding) > 0))
		}
	}
	return out, nil
}

// binding lists what has a price, limits after stocks.
func (s *salter) binding() []Binding {
	var out []Binding
	q := s.qp
	for i, j := range s.capped {
		if q.Y[i] > negligible {
			out = append(out, Binding{"stock of " + s.salts[j].Salt.Name(), 2 * q.Y[i] / s.scale[j] / s.litres, "g"})
		}
	}
	first := len(s.capped) + len(s.ranged)
	for i, h := range s.held {
		if y := q.Y[first+i]; y > negligible {
			l := &s.limits[h.limit]
			name := fmt.Sprintf("%s at most %.4g %s", l.name, l.high, l.unit)
			if h.floor() {
				name = fmt.Sprintf("%s at least %.4g %s", l.name, l.low, l.unit)
			}
			out = append(out, Binding{name, 2 * y / h.norm, l.unit})
		}
	}
	return out
}

// without returns the deviation with all salts but one, or that it is needed.
func (r Request) without(j int) (deviation units.MassConcentration, needed bool) {
	rest := append(append([]Stock(nil), r.Salts[:j]...), r.Salts[j+1:]...)
	r.Salts = rest
	var out Recipe
	var err error
	if len(rest) > 0 {
		out, err = r.Solve()
	} else {
		out, err = r.recipe(nil)
	}
	return out.Deviation, err != nil
}

// reason says why a target is missed.
func (r *Request) reason(m Miss, most units.MassConcentration, bound bool) string {
	brings := false
	for _, s := range r.Salts {
		brings = brings || yieldOf(s.Salt).of(m.Ion) > 0
	}
	text := fmt.Sprintf("%s %+.1f mg/L off: ", m.Ion, m.off())
	switch {
	case r.Water.ion(m.Ion) > most.In(units.MilligramPerLitre): // salts only add
		return text + "the water itself holds too much; dilute it with pure water"
	case !brings:
		return text + "no salt at hand brings it"
	case bound:
		return text + "a limit or a stock holds the doses back"
	case m.off() < 0:
		return text + "each salt that brings it brings another ion above its target"
	}
	return text + "it comes with ions that other targets want"
}
