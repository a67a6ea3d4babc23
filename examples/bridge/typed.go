package main

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/number"
)

// typed reads what a person types for an input.
func typed(in *catalogue.Input, text string) (float64, error) {
	if err := unitless(in, text); err != nil {
		return 0, err
	}
	return in.Parse(text)
}

// unitless refuses a temperature or a pressure without its unit, as a number of them alone
// is read in more than one. A column has its unit in its head, and a cell in the
// description of the function.
func unitless(in *catalogue.Input, text string) error {
	if units := unitsAsked(in.Unit); units != "" && text != "" && !strings.ContainsFunc(text, letter) {
		return fmt.Errorf("%s: %.64s has no unit: write %s", in.Name, text, fmt.Sprintf(units, text))
	}
	return nil
}

func letter(r rune) bool { return r != 'e' && r != 'E' && (r == '°' || r >= 'A' && r <= 'z') }

// unitsAsked says how a number of a temperature or a pressure is written; it is empty for
// all else.
func unitsAsked(unit string) string {
	of, kind, _ := strings.Cut(unit, " ")
	switch of {
	case "°C", "°F":
		return "%[1]s °C or %[1]s °F"
	case "K":
		return "%[1]s K"
	case "Pa", "hPa", "kPa", "MPa", "mbar", "bar", "psi":
		return strings.ReplaceAll("%[1]s kPa#, %[1]s bar# or %[1]s psi#", "#", strings.TrimRight(" "+kind, " "))
	}
	return ""
}

// An understood input is one as the function takes it.
type understood struct {
	Name    string `json:"name"`
	Value   string `json:"value"`
	Unit    string `json:"unit,omitempty"`
	Default bool   `json:"default,omitempty"`
}

// inputs are those that a question was answered for.
func inputs(f *catalogue.Function, q *ask.Question) []understood {
	out := make([]understood, 0, len(f.Inputs))
	for i := range f.Inputs {
		in := &f.Inputs[i]
		v, given := q.Input(i)
		if in.Series != "" && !given {
			continue // one of several that nobody misses
		}
		text := in.Text(v)
		if in.Options == nil {
			text = string(number.Append(nil, v))
		}
		out = append(out, understood{Name: in.Name, Value: text, Unit: in.Unit, Default: !given})
	}
	return out
}

// String is a line: "temperature = 4 °C".
func (u understood) String() string {
	s := strings.TrimSpace(fmt.Sprintf("%s = %s %s", u.Name, u.Value, u.Unit))
	if u.Default {
		s += ", as none was given"
	}
	return s
}
