// Package fill computes one function of the catalogue over the rows of a CSV
// file, and answers: what is this function for each row of my table?
//
//	count, err := fill.Run(os.Stdout, os.Stdin, function, fill.Options{})
//
// Input columns are headed "name (unit)", in any order; numbers are converted
// to the stated unit. The user's own columns, quotes and line ends come back
// byte for byte; a column "output (unit)" for each result and a column "error"
// come after them. A row that cannot be computed says why in its error cell,
// and the rows after it go on.
//
// Memory does not grow with the file, and a row costs no allocation.
package fill
