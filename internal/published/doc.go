// Package published answers: what does the printed table say, where is it
// printed, and how near must a computation come to it?
//
//	table, err := published.Find("atmosphere_ashrae")
//	for row := range table.Rows() {
//		printed, _ := row.Number("pressure")
//		fmt.Println(row.Line, row.Text("altitude"), printed)
//	}
//
// It reads and checks tables; there is no brewing in it. The program
// examples/verify computes each row with the function that the table names.
//
// # The form of a table
//
// A table is a CSV file in UTF-8: head lines "# key: value", one line of column
// names, the rows.
//
//	# title: Pressure of the standard atmosphere
//	# source: ISO 2533:1975, Standard atmosphere, table 1
//	# status: read
//	# checks: atmosphere_at_altitude
//	# tolerance: printed; half the last printed digit
//	# rows: 3
//	# sum pressure: 2866.62
//	altitude (m),pressure (mbar absolute)
//	0,1013.25
//	500,954.61
//	1000,898.76
//
// The heads:
//
//   - title: what the table is.
//   - source: author, title, year, table or page. Tables of one source have the
//     same text here; verify counts sources by it.
//   - status: "read" (the numbers were seen in the source or a copy of it), "excerpt"
//     (seen in the part of a copy that a search shows, the rest unread), "recalled from memory", "common practice, no source", or "computed" (worked
//     out with a general program or from a definition, not printed in a source).
//     Only rows that were read count as published.
//   - checks: the function of the catalogue (examples/bridge/catalogue) that the
//     table holds to account.
//   - tolerance: how near, then a semicolon and the reason. "0.05" is absolute,
//     in the unit of the column; "0.2 %" is relative to the printed value;
//     "exact" allows for the rounding of the arithmetic alone;
//     "printed" is half the last printed digit of each cell and "3 printed" three
//     times that; "0.2 % or 0.05" is the larger one. It holds for each output
//     column that has no line of its own: "tolerance density: 0.2 kg/m³"
//     without the unit.
//   - rows, sum NAME: guards against a lost or changed cell: the number of rows
//     and the exact sum of a column. The tables of this package must have rows
//     and at least one sum; a user's own file may leave them out.
//   - fixed NAME: an input that is the same in every row: "fixed temperature: 20 °C".
//     Inputs that are neither a column nor fixed take the default of the catalogue.
//   - labels: columns that are only shown, "labels: author, page".
//   - rival, difference: the name of a table that disagrees, and what is known
//     about why. Both tables stand; verify shows the difference. The one needs
//     the other.
//   - again: the table of the same source whose printed rows these are, held
//     against another function (the way back, a rival formula). They are checked
//     like any other, but do not count as published a second time.
//   - case: where each row is a whole case from practice, with what was put in and what was
//     measured, what it is: "batch", "analysis of a wine".
//   - note: anything else a reader must know (a misprint, a doubtful cell).
//
// A column name is "name (unit)", or the name alone for a pure number, a choice
// or a label. Each column is an input or an output of the function, or a label;
// input columns are taken as given, output columns are compared. A number has a
// decimal point and no thousands marks. No cell of a compared column is empty:
// where a source leaves a cell blank, the table is written in the long form, a
// line for each printed value.
//
// # What is refused
//
// A missing or unknown head, a head or column twice, a row with more or fewer
// cells than columns, the same row twice, a unit that nothing knows, a sum or
// count that does not fit, a tolerance without a reason. The error is a
// [*FileError] that names the file and the line.
package published
