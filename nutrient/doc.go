// Package nutrient answers: what does the yeast need, what do I give it, and will
// it finish?
//
//	need, _ := nutrient.NeedBySugar(units.GramPerLitre.Of(82), nutrient.MediumDemand)
//	feed, _ := nutrient.FeedInOrder(need.Nitrogen.Value, units.Litre.Of(60), nutrient.US,
//		nutrient.DiammoniumPhosphate(), nutrient.AutolysedYeast())
//	schedule, _ := nutrient.InStages(3, scale, feed.Doses...)
//
// Why does a sugar wash stop at half way? Its pH, by charge balance, and what holds it:
//
//	f := nutrient.Ferment{Brew: brew, Water: treated, Feed: feed.Doses, Additions: 3, Temperature: warm}
//	course, _ := f.Course(10)
//	dose, _ := f.BufferFor(3.5, nutrient.PotassiumBicarbonate)
//
// # Map
//
//   - what ferments, and how much of it: [Fermentable], [Wash], [SugarForStrength];
//   - what the yeast is fed: [Need], [Source], [FeedInOrder], [BestFeed], [InStages];
//   - what the law lets in: [Limits];
//   - what yeast makes of it, atom by atom, and the pH: [Metabolism], [Ferment];
//   - the yeast: [CellsToPitch], [DryPack], [Rehydrate], [StarterFor], [CheckPitch];
//   - heat and gas: [HeatRates], [HeadSpaceNeed];
//   - afterwards: [Dilute], [Trial], [SweetenWith], [SweetenLike], [Acidify],
//     [SulfiteFor], [SorbateFor], [ScaleDose].
//
// # Conventions
//
// Nitrogen is counted as N and is the part that yeast can take up. Volumes are those
// at 20 °C. Strength is % vol at 20 °C. Sugars differ by the water that they take up
// when they are inverted; the package counts it.
//
// # Evidence
//
// Every figure carries where it comes from and how well it is known ([Evidence],
// [Grade]). Much of the lore of feeding yeast has no published source; such figures
// say so, and are given with their spread ([Figure]).
//
// # Cautions
//
// Results carry cautions where a mistake harms a person or a batch. Limits in law are
// the text's own decimals, with article and year; [CheckTheLaw] goes with each.
package nutrient
