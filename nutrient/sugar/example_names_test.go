package sugar_test

import (
	"fmt"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Ethanol that a kilogram of each can give at most, by Gay-Lussac.
func ExampleFermentable_Fermentability() {
	for _, f := range []material.Material{
		material.Sucrose(), shelf.Material("fructose"), shelf.Material("soft brown sugar"), shelf.Material("invert sugar syrup"),
		shelf.Material("maple syrup"), shelf.Material("liquid malt extract"), shelf.Material("lactose monohydrate"),
	} {
		p, _ := sugar.Of(f).Of(units.Kilogram.Of(1))
		fmt.Println(f, p.GayLussac.Text(units.Gram, 0), "crystal water", sugar.Of(f).CrystalWater().Text(units.Percent, 1))
	}
	// Output:
	// sucrose 538 g crystal water 0.0 %
	// fructose 511 g crystal water 0.0 %
	// soft brown sugar 474 g crystal water 0.0 %
	// invert sugar syrup 409 g crystal water 0.0 %
	// maple syrup 345 g crystal water 0.0 %
	// liquid malt extract 279 g crystal water 0.0 %
	// lactose monohydrate 0 g crystal water 5.0 %
}

// A brew planned on its finished volume.
func ExampleFinished() {
	w := sugar.Wash{Fermentable: material.DextroseMonohydrate(), Attenuation: units.Percent.Of(100), Basis: sugar.Finished(units.Litre.Of(20))}
	b, _ := w.For(units.PercentVolume.Of(5))
	fmt.Println(b.Fermentable.Text(units.Kilogram, 2))
	// Output: 1.85 kg
}

// Any material with sugar in it is a fermentable, one's own by its label too.
func ExampleOf() {
	treacle, err := material.ByLabel("treacle", material.Composition{
		Disaccharides: units.Percent.Of(33), Glucose: units.Percent.Of(16), Fructose: units.Percent.Of(16), UnfermentedSolids: units.Percent.Of(15),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	f := sugar.Of(treacle)
	fmt.Println(f, f.Solids().Text(units.Percent, 0), "solids,", f.Fermentability().Text(units.Percent, 1), "of them ferment")
	// Output: treacle 80 % solids, 81.2 % of them ferment
}
