package main

import (
	"math"

	"example.org/zymase/internal/published"
)

// A Result is a table held against its function.
type Result struct {
	Table      string           `json:"table"`
	Title      string           `json:"title"`
	Source     string           `json:"source"`
	Status     published.Status `json:"status"`
	Function   string           `json:"function"`
	Fixed      []Cell           `json:"fixed,omitempty"` // inputs that are the same in every row
	Note       string           `json:"note,omitempty"`
	Again      string           `json:"again,omitempty"` // the table whose printed rows these are
	Case       string           `json:"case,omitempty"`  // what each row is a whole case of
	Tolerances []Allowance      `json:"tolerances"`
	Count      int              `json:"count"` // rows
	Failed     int              `json:"failed"`
	Worst      int              `json:"worst"` // index in Rows
	Rival      *Rival           `json:"rival,omitempty"`
	Rows       []Row            `json:"rows"`
}

// An Allowance is the tolerance of an output column.
type Allowance struct {
	Column string `json:"column"`
	Amount string `json:"amount"`
	Reason string `json:"reason"`
}

// A Row is one row with what was computed for it.
type Row struct {
	Line   int     `json:"line"`
	Labels []Cell  `json:"labels,omitempty"`
	Inputs []Cell  `json:"inputs"`
	Values []Value `json:"values"`
	Error  string  `json:"error,omitempty"` // what the function refused
	OK     bool    `json:"ok"`
	used   float64 // the largest part of a tolerance that was used
}

// A Cell is an input or label as printed.
type Cell struct {
	Name string `json:"name"`
	Unit string `json:"unit,omitempty"`
	Text string `json:"text"`
}

// A Value is a printed value beside the computed one.
type Value struct {
	Name       string  `json:"name"`
	Unit       string  `json:"unit,omitempty"`
	Printed    string  `json:"printed"`
	Computed   float64 `json:"computed"`
	Difference float64 `json:"difference"` // computed minus printed
	Tolerance  float64 `json:"tolerance"`
	OK         bool    `json:"ok"`
}

// check computes every row. The error is one of the file.
func check(t *published.Table) (*Result, error) {
	b, err := bind(t)
	if err != nil {
		return nil, err
	}
	r := &Result{
		Table: t.Name, Title: t.Title, Source: t.Source, Status: t.Status,
		Function: t.Checks, Note: t.Note, Again: t.Again, Case: t.Case, Count: t.Len(),
	}
	for _, f := range t.Fixed {
		r.Fixed = append(r.Fixed, Cell{f.Name, "", f.Text})
	}
	for _, o := range b.outputs {
		tol, _ := t.Tolerance(t.Columns[o.column].Name)
		r.Tolerances = append(r.Tolerances, Allowance{t.Columns[o.column].Name, tol.Text, tol.Reason})
	}
	in, out := make([]float64, len(b.function.Inputs)), make([]float64, len(b.function.Outputs))
	for row := range t.Rows() {
		got, err := b.row(row, in, out)
		if err != nil {
			return nil, err
		}
		if !got.OK {
			r.Failed++
		}
		if r.Rows = append(r.Rows, got); got.used > r.Rows[r.Worst].used {
			r.Worst = len(r.Rows) - 1
		}
	}
	if r.Rival, err = compareRival(b); err != nil {
		return nil, err
	}
	return r, nil
}

func (b *binding) row(row published.Row, in, out []float64) (Row, error) {
	got := Row{Line: row.Line, OK: true}
	for _, at := range b.labels {
		got.Labels = append(got.Labels, Cell{b.table.Columns[at].Name, "", row.Cells[at]})
	}
	for _, c := range b.inputs {
		column := b.table.Columns[c.column]
		got.Inputs = append(got.Inputs, Cell{column.Name, column.Unit, row.Cells[c.column]})
	}
	if err := b.fill(row, in); err != nil {
		return got, err
	}
	// The printed values are read first: a wrong one is an error of the file.
	for _, c := range b.outputs {
		if _, err := row.Number(b.table.Columns[c.column].Name); err != nil {
			return got, err
		}
	}
	if err := b.function.Call(in, out); err != nil {
		got.Error, got.OK, got.used = err.Error(), false, math.Inf(1)
		return got, nil
	}
	for _, c := range b.outputs {
		column, cell := b.table.Columns[c.column], row.Cells[c.column]
		tol, _ := b.table.Tolerance(column.Name)
		v := Value{Name: column.Name, Unit: column.Unit, Printed: cell, Computed: c.convert(out[c.place]), Tolerance: tol.Allow(cell)}
		if v.Computed-v.Computed != 0 {
			got.Error, got.OK, got.used = column.Name+" has no finite value in "+column.Unit, false, math.Inf(1)
			return got, nil
		}
		v.Difference, v.OK = tol.Within(v.Computed, cell)
		got.OK = got.OK && v.OK
		used := math.Inf(1)
		if v.Tolerance > 0 {
			used = math.Abs(v.Difference) / v.Tolerance
		} else if v.OK {
			used = 0
		}
		got.used = math.Max(got.used, used)
		got.Values = append(got.Values, v)
	}
	return got, nil
}
