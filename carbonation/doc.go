// Package carbonation answers: what pressure gives this much fizz, how much
// sugar primes a bottle, and does the closed pack hold it when it warms?
//
//	drink, _ := carbonation.NewLiquid(solution)               // from package gravity
//	p, _ := drink.Pressure(content, units.Celsius.Of(4))      // absolute
//	set := atmosphere.Gauge(p)                                // what the regulator shows
//
// # Content
//
// A content is grams of CO2 in a litre of the liquid as it would be without
// gas at 20 °C. It does not change when the liquid warms in a closed pack, so a
// content at one temperature can be asked for its pressure at another. One
// volume of CO2 weighs [IdealVolume] 1.9635 g or [RealVolume] 1.9770 g; every
// function that takes or gives volumes asks which.
//
// # Pressure
//
// Physics is done in absolute pressure. A gauge reading goes in and comes out
// through a [units.Atmosphere].
//
// # Uncertainty
//
// Published Henry constants of CO2 in water differ by 1 to 2 % from 15 °C to
// 40 °C and by 3 % at 0 °C (5 % with the correlation made for high
// temperature). Above 40 °C they part again: the one used here holds 3 % less at 60 °C
// and 4.6 % less at 90 °C than two others, so that a hot pack reads too high rather than
// too low. What ethanol and extract do is known to about 5 %: [Compare]
// shows the published ways side by side for the drink at hand.
//
// # Safety
//
// Results that can hurt someone carry their [Cautions] as data. Nothing is
// called safe: a result says [WithinRating] only against a rating that the
// caller gave.
package carbonation
