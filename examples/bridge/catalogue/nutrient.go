package catalogue

import (
	"slices"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// nutrientFunctions are the entries of package nutrient.
func nutrientFunctions() []*Function {
	return slices.Concat(
		nutrientSugar(),
		nutrientFeed(),
		nutrientNitrogen(),
		nutrientPH(),
		nutrientYeast(),
		nutrientForecast(),
		nutrientPractice(),
		nutrientAfter(),
		nutrientStabilise(),
	)
}

func takesFermentable() arg[material.Material] {
	return picks("fermentable", "what ferments", sugar.Fermentables()).orOption("white sugar")
}

const yieldSource = "OIML R 22, ICUMSA SPS-4; French order of 3 May 1996 art. 2 and Balling for the yield"

// takesWash is a brew for a finished volume.
func takesWash() arg[sugar.Wash] {
	return of3(takes("volume", units.Litre, "volume when it has fermented, at 20 °C", 0.001, 1e7, 60), takesFermentable(),
		takes("attenuation", units.Percent, "part of the fermentable sugar that the yeast uses", 1, 100, 100).or(100),
		func(v units.Volume, m material.Material, part units.Share) (sugar.Wash, error) {
			return sugar.Wash{Fermentable: m, Attenuation: part, Basis: sugar.Finished(v)}, nil
		})
}

// brewed are the outputs of a brew, after the one that was asked for.
func brewed(first result[sugar.Brew]) []result[sugar.Brew] {
	type brew = sugar.Brew
	return []result[brew]{
		first,
		from(func(b brew) units.Mass { return b.Water }, "water", units.Kilogram, "water to add"),
		numberFrom(func(b brew) float64 { return sgOf(b.Start) }, "original_gravity", "", "specific gravity 20/20 °C before the yeast"),
		from(func(b brew) units.Extract { return apparentOf(b.Start) }, "original_extract", units.DegreePlato, "extract before the yeast"),
		numberFrom(func(b brew) float64 { return sgOf(b.Finish) }, "final_gravity", "", "specific gravity 20/20 °C at the end"),
		from(func(b brew) units.Mass { return b.Made.CO2 }, "carbon_dioxide", units.Gram, "CO2 given off"),
	}
}

// nutrientSugar are fermentables and sugar for a strength.
func nutrientSugar() []*Function {
	type (
		brew    = sugar.Brew
		base    = pair[sugar.Brew, units.Mass]
		content = pair[sugar.Fermentable, sugar.Parts]
		balance = ferment.Balance
	)
	syrupSolids := takes("solids", units.Percent, "dry substance", 70, 90, 80).or(80)
	return []*Function{
		heavy(entry("sugar_for_strength", "mass of a fermentable and of water for a finished volume at 20 °C of a strength", yieldSource,
			of2(takes("strength", units.PercentVolume, "strength wanted", 0.01, 20, 4.6), takesWash(),
				func(s units.StrengthByVolume, w sugar.Wash) (brew, error) { return w.For(s) }),
			brewed(from(func(b brew) units.Mass { return b.Fermentable }, "mass", units.Kilogram, "fermentable to weigh"))...)),
		heavy(entry("strength_from_sugar", "strength that a mass of a fermentable gives a finished volume at 20 °C", yieldSource,
			of2(takes("mass", units.Kilogram, "fermentable weighed", 0, 1e7, 4.4), takesWash(), func(m units.Mass, w sugar.Wash) (brew, error) { return w.From(m) }),
			brewed(from(func(b brew) units.StrengthByVolume { return b.Finish.ByVolume() }, "strength", units.PercentVolume, "strength at the end"))...)),
		entry("fermentable_composition", "what a fermentable is made of, and the most it can give",
			"Codex CXS 212-1999, 2001/111/EC, USDA Bulletin 1261 and others by fermentable; Gay-Lussac",
			of2(takesFermentable(), takes("mass", units.Kilogram, "mass weighed", 0, 1e6, 1).or(1),
				func(of material.Material, m units.Mass) (content, error) {
					f := sugar.Of(of)
					p, err := f.Of(m)
					return content{f, p}, err
				}),
			from(func(c content) units.Share { return c.a.Solids() }, "solids", units.Percent, "dry substance"),
			from(func(c content) units.Share { return c.a.CrystalWater() }, "crystal_water", units.Percent, "water bound in crystals"),
			from(func(c content) units.Share { return c.a.Fermentability() }, "fermentability", units.Percent, "part of the solids that yeast uses"),
			from(func(c content) units.Share { return c.a.InversionGain() }, "inversion_gain", units.Percent, "gain of that sugar by inversion"),
			from(func(c content) units.Mass { return c.b.GayLussac }, "ethanol_limit", units.Kilogram, "ethanol by Gay-Lussac, more than any yeast makes"),
			from(func(c content) units.Mass { return c.b.CO2 }, "co2_limit", units.Kilogram, "CO2 with it")),
		heavy(entry("glucose_syrup_composition", "what a glucose syrup holds by its dextrose equivalent", "trade tables of glucose syrups (recalled from memory)",
			of2(takes("dextrose_equivalent", units.Percent, "reducing power of the solids against dextrose", 30, 64, 42), syrupSolids,
				func(equivalent, solids units.Share) (pair[units.Share, units.Share], error) {
					f, err := material.GlucoseSyrup(solids, equivalent)
					return pair[units.Share, units.Share]{sugar.Of(f).Fermentability(), solids}, err
				}),
			from(func(s pair[units.Share, units.Share]) units.Share { return s.a }, "fermentability", units.Percent, "part of the solids that yeast uses"),
			stated(func(s pair[units.Share, units.Share]) float64 {
				return s.a.In(units.Percent) * s.b.In(units.Percent) / 100
			},
				"sugar", units.Percent, "of the syrup, that yeast uses"))),
		heavy(entry("strong_base", "sugar for a strong base and the water that lets it down later", yieldSource,
			of4(takes("base_strength", units.PercentVolume, "strength of the base", 0.2, 20, 9), takes("strength", units.PercentVolume, "strength wanted", 0.1, 20, 4.6),
				takes("volume", units.Litre, "volume wanted, at 20 °C", 0.001, 1e7, 60), takesFermentable(),
				func(strong, wanted units.StrengthByVolume, v units.Volume, m material.Material) (base, error) {
					b, d, err := finish.StrongBrew(sugar.Wash{Fermentable: m, Attenuation: units.Percent.Of(100)}, strong, wanted, v)
					return base{b, d.Water}, err
				}),
			from(func(b base) units.Mass { return b.a.Fermentable }, "fermentable_mass", units.Kilogram, "fermentable for the base"),
			from(func(b base) units.Mass { return b.a.Water }, "base_water_mass", units.Kilogram, "water in the base"),
			from(func(b base) units.Mass { return b.b }, "water_mass", units.Kilogram, "water that lets it down"))),
		entry("fermentation_balance", "what yeast makes of sugar when every atom is accounted for",
			"elemental and electron balance (Roels 1983, recalled from memory); Pasteur 1860 for glycerol and succinic acid",
			of3(takes("hexose", units.Gram, "sugar used, counted after inversion", 0.001, 1e9, 1000),
				takes("ammonium_nitrogen", units.Gram, "nitrogen at hand as ammonium", 0, 1e8, 1).or(0),
				takes("amino_nitrogen", units.Gram, "nitrogen at hand in amino acids", 0, 1e8, 0).or(0),
				func(hexose, ammonium, amino units.Mass) (balance, error) {
					return ferment.UsualMetabolism().Ferment(ferment.Substrate{Hexose: hexose, Ammonium: ammonium, Amino: amino})
				}),
			from(func(b balance) units.Mass { return b.Ethanol }, "ethanol", units.Gram, "ethanol made"),
			from(func(b balance) units.Mass { return b.CO2 }, "co2", units.Gram, "CO2 given off"),
			from(func(b balance) units.Mass { return b.Glycerol }, "glycerol", units.Gram, "glycerol made"),
			from(func(b balance) units.Mass { return b.DryYeast }, "dry_yeast", units.Gram, "new yeast, dry"),
			from(func(b balance) units.Amount { return b.Protons }, "protons", units.Millimole, "H+ set free by what the yeast takes up")),
	}
}
