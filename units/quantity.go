package units

import (
	"cmp"

	"example.org/zymase/internal/checked"
)

// Quantity is a number of a dimension D, for example a [Mass]. E is the
// dimension of a difference of two such quantities: for most dimensions D
// itself, for a temperature the temperature difference, so that 20 °C + 20 °C
// does not compile.
//
// The zero value is zero base units: 0 kg, 0 L, 0 °C, 0 kPa.
// Quantities of one type compare with == and [Quantity.Compare].
type Quantity[D, E Dimension] struct {
	_ [0]*D // makes Mass and Volume inconvertible
	_ [0]*E
	v float64 // in the base unit
}

// In returns q as a number of u.
func (q Quantity[D, E]) In(u Unit[D, E]) float64 {
	if u.isBase() { // no division on the hot path
		return q.v
	}
	d := u.def()
	return q.v*d.den/d.num - d.offset
}

// Plus returns q + r, where r is a difference: Mass + Mass, or Temperature +
// TemperatureDifference.
func (q Quantity[D, E]) Plus(r Quantity[E, E]) Quantity[D, E] {
	return Quantity[D, E]{v: bounded(q.v + r.v)}
}

// Minus returns the difference q - r: Mass - Mass is a Mass, Temperature -
// Temperature a TemperatureDifference. It may be negative. A negative mass, volume or
// concentration prints ("-1 kg"), but is not written as text or JSON and not read: see
// [Quantity.AppendText].
func (q Quantity[D, E]) Minus(r Quantity[D, E]) Quantity[E, E] {
	return Quantity[E, E]{v: bounded(q.v - r.v)}
}

// Compare returns -1, 0 or +1 as q is less than, equal to or more than r.
func (q Quantity[D, E]) Compare(r Quantity[D, E]) int { return cmp.Compare(q.v, r.v) }

// IsZero reports whether q is zero base units.
func (q Quantity[D, E]) IsZero() bool { return q.v == 0 }

// Times returns k·q, where k is a constant, for a quantity that adds (a mass, a volume, a
// temperature difference; not a temperature). For a k known at run time see [TryTimes].
func Times[D Dimension](q Quantity[D, D], k checked.Number) Quantity[D, D] {
	return Quantity[D, D]{v: bounded(q.v * float64(k))}
}

// TryTimes returns k·q as [Times] does. The error is a [*RangeError] if k is NaN or
// infinite, or if the product is beyond 1e15 base units; a product of either sign is
// allowed.
func TryTimes[D Dimension](q Quantity[D, D], k float64) (Quantity[D, D], error) {
	v := q.v * k
	if !(v >= -most && v <= most) {
		return Quantity[D, D]{}, outside[D, D]("units.TryTimes", v, -most, most)
	}
	return Quantity[D, D]{v: v}, nil
}

// Ratio returns q/r. The error is a [*RangeError] if r is zero or the quotient
// is not a finite number.
func Ratio[D Dimension](q, r Quantity[D, D]) (float64, error) {
	x := q.v / r.v
	if !(x >= -bound && x <= bound) {
		return 0, outside[D, D]("units.Ratio", r.v, 0, most)
	}
	return x, nil
}

func bounded(v float64) float64 {
	if v > bound {
		return bound
	}
	if v < -bound {
		return -bound
	}
	return v
}
