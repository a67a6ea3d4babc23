// Package carbonation answers: what pressure gives this much fizz, how much sugar primes a
// bottle, and does the closed pack hold it when it warms?
//
//	drink, _ := carbonation.NewLiquid(solution)               // from package gravity
//	p, _ := drink.Pressure(content, units.Celsius.Of(4))      // absolute
//	set := atmosphere.Gauge(p)                                // what the regulator shows
//
// A content is grams of CO2 in a litre of the liquid as it would be without gas at 20 °C, the
// same however warm the closed pack. One volume of CO2 weighs [IdealVolume] 1.9635 g or
// [RealVolume] 1.9770 g; what takes volumes asks which. Pressures are absolute; a gauge
// reading goes in and out through a [units.Atmosphere]. [Compare] shows how far published
// solubilities differ: 1 to 3 % in water, about 5 % with ethanol and extract.
//
// Results that can hurt someone carry their [Cautions] as data. Nothing is called safe: a
// result says [WithinRating] only against a rating that the caller gave.
package carbonation
