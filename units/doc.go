// Package units answers: is this number what I think it is?
//
// A quantity is made through a unit and read through a unit; two quantities of
// different dimension do not add, compare or convert into each other, and the
// compiler says so.
//
//	sugar := units.Kilogram.Of(4.2)
//	total := sugar.Plus(units.Gram.Of(300))
//	fmt.Println(total.In(units.Pound))
//
// In: [Unit.Of] takes a constant written in the source. [Unit.Try] takes a number known
// at run time and refuses NaN, infinity and what the dimension cannot be (a negative
// mass, a temperature below absolute zero). [Parse] takes text as brewers write it
// ("3 lb 4 oz", "68 °F", "1,5 kg") and refuses what has two meanings ("5 gal"). [Exact]
// holds a decimal number with its unit, for what is weighed, bought or printed.
// Durations are [time.Duration]; [ParseDuration] reads days and weeks too.
//
// Out: [Quantity.In] gives a float64 in a unit, [Quantity.Text] prints it with a fixed
// number of places, fmt's %v and %.1f print it in the base unit, [Quantity.Round] gives
// the decimal number that a scale can weigh. Text and JSON hold the shortest number that
// reads back as the same quantity, with the unit.
//
// # What is kept apart
//
// What people confuse has different types: absolute and gauge pressure (an [Atmosphere]
// stands between them), temperature and temperature difference, strength by volume, by
// mass and their [PercentagePoints], mg/L of an ion, mEq/L and mg/L as CaCO3, volumes of
// CO2 and g/L of CO2, a compound as weighed and without its water. Gallons, quarts, pints
// and fluid ounces are US or imperial, without a default. These mistakes no type catches:
//   - Percent.Of(0.95) is 0.95 %; 95 % is Percent.Of(95) or Fraction.Of(0.95).
//   - Kilogram.Of(-3) and what [Quantity.Minus] makes can be below zero; it prints, but
//     is not written to text or JSON, and the functions that take it refuse it.
//   - [Extract] is real, apparent or from a refractometer, as the argument's name says.
//   - An ion, an acid or nitrogen in mg/L is whatever the argument's name says.
//
// # How sure
//
// [Measure], [ReadTo] and [Limited] make a [Measured]: a value with its standard
// uncertainty. [Propagate] carries it through any function of several quantities,
// [Budget] shows which of them matters, [Simulate] checks by random sampling, and
// [CrossCheck] compares several methods. Where a figure comes from is an
// evidence.Evidence, what one must know before acting on it a caution.Caution, in
// packages of their own below this one.
//
// # Errors and range
//
// All packages of the module refuse with a [*RangeError] (a number outside the range of a
// formula or of what a quantity can be), a [*ParseError] (text), a [*NameError] (a name or
// choice that is not known, with those that are) or a [*StateError] (a value not ready for
// what is asked of it). [Unit.Try] and [Parse] accept up to 1e15 base units; sums stop at
// 1e18, so that no chain of operations ends in an infinity or a NaN.
//
// All values are immutable and safe for concurrent use.
package units
