// Package nutrient answers: how much nitrogen does the yeast need, and what do I weigh?
//
//	need, _ := nutrient.NeedBySugar(units.GramPerLitre.Of(82), nutrient.MediumDemand)
//	feed, _ := nutrient.FeedInOrder(need.Nitrogen.Value, units.Litre.Of(60), law.US,
//		nutrient.Offers(material.DiammoniumPhosphate(), material.AutolysedYeast())...)
//	schedule, _ := nutrient.InStages(3, scale, feed.Doses...)
//
// What a must or wash needs is a [Need], what is at hand an [Offer] of a
// [material.Material], what it brings a [Supply]. [FeedInOrder] and [CheapestFeed] dose within the limits of the law asked,
// [InStages] splits the doses by sugar used.
//
// # Its rooms
//
//   - nutrient/sugar: what ferments, and how much of it for a strength;
//   - nutrient/yeast: cells, pitch, rehydration, starter;
//   - nutrient/ferment: what yeast makes of sugar, the pH on the way, what holds it; heat,
//     head space;
//   - nutrient/finish: dilute, sweeten, flavour, acidify, sulfite, sorbate;
//   - nutrient/law: what the law allows.
//
// # Conventions
//
// They hold in all rooms. Nitrogen is counted as N and is the part that yeast can take up.
// Volumes are those at 20 °C. Strength is % vol at 20 °C. Sugars differ by the water that
// they take up when they are inverted; it is counted.
//
// # Evidence
//
// Every figure says where it comes from and how well it is known ([evidence.Evidence]).
// Much of the lore of feeding yeast has no published source; such figures say so, and are
// given with their spread ([evidence.Figure]).
//
// # Cautions
//
// Results carry cautions where a mistake harms a person or a batch. Limits in law are
// the text's own decimals, with article and year; [law.CheckTheLaw] goes with each.
package nutrient
