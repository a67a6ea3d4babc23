package catalogue

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	bridge "example.org/zymase/examples/bridge/number"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A Conversion takes a number from one unit to another. It allocates nothing.
type Conversion func(x float64) float64

func same(x float64) float64 { return x }

// A measure knows the units that a number may be written in.
type measure interface {
	from(unit string) (Conversion, error) // from that unit to the stated one
	to(unit string) (Conversion, error)   // from the stated unit to that one
	parse(text string) (float64, error)   // a number with its unit
}

// checkedNumber is what [units.Unit.Of] takes.
type checkedNumber = checked.Number

// quantity: a unit of package units, as what finds another of its dimension and what reads a text.
type quantity struct {
	find func(unit string) (from, to Conversion, err error)
	read func(text string) (float64, error)
}

//go:noinline
func measureOf[D, E units.Dimension](stated units.Unit[D, E]) measure {
	return quantity{
		func(unit string) (from, to Conversion, err error) {
			u, err := stated.Find(unit)
			return between(u, stated), between(stated, u), err
		},
		func(text string) (float64, error) {
			q, err := stated.Parse(text)
			return q.In(stated), err
		},
	}
}

//go:noinline
func between[D, E units.Dimension](from, to units.Unit[D, E]) Conversion {
	return func(x float64) float64 { return from.Of(checkedNumber(x)).In(to) }
}

func (m quantity) from(unit string) (Conversion, error) {
	from, _, err := m.find(unit)
	return from, err
}

func (m quantity) to(unit string) (Conversion, error) {
	_, to, err := m.find(unit)
	return to, err
}

func (m quantity) parse(text string) (float64, error) { return m.read(text) }

// plain: a number with a unit that is only a text, or none.
type plain struct {
	unit   string
	others []other
}

type other struct {
	unit    string
	convert Conversion
}

func (m plain) from(text string) (Conversion, error) {
	for _, o := range m.others {
		if strings.EqualFold(o.unit, text) {
			return o.convert, nil
		}
	}
	return nil, m.unknown(text)
}

func (m plain) to(text string) (Conversion, error) { return nil, m.unknown(text) }

func (m plain) parse(text string) (float64, error) {
	for _, o := range append(m.others[:len(m.others):len(m.others)], other{m.unit, same}) {
		rest, found := strings.CutSuffix(text, o.unit)
		if v, ok := bare(strings.TrimSpace(rest)); found && ok {
			return o.convert(v), nil
		}
		if v, thousands, ok := bareComma(strings.TrimSpace(rest)); found && ok && !thousands {
			return o.convert(v), nil
		}
	}
	if m.unit == "" {
		return 0, fmt.Errorf("%.64q is not a number", text)
	}
	return 0, fmt.Errorf("%.64q is not a number of %s", text, m.unit)
}

func (m plain) unknown(text string) error {
	var known []string
	if m.unit != "" {
		known = append(known, m.unit)
	}
	for _, o := range m.others {
		known = append(known, o.unit)
	}
	if len(known) == 0 {
		return fmt.Errorf("a pure number has no unit %.64q", text)
	}
	return fmt.Errorf("%.64q is not one of its units: %s", text, strings.Join(known, ", "))
}

// duration: a time.
type duration struct {
	unit string
	size time.Duration // of the stated unit
}

// oneOf returns the length of one unit of time, 0 if there is no such unit.
func oneOf(unit string) time.Duration {
	if strings.ContainsAny(unit, "0123456789.,+- ") {
		return 0
	}
	d, err := units.ParseDuration("1 " + unit)
	if err != nil {
		return 0
	}
	return d
}

func (m duration) factor(text string) (float64, error) {
	d := oneOf(text)
	if d == 0 {
		return 0, fmt.Errorf("%.64q is not one of its units: s, min, h, d, wk", text)
	}
	return float64(d) / float64(m.size), nil
}

func (m duration) from(text string) (Conversion, error) {
	k, err := m.factor(text)
	return func(x float64) float64 { return x * k }, err
}

func (m duration) to(text string) (Conversion, error) {
	k, err := m.factor(text)
	return func(x float64) float64 { return x / k }, err
}

func (m duration) parse(text string) (float64, error) {
	d, err := units.ParseDuration(text)
	return float64(d) / float64(m.size), err
}

// bare reads a number without a unit.
func bare(text string) (float64, bool) { return bridge.Parse([]byte(text), '.') }

// bareComma reads a number without a unit whose mark is a comma, and tells
// whether that could be a thousands mark: "1,500".
func bareComma(text string) (v float64, thousands, ok bool) {
	v, ok = bridge.Parse([]byte(text), ',')
	whole, part, _ := strings.Cut(strings.TrimLeft(text, "+-"), ",")
	thousands = len(part) == 3 && len(whole) > 0 && len(whole) <= 3 && strings.Trim(whole, "0") != ""
	return v, thousands, ok
}

// trimmed writes a number with the fewest digits that read back as it.
func trimmed(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }
