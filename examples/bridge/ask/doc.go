// Package ask puts one question to a function of the catalogue: which inputs
// are given, which results are wanted and in which unit.
//
//	q := ask.New(function)
//	err := q.Give("altitude", "640 m", (*catalogue.Input).Parse)
//	answer, err := q.Answer()
//
// An input that is unknown, given twice, or left out without a default is an
// error; nothing is guessed.
package ask
