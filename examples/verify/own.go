package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/zymase/internal/published"
)

// readOwn reads a user's file: a table in the form of internal/published, or one as a spreadsheet
// exports it, with heads that are mapped to the inputs and outputs of a function.
func readOwn(path string, ask *asker) (*published.Table, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	name := strings.TrimSuffix(filepath.Base(path), ".csv")
	plain := bytes.TrimPrefix(text, []byte("\ufeff"))
	if first := bytes.TrimLeft(plain, `"`); len(first) == 0 || first[0] == '#' {
		return published.Parse(name, bytes.NewReader(text))
	}
	sheet, err := readSheet(name, plain)
	if err != nil {
		return nil, err
	}
	table, err := ask.mapped(sheet)
	if err != nil {
		return nil, err
	}
	return published.Parse(name, strings.NewReader(table))
}

// A sheet is a table as it was exported: its heads with their units, and its rows of numbers.
type sheet struct {
	name  string
	title string // what stands above the heads
	heads []sheetHead
	rows  []sheetRow
	notes []string // rows that were left out, with their lines
	comma bool     // the decimal mark
}

// A sheetHead is a head with its unit, and the text that it was read from.
type sheetHead struct{ text, name, unit string }

type sheetRow struct {
	line  int
	cells []string
}

// readSheet finds the heads and rows of an export: any of comma, semicolon and tab between cells, a
// decimal comma, titles above, heads over two lines of which the upper was merged, a line of units,
// notes between and below.
func readSheet(name string, text []byte) (*sheet, error) {
	fail := func(format string, args ...any) (*sheet, error) {
		return nil, &published.FileError{File: name, Reason: fmt.Sprintf(format, args...)}
	}
	if !utf8.Valid(text) {
		return fail("not a text in UTF-8; save the file as CSV in UTF-8")
	}
	lines, err := cellsOf(text)
	if err != nil {
		return fail("%v", err)
	}
	s := &sheet{name: name, comma: decimalComma(lines)}
	first := -1 // the first row of numbers
	for i, l := range lines {
		if s.numbers(l.cells) >= 2 || s.numbers(l.cells) == 1 && filled(l.cells) == 1 && len(l.cells) == 1 {
			first = i
			break
		}
	}
	if first < 1 {
		return fail("no row of heads above a row of numbers; say with a head and a unit what each column is, as \"temperature (°C)\"")
	}
	top := first - 1
	for top > 0 && first-top < 3 && (filled(lines[top-1].cells) >= 2 || lines[top-1].cells[0] == "") { // one that is not in the first column was merged
		top--
	}
	s.heads = joined(lines[top:first], len(lines[first].cells))
	for _, l := range lines[:top] {
		s.title = strings.TrimSpace(s.title + " " + strings.Join(strings.Fields(strings.Join(l.cells, " ")), " "))
	}
	for _, l := range lines[first:] {
		if n := s.numbers(l.cells); n == 0 || n < 2 && filled(l.cells) < 2 && len(s.heads) > 1 {
			s.notes = append(s.notes, fmt.Sprintf("line %d: %s", l.line, strings.Join(strings.Fields(strings.Join(l.cells, " ")), " ")))
			continue
		}
		row := sheetRow{line: l.line}
		for i := range s.heads {
			cell := ""
			if i < len(l.cells) {
				cell = strings.TrimSpace(l.cells[i])
			}
			if v, ok := s.number(cell); ok {
				cell = v
			}
			row.cells = append(row.cells, cell)
		}
		s.rows = append(s.rows, row)
	}
	return s, nil
}

// cellsOf splits a text at the mark that stands most evenly in its lines. Empty lines go.
func cellsOf(text []byte) ([]sheetRow, error) {
	mark, most := ',', -1
	for _, m := range []rune{',', ';', '\t'} {
		n := 0
		for line := range strings.Lines(string(text)) {
			if strings.ContainsRune(line, m) {
				n++
			}
		}
		if n > most || n == most && m != ',' { // with decimal commas both stand in each line
			mark, most = m, n
		}
	}
	r := csv.NewReader(bytes.NewReader(text))
	r.Comma, r.FieldsPerRecord, r.LazyQuotes = mark, -1, true
	var rows []sheetRow
	for {
		cells, err := r.Read()
		if cells == nil && err != nil {
			if err.Error() == "EOF" {
				return rows, nil
			}
			return nil, err
		}
		if err != nil {
			return nil, err
		}
		line, _ := r.FieldPos(0)
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		for len(cells) > 0 && cells[len(cells)-1] == "" {
			cells = cells[:len(cells)-1]
		}
		if filled(cells) > 0 {
			rows = append(rows, sheetRow{line, cells})
		}
	}
}

var (
	withComma = regexp.MustCompile(`^[+-]?[0-9]+(\.[0-9]{3})*,[0-9]+$`)
	withPoint = regexp.MustCompile(`^[+-]?[0-9]+(,[0-9]{3})*\.[0-9]+$`)
)

// decimalComma reports whether the numbers of a file have one.
func decimalComma(lines []sheetRow) bool {
	commas, points := 0, 0
	for _, l := range lines {
		for _, c := range l.cells {
			if withComma.MatchString(c) {
				commas++
			} else if withPoint.MatchString(c) {
				points++
			}
		}
	}
	return commas > points
}

// number reads a cell with the decimal mark of the file, and writes it with a point.
func (s *sheet) number(cell string) (string, bool) {
	cell = strings.NewReplacer("\u2212", "-", "\u00a0", "", "\u202f", "").Replace(cell)
	switch {
	case s.comma:
		cell = strings.Replace(strings.ReplaceAll(cell, ".", ""), ",", ".", 1)
	case withPoint.MatchString(cell):
		cell = strings.ReplaceAll(cell, ",", "")
	}
	_, err := strconv.ParseFloat(cell, 64)
	return cell, err == nil && strings.Trim(cell, "0123456789.+-eE") == ""
}

func (s *sheet) numbers(cells []string) int {
	n := 0
	for _, c := range cells {
		if _, ok := s.number(c); ok {
			n++
		}
	}
	return n
}

func filled(cells []string) int {
	n := 0
	for _, c := range cells {
		if c != "" {
			n++
		}
	}
	return n
}

// joined makes one head of each column out of one to three lines: a merged cell holds for the
// empty ones to its right where there is a line below, and a lowest line of units alone is that.
func joined(lines []sheetRow, width int) []sheetHead {
	for _, l := range lines {
		width = max(width, len(l.cells))
	}
	heads := make([]sheetHead, width)
	for k, l := range lines {
		carried := ""
		units := k == len(lines)-1 && k > 0 && allUnits(l.cells)
		for i := range heads {
			cell := ""
			if i < len(l.cells) {
				cell = l.cells[i]
			}
			if units {
				heads[i].unit = strings.Trim(cell, "()[] ")
				continue
			}
			if cell != "" {
				carried = cell
			} else if k < len(lines)-1 {
				cell = carried
			}
			if cell != "" && !strings.Contains(heads[i].text, cell) {
				heads[i].text = strings.TrimSpace(heads[i].text + " " + cell)
			}
		}
	}
	for i := range heads {
		h := &heads[i]
		h.name = h.text
		if h.unit != "" {
			continue
		}
		if m := bracketed.FindStringSubmatch(h.text); m != nil {
			h.name, h.unit = strings.TrimSpace(m[1]+" "+m[3]), m[2]
		} else if before, after, ok := strings.Cut(h.text, " / "); ok { // t / °C
			h.name, h.unit = strings.TrimSpace(before), strings.TrimSpace(after)
		} else if at := strings.LastIndex(h.text, ", "); at > 0 {
			h.name, h.unit = strings.TrimSpace(h.text[:at]), strings.TrimSpace(h.text[at+2:])
		}
	}
	for i := range heads {
		heads[i].unit = spelt(heads[i].unit)
	}
	return heads
}

var bracketed = regexp.MustCompile(`^(.*?)\s*[(\[]([^)\]]+)[)\]]\s*(.*)$`)

// allUnits reports whether every cell of a line looks like a unit.
func allUnits(cells []string) bool {
	for _, c := range cells {
		c = strings.Trim(c, "()[] -")
		if c != "" && !published.Knows(spelt(c)) {
			return false
		}
	}
	return true
}

// spelt writes a unit as the catalogue does.
func spelt(unit string) string {
	unit = strings.TrimSpace(unit)
	if as, ok := map[string]string{
		"%vol": "% vol", "vol%": "% vol", "vol.%": "% vol", "vol.-%": "% vol", "vol-%": "% vol", "%vol.": "% vol", "abv": "% vol",
		"%mas": "% mass", "mass%": "% mass", "mas%": "% mass", "gew.-%": "% mass", "w/w%": "% mass", "%w/w": "% mass",
		"°plato": "°P", "plato": "°P", "brix": "°Bx", "°brix": "°Bx", "deg c": "°C", "celsius": "°C", "ºc": "°C", "degc": "°C", "deg f": "°F",
		"mg/l": "mg/L", "g/l": "g/L", "ppm": "mg/L", "kg/m3": "kg/m³", "g/ml": "g/mL", "meq/l": "mEq/L", "mmol/l": "mmol/L", "mval/l": "mEq/L",
		"l": "L", "ml": "mL", "hl": "hL",
	}[strings.ToLower(unit)]; ok {
		return as
	}
	return unit
}
