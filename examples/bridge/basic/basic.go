// Package basic writes a module of LibreOffice Basic that gives cells plain
// function names: =ATMOSPHERE_AT_ALTITUDE(640) asks the bridge over loopback
// HTTP.
//
// A function with one number has its own name; one with several becomes a
// function for each, NAME_OUTPUT, and so does each text that comes with them. Inputs stand in the order of the catalogue;
// those with a default may be left out at the end. A number is in the stated unit, a text
// has its own ("55 °F"). A cell without an answer shows "ERROR: " and the
// reason.
package basic

import (
	"bytes"
	_ "embed"
	"fmt"
	"strconv"
	"strings"
	"text/template"

	"example.org/zymase/examples/bridge/catalogue"
)

//go:embed module.bas
var moduleText string

var module = template.Must(template.New("module").Parse(moduleText))

// A call is one function of the module.
type call struct {
	Name, Function, Output string
	Meaning, Result        string
	Text                   bool // the words are the result
	Inputs                 []input
}

type input struct {
	Name, Parameter string
	Series          bool     // a range of cells
	Notes           []string // lines of a remark
}

// Module writes the module for the functions and for a bridge at address,
// "127.0.0.1:8460". The error says if two functions would get one name.
func Module(address string, functions []catalogue.Function) ([]byte, error) {
	var calls []call
	seen := map[string]string{}
	for i := range functions {
		for _, c := range callsOf(&functions[i]) {
			if other, ok := seen[c.Name]; ok {
				return nil, fmt.Errorf("%s and %s both make %s", other, c.Function, c.Name)
			}
			seen[c.Name] = c.Function
			calls = append(calls, c)
		}
	}
	var b bytes.Buffer
	err := module.Execute(&b, map[string]any{"Address": address, "Calls": calls})
	return b.Bytes(), err
}

func callsOf(f *catalogue.Function) []call {
	one := call{Name: strings.ToUpper(f.Name), Function: f.Name, Meaning: f.Meaning}
	for i := range f.Inputs {
		in := &f.Inputs[i]
		if in.Series != "" {
			one.Inputs = withSeries(one.Inputs, in)
			continue
		}
		note := catalogue.Head(in.Name, in.Unit)
		if in.HasDefault {
			note += ", " + in.Text(in.Default) + " if left out"
		}
		p := input{Name: in.Name, Parameter: "v_" + in.Name, Notes: []string{note}}
		for _, option := range in.Options {
			p.Notes = append(p.Notes, "  "+strconv.Quote(option))
		}
		one.Inputs = append(one.Inputs, p)
	}
	var calls []call
	only, single := f.OnlyNumber()
	for i := range f.Outputs {
		out, c := &f.Outputs[i], one
		c.Result, c.Text = catalogue.Head(out.Name, out.Unit)+": "+out.Meaning, out.IsText()
		if !single || i != only {
			c.Output = out.Name
			c.Name += "_" + strings.ToUpper(out.Name)
		}
		calls = append(calls, c)
	}
	return calls
}

// withSeries adds the one parameter that all inputs of a series are given by.
func withSeries(all []input, in *catalogue.Input) []input {
	for _, have := range all {
		if have.Name == in.Series {
			return all
		}
	}
	note := catalogue.Head(in.Series, in.Unit) + ": a range of cells"
	return append(all, input{Name: in.Series, Parameter: "v_" + in.Series, Series: true, Notes: []string{note}})
}

// Parameters lists the parameters of a function, as Basic declares them. All
// are optional: for one that is not, the bridge says that it is missing, and
// Basic would stop the spreadsheet with a box.
func (c call) Parameters() string {
	var list []string
	for _, in := range c.Inputs {
		list = append(list, "Optional "+in.Parameter)
	}
	return strings.Join(list, ", ")
}
