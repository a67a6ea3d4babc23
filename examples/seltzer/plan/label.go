package plan

import (
	"math"
	"slices"
	"strings"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// label is what the label says of the whole batch.
func (m *maker) label(say *notes) (l LabelPlan, err error) {
	mean, err := gravity.NewSolution(units.Mass{}, units.Mass{}, units.Mass{})
	if err != nil {
		return l, err
	}
	var sweet []sweetened
	common := slices.ContainsFunc(m.plan.Packs, func(p PackPlan) bool { return p.Own == nil })
	for i, k := range m.batch.packed {
		if common && m.plan.Packs[i].Own != nil {
			continue // it has a label of its own
		}
		if !common && !m.allOwn() && m.recipe.packs[i].Strength != nil {
			continue // another strength than the one printed
		}
		if mean, err = mean.Plus(k.drink); err != nil {
			return l, err
		}
		sweet = append(sweet, sweetened{m.recipe.packs[i].sweet, k.sweet})
	}
	l = LabelPlan{Law: m.req.Label.Law, Serving: m.req.Label.Serving, Tolerance: units.PercentVolume.Of(labelTolerance)}
	l.Category, l.Rules = m.category(l.Law)
	printed := m.batch.strength
	if m.allOwn() { // none has the batch's
		printed = mean.ByVolume().In(units.PercentVolume)
	}
	l.Strength = units.PercentVolume.Of(checked.Number(math.Round(10*printed) / 10))
	l.Within = true
	for i, k := range m.batch.packed {
		if m.plan.Packs[i].Own != nil && m.recipe.packs[i].Strength != nil && !m.allOwn() {
			continue // it has a label of its own
		}
		off := math.Abs(k.drink.ByVolume().In(units.PercentVolume) - l.Strength.In(units.PercentVolume))
		l.Within = l.Within && off <= l.Tolerance.In(units.PercentVolume)
	}
	if !l.Within {
		say.caution("The packs differ in strength by more than the label may: label them apart.")
	}
	n, err := nutrients(l.Law, mean, sweet...)
	if err != nil {
		return l, err
	}
	l.Kilojoules, l.Kilocalories, l.Carbohydrate, l.Sugars, l.Polyols, l.Acids = n.kJ, n.kcal, n.carbohydrate, n.sugars, n.polyols, n.acids
	l.PerServing = units.Kilocalorie.Of(checked.Number(l.Kilocalories.In(units.Kilocalorie) * l.Serving.In(units.Millilitre) / 100))
	for _, d := range []struct {
		into *float64
		kind label.StandardDrink
	}{{&l.DrinksUS, label.DrinkUS}, {&l.UnitsUK, label.UnitUK}, {&l.DrinksAU, label.DrinkAU}} {
		if *d.into, err = d.kind.Count(mean.ByVolume(), l.Serving); err != nil {
			return l, err
		}
	}
	return l, nil
}

// allOwn tells whether every pack has a strength of its own.
func (r *recipe) allOwn() bool {
	return !slices.ContainsFunc(r.packs, func(p packRecipe) bool { return p.Strength == nil })
}

// category is what the law calls the drink, and which rules its label follows. For the
// strength the strictest class is taken throughout.
func (r *recipe) category(law string) (category, rules string) {
	name := r.fermentable.Name()
	of := func(words ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(name, w) })
	}
	const strictest = "±0.3 % vol is the strictest class of annex XII"
	switch {
	case law == "EU" && of("malt"):
		return "any other drink", strictest + "; if it is beer (CN 2203), the law allows more"
	case law == "EU" && of("honey", "juice"):
		return "any other drink", strictest + "; mead, cider and fruit wine are allowed more"
	case law == "EU":
		return "any other drink", strictest
	case of("honey", "juice"):
		return "wine", "27 CFR 24; from 7 % vol its label is under 27 CFR 4, below under FDA's rules for food. ±0.3 % vol is that of " +
			"malt beverages, taken as a measure"
	case of("malt"):
		return "beer", "a malt beverage (27 CFR 7: ±0.3 % vol) only if it has hops, too; otherwise FDA's rules for food (TTB Ruling 2008-3)"
	}
	return "beer of sugar", "for tax beer (27 CFR 25.15), but no malt beverage: FDA's rules for food (TTB Ruling 2008-3), which state " +
		"no tolerance. ±0.3 % vol is that of malt beverages, taken as a measure"
}
