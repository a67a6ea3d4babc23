// Package ferment answers: will it finish? Why does a sugar wash stop at half way? Its pH,
// by charge balance, and what holds it:
//
//	t := ferment.Tank{Brew: brew, Water: treated, Feed: feed.Doses, Additions: 3, Temperature: warm}
//	course, _ := t.Course(10)
//	dose, _ := t.BufferFor(material.PotassiumBicarbonate(), 3.5)
//
// A [Tank] is a wash to ferment. Its [Course] follows gravity, strength, gas and pH while
// sugar is used; [Tank.BufferFor] doses a buffer before, [Tank.Correct] when it has
// stopped; [Tank.OtherNeeds] compares minerals and vitamins with what yeast wants. Beneath
// it a [Metabolism] makes a [Balance] in which every atom and charge is kept.
// [HeatRates] size the cooling, [HeadSpaceNeed] the room for foam.
package ferment
