package units

import (
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
)

// Unit is a unit of the dimension D: [Kilogram], [USGallon], [Fahrenheit]. The units of this
// package are constants. The zero Unit is the base unit of the dimension.
//
// A plain number in the place of a unit compiles, as Go turns it into any type of number, but is
// none: mass.In(3), Kilogram*2 and Kilogram+Gram count as the base unit.
type Unit[D, E Dimension] uint16

// A unit is (x + offset)·num/den base units. num, den and offset are whole
// numbers or short decimals, so that every factor is the exact one.
type unit struct {
	symbol   string
	names    []string // other ways to write it
	unread   bool     // printed, but not read as text
	num, den float64
	offset   float64
}

// A base stands in for what is no unit.
var base = unit{num: 1, den: 1}

// known returns the unit of a number.
func known(u uint16) *unit {
	if of := int(u/slots) - first; of >= 0 && of < len(dimensions) {
		if table, i := dimensions[of].table, int(u%slots); i < len(table) {
			return &table[i]
		}
	}
	return &base
}

func (u Unit[D, E]) def() *unit { return known(uint16(u)) }

// place is where u stands in the table of its dimension; what is no unit of it stands for the first.
func (u Unit[D, E]) place() int {
	dim := describe[D]()
	if i := int(u) - dim.units; i >= 0 && i < len(dim.table) {
		return i
	}
	return 0
}

// isBase reports whether u is the base unit, or the zero Unit: for the hot path.
func (u Unit[D, E]) isBase() bool { return u%slots == 0 }

// Of returns x units, where x is a constant: Kilogram.Of(4.2). A variable does not
// compile here; use [Unit.Try].
//
// The parameter's type is internal to the module, and Go turns an untyped constant into
// it by itself. That guards against mistakes, not against intent: a generic function can
// be made to convert any float64. Of checks nothing, so Kilogram.Of(-3) is -3 kg, as a
// difference can be; a function that takes a mass refuses it.
func (u Unit[D, E]) Of(x checked.Number) Quantity[D, E] {
	if u.isBase() {
		return Quantity[D, E]{v: float64(x)}
	}
	d := u.def()
	return Quantity[D, E]{v: (float64(x) + d.offset) * d.num / d.den}
}

// Try returns x units, or a [*RangeError] if x is NaN, infinite, beyond 1e15
// base units, or cannot be (a negative mass, volume or concentration, a
// temperature below absolute zero, a strength above 100 %).
func (u Unit[D, E]) Try(x float64) (Quantity[D, E], error) {
	q, ok := u.try(x)
	if !ok {
		d := describe[D]()
		return Quantity[D, E]{}, u.outside("units.Unit.Try", x, d.min, d.max)
	}
	return q, nil
}

func (u Unit[D, E]) try(x float64) (Quantity[D, E], bool) {
	d, dim := u.def(), describe[D]()
	v := (x + d.offset) * d.num / d.den
	return Quantity[D, E]{v: v}, v >= dim.min && v <= dim.max
}

// Find returns the unit of the same dimension that text names ("°F", "US gal"),
// or a [*ParseError] that lists the units there are.
func (u Unit[D, E]) Find(text string) (Unit[D, E], error) {
	if len(text) > longestText {
		return 0, reject(text, describe[D](), fmt.Sprintf("longer than %d bytes", longestText))
	}
	dim := describe[D]()
	i, why := find(text, dim, none)
	if i == none {
		return 0, reject(text, dim, why)
	}
	return Unit[D, E](dim.units + i), nil
}

// Symbol returns the unit as it is printed: "kg", "US gal", "% vol".
func (u Unit[D, E]) Symbol() string {
	return describe[D]().table[u.place()].symbol
}

// String is [Unit.Symbol].
func (u Unit[D, E]) String() string { return u.Symbol() }

// MarshalText is [Unit.Symbol]; the error is always nil.
func (u Unit[D, E]) MarshalText() ([]byte, error) { return []byte(u.Symbol()), nil }

// UnmarshalText reads a unit as [Unit.Find] does.
func (u *Unit[D, E]) UnmarshalText(text []byte) error {
	found, err := u.Find(string(text))
	if err == nil {
		*u = found
	}
	return err
}

func describe[D Dimension]() *dimension { var d D; return d.describe() }

// outside reports x units where min to max base units are allowed.
func (u Unit[D, E]) outside(fn string, x, min, max float64) error {
	d := u.def()
	in := func(v float64) float64 { return tidy(v*d.den/d.num - d.offset) }
	return &RangeError{
		Func: fn, Quantity: describe[D]().name, Value: x, Unit: u.Symbol(),
		Min: in(min), Max: in(max), Source: "what the quantity can be",
	}
}

func outside[D, E Dimension](fn string, v, min, max float64) error {
	var base Unit[D, E]
	return base.outside(fn, v, min, max)
}

// tidy drops the last digits of a limit, where they are only rounding.
func tidy(x float64) float64 {
	if x == 0 {
		return x
	}
	p := math.Pow(10, 12-math.Ceil(math.Log10(math.Abs(x))))
	return math.Round(x*p) / p
}
