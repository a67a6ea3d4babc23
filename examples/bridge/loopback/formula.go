package loopback

import (
	"net/url"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
)

// A Dialect is how one family of spreadsheets writes a formula.
type Dialect struct {
	WebService, EncodeURL, FilterXML string // names of functions
	Separator                        string // between arguments
}

// Calc and Excel are what a person types. In the file of an open document the
// names have a prefix, and OpenDocument is that.
var (
	Calc         = Dialect{"WEBSERVICE", "ENCODEURL", "FILTERXML", ";"}
	Excel        = Dialect{"WEBSERVICE", "ENCODEURL", "FILTERXML", ","}
	OpenDocument = Dialect{"COM.MICROSOFT.WEBSERVICE", "COM.MICROSOFT.ENCODEURL", "COM.MICROSOFT.FILTERXML", ";"}
)

// Question is a cell's question to a function.
type Question struct {
	Base     string // an expression for the address of the server: `"http://127.0.0.1:8460"`
	Function string
	Inputs   []Reference
	Output   string // "" for the only one
	Unit     string // "" for the stated one
}

// Reference is an input and the cell that holds it.
type Reference struct{ Input, Cell string }

// URL is the expression for the address that is asked.
func (d Dialect) URL(q Question) string { return d.url(q, "") }

func (d Dialect) url(q Question, form string) string {
	var s strings.Builder
	if base, literal := strings.CutSuffix(q.Base, `"`); literal {
		s.WriteString(base)
	} else {
		s.WriteString(q.Base + `&"`)
	}
	s.WriteString(prefix + q.Function)
	mark := "?"
	for _, in := range q.Inputs {
		s.WriteString(mark + in.Input + `="&` + d.EncodeURL + "(" + in.Cell + `)&"`)
		mark = "&"
	}
	for _, p := range []pair{{keyOutput, q.Output}, {keyUnit, q.Unit}, {keyAs, form}} {
		if p.value != "" {
			s.WriteString(mark + p.key + "=" + url.PathEscape(p.value))
			mark = "&"
		}
	}
	return strings.TrimSuffix(s.String()+`"`, `&""`)
}

// Number is a formula whose value is the number in any locale, or the reason
// why there is none. It asks once: a spreadsheet keeps the answer by address.
func (d Dialect) Number(q Question) string {
	ask := d.WebService + "(" + d.URL(q) + ")"
	return "IFERROR(NUMBERVALUE(" + ask + d.Separator + `".")` + d.Separator + ask + ")"
}

// Text is a formula whose value is a text output, or the reason why there is none.
func (d Dialect) Text(q Question) string { return d.WebService + "(" + d.URL(q) + ")" }

// XML is a formula whose value is the output number place, counted from 1, of a
// function with several, a text as 0; all of them are one question.
func (d Dialect) XML(q Question, place string) string {
	return d.FilterXML + "(" + d.WebService + "(" + d.url(q, "xml") + ")" + d.Separator + `"number(/r/v[` + place + `])")`
}

// Cells names the cells A1, B1, C1 … for the inputs that f has no default for;
// for all of them if it has a default for each, or if the examples of some do
// not go with the defaults of the others.
func Cells(f *catalogue.Function) []Reference {
	var needed, all []Reference
	in := make([]float64, len(f.Inputs))
	for i := range f.Inputs {
		p := &f.Inputs[i]
		all = append(all, Reference{p.Name, column(len(all)) + "1"})
		if in[i] = p.Default; !p.HasDefault {
			in[i] = p.Example
			needed = append(needed, Reference{p.Name, column(len(needed)) + "1"})
		}
	}
	if len(needed) == 0 || f.Call(in, make([]float64, len(f.Outputs))) != nil {
		return all
	}
	return needed
}

func column(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	return string(rune('A'+i/26-1)) + string(rune('A'+i%26))
}
