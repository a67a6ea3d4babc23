// Package label answers: what does the label say?
//
//	facts := label.NutritionOf(drink).RoundEU()
//	within, err := label.EUOther.Tolerance(units.PercentVolume.Of(4.6))
//	count, err := label.DrinkUS.Count(drink.ByVolume(), can)
//
// Energy and nutrition of 100 mL ([NutritionOf], [EnergyEU], [EnergyUS]), the strength as
// it is printed ([Strength]) and how far from it the drink may be ([Category.Tolerance]), and how
// many measures of a country a pack holds ([StandardDrink.Count]).
//
// The articles of law are cited as they stood when this was written. It is no legal
// advice: check the law in force where you sell.
package label
