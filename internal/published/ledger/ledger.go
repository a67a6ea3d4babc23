// Package ledger answers: where does each constant of the library come from, how well is it known,
// and what does it move?
//
//	entries, err := ledger.Entries()
//	for _, e := range entries {
//		fmt.Println(e.File, e.Name, e.Value, e.Unit, e.Status, e.Source)
//	}
//
// The file constants.tsv has a row for each declaration of the Go source that holds a number of
// meaning ([Walk] finds them; a test holds file and source to each other, in both directions). Its
// columns are:
//
//   - file, name: the Go file and the identifier in it; a row of a table is "table[row]".
//   - value: the numbers as they stand in the source.
//   - unit: of the value; "-" for a pure number, a set of coefficients or several units.
//   - what: what it is.
//   - source: author, title, edition, table or article, or the reason of what was chosen.
//   - status: one of [Statuses].
//   - check: for what was chosen, or fitted to the table that it is compared with: what else holds
//     it to account, a published table or a test by name.
//   - moves: by how many per cent a typical result moves at most, where each number of the row is
//     raised by 1 % by itself (go run ./.ci/constants -moves); 0 where nothing that the catalogue
//     computes rests on it, "-" where that was not tried: whole numbers that count.
//   - moved: the result that moves most.
package ledger

import (
	_ "embed"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

//go:embed constants.tsv
var file string

// A Status tells how a constant was obtained.
type Status string

// The statuses.
const (
	Definition Status = "definition"  // exact: a unit, a formula of a compound, a rule of arithmetic
	Read       Status = "read"        // seen in the source
	SecondHand Status = "second hand" // seen in a work that prints it after the source
	Recalled   Status = "recalled"    // from memory
	Practice   Status = "practice"    // of the trade, no source
	Fitted     Status = "fitted"      // by us, to rows that the source column names
	Chosen     Status = "chosen"      // by us
	Bound      Status = "bound"       // where a formula ends or an input is no longer sensible
	Method     Status = "method"      // of computing: a power, a step, a start, near enough; moves no result
)

// Statuses lists every [Status], the best evidence first.
func Statuses() []Status {
	return []Status{Definition, Read, SecondHand, Recalled, Practice, Fitted, Chosen, Bound, Method}
}

// An Entry is a row of the ledger.
type Entry struct {
	File, Name, Value, Unit, What, Source string
	Status                                Status
	Check                                 string
	Moves                                 string
	Moved                                 string
}

// Key tells entries apart, as [Found.Key] does.
func (e *Entry) Key() string { return e.File + " " + e.Name }

// Share is Moves as a number; -1 where nothing is known to move.
func (e *Entry) Share() float64 {
	v, err := strconv.ParseFloat(e.Moves, 64)
	if err != nil {
		return -1
	}
	return v
}

const head = "file\tname\tvalue\tunit\twhat\tsource\tstatus\tcheck\tmoves\tmoved"

// Entries returns the ledger in the order of the file: by file and place in it.
func Entries() ([]Entry, error) { return Parse(file) }

// Parse reads a ledger.
func Parse(text string) ([]Entry, error) {
	lines := strings.Split(strings.TrimRight(text, "\n"), "\n")
	if lines[0] != head {
		return nil, fmt.Errorf("ledger: line 1 is not %q", head)
	}
	var all []Entry
	for i, line := range lines[1:] {
		c := strings.Split(line, "\t")
		if len(c) != 10 {
			return nil, fmt.Errorf("ledger: line %d has %d cells, not 10", i+2, len(c))
		}
		e := Entry{c[0], c[1], c[2], c[3], c[4], c[5], Status(c[6]), c[7], c[8], c[9]}
		if !slices.Contains(Statuses(), e.Status) {
			return nil, fmt.Errorf("ledger: line %d: status %q is none of %q", i+2, c[6], Statuses())
		}
		all = append(all, e)
	}
	return all, nil
}

// Format writes a ledger as [Parse] reads it.
func Format(all []Entry) string {
	var b strings.Builder
	b.WriteString(head + "\n")
	for _, e := range all {
		b.WriteString(strings.Join([]string{e.File, e.Name, e.Value, e.Unit, e.What, e.Source, string(e.Status), e.Check, e.Moves, e.Moved}, "\t") + "\n")
	}
	return b.String()
}
