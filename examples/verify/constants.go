package main

import (
	"cmp"
	"fmt"
	"io"
	"slices"

	"example.org/zymase/internal/published/ledger"
)

// writeConstants prints the ledger of constants, what moves a result most first.
func writeConstants(w io.Writer) error {
	all, err := ledger.Entries()
	if err != nil {
		return err
	}
	slices.SortStableFunc(all, func(a, b ledger.Entry) int { return cmp.Compare(b.Share(), a.Share()) })
	fmt.Fprintln(w, "Every constant of the library, what moves a result most first. \"moves\" is by how many per cent")
	fmt.Fprintln(w, "a typical result moves at most where each number of the row is raised by 1 % by itself; one of a set")
	fmt.Fprintln(w, "that all but cancel moves it far, which says how many of its digits count.")
	fmt.Fprintln(w)
	fmt.Fprintln(w, "What rests on memory, practice or our choice, and of which 1 % moves a result by about as much or more:")
	for _, e := range all {
		switch e.Status {
		case ledger.Recalled, ledger.Practice, ledger.Fitted, ledger.Chosen:
			if e.Share() > 0.9 {
				fmt.Fprintf(w, "  %-5s %% of %s: %s (%s)\n", e.Moves, e.Moved, e.What, e.Status)
			}
		}
	}
	fmt.Fprintln(w)
	count := map[ledger.Status]int{}
	unchecked := 0
	for _, e := range all {
		count[e.Status]++
		moves := "moves nothing that the catalogue computes"
		switch {
		case e.Share() < 0:
			moves = "what it moves was not tried"
		case e.Share() > 0:
			moves = "moves " + e.Moves + " % of " + e.Moved
		}
		fmt.Fprintf(w, "%s\n  %s %s: %s\n  %s; %s\n  %s\n", e.What, e.File, e.Name, withUnit(e.Value, dashless(e.Unit)), e.Status, e.Source, moves)
		switch e.Status {
		case ledger.Fitted, ledger.Chosen:
			fmt.Fprintln(w, "  checked by", e.Check)
			if unheld(e) {
				unchecked++
			}
		}
		fmt.Fprintln(w)
	}
	fmt.Fprintf(w, "%d rows:", len(all))
	for _, s := range ledger.Statuses() {
		fmt.Fprintf(w, " %s %d;", s, count[s])
	}
	fmt.Fprintf(w, "\n%d of those fitted or chosen have nothing else that checks them, as their rows say.\n", unchecked)
	return nil
}

func dashless(unit string) string {
	if unit == "-" {
		return ""
	}
	return unit
}

const noCheck = "none: "

// unheld reports whether nothing but the figures that it was made from holds an entry.
func unheld(e ledger.Entry) bool {
	return len(e.Check) > len(noCheck) && e.Check[:len(noCheck)] == noCheck
}
