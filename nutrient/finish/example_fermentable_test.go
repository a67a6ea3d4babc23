package finish_test

import (
	"fmt"

	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// 60 L at 4.6 % vol from a base of 9 % vol: the fermenter holds half.
func ExampleStrongBrew() {
	w := sugar.Wash{Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100)}
	b, d, err := finish.StrongBrew(w, units.PercentVolume.Of(9), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	v, _ := b.Finish.Volume(units.Celsius.Of(20))
	fmt.Println(v.Text(units.Litre, 1), "of base from", b.Fermentable.Text(units.Kilogram, 2), "of sugar, then", d.Water.Text(units.Kilogram, 1), "of water")
	// Output: 30.7 L of base from 4.42 kg of sugar, then 29.3 kg of water
}
