// Package gravity answers: what does the hydrometer say, how strong is it, how sweet?
//
//	wash, err := gravity.NewSolution(units.Kilogram.Of(54.4), units.Kilogram.Of(4.5), units.Mass{})
//	beer, made, err := wash.Ferment(units.Kilogram.Of(4.5), gravity.SugarWashYield(gravity.AsSucrose))
//	fmt.Println(wash.Gravity(), beer.Gravity(), beer.ByVolume(), made.CO2)
//
// A recipe is a [Solution]: added to, boiled, fermented, mixed, diluted; its floor is
// [Solution.Dry], and [Solution.At] says how far a reading is from there. Strength from two
// figures is a [Fermentation]. Instruments are [Hydrometer], [Refractometer], [Pycnometer];
// scales [Gravity.As], [Gravity.ScaleMethods]; labels package [example.org/zymase/gravity/label].
//
// A [Gravity] is the density at 20 °C over that of water at 20 °C, both in vacuum; other
// references (15.56/15.56, 20/4, in air) are converted by name. Densities are in vacuum, at
// 101.325 kPa, without CO2. An extract in °P is grams of sucrose in 100 g of a solution with
// the same density at 20 °C; beside ethanol that is the apparent extract, below zero in a dry
// sugar wash. Strength by volume is at 20 °C on both sides (OIML R 22).
//
// No type catches these: a refractometer's Brix beside ethanol is no apparent extract
// ([FromOriginalAndBrix] takes it); 1.048 goes to [FromSG], not [FromBaume].
//
// Water is after Bettin & Spieweck 1990, ethanol and water after OIML R 22, sucrose after ICUMSA
// SPS-4, the three together by Tabarié's relation. Each function names its source, range and
// uncertainty; outside the range is a [*units.RangeError].
package gravity
