package main

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// A section is a heading and its rows.
type section struct {
	title string
	rows  []row
}

// A row is a figure: what it is, its value, a remark, and where it comes from.
type row struct {
	label, value, note string
	relation, source   string // one a line, where the remark has figures of its own
}

const (
	labelWidth = 37
	valueWidth = 23
	pageWidth  = 112
)

// printText writes the sections for a terminal or a printer.
func printText(w io.Writer, sections []section, why bool) {
	for i, s := range sections {
		if i > 0 {
			fmt.Fprintln(w)
		}
		fmt.Fprintln(w, heading(s.title))
		for _, r := range s.rows {
			printRow(w, r, why)
		}
	}
}

// heading is a title in capitals, but for what stands behind a colon or in brackets: units
// and symbols keep theirs.
func heading(title string) string {
	i := strings.IndexAny(title, ":(")
	if i < 0 {
		i = len(title)
	}
	return strings.ToUpper(title[:i]) + title[i:]
}

func printRow(w io.Writer, r row, why bool) {
	if r.value == "" { // a sentence
		wrap(w, "  ", r.label)
	} else {
		line := "  " + pad(r.label, labelWidth) + " " + pad(r.value, valueWidth) + " " + r.note
		if utf8.RuneCountInString(r.note) > pageWidth-labelWidth-valueWidth-4 {
			fmt.Fprintln(w, strings.TrimRight("  "+pad(r.label, labelWidth)+" "+r.value, " "))
			wrap(w, "      ", r.note)
		} else {
			fmt.Fprintln(w, strings.TrimRight(line, " "))
		}
	}
	if why && r.relation != "" {
		sources := strings.Split(r.source, "\n")
		for i, relation := range strings.Split(r.relation, "\n") {
			wrap(w, "      = ", relation)
			wrap(w, "      source: ", sources[i])
		}
	}
}

func pad(s string, width int) string {
	if n := utf8.RuneCountInString(s); n < width {
		return s + strings.Repeat(" ", width-n)
	}
	return s
}

// wrap prints text in lines of the page's width; the first line starts with
// lead, the others under it.
func wrap(w io.Writer, lead, text string) {
	indent := strings.Repeat(" ", utf8.RuneCountInString(lead))
	line := lead
	empty := true
	for _, word := range strings.Fields(text) {
		if !empty && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > pageWidth {
			fmt.Fprintln(w, line)
			line, empty = indent, true
		}
		if !empty {
			line += " "
		}
		line += word
		empty = false
	}
	if !empty {
		fmt.Fprintln(w, line)
	}
}
