// Package border answers: what can another language ask of the library, and in what form does
// the answer cross?
//
// Five questions are enough for all of it. [Call] and [Column] compute a function of the
// catalogue, by its place, for one row or for many, out of bare numbers in the stated units;
// [Number] and [Convert] make such numbers of a text with its unit, and of a column in another
// unit; [Ask] takes the name of one of the larger things (the plan, the batch carried
// forward, the forecast) and JSON, and gives JSON.
//
// A place means something only between two sides that read the same catalogue: [Contract] is
// a number for what this one is, and whoever asks compares it first.
//
// What is refused comes as a [Refusal], in parts that a language can put into its own kind of
// exception. A fault of the library that would end the program is one too. All of it may be
// used from many threads at once.
package border
