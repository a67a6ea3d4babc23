package gravity_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ExampleNutrition_RoundEU() {
	dry, _, _ := wash().Dry(wash().WashYield())
	n := dry.Nutrition().RoundEU()
	fmt.Println(n.Energy.Kilojoules.Text(units.Kilojoule, 0), n.Energy.Kilocalories.Text(units.Kilocalorie, 0), n.Sugars.Text(units.Gram, 1), "in 100 mL")
	// Output: 113 kJ 27 kcal 0.0 g in 100 mL
}

func ExampleLabelDrinks() {
	n, err := gravity.LabelDrinks(1.421)
	fmt.Println(n, err)
	// Output: 1.4 <nil>
}
