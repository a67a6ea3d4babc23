package check

import (
	"testing"

	"example.org/zymase/internal/published"
	"example.org/zymase/units"
)

// Table is a published table of so many rows.
func Table(t *testing.T, name string, rows int) *published.Table {
	t.Helper()
	tab := OK[*published.Table](t)(published.Find(name))
	if tab.Len() != rows {
		t.Fatalf("%s has %d rows, want %d", name, tab.Len(), rows)
	}
	return tab
}

// Cell is a cell of a row as a quantity.
func Cell[D, E units.Dimension](t *testing.T, r published.Row, column string, like units.Unit[D, E]) units.Quantity[D, E] {
	t.Helper()
	return OK[units.Quantity[D, E]](t)(published.Value(r, column, like))
}

// Printed fails unless a value in the unit of the column is as near to the printed cell as
// the table's tolerance says.
func Printed(t *testing.T, tab *published.Table, r published.Row, column string, got float64) {
	t.Helper()
	tol, found := tab.Tolerance(column)
	if !found {
		t.Fatalf("%s: no tolerance for %s", tab.Name, column)
	}
	if d, fits := tol.Within(got, r.Text(column)); !fits {
		t.Errorf("%s:%d: %s printed %s, computed %.8g, difference %.2g, allowed %.2g", tab.Name, r.Line, column, r.Text(column), got, d, tol.Allow(r.Text(column)))
	}
}
