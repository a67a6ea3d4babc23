package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A progress is how far a wash has come, with its floor as measured.
type progress struct {
	gravity.Progress
	floor units.MeasuredNumber
}

func washProgress(original units.Extract, sg float64, f fermented, minerals units.MassConcentration) (progress, error) {
	start, err := gravity.FromOriginalAndApparent(original, original, f.yield)
	if err != nil {
		return progress{}, err
	}
	wort := start.Wort()
	floor, err := wort.MeasuredFloor(f.yield, f.spread, minerals, minerals)
	if err != nil {
		return progress{}, err
	}
	dry, _, err := wort.Dry(f.yield)
	if err != nil {
		return progress{}, err
	}
	g, err := gravity.FromSG(sg - (floor.Value().In(units.One) - dry.Gravity().SG())) // without the minerals
	if err != nil {
		return progress{}, err
	}
	p, err := wort.At(g, f.yield)
	return progress{p, floor}, err
}

func strengthWithin(original, now, uncertainty float64, f fermented) (units.MeasuredStrength, error) {
	u := as(units.One, uncertainty)
	og, err := units.Measure(as(units.One, original), u)
	if err != nil {
		return units.MeasuredStrength{}, err
	}
	fg, err := units.Measure(as(units.One, now), u)
	if err != nil {
		return units.MeasuredStrength{}, err
	}
	return gravity.StrengthByHydrometer(og, fg, f.yield, f.spread, 0)
}

// gravityMeasurements are what comes of a reading.
func gravityMeasurements() []*Function {
	gram := func(name, meaning string, min, example float64) arg[units.Mass] {
		return takes(name, units.Gram, meaning, min, 1e5, example)
	}
	return []*Function{
		entry("density_from_pycnometer", "density of a liquid from three weighings of one flask",
			"ratio of two weights in air of 1.2 kg/m³ (OIML D 28); Bettin & Spieweck 1990",
			of4(gram("empty", "the dry flask", 0, 30), gram("with_water", "the flask full of water", 1, 79.87),
				gram("with_liquid", "the flask full of the liquid, at the same temperature", 1, 80.3), temperatureOf("flask", 0, 100).or(20), gravity.Pycnometer),
			densityOf("liquid")),
		entry("sg_from_density", "specific gravity 20/20 °C from a density taken at another temperature", tabarie,
			of3(takes("density", units.KilogramPerCubicMetre, "density of the liquid, in vacuum", 950, 1300, 1040), temperatureOf("liquid", 0, 100).or(20),
				takes("strength", units.PercentVolume, "ethanol of the liquid, a guess within 1 % vol", 0, 23, 0).or(0),
				func(d units.Density, t units.Temperature, s units.StrengthByVolume) (gravity.Gravity, error) {
					return gravity.FromDensityAt(d, s, t)
				}),
			numberFrom(gravity.Gravity.SG, "gravity", "", "specific gravity 20/20 °C, in vacuum"),
			from(gravity.Gravity.Extract, "extract", units.DegreePlato, "apparent extract")),
		entry("strength_from_boiling_off", "strength from the gravity before and after the ethanol is boiled off and the volume made up", tabarie,
			of2(takesGravity("gravity_before", "specific gravity as it is", 0.9, 1.2, 1.0),
				takesGravity("gravity_after", "specific gravity after boiling, made up with water", 0.99, 1.3, 1.0065), gravity.SpiritIndication),
			gives("strength", units.PercentVolume, "ethanol by volume")),
		entry("strength_from_distillate", "strength of a sample from its distillate", r22,
			of4(takes("sample", units.Millilitre, "volume of the sample, at 20 °C", 1, 1e6, 100),
				takes("distillate", units.Millilitre, "volume of the distillate made up with water, at 20 °C", 1, 1e6, 100),
				takes("density", units.KilogramPerCubicMetre, "density of the distillate, in vacuum", 780, 1000, 991.5),
				temperatureOf("distillate, for its density", -20, 40).or(20), gravity.DistillateStrength),
			gives("strength", units.PercentVolume, "ethanol of the sample by volume")),
		entry("wash_progress", "what sugar is left in a wash by its gravity now, and what gas that would make; bottle only at the dry end",
			tabarie+"; Balling 1865 or the balance of a sugar wash",
			of4(takes("original_extract", units.DegreePlato, "extract before the ferment, as a hydrometer has it, without minerals", 0.5, 40, 7.5),
				readsNumber(gravityInput("gravity", "specific gravity now", 0.96, 1.18, 1.0)), yieldChoice().orOption("sucrose wash"),
				takes("minerals", units.GramPerLitre, "salts, nutrient and buffer beside the extract; in most sugar washes 0.3 to 0.8", 0, 20, 0.5).or(0),
				washProgress),
			numberFrom(func(p progress) float64 { return p.floor.Value().In(units.One) }, "dry_gravity", "",
				"specific gravity 20/20 °C when all of it is used, with the minerals"),
			from(func(p progress) units.Share { return p.Part }, "used", units.Percent, "part of the extract that is used"),
			from(func(p progress) units.MassConcentration {
				return as(units.GramPerLitre, p.Left.In(units.Gram)/p.Liquid.VolumeAt20().In(units.Litre))
			}, "left", units.GramPerLitre, "extract that is left, in a litre"),
			from(func(p progress) units.CarbonDioxideContent { return p.CO2Content }, "carbon_dioxide", units.GramCO2PerLitre,
				"the most CO2 that it can still make, in a litre"),
			from(func(p progress) units.StrengthByVolume { return p.Liquid.ByVolume() }, "strength", units.PercentVolume, "strength now"),
			numberFrom(func(p progress) float64 { return p.floor.Uncertainty().In(units.One) }, "dry_gravity_uncertainty", "",
				"standard uncertainty of dry_gravity, k = 1: yield, what yeast leaves, minerals, formulas; a hydrometer adds its own")),
		heavy(entry("strength_uncertainty", "strength from two gravities with its standard uncertainty", "JCGM 100:2008, GUM; "+tabarie,
			of4(readsNumber(gravityInput("original_gravity", "specific gravity before the ferment", 1, 1.2, 1.048)),
				readsNumber(gravityInput("gravity", "specific gravity now", 0.97, 1.12, 1.01)),
				takesNumber("uncertainty", "", "standard uncertainty of each gravity", 1e-6, 0.02, 0.001).or(0.001), yieldChoice(), strengthWithin),
			from(units.MeasuredStrength.Value, "strength", units.PercentVolume, "ethanol by volume"),
			numberFrom(func(v units.MeasuredStrength) float64 { return v.Uncertainty().In(units.PercentagePoint) }, "strength_uncertainty", "% vol",
				"its standard uncertainty, k = 1; the yield counts with 1 % for malt, 3 % for a wash"))),
	}
}
