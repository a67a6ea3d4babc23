package lang

import (
	"embed"
	"fmt"
	"strings"
	"text/template"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/lang/border"
)

//go:embed templates
var templateFiles embed.FS

// model is what the templates write from.
type model struct {
	Contract                uint64
	MostInputs, MostOutputs int
	Topics                  map[string]int
	Functions               []function
	Library                 string // the file of the shared library
}

// function is one of the catalogue, with its place.
type function struct {
	*catalogue.Function
	Place   int
	Inputs  []input
	Outputs []output
}

type input struct {
	*catalogue.Input
	Number string // its name as a number: temperature_celsius
	Two    bool   // it has another name as a text
	Shown  string // its example as a text: "20 °C"
	Limits string
	OrElse string // what stands where it is left out
}

type output struct{ *catalogue.Output }

func newModel() (*model, error) {
	m := &model{
		Contract: border.Contract(), MostInputs: border.MostInputs, MostOutputs: border.MostOutputs,
		Topics: map[string]int{
			"Plan": int(border.Plan), "Walk": int(border.Walk),
			"ForecastOpen": int(border.ForecastOpen), "ForecastAdd": int(border.ForecastAdd), "ForecastAsk": int(border.ForecastAsk),
			"ForecastState": int(border.ForecastState), "ForecastClose": int(border.ForecastClose),
		},
	}
	for place, f := range catalogue.All() {
		if len(f.Inputs) > border.MostInputs || len(f.Outputs) > border.MostOutputs {
			return nil, fmt.Errorf("%s: more inputs or outputs than there is room for", f.Name)
		}
		one := function{Function: &f, Place: place}
		for i := range f.Inputs {
			in := &f.Inputs[i]
			number, err := numberName(in)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", f.Name, err)
			}
			one.Inputs = append(one.Inputs, input{in, number, twoForms(in), example(in), limits(in), orElse(in)})
		}
		for i := range f.Outputs {
			one.Outputs = append(one.Outputs, output{&f.Outputs[i]})
		}
		m.Functions = append(m.Functions, one)
	}
	return m, nil
}

// NoneRequired reports whether a function can be called without an argument.
func (f function) NoneRequired() bool {
	for _, in := range f.Inputs {
		if !in.HasDefault {
			return false
		}
	}
	return true
}

// Doc is what is to be known of an input, in a line.
func (in input) Doc() string {
	s := fmt.Sprintf("%s: %s", in.Meaning, in.Limits)
	if in.OrElse != "" {
		s += "; " + in.OrElse + " if left out"
	}
	return s
}

// Doc is what is to be known of an output, in a line.
func (o output) Doc() string {
	switch {
	case o.IsText() && !o.Several:
		return fmt.Sprintf("%s: %s", o.Meaning, strings.Join(o.Words, ", "))
	case o.Unit != "":
		return o.Meaning + ", in " + o.Unit
	}
	return o.Meaning
}

// render executes a template.
func (m *model) render(name string, more template.FuncMap) ([]byte, error) {
	t, err := template.New(name).Funcs(template.FuncMap{"quote": quote}).Funcs(more).ParseFS(templateFiles, "templates/"+name)
	if err != nil {
		return nil, err
	}
	var text strings.Builder
	if err := t.Execute(&text, m); err != nil {
		return nil, err
	}
	return []byte(text.String()), nil
}
