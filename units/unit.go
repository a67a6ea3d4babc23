package units

import (
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
)

// Unit is a unit of the dimension D: [Kilogram], [USGallon], [Fahrenheit]. The
// zero Unit is the base unit of the dimension.
//
// The units of this package are variables, as Go has no constants of a type that does not
// add or take a plain number. Nothing assigns to them: Kilogram = Gram would compile, and
// make every mass of the program wrong.
type Unit[D, E Dimension] struct {
	_ [0]*D
	_ [0]*E
	u *unit
}

// A unit is (x + offset)·num/den base units. num, den and offset are whole
// numbers or short decimals, so that every factor is the exact one.
type unit struct {
	symbol   string
	names    []string // other ways to write it
	num, den float64
	offset   float64
	base     bool // 1, 1, 0
}

func define[D, E Dimension](symbol string, num, den float64, names ...string) Unit[D, E] {
	return Unit[D, E]{u: &unit{symbol: symbol, names: names, num: num, den: den, base: num == den}}
}

// other makes a unit that has no name of its own: it is found and read by its text.
func other(symbol string, num, den float64, names ...string) *unit {
	return &unit{symbol: symbol, names: names, num: num, den: den, base: num == den}
}

// A base stands in for the zero Unit.
var base = unit{num: 1, den: 1, base: true}

func (u Unit[D, E]) def() *unit {
	if u.u == nil {
		return &base
	}
	return u.u
}

// Of returns x units, where x is a constant: Kilogram.Of(4.2). A variable does not
// compile here; use [Unit.Try].
//
// The parameter's type is internal to the module, and Go turns an untyped constant into
// it by itself. That guards against mistakes, not against intent: a generic function can
// be made to convert any float64. Of checks nothing, so Kilogram.Of(-3) is -3 kg, as a
// difference can be; a function that takes a mass refuses it.
func (u Unit[D, E]) Of(x checked.Number) Quantity[D, E] {
	d := u.def()
	if d.base {
		return Quantity[D, E]{v: float64(x)}
	}
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
		return Unit[D, E]{}, reject(text, describe[D](), fmt.Sprintf("longer than %d bytes", longestText))
	}
	found, why := find(text, describe[D](), table[D](), nil)
	if found == nil {
		return Unit[D, E]{}, reject(text, describe[D](), why)
	}
	return Unit[D, E]{u: found}, nil
}

// Symbol returns the unit as it is printed: "kg", "US gal", "% vol".
func (u Unit[D, E]) Symbol() string {
	if u.u == nil {
		return table[D]()[0].symbol
	}
	return u.u.symbol
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

func table[D Dimension]() []*unit { var d D; return d.table() }

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
	return Unit[D, E]{}.outside(fn, v, min, max)
}

// tidy drops the last digits of a limit, where they are only rounding.
func tidy(x float64) float64 {
	if x == 0 {
		return x
	}
	p := math.Pow(10, 12-math.Ceil(math.Log10(math.Abs(x))))
	return math.Round(x*p) / p
}

func shifted[D, E Dimension](symbol string, num, den, offset float64, names ...string) Unit[D, E] {
	return Unit[D, E]{u: &unit{symbol: symbol, names: names, num: num, den: den, offset: offset}}
}
