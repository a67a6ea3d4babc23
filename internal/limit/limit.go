// Package limit refuses a number outside the published range of a formula.
package limit

import "example.org/zymase/units"

// Check returns nil when v lies in [min, max], ends included, and a
// *units.RangeError otherwise. NaN is refused. It allocates only on failure.
//
// fn is the function as a caller writes it ("gravity.WaterDensity"), quantity
// what v is ("temperature"), unit its unit, source where the range is printed.
func Check(fn, quantity string, v float64, unit string, min, max float64, source string) error {
	if v >= min && v <= max {
		return nil
	}
	return refuse(fn, quantity, v, unit, min, max, source)
}

//go:noinline
func refuse(fn, quantity string, v float64, unit string, min, max float64, source string) error {
	return &units.RangeError{
		Func: fn, Quantity: quantity, Value: v, Unit: unit,
		Min: min, Max: max, Source: source,
	}
}
