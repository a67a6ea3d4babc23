package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A ferment is what an extract was, by what it turns into and how well that is known.
type fermented struct {
	yield  gravity.Yield
	spread units.Share // of the yield, as a part of itself
	factor float64     // what a refractometer shows for each °P of the wort
}

// yields are the choices of yieldChoice.
var yields = []fermented{
	{gravity.BallingYield(), units.Percent.Of(1), gravity.WortFactor().Value().In(units.One)},
	{gravity.SugarWashYield(gravity.AsSucrose), units.Percent.Of(3), 1},
	{gravity.SugarWashYield(gravity.AsGlucose), units.Percent.Of(3), 1},
	{gravity.SugarWashYield(gravity.AsFructose), units.Percent.Of(3), 1},
}

func yieldChoice() arg[fermented] {
	return picksBy("yield", "what the extract was, and so what it turns into", yields, "malt wort", "sucrose wash", "glucose wash", "fructose wash").
		orOption("malt wort")
}

// figures are what is known of a fermented liquid, but those that it was made of.
func figures(but ...*Input) []result[gravity.Fermentation] {
	type fermentation = gravity.Fermentation
	all := []result[fermentation]{
		from(fermentation.ByVolume, "strength", units.PercentVolume, "ethanol by volume"),
		from(fermentation.ByMass, "strength_by_mass", units.PercentMass, "ethanol by mass"),
		from(fermentation.OriginalExtract, "original_extract", units.DegreePlato, "extract before the ferment, as a hydrometer has it"),
		from(fermentation.ApparentExtract, "apparent_extract", units.DegreePlato, "extract that a hydrometer shows now"),
		from(fermentation.RealExtract, "real_extract", units.DegreePlato,
			"extract that is there now, by mass; in a glucose or fructose wash not on the scale of original_extract"),
		numberFrom(func(f fermentation) float64 { return f.OriginalGravity().SG() }, "original_gravity", "", "specific gravity 20/20 °C before the ferment"),
		numberFrom(func(f fermentation) float64 { return f.Gravity().SG() }, "gravity", "", "specific gravity 20/20 °C now"),
		from(fermentation.ApparentAttenuation, "apparent_attenuation", units.Percent,
			"part of the original extract that a hydrometer no longer shows; above 100 when dry"),
		from(fermentation.RealAttenuation, "real_attenuation", units.Percent, "part of the original extract that is gone, both by mass"),
	}
	var others []result[fermentation]
	for _, r := range all {
		if r.shown.Name != but[0].Name && r.shown.Name != but[1].Name {
			others = append(others, r)
		}
	}
	return others
}

// fermentation is an entry that makes a fermented liquid of two figures and gives the others.
func fermentation[A, B any](name, meaning string, a arg[A], b arg[B], state func(A, B, gravity.Yield) (gravity.Fermentation, error)) *Function {
	return fermentationOf(name, meaning, of3(a, b, yieldChoice(), func(x A, y B, f fermented) (gravity.Fermentation, error) {
		return state(x, y, f.yield)
	}))
}

func fermentationOf(name, meaning string, of arg[gravity.Fermentation]) *Function {
	return entry(name, "a fermented liquid from "+meaning, tabarie+"; Balling 1865 or the balance of a sugar wash", of, figures(of.made.all...)...)
}

// gravityFerments are a fermented liquid from any two figures of it.
func gravityFerments() []*Function {
	original := takes("original_extract", units.DegreePlato, "extract before the ferment, as a hydrometer has it", 0, 50, 12)
	apparent := takes("apparent_extract", units.DegreePlato, "extract that a hydrometer shows now", -10, 30, 2.5)
	realExtract := takes("real_extract", units.DegreePlato, "extract that is there now", 0, 30, 4.3)
	strength := takes("strength", units.PercentVolume, "ethanol by volume", 0, 20, 5)
	brix := takes("brix", units.DegreePlato, "what a refractometer shows now, at 20 °C", 0, 50, 6)
	factor := takesNumber("wort_factor", "", "what the refractometer shows for each °P of the wort; 0: 1.04 for malt wort (1.00 to 1.06 in practice), 1 for "+
		"a sugar wash. An original read with it is to be divided by it first", 0, 1.1, 1.04).or(0)
	return []*Function{
		fermentation("ferment_from_gravities", "its specific gravity before and now",
			takesGravity("original_gravity", "specific gravity before the ferment", 1, 1.23, 1.048), takesGravity("gravity", "specific gravity now", 0.96, 1.13, 1.01),
			func(before, now gravity.Gravity, y gravity.Yield) (gravity.Fermentation, error) {
				return gravity.FromOriginalAndApparent(before.Extract(), now.Extract(), y)
			}),
		fermentation("ferment_from_extracts", "its original and apparent extract", original, apparent, gravity.FromOriginalAndApparent),
		fermentation("ferment_from_real_extract", "its original and real extract", original, realExtract, gravity.FromOriginalAndReal),
		fermentation("ferment_from_strength", "its original extract and strength", original, strength, gravity.FromOriginalAndStrength),
		fermentationOf("ferment_from_refractometer", "its original extract and what a refractometer shows now",
			of4(original, brix, yieldChoice(), factor, func(o, b units.Extract, f fermented, factor float64) (gravity.Fermentation, error) {
				if factor == 0 {
					factor = f.factor
				}
				return gravity.FromOriginalAndBrix(o, b, factor, f.yield)
			})),
		fermentation("ferment_from_apparent_and_strength", "its apparent extract and strength, as a laboratory measures them",
			apparent, strength, gravity.FromApparentAndStrength),
		fermentation("ferment_from_strength_and_real", "its strength and real extract, as a distillation gives them",
			strength, realExtract, gravity.FromStrengthAndReal),
	}
}
