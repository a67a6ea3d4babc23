package delimited

import "bytes"

// AppendText appends text as a cell, in quotation marks where it needs them.
//
// A text that a spreadsheet could take for a formula (it starts with = + - @,
// a tab or a CR) gets an apostrophe before it, so that it stays text. It is for
// cells that a program adds; the cells of a user's file are never changed.
func AppendText(b []byte, text string, delim byte) []byte {
	if text == "" {
		return b
	}
	guard := ""
	switch text[0] {
	case '=', '+', '-', '@', '\t', '\r':
		guard = "'"
	}
	if !needsMarks(text, delim) {
		return append(append(b, guard...), text...)
	}
	b = append(append(b, '"'), guard...)
	for i := range len(text) {
		if text[i] == '"' {
			b = append(b, '"')
		}
		b = append(b, text[i])
	}
	return append(b, '"')
}

func needsMarks(text string, delim byte) bool {
	if text[0] == ' ' || text[len(text)-1] == ' ' {
		return true
	}
	for i := range len(text) {
		switch text[i] {
		case '"', '\n', '\r', delim:
			return true
		}
	}
	return false
}

// AppendNumber appends a cell with a number as its digits stand in text, a
// decimal point in it turned into a comma if comma is set. It is never guarded:
// -0.5 is a number and stays one.
func AppendNumber(b, text []byte, delim byte, comma bool) []byte {
	if !comma {
		return append(b, text...)
	}
	before, after, ok := bytes.Cut(text, []byte{'.'})
	if !ok {
		return append(b, text...)
	}
	if delim == ',' {
		b = append(b, '"')
	}
	b = append(b, before...)
	b = append(b, ',')
	b = append(b, after...)
	if delim == ',' {
		b = append(b, '"')
	}
	return b
}
