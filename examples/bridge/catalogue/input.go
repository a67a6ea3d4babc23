package catalogue

import (
	"fmt"
	"strings"
	"time"

	"example.org/zymase/units"
)

// An Input is a number that a function takes.
type Input struct {
	Name    string
	Unit    string // the stated unit; "" for a pure number
	Meaning string // one line

	Min, Max   float64 // limits in the stated unit, ends included
	Example    float64 // a value to show
	Default    float64 // used where none is given, if HasDefault
	HasDefault bool
	Options    []string // the words of a choice; its number is the index
	Whole      bool     // a whole number
	Series     string   // the name under which all inputs of a kind are given at once, in their order: "hours"

	measure measure
}

// in is an input with a unit.
//
//go:noinline
func in[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string, min, max, example float64) *Input {
	return &Input{
		Name: name, Unit: unit.Symbol(), Meaning: meaning, Min: min, Max: max, Example: example,
		measure: measureOf(unit),
	}
}

// number is an input that is a pure number (unit "") or has a unit that package
// units does not have.
//
//go:noinline
func number(name, unit, meaning string, min, max, example float64) *Input {
	return &Input{
		Name: name, Unit: unit, Meaning: meaning, Min: min, Max: max, Example: example,
		measure: plain{unit: unit},
	}
}

// count is an input that is a whole number.
func count(name, meaning string, min, max, example float64) *Input {
	n := number(name, "", meaning, min, max, example)
	n.Whole = true
	return n
}

// span is an input that is a time, stated in h, min, s, d or wk.
//
//go:noinline
func span(name, unit, meaning string, min, max, example float64) *Input {
	n := number(name, unit, meaning, min, max, example)
	n.measure = duration{unit: unit, size: oneOf(unit)}
	return n
}

// choice is an input that is one of several words; example is the first.
//
//go:noinline
func choice(name, meaning string, options ...string) *Input {
	n := count(name, meaning, 0, float64(len(options)-1), 0)
	n.Options = options
	return n
}

// wordsOf are the options of a choice among values that print themselves.
//
//go:noinline
func wordsOf[T fmt.Stringer](of []T) []string {
	names := make([]string, len(of))
	for i, v := range of {
		names[i] = v.String()
	}
	return names
}

// namesOf are the options of a choice among values that have a name.
//
//go:noinline
func namesOf[T interface{ Name() string }](of []T) []string {
	names := make([]string, len(of))
	for i, v := range of {
		names[i] = v.Name()
	}
	return names
}

// or gives an input its default.
//
//go:noinline
func (p *Input) or(value float64) *Input {
	q := *p
	q.Default, q.HasDefault = value, true
	return &q
}

// orOption gives a choice its default.
//
//go:noinline
func (p *Input) orOption(option string) *Input {
	for i, o := range p.Options {
		if o == option {
			return p.or(float64(i))
		}
	}
	panic("catalogue: " + p.Name + " has no option " + option)
}

// alias adds a unit to a number: convert takes a value in that unit to the
// stated one, and gives NaN for what has none.
//
//go:noinline
func (p *Input) alias(unit string, convert Conversion) *Input {
	q := *p
	m := p.measure.(plain)
	m.others = append(m.others[:len(m.others):len(m.others)], other{unit, convert})
	q.measure = m
	return &q
}

// Parse reads what a person types: a number with a unit ("12.5 °C"), a bare
// number in the stated unit, or a word of a choice. A comma that can be a
// thousands mark ("1,500") is refused. The limits are checked by
// [Function.Call].
func (p *Input) Parse(text string) (float64, error) { return p.parse(text, false) }

// ParseCell reads what a spreadsheet sends: as [Input.Parse], but one comma in
// a bare number is a decimal mark, as a cell joined to a text in a comma locale
// has no thousands marks.
func (p *Input) ParseCell(text string) (float64, error) { return p.parse(text, true) }

func (p *Input) parse(text string, cell bool) (float64, error) {
	text = strings.TrimSpace(text)
	if p.Options != nil {
		return p.option(text)
	}
	if v, ok := bare(text); ok {
		return v, nil
	}
	if v, thousands, ok := bareComma(text); ok {
		if thousands && !cell {
			return 0, fmt.Errorf("%s: %q: the comma can be a decimal or a thousands mark; write a point or leave it out", p.Name, text)
		}
		return v, nil
	}
	v, err := p.measure.parse(text)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", p.Name, err)
	}
	return v, nil
}

// option reads a word of a choice, or its index as a number.
func (p *Input) option(text string) (float64, error) {
	for i, o := range p.Options {
		if Normal(o) == Normal(text) {
			return float64(i), nil
		}
	}
	if v, ok := bare(text); ok {
		return v, nil
	}
	return 0, fmt.Errorf("%s: %.64q is not one of %s", p.Name, text, strings.Join(p.Options, ", "))
}

// Conversion returns what takes a number in the unit of a column head to the
// stated unit; "" is the stated unit itself. The error lists the units there
// are.
func (p *Input) Conversion(unit string) (Conversion, error) {
	if unit == "" || unit == p.Unit {
		return same, nil
	}
	c, err := p.measure.from(unit)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", p.Name, err)
	}
	return c, nil
}

// Text writes a value as Parse reads it: a number in the stated unit, or the
// word of a choice.
func (p *Input) Text(v float64) string {
	if i := int(v); p.Options != nil && i >= 0 && i < len(p.Options) && float64(i) == v {
		return p.Options[i]
	}
	return trimmed(v)
}

// hours makes a duration of a number of hours that [Function.Call] has checked.
func hours(v float64) time.Duration { return time.Duration(v * float64(time.Hour)) }
