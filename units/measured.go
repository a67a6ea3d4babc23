package units

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Measured is a quantity with its standard uncertainty: one standard deviation of
// what is known about it. [Propagate] carries it through a function.
//
// The zero value is zero base units, known exactly.
type Measured[D, E Dimension] struct {
	value Quantity[D, E]
	u     float64 // base units, not negative
}

// Measured quantities by name.
type (
	MeasuredNumber      = Measured[pureNumber, pureNumber]             // a specific gravity, a pH
	MeasuredMass        = Measured[mass, mass]                         // a weighing
	MeasuredTemperature = Measured[temperature, temperatureDifference] // a thermometer
	MeasuredStrength    = Measured[strengthByVolume, percentagePoints] // a strength by volume
	MeasuredExtract     = Measured[extract, extract]                   // a saccharometer, a refractometer
)

// Measure returns a value with its standard uncertainty u.
//
//   - Source: JCGM 100:2008 (GUM) 2.3.1.
//   - Range: u from 0 to 1e15 base units; otherwise the error is a [*RangeError].
func Measure[D, E Dimension](value Quantity[D, E], u Quantity[E, E]) (Measured[D, E], error) {
	return measure("units.Measure", value, u.v)
}

func measure[D, E Dimension](fn string, value Quantity[D, E], u float64) (Measured[D, E], error) {
	if !(u >= 0 && u <= most) {
		return Measured[D, E]{}, outside[E, E](fn, u, 0, most)
	}
	return Measured[D, E]{value: value, u: u}, nil
}

// ReadTo returns a value read on a scale or display whose smallest step is step: the
// true value is anywhere within half a step, so u = step/√12.
//
//   - Source: JCGM 100:2008 4.3.7 and F.2.2.1.
//   - Range: as [Measure].
func ReadTo[D, E Dimension](value Quantity[D, E], step Quantity[E, E]) (Measured[D, E], error) {
	return measure("units.ReadTo", value, step.v/math.Sqrt(12))
}

// Limited returns a value that is within ± limit, anywhere with the same chance,
// as a maker states an instrument: u = limit/√3.
//
//   - Source: JCGM 100:2008 4.3.7, eq. 7.
//   - Range: as [Measure].
func Limited[D, E Dimension](value Quantity[D, E], limit Quantity[E, E]) (Measured[D, E], error) {
	return measure("units.Limited", value, limit.v/math.Sqrt(3))
}

// Value returns the best estimate.
func (m Measured[D, E]) Value() Quantity[D, E] { return m.value }

// Uncertainty returns the standard uncertainty.
func (m Measured[D, E]) Uncertainty() Quantity[E, E] { return Quantity[E, E]{v: m.u} }

// Widened returns the same value with a further uncertainty that is independent of
// the first; the two add in squares (JCGM 100:2008 5.1.2). The error is that of
// [Measure].
func (m Measured[D, E]) Widened(u Quantity[E, E]) (Measured[D, E], error) {
	if !(u.v >= 0 && u.v <= most) {
		return Measured[D, E]{}, outside[E, E]("units.Measured.Widened", u.v, 0, most)
	}
	return Measured[D, E]{value: m.value, u: math.Hypot(m.u, u.v)}, nil
}

// Expanded returns k times the standard uncertainty; with k = 2 about 95 % of a
// normal distribution lies within it.
//
//   - Source: JCGM 100:2008 6.2.1, eq. 18.
//   - Range: k from 0 to 10; otherwise the error is a [*RangeError].
func (m Measured[D, E]) Expanded(k float64) (Quantity[E, E], error) {
	if !(k >= 0 && k <= 10) {
		return Quantity[E, E]{}, coverage("units.Measured.Expanded", k)
	}
	return Quantity[E, E]{v: bounded(k * m.u)}, nil
}

func coverage(fn string, k float64) error {
	return &RangeError{Func: fn, Quantity: "coverage factor", Value: k, Min: 0, Max: 10, Source: "JCGM 100:2008 6.2"}
}

// Capability says whether a measurement is good enough for a tolerance of ± limit:
// limit over twice the standard uncertainty. From 1 up, the uncertainty at k = 2 is
// inside the tolerance; a factory asks for 3 or more. It is 1000 at most.
//
//   - Source: JCGM 106:2012 7.6.3, measurement capability index T/(4u) with T = 2·limit
//     (recalled from memory).
//   - Range: a positive limit; otherwise the error is a [*RangeError].
func (m Measured[D, E]) Capability(limit Quantity[E, E]) (float64, error) {
	if !(limit.v > 0 && limit.v <= most) {
		return 0, &RangeError{Func: "units.Measured.Capability", Quantity: "tolerance", Value: limit.v, Unit: limit.symbol(), Max: most,
			Source: "more than nothing"}
	}
	return min(limit.v/(2*m.u), 1000), nil
}

// Text prints the value with its expanded uncertainty: "4.6 ± 0.3 % vol (k = 2)".
// A coverage factor that is not from 0 to 10 is taken as 2.
func (m Measured[D, E]) Text(u Unit[D, E], places int, k float64) string {
	if !(k >= 0 && k <= 10) {
		k = 2
	}
	places = min(max(places, 0), 15)
	d := u.def()
	b := strconv.AppendFloat(nil, positiveZero(m.value.In(u), places), 'f', places, 64)
	b = append(b, plusMinus...)
	b = strconv.AppendFloat(b, k*m.u*d.den/d.num, 'f', places, 64)
	b = append(appendSymbol(b, u.Symbol()), coverageOpen...)
	b = strconv.AppendFloat(b, k, 'g', -1, 64)
	return string(append(b, ')'))
}

// String prints the value with its uncertainty at k = 2, that in three digits.
func (m Measured[D, E]) String() string { return string(m.append(nil, 3)) }

// Format lets package fmt print m: %v and %s are [Measured.String]; %f, %e and %g print
// the value and its uncertainty at k = 2 with the precision asked for:
// fmt.Sprintf("%.1f", m) is "4.6 ± 0.3 % vol (k = 2)".
func (m Measured[D, E]) Format(f fmt.State, verb rune) {
	spread := fmt.Sprintf(fmt.FormatString(f, verb), 2*m.u)
	behind := strings.TrimSpace(plusMinus) + " " + strings.TrimSpace(spread)
	format(f, verb, m, m.value.v, string(append(appendSymbol([]byte(behind), m.value.symbol()), coverageOpen+"2)"...)))
}

// append writes the value and twice its standard uncertainty, that in digits, -1 for as
// many as read back.
func (m Measured[D, E]) append(b []byte, digits int) []byte {
	b = strconv.AppendFloat(b, m.value.v, 'g', -1, 64)
	b = append(b, plusMinus...)
	b = strconv.AppendFloat(b, 2*m.u, 'g', digits, 64)
	return append(appendSymbol(b, m.value.symbol()), coverageOpen+"2)"...)
}
