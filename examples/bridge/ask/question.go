package ask

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
)

// Question is a call that is being put together.
type Question struct {
	function *catalogue.Function
	in, out  []float64
	given    []bool
}

// New starts a question to f.
func New(f *catalogue.Function) *Question {
	room := make([]float64, len(f.Inputs)+len(f.Outputs))
	return &Question{
		function: f,
		in:       room[:len(f.Inputs)], out: room[len(f.Inputs):],
		given: make([]bool, len(f.Inputs)),
	}
}

// Give sets an input from text; read is how text is read, for example
// (*catalogue.Input).Parse.
func (q *Question) Give(name, text string, read func(*catalogue.Input, string) (float64, error)) error {
	i, ok := place(q.function, name)
	if !ok {
		if all := series(q.function, name); len(all) > 0 {
			return q.giveSeries(catalogue.Normal(name), all, text, read)
		}
		return fmt.Errorf("no input %.64q; %s takes %s", name, q.function.Name, Wanted(q.function))
	}
	if q.given[i] {
		return fmt.Errorf("%s is given twice", q.function.Inputs[i].Name)
	}
	if text == "" {
		return fmt.Errorf("%s is empty", q.function.Inputs[i].Name)
	}
	v, err := read(&q.function.Inputs[i], text)
	if err != nil {
		return err
	}
	q.in[i], q.given[i] = v, true
	return nil
}

// series are the inputs that are given at once under a name.
func series(f *catalogue.Function, name string) (all []int) {
	name = catalogue.Normal(name)
	for i := range f.Inputs {
		if f.Inputs[i].Series != "" && f.Inputs[i].Series == name {
			all = append(all, i)
		}
	}
	return all
}

// giveSeries sets inputs from the cells of a range, joined by semicolons.
func (q *Question) giveSeries(name string, all []int, text string, read func(*catalogue.Input, string) (float64, error)) error {
	parts := strings.Split(strings.TrimRight(text, "; "), ";")
	if len(parts) > len(all) {
		return fmt.Errorf("%s: %d of them; at most %d", name, len(parts), len(all))
	}
	for k, part := range parts {
		if err := q.Give(q.function.Inputs[all[k]].Name, strings.TrimSpace(part), read); err != nil {
			return err
		}
	}
	return nil
}

// place finds an input, most often by the name as it stands.
func place(f *catalogue.Function, name string) (int, bool) {
	for i := range f.Inputs {
		if f.Inputs[i].Name == name {
			return i, true
		}
	}
	return f.Input(name)
}

// Answer computes the outputs, in the order and the units of the catalogue. The
// slice is good until the next call.
func (q *Question) Answer() ([]float64, error) {
	for i := range q.function.Inputs {
		in := &q.function.Inputs[i]
		switch {
		case q.given[i]:
		case in.HasDefault:
			q.in[i] = in.Default
		default:
			return nil, fmt.Errorf("%s is missing; %s takes %s", in.Name, q.function.Name, Wanted(q.function))
		}
	}
	if err := q.function.Call(q.in, q.out); err != nil {
		return nil, err
	}
	return q.out, nil
}

// Input returns an input of an answered question, in the unit of the catalogue, and
// whether it was given; else it is the default.
func (q *Question) Input(i int) (v float64, given bool) { return q.in[i], q.given[i] }

// Wanted lists the inputs of a function as column heads, each with its default.
func Wanted(f *catalogue.Function) string {
	var heads []string
	for i := range f.Inputs {
		in := &f.Inputs[i]
		head := catalogue.Head(in.Name, in.Unit)
		if in.HasDefault {
			head += " [" + in.Text(in.Default) + " if left out]"
		}
		heads = append(heads, head)
	}
	return strings.Join(heads, ", ")
}
