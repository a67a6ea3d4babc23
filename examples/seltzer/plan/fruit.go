package plan

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// fruit is the juice of a wash of sugar. The two are one fermentable to the rest of the plan, at a fixed
// proportion of their masses; they are weighed apart.
type fruit struct {
	name         string // "grape juice"; empty where there is none
	juice, sugar material.Material
	share        float64 // of the mass of both, the juice
}

// setFruit makes the fermentable a mix with the juice that goes in beside it.
func (k *recipe) setFruit() error {
	f := k.req.Fruit
	if f == nil {
		return nil
	}
	name := k.fermentable.Name()
	for _, other := range []string{"juice", "honey", "malt"} {
		if strings.Contains(name, other) {
			return &RequestError{Field: "fruit", Value: "given", Allowed: "left out beside " + name + ", which brings acids of its own; only with sugar"}
		}
	}
	if !isJuice(f.Juice) {
		return &RequestError{Field: "fruit.juice", Value: f.Juice, Allowed: `a juice by its Brix, "grape juice 22 °Bx", "apple juice 12 °Bx" or "juice 9 °Bx"`}
	}
	if err := within("fruit.part_of_sugar", f.Part, units.Percent, 1, 99); err != nil {
		return err
	}
	if k.req.Portions > 1 {
		return &RequestError{Field: "sugar_portions", Value: fmt.Sprint(k.req.Portions), Allowed: "left out with fruit, which goes in at once"}
	}
	j, err := juiceOf("fruit.juice", f.Juice)
	if err != nil {
		return err
	}
	of := func(m material.Material) float64 { return m.Composition().Sugar().In(units.Fraction) }
	part := f.Part.In(units.Fraction)
	share := part * of(k.fermentable) / (part*of(k.fermentable) + (1-part)*of(j))
	kind, _, _ := strings.Cut(f.Juice, "juice ")
	k.fruit = fruit{kind + "juice", j, k.fermentable, share}
	k.fermentable, err = k.fruit.with(j)
	return err
}

// with is the mix with the juice as it is, or with all that it brings.
func (f fruit) with(juice material.Material) (material.Material, error) {
	part := checked.Number(f.share)
	return material.Mix(material.Ingredient{Material: juice, Share: units.Fraction.Of(part)},
		material.Ingredient{Material: f.sugar, Share: units.Fraction.Of(1 - part)})
}

// juiceText is the juice as the request names it, empty where there is none.
func (k *recipe) juiceText() string {
	if k.req.Fruit != nil {
		return k.req.Fruit.Juice
	}
	if isJuice(k.req.Fermentable) {
		return k.req.Fermentable
	}
	return ""
}

// ofJuice is the juice alone, and its part of the mass of the fermentable.
func (k *recipe) ofJuice() (material.Material, float64) {
	if k.fruit.name != "" {
		return k.fruit.juice, k.fruit.share
	}
	return k.fermentable, 1
}

// weighedApart are the weights of juice and sugar, each by the scale. The proportion that results is that of the plan.
func (k *recipe) weighedApart(both Weight) ([]Weight, error) {
	f := &k.fruit
	if f.name == "" {
		return []Weight{both}, nil
	}
	whole := kg(both.Asked)
	parts := []Weight{{What: f.name, For: both.For, Asked: kilograms(f.share * whole)},
		{What: f.sugar.Name(), For: both.For, Asked: kilograms((1 - f.share) * whole)}}
	for i := range parts {
		var err error
		if parts[i].Mass, err = parts[i].Asked.Round(k.req.Scales.Sugar, units.Nearest); err != nil {
			return nil, &RequestError{Field: "scales.sugar", Value: k.req.Scales.Sugar.String(), Allowed: reason(err), Err: err}
		}
		if parts[i].Mass.Decimal().IsZero() {
			return nil, &RequestError{Field: "scales.sugar", Value: k.req.Scales.Sugar.String(), Allowed: "a scale that shows so little " + parts[i].What}
		}
	}
	juice, sugar := kg(parts[0].Mass.Quantity()), kg(parts[1].Mass.Quantity())
	f.share = juice / (juice + sugar)
	mixed, err := f.with(f.juice)
	k.fermentable = mixed
	return parts, err
}
