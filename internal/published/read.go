package published

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/shopspring/decimal"
)

// Limits of a file.
const (
	mostBytes   = 32 << 20
	mostRows    = 200_000
	mostColumns = 64
)

const (
	guardRows = 1 << iota
	guardSum
)

// Parse reads a table; name stands in its errors and in [Table.Name]. The error
// is a [*FileError].
func Parse(name string, from io.Reader) (*Table, error) {
	text, err := io.ReadAll(io.LimitReader(from, mostBytes+1))
	p := parser{
		name:  name,
		table: &Table{Name: name, tolerances: map[string]Tolerance{}},
		heads: map[string]head{},
	}
	switch {
	case err != nil:
		err = p.fail(0, "%v", err)
	case len(text) > mostBytes:
		err = p.fail(0, "larger than %d bytes", mostBytes)
	case !utf8.Valid(text) || bytes.IndexByte(text, 0) >= 0:
		err = p.fail(0, "not a text in UTF-8; save the file as CSV in UTF-8")
	default:
		err = p.read(bytes.TrimPrefix(text, []byte("\ufeff")))
	}
	if err != nil {
		return nil, err
	}
	return p.table, nil
}

type parser struct {
	name  string
	table *Table
	heads map[string]head
	order []string // of the heads
}

type head struct {
	line  int
	value string
}

func (p *parser) fail(line int, format string, args ...any) error {
	return &FileError{File: p.name, Line: line, Reason: fmt.Sprintf(format, args...)}
}

func (p *parser) read(text []byte) error {
	line, rest, err := p.readHeads(text)
	if err != nil {
		return err
	}
	rows := csv.NewReader(bufio.NewReader(bytes.NewReader(rest)))
	rows.FieldsPerRecord = -1
	rows.ReuseRecord = true
	seen := map[string]int{}
	for {
		cells, err := rows.Read()
		if err == io.EOF {
			break
		}
		if e, ok := errors.AsType[*csv.ParseError](err); ok {
			return p.fail(line+e.Line, "%v", e.Err)
		} else if err != nil {
			return p.fail(0, "%v", err)
		}
		at, _ := rows.FieldPos(0)
		at += line
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		if p.table.Columns == nil {
			if err := p.columns(at, cells); err != nil {
				return err
			}
			continue
		}
		if len(cells) != len(p.table.Columns) {
			return p.fail(at, "%d cells, but %d columns", len(cells), len(p.table.Columns))
		}
		key := strings.Join(cells, "\x00")
		if before, twice := seen[key]; twice {
			return p.fail(at, "the same row as line %d", before)
		}
		seen[key] = at
		if len(p.table.rows) == mostRows {
			return p.fail(at, "more than %d rows", mostRows)
		}
		p.table.rows = append(p.table.rows, Row{Line: at, Cells: append([]string(nil), cells...), table: p.table})
	}
	if p.table.Columns == nil {
		return p.fail(0, "no line of column names after the heads")
	}
	if len(p.table.rows) == 0 {
		return p.fail(0, "no rows")
	}
	return p.finish()
}

// readHeads reads the lines that start with #, and returns their number and
// what follows them. A spreadsheet may have quoted such a line, or filled it up
// with commas.
func (p *parser) readHeads(text []byte) (lines int, rest []byte, err error) {
	for len(text) > 0 && (text[0] == '#' || text[0] == '"' && len(text) > 1 && text[1] == '#') {
		line, after, _ := bytes.Cut(text, []byte("\n"))
		text = after
		lines++
		s := strings.TrimRight(string(line), "\r")
		if s[0] == '"' {
			cells, err := csv.NewReader(strings.NewReader(s)).Read()
			if err != nil {
				return 0, nil, p.fail(lines, "a quotation mark out of place")
			}
			s = strings.Join(cells, ",")
		}
		s = strings.TrimRight(strings.TrimSpace(s[1:]), ", ")
		key, value, found := strings.Cut(s, ":")
		key, value = strings.Join(strings.Fields(key), " "), strings.TrimSpace(value)
		if !found || value == "" {
			return 0, nil, p.fail(lines, "head line %.60q is not \"# key: value\"", s)
		}
		if before, twice := p.heads[key]; twice {
			return 0, nil, p.fail(lines, "head %q stands twice, first in line %d", key, before.line)
		}
		p.heads[key] = head{lines, value}
		p.order = append(p.order, key)
	}
	return lines, text, nil
}

func (p *parser) columns(line int, cells []string) error {
	if len(cells) > mostColumns {
		return p.fail(line, "more than %d columns", mostColumns)
	}
	if len(cells) == 1 && strings.Contains(cells[0], ";") {
		return p.fail(line, "the columns are parted by \";\": save with commas between cells and points in numbers")
	}
	labels := map[string]bool{}
	if h, ok := p.heads["labels"]; ok {
		for name := range strings.SplitSeq(h.value, ",") {
			labels[strings.TrimSpace(name)] = true
		}
	}
	for _, text := range cells {
		c, err := parseColumn(text)
		if err != nil {
			return p.fail(line, "column %.40q: %v", text, err)
		}
		if p.table.Column(c.Name) >= 0 {
			return p.fail(line, "column %q stands twice", c.Name)
		}
		c.Label = labels[c.Name]
		delete(labels, c.Name)
		p.table.Columns = append(p.table.Columns, c)
	}
	for name := range labels {
		return p.fail(p.heads["labels"].line, "label %q is not a column", name)
	}
	return nil
}

// parseColumn takes "name (unit)" apart.
func parseColumn(text string) (Column, error) {
	c := Column{Name: text}
	if open := strings.IndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		c.Name, c.Unit = strings.TrimSpace(text[:open]), strings.TrimSpace(text[open+1:len(text)-1])
		if !Knows(c.Unit) {
			return c, fmt.Errorf("unit %q is not known", c.Unit)
		}
	}
	if c.Name == "" || strings.Trim(c.Name, "abcdefghijklmnopqrstuvwxyz0123456789_") != "" {
		return c, errors.New("want \"name (unit)\", the name in lower case with underscores, as the catalogue has it")
	}
	return c, nil
}

// finish reads the heads, once the columns and rows are there.
func (p *parser) finish() error {
	t := p.table
	for _, key := range p.order {
		h := p.heads[key]
		word, name, named := strings.Cut(key, " ")
		if must := word == "fixed" || word == "sum"; named != must && word != "tolerance" {
			return p.fail(h.line, "head %.40q is not known", key)
		}
		var err error
		switch word {
		case "title":
			t.Title = h.value
		case "source":
			t.Source = h.value
		case "status":
			err = p.status(h)
		case "checks":
			t.Checks = h.value
		case "note":
			t.Note = h.value
		case "rival":
			t.Rival = h.value
		case "difference":
			t.Difference = h.value
		case "again":
			t.Again = h.value
		case "case":
			t.Case = h.value
		case "labels": // read with the columns
		case "fixed":
			t.Fixed = append(t.Fixed, Fixed{name, h.value})
			if t.Column(name) >= 0 {
				err = p.fail(h.line, "%q is fixed, and is a column too", name)
			}
		case "tolerance":
			err = p.tolerance(h, name)
		case "rows":
			t.guards |= guardRows
			if n, e := strconv.Atoi(h.value); e != nil || n != len(t.rows) {
				err = p.fail(h.line, "the head says %.20s rows, but there are %d", h.value, len(t.rows))
			}
		case "sum":
			t.guards |= guardSum
			err = p.sum(h, name)
		default:
			err = p.fail(h.line, "head %.40q is not known", key)
		}
		if err != nil {
			return err
		}
	}
	for _, key := range []string{"title", "source", "status", "checks"} {
		if _, ok := p.heads[key]; !ok {
			return p.fail(0, "no head line \"# %s: …\"", key)
		}
	}
	switch {
	case t.tolerance == nil && len(t.tolerances) == 0:
		return p.fail(0, "no head line \"# tolerance: …\"")
	case (t.Rival == "") != (t.Difference == ""):
		return p.fail(0, "the heads rival and difference need each other")
	}
	return nil
}

func (p *parser) status(h head) error {
	for _, s := range Statuses() {
		if h.value == string(s) {
			p.table.Status = s
			return nil
		}
	}
	return p.fail(h.line, "status %.40q is not one of %q", h.value, Statuses())
}

func (p *parser) tolerance(h head, column string) error {
	tol, err := parseTolerance(h.value)
	if err != nil {
		return p.fail(h.line, "%v", err)
	}
	if column == "" {
		p.table.tolerance = &tol
		return nil
	}
	if p.table.Column(column) < 0 {
		return p.fail(h.line, "%q is not a column", column)
	}
	p.table.tolerances[column] = tol
	return nil
}

// sum compares a column's exact sum.
func (p *parser) sum(h head, column string) error {
	i := p.table.Column(column)
	if i < 0 {
		return p.fail(h.line, "%q is not a column", column)
	}
	want, err := exact(h.value)
	if err != nil {
		return p.fail(h.line, "sum %v", err)
	}
	var sum decimal.Decimal
	for _, r := range p.table.rows {
		v, err := exact(r.Cells[i])
		if err != nil {
			return p.fail(r.Line, "column %q: %v", column, err)
		}
		sum = sum.Add(v)
	}
	if !sum.Equal(want) {
		return p.fail(h.line, "column %q adds up to %s, not %s: a cell has changed", column, sum, want)
	}
	return nil
}

// exact reads a number in decimal; [number] bounds its size first.
func exact(text string) (decimal.Decimal, error) {
	v, err := number(text)
	if err != nil {
		return decimal.Decimal{}, err
	}
	if _, exponent, ok := strings.Cut(strings.ToLower(text), "e"); ok {
		if n, err := strconv.Atoi(exponent); err != nil || n < -60 || n > 60 {
			return decimal.Decimal{}, fmt.Errorf("%.40q has an exponent beyond 60", text)
		}
	}
	d, err := decimal.NewFromString(text)
	if err != nil {
		return decimal.NewFromFloat(v), nil // a form that only strconv reads, "1."
	}
	return d, nil
}
