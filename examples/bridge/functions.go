package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
)

// functions lists the catalogue, or what has a word in its name or meaning.
func functions(_ context.Context, p *program) error {
	asJSON := p.flags.Bool("json", false, "write JSON")
	words, err := p.words()
	if err != nil {
		return err
	}
	if len(words) > 1 {
		return errors.New("one WORD at most")
	}
	all := catalogue.All()
	if len(words) == 1 {
		if all = search(all, words[0]); len(all) == 0 {
			return fmt.Errorf("%w: no function has %q in its name or meaning", errNoAnswer, words[0])
		}
	}
	var text bytes.Buffer
	if *asJSON {
		if err := encode(&text, listing(all)); err != nil {
			return err
		}
	} else {
		list(&text, all)
	}
	_, err = p.stdout.Write(text.Bytes())
	return err
}

func search(all []catalogue.Function, word string) []catalogue.Function {
	word = strings.ToLower(word)
	var found []catalogue.Function
	for _, f := range all {
		if strings.Contains(f.Name, catalogue.Normal(word)) || strings.Contains(strings.ToLower(f.Meaning), word) {
			found = append(found, f)
		}
	}
	return found
}

func list(w io.Writer, all []catalogue.Function) {
	for i := range all {
		f := &all[i]
		fmt.Fprintf(w, "%s: %s\n", f.Name, f.Meaning)
		for j := range f.Inputs {
			in := &f.Inputs[j]
			fmt.Fprintf(w, "    %s, %s", catalogue.Head(in.Name, in.Unit), limits(in))
			if in.HasDefault {
				fmt.Fprintf(w, ", %s if left out", in.Text(in.Default))
			}
			fmt.Fprintf(w, ": %s\n", in.Meaning)
		}
		for _, out := range f.Outputs {
			kind := ""
			if out.IsText() {
				kind = ", a text"
			}
			fmt.Fprintf(w, "    gives %s%s: %s\n", catalogue.Head(out.Name, out.Unit), kind, out.Meaning)
		}
		fmt.Fprintf(w, "    source: %s\n\n", f.Source)
	}
}

func limits(in *catalogue.Input) string {
	if in.Options != nil {
		return strings.Join(in.Options, " or ")
	}
	return in.Text(in.Min) + " to " + in.Text(in.Max)
}

type jsonFunction struct {
	Name    string       `json:"name"`
	Meaning string       `json:"meaning"`
	Source  string       `json:"source"`
	Inputs  []jsonInput  `json:"inputs"`
	Outputs []jsonOutput `json:"outputs"`
}

type jsonInput struct {
	Name    string   `json:"name"`
	Unit    string   `json:"unit,omitempty"`
	Meaning string   `json:"meaning"`
	Min     float64  `json:"min"`
	Max     float64  `json:"max"`
	Example float64  `json:"example"`
	Default *float64 `json:"default,omitempty"`
	Options []string `json:"options,omitempty"`
	Whole   bool     `json:"whole,omitempty"`
}

type jsonOutput struct {
	Name    string   `json:"name"`
	Unit    string   `json:"unit,omitempty"`
	Meaning string   `json:"meaning"`
	Words   []string `json:"words,omitempty"`   // what a text says
	Several bool     `json:"several,omitempty"` // as many of them as hold, with spaces between
}

func listing(all []catalogue.Function) []jsonFunction {
	list := []jsonFunction{}
	for i := range all {
		f := &all[i]
		one := jsonFunction{Name: f.Name, Meaning: f.Meaning, Source: f.Source, Inputs: []jsonInput{}}
		for j := range f.Inputs {
			in := &f.Inputs[j]
			input := jsonInput{
				Name: in.Name, Unit: in.Unit, Meaning: in.Meaning, Min: in.Min, Max: in.Max,
				Example: in.Example, Options: in.Options, Whole: in.Whole,
			}
			if in.HasDefault {
				input.Default = &in.Default
			}
			one.Inputs = append(one.Inputs, input)
		}
		for _, out := range f.Outputs {
			one.Outputs = append(one.Outputs, jsonOutput{out.Name, out.Unit, out.Meaning, out.Words, out.Several})
		}
		list = append(list, one)
	}
	return list
}
