package label_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/units"
)

func ExampleNutrition_RoundEU() {
	dry, _, _ := wash().Dry(wash().WashYield())
	n := label.NutritionOf(dry).RoundEU()
	fmt.Println(n.Energy.Kilojoules.Text(units.Kilojoule, 0), n.Energy.Kilocalories.Text(units.Kilocalorie, 0), n.Sugars.Text(units.Gram, 1), "in 100 mL")
	// Output: 113 kJ 27 kcal 0.0 g in 100 mL
}

func ExampleRoundDrinks() {
	n, err := label.RoundDrinks(1.421)
	fmt.Println(n, err)
	// Output: 1.4 <nil>
}

func ExampleEnergyEU() {
	e := label.EnergyEU(beer())
	fmt.Println(e.Kilojoules.Text(units.Kilojoule, 0), e.Kilocalories.Text(units.Kilocalorie, 0), "in 100 mL")
	// Output: 191 kJ 46 kcal in 100 mL
}

func ExampleEnergyUS() {
	e, err := label.EnergyUS(beer(), units.Percent.Of(0.1))
	can := units.Times(e, 3.5488)
	fmt.Println(can.Text(units.Kilocalorie, 0), "in 12 US fl oz", err)
	// Output: 159 kcal in 12 US fl oz <nil>
}

func ExampleNutritionOf() {
	dry, _, _ := wash().Dry(wash().WashYield())
	n := label.NutritionOf(dry)
	fmt.Println(n.Ethanol.Text(units.Gram, 2), n.Carbohydrate.Text(units.Gram, 2), n.Sugars.Text(units.Gram, 2), n.Polyols.Text(units.Gram, 2),
		n.OrganicAcids.Text(units.Gram, 2))
	// Output: 3.80 g 0.24 g 0.00 g 0.24 g 0.05 g
}

func ExampleRoundCaloriesUS() {
	e, err := label.RoundCaloriesUS(units.Kilocalorie.Of(143))
	fmt.Println(e.Text(units.Kilocalorie, 0), err)
	// Output: 140 kcal <nil>
}

func ExampleStrength() {
	fmt.Println(label.Strength(units.PercentVolume.Of(4.63)))
	// Output: 4.6 % vol
}

func ExampleCategory_Tolerance() {
	v, err := label.EUOther.Tolerance(units.PercentVolume.Of(4.6))
	fmt.Println(v, err)
	// Output: 0.3 percentage points <nil>
}

func ExampleCategory_String() {
	fmt.Println(label.EUOther)
	// Output: EU other drink
}

func ExampleStandardDrink_Count() {
	n, err := label.DrinkAU.Count(units.PercentVolume.Of(4.8), units.Millilitre.Of(375))
	fmt.Printf("%.1f %v\n", n, err)
	// Output: 1.4 <nil>
}

func ExampleStandardDrink_String() {
	fmt.Println(label.UnitUK)
	// Output: UK unit
}

// wash is the example of the others: 60 L of water and sugar for a dry drink of about
// 4.8 % vol.
func wash() gravity.Solution {
	s, _ := gravity.NewSolution(units.Kilogram.Of(57.1), units.Kilogram.Of(4.6), units.Mass{})
	return s
}

// beer is a malt beer of 12 °P, fermented to 3 °P.
func beer() gravity.Solution {
	f, _ := gravity.FromOriginalAndApparent(units.DegreePlato.Of(12), units.DegreePlato.Of(3), gravity.BallingYield())
	return f.Liquid()
}
