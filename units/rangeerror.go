package units

import (
	"fmt"
	"math"
	"strconv"
)

// RangeError reports a quantity outside the published range of a formula, or
// outside what the quantity can be. Every package of the module returns it;
// read it with errors.As or errors.AsType.
type RangeError struct {
	Func     string  // the function as a caller writes it, "gravity.WaterDensity"
	Quantity string  // what was wrong, "temperature"
	Value    float64 // the value given, in Unit; it may be NaN or infinite
	Unit     string  // may be empty for a pure number
	Min, Max float64 // the range in Unit, ends included; an infinity is an open end
	Source   string  // where the range comes from, "Tanaka et al. 2001"
}

// Error names the function, the quantity, the value, the range and the source:
// "gravity.WaterDensity: temperature 41.5 °C outside 0 °C to 40 °C (Tanaka et al. 2001)".
// It prints as many digits as show that the value is outside.
func (e *RangeError) Error() string {
	s := fmt.Sprintf("%s: %s %s %s", e.Func, e.Quantity, e.with(e.Value), e.allowed())
	if e.Source != "" {
		s += " (" + e.Source + ")"
	}
	return s
}

// with writes a number of the error with its unit.
func (e *RangeError) with(x float64) string {
	digits := 12
	for _, end := range []float64{e.Min, e.Max} {
		if e.Value != end && strconv.FormatFloat(e.Value, 'g', digits, 64) == strconv.FormatFloat(end, 'g', digits, 64) {
			digits = -1 // all there are
		}
	}
	s := strconv.FormatFloat(x, 'g', digits, 64)
	if e.Unit != "" {
		s += " " + e.Unit
	}
	return s
}

// allowed says what the value is not.
func (e *RangeError) allowed() string {
	above, below := e.Max > math.MaxFloat64, e.Min < -math.MaxFloat64 // open ends
	switch {
	case above && below:
		return "is not a finite number"
	case above && e.Value < e.Min:
		return "below " + e.with(e.Min)
	case above:
		return "is not a finite number from " + e.with(e.Min) + " up"
	case below && e.Value > e.Max:
		return "above " + e.with(e.Max)
	case below:
		return "is not a finite number up to " + e.with(e.Max)
	case e.Min == e.Max:
		return "where only " + e.with(e.Min) + " is possible"
	case e.Min > e.Max:
		return "where nothing is possible: at least " + e.with(e.Min) + ", at most " + e.with(e.Max)
	}
	return "outside " + e.with(e.Min) + " to " + e.with(e.Max)
}
