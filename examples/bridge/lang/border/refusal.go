package border

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

var nan = math.NaN()

// A Kind is what a refusal is of.
type Kind string

// Kinds.
const (
	Range  Kind = "range"  // a number outside its range
	Text   Kind = "text"   // a text that is not understood, or a name that is not known
	State  Kind = "state"  // something that is not ready, or is gone
	Other  Kind = "other"  // whatever else the library refuses
	Broken Kind = "broken" // a fault of the library
)

// A Refusal is an error in parts. Those that it does not have are empty; a Value, Min or Max that
// is not finite is nil.
type Refusal struct {
	Kind     Kind     `json:"kind"`
	Message  string   `json:"message"`            // the whole of it, one line
	Function string   `json:"function,omitempty"` // as the caller wrote it
	Quantity string   `json:"quantity,omitempty"` // which input; of a plan the path of the field
	Given    string   `json:"given,omitempty"`    // the text that was given
	Value    *float64 `json:"value,omitempty"`    // the number that was given, in Unit
	Unit     string   `json:"unit,omitempty"`
	Min      *float64 `json:"min,omitempty"` // in Unit
	Max      *float64 `json:"max,omitempty"`
	Source   string   `json:"source,omitempty"` // where the range or the relation is published
}

// Error is the message.
func (r *Refusal) Error() string { return r.Message }

// Tell makes a refusal of any error.
func Tell(err error) *Refusal {
	if r, ok := errors.AsType[*Refusal](err); ok {
		return r
	}
	r := &Refusal{Kind: Other, Message: err.Error()}
	if e, ok := errors.AsType[*units.RangeError](err); ok {
		r.Kind, r.Function, r.Quantity, r.Unit, r.Source = Range, e.Func, e.Quantity, e.Unit, e.Source
		r.Value, r.Min, r.Max = finite(e.Value), finite(e.Min), finite(e.Max)
	} else if e, ok := errors.AsType[*units.ParseError](err); ok {
		r.Kind, r.Quantity, r.Given = Text, e.Want, e.Input
	} else if e, ok := errors.AsType[*units.NameError](err); ok {
		r.Kind, r.Function, r.Quantity, r.Given = Text, e.Func, e.What, e.Name
	} else if e, ok := errors.AsType[*units.StateError](err); ok {
		r.Kind, r.Function, r.Quantity = State, e.Func, e.What
	}
	if e, ok := errors.AsType[*plan.RequestError](err); ok {
		r.Function, r.Quantity, r.Given = "plan", e.Field, e.Value
	}
	if e, ok := errors.AsType[*batch.StepError](err); ok && r.Quantity == "" {
		r.Quantity = fmt.Sprintf("steps[%d]", e.Index)
	}
	return r
}

func finite(v float64) *float64 {
	if v-v != 0 {
		return nil
	}
	return &v
}

// refused is an error of a function of the catalogue.
func refused(f *catalogue.Function, err error) error {
	r := Tell(err)
	r.Function = f.Name
	if r.Source == "" {
		r.Source = f.Source
	}
	return r
}

// refusedText is an error of a text given for an input.
func refusedText(f *catalogue.Function, in *catalogue.Input, text string, err error) error {
	r := Tell(err)
	if r.Kind == Other {
		r.Kind = Text
	}
	r.Message = f.Name + ": " + r.Message
	r.Function, r.Quantity, r.Given, r.Unit, r.Source = f.Name, strings.ReplaceAll(in.Name, "_", " "), text, in.Unit, f.Source
	if in.Options == nil {
		r.Min, r.Max = &in.Min, &in.Max
	}
	return r
}

// guard turns a fault that would end the program into an error.
func guard(err *error) {
	if fault := recover(); fault != nil {
		*err = &Refusal{Kind: Broken, Message: fmt.Sprintf("a fault of the library, please report it: %v", fault)}
	}
}

// JSON is the refusal as JSON.
func (r *Refusal) JSON() []byte {
	text, err := json.Marshal(r)
	if err != nil {
		return []byte(`{"kind":"broken","message":"an error that cannot be written"}`)
	}
	return text
}
