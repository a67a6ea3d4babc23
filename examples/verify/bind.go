package main

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/internal/published"
)

// A binding ties the columns of a table to the inputs and outputs of the
// function that it checks.
type binding struct {
	table    *published.Table
	function *catalogue.Function
	start    []float64 // inputs: fixed values and defaults
	inputs   []bound
	outputs  []bound
	labels   []int // columns
}

// bound is a column with its place in the function.
type bound struct {
	column, place int
	convert       catalogue.Conversion // of an input to the stated unit, of an output to that of the column
}

// bind finds the place of each column; what does not fit is an error of the
// file.
func bind(t *published.Table) (*binding, error) {
	fail := func(format string, args ...any) (*binding, error) {
		return nil, &published.FileError{File: t.Name, Reason: fmt.Sprintf(format, args...)}
	}
	f, err := catalogue.Find(t.Checks)
	if err != nil {
		return fail("checks: %v", err)
	}
	b := &binding{table: t, function: f, start: make([]float64, len(f.Inputs))}
	given := make([]bool, len(f.Inputs))
	for i, p := range f.Inputs {
		b.start[i], given[i] = p.Default, p.HasDefault
	}
	for _, fixed := range t.Fixed {
		i, ok := f.Input(fixed.Name)
		if !ok {
			return fail("fixed %s: %s has no such input; it has %s", fixed.Name, f.Name, inputs(f))
		}
		if b.start[i], err = f.Inputs[i].Parse(fixed.Text); err != nil {
			return fail("fixed %v", err)
		}
		given[i] = true
	}
	for at, c := range t.Columns {
		if c.Label {
			b.labels = append(b.labels, at)
			continue
		}
		if i, ok := f.Input(c.Name); ok {
			p := &f.Inputs[i]
			if c.Unit == "" && p.Unit != "" {
				return fail("column %s has no unit; write one, as \"%s\"", c.Name, catalogue.Head(p.Name, p.Unit))
			}
			convert, err := p.Conversion(c.Unit)
			if err != nil {
				return fail("column %v", err)
			}
			b.inputs = append(b.inputs, bound{at, i, convert})
			given[i] = true
			continue
		}
		i, ok := f.Output(c.Name)
		if !ok {
			return fail("column %q is no input of %s (%s), no output (%s) and no label", c.Name, f.Name, inputs(f), outputs(f))
		}
		p := &f.Outputs[i]
		if c.Unit == "" && p.Unit != "" {
			return fail("column %s has no unit; write one, as \"%s\"", c.Name, catalogue.Head(p.Name, p.Unit))
		}
		convert, err := p.Conversion(c.Unit)
		if err != nil {
			return fail("column %v", err)
		}
		if _, ok := t.Tolerance(c.Name); !ok {
			return fail("column %s is compared, but has no tolerance", c.Name)
		}
		b.outputs = append(b.outputs, bound{at, i, convert})
	}
	if len(b.outputs) == 0 {
		return fail("no column is an output of %s; it has %s", f.Name, outputs(f))
	}
	for i, ok := range given {
		if !ok {
			return fail("input %s of %s is neither a column nor fixed, and has no default", f.Inputs[i].Name, f.Name)
		}
	}
	return b, b.unique()
}

// unique refuses two rows with the same inputs and labels.
func (b *binding) unique() error {
	seen := map[string]int{}
	for row := range b.table.Rows() {
		key := b.key(row)
		if before, twice := seen[key]; twice {
			return &published.FileError{File: b.table.Name, Line: row.Line,
				Reason: fmt.Sprintf("the same inputs as line %d", before)}
		}
		seen[key] = row.Line
	}
	return nil
}

// key writes what a row gives besides what is compared.
func (b *binding) key(row published.Row) string {
	var parts []string
	for _, in := range b.inputs {
		c := b.table.Columns[in.column]
		text := row.Cells[in.column]
		if v, err := row.Number(c.Name); err == nil {
			text = fmt.Sprintf("%.9g", in.convert(v))
		}
		parts = append(parts, c.Name+"="+text)
	}
	for _, at := range b.labels {
		parts = append(parts, row.Cells[at])
	}
	return strings.Join(parts, "\x00")
}

// fill reads the inputs of a row into in.
func (b *binding) fill(row published.Row, in []float64) error {
	copy(in, b.start)
	for _, c := range b.inputs {
		p := &b.function.Inputs[c.place]
		if p.Options != nil {
			v, err := p.Parse(row.Cells[c.column])
			if err != nil {
				return &published.FileError{File: b.table.Name, Line: row.Line, Reason: err.Error()}
			}
			in[c.place] = v
			continue
		}
		v, err := row.Number(p.Name)
		if err != nil {
			return err
		}
		in[c.place] = c.convert(v)
	}
	return nil
}

func inputs(f *catalogue.Function) string {
	var names []string
	for _, p := range f.Inputs {
		names = append(names, catalogue.Head(p.Name, p.Unit))
	}
	return strings.Join(names, ", ")
}

func outputs(f *catalogue.Function) string {
	var names []string
	for _, p := range f.Outputs {
		names = append(names, catalogue.Head(p.Name, p.Unit))
	}
	return strings.Join(names, ", ")
}
