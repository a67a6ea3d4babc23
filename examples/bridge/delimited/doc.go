// Package delimited reads and writes CSV as bytes, and answers: which bytes of
// this file are a row, and which are a cell?
//
//	rows := delimited.NewReader(file, ',')
//	raw, err := rows.Next() // one row with its line end, as it stands in the file
//	row.Split(raw, ',')     // where its cells are
//	text := row.Text(2)     // the third cell without quotes
//
// A row keeps its bytes, so what is written back is what was read: quotes,
// spaces, line ends. Reading allocates nothing for a row.
//
//   - Source: Y. Shafranovich, RFC 4180, Common Format and MIME Type for
//     Comma-Separated Values (CSV) Files (2005), section 2.
//   - Line ends: LF or CR LF, each row its own; a lone CR is text.
//   - A quotation mark inside a cell that does not start with one is text.
//     Text after the closing mark of a cell is a flaw of that row
//     ([Row.Flaw]), and the rows after it are still found.
//   - UTF-8 only, no NUL byte; a byte order mark at the start is passed over
//     and told by [Reader.Mark].
//   - Limits: a row has at most [MaxRow] bytes and [MaxCells] cells.
package delimited
