package catalogue

import (
	"fmt"

	"example.org/zymase/units"
)

// An Output is a number that a function gives.
type Output struct {
	Name    string
	Unit    string // the stated unit; "" for a pure number
	Meaning string // one line

	measure measure
}

// out is an output with a unit.
func out[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string) Output {
	return Output{Name: name, Unit: unit.Symbol(), Meaning: meaning, measure: quantity[D, E]{unit}}
}

// pure is an output that is a pure number (unit "") or has a unit that package
// units does not have.
func pure(name, unit, meaning string) Output {
	return Output{Name: name, Unit: unit, Meaning: meaning, measure: plain{unit: unit}}
}

// Conversion returns what takes a result in the stated unit to another unit; ""
// is the stated unit itself. The error lists the units there are.
func (p *Output) Conversion(unit string) (Conversion, error) {
	if unit == "" || unit == p.Unit {
		return same, nil
	}
	c, err := p.measure.to(unit)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", p.Name, err)
	}
	return c, nil
}
