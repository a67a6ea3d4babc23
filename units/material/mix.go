package material

import (
	"math"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Ingredient is a material with its share of a mix.
type Ingredient struct {
	Material Material
	Share    units.Share // of the mass weighed
}

// Mix returns materials at fixed shares of the mass weighed as one. Its spread is that of
// the sugar, its evidence that of the part that is known least. The shares must add up to
// 100 % within 1e-6 %.
//
// Errors: a [*units.RangeError] for no ingredients, a negative share or another sum.
func Mix(ingredients ...Ingredient) (Material, error) {
	const fn, source = "material.Mix", "shares of a whole"
	var f facts
	var sum, variance float64
	var names []string
	for i, p := range ingredients {
		of, w := p.Material.facts(), p.Share.In(units.Percent)/100
		if err := limit.Check(fn, "share", p.Share.In(units.Percent), "%", 0, 100, source); err != nil {
			return Material{}, err
		}
		sum += w
		f.brings.add(of.brings, w)
		u := w * of.spread * of.brings.Sugar().In(units.Percent) / 100
		variance += u * u
		names = append(names, of.name)
		f.cautions = f.cautions.With(of.cautions...)
		if i == 0 || of.evidence.Grade < f.evidence.Grade {
			f.evidence = of.evidence
		}
	}
	if err := limit.Check(fn, "sum of the shares", 100*sum, "%", 100-1e-6, 100+1e-6, source); err != nil {
		return Material{}, err
	}
	if len(ingredients) == 1 {
		return ingredients[0].Material, nil
	}
	if sugar := f.brings.Sugar().In(units.Percent) / 100; sugar > 0 {
		f.spread = math.Sqrt(variance) / sugar
	}
	f.name = strings.Join(names, " and ")
	return Material{&f}, nil
}

// add adds so many times what another composition brings.
func (c *Composition) add(o Composition, times float64) {
	more := func(sum *units.Share, of units.Share) { *sum = sum.Plus(share(times * of.In(units.Percent) / 100)) }
	var parts []units.Share
	for _, of := range o.parts() {
		parts = append(parts, *of)
	}
	for _, sum := range c.parts() {
		more(sum, parts[0])
		parts = parts[1:]
	}
	more(&c.Alkalinity, o.Alkalinity)
	more(&c.Acidity, o.Acidity)
	more(&c.OfMalt, o.OfMalt)
}
