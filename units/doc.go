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
// # Ways in
//
// [Unit.Of] takes a constant written in the source. [Unit.Try] takes a number
// known at run time and refuses NaN, infinity and what the dimension cannot be
// (a negative mass, a temperature below absolute zero). [Parse] takes text as
// brewers write it ("3 lb 4 oz", "68 °F", "1,5 kg") and refuses what has two
// meanings ("5 gal"). [Exact] holds a decimal number with its unit, for what is
// weighed, bought or printed.
//
// # Ways out
//
// [Quantity.In] gives a float64 in a unit, [Quantity.Text] prints it with a
// fixed number of places, [Quantity.Round] gives the decimal number that a
// scale can weigh. The text form (String, MarshalText, JSON, flags) is the
// shortest number that reads back as the same quantity, with the unit.
//
// # What is kept apart
//
// Types that people confuse are different types: absolute and gauge pressure
// (an [Atmosphere] stands between them), temperature and temperature
// difference, strength by volume and by mass, mg/L of an ion, mEq/L and mg/L as
// CaCO3, volumes of CO2 and g/L of CO2, the mass of a compound as weighed and
// of the anhydrous compound in it. US and imperial gallons, quarts, pints and
// fluid ounces have different units and no default.
//
// # Errors
//
// All packages of the module refuse in four ways. A [*RangeError] is a number outside
// the range of a formula or of what a quantity can be; a [*ParseError] a text that is
// not what it should be; a [*NameError] a name or choice that is not known, with those
// that are; a [*StateError] a value that is not ready for what is asked of it. Any other
// error comes from a caller's own function or reader. Each holds its parts as fields.
// What a figure rests on is an evidence.Evidence, what one must know before one acts on
// a result a caution.Caution; both are packages of their own below this one.
//
// Durations are [time.Duration]; [ParseDuration] reads days and weeks too.
//
// # How sure
//
// [Measure], [Read] and [Limited] make a [Measured]: a value with its standard
// uncertainty. [Propagate] carries it through any function of several quantities,
// [Budget] tells which of them matters, [Simulate] checks by drawing lots, and
// [CrossCheck] compares several methods.
//
// # Range
//
// Numbers are float64 in the base unit of the dimension. [Unit.Try] and [Parse]
// accept a magnitude up to 1e15 base units. Sums stop at 1e18 base units, so
// that no chain of operations ends in an infinity or a NaN.
//
// All values are immutable and safe for concurrent use.
package units
