package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// gravityExtracts are extract and strength before and after the ferment.
func gravityExtracts() []*Function {
	const balling = "C. J. N. Balling, Die Gährungschemie (1865)"
	strength := takes("strength_by_mass", units.PercentMass, "ethanol in the beer", 0, 20, 3.8)
	left := takes("real_extract", units.DegreePlato, "extract left in the beer, without the ethanol", 0, 40, 4.5)
	original := takes("original_extract", units.DegreePlato, "extract of the wort", 0, 40, 12)
	return []*Function{
		entry("original_extract", "original extract of a malt beer from its strength and real extract", balling,
			of2(strength, left, rival.OriginalExtractBalling),
			gives("original_extract", units.DegreePlato, "extract of the wort")),
		entry("strength_from_extracts", "strength of a malt beer from its original and real extract", balling,
			of2(original, left, rival.StrengthBalling),
			gives("strength_by_mass", units.PercentMass, "ethanol in the beer")),
		entry("real_extract", "real extract of a malt beer from its original extract and strength", balling,
			of2(original, strength, rival.RealExtractBalling),
			gives("real_extract", units.DegreePlato, "extract left in the beer, without the ethanol")),
	}
}

// A washed is a wash of one sugar, and what comes of it.
type washed struct {
	wash, dry gravity.Solution
	volume    units.Volume
	made      gravity.Fermented
}

func washFromSugar(sugar, water units.Mass, kind gravity.Sugar, t units.Temperature) (w washed, err error) {
	s, err := gravity.NewSolution(water, units.Mass{}, units.Mass{})
	if err != nil {
		return w, err
	}
	if w.wash, err = s.AddExtract(kind, sugar); err != nil {
		return w, err
	}
	if w.volume, err = w.wash.Volume(t); err != nil {
		return w, err
	}
	w.dry, w.made, err = w.wash.Dry(gravity.SugarWashYield(kind))
	return w, err
}

// standardDrinks are a number of them, and as a label states it.
func standardDrinks(v units.Volume, strength units.StrengthByVolume, of label.StandardDrink) (pair[float64, float64], error) {
	n, err := of.Count(strength, v)
	if err != nil {
		return pair[float64, float64]{}, err
	}
	label, err := label.RoundDrinks(n)
	return pair[float64, float64]{n, label}, err
}

func sgOf(s gravity.Solution) float64 { return s.Gravity().SG() }

func apparentOf(s gravity.Solution) units.Extract { return s.Gravity().Extract() }

// gravityDrinks are a wash and a drink as a whole.
func gravityDrinks() []*Function {
	type count = pair[float64, float64]
	type drink = pair[gravity.Solution, units.Density]
	return []*Function{
		entry("wash_from_sugar", "gravity, volume and dry end of a wash of sugar and water", tabarie+"; French order of 3 May 1996 art. 2 for the yield",
			of4(takes("sugar_mass", units.Kilogram, "sugar in the wash", 0, 1e6, 4.5), takes("water_mass", units.Kilogram, "water in the wash", 0.001, 1e6, 55),
				sugarChoice("which sugar; dextrose as the anhydrous sugar"), temperatureOf("wash, for its volume", 0, 100).or(20), washFromSugar),
			numberFrom(func(w washed) float64 { return sgOf(w.wash) }, "gravity", "", "specific gravity 20/20 °C of the wash"),
			from(func(w washed) units.Extract { return apparentOf(w.wash) }, "extract", units.DegreePlato, "extract that a hydrometer shows in the wash"),
			from(func(w washed) units.Volume { return w.volume }, "volume", units.Litre, "volume of the wash at its temperature"),
			numberFrom(func(w washed) float64 { return sgOf(w.dry) }, "dry_gravity", "", "specific gravity 20/20 °C when all sugar is used"),
			from(func(w washed) units.Extract { return apparentOf(w.dry) }, "dry_extract", units.DegreePlato, "apparent extract when all sugar is used; below zero"),
			from(func(w washed) units.StrengthByVolume { return w.dry.ByVolume() }, "strength", units.PercentVolume, "strength when all sugar is used"),
			from(func(w washed) units.Mass { return w.made.CO2 }, "carbon_dioxide", units.Gram, "CO2 given off")),
		entry("drink_gravity", "what a hydrometer shows in a drink of a strength and a real extract", tabarie,
			of3(takes("strength", units.PercentVolume, "ethanol of the drink", 0, 20, 4.6),
				takes("real_extract", units.DegreePlato, "extract in the drink, without the ethanol", 0, 30, 0.5).or(0),
				temperatureOf("drink, for its density", 0, 40).or(20),
				func(v units.StrengthByVolume, e units.Extract, t units.Temperature) (drink, error) {
					s, err := carbonation.DrinkOf(v, e)
					if err != nil {
						return drink{}, err
					}
					d, err := s.Density(t)
					return drink{s, d}, err
				}),
			numberFrom(func(d drink) float64 { return sgOf(d.a) }, "gravity", "", "specific gravity 20/20 °C"),
			from(func(d drink) units.Extract { return apparentOf(d.a) }, "apparent_extract", units.DegreePlato, "extract that a hydrometer shows"),
			from(func(d drink) units.Density { return d.b }, "density", units.KilogramPerCubicMetre, "density of the drink at its temperature, in vacuum"),
			from(func(d drink) units.StrengthByMass { return d.a.ByMass() }, "strength_by_mass", units.PercentMass, "ethanol in 100 masses of the drink")),
		entry("standard_drinks", "standard drinks in a volume of a strength",
			"NIAAA (14 g); UK unit (10 mL); Food Standards Code 1.1.2 of Australia and New Zealand (10 g)",
			of3(takes("volume", units.Litre, "volume of the drink at 20 °C", 0, 1e6, 0.33), takes("strength", units.PercentVolume, "ethanol of the drink", 0, 100, 4.6),
				picksBy("country", "whose measure", upTo(label.StandardDrink(2)), "us", "uk", "au"), standardDrinks),
			numberFrom(func(n count) float64 { return n.a }, "drinks", "", "number of standard drinks or units"),
			numberFrom(func(n count) float64 { return n.b }, "on_label", "", "the number as a label states it: one decimal below 10, whole from there")),
	}
}
