package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/zymase/internal/published"
)

// A Rival is a table that disagrees with this one: both stand.
type Rival struct {
	Table      string  `json:"table"`
	Source     string  `json:"source"`
	Difference string  `json:"difference"` // what is known about why
	Shared     int     `json:"shared"`     // rows with the same inputs in both
	Largest    float64 `json:"largest"`    // this table minus its rival, at the row where they are farthest apart
	At         []Cell  `json:"at,omitempty"`
	Column     string  `json:"column,omitempty"`
	Unit       string  `json:"unit,omitempty"`
}

// compareRival finds how far a table is from its rival, where both have the
// same inputs.
func compareRival(b *binding) (*Rival, error) {
	if b.table.Rival == "" {
		return nil, nil
	}
	t, err := published.Find(b.table.Rival)
	if err != nil {
		return nil, &published.FileError{File: b.table.Name, Reason: "rival: " + err.Error()}
	}
	other, err := bind(t)
	if err != nil {
		return nil, err
	}
	r := &Rival{Table: t.Name, Source: t.Source, Difference: b.table.Difference}
	theirs := map[string]published.Row{}
	for row := range t.Rows() {
		key, err := other.point(row)
		if err != nil {
			return nil, err
		}
		theirs[key] = row
	}
	for row := range b.table.Rows() {
		key, err := b.point(row)
		if err != nil {
			return nil, err
		}
		match, ok := theirs[key]
		if !ok {
			continue
		}
		r.Shared++
		for _, o := range b.outputs {
			column := b.table.Columns[o.column]
			i := t.Column(column.Name)
			if i < 0 || t.Columns[i].Unit != column.Unit {
				continue
			}
			mine, err1 := row.Number(column.Name)
			its, err2 := match.Number(column.Name)
			if err1 != nil || err2 != nil || math.Abs(mine-its) < math.Abs(r.Largest) {
				continue
			}
			r.Largest, r.Column, r.Unit, r.At = tidy(mine-its), column.Name, column.Unit, nil
			for _, c := range b.inputs {
				at := b.table.Columns[c.column]
				r.At = append(r.At, Cell{at.Name, at.Unit, row.Cells[c.column]})
			}
		}
	}
	return r, nil
}

// point writes all inputs of a row, those that are fixed or left at their
// default too.
func (b *binding) point(row published.Row) (string, error) {
	in := make([]float64, len(b.function.Inputs))
	if err := b.fill(row, in); err != nil {
		return "", err
	}
	var text strings.Builder
	for i, v := range in {
		fmt.Fprintf(&text, "%s=%.9g ", b.function.Inputs[i].Name, v)
	}
	return text.String(), nil
}

// tidy drops the last bits of a difference of two printed numbers.
func tidy(x float64) float64 {
	v, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 9, 64), 64)
	if err != nil {
		return x
	}
	return v
}
