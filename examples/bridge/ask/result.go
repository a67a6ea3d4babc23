package ask

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/number"
)

// Result is an output that is wanted, and the unit it is wanted in.
type Result struct {
	Place   int // among the outputs of the function
	Name    string
	Unit    string
	convert catalogue.Conversion
	output  *catalogue.Output
}

// Head is the result as a column head: "pressure (psi gauge)".
func (r *Result) Head() string { return catalogue.Head(r.Name, r.Unit) }

// Of takes the result out of the outputs of a call, in its unit. Of a text it is the
// number that the words stand for.
func (r *Result) Of(out []float64) float64 { return r.convert(out[r.Place]) }

// IsText reports whether the result is a text.
func (r *Result) IsText() bool { return r.output.IsText() }

// Text returns the words of a result that is a text.
func (r *Result) Text(out []float64) string { return r.output.Text(out[r.Place]) }

// Append appends the result as a cell shows it: the number, or the words.
func (r *Result) Append(b []byte, out []float64) []byte {
	if r.IsText() {
		return append(b, r.Text(out)...)
	}
	return number.Append(b, r.Of(out))
}

// Wish returns one output of f by its name, in unit; "" is the stated one.
func Wish(f *catalogue.Function, name, unit string) (Result, error) {
	i, ok := f.Output(name)
	if !ok {
		return Result{}, fmt.Errorf("no output %.64q; %s gives %s", name, f.Name, Given(f))
	}
	out := &f.Outputs[i]
	convert, err := out.Conversion(unit)
	if err != nil {
		return Result{}, err
	}
	if unit == "" {
		unit = out.Unit
	}
	return Result{i, out.Name, unit, convert, out}, nil
}

// Wishes returns the outputs of f named by heads: "pressure", "pressure (psi
// gauge)". No heads are all outputs.
func Wishes(f *catalogue.Function, heads []string) ([]Result, error) {
	var results []Result
	if len(heads) == 0 {
		for i := range f.Outputs {
			heads = append(heads, f.Outputs[i].Name)
		}
	}
	for _, head := range heads {
		name, unit := catalogue.SplitHead(head)
		r, err := Wish(f, name, unit)
		if err != nil {
			return nil, err
		}
		results = append(results, r)
	}
	return results, nil
}

// Given lists the outputs of a function as column heads.
func Given(f *catalogue.Function) string {
	var heads []string
	for i := range f.Outputs {
		heads = append(heads, catalogue.Head(f.Outputs[i].Name, f.Outputs[i].Unit))
	}
	return strings.Join(heads, ", ")
}
