package catalogue

import (
	"fmt"
	"strings"

	"example.org/zymase/units"
)

// An Output is a number that a function gives, or a text that the number stands for:
// so that a call stays a column of numbers, and the words are made where they are read.
type Output struct {
	Name    string
	Unit    string // the stated unit; "" for a pure number and a text
	Meaning string // one line

	// Words are what a text says; nil for a number. The number is the place of one of
	// them, or with Several the sum of 1<<place of each that is said, the gravest first.
	Words   []string
	Several bool

	measure measure
	of      any // func(T) float64, where it is that of a result[T]
}

// out is an output with a unit.
//
//go:noinline
func out[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string) *Output {
	return &Output{Name: name, Unit: unit.Symbol(), Meaning: meaning, measure: measureOf(unit)}
}

// pure is an output that is a pure number (unit "") or has a unit that package
// units does not have.
//
//go:noinline
func pure(name, unit, meaning string) *Output {
	return &Output{Name: name, Unit: unit, Meaning: meaning, measure: plain{unit: unit}}
}

// IsText reports whether the number of the output stands for words.
func (p *Output) IsText() bool { return p.Words != nil }

// nothingSaid is the text of several words of which none is said.
const nothingSaid = "none"

// Text returns the words of a text output whose number is v: one of them, or sentences
// with spaces between, "none" if there is nothing to say.
func (p *Output) Text(v float64) string {
	if !p.Several {
		if i := int(v); i >= 0 && i < len(p.Words) {
			return p.Words[i]
		}
		return ""
	}
	var said []string
	for i, word := range p.Words {
		if uint64(v)>>i&1 == 1 {
			said = append(said, word)
		}
	}
	if said == nil {
		return nothingSaid
	}
	return strings.Join(said, " ")
}

// Conversion returns what takes a result in the stated unit to another unit; ""
// is the stated unit itself. The error lists the units there are.
func (p *Output) Conversion(unit string) (Conversion, error) {
	if unit == "" || unit == p.Unit {
		return same, nil
	}
	if p.IsText() {
		return nil, fmt.Errorf("%s: a text has no unit %.64q", p.Name, unit)
	}
	c, err := p.measure.to(unit)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", p.Name, err)
	}
	return c, nil
}

// OnlyNumber returns the place of the number among the outputs of a function that has
// just one: it is what a question means that names no output.
func (f *Function) OnlyNumber() (place int, ok bool) {
	for i := range f.Outputs {
		if f.Outputs[i].IsText() {
			continue
		}
		if ok {
			return 0, false
		}
		place, ok = i, true
	}
	return place, ok
}
