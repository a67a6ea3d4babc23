package units

import (
	"fmt"
	"strconv"
)

// Text prints q in the unit u with a fixed number of decimal places, as
// "4.20 kg". Rounding is to the nearest, as strconv does it.
func (q Quantity[D, E]) Text(u Unit[D, E], places int) string {
	places = min(max(places, 0), 15)
	b := strconv.AppendFloat(nil, positiveZero(q.In(u), places), 'f', places, 64)
	return string(appendSymbol(b, u.Symbol()))
}

// String prints q in its base unit with the shortest number that reads back as
// q: "4.2 kg". What [Parse] refuses (a difference below zero) it prints too: "-1 kg".
func (q Quantity[D, E]) String() string { return string(q.append(nil)) }

// symbol is that of the unit it is stored in.
func (q Quantity[D, E]) symbol() string {
	var base Unit[D, E]
	return base.Symbol()
}

func (q Quantity[D, E]) append(b []byte) []byte {
	return appendSymbol(strconv.AppendFloat(b, q.v, 'g', -1, 64), q.symbol())
}

// AppendText appends the text of [Quantity.String], which [Parse] reads back as q. What
// Parse would refuse (a difference of masses below zero, a sum beyond 1e15 base units) is
// a [*RangeError]: nothing is written that cannot be read.
func (q Quantity[D, E]) AppendText(b []byte) ([]byte, error) {
	return q.written("units.Quantity.AppendText", b)
}

func (q Quantity[D, E]) written(fn string, b []byte) ([]byte, error) {
	if d := describe[D](); !(q.v >= d.min && q.v <= d.max) {
		return b, outside[D, E](fn, q.v, d.min, d.max)
	}
	return q.append(b), nil
}

// MarshalText is [Quantity.AppendText]. It serves JSON and the flag package.
func (q Quantity[D, E]) MarshalText() ([]byte, error) {
	return q.written("units.Quantity.MarshalText", nil)
}

// Format lets package fmt print q: %v and %s are [Quantity.String]; %f, %e and %g print
// the number in the base unit with the width and precision asked for, and the unit:
// fmt.Sprintf("%.1f", q) is "4.2 kg".
func (q Quantity[D, E]) Format(f fmt.State, verb rune) {
	format(f, verb, q, q.v, q.symbol())
}

// format prints a text, or a number with what stands behind it.
func format(f fmt.State, verb rune, text fmt.Stringer, number float64, behind string) {
	switch verb {
	case 'v', 's', 'q':
		fmt.Fprintf(f, fmt.FormatString(f, verb), text.String())
	case 'f', 'F', 'e', 'E', 'g', 'G':
		fmt.Fprintf(f, fmt.FormatString(f, verb), number)
		f.Write(appendSymbol(nil, behind))
	default:
		fmt.Fprintf(f, "%%!%c(%s)", verb, text.String())
	}
}

func appendSymbol(b []byte, symbol string) []byte {
	if symbol == "" {
		return b
	}
	b = append(b, ' ')
	return append(b, symbol...)
}

// positiveZero keeps "-0.0" out of print.
func positiveZero(x float64, places int) float64 {
	half := 0.5
	for range places {
		half /= 10
	}
	if x < 0 && x > -half {
		return 0
	}
	return x
}
