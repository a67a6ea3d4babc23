// Package water answers: what is in my brewing water, what do I add to it, and
// what pH will it have?
//
//	well, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(26),
//		water.Calcium.At(units.MilligramPerLitre.Of(10)), water.Sulfate.At(units.MilligramPerLitre.Of(8)))
//	treated, _ := well.Add(units.Litre.Of(60), material.Gypsum().Dose(units.Gram.Of(6)))
//
// A mash is package [example.org/zymase/water/mash], a juice, must or wine package
// [example.org/zymase/water/must].
//
// # Conventions
//
// Concentrations of ions are in mg/L of the ion itself unless a name says
// otherwise (nitrate as N). One litre is a litre at 20 °C: 0.9982 kg of water, so
// that heating changes no content. Alkalinity is what a titration to the carbonic
// acid end point finds: it counts HCO3-, CO3-2, OH-, HPO4-2 and NH3, and nothing
// for CO2, H2PO4- and NH4+. In a profile, Bicarbonate stands for the whole
// alkalinity as water reports print it; the true HCO3- comes from an equilibrium.
//
// Molar masses come from the atomic weights, and every ion per gram of salt from
// the molar masses: there are no pasted factors.
//
// Values are immutable and safe for concurrent use, save the reusable solvers
// (Salter, Series), which one goroutine may use at a time.
package water
