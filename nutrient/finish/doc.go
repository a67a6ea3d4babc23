// Package finish answers: what do I add once it has fermented, and how much?
//
//	d, _ := finish.Dilute(brew.Finish, gravity.Solution{}, units.PercentVolume.Of(4.6))
//	s, _ := finish.SulfiteFor(material.PotassiumMetabisulfite(), wanted, free, total, units.Litre.Of(60), law.EU)
//
// [Dilute] and [StrongBrew] bring a strong base to strength, [SweetenWith] adds sugar and
// [SweetenLike] a sweetener, [BenchTrial] scales a sample that tasted right, [Acidify] brings a
// drink to a pH. [SulfiteFor] and [SorbateFor] keep it. Additions that the law limits say
// so, and which limit they pass.
package finish
