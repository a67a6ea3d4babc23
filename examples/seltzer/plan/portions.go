package plan

import (
	"fmt"
	"slices"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"

	"github.com/shopspring/decimal"
)

// usedBefore is the part of the sugar put in so far that is used when the next portion goes in
// (common practice, no source: the ferment is not to stand still for want of it, nor to meet all at once).
const usedBefore = 2. / 3

// portionsIn is how many portions are in when a part of all the sugar is used.
func (r *recipe) portionsIn(used float64) int {
	n := r.portions()
	for k := 1; k < n; k++ {
		if used*r.attenuation().In(units.Fraction) < r.portionAt(k) {
			return k
		}
	}
	return n
}

// portionAt is the part of all the fermentable sugar that is used when portion k, counted from 0, goes in.
func (r *recipe) portionAt(k int) float64 { return usedBefore * float64(k) / float64(r.portions()) }

// joined is a wash of the first portion with the others that make it so many.
func (m *maker) joined(first gravity.Solution, portions int) (gravity.Solution, error) {
	if portions < 2 {
		return first, nil
	}
	return sugar.Of(m.fermentable).AddTo(first, m.later(portions-1))
}

// later is the fermentable of so many of the later portions.
func (m *maker) later(portions int) units.Mass {
	if portions == 0 {
		return units.Mass{}
	}
	return kilograms(m.batch.late * float64(portions) / float64(m.portions()-1))
}

// portionsAt is how many portions are in when a reading is taken.
func (m *maker) portionsAt(r Reading) int {
	if r.Portions != nil {
		return *r.Portions
	}
	return 1 // all of it, or the wash itself
}

// portionsRead refuses readings that do not tell how many portions are in.
func (m *maker) portionsRead(rs []Reading) error {
	n, had := m.portions(), 1
	for i, r := range rs {
		field := fmt.Sprintf("readings[%d].portions", i)
		switch {
		case n == 1 && r.Portions != nil:
			return &RequestError{Field: field, Value: fmt.Sprint(*r.Portions), Allowed: "left out where the sugar goes in at once"}
		case n > 1 && r.Portions == nil && r.After > 0:
			return &RequestError{Field: field, Value: "missing", Allowed: fmt.Sprintf("how many of the %d portions are in", n)}
		case r.Portions != nil && !(*r.Portions >= had && *r.Portions <= n):
			return &RequestError{Field: field, Value: fmt.Sprint(*r.Portions), Allowed: fmt.Sprintf("%d to %d", had, n)}
		case r.Portions != nil && r.After == 0 && *r.Portions > 1:
			return &RequestError{Field: field, Value: fmt.Sprint(*r.Portions), Allowed: "1 in the wash itself, as the yeast is pitched into the first portion"}
		}
		had = m.portionsAt(r)
	}
	return nil
}

// portionGravities are the gravity of the first portion, and those by which the others go in.
func (m *maker) portionGravities(g *GravityPlan, say *notes) error {
	var err error
	if g.First, err = m.gravityWith(0, 1); err != nil {
		return err
	}
	n := m.portions()
	for k := 1; k < n; k++ {
		shown, err := m.gravityWith(m.portionAt(k)/m.attenuation().In(units.Fraction), k)
		if err != nil {
			return err
		}
		mass := kilograms(m.batch.late / float64(n-1)) // each alike
		weighed, err := mass.Round(m.req.Scales.Sugar, units.Nearest)
		if err != nil {
			return err
		}
		g.Portions = append(g.Portions, PortionPlan{
			Used:    units.Fraction.Of(checked.Number(m.portionAt(k))),
			Gravity: shown, Sugar: Weight{What: m.fermentable.Name(), For: fmt.Sprintf("fermenter, portion %d", k+1), Mass: weighed, Asked: mass},
		})
	}
	if err := m.splitSugar(g.Portions[0].Sugar, say); err != nil {
		return err
	}
	say.caution("Sugar strewn into a fermenting wash makes it foam over: dissolve each portion in a little boiled water taken from " +
		"the batch's own, or in drawn wash, and pour it in slowly.")
	return nil
}

// splitSugar lists the sugar by its portions: the kettle takes what the others leave of the whole.
func (m *maker) splitSugar(portion Weight, say *notes) error {
	more := int64(m.portions() - 1)
	whole := &say.weighed[slices.IndexFunc(say.weighed, func(w Weight) bool { return w.What == portion.What })]
	rest, err := whole.Mass.Unit().Exact(whole.Mass.Decimal().Sub(portion.Mass.Decimal().Mul(decimal.NewFromInt(more))))
	if err != nil {
		return err
	}
	whole.Mass, whole.Asked = rest, kilograms(m.batch.fermentable-m.batch.late)
	for k := range more {
		portion.For = fmt.Sprintf("fermenter, portion %d", k+2)
		say.weigh(portion)
	}
	return nil
}
