package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"text/tabwriter"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/number"
)

// call computes one function once.
func call(_ context.Context, p *program) error {
	asJSON := p.flags.Bool("json", false, "write JSON")
	words, err := p.words()
	if err != nil {
		return err
	}
	r, err := parseRequest(words)
	if err != nil {
		return err
	}
	f, err := catalogue.Find(r.name)
	if err != nil {
		return err
	}
	results, out, err := answer(f, r)
	if err != nil {
		return fmt.Errorf("%w: %w", errNoAnswer, err)
	}
	var text bytes.Buffer
	if *asJSON {
		err = printJSON(&text, f, results, out)
	} else {
		err = printText(&text, results, out)
	}
	if err != nil {
		return err
	}
	_, err = p.stdout.Write(text.Bytes())
	return err
}

func answer(f *catalogue.Function, r request) ([]ask.Result, []float64, error) {
	q := ask.New(f)
	for _, in := range r.inputs {
		if err := q.Give(in.name, in.text, (*catalogue.Input).Parse); err != nil {
			return nil, nil, err
		}
	}
	results, err := ask.Wishes(f, r.outputs)
	if err != nil {
		return nil, nil, err
	}
	out, err := q.Answer()
	return results, out, err
}

func printText(w io.Writer, results []ask.Result, out []float64) error {
	table := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	for i := range results {
		fmt.Fprintf(table, "%s\t%s %s\n", results[i].Name, results[i].Append(nil, out), results[i].Unit)
	}
	return table.Flush()
}

type jsonValue struct {
	Name  string `json:"name"`
	Value any    `json:"value"` // a json.Number, or the words of a text
	Unit  string `json:"unit,omitempty"`
}

func printJSON(w io.Writer, f *catalogue.Function, results []ask.Result, out []float64) error {
	answer := struct {
		Function string      `json:"function"`
		Source   string      `json:"source"`
		Outputs  []jsonValue `json:"outputs"`
	}{Function: f.Name, Source: f.Source}
	for i := range results {
		var v any = json.Number(number.Append(nil, results[i].Of(out)))
		if results[i].IsText() {
			v = results[i].Text(out)
		}
		answer.Outputs = append(answer.Outputs, jsonValue{results[i].Name, v, results[i].Unit})
	}
	return encode(w, answer)
}

func encode(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}
