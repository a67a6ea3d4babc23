package main

import (
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// writeText prints the report. every prints each row; own tells that the tables
// are the user's, so that each failing row is printed.
func (r *Report) writeText(w io.Writer, every, own bool) {
	for _, t := range r.Tables {
		t.writeText(w)
		for i, row := range t.Rows {
			if every || own && !row.OK {
				row.writeText(w)
			} else if !row.OK && i != t.Worst {
				row.writeText(w)
			}
		}
		fmt.Fprintln(w)
	}
	if every || own {
		if r.Failed > 0 {
			fmt.Fprintf(w, "%s out of tolerance\n", plural(r.Failed, "row"))
		} else {
			fmt.Fprintln(w, "every row is within its tolerance")
		}
		return
	}
	fmt.Fprintf(w, "%-28s %8s %8s %8s %8s %8s\n", "status", "tables", "rows", "again", "sources", "failed")
	for _, t := range r.Totals {
		fmt.Fprintf(w, "%-28s %8d %8d %8d %8d %8d\n", t.Status, t.Tables, t.Rows, t.Again, t.Sources, t.Failed)
	}
	fmt.Fprintln(w, "\nOnly rows that were read in their source count as published; \"again\" are the same printed")
	fmt.Fprintln(w, "rows held against another function, counted once.")
	cases, kinds := 0, map[string]int{}
	for _, t := range r.Tables {
		if t.Case != "" && t.Again == "" {
			cases += t.Count
			kinds[t.Case] += t.Count
		}
	}
	fmt.Fprintf(w, "\nWhole cases from practice among them, what was put in beside what was measured: %d\n", cases)
	for _, kind := range slices.Sorted(maps.Keys(kinds)) {
		fmt.Fprintf(w, "  %-28s %8d\n", kind, kinds[kind])
	}
	why := unreadReasons()
	list := func(what string, names []string) {
		fmt.Fprintf(w, "\n%s: %d of %d\n", what, len(names), r.Functions)
		for _, name := range names {
			fmt.Fprintln(w, strings.TrimSuffix("  "+name+": "+why[name], ": "))
		}
	}
	list("Functions of the catalogue that no published row reaches, only rows computed, recalled or of an excerpt", r.Unread)
	list("Functions of the catalogue that no row of any table reaches", r.Unreached)
}

func (t *Result) writeText(w io.Writer) {
	verdict := "within tolerance"
	if t.Failed > 0 {
		verdict = fmt.Sprintf("OUT OF TOLERANCE in %s", plural(t.Failed, "row"))
	}
	fmt.Fprintf(w, "%s: %s\n", t.Table, verdict)
	line := func(name, text string) { fmt.Fprintf(w, "  %-10s %s\n", name, text) }
	line("title", t.Title)
	line("source", t.Source)
	line("status", string(t.Status))
	function := t.Function
	if len(t.Fixed) > 0 {
		function += " with " + cells(t.Fixed)
	}
	line("function", function)
	count := strconv.Itoa(t.Count)
	if t.Again != "" {
		count += ", the printed rows of " + t.Again + " again"
	}
	line("rows", count)
	for i, a := range t.Tolerances {
		same := i > 0 && a.Amount == t.Tolerances[i-1].Amount && a.Reason == t.Tolerances[i-1].Reason
		if !same {
			text := a.Amount + "; " + a.Reason
			if len(t.Tolerances) > 1 && a != t.Tolerances[0] {
				text = a.Column + " " + text
			}
			line("tolerance", text)
		}
	}
	worst := t.Rows[t.Worst]
	line("worst row", fmt.Sprintf("line %d: %s", worst.Line, cells(worst.Labels, worst.Inputs)))
	worst.values(func(text string) { line("", text) })
	if t.Note != "" {
		line("note", t.Note)
	}
	if v := t.Rival; v != nil {
		line("disagrees", fmt.Sprintf("with %s (%s): %s", v.Table, v.Source, v.Difference))
		if v.Column != "" {
			line("", fmt.Sprintf("this table minus that one: up to %s in %s, at %s; %s in both",
				withUnit(fmt.Sprintf("%+g", v.Largest), v.Unit), v.Column, cells(v.At), plural(v.Shared, "row")))
		}
	}
}

func (r *Row) writeText(w io.Writer) {
	mark := "ok  "
	if !r.OK {
		mark = "FAIL"
	}
	fmt.Fprintf(w, "  %s line %d: %s\n", mark, r.Line, cells(r.Labels, r.Inputs))
	r.values(func(text string) { fmt.Fprintln(w, "         "+text) })
}

// values says what was printed and computed.
func (r *Row) values(say func(string)) {
	if r.Error != "" {
		say("refused: " + r.Error)
	}
	for _, v := range r.Values {
		places := decimals(v.Printed) + 2
		text := fmt.Sprintf("%s: printed %s, computed %s, difference %s, allowed %s", v.Name,
			withUnit(v.Printed, v.Unit), number(v.Computed, places), signed(v.Difference), strconv.FormatFloat(v.Tolerance, 'g', 3, 64))
		if !v.OK {
			text += "  OUT"
		}
		say(text)
	}
}

func cells(lists ...[]Cell) string {
	var parts []string
	for _, list := range lists {
		for _, c := range list {
			parts = append(parts, c.Name+" "+withUnit(c.Text, c.Unit))
		}
	}
	return strings.Join(parts, ", ")
}

func withUnit(text, unit string) string {
	if unit == "" {
		return text
	}
	return text + " " + unit
}

func plural(n int, word string) string {
	if n == 1 {
		return "1 " + word
	}
	return strconv.Itoa(n) + " " + word + "s"
}

// decimals counts the digits after the point of a printed number.
func decimals(text string) int {
	if strings.ContainsAny(text, "eE") {
		return -1
	}
	_, fraction, _ := strings.Cut(text, ".")
	return len(fraction)
}

func number(v float64, places int) string {
	if places < 2 {
		return strconv.FormatFloat(v, 'g', 6, 64)
	}
	if places > 14 {
		return strconv.FormatFloat(v, 'g', 17, 64)
	}
	return strconv.FormatFloat(v, 'f', places, 64)
}

func signed(v float64) string {
	text := strconv.FormatFloat(v, 'g', 2, 64)
	if v >= 0 {
		text = "+" + text
	}
	return text
}
