package catalogue

import (
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
)

// A pitch is live cells and the yeast that holds them.
type pitch = pair[units.Cells, yeast.Pitch]

// dryPitch is fresh dry yeast for a wash.
func dryPitch(v units.Volume, extract units.Extract, rate units.PitchRate, perGram units.Cells) (pitch, error) {
	cells, err := yeast.CellsToPitch(rate, extract, v)
	if err != nil {
		return pitch{}, err
	}
	pack, err := yeast.DryPack(perGram, units.Celsius.Of(4))
	if err != nil {
		return pitch{}, err
	}
	p, err := pack.Need(cells, 0)
	return pitch{cells, p}, err
}

// billions is a number of cells.
func billions[T any](get func(T) units.Cells, name, meaning string) result[T] {
	return numberFrom(func(v T) float64 { return get(v).In(units.BillionCells) }, name, "", meaning+", in billions")
}

// supplied are contents that a feed gives, each from a supply.
func supplied(get func(nutrient.Supply) units.MassConcentration, name, meaning string) result[nutrient.Supply] {
	return from(get, name, units.MilligramPerLitre, meaning)
}

// nutrientFeed are nitrogen, its sources, and yeast.
func nutrientFeed() []*Function {
	type supply = nutrient.Supply
	fresh, _ := yeast.DryPack(units.Cells{}, units.Celsius.Of(4)) // what the library counts on
	cells, _ := fresh.Alive(0)
	usual := cells.In(units.BillionCells)
	demands := []nutrient.Demand{nutrient.LowDemand, nutrient.MediumDemand, nutrient.HighDemand}
	return []*Function{
		entry("nitrogen_need", "nitrogen that yeast needs for the sugar of a wash", "rule of the wine trade, 0.75, 0.9 and 1.25 mg of N for 1 g of sugar",
			of2(takes("sugar", units.GramPerLitre, "sugar to ferment in a litre", 0, 350, 75),
				picksBy("demand", "of the strain", demands, "low", "medium", "high").orOption("medium"), nutrient.NeedBySugar),
			band(func(n nutrient.Need) evidence.Figure[units.MassConcentration] { return n.Nitrogen }, units.MilligramPerLitre,
				[2]string{"nitrogen", "yeast assimilable nitrogen, as N"}, [2]string{"least", "the same for a strain of low demand"},
				[2]string{"most", "the same for a strain of high demand"})...),
		entry("nitrogen_assimilable", "yeast assimilable nitrogen from ammonia and amino nitrogen as a laboratory reports them",
			"Australian Wine Research Institute, yeast assimilable nitrogen: 0.8225·NH3 + alpha-amino N",
			of2(takes("ammonia", units.MilligramPerLitre, "ammonia as NH3", 0, 1e5, 50),
				takes("amino", units.MilligramPerLitre, "alpha-amino nitrogen, as N", 0, 1e5, 80),
				nutrient.Assimilable),
			gives("nitrogen", units.MilligramPerLitre, "yeast assimilable nitrogen, as N")),
		entry("nutrient_brings", "what a mass of a nutrient brings to a volume",
			"composition from CIAAW atomic weights 2021, or the label as package nutrient cites it",
			of3(picks("source", "which nutrient", nutrient.Sources()), takes("mass", units.Gram, "the nutrient as weighed", 0, 1e9, 30),
				takes("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
				func(s material.Material, m units.Mass, v units.Volume) (supply, error) {
					return nutrient.SupplyOf(v, s.Dose(m))
				}),
			supplied(supply.Nitrogen, "nitrogen", "nitrogen in all its forms, as N"),
			supplied(func(s supply) units.MassConcentration { return s.Ammonium }, "ammonium_nitrogen", "nitrogen as ammonium, as N"),
			supplied(func(s supply) units.MassConcentration { return s.Phosphorus }, "phosphorus", "phosphorus, as P"),
			supplied(func(s supply) units.MassConcentration { return s.Potassium }, "potassium", "potassium"),
			supplied(func(s supply) units.MassConcentration { return s.Magnesium }, "magnesium", "magnesium"),
			supplied(func(s supply) units.MassConcentration { return s.Zinc }, "zinc", "zinc"),
			supplied(func(s supply) units.MassConcentration { return s.Sulfate }, "sulfate", "sulfate"),
			supplied(func(s supply) units.MassConcentration { return s.Chloride }, "chloride", "chloride")),
		heavy(entry("yeast_to_pitch", "live cells to pitch, and the dry yeast that holds them",
			"1 million cells for 1 mL and 1 °P (Briggs et al. 2004; Kunze); cells in dry yeast as package nutrient cites them",
			of4(takes("volume", units.Litre, "of the wash", 0.001, 1e9, 60), takes("extract", units.DegreePlato, "of the wash", 0.1, 40, 7.5),
				reads(number("rate", "", "million cells for 1 mL and 1 °P", 0.1, 5, 1).or(1), units.MillionPerMillilitrePlato.Try),
				reads(number("per_gram", "", "billion live cells in 1 g of dry yeast, 5 to 25 as sold; the label counts", 1, 50, usual).or(usual), units.BillionCells.Try),
				dryPitch),
			billions(func(p pitch) units.Cells { return p.a }, "cells", "live cells"),
			from(func(p pitch) units.Mass { return p.b.Mass.Value }, "dry_yeast", units.Gram, "dry yeast to weigh, fresh"))),
	}
}
