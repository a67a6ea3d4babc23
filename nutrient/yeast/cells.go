package yeast

import (
	"strconv"

	"example.org/zymase/internal/limit"
)

// Cells is a number of live yeast cells. The zero value is none.
type Cells struct{ billion float64 }

// Billion returns n billion (1e9) live cells. The error is a
// [*units.RangeError] if n is not from 0 to 1e12.
func Billion(n float64) (Cells, error) {
	if err := limit.Check("yeast.Billion", "cells", n, "billion", 0, 1e12, "a count"); err != nil {
		return Cells{}, err
	}
	return Cells{n}, nil
}

// Billion returns the number of cells in billions (1e9).
func (c Cells) Billion() float64 { return c.billion }

// Plus returns c + o.
func (c Cells) Plus(o Cells) Cells { return Cells{c.billion + o.billion} }

// String reads "600 billion cells".
func (c Cells) String() string {
	return strconv.FormatFloat(c.billion, 'g', 4, 64) + " billion cells"
}
