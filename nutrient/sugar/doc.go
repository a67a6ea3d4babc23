// Package sugar answers: how much sugar for this strength, how much water, and what will
// the hydrometer show?
//
//	brew, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
//	fmt.Println(brew.Fermentable, brew.Water, brew.Start.Gravity(), brew.Finish.Gravity())
//
// What is bought is a [material.Material]: a sugar, a syrup, honey, malt extract, juice, or a
// [material.Mix] of them; [Of] shows it as yeast sees it. A [Wash] is a brew to plan on what fills the fermenter, the kettle or the
// water at hand; with its masses known it is a [Brew].
package sugar
