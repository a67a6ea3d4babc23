package published

import (
	"fmt"
	"iter"
	"strconv"
	"strings"

	"example.org/zymase/units"
)

// A Status tells how the numbers of a table were obtained.
type Status string

// The statuses, from the best evidence to none.
const (
	Read     Status = "read"
	Excerpt  Status = "excerpt" // a copy, of which a search showed the part with the numbers
	Recalled Status = "recalled from memory"
	Practice Status = "common practice, no source"
	Computed Status = "computed"
)

// Statuses lists every [Status], in the order of a report.
func Statuses() []Status { return []Status{Read, Excerpt, Recalled, Practice, Computed} }

// A Table is a published table with its head. It does not change after it has
// been read.
type Table struct {
	Name   string // the file without .csv
	Title  string
	Source string
	Status Status
	Checks string // the function that it holds to account
	Note   string // may be empty

	Rival      string // a table that disagrees; may be empty
	Difference string // what is known about why
	Again      string // the table whose printed rows these are, for another function; may be empty

	Case string // what each row is a whole case of: "batch", "analysis of a wine"; may be empty

	Columns []Column
	Fixed   []Fixed

	tolerance  *Tolerance           // of columns without their own
	tolerances map[string]Tolerance // by column
	rows       []Row
	guards     int // heads rows and sum
}

// A Column is one column of a table.
type Column struct {
	Name  string
	Unit  string // "" for a pure number, a choice or a label
	Label bool   // only shown
}

// Fixed is an input that is the same in every row.
type Fixed struct {
	Name, Text string // Text has the unit: "20 °C"
}

// A Row is one line of a table.
type Row struct {
	Line  int // in the file, from 1
	Cells []string
	table *Table
}

// Rows walks the rows in the order of the file.
func (t *Table) Rows() iter.Seq[Row] {
	return func(yield func(Row) bool) {
		for _, r := range t.rows {
			if !yield(r) {
				return
			}
		}
	}
}

// Len returns the number of rows.
func (t *Table) Len() int { return len(t.rows) }

// Guarded reports whether the table states its number of rows and a sum.
func (t *Table) Guarded() bool { return t.guards == guardRows|guardSum }

// Column returns the place of a column, or -1.
func (t *Table) Column(name string) int {
	for i, c := range t.Columns {
		if c.Name == name {
			return i
		}
	}
	return -1
}

// Tolerance returns how near a computation must come to a column.
func (t *Table) Tolerance(column string) (Tolerance, bool) {
	if own, ok := t.tolerances[column]; ok {
		return own, true
	}
	if t.tolerance == nil {
		return Tolerance{}, false
	}
	return *t.tolerance, true
}

// Text returns a cell as it stands, or "" if there is no such column.
func (r Row) Text(column string) string {
	if i := r.table.Column(column); i >= 0 {
		return r.Cells[i]
	}
	return ""
}

// Number returns a cell as a number in the unit of its column.
func (r Row) Number(column string) (float64, error) {
	v, err := number(r.Text(column))
	if err != nil {
		return 0, &FileError{File: r.table.Name, Line: r.Line, Reason: fmt.Sprintf("column %q: %v", column, err)}
	}
	return v, nil
}

// Value returns a cell of a row as a quantity; like is any unit of its
// dimension. The unit is that of the column.
func Value[D, E units.Dimension](r Row, column string, like units.Unit[D, E]) (units.Quantity[D, E], error) {
	v, err := r.Number(column)
	if err != nil {
		return units.Quantity[D, E]{}, err
	}
	u, err := like.Find(r.table.Columns[r.table.Column(column)].Unit)
	if err != nil {
		return units.Quantity[D, E]{}, err
	}
	return u.Try(v)
}

// number reads a cell: a decimal number, perhaps with an exponent.
func number(text string) (float64, error) {
	if text == "" {
		return 0, fmt.Errorf("an empty cell")
	}
	if len(text) > longestNumber || strings.Trim(text, "0123456789.+-eE") != "" {
		return 0, fmt.Errorf("%.40q is not a decimal number", text)
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || v > 1e30 || v < -1e30 {
		return 0, fmt.Errorf("%.40q is not a decimal number up to 1e30", text)
	}
	return v, nil
}

const longestNumber = 40 // bytes

// A FileError tells what is wrong with the file of a table.
type FileError struct {
	File   string
	Line   int // from 1; 0 for the file as a whole
	Reason string
}

// Error reads "mytable:7: 3 cells, but 2 columns".
func (e *FileError) Error() string {
	if e.Line == 0 {
		return e.File + ": " + e.Reason
	}
	return fmt.Sprintf("%s:%d: %s", e.File, e.Line, e.Reason)
}
