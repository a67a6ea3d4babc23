package catalogue

import (
	"fmt"
	"math"
	"strings"

	"example.org/zymase/units"
)

// A Function is one computation that a cell can call.
type Function struct {
	Name    string   // trade words, lower case, underscores: "co2_pressure_gauge"
	Meaning string   // one line
	Source  string   // where the relation is published
	Inputs  []Input  // in the order of Call's first argument
	Outputs []Output // in the order of Call's second argument

	// call computes; its inputs are finite and inside their limits.
	call func(in, out []float64) error
	// gets are what makes each output of the result, where it is one for all: func(R) float64.
	gets []any
	// heavy marks a call that allocates (a solver over several salts).
	heavy bool
}

// All returns every function of the catalogue, in its fixed order. The slice is
// the caller's own.
func All() []Function {
	var all []Function
	cautions := sayings()
	for _, part := range [][]*Function{
		unitsFunctions(),
		gravityFunctions(),
		waterFunctions(),
		carbonationFunctions(),
		nutrientFunctions(),
	} {
		for _, f := range part {
			if s, ok := cautions[f.Name]; ok {
				f = warned(f, s)
			}
			all = append(all, *f)
		}
	}
	return all
}

// Find returns the function of that name. The error tells names that look like
// it.
func Find(name string) (*Function, error) {
	all := All()
	for i := range all {
		if all[i].Name == name {
			return &all[i], nil
		}
	}
	return nil, fmt.Errorf("no function %.64q%s", name, near(name, all))
}

// near lists functions that share a word with name.
func near(name string, all []Function) string {
	var like []string
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return r < 'a' || r > 'z' })
	for _, f := range all {
		for _, w := range words {
			if len(w) > 3 && strings.Contains(f.Name, w) {
				like = append(like, f.Name)
				break
			}
		}
	}
	if len(like) == 0 || len(like) > 20 {
		return ""
	}
	return "; there are " + strings.Join(like, ", ")
}

// Call computes out from in, both in the stated units. On success each number
// in out is finite; on failure out holds nothing of use.
//
// The error is a [*units.RangeError] for an input outside its limits, or what
// the library's own function returns. A wrong number of inputs or outputs is an
// error too.
func (f *Function) Call(in, out []float64) error {
	if len(in) != len(f.Inputs) || len(out) != len(f.Outputs) {
		return f.miscounted(len(in), len(out))
	}
	for i := range f.Inputs {
		if p := &f.Inputs[i]; !(in[i] >= p.Min && in[i] <= p.Max) || p.Whole && in[i] != math.Trunc(in[i]) {
			return f.refuse(p, in[i])
		}
	}
	if err := f.call(in, out); err != nil {
		return f.named(err)
	}
	for i, v := range out {
		if v-v != 0 { // NaN or infinite
			return fmt.Errorf("%s: %s has no finite value here", f.Name, f.Outputs[i].Name)
		}
	}
	return nil
}

// named gives a refusal of the library the name that the caller wrote.
func (f *Function) named(err error) error {
	if r, ok := err.(*units.RangeError); ok {
		mine := *r
		mine.Func = f.Name
		return &mine
	}
	return err
}

func (f *Function) miscounted(in, out int) error {
	return fmt.Errorf("%s: %d inputs and %d outputs, not %d and %d", f.Name, len(f.Inputs), len(f.Outputs), in, out)
}

func (f *Function) refuse(p *Input, v float64) error {
	if p.Options != nil {
		return fmt.Errorf("%s: %s is one of %s", f.Name, p.Name, strings.Join(p.Options, ", "))
	}
	if p.Whole && v >= p.Min && v <= p.Max {
		return fmt.Errorf("%s: %s is a whole number, not %v", f.Name, p.Name, v)
	}
	return &units.RangeError{
		Func: f.Name, Quantity: strings.ReplaceAll(p.Name, "_", " "), Value: v, Unit: p.Unit,
		Min: p.Min, Max: p.Max, Source: f.Source,
	}
}

// Input returns the place of an input. The name is taken as a column head has
// it: letter case does not count, a space or hyphen is an underscore.
func (f *Function) Input(name string) (int, bool) {
	name = Normal(name)
	for i := range f.Inputs {
		if f.Inputs[i].Name == name {
			return i, true
		}
	}
	return 0, false
}

// Output returns the place of an output, by its name as [Function.Input].
func (f *Function) Output(name string) (int, bool) {
	name = Normal(name)
	for i := range f.Outputs {
		if f.Outputs[i].Name == name {
			return i, true
		}
	}
	return 0, false
}

// Normal writes a name as the catalogue does: "Sample temperature" becomes
// "sample_temperature".
func Normal(name string) string {
	return strings.NewReplacer(" ", "_", "-", "_").Replace(strings.ToLower(strings.TrimSpace(name)))
}

// SplitHead takes a column head "temperature (°F)" apart into name and unit. A
// head without brackets at its end has the unit "".
func SplitHead(head string) (name, unit string) {
	head = strings.TrimSpace(head)
	if open := strings.IndexByte(head, '('); open > 0 && strings.HasSuffix(head, ")") {
		return strings.TrimSpace(head[:open]), strings.TrimSpace(head[open+1 : len(head)-1])
	}
	return head, ""
}

// Head writes a column head: "temperature (°F)", or the name alone for a pure
// number.
func Head(name, unit string) string {
	if unit == "" {
		return name
	}
	return name + " (" + unit + ")"
}
