package sugar_test

import (
	"fmt"

	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// White sugar for 60 L at 4.6 % vol: what to weigh, and where the hydrometer starts and
// ends.
func ExampleForStrength() {
	b, err := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Fermentable.Text(units.Kilogram, 2), "in", b.Water.Text(units.Kilogram, 1), "of water")
	fmt.Printf("from %.4f to %.4f\n", b.Start.Gravity().SG(), b.Finish.Gravity().SG())
	// Output:
	// 4.42 kg in 57.4 kg of water
	// from 1.0282 to 0.9940
}

// A kettle of 70 L at 95 °C is full: how much sugar for 5 % vol?
func ExampleWash_For() {
	w := sugar.Wash{
		Fermentable: material.WhiteSugar(),
		Attenuation: units.Percent.Of(100),
		Basis:       sugar.Kettle(units.Litre.Of(70), units.Celsius.Of(95)),
	}
	b, err := w.For(units.PercentVolume.Of(5))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Fermentable.Text(units.Kilogram, 2))
	// Output: 5.37 kg
}

// 500 g of sugar in 5 kg of water: how strong?
func ExampleWash_From() {
	w := sugar.Wash{
		Fermentable: material.WhiteSugar(),
		Attenuation: units.Percent.Of(100),
		Basis:       sugar.WaterAtHand(units.Kilogram.Of(5)),
	}
	b, err := w.From(units.Gram.Of(500))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Finish.ByVolume().Text(units.PercentVolume, 2))
	// Output: 5.91 % vol
}

// What a kilogram of dextrose powder is.
func ExampleFermentable_Of() {
	p, _ := sugar.Of(material.DextroseMonohydrate()).Of(units.Kilogram.Of(1))
	fmt.Println("water", p.Water.Text(units.Gram, 1), "dextrose", p.Sugar.Text(units.Gram, 1), "at most", p.GayLussac.Text(units.Gram, 1), "of ethanol")
	// Output: water 90.9 g dextrose 909.1 g at most 464.9 g of ethanol
}

// Plain dextrose may hold crystal water or not.
func ExampleFermentables_byName() {
	_, err := material.FindAmong("dextrose", sugar.Fermentables()...)
	fmt.Println(err)
	// Output: material.FindAmong: unknown material "dextrose"; one of dextrose monohydrate, dextrose anhydrous
}
