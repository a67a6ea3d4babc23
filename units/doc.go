// Package units answers: is this number what I think it is?
//
// A quantity is made and read through a unit. Two of different dimension do not add, compare
// or convert into each other: the compiler says so.
//
//	total := units.Kilogram.Of(4.2).Plus(units.Gram.Of(300))
//	fmt.Println(total.In(units.Pound))
//
// In: [Unit.Of] a constant, [Unit.Try] a number known at run time, [Parse] text as brewers
// write it ("3 lb 4 oz", "68 °F", "1,5 kg"); what has two meanings ("5 gal") is refused.
// Out: [Quantity.In] a float64, [Quantity.Text] and fmt's %v and %.1f text, [Quantity.Round]
// what a scale can weigh, an [Exact]. Text and JSON read back as the same quantity.
//
// What people confuse has different types: absolute and gauge pressure, a temperature and a
// difference, strength by volume and by mass, a salt with and without crystal water. No type
// catches these: Percent.Of(0.95) is 0.95 %, not 95 %; what [Quantity.Minus] makes can be below
// zero; an [Extract] is real or apparent, as the argument's name says.
//
// [Measure] adds an uncertainty, [Propagate] carries it through a function. All packages refuse
// with a [*RangeError], [*ParseError], [*NameError] or [*StateError]; numbers stop at 1e15 base units.
package units
