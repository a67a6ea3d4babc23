package yeast

import (
	"strconv"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
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

// cellsUnit ends the text of a number of cells.
const cellsUnit = " billion cells"

// MarshalText is the number in full, "612.5 billion cells"; the error is always nil.
func (c Cells) MarshalText() ([]byte, error) {
	return []byte(strconv.FormatFloat(c.billion, 'g', -1, 64) + cellsUnit), nil
}

// UnmarshalText reads what [Cells.MarshalText] writes. The error is a
// [*units.ParseError], or that of [Billion].
func (c *Cells) UnmarshalText(text []byte) error {
	n, err := number("number of cells", string(text), cellsUnit)
	if err != nil {
		return err
	}
	read, err := Billion(n)
	if err == nil {
		*c = read
	}
	return err
}

// number reads a number that is followed by its unit.
func number(want, text, unit string) (n float64, err error) {
	digits, found := strings.CutSuffix(text, unit)
	n, bad := strconv.ParseFloat(digits, 64)
	if !found || bad != nil {
		return 0, &units.ParseError{Input: text, Want: want, Reason: "write a number and" + unit}
	}
	return n, nil
}

// String reads "600 billion cells".
func (c Cells) String() string {
	return strconv.FormatFloat(c.billion, 'g', 4, 64) + cellsUnit
}
