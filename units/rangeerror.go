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
func (e *RangeError) Error() string {
	with := func(x float64) string {
		s := strconv.FormatFloat(x, 'g', 12, 64)
		if e.Unit != "" {
			s += " " + e.Unit
		}
		return s
	}
	above, below := e.Max > math.MaxFloat64, e.Min < -math.MaxFloat64 // open ends
	var allowed string
	switch {
	case above && below:
		allowed = "not a finite number"
	case above:
		allowed = "below " + with(e.Min)
		if !(e.Value < e.Min) {
			allowed = "not a finite number from " + with(e.Min) + " up"
		}
	default:
		allowed = "outside " + with(e.Min) + " to " + with(e.Max)
	}
	s := fmt.Sprintf("%s: %s %s %s", e.Func, e.Quantity, with(e.Value), allowed)
	if e.Source != "" {
		s += " (" + e.Source + ")"
	}
	return s
}
