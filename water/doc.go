// Package water answers: what is in my water, what do I add, what is its pH?
//
//	well, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(26),
//		water.Calcium.At(units.MilligramPerLitre.Of(10)), water.Sulfate.At(units.MilligramPerLitre.Of(8)))
//	treated, _ := well.Add(units.Litre.Of(60), material.Gypsum().Dose(units.Gram.Of(6)))
//
// A mash is package [example.org/zymase/water/mash], a juice, must or wine package
// [example.org/zymase/water/must].
//
// Ions are in mg/L of the ion unless a name says otherwise (nitrate as N), in a litre at
// 20 °C. Alkalinity is by titration to the carbonic acid end point: HCO3-, CO3-2, OH-, HPO4-2
// and NH3 count. Bicarbonate in a profile stands for the whole alkalinity, as water reports
// print it; the true HCO3- comes from an [Equilibrium].
//
// Values are immutable and safe for concurrent use, save a [Series], which one goroutine
// may use at a time.
package water
