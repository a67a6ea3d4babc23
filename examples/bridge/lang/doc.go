// Package lang answers: how does a program in another language call the library?
//
//	err := lang.JavaScript(dir) // an ES module with its WebAssembly and TypeScript declarations
//	err := lang.C(dir)          // a header and a shared library
//	err := lang.Python(dir)     // a package over the shared library, with type stubs
//
// Everything is written from the catalogue: the names of the functions, of their inputs and outputs,
// their texts, units, ranges and sources stand there once. What crosses the border, and how, is
// package border; the commands wasm and shared are that border as a WebAssembly module and as a
// shared library, which the Go toolchain at hand builds.
//
// # Quantities
//
// An input with a unit has two names: temperature takes a text with its unit, "68 °F", and
// temperature_celsius a number in the unit of the catalogue. There is no bare number whose unit
// has to be guessed. A pure number (a pH, a specific gravity) and the word of a choice have one
// name. A column in another unit is a pair of the unit and the numbers.
//
// # Answers
//
// A function of one output gives its number or its words; one of several gives them by name. A
// refusal is an exception that has the quantity, the value, the range and the source. A column
// gives an array for each output, and a mask of the rows that have no answer.
package lang
