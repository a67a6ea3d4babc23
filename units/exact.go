package units

import (
	"fmt"
	"math"
	"strings"

	"github.com/shopspring/decimal"
)

// Exact is a decimal number with its unit: what is weighed on a scale, bought in
// a pack, or printed. Its arithmetic has no rounding but the one asked for.
//
// The zero value is 0 of the base unit.
type Exact[D, E Dimension] struct {
	n decimal.Decimal
	u Unit[D, E]
}

// Exact quantities by name.
type (
	ExactMass   = Exact[mass, mass]     // a mass to weigh or buy
	ExactVolume = Exact[volume, volume] // a volume to measure or buy
)

// Exact returns the decimal number n of u. The error is a [*RangeError] if the
// quantity cannot be n (see [Unit.Try]) or the decimal exponent of n is not from
// −30 to 30.
func (u Unit[D, E]) Exact(n decimal.Decimal) (Exact[D, E], error) {
	return u.exact("units.Unit.Exact", n)
}

func (u Unit[D, E]) exact(fn string, n decimal.Decimal) (Exact[D, E], error) {
	x, dim := math.NaN(), describe[D]()
	if e := n.Exponent(); e <= largestExponent && e >= -largestExponent {
		x = n.InexactFloat64()
	}
	if _, ok := u.try(x); !ok {
		return Exact[D, E]{}, u.outside(fn, x, dim.min, dim.max)
	}
	return Exact[D, E]{n: n, u: u}, nil
}

// ParseExact reads a decimal number with its unit, keeping every digit. It takes
// what [Parse] takes, save a text of two units; the number keeps its unit.
func ParseExact[Q interface{ Quantity[D, E] }, D, E Dimension](text string) (Exact[D, E], error) {
	return parseExact[D, E]("units.ParseExact", text)
}

func parseExact[D, E Dimension](fn, text string) (Exact[D, E], error) {
	dim := describe[D]()
	terms, err := split(text, dim, none)
	if err != nil {
		return Exact[D, E]{}, err
	}
	n, err := decimal.NewFromString(terms[0].number)
	if err != nil || len(terms) != 1 {
		return Exact[D, E]{}, reject(text, dim, "one number and one unit are wanted")
	}
	return Unit[D, E](dim.units+terms[0].unit).exact(fn, n)
}

// Decimal returns the number; [Exact.Unit] is its unit.
func (x Exact[D, E]) Decimal() decimal.Decimal { return x.n }

// Unit returns the unit of the number.
func (x Exact[D, E]) Unit() Unit[D, E] { return x.u }

// Quantity returns x as a quantity, rounded to the nearest float64.
func (x Exact[D, E]) Quantity() Quantity[D, E] {
	d := x.u.def()
	return Quantity[D, E]{v: (x.n.InexactFloat64() + d.offset) * d.num / d.den}
}

// String prints the number as it stands, with its unit.
func (x Exact[D, E]) String() string { return x.n.String() + " " + x.u.Symbol() }

// Text prints x with a fixed number of decimal places, halves rounded away from
// zero.
func (x Exact[D, E]) Text(places int) string {
	return x.n.StringFixed(int32(min(max(places, 0), largestExponent))) + " " + x.u.Symbol()
}

// Format lets package fmt print x as [Quantity.Format] prints a quantity, in its own unit.
func (x Exact[D, E]) Format(f fmt.State, verb rune) {
	format(f, verb, x, x.n.InexactFloat64(), x.u.Symbol())
}

// Plus returns x + y in the unit of x. y must have the same unit; otherwise the
// error is a [*ParseError] that names both.
func (x Exact[D, E]) Plus(y Exact[D, E]) (Exact[D, E], error) {
	if x.u.Symbol() != y.u.Symbol() {
		return Exact[D, E]{}, reject(y.String(), describe[D](), "the unit is not "+x.u.Symbol())
	}
	return Exact[D, E]{n: x.n.Add(y.n), u: x.u}, nil
}

// Round returns q as a multiple of step, which is positive: what a scale of that
// resolution weighs. A q that is off a multiple, or a half, by 1e-9 of itself (of a
// step, if that is more; at most by 1/1000 of a step) counts as it: so much may a
// computed float64 be off. The result has the unit of step. Errors: a [*RangeError]
// if step is not positive or q/step is above 1e15; a [*NameError] if how is none of the
// three.
func (q Quantity[D, E]) Round(step Exact[D, E], how Rounding) (Exact[D, E], error) {
	s := step.n.InexactFloat64()
	if !(s > 0) {
		return Exact[D, E]{}, step.u.outside("units.Quantity.Round", s, 0, most)
	}
	if err := how.check("units.Quantity.Round"); err != nil {
		return Exact[D, E]{}, err
	}
	x := q.In(step.u) / s
	if !(x >= -most && x <= most) {
		return Exact[D, E]{}, step.u.outside("units.Quantity.Round", q.In(step.u), -most, most)
	}
	slack := math.Min(1e-9*math.Max(1, math.Abs(x)), 1e-3)
	n := math.Round(x + math.Copysign(slack, x))
	if math.Abs(x-n) > slack {
		switch how {
		case Up:
			n = math.Ceil(x)
		case Down:
			n = math.Floor(x)
		}
	}
	return Exact[D, E]{n: decimal.NewFromInt(int64(n)).Mul(step.n), u: step.u}, nil
}

// Split divides x into n parts, each a multiple of step, that add up to x
// exactly; the first parts are the larger ones, by at most one step. Errors: a
// [*RangeError] if n is not from 1 to 10,000, step is not positive, or x is not
// a multiple of step; a [*ParseError] if step has another unit than x.
func (x Exact[D, E]) Split(n int, step Exact[D, E]) ([]Exact[D, E], error) {
	const fn = "units.Exact.Split"
	if n < 1 || n > 10000 {
		return nil, &RangeError{Func: fn, Quantity: "number of parts", Value: float64(n), Min: 1, Max: 10000, Source: "a limit of the function"}
	}
	if x.u.Symbol() != step.u.Symbol() {
		return nil, reject(step.String(), describe[D](), "the unit is not "+x.u.Symbol())
	}
	if !step.n.IsPositive() {
		return nil, step.u.outside(fn, step.n.InexactFloat64(), 0, most)
	}
	steps, rest := x.n.QuoRem(step.n, 0)
	if !rest.IsZero() {
		return nil, &RangeError{Func: fn, Quantity: "remainder", Value: rest.InexactFloat64(), Unit: x.u.Symbol(),
			Source: x.String() + " is not a multiple of " + step.String()}
	}
	each, over := steps.QuoRem(decimal.NewFromInt(int64(n)), 0)
	parts := make([]Exact[D, E], n)
	for i := range parts {
		k := each
		if decimal.NewFromInt(int64(i)).LessThan(over.Abs()) {
			k = k.Add(decimal.NewFromInt(int64(over.Sign())))
		}
		parts[i] = Exact[D, E]{n: k.Mul(step.n), u: x.u}
	}
	return parts, nil
}

// MarshalText is the text of [Exact.String]. A number that the quantity cannot be (see
// [Unit.Try]) is a [*RangeError], as it could not be read back.
func (x Exact[D, E]) MarshalText() ([]byte, error) {
	if _, err := x.u.exact("units.Exact.MarshalText", x.n); err != nil {
		return nil, err
	}
	return []byte(x.String()), nil
}

// UnmarshalText reads x as [ParseExact] does.
func (x *Exact[D, E]) UnmarshalText(text []byte) error {
	p, err := parseExact[D, E]("units.Exact.UnmarshalText", strings.TrimSpace(string(text)))
	if err == nil {
		*x = p
	}
	return err
}
