// Package checked holds the type of numbers that need no further check.
package checked

// Number is a finite number that makes sense where it goes: a constant in the
// source, or a float64 that this module has computed inside the range of its
// formula.
//
// It is what [example.org/zymase/units.Unit.Of] takes. A package outside the
// module cannot name the type, so it can pass constants only (Go converts an
// untyped constant by itself); a number known at run time goes through
// [example.org/zymase/units.Unit.Try], which looks at it.
type Number float64
