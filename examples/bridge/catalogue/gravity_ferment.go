package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// yieldOf is the yield that the choice of yieldInput names.
func yieldOf(choice float64) gravity.Yield {
	switch choice {
	case 0:
		return gravity.BallingYield()
	case 1:
		return gravity.SugarWashYield(gravity.AsSucrose)
	case 2:
		return gravity.SugarWashYield(gravity.AsGlucose)
	default:
		return gravity.SugarWashYield(gravity.AsFructose)
	}
}

// yieldSpread is how well the yield of that choice is known, as a part of itself.
func yieldSpread(choice float64) units.Share {
	if choice == 0 {
		return units.Percent.Of(1)
	}
	return units.Percent.Of(3)
}

// A figure is an output with what it is of a fermented liquid.
type figure struct {
	output Output
	of     func(gravity.Fermentation) float64
}

func figures() []figure {
	platoOf := func(e units.Extract) float64 { return e.In(units.DegreePlato) }
	return []figure{
		{out("strength", units.PercentVolume, "ethanol by volume"), func(f gravity.Fermentation) float64 { return f.ByVolume().In(units.PercentVolume) }},
		{out("strength_by_mass", units.PercentMass, "ethanol by mass"), func(f gravity.Fermentation) float64 { return f.ByMass().In(units.PercentMass) }},
		{out("original_extract", units.DegreePlato, "extract before the ferment, as a hydrometer has it"), func(f gravity.Fermentation) float64 { return platoOf(f.OriginalExtract()) }},
		{out("apparent_extract", units.DegreePlato, "extract that a hydrometer shows now"), func(f gravity.Fermentation) float64 { return platoOf(f.ApparentExtract()) }},
		{out("real_extract", units.DegreePlato, "extract that is there now, by mass; in a glucose or fructose wash not on the scale of original_extract"), func(f gravity.Fermentation) float64 { return platoOf(f.RealExtract()) }},
		{pure("original_gravity", "", "specific gravity 20/20 °C before the ferment"), func(f gravity.Fermentation) float64 { return f.OriginalGravity().SG() }},
		{pure("gravity", "", "specific gravity 20/20 °C now"), func(f gravity.Fermentation) float64 { return f.Gravity().SG() }},
		{pure("apparent_attenuation", "%", "part of the original extract that a hydrometer no longer shows; above 100 when dry"), gravity.Fermentation.ApparentAttenuation},
		{pure("real_attenuation", "%", "part of the original extract that is gone, both by mass"), gravity.Fermentation.RealAttenuation},
	}
}

// fermentation is an entry that makes a fermented liquid of two figures and
// gives the others.
func fermentation(name, meaning string, a, b Input, state func(a, b float64, y gravity.Yield) (gravity.Fermentation, error)) Function {
	return fermentationWith(name, meaning, a, b, nil, func(in []float64) (gravity.Fermentation, error) {
		return state(in[0], in[1], yieldOf(in[2]))
	})
}

// fermentationWith takes more inputs, after the yield.
func fermentationWith(name, meaning string, a, b Input, more []Input, state func(in []float64) (gravity.Fermentation, error)) Function {
	f := Function{
		Name:    name,
		Meaning: "a fermented liquid from " + meaning,
		Source:  tabarie + "; Balling 1865 or the balance of a sugar wash",
		Inputs: append([]Input{
			a, b,
			choice("yield", "what the extract was, and so what it turns into", "malt wort", "sucrose wash", "glucose wash", "fructose wash").orOption("malt wort"),
		}, more...),
	}
	var others []figure
	for _, g := range figures() {
		if g.output.Name != a.Name && g.output.Name != b.Name {
			others = append(others, g)
			f.Outputs = append(f.Outputs, g.output)
		}
	}
	f.call = func(in, out []float64) error {
		liquid, err := state(in)
		if err != nil {
			return err
		}
		for i, g := range others {
			out[i] = g.of(liquid)
		}
		return nil
	}
	return f
}

// gravityFerments are a fermented liquid from any two figures of it.
func gravityFerments() []Function {
	original := in("original_extract", units.DegreePlato, "extract before the ferment, as a hydrometer has it", 0, 50, 12)
	apparent := in("apparent_extract", units.DegreePlato, "extract that a hydrometer shows now", -10, 30, 2.5)
	realExtract := in("real_extract", units.DegreePlato, "extract that is there now", 0, 30, 4.3)
	strength := in("strength", units.PercentVolume, "ethanol by volume", 0, 20, 5)
	brix := in("brix", units.DegreePlato, "what a refractometer shows now, at 20 °C", 0, 50, 6)
	p := func(v float64) units.Extract { return as(units.DegreePlato, v) }
	s := func(v float64) units.StrengthByVolume { return as(units.PercentVolume, v) }
	og := gravityInput("original_gravity", "specific gravity before the ferment", 1, 1.23, 1.048)
	fg := gravityInput("gravity", "specific gravity now", 0.96, 1.13, 1.01)
	return []Function{
		fermentation("ferment_from_gravities", "its specific gravity before and now", og, fg,
			func(a, b float64, y gravity.Yield) (gravity.Fermentation, error) {
				before, err := gravity.FromSG(a)
				if err != nil {
					return gravity.Fermentation{}, err
				}
				now, err := gravity.FromSG(b)
				if err != nil {
					return gravity.Fermentation{}, err
				}
				return gravity.FromOriginalAndApparent(before.Extract(), now.Extract(), y)
			}),
		fermentation("ferment_from_extracts", "its original and apparent extract", original, apparent,
			func(a, b float64, y gravity.Yield) (gravity.Fermentation, error) {
				return gravity.FromOriginalAndApparent(p(a), p(b), y)
			}),
		fermentation("ferment_from_real_extract", "its original and real extract", original, realExtract,
			func(a, b float64, y gravity.Yield) (gravity.Fermentation, error) {
				return gravity.FromOriginalAndReal(p(a), p(b), y)
			}),
		fermentation("ferment_from_strength", "its original extract and strength", original, strength,
			func(a, b float64, y gravity.Yield) (gravity.Fermentation, error) {
				return gravity.FromOriginalAndStrength(p(a), s(b), y)
			}),
		fermentationWith("ferment_from_refractometer", "its original extract and what a refractometer shows now", original, brix,
			[]Input{number("wort_factor", "", "what the refractometer shows for each °P of the wort; 0: 1.04 for malt wort (1.00 to 1.06 in practice), 1 for "+
				"a sugar wash. An original read with it is to be divided by it first", 0, 1.1, 1.04).or(0)},
			func(in []float64) (gravity.Fermentation, error) {
				factor := in[3]
				switch malt := in[2] == 0; {
				case factor == 0 && malt:
					factor = gravity.WortFactor().Value().In(units.One)
				case factor == 0:
					factor = 1
				}
				return gravity.FromOriginalAndBrix(p(in[0]), p(in[1]), factor, yieldOf(in[2]))
			}),
		fermentation("ferment_from_apparent_and_strength", "its apparent extract and strength, as a laboratory measures them", apparent, strength,
			func(a, b float64, y gravity.Yield) (gravity.Fermentation, error) {
				return gravity.FromApparentAndStrength(p(a), s(b), y)
			}),
		fermentation("ferment_from_strength_and_real", "its strength and real extract, as a distillation gives them", strength, realExtract,
			func(a, b float64, y gravity.Yield) (gravity.Fermentation, error) {
				return gravity.FromStrengthAndReal(s(a), p(b), y)
			}),
	}
}
