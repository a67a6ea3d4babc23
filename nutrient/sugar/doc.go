// Package sugar answers: how much sugar for this strength, how much water, and what will
// the hydrometer show?
//
//	brew, _ := sugar.ForStrength(sugar.White(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
//	fmt.Println(brew.Fermentable, brew.Water, brew.Start.Gravity(), brew.Finish.Gravity())
//
// A [Fermentable] is what is bought: a sugar, a syrup, honey, malt extract, juice, or a
// [Mix] of them. A [Wash] is a brew to plan on what fills the fermenter, the kettle or the
// water at hand; with its masses known it is a [Brew].
package sugar
